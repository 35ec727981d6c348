package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.BlockTrace.Outcome;
import flankfit.finding.Finding;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an observer is told is the whole run, no more and no less, whatever the program. */
class BlockObserverProperties {
  /** One program with its sheet. */
  record Case(String name, String text, SetupSheet sheet) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> programs() {
    Stream<Case> examples =
        IntStream.rangeClosed(1, 59)
            .mapToObj(i -> Example.load("ex-%02d".formatted(i)))
            .map(e -> new Case(e.name(), e.program(), sheet(e.sheet())));
    Stream<Case> findings =
        Example.text("programs/index.txt")
            .lines()
            .flatMap(code -> Stream.of(code, code + "-mended"))
            .map(name -> smallest(name, Example.text("programs/" + name + ".nc")));
    return Stream.concat(examples, findings);
  }

  private static Case smallest(String name, String text) {
    String sheet =
        text.lines()
            .filter(line -> line.startsWith("; sheet:"))
            .map(line -> line.substring("; sheet:".length()))
            .findFirst()
            .orElse("");
    return new Case(name, text, sheet(sheet));
  }

  /** Loops that never end are ended soon. */
  private static SetupSheet sheet(String text) {
    return ExampleSheet.of(text + ", loop-limit = 2000");
  }

  private static Interpretation run(Case c, BlockObserver observer) {
    return Interpreter.interpret(source(c), c.sheet(), List.of(), observer);
  }

  private static SourceText source(Case c) {
    return SourceText.of(c.name() + ".nc", c.text().getBytes(StandardCharsets.UTF_8));
  }

  /** Everything that a tape says of a move. */
  private static List<Object> row(Tape tape, int i) {
    List<Object> row =
        new ArrayList<>(
            List.of(
                tape.kind(i),
                tape.line(i),
                tape.block(i),
                tape.from(i),
                tape.to(i),
                tape.programmedTo(i),
                tape.inserted(i),
                tape.state(i),
                tape.seconds(i)));
    if (tape.kind(i) == MoveKind.ARC) {
      row.addAll(
          List.of(
              tape.centreU(i), tape.centreV(i), tape.radius(i), tape.endRadius(i), tape.sweep(i)));
    }
    return row;
  }

  private static List<List<Object>> rows(Tape tape) {
    return IntStream.range(0, tape.size()).mapToObj(i -> row(tape, i)).toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void moves_told_are_the_tape_each_with_its_own_block(Case c) {
    ObservedRun seen = new ObservedRun();
    Interpretation done = run(c, seen);
    List<List<Object>> moves = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (BlockTrace block : seen.blocks()) {
      moves.addAll(rows(block.moves()));
      for (int k = 0; k < block.moves().size(); k++) {
        assertThat(block.moves().block(k)).isEqualTo(block.number());
      }
      if (block.number() > 0) {
        numbers.add(block.number());
      }
    }
    assertThat(moves).isEqualTo(rows(done.tape()));
    assertThat(numbers).isEqualTo(IntStream.rangeClosed(1, done.blocks()).boxed().toList());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void an_observer_changes_nothing(Case c) {
    Interpretation seen = run(c, new ObservedRun());
    Interpretation alone = Interpreter.interpret(source(c), c.sheet());
    assertThat(seen.findings()).isEqualTo(alone.findings());
    assertThat(seen.assumptions()).isEqualTo(alone.assumptions());
    assertThat(seen.stoppedAt()).isEqualTo(alone.stoppedAt());
    assertThat(rows(seen.tape())).isEqualTo(rows(alone.tape()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void every_finding_is_told_once(Case c) {
    ObservedRun seen = new ObservedRun();
    Interpretation done = run(c, seen);
    List<Finding> told = new ArrayList<>(seen.others());
    seen.blocks().forEach(block -> told.addAll(block.findings()));
    assertThat(told).containsExactlyInAnyOrderElementsOf(done.findings());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void changes_add_up_to_the_state_of_each_move(Case c) {
    ObservedRun seen = new ObservedRun();
    run(c, seen);
    Map<ControlSetting, Object> state = values(seen.start());
    for (BlockTrace block : seen.blocks()) {
      for (ControlSetting setting : block.changes()) {
        state.put(setting, setting.of(block.after()));
      }
      assertThat(state).isEqualTo(values(block.after()));
      moves(block);
    }
  }

  private static Map<ControlSetting, Object> values(ControlState state) {
    Map<ControlSetting, Object> values = new EnumMap<>(ControlSetting.class);
    for (ControlSetting setting : ControlSetting.values()) {
      values.put(setting, setting.of(state));
    }
    return values;
  }

  /** Dwells and the way to a tool change come before the other words of their block act. */
  private static void moves(BlockTrace block) {
    ControlState state = block.after();
    for (int k = 0; k < block.moves().size(); k++) {
      MoveKind kind = block.moves().kind(k);
      boolean early = kind == MoveKind.DWELL || kind == MoveKind.RAPID;
      if (early && !block.before().equals(state)) {
        continue;
      }
      ModalState move = block.moves().state(k);
      assertThat(
              List.<Object>of(
                  move.distance(),
                  move.plane(),
                  move.unit(),
                  move.tool(),
                  move.workOffset(),
                  move.radiusRegister(),
                  move.lengthRegister(),
                  move.rpm()))
          .isEqualTo(
              List.<Object>of(
                  state.distance(),
                  state.plane(),
                  state.unit(),
                  state.tool(),
                  state.workOffset(),
                  state.radiusRegister(),
                  state.lengthRegister(),
                  state.speed()));
      if (state.feedMode() == 94 && kind != MoveKind.RAPID) {
        assertThat(move.feed()).isEqualTo(state.feed().orElse(0));
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void only_the_block_that_stops_is_told_as_stopped(Case c) {
    ObservedRun seen = new ObservedRun();
    Interpretation done = run(c, seen);
    long stopped = seen.blocks().stream().filter(b -> b.outcome() == Outcome.STOPPED).count();
    assertThat(stopped).isLessThanOrEqualTo(done.complete() ? 0 : 1);
    boolean after = false;
    for (BlockTrace block : seen.blocks()) {
      assertThat(block.outcome() == Outcome.EXECUTED && after).isFalse();
      after |= block.outcome() == Outcome.STOPPED;
    }
  }
}
