package flankfit.cli;

import java.io.IOException;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How checked programs are written. */
final class CheckOutput {
  @Option(
      names = "--format",
      paramLabel = "text|json|sarif|junit",
      description = {
        "text for people (default); json, one object; sarif, the log format SARIF 2.1.0 of static"
            + " analysis; junit, the XML that build servers read"
      })
  private Format format = Format.TEXT;

  @Mixin private ColourOption colour = new ColourOption();

  /** Whether people read it. */
  boolean isText() {
    return format == Format.TEXT;
  }

  /** Style of text. */
  Style style() {
    return colour.style();
  }

  /**
   * Writes the answer.
   *
   * @param unused what a policy accepts in vain, a sentence each
   */
  void write(List<CheckedProgram> checked, List<String> unused, Terminal terminal)
      throws IOException {
    switch (format) {
      case TEXT -> terminal.result(CheckText.of(checked, unused, style()));
      case JSON -> CheckJson.write(checked, unused, terminal.outBytes());
      case SARIF -> SarifLog.write(checked, terminal.outBytes());
      case JUNIT -> {
        try {
          JunitReport.write(checked, terminal.outBytes());
        } catch (XMLStreamException e) {
          throw new IOException(e);
        }
      }
    }
  }

  /** Forms of the answer. */
  enum Format {
    TEXT,
    JSON,
    SARIF,
    JUNIT
  }
}
