package flankfit.cli;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.ControlSetting;
import flankfit.control.ControlState;
import flankfit.control.FlowStep;
import flankfit.control.Interpretation;
import flankfit.control.WordMeaning;
import flankfit.control.WordTrace;
import flankfit.finding.Finding;
import flankfit.trace.BlockNotes;
import flankfit.trace.StateChange;
import flankfit.trace.StateText;
import flankfit.trace.TraceRows;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The answer {@code flankfit/trace/1}, written block by block as it comes. */
final class TraceJson implements BlockObserver, AutoCloseable {
  private final TracedLines lines;
  private final BlockNotes notes;
  private final String program;
  private final OutputStream out;
  private final Json json;
  private final Set<Finding> told = new HashSet<>();
  private Optional<BlockTrace> last = Optional.empty();
  private boolean begun;

  /**
   * @param notes what is to be said beyond what the control tells
   * @param program name of the program's file
   */
  TraceJson(TracedLines lines, BlockNotes notes, String program, OutputStream target)
      throws IOException {
    this.lines = lines;
    this.notes = notes;
    this.program = program;
    out = new BufferedOutputStream(target, 1 << 16);
    json = new Json(out);
  }

  @Override
  public void begins(ControlState start) {
    begun = true;
    try {
      json.object().put("schema", "flankfit/trace/1").object("start");
      for (ControlSetting setting : ControlSetting.values()) {
        if (setting != ControlSetting.REGISTERS) {
          json.put(StateText.label(setting), StateText.value(setting, start));
        }
      }
      json.end().array("blocks");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void block(BlockTrace block) {
    Optional<BlockTrace> before = last;
    last = Optional.of(block);
    if (!lines.shows(block, program)) {
      return;
    }
    List<Finding> findings = new ArrayList<>(block.findings());
    told.addAll(findings);
    // A line may be executed many times: what rules found at it is told once.
    notes.further(block).stream().filter(told::add).forEach(findings::add);
    try {
      write(block, notes.messages(block, before), findings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(BlockTrace block, List<String> messages, List<Finding> findings)
      throws IOException {
    json.object().put("outcome", block.outcome().word());
    if (block.number() > 0) {
      json.put("block", block.number());
    }
    json.put("file", block.place().file())
        .put("line", block.place().line())
        .put("column", block.place().column())
        .put("text", block.text())
        .put("level", block.level());
    if (!messages.isEmpty()) {
      json.put("messages", messages);
    }
    json.array("words");
    for (WordTrace word : block.words()) {
      write(word);
    }
    json.endArray().array("steps");
    StepJson steps = new StepJson(json);
    for (FlowStep step : block.steps()) {
      step.to(steps).write();
    }
    json.endArray().array("changes");
    for (StateChange change : StateChange.of(block, block.after().unit())) {
      json.object()
          .put("setting", change.label())
          .put("from", change.from())
          .put("to", change.to())
          .end();
    }
    json.endArray().array("moves");
    for (int i = 0; i < block.moves().size(); i++) {
      MotionJson.move(block.moves(), i, json);
    }
    json.endArray().findings(findings).end();
  }

  private void write(WordTrace word) throws IOException {
    json.object().put("text", word.text()).put("means", TraceRows.meaning(word));
    boolean counts =
        word.meaning() != WordMeaning.NONE && word.meaning() != WordMeaning.NOT_EXECUTED;
    if (counts && word.value().isPresent()) {
      json.put("value", word.value().getAsDouble());
      json.put("quantity", quantity(word.meaning()));
    }
    json.put("register", word.register()).end();
  }

  private static String quantity(WordMeaning meaning) {
    return meaning.quantity().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public void ends(List<Finding> others) {
    // What belongs to no block is told at the end with everything that was not told.
  }

  /** Writes what the whole run gave. */
  void finish(Interpretation done) throws IOException {
    json.endArray()
        .object("program")
        .put("file", done.file())
        .put("unit", done.unit().symbol())
        .put("blocks", done.blocks())
        .end()
        .put("assumptions", done.assumptions())
        .put("complete", done.complete());
    if (done.stoppedAt().isPresent()) {
      json.object("stoppedAt")
          .put("line", done.stoppedAt().get().line())
          .put("code", done.stoppedAt().get().code().name())
          .end();
    }
    json.findings(done.findings().stream().filter(f -> !told.contains(f)).toList()).end();
  }

  /** Ends the answer; nothing is written when the request was refused before it began. */
  @Override
  public void close() throws IOException {
    if (begun) {
      json.close();
      out.flush();
    }
  }
}
