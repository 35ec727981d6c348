package flankfit.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Where results and everything else go. */
final class Terminal {
  private final PrintStream out;
  private final PrintStream err;

  Terminal(PrintStream out, PrintStream err) {
    this.out = Objects.requireNonNull(out, "out");
    this.err = Objects.requireNonNull(err, "err");
  }

  /** Takes results as text. */
  PrintWriter outWriter() {
    return new PrintWriter(out, true, StandardCharsets.UTF_8);
  }

  /** Takes everything else as text. */
  PrintWriter errWriter() {
    return new PrintWriter(err, true, StandardCharsets.UTF_8);
  }

  /** Takes results as bytes. */
  OutputStream outBytes() {
    return out;
  }

  /** Writes a result. */
  void result(String text) {
    out.print(text);
    out.flush();
  }

  /** Writes something that is no result. */
  void aside(String text) {
    err.print(text);
    err.flush();
  }
}
