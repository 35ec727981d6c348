package flankfit.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/**
 * A command run in this process.
 *
 * @param status exit status
 * @param out what it wrote to standard output
 * @param err what it wrote aside
 */
record Run(int status, String out, String err) {
  /** Runs a command. */
  static Run of(String command, String... args) {
    List<String> all = new ArrayList<>(List.of(command));
    all.addAll(List.of(args));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.commandLine(new PrintStream(out, true, UTF_8), new PrintStream(err, true, UTF_8))
            .execute(all.toArray(String[]::new));
    return new Run(status, out.toString(UTF_8), err.toString(UTF_8));
  }
}
