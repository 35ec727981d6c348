package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.BlockTrace.Outcome;
import flankfit.finding.Finding;
import flankfit.motion.ModalState.Distance;
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
            .map(e -> new Case(e.name(), e.program(), ExampleSheet.of(e.sheet())));
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
    return new Case(name, text, ExampleSheet.of(sheet));
  }

  private static Interpretation run(Case c, BlockObserver observer) {
    return Interpreter.interpret(source(c), c.sheet(), List.of(), observer);
  }

  private static SourceText source(Case c) {
    return SourceText.of(c.name() + ".nc", c.text().getBytes(StandardCharsets.UTF_8));
  }

  private static void same(Tape tape, int i, Tape part, int k) {
    assertThat(part.kind(k)).isEqualTo(tape.kind(i));
    assertThat(part.line(k)).isEqualTo(tape.line(i));
    assertThat(part.block(k)).isEqualTo(tape.block(i));
    assertThat(part.from(k)).isEqualTo(tape.from(i));
    assertThat(part.to(k)).isEqualTo(tape.to(i));
    assertThat(part.programmedTo(k)).isEqualTo(tape.programmedTo(i));
    assertThat(part.inserted(k)).isEqualTo(tape.inserted(i));
    assertThat(part.state(k)).isEqualTo(tape.state(i));
    assertThat(part.seconds(k)).isEqualTo(tape.seconds(i));
    if (tape.kind(i) == MoveKind.ARC) {
      assertThat(part.centreU(k)).isEqualTo(tape.centreU(i));
      assertThat(part.centreV(k)).isEqualTo(tape.centreV(i));
      assertThat(part.radius(k)).isEqualTo(tape.radius(i));
      assertThat(part.endRadius(k)).isEqualTo(tape.endRadius(i));
      assertThat(part.sweep(k)).isEqualTo(tape.sweep(i));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void moves_told_are_the_tape_each_with_its_own_block(Case c) {
    ObservedRun seen = new ObservedRun();
    Interpretation done = run(c, seen);
    int i = 0;
    int before = 0;
    for (BlockTrace block : seen.blocks()) {
      for (int k = 0; k < block.moves().size(); k++) {
        same(done.tape(), i++, block.moves(), k);
        assertThat(block.moves().block(k)).isEqualTo(block.number());
      }
      if (block.number() > 0) {
        assertThat(block.number()).isEqualTo(before + 1);
        before = block.number();
      }
    }
    assertThat(i).isEqualTo(done.tape().size());
    assertThat(before).isEqualTo(done.blocks());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void an_observer_changes_nothing(Case c) {
    Interpretation seen = run(c, new ObservedRun());
    Interpretation alone = Interpreter.interpret(source(c), c.sheet());
    assertThat(seen.findings()).isEqualTo(alone.findings());
    assertThat(seen.assumptions()).isEqualTo(alone.assumptions());
    assertThat(seen.stoppedAt()).isEqualTo(alone.stoppedAt());
    assertThat(seen.tape().size()).isEqualTo(alone.tape().size());
    for (int i = 0; i < alone.tape().size(); i++) {
      same(alone.tape(), i, seen.tape(), i);
    }
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
    Map<ControlSetting, Object> state = new EnumMap<>(ControlSetting.class);
    for (ControlSetting setting : ControlSetting.values()) {
      state.put(setting, setting.of(seen.start()));
    }
    for (BlockTrace block : seen.blocks()) {
      for (ControlSetting setting : block.changes()) {
        assertThat(setting.of(block.before())).isEqualTo(state.get(setting));
        state.put(setting, setting.of(block.after()));
      }
      for (ControlSetting setting : ControlSetting.values()) {
        assertThat(state.get(setting)).isEqualTo(setting.of(block.after()));
      }
      moves(block, state);
    }
  }

  /** Dwells and the way to a tool change come before the other words of their block act. */
  private static void moves(BlockTrace block, Map<ControlSetting, Object> state) {
    for (int k = 0; k < block.moves().size(); k++) {
      var of = block.moves().state(k);
      boolean early =
          block.moves().kind(k) == MoveKind.DWELL || block.moves().kind(k) == MoveKind.RAPID;
      if (early && !block.before().equals(block.after())) {
        continue;
      }
      assertThat(of.distance()).isEqualTo((Distance) state.get(ControlSetting.DISTANCE));
      assertThat(of.plane()).isEqualTo(state.get(ControlSetting.PLANE));
      assertThat(of.unit()).isEqualTo(state.get(ControlSetting.UNIT));
      assertThat(of.tool()).isEqualTo(state.get(ControlSetting.TOOL));
      assertThat(of.workOffset()).isEqualTo(block.after().workOffset());
      assertThat(of.radiusRegister()).isEqualTo(state.get(ControlSetting.RADIUS_REGISTER));
      assertThat(of.lengthRegister()).isEqualTo(block.after().lengthRegister());
      assertThat(of.rpm()).isEqualTo(state.get(ControlSetting.SPEED));
      if (block.after().feedMode() == 94 && block.moves().kind(k) != MoveKind.RAPID) {
        assertThat(of.feed()).isEqualTo(block.after().feed().orElse(0));
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
