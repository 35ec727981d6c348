package flankfit.window;

import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.control.InterpreterRun;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.motion.Tape;
import flankfit.picture.GrowingScene;
import flankfit.picture.Scene;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** One load of a program, on a thread of its own. */
final class Load implements Runnable {
  /** Blocks after which the first moves are shown. */
  private static final int FIRST_BLOCKS = 512;

  /** Blocks between two looks at the clock. */
  private static final int STRETCH = 16_384;

  /** Time between two looks of the window at what there is (ns): a frame at 30 Hz. */
  private static final long BETWEEN = 33_000_000;

  /** Text that is shown before all lines are counted (bytes). */
  private static final int FIRST_TEXT = 1 << 16;

  private static final ProgramSource.Judgement NOTHING_SAID =
      new ProgramSource.Judgement(List.of(), "");

  private final Loader loader;
  private final ProgramSource source;
  private final List<String> cautions;
  private final Optional<ProgramSource.Text> given;
  private volatile boolean stopped;
  private long beginning;
  private GrowingScene growing;
  private Steps steps;
  private long shownAt;

  Load(
      Loader loader,
      ProgramSource source,
      List<String> cautions,
      Optional<ProgramSource.Text> given) {
    this.loader = loader;
    this.source = source;
    this.cautions = cautions;
    this.given = given;
  }

  /** Makes it end soon; the loader takes nothing from it any more. */
  void stop() {
    stopped = true;
  }

  @Override
  public void run() {
    try {
      load(given.isPresent() ? given.get() : read());
    } catch (UnreadableProgramException e) {
      loader.takeFailure(this, "not read: " + e.getMessage(), Problem.all(e.findings()));
    } catch (CancellationException e) {
      // Stopped; the loader has told so already.
      stopped = true;
    } catch (OutOfMemoryError e) {
      String why = "it does not fit in the memory given";
      loader.takeFailure(
          this,
          "incomplete: " + why,
          List.of(new Problem(why, source.file(), "", "give more: java -Xmx8g -jar flankfit.jar")));
    } catch (RuntimeException | Error e) {
      loader.takeFailure(this, "incomplete: the tool failed: " + e, List.of());
      throw e;
    }
  }

  private ProgramSource.Text read() throws UnreadableProgramException {
    loader.take(this, loader.latest().at(Stage.READING, -1));
    source.beginning(FIRST_TEXT).ifPresent(this::preview);
    return source.read();
  }

  /**
   * Shows the first moves by executing the beginning alone, before the file is read or room is made
   * for its moves. Where that comes to an end early, the whole has to say why.
   */
  private void preview(ProgramSource.Text text) {
    InterpreterRun execution = Interpreter.start(text.program(), text.setup(), text.subprograms());
    if (execution.advance(FIRST_BLOCKS)) {
      begin(text);
      show(text, text.program().lines(), execution, -1);
    }
  }

  private void load(ProgramSource.Text text) throws UnreadableProgramException {
    if (given.isPresent()) {
      text.beginning(FIRST_TEXT).ifPresent(this::preview);
    }
    InterpreterRun execution = Interpreter.start(text.program(), text.setup(), text.subprograms());
    List<String> lines = text.program().beginning(FIRST_TEXT).lines();
    begin(text);
    boolean goesOn = execution.advance(FIRST_BLOCKS);
    int begun = execution.beginnings();
    if (goesOn) {
      show(text, lines, execution, execution.progress());
      lines = text.program().lines();
    }
    while (goesOn && !stopped) {
      goesOn = execution.advance(STRETCH);
      if (execution.beginnings() != begun) {
        begun = execution.beginnings();
        begin(text);
      }
      if (goesOn && System.nanoTime() - shownAt > BETWEEN) {
        show(text, lines, execution, execution.progress());
      }
    }
    if (!stopped) {
      Interpretation done = execution.result().orElseThrow();
      readable(text, done);
      finish(text, done);
    }
  }

  /** Where nothing of the file was read, all other findings only say that nothing is there. */
  private static void readable(ProgramSource.Text text, Interpretation done)
      throws UnreadableProgramException {
    List<Finding> noText =
        done.findings().stream()
            .filter(f -> f.code() == Code.RD01 && f.place().file().equals(text.program().file()))
            .toList();
    if (!noText.isEmpty()) {
      throw new UnreadableProgramException(noText);
    }
  }

  private void begin(ProgramSource.Text text) {
    beginning = loader.newBeginning();
    growing = new GrowingScene(text.setup(), source.file(), text.majorDiameters());
    steps = Steps.NONE;
  }

  private void show(
      ProgramSource.Text text, List<String> lines, InterpreterRun execution, double share) {
    Tape tape = execution.tape();
    steps = steps.and(tape);
    WindowInput input = input(text, lines, tape, NOTHING_SAID, Optional.empty());
    loader.take(
        this,
        new Loaded(
            beginning,
            Stage.EXECUTING,
            share,
            false,
            execution.blocks(),
            input,
            steps,
            growing.grow(tape),
            ""));
    shownAt = System.nanoTime();
  }

  private void finish(ProgramSource.Text text, Interpretation done) {
    List<String> lines = text.program().lines();
    Tape tape = done.tape();
    steps = steps.and(tape);
    Scene scene = growing.finish(tape);
    Optional<Cutting> cutting = Optional.of(new Cutting(done, text.mesh()));
    Loaded whole =
        new Loaded(
            beginning,
            Stage.CHECKING,
            0,
            true,
            done.blocks(),
            input(text, lines, tape, new ProgramSource.Judgement(done.findings(), ""), cutting),
            steps,
            scene,
            "");
    loader.take(this, whole);
    Survey survey = Survey.of(whole.input(), steps);
    loader.take(this, whole.with(survey));
    Interpretation checked =
        ProgramCheck.checked(
            done,
            text.setup(),
            share -> {
              if (System.nanoTime() - shownAt > BETWEEN) {
                loader.take(this, whole.with(survey).at(Stage.CHECKING, share));
                shownAt = System.nanoTime();
              }
              return !stopped;
            });
    WindowInput found =
        input(text, lines, tape, new ProgramSource.Judgement(checked.findings(), ""), cutting);
    loader.take(
        this,
        new Loaded(beginning, Stage.GAUGING, -1, true, done.blocks(), found, steps, scene, "")
            .with(survey.with(found, steps)));
    ProgramSource.Judgement judgement = source.judge(text, checked);
    WindowInput all = input(text, lines, tape, judgement, cutting);
    loader.take(
        this,
        new Loaded(beginning, Stage.DONE, 1, true, done.blocks(), all, steps, scene, "")
            .with(survey.with(all, steps)));
  }

  private WindowInput input(
      ProgramSource.Text text,
      List<String> lines,
      Tape tape,
      ProgramSource.Judgement said,
      Optional<Cutting> cutting) {
    return new WindowInput(
        source.file(),
        lines,
        tape,
        text.setup(),
        said.findings(),
        said.headline(),
        cautions,
        text.majorDiameters(),
        Replay.of(text),
        said.gauged(),
        cutting);
  }
}
