package flankfit.cli;

import flankfit.cli.CheckedProgram.AcceptedFinding;
import flankfit.cli.CheckedProgram.Gauged;
import flankfit.finding.Code;
import flankfit.finding.CodePages;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.gauge.Verdict;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Checked programs in SARIF 2.1.0 (OASIS Standard, 27 March 2020): a result for each finding and
 * for each thread that does not gauge good; what a policy accepts is suppressed with its reason.
 */
final class SarifLog {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json";

  /** The rule that a thread is to gauge good; findings have their codes. */
  private static final String VERDICT = "verdict";

  private final Json json;
  private final List<Code> codes;

  private SarifLog(Json json, List<CheckedProgram> checked) {
    this.json = json;
    TreeSet<Code> found = new TreeSet<>();
    for (CheckedProgram program : checked) {
      program.findings().forEach(finding -> found.add(finding.code()));
      program.accepted().forEach(accepted -> found.add(accepted.finding().code()));
    }
    this.codes = List.copyOf(found);
  }

  /** Writes the log. */
  static void write(List<CheckedProgram> checked, OutputStream out) throws IOException {
    try (Json json = new Json(out)) {
      new SarifLog(json, checked).log(checked);
    }
  }

  private void log(List<CheckedProgram> checked) throws IOException {
    json.object().put("$schema", SCHEMA).put("version", "2.1.0").array("runs").object();
    json.object("tool").object("driver").put("name", "Flankfit");
    Optional<String> version = Version.packaged();
    if (version.isPresent()) {
      json.put("version", version.get());
    }
    json.array("rules");
    for (Code code : codes) {
      rule(code);
    }
    verdictRule();
    json.endArray().end().end();
    invocation(checked);
    // As Java counts, so that a span stays right before a letter beyond the basic plane.
    json.put("columnKind", "utf16CodeUnits").array("results");
    for (CheckedProgram program : checked) {
      results(program);
    }
    json.endArray().end().endArray().end();
  }

  private void rule(Code code) throws IOException {
    var page = CodePages.of(code);
    json.object().put("id", code.name()).put("name", code.inWords());
    json.object("shortDescription").put("text", code.inWords().replace('-', ' ')).end();
    json.object("fullDescription").put("text", page.meaning()).end();
    json.object("help").put("text", page.mending()).end();
    json.object("defaultConfiguration").put("level", level(code.severity())).end().end();
  }

  private void verdictRule() throws IOException {
    json.object().put("id", VERDICT).put("name", "thread-gauges-good");
    json.object("shortDescription").put("text", "a thread does not gauge good").end();
    json.object("fullDescription")
        .put("text", "GO, NO-GO and plain gauges are tried on the thread that the program leaves.")
        .end();
    json.object("help").put("text", "flankfit gauge says which register to enter.").end();
    json.object("defaultConfiguration").put("level", "error").end().end();
  }

  private void invocation(List<CheckedProgram> checked) throws IOException {
    List<CheckedProgram> failed =
        checked.stream().filter(program -> program.failure().isPresent()).toList();
    json.array("invocations").object().put("executionSuccessful", failed.isEmpty());
    json.array("toolExecutionNotifications");
    for (CheckedProgram program : failed) {
      json.object().put("level", "error");
      json.object("message").put("text", program.failure().orElseThrow()).end();
      locations(Place.file(program.file())).end();
    }
    json.endArray().end().endArray();
  }

  private void results(CheckedProgram program) throws IOException {
    for (Finding finding : program.findings()) {
      result(finding).end();
    }
    for (AcceptedFinding accepted : program.accepted()) {
      result(accepted.finding()).array("suppressions").object().put("kind", "external");
      json.put("justification", accepted.reason()).end().endArray().end();
    }
    for (Gauged thread : program.verdicts()) {
      if (thread.verdict() != Verdict.GAUGES_GOOD) {
        json.object().put("ruleId", VERDICT).put("ruleIndex", codes.size()).put("level", "error");
        json.object("message").put("text", CheckText.words(thread)).end();
        locations(Place.file(program.file())).end();
      }
    }
  }

  /** Begins a result. */
  private Json result(Finding finding) throws IOException {
    json.object().put("ruleId", finding.code().name());
    json.put("ruleIndex", codes.indexOf(finding.code()));
    json.put("level", level(finding.severity()));
    List<String> parts = new ArrayList<>(List.of(finding.what(), finding.why(), finding.fix()));
    parts.removeIf(String::isEmpty);
    json.object("message").put("text", String.join("; ", parts)).end();
    return locations(finding.place());
  }

  private Json locations(Place place) throws IOException {
    if (place.file().isEmpty()) {
      return json.array("locations").endArray();
    }
    json.array("locations").object().object("physicalLocation");
    json.object("artifactLocation").put("uri", uri(place.file())).end();
    if (place.line() > 0) {
      json.object("region").put("startLine", place.line());
      if (place.column() > 0) {
        json.put("startColumn", place.column());
        json.put("endColumn", place.column() + Math.max(1, place.length()));
      }
      json.end();
    }
    return json.end().end().endArray();
  }

  /** A relative reference for a relative name, so that the log means the same in a checkout. */
  static String uri(String file) {
    Path path = Path.of(file);
    if (path.isAbsolute()) {
      return path.toUri().toASCIIString();
    }
    try {
      // A name such as "a:b.nc" would be a scheme without the dot before it.
      String name = file.replace('\\', '/');
      return new URI(null, null, name.contains(":") ? "./" + name : name, null).toASCIIString();
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException("no file: " + file, e);
    }
  }

  private static String level(Severity severity) {
    return severity.word();
  }
}
