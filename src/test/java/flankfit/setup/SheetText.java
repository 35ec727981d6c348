package flankfit.setup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Sheets that stand among the test resources. */
final class SheetText {
  private SheetText() {}

  static String resource(String name) {
    try (InputStream in = SheetText.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException("no such resource: " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static SheetReading read(String text) {
    return SetupReader.read("part.setup.toml", text, SomeThreads::parse);
  }
}
