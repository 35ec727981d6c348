package flankfit.cli;

import flankfit.draft.Draft;
import flankfit.draft.WorksheetRow;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.ThreadAnswer;
import flankfit.unit.LengthUnit;
import java.util.List;

/** A draft for a person: verdict, numbers with their formulas, program, cautions. */
final class DraftText {
  private static final int NAME = 38;
  private static final int RESULT = 14;
  private static final String INDENT = "      ";

  private final DraftAnswer answer;
  private final Draft draft;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private DraftText(DraftAnswer answer, Style style) {
    this.answer = answer;
    this.draft = answer.draft();
    this.style = style;
  }

  /** The text. */
  static String of(DraftAnswer answer, Style style) {
    DraftText text = new DraftText(answer, style);
    text.verdict();
    text.worksheet();
    text.files();
    text.assumed();
    Cautions.write(text.out);
    return text.out.toString();
  }

  private void verdict() {
    LengthUnit unit = draft.choices().unit();
    for (ThreadAnswer thread : draft.proof().gauged().threads()) {
      String head =
          "[+] " + thread.designation() + " in " + thread.hole() + ": " + thread.verdict().words();
      out.append(style.severity(Severity.NOTE, head)).append('\n');
      out.append("    ");
      FindingText.wrap(thread.reason(), "    ", out);
      thread.real().ifPresent(real -> RealText.write(thread, real, GaugeText.unit(thread), out));
    }
    List<Finding> told =
        draft.proof().findings().stream().filter(f -> f.severity() != Severity.NOTE).toList();
    new FindingText(style).brief(draft.proof().done().file(), told, out);
    out.append("    executed and gauged as written, with D")
        .append(draft.choices().tool())
        .append(" geometry ")
        .append(Figures.length(draft.register().geometry(), unit))
        .append(" and wear ")
        .append(Figures.lengthWithUnit(draft.register().wear(), unit))
        .append('\n');
    String file = draft.proof().done().file();
    OffsetText.write(
        draft.offset(), draft.sheet().control().tools().wearLimit(), file, unit, style, out);
    if (draft.offset().asMoved().isEmpty()) {
      out.append("    entries on the endless helix; gauge tries them on the path as moved\n");
    }
    out.append('\n');
  }

  private void worksheet() {
    out.append("the numbers\n");
    for (WorksheetRow row : draft.worksheet()) {
      out.append("  ").append(Figures.left(row.name(), NAME));
      out.append(Figures.right(row.result(), RESULT)).append('\n');
      String formula = row.formula() + (row.inserted().isEmpty() ? "" : " = " + row.inserted());
      String note = row.note().isEmpty() ? "" : "; " + row.note();
      out.append(INDENT);
      FindingText.wrap(formula + note, INDENT, out);
    }
    out.append(
        "  speeds and feeds are a starting point only: the maker of the mill knows better, ");
    out.append("begin\n  below them and listen\n");
  }

  private void files() {
    if (answer.programFile().isPresent()) {
      out.append("\nprogram ").append(answer.programFile().get()).append('\n');
      out.append("sheet   ").append(answer.sheetFile().orElseThrow()).append('\n');
      return;
    }
    out.append("\nprogram\n").append(draft.program());
    out.append("\nits setup sheet is written beside it with --out FILE.nc\n");
  }

  private void assumed() {
    out.append("\nassumed\n");
    for (String assumption : answer.assumptions()) {
      out.append("  ");
      FindingText.wrap(assumption, "  ", out);
    }
  }
}
