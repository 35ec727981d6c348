package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.paper.HtmlPen;
import flankfit.paper.PdfPen;
import flankfit.paper.Pen;
import flankfit.paper.Sheet;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What a paper is written as: its file's ending says it, and for a PDF the size of the sheets. */
final class PaperOption {
  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "size of the sheets of a PDF (default: a4)")
  private Optional<Sheet> paper = Optional.empty();

  /**
   * Refuses a file that cannot be written so, before any work is done.
   *
   * @param what what the paper is, in a word
   * @param file where it goes; empty when none is asked for
   */
  void check(String what, Optional<Path> file) throws RequestException {
    boolean pdf = file.map(PaperOption::isPdf).orElse(false);
    if (file.isPresent() && !pdf && !hasEnding(file.get(), ".html")) {
      throw wrong(
          what + " " + file.get() + " has neither ending .html nor .pdf",
          "the ending says how it is written",
          "name it " + file.get() + ".pdf");
    }
    if (paper.isPresent() && !pdf) {
      throw wrong(
          "--paper without a PDF",
          "a browser asks for the paper when it prints an HTML file",
          "leave it out, or name the " + what + " .pdf");
    }
  }

  /** What the file is written with. */
  Pen pen(Path file, String title, String footer) {
    return isPdf(file)
        ? new PdfPen(title, footer, paper.orElse(Sheet.A4))
        : new HtmlPen(title, footer);
  }

  private static boolean isPdf(Path file) {
    return hasEnding(file, ".pdf");
  }

  private static boolean hasEnding(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private static RequestException wrong(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }
}
