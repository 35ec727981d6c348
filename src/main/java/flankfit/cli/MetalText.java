package flankfit.cli;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.unit.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The metal for a person: errors first, volumes, findings, cautions last. */
final class MetalText {
  private static final int NAME = 30;

  private final StringBuilder out = new StringBuilder();
  private final LengthUnit unit;

  private MetalText(LengthUnit unit) {
    this.unit = unit;
  }

  /** The text. */
  static String of(ProgramOptions.Job job, MetalAnswer answer, List<Path> written, Style style) {
    MetalText text = new MetalText(job.sheet().unit());
    FindingText findings = new FindingText(style);
    List<Finding> errors =
        answer.findings().stream().filter(f -> f.severity() == Severity.ERROR).toList();
    if (!errors.isEmpty()) {
      text.out.append(style.severity(Severity.ERROR, errors.size() == 1 ? "error" : "errors"));
      text.out.append(" to mend first\n");
      findings.full(errors, job::lines, text.out);
      text.out.append('\n');
    }
    text.volumes(job.sheet(), answer);
    written.forEach(file -> text.out.append("written ").append(file).append('\n'));
    List<Finding> others =
        answer.findings().stream().filter(f -> f.severity() != Severity.ERROR).toList();
    if (!others.isEmpty()) {
      text.out.append('\n');
      findings.brief(job.interpretation().file(), others, text.out);
    }
    if (!answer.assumptions().isEmpty()) {
      text.out.append("\nassumed\n");
      for (String assumption : answer.assumptions()) {
        text.out.append("  ");
        FindingText.wrap(assumption, "  ", text.out);
      }
    }
    Cautions.write(text.out);
    return text.out.toString();
  }

  private void volumes(SetupSheet sheet, MetalAnswer answer) {
    row("stock, " + shape(sheet.stock().orElseThrow()), answer.stockVolume());
    row("taken away", answer.removedVolume());
    for (Map.Entry<Integer, Double> tool : answer.byTool().entrySet()) {
      row("  " + ToolNames.of(sheet, tool.getKey()), tool.getValue());
    }
    row("left", answer.remainingVolume());
    out.append(Figures.left("cells", NAME)).append("  ");
    out.append(Figures.lengthWithUnit(answer.metal().cell(), unit)).append(" at the finest, ");
    out.append(Math.max(1, answer.metal().memoryUsed() >> 20)).append(" MiB\n");
  }

  private void row(String name, double volume) {
    boolean inch = unit == LengthUnit.INCH;
    double cube = inch ? volume / Math.pow(unit.toMillimetres(1), 3) : volume;
    String figure = String.format(Locale.ROOT, inch ? "%.5f in³" : "%.1f mm³", cube);
    out.append(Figures.left(name, NAME)).append(Figures.right(figure, 20)).append('\n');
  }

  private static String shape(Stock stock) {
    return stock.shape().name().toLowerCase(Locale.ROOT);
  }
}
