package flankfit.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import flankfit.finding.Finding;
import flankfit.motion.Point;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;

/** Writes one answer as JSON: stable key order, plain numbers, LF line ends. */
final class Json implements AutoCloseable {
  /** Decimals kept: nothing below 1e-9 is shown. */
  private static final int DECIMALS = 9;

  private final JsonGenerator generator;

  Json(OutputStream out) throws IOException {
    generator = new JsonFactory().createGenerator(out);
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    generator.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
    generator.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
  }

  /** Begins an unnamed object. */
  Json object() throws IOException {
    generator.writeStartObject();
    return this;
  }

  /** Begins a named object. */
  Json object(String name) throws IOException {
    generator.writeObjectFieldStart(name);
    return this;
  }

  /** Ends an object. */
  Json end() throws IOException {
    generator.writeEndObject();
    return this;
  }

  /** Begins a named array. */
  Json array(String name) throws IOException {
    generator.writeArrayFieldStart(name);
    return this;
  }

  /** Ends an array. */
  Json endArray() throws IOException {
    generator.writeEndArray();
    return this;
  }

  /** Writes a text. */
  Json put(String name, String value) throws IOException {
    generator.writeStringField(name, value);
    return this;
  }

  /** Writes a whole number. */
  Json put(String name, int value) throws IOException {
    generator.writeNumberField(name, value);
    return this;
  }

  /** Writes a large whole number. */
  Json put(String name, long value) throws IOException {
    generator.writeNumberField(name, value);
    return this;
  }

  /** Writes a truth value. */
  Json put(String name, boolean value) throws IOException {
    generator.writeBooleanField(name, value);
    return this;
  }

  /** Writes a number, plain and to 1e-9. */
  Json put(String name, double value) throws IOException {
    generator.writeFieldName(name);
    number(value);
    return this;
  }

  /** Writes a number if there is one. */
  Json put(String name, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      put(name, value.getAsDouble());
    }
    return this;
  }

  /** Writes a point as an array of three. */
  Json put(String name, Point point) throws IOException {
    return put(name, point.x(), point.y(), point.z());
  }

  /** Writes numbers as an array. */
  Json put(String name, double first, double second, double... more) throws IOException {
    generator.writeArrayFieldStart(name);
    number(first);
    number(second);
    for (double value : more) {
      number(value);
    }
    generator.writeEndArray();
    return this;
  }

  /** Writes texts as an array. */
  Json put(String name, List<String> values) throws IOException {
    generator.writeArrayFieldStart(name);
    for (String value : values) {
      generator.writeString(value);
    }
    generator.writeEndArray();
    return this;
  }

  /** Writes findings as an array. */
  Json findings(List<Finding> findings) throws IOException {
    return findings("findings", findings);
  }

  /** Writes findings as an array of a name. */
  Json findings(String name, List<Finding> findings) throws IOException {
    generator.writeArrayFieldStart(name);
    for (Finding finding : findings) {
      object();
      put("code", finding.code().name());
      put("severity", finding.severity().word());
      put("file", finding.place().file());
      put("line", finding.place().line());
      put("column", finding.place().column());
      put("what", finding.what());
      put("why", finding.why());
      put("fix", finding.fix());
      end();
    }
    generator.writeEndArray();
    return this;
  }

  private void number(double value) throws IOException {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("JSON has no number for " + value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    generator.writeNumber(
        rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
  }

  /** Ends the answer with a line feed. */
  @Override
  public void close() throws IOException {
    generator.writeRaw('\n');
    generator.close();
  }
}
