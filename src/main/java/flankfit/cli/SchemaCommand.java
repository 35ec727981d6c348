package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the JSON Schema of an answer. */
@Command(
    name = "schema",
    description =
        "Prints the JSON Schema of an answer or a log: motion, trace, metal, lesson, rewrite,"
            + " forget, quiz, gauge, draft, part, check, thread.",
    mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
  private static final List<String> NAMES =
      List.of(
          "motion", "trace", "metal", "lesson", "rewrite", "forget", "quiz", "gauge", "draft",
          "part", "check", "thread");

  private final Terminal terminal;

  @Parameters(
      paramLabel = "NAME",
      description =
          "motion, trace, metal, lesson, rewrite, forget, quiz, gauge, draft, part, check or"
              + " thread")
  private String name = "";

  SchemaCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException, RequestException {
    if (!NAMES.contains(name)) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ04,
              Place.file(""),
              "no answer is called " + name,
              "the shapes are " + String.join(", ", NAMES),
              "name one of them"));
    }
    String resource = "/flankfit/schema/" + name + "-1.schema.json";
    try (InputStream in = SchemaCommand.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException("the jar lacks " + resource);
      }
      terminal.result(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    return ExitStatus.OK;
  }
}
