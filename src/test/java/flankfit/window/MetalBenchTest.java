package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Point;
import flankfit.picture.Camera;
import flankfit.picture.View;
import flankfit.setup.SetupReader;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** The metal at the position: what is made when, what is picked, what is said where it lacks. */
class MetalBenchTest {
  private final Loaded loaded = MetalJob.loaded(MetalJob.sheet());
  private final int end = loaded.input().tape().size();

  private static void await(BooleanSupplier condition) {
    long until = System.nanoTime() + 20_000_000_000L;
    while (!condition.getAsBoolean()) {
      assertThat(System.nanoTime()).isLessThan(until);
      Xdotool.pause(2);
    }
  }

  @Test
  void the_last_picture_stays_until_the_next_is_there_and_only_what_changed_is_made() {
    try (MetalBench bench = new MetalBench(() -> {})) {
      await(
          () -> {
            bench.follow(loaded, end, false);
            return bench.isFine();
          });
      MetalPicture fine = bench.shown().orElseThrow();
      assertThat(fine.fine()).isTrue();
      assertThat(fine.metal().cell()).isEqualTo(fine.asked());
      bench.follow(loaded, end - 1, true);
      assertThat(bench.shown().orElseThrow()).isSameAs(fine);
      assertThat(bench.isCurrent()).isFalse();
      await(
          () -> {
            bench.follow(loaded, end - 1, true);
            return bench.isCurrent();
          });
      // the last move lifts the drill and cuts nothing, but the moves are told apart
      MetalPicture coarse = bench.shown().orElseThrow();
      assertThat(coarse.fine()).isFalse();
      assertThat(coarse.made()).isLessThan(coarse.pieces().faces().size());
      assertThat(coarse.of().moves()).isEqualTo(end - 1);
    }
  }

  @Test
  void a_stopped_picture_waits_for_the_next_step() {
    try (MetalBench bench = new MetalBench(() -> {})) {
      bench.follow(loaded, end, false);
      assertThat(bench.stop()).isTrue();
      assertThat(bench.follow(loaded, end, false)).isFalse();
      assertThat(bench.isWorking()).isFalse();
      assertThat(bench.isStopped()).isTrue();
      bench.follow(loaded, 0, false);
      assertThat(bench.isStopped()).isFalse();
      assertThat(bench.isWorking()).isTrue();
    }
  }

  @Test
  void a_pick_tells_tool_line_and_depth() {
    MetalSubject subject = MetalSubject.of(loaded).orElseThrow();
    MetalPicture picture =
        new MetalMaker(MetalBench.COARSE, 1).answer(new MetalQuestion(subject, end), share -> true);
    Camera plan = new Camera(View.PLAN);
    plan.resize(600, 400);
    plan.fit(subject.stock(), new double[] {10, 10, 10, 10});
    Sections sections = new Sections();
    sections.begin(subject.stock(), subject.middle());
    // the floor of the slot: 3 mm deep, made by the end mill
    MetalPick floor = pick(picture, plan, sections, -5, 0.5).orElseThrow();
    assertThat(floor.place().z()).isCloseTo(-3, within(1e-6));
    List<StateWords.Row> rows =
        new MetalWords(LengthUnit.MILLIMETRE).picked(floor, loaded.input(), 0);
    assertThat(rows)
        .contains(new StateWords.Row("made by", "T1 end mill, line"))
        .contains(new StateWords.Row("line 7", "G1 X17. F400."))
        .contains(new StateWords.Row("depth", "3.000 mm below the top"));
    // the point of the drill: its tip lies at 8 mm
    MetalPick tip = pick(picture, plan, sections, 6.001, 0.001).orElseThrow();
    assertThat(tip.place().z()).isCloseTo(-8, within(0.01));
    assertThat(loaded.input().tape().line(tip.maker())).isEqualTo(MetalJob.DRILLED);
    // beside the slot, untouched
    MetalPick top = pick(picture, plan, sections, -5, 6).orElseThrow();
    assertThat(top.place().z()).isCloseTo(0, within(1e-9));
    assertThat(new MetalWords(LengthUnit.INCH).picked(top, loaded.input(), 0).get(0).value())
        .startsWith("no move");
    // off the block
    assertThat(pick(picture, plan, sections, 30, 0)).isEmpty();
    // below a level plane the metal is cut, not made
    sections.toggle(2);
    sections.to(2, -9);
    MetalPick cut = pick(picture, plan, sections, -5, 0.5).orElseThrow();
    assertThat(cut.isCut()).isTrue();
    assertThat(cut.place().z()).isCloseTo(-9, within(1e-9));
  }

  private static Optional<MetalPick> pick(
      MetalPicture picture, Camera camera, Sections sections, double x, double y) {
    Point p = new Point(x, y, 0);
    return MetalPick.at(
        picture,
        camera,
        sections,
        camera.column(p.x(), p.y(), p.z()),
        camera.row(p.x(), p.y(), p.z()));
  }

  @Test
  void a_sheet_without_stock_is_told_what_to_write() {
    Loaded bare = MetalJob.loaded(MetalJob.sheet("stock"));
    assertThat(MetalSubject.of(bare)).isEmpty();
    List<MissingThread.Lack> lacks = MissingStock.of(bare);
    assertThat(lacks).extracting(MissingThread.Lack::what).containsExactly("the stock");
    assertThat(MissingStock.heading(bare)).isEqualTo("there is no metal to show yet");
    // what it shows to write is read as it stands
    String text = lacks.get(0).example() + "\n";
    assertThat(SetupReader.read("x.setup.toml", text).sheet().orElseThrow().stock()).isPresent();
  }
}
