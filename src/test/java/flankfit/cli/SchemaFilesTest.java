package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The packaged JSON Schemas: sound in themselves, and neither too loose nor too tight. */
class SchemaFilesTest {
  private static final String FINDING =
      """
      {"code": "RC05", "severity": "error", "file": "hub.nc", "line": 3, "column": 1,
       "what": "the offset exceeds the arc", "why": "", "fix": ""}
      """;

  private static final String MOTION =
      """
      {"schema": "flankfit/motion/1",
       "program": {"file": "hub.nc", "unit": "mm", "blocks": 7}, "assumptions": ["rapids"],
       "moves": [{"line": 12, "block": 7, "kind": "arc", "tool": 4, "from": [3, 0, -9],
         "to": [3, 0, -7.5], "programmedTo": [10, 0, -7.5], "inserted": true,
         "arc": {"plane": "XY", "centre": [0, 0, -9], "radius": 3, "sweep": 360, "rise": 1.5,
           "turns": 1},
         "length": 18.909, "feed": 180, "seconds": 6.3, "distanceMode": "absolute",
         "compensation": "left", "spindle": {"direction": "clockwise", "rpm": 3200}}],
       "extents": {"min": [-3, -3, -9], "max": [3, 3, -7.5]},
       "totals": {"feedLength": 18.909, "rapidLength": 0, "seconds": 6.3},
       "complete": false, "stoppedAt": {"line": 13, "code": "RC05"}, "findings": [%s]}
      """
          .formatted(FINDING);

  private static final String GAUGE =
      """
      {"schema": "flankfit/gauge/1", "program": {"file": "hub.nc", "unit": "in", "blocks": 7},
       "assumptions": [], "findings": [%s],
       "threads": [{"hole": "port A", "designation": "M20x1.5-6H", "internal": true,
         "hand": "right", "lead": 1.5, "starts": 1, "cutting": "climb", "depth": [0, -16],
         "limits": {"majorMin": 20, "pitchMin": 19.026, "pitchMax": 19.216, "minorMin": 18.376,
           "minorMax": 18.676},
         "gauges": {"go": {"pitch": 19.03}, "noGo": {"pitch": 19.22, "turnsAllowed": 2}},
         "passes": [{"line": 9, "radius": 3, "role": "finish", "pitch": 19.1,
           "functional": 19.08, "major": 20.05}],
         "finished": {"major": 20.05, "minor": 18.5, "pitchSimple": 19.1, "pitchLeast": 19.09,
           "pitchGreatest": 19.11, "pitchOverBall": 19.1, "functional": 19.08,
           "functionalFlank": 19.09, "decidedBy": "crest", "flankAngles": [30, 29.9],
           "leadError": 0, "taper": 0, "roundness": 0.001, "entryMark": 0.002},
         "go": {"enters": true, "clearance": 0.05}, "noGo": {"turns": 0.5, "stops": true},
         "plain": {"goEnters": true, "noGoStops": true}, "verdict": "gauges good", "reason": "GO enters",
         "offset": {"register": "D4", "now": -0.01, "sensitivity": -1.9, "toMiddle": -0.02,
           "toGoLimit": 0.03, "toNoGoLimit": -0.06},
         "odds": {"goEnters": 0.99, "noGoStops": 1, "good": 0.99,
           "contributors": [{"name": "runout", "share": 0.4}]}}]}
      """
          .formatted(FINDING);

  private static final String THREAD =
      """
      {"schema": "flankfit/thread/1", "threads": [{"designation": "M20x1.5-6H",
        "form": "ISO metric", "nominal": 20, "pitch": 1.5, "threadsPerInch": null, "class": "6H",
        "internal": true, "leadAngle": 1.438,
        "limits": {"majorMin": 20, "pitchMin": 19.026, "pitchMax": 19.216, "minorMin": 18.376,
          "minorMax": 18.676},
        "gauges": {"goPitch": 19.03, "goMajorMin": 20, "noGoPitch": 19.22, "noGoMajorMax": 19.6,
          "turnsAllowed": 2, "plainGo": 18.376, "plainNoGo": 18.676},
        "drill": {"suggested": 18.5, "engagementPercent": 77}, "sources": ["ISO 965-1"]}]}
      """;

  private static final String CHECK =
      """
      {"schema": "flankfit/check/1",
       "programs": [{"file": "hub.nc", "complete": false,
         "verdicts": [{"hole": "port A", "designation": "M20x1.5-6H", "verdict": "GO refused"}],
         "findings": [%s],
         "accepted": [{"code": "HZ02", "line": 14, "what": "rapid 1 mm over the part",
           "reason": "the clamp is lower"}],
         "failure": "a fault of the tool"}],
       "totals": {"programs": 1, "errors": 1, "warnings": 0, "accepted": 1},
       "acceptedInVain": ["[[accept]] in line 3 accepts nothing"]}
      """
          .formatted(FINDING);

  private static final String METAL =
      """
      {"schema": "flankfit/metal/1", "program": {"file": "hub.nc", "unit": "mm", "blocks": 7},
       "assumptions": ["made-by not stated"], "moves": 21, "cell": 0.05, "stockVolume": 144000,
       "removedVolume": 318.5, "remainingVolume": 143681.5,
       "byTool": [{"tool": 4, "name": "T4 thread mill 14 mm", "removed": 318.5}],
       "collisions": [%s], "findings": [%s]}
      """
          .formatted(FINDING, FINDING);

  private static final String TRACE = trace();

  private static final String LESSON =
      """
      {"schema": "flankfit/lesson/1",
       "program": {"file": "hub.nc", "unit": "mm", "blocks": 7}, "assumptions": [],
       "steps": [{"file": "hub.nc", "line": 12, "block": 7, "outcome": "executed",
         "text": "G91 G3 X1.5 Y1.5 J1.5", "level": 0, "mode": "incremental", "zero": "G54",
         "moves": true, "endpointAbsolute": [3, 0, -14], "moveIncremental": [1.5, 1.5, 0],
         "arc": {"plane": "XY", "centre": [1.5, 0, -14], "toCentre": [0, 1.5, 0], "radius": 1.5,
           "sweep": 90, "rise": 0},
         "absoluteWords": "G90 G3 X3. Y0. J1.5", "incrementalWords": "G91 G3 X1.5 Y1.5 J1.5",
         "cannotSay": "machine coordinates are absolute", "plain": "from where it stands",
         "compensatedEnd": [2.955, 0, -14], "unfolds": ["line to X1", "line to X2"],
         "notes": ["as turned"],
         "again": {"times": 2, "alike": false, "lastEndpointAbsolute": [6, 0, -14]}}],
       "stepsLeftOut": 3, "complete": false, "stoppedAt": {"line": 13, "code": "RC05"},
       "findings": [%s]}
      """
          .formatted(FINDING);

  private static final String REWRITE =
      """
      {"schema": "flankfit/rewrite/1", "program": "hub.nc", "mode": "absolute", "file": "abs.nc",
       "linesChanged": 12, "movesCompared": 31, "decimals": 3, "rounding": 0, "closing": 0,
       "difference": 0, "kept": [{"line": 4, "why": "G53 needs G90"}], "findings": [%s]}
      """
          .formatted(FINDING);

  private static final String FORGET =
      """
      {"schema": "flankfit/forget/1", "program": "hub.nc", "line": 12, "word": "G90",
       "plain": "the paths part at line 13", "partsAt": 13, "greatestAt": 14, "greatest": 20.5,
       "last": 0, "lastLine": 30,
       "verdictsBefore": [{"hole": "A", "designation": "M20x1.5-6H", "verdict": "gauges good"}],
       "verdictsAfter": [], "findings": [%s]}
      """
          .formatted(FINDING);

  private static final String QUIZ =
      """
      {"schema": "flankfit/quiz/1", "program": "hub.nc", "seed": 1,
       "questions": [{"line": 12, "kind": "other mode", "question": "Say it in absolute words.",
         "answer": "G90 G1 X3."}], "findings": [%s]}
      """
          .formatted(FINDING);

  private static final Map<String, String> ANSWERS =
      Map.of(
          "motion", MOTION, "trace", TRACE, "metal", METAL, "lesson", LESSON, "rewrite", REWRITE,
          "forget", FORGET, "quiz", QUIZ, "gauge", GAUGE, "thread", THREAD, "check", CHECK);

  /** One block with a step of every kind, and the move of the other answer. */
  private static String trace() {
    StringBuilder start = new StringBuilder();
    JsonShape.schema("trace")
        .at("/properties/start/required")
        .forEach(
            setting ->
                start
                    .append(start.length() == 0 ? "" : ", ")
                    .append('"' + setting.asText() + "\": \"G0\""));
    String move = MOTION.substring(MOTION.indexOf('[', MOTION.indexOf("moves")));
    return """
    {"schema": "flankfit/trace/1", "start": {%s},
     "blocks": [{"outcome": "executed", "block": 7, "file": "hub.nc", "line": 12, "column": 1,
       "text": "G3 X#1 D4 (turn)", "level": 0, "messages": ["PORT A"],
       "words": [{"text": "G3", "means": "arc", "value": 3, "quantity": "function"},
         {"text": "D4", "means": "register", "value": 4, "quantity": "number",
          "register": -0.045}, {"text": "Q1.", "means": "not used"}],
       "steps": [{"kind": "computed", "text": "#1", "reads": [{"variable": 1, "value": 3}],
           "value": 3}, {"kind": "assigned", "variable": 1, "after": 3},
         {"kind": "tested", "holds": true}, {"kind": "jumped", "sequence": 10, "toLine": 3},
         {"kind": "loop pass", "loop": 1, "pass": 2},
         {"kind": "loop left", "loop": 1, "toLine": 9},
         {"kind": "loop back", "loop": 1, "toLine": 4},
         {"kind": "called", "program": 100, "time": 1, "times": 2, "modal": false,
          "arguments": [{"variable": 2}], "toFile": "hub.nc", "toLine": 30},
         {"kind": "returned", "program": 100, "sequence": 20, "toFile": "hub.nc",
          "toLine": 13}],
       "changes": [{"setting": "feed", "from": "none", "to": "200 mm/min"}],
       "moves": %s, "findings": [%s]}],
     "program": {"file": "hub.nc", "unit": "mm", "blocks": 7}, "assumptions": [],
     "complete": false, "stoppedAt": {"line": 13, "code": "RC05"}, "findings": []}
    """
        .formatted(start, move.substring(0, move.indexOf("}}]") + 3), FINDING);
  }

  private static JsonNode json(String text) throws JsonProcessingException {
    return new ObjectMapper().readTree(text);
  }

  private static String answer(String name) {
    return ANSWERS.getOrDefault(name, "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "motion", "trace", "metal", "lesson", "rewrite", "forget", "quiz", "gauge", "thread",
        "check"
      })
  void a_full_answer_fits(String name) throws JsonProcessingException {
    assertThat(JsonShape.faults(name, json(answer(name)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "motion", "trace", "metal", "lesson", "rewrite", "forget", "quiz", "gauge", "thread",
        "check", "draft"
      })
  void a_schema_names_its_dialect_and_its_shape(String name) {
    JsonNode schema = JsonShape.schema(name);
    assertThat(schema.path("$schema").asText())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    assertThat(schema.path("$id").asText()).isEqualTo("flankfit/" + name + "/1");
    assertThat(schema.at("/properties/schema/const").asText()).isEqualTo("flankfit/" + name + "/1");
    assertThat(schema.at("/$defs/finding/required").size()).isEqualTo(8);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "motion", "trace", "metal", "lesson", "rewrite", "forget", "quiz", "gauge", "thread",
        "check", "draft"
      })
  void references_lead_somewhere_and_required_keys_are_known(String name) {
    JsonNode schema = JsonShape.schema(name);
    schema
        .findValuesAsText("$ref")
        .forEach(ref -> assertThat(schema.at(ref.substring(1)).isObject()).as(ref).isTrue());
    for (JsonNode object : schema.findParents("additionalProperties")) {
      assertThat(object.path("additionalProperties").asBoolean(true)).isFalse();
      object
          .path("required")
          .forEach(
              key ->
                  assertThat(object.path("properties").has(key.asText())).as("%s", key).isTrue());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "motion", "trace", "metal", "lesson", "rewrite", "forget", "quiz", "gauge", "thread",
        "check"
      })
  void an_unknown_key_and_a_missing_key_are_refused(String name) throws JsonProcessingException {
    ObjectNode more = (ObjectNode) json(answer(name));
    more.put("colour", "red");
    assertThat(JsonShape.faults(name, more)).containsExactly(name + ": unknown key colour");
    ObjectNode less = (ObjectNode) json(answer(name));
    less.remove("schema");
    assertThat(JsonShape.faults(name, less)).containsExactly(name + ": lacks schema");
  }

  @Test
  void wrong_words_types_and_lengths_of_lists_are_refused() throws JsonProcessingException {
    for (String[] change :
        new String[][] {
          {"\"kind\": \"arc\"", "\"kind\": \"curve\""},
          {"\"kind\": \"arc\"", "\"kind\": \"line\""},
          {"\"from\": [3, 0, -9]", "\"from\": [3, 0]"},
          {"\"line\": 12", "\"line\": 12.5"},
          {"\"line\": 12", "\"line\": \"12\""},
          {"\"inserted\": true", "\"inserted\": false"},
          {"\"feed\": 180, ", ""},
          {"\"complete\": false", "\"complete\": true"},
          {"\"code\": \"RC05\", \"severity\"", "\"code\": \"R5\", \"severity\""}
        }) {
      assertThat(MOTION).contains(change[0]);
      JsonNode changed = json(MOTION.replace(change[0], change[1]));
      assertThat(JsonShape.faults("motion", changed)).as(change[1]).isNotEmpty();
    }
  }

  @Test
  void a_groove_that_is_no_thread_needs_no_measured_sizes() throws JsonProcessingException {
    ObjectNode answer = (ObjectNode) json(GAUGE);
    ObjectNode thread = (ObjectNode) answer.path("threads").get(0);
    thread.remove("finished");
    assertThat(JsonShape.faults("gauge", answer))
        .containsExactly("gauge.threads[0]: lacks finished");
    thread.put("verdict", "not a thread");
    assertThat(JsonShape.faults("gauge", answer)).isEmpty();
  }
}
