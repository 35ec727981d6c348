package flankfit.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;

/**
 * Checks an answer against a packaged JSON Schema. Knows the keywords that our schemas use and
 * refuses any other, so that none is passed over.
 */
final class JsonShape {
  private static final Set<String> WORDS_ONLY =
      Set.of("$schema", "$id", "$defs", "title", "description", "then", "else");

  private final JsonNode root;
  private final List<String> faults = new ArrayList<>();

  private JsonShape(JsonNode root) {
    this.root = root;
  }

  /** The schema of a name such as {@code motion}. */
  static JsonNode schema(String name) {
    String resource = "/flankfit/schema/" + name + "-1.schema.json";
    try (InputStream in = JsonShape.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("no such schema: " + resource);
      }
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Everything in which an answer departs from the schema of a name; empty when it fits. */
  static List<String> faults(String name, JsonNode answer) {
    JsonShape shape = new JsonShape(schema(name));
    shape.check(shape.root, answer, name);
    return List.copyOf(shape.faults);
  }

  private boolean fits(JsonNode schema, JsonNode value) {
    JsonShape apart = new JsonShape(root);
    apart.check(schema, value, "");
    return apart.faults.isEmpty();
  }

  private void check(JsonNode schema, JsonNode value, String path) {
    for (Map.Entry<String, JsonNode> word : schema.properties()) {
      checkWord(schema, word.getKey(), word.getValue(), value, path);
    }
  }

  private void fault(boolean wrong, String path, String text) {
    if (wrong) {
      faults.add(path + ": " + text);
    }
  }

  private void checkWord(JsonNode schema, String word, JsonNode rule, JsonNode value, String path) {
    switch (word) {
      case "$ref" -> check(root.at(rule.asText().substring(1)), value, path);
      case "type" -> fault(!hasType(rule, value), path, "type is not " + rule);
      case "const" -> fault(!rule.equals(value), path, value + " is not " + rule);
      case "enum" -> fault(!contains(rule, value), path, value + " is none of " + rule);
      case "minimum" -> number(value, (v, x) -> fault(x < rule.asDouble(), path, v + " is low"));
      case "maximum" -> number(value, (v, x) -> fault(x > rule.asDouble(), path, v + " is high"));
      case "exclusiveMinimum" ->
          number(value, (v, x) -> fault(x <= rule.asDouble(), path, v + " is low"));
      case "pattern" ->
          fault(
              value.isTextual() && !Pattern.compile(rule.asText()).matcher(value.asText()).find(),
              path,
              value + " does not match " + rule);
      case "minLength" ->
          fault(value.isTextual() && value.asText().length() < rule.asInt(), path, "too short");
      case "minItems" -> fault(value.isArray() && value.size() < rule.asInt(), path, "too few");
      case "maxItems" -> fault(value.isArray() && value.size() > rule.asInt(), path, "too many");
      case "items" -> checkItems(rule, value, path);
      case "required" -> rule.forEach(k -> checkRequired(k.asText(), value, path));
      case "properties" -> checkProperties(rule, value, path);
      case "additionalProperties" -> checkOthers(schema, value, path);
      case "allOf" -> rule.forEach(part -> check(part, value, path));
      case "not" -> fault(fits(rule, value), path, "must not be " + rule);
      case "if" -> checkBranch(schema.path(fits(rule, value) ? "then" : "else"), value, path);
      default -> fault(!WORDS_ONLY.contains(word), path, "unknown keyword " + word);
    }
  }

  private static void number(JsonNode value, BiConsumer<JsonNode, Double> check) {
    if (value.isNumber()) {
      check.accept(value, value.asDouble());
    }
  }

  private static boolean contains(JsonNode list, JsonNode value) {
    for (JsonNode one : list) {
      if (one.equals(value)) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasType(JsonNode rule, JsonNode value) {
    if (rule.isArray()) {
      for (JsonNode one : rule) {
        if (hasType(one, value)) {
          return true;
        }
      }
      return false;
    }
    return switch (rule.asText()) {
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isTextual();
      case "boolean" -> value.isBoolean();
      case "null" -> value.isNull();
      case "integer" -> value.isNumber() && value.asDouble() == Math.rint(value.asDouble());
      case "number" -> value.isNumber();
      default -> throw new IllegalArgumentException("unknown type: " + rule);
    };
  }

  private void checkItems(JsonNode rule, JsonNode value, String path) {
    if (value.isArray()) {
      for (int i = 0; i < value.size(); i++) {
        check(rule, value.get(i), path + "[" + i + "]");
      }
    }
  }

  private void checkRequired(String key, JsonNode value, String path) {
    fault(value.isObject() && !value.has(key), path, "lacks " + key);
  }

  private void checkProperties(JsonNode rule, JsonNode value, String path) {
    for (Map.Entry<String, JsonNode> property : rule.properties()) {
      if (value.has(property.getKey())) {
        check(property.getValue(), value.get(property.getKey()), path + "." + property.getKey());
      }
    }
  }

  private void checkOthers(JsonNode schema, JsonNode value, String path) {
    value
        .fieldNames()
        .forEachRemaining(
            key -> fault(!schema.path("properties").has(key), path, "unknown key " + key));
  }

  private void checkBranch(JsonNode branch, JsonNode value, String path) {
    if (!branch.isMissingNode()) {
      check(branch, value, path);
    }
  }
}
