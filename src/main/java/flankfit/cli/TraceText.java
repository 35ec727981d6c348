package flankfit.cli;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.ControlState;
import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.trace.BlockNotes;
import flankfit.trace.StateText;
import flankfit.trace.TraceRow;
import flankfit.trace.TraceRows;
import java.io.PrintWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A trace for people, written block by block as it comes. */
final class TraceText implements BlockObserver {
  private static final int KIND = 10;
  private static final int LABEL = 16;
  private static final int TEXT = 36;
  private static final String INDENT = " ".repeat(2 + KIND + LABEL);

  private final TracedLines lines;
  private final BlockNotes notes;
  private final String program;
  private final Style style;
  private final PrintWriter out;
  private final StringBuilder text = new StringBuilder();
  private final Set<Finding> told = new HashSet<>();
  private Optional<BlockTrace> last = Optional.empty();
  private int moves;

  /**
   * @param notes what is to be said beyond what the control tells
   * @param program name of the program's file
   */
  TraceText(TracedLines lines, BlockNotes notes, String program, Style style, PrintWriter out) {
    this.lines = lines;
    this.notes = notes;
    this.program = program;
    this.style = style;
    this.out = out;
  }

  @Override
  public void begins(ControlState start) {
    text.append(program)
        .append(": what the control understood, block by block in order of execution;\n")
        .append("moves are those of the tool tip in the part frame\n\n")
        .append("at the start  ");
    FindingText.wrap(String.join("; ", StateText.of(start)), " ".repeat(14), text);
    write();
  }

  private void write() {
    out.print(text);
    text.setLength(0);
  }

  @Override
  public void block(BlockTrace block) {
    moves += block.moves().size();
    Optional<BlockTrace> before = last;
    last = Optional.of(block);
    if (!lines.shows(block, program)) {
      return;
    }
    heading(block);
    Optional<TraceRow.Kind> kind = Optional.empty();
    List<String> messages = notes.messages(block, before);
    for (TraceRow row : TraceRows.of(block, block.after().unit(), messages)) {
      row(row, kind.isEmpty() || row.kind() != kind.get());
      kind = Optional.of(row.kind());
    }
    for (Finding finding : block.findings()) {
      told.add(finding);
      finding(finding, block.place());
    }
    // A line may be executed many times: what rules found at it is told once.
    for (Finding finding : notes.further(block)) {
      if (told.add(finding)) {
        finding(finding, block.place());
      }
    }
    write();
  }

  private void heading(BlockTrace block) {
    Place place = block.place();
    text.append('\n');
    if (!place.file().equals(program)) {
      text.append(place.file()).append(' ');
    }
    text.append("line ").append(place.line());
    if (block.number() > 0) {
      text.append(", block ").append(block.number());
    }
    if (block.level() > 0) {
      text.append(", ").append(Figures.count(block.level(), "call")).append(" deep");
    }
    switch (block.outcome()) {
      case EXECUTED -> {}
      case STOPPED -> text.append(", ").append(style.severity(Severity.ERROR, "stops here"));
      case DELETED -> text.append(", skipped by block delete");
      case NOT_EXECUTED -> text.append(", not executed");
    }
    text.append(":  ").append(style.strong(block.text())).append('\n');
  }

  private void row(TraceRow row, boolean first) {
    text.append("  ").append(Figures.left(first ? row.kind().heading() : "", KIND));
    text.append(Figures.left(row.label(), LABEL - 1)).append(' ');
    if (row.label().length() >= LABEL && !row.text().isEmpty()) {
      text.append('\n').append(INDENT);
    }
    String words =
        row.value().isEmpty() ? row.text() : Figures.left(row.text(), TEXT) + row.value();
    FindingText.wrap(words, INDENT, text);
  }

  private void finding(Finding finding, Place place) {
    boolean here =
        finding.place().line() == place.line() && finding.place().file().equals(place.file());
    new FindingText(style).brief(here ? finding.place().file() : program, List.of(finding), text);
  }

  @Override
  public void ends(List<Finding> others) {
    // What belongs to no block is told at the end with everything that was not told.
  }

  /** Writes what the whole run gave. */
  void finish(Interpretation done) {
    text.append('\n')
        .append(Figures.count(done.blocks(), "block"))
        .append(" executed, ")
        .append(Figures.count(moves, "move"))
        .append('\n');
    done.stoppedAt()
        .ifPresent(
            stop ->
                text.append("incomplete   stopped at line ")
                    .append(stop.line())
                    .append(" by ")
                    .append(stop.code().name())
                    .append('\n'));
    List<Finding> others = done.findings().stream().filter(f -> !told.contains(f)).toList();
    if (!others.isEmpty()) {
      text.append("\nfindings not told above\n");
      new FindingText(style).brief(program, others, text);
    }
    MotionText.assumptions(done, text);
    Cautions.write(text);
    write();
    out.flush();
  }
}
