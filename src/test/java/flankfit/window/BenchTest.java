package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Travel;
import flankfit.gauge.Verdict;
import flankfit.picture.Theme;
import flankfit.unit.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The Gauge sheet without a window: a sample, its dial, its gauges, and what they said. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class BenchTest {
  private static final String NAME = "filter-housing-m20";

  @TempDir static Path folder;
  private static Loaded first;
  private final Desk desk = new Desk();
  private final Look look = new Look(Theme.LIGHT, LengthUnit.MILLIMETRE, 1, false);
  private Course course;
  private GaugeSide side;

  /** Without the metal nothing bends, which spares time. */
  @BeforeAll
  static void a_sample_is_gauged() throws Exception {
    Files.copy(Path.of("sample-programs", NAME + ".nc"), folder.resolve(NAME + ".nc"));
    String sheet = Files.readString(Path.of("sample-programs", NAME + ".setup.toml"));
    Files.writeString(
        folder.resolve(NAME + ".setup.toml"), sheet.replaceAll("(?m)^\\[workpiece\\]\\R.*\\R", ""));
    first = loaded();
  }

  @BeforeEach
  void it_lies_on_the_bench() {
    course = new Course(first, look, () -> {});
    side = new GaugeSide(course, look, desk, () -> {}, () -> {});
    side.bench().stopOdds();
    side.follow(true);
  }

  @AfterEach
  void the_bench_is_cleared() {
    side.close();
  }

  private static Loaded loaded() throws Exception {
    GaugedProgram program = GaugedProgram.of(folder.resolve(NAME + ".nc"));
    ProgramSource.Text text = program.read();
    var done = flankfit.control.Interpreter.interpret(text.program(), text.setup());
    var said = program.judge(text, done);
    return Loaded.of(
        new WindowInput(
            program.file(),
            text.program().lines(),
            done.tape(),
            text.setup(),
            said.findings(),
            said.headline(),
            java.util.List.of(),
            java.util.Map.of(),
            Replay.NONE,
            said.gauged()));
  }

  private void await(BooleanSupplier condition) {
    side.follow(true);
    while (!condition.getAsBoolean()) {
      Xdotool.pause(2);
      side.follow(true);
    }
  }

  private Bench bench() {
    return side.bench();
  }

  @Test
  void the_dial_asks_what_if_and_the_answer_is_that_of_gauging_with_that_entry() throws Exception {
    assertThat(bench().shown().thread()).isEqualTo(bench().base());
    assertThat(bench().shown().isWhole()).isTrue();
    side.typed("-0.002");
    await(() -> bench().shown().isCurrent() && bench().shown().isWhole());
    ThreadAnswer shown = bench().shown().thread().orElseThrow();
    assertThat(shown.verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(bench().base().orElseThrow().verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    assertThat(new GaugeWords(LengthUnit.MILLIMETRE).entry(bench()))
        .isEqualTo("what if D4 wear were −0.002 mm? The sheet has −0.045 mm");

    Path sheet = folder.resolve(NAME + ".setup.toml");
    String before = Files.readString(sheet);
    side.put();
    await(() -> desk.notice().contains("D4 wear −0.002 mm stands in"));
    assertThat(Files.readString(sheet)).isEqualTo(before.replace("-0.045", "-0.002"));
    try (var left = Files.list(folder)) {
      assertThat(left).hasSize(2);
    }
    course.take(loaded());
    side.follow(true);
    ThreadAnswer again = bench().base().orElseThrow();
    assertThat(again.finished()).isEqualTo(shown.finished());
    assertThat(again.reason()).isEqualTo(shown.reason());
    assertThat(again.real().orElseThrow().words()).isEqualTo(shown.real().orElseThrow().words());
    assertThat(bench().dial().orElseThrow().isMoved()).isFalse();
  }

  @Test
  void that_the_wall_has_come_is_told_though_the_answer_stays() throws Exception {
    // Asked for when the bench was first looked at; it comes when the dial has rested.
    for (int i = 0; i < 4000 && bench().shape().isEmpty(); i++) {
      Thread.sleep(5);
    }
    assertThat(bench().shape()).isPresent();
    assertThat(bench().follow(true)).isTrue();
  }

  @Test
  void a_gauge_turned_in_by_hand_stops_where_the_answer_says() {
    Plug noGo = bench().noGo();
    Travel way = bench().real().orElseThrow().noGo().travels().get(0);
    assertThat(noGo.turns()).isZero();
    side.twist(noGo, Plug.TWIST);
    side.twist(noGo, Plug.TWIST);
    assertThat(noGo.turns()).isEqualTo(way.turns());
    assertThat(noGo.front()).isEqualTo(way.z());
    assertThat(noGo.isAtEnd()).isTrue();
    side.drive(bench().go());
    assertThat(bench().go().front()).isEqualTo(bench().real().orElseThrow().go().z());
    ThreadAnswer base = bench().base().orElseThrow();
    assertThat(new GaugeWords(LengthUnit.MILLIMETRE).plug(bench().go(), base, bench().real()))
        .matches("stops after 10\\.\\d turns: on the (upper|lower) flank at \\d+°; far enough");

    // Deeper into the metal the thread grows: the NO-GO gauge goes on, and stays where it is.
    side.typed("-0.15");
    await(() -> bench().realEntry() == -0.15);
    assertThat(noGo.turns()).isEqualTo(way.turns());
    side.drive(noGo);
    assertThat(noGo.turns()).isGreaterThan(2);
    // With the entry of the sheet it must come out again as far as it can't stand there.
    side.home();
    side.follow(true);
    assertThat(noGo.turns()).isEqualTo(way.turns());
  }

  @Test
  void what_gauges_said_gives_advice_and_what_is_not_understood_is_told_with_the_way_out() {
    side.askForSeen();
    side.seen("go=goes", 0);
    assertThat(side.said().complaint().why()).contains("enters, stops");
    assertThat(side.said().complaint().fix()).contains("go=stops:3");
    assertThat(desk.over()).isEqualTo(Desk.Over.SEEN);
    side.seen("", 1);
    assertThat(desk.over()).isEqualTo(Desk.Over.NOTHING);
    assertThat(side.said().isComing()).isTrue();
    await(() -> side.said().advice().isPresent());
    var key = side.said().advice().orElseThrow().key().orElseThrow();
    // GO was refused where it should enter: a wear further into the metal mends it.
    assertThat(key.wear()).isLessThan(key.now());
    assertThat(key.chances().goEnters())
        .isGreaterThan(side.said().advice().orElseThrow().asItIs().goEnters());
    side.toBelieved();
    assertThat(bench().dial().orElseThrow().entry()).isEqualTo(key.wear());
    side.takeBack();
    assertThat(side.said().ofThread()).isEmpty();
    assertThat(side.said().advice()).isEmpty();
  }

  @Test
  void an_entry_is_typed_in_any_unit_and_refused_with_a_reason() {
    side.typed("-0.0019 in");
    assertThat(bench().dial().orElseThrow().entry()).isEqualTo(-0.048);
    assertThat(desk.notice()).contains("steps of 0.001 mm");
    side.typed("much");
    assertThat(desk.problems().get(0).what()).contains("much");
    side.typed("9");
    assertThat(desk.notice()).contains("the dial goes from");
    side.undo();
    side.undo();
    assertThat(bench().dial().orElseThrow().isMoved()).isFalse();
    side.put();
    assertThat(desk.notice()).contains("nothing to put in");
  }
}
