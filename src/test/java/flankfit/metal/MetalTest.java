package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.solid.SurfaceCells;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** The metal of small jobs: moments, threads, memory, and what is not modelled. */
class MetalTest {
  private static final long MEBIBYTE = 1 << 20;

  private static Tool endMill(int number, double diameter) {
    return SampleTools.tool(number, Tool.Kind.END_MILL, diameter, 20);
  }

  /** A slot, a ramp, a bored ring and a thread groove. */
  private static Job valveBlock() {
    Job job = new Job().block(-10, -8, -10, 10, 8, 0);
    job.take(endMill(1, 6)).rapid(-14, -3, -2).line(14, -3, -2).rapid(14, -3, 5);
    job.rapid(4, 4, 5).line(4, 4, 0).line(-5, 4, -4).rapid(-5, 4, 5);
    job.take(SampleTools.threadMill(2, 4, 3, 1.0)).rapid(2, 1, 5).line(2, 1, -7);
    return job.arc(0, 1, 2 * Math.PI, -6).line(0, 1, -6).rapid(0, 1, 20);
  }

  /** Everything that cells say, in one number. */
  private static long digest(SurfaceCells cells) {
    long sum = cells.count();
    for (int i = 0; i < cells.count(); i++) {
      sum = sum * 31 + cells.x(i);
      sum = sum * 31 + cells.y(i);
      sum = sum * 31 + cells.z(i);
      sum = sum * 31 + cells.size(i);
      for (int c = 0; c < 8; c++) {
        int s = cells.size(i);
        boolean metal =
            cells.metal(
                cells.x(i) + (c & 1) * s, cells.y(i) + (c >> 1 & 1) * s, cells.z(i) + (c >> 2) * s);
        sum = sum * 31 + (metal ? 1 : 0);
      }
    }
    return sum;
  }

  @Test
  void forward_and_back_equal_from_scratch_bit_for_bit() {
    Metal walked = valveBlock().metal(0.2);
    int end = walked.cuts().tape().size();
    long[] cells = new long[end + 1];
    double[] volumes = new double[end + 1];
    for (int k = 0; k <= end; k++) {
      cells[k] = digest(walked.at(k).cells());
      volumes[k] = walked.volume(k);
    }
    for (int k = end; k >= 0; k -= 3) {
      assertThat(digest(walked.at(k).cells())).isEqualTo(cells[k]);
      assertThat(walked.volume(k)).isEqualTo(volumes[k]);
      Metal fresh = valveBlock().metal(0.2);
      assertThat(digest(fresh.at(k).cells())).isEqualTo(cells[k]);
      assertThat(fresh.volume(k)).isEqualTo(volumes[k]);
    }
    for (int k = 1; k <= end; k++) {
      assertThat(volumes[k]).isLessThanOrEqualTo(volumes[k - 1] + 1e-9);
    }
    assertThat(volumes[end]).isLessThan(volumes[0] - 100);
  }

  @Test
  void one_thread_and_two_give_the_same_bits() {
    Metal one = valveBlock().metal(MetalOptions.usual().withCell(0.15).withThreads(1));
    Metal two = valveBlock().metal(MetalOptions.usual().withCell(0.15).withThreads(2));
    int end = one.cuts().tape().size();
    assertThat(digest(one.at(end).cells())).isEqualTo(digest(two.at(end).cells()));
    assertThat(one.volume(end)).isEqualTo(two.volume(end));
    assertThat(one.removed()).isEqualTo(two.removed());
  }

  @Test
  void bricks_that_were_forgotten_come_back_the_same() {
    Metal ample = valveBlock().metal(0.15);
    int end = ample.cuts().tape().size();
    digest(ample.at(end).cells());
    long most = ample.memoryUsed();
    ample.removed();
    assertThat(ample.memoryUsed()).isGreaterThan(most);
    Metal tight = valveBlock().metal(MetalOptions.usual().withCell(0.15).withMemory(most));
    assertThat(tight.removed()).isEqualTo(ample.removed());
    assertThat(digest(tight.at(end).cells())).isEqualTo(digest(ample.at(end).cells()));
    assertThat(tight.bricksMade()).isGreaterThan(ample.bricksMade());
    assertThat(tight.memoryUsed()).isLessThanOrEqualTo(most);
  }

  @Test
  void cells_asked_for_that_do_not_fit_are_refused_with_those_that_do() throws Exception {
    Job job = valveBlock();
    MetalOptions options = MetalOptions.usual().withCell(0.02).withMemory(2 * MEBIBYTE);
    assertThatThrownBy(() -> Metal.of(job.tape(), job.sheet(), options, MetalProgress.NONE))
        .isInstanceOfSatisfying(
            TooFineException.class,
            e -> {
              assertThat(e.asked()).isEqualTo(0.02);
              assertThat(job.metal(options.withCell(e.fits())).cell()).isEqualTo(e.fits());
            });
  }

  @Test
  void cells_that_tools_want_are_coarsened_to_the_memory_and_told() {
    Metal metal = valveBlock().metal(MetalOptions.usual().withMemory(2 * MEBIBYTE));
    assertThat(metal.assumptions()).anyMatch(s -> s.startsWith("cells of "));
    assertThat(metal.memoryUsed()).isLessThanOrEqualTo(2 * MEBIBYTE);
    Metal ample = valveBlock().metal(MetalOptions.usual());
    assertThat(ample.cell()).isEqualTo(1.0 / 50);
    assertThat(ample.assumptions()).noneMatch(s -> s.startsWith("cells of "));
  }

  @Test
  void memory_in_which_no_cells_would_ever_fit_is_refused() {
    MetalOptions usual = MetalOptions.usual();
    assertThatThrownBy(() -> usual.withMemory(1000))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("memory");
    assertThatThrownBy(() -> usual.withMemory(MEBIBYTE - 1))
        .isInstanceOf(IllegalArgumentException.class);
    // The least that is taken leads to an end.
    Metal metal = valveBlock().metal(usual.withMemory(MEBIBYTE));
    assertThat(metal.memoryUsed()).isLessThanOrEqualTo(MEBIBYTE);
    assertThat(metal.volume(0)).isPositive();
  }

  @Test
  void progress_can_end_the_work() {
    Job job = valveBlock();
    AtomicInteger asked = new AtomicInteger();
    MetalProgress progress = share -> asked.incrementAndGet() < 3;
    assertThatThrownBy(
            () -> Metal.of(job.tape(), job.sheet(), MetalOptions.usual().withCell(0.01), progress))
        .isInstanceOf(CancellationException.class);
    assertThat(asked.get()).isEqualTo(3);
  }

  @Test
  void a_tool_that_stands_still_or_is_not_in_the_sheet_takes_nothing() {
    Job job = new Job().block(-10, -8, -10, 10, 8, 0).take(endMill(1, 6));
    job.spindle(ModalState.Spindle.OFF).rapid(0, 0, -5).rapid(0, 0, 5);
    Metal still = job.metal(0.4);
    assertThat(still.removed()).isEmpty();
    assertThat(still.volume(2)).isEqualTo(still.volume(0));
    job.spindle(ModalState.Spindle.COUNTER_CLOCKWISE).rapid(0, 0, -5);
    assertThat(job.metal(0.4).removed().get(0).volume()).isCloseTo(Math.PI * 9 * 5, within(0.5));
    SetupSheet none = new Job().block(-10, -8, -10, 10, 8, 0).sheet();
    Metal unknown = metal(job, none);
    assertThat(unknown.removed()).isEmpty();
    assertThat(unknown.assumptions())
        .containsExactly("tool 1 takes no metal away: it is not in the sheet");
  }

  private static Metal metal(Job moves, SetupSheet sheet) {
    try {
      return Metal.of(moves.tape(), sheet, MetalOptions.usual().withCell(0.4), MetalProgress.NONE);
    } catch (TooFineException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void a_hole_of_which_nothing_is_said_is_there_unless_a_move_makes_it() {
    Hole hole =
        new Hole(
            "port",
            false,
            0,
            0,
            0,
            5,
            Optional.empty(),
            Math.PI,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            0);
    Job milled =
        new Job()
            .block(-10, -8, -10, 10, 8, 0)
            .hole(hole)
            .take(SampleTools.threadMill(2, 4, 3, 1.0))
            .line(0, 0, -7);
    assertThat(milled.metal(0.2).volume(0)).isCloseTo(3200 - 62.5 * Math.PI, within(0.5));
    Job drilled = new Job().block(-10, -8, -10, 10, 8, 0).hole(hole).take(endMill(1, 5));
    drilled.line(0, 0, -12);
    assertThat(drilled.metal(0.2).volume(0)).isCloseTo(3200, within(0.5));
    assertThat(drilled.metal(0.2).volume(1)).isCloseTo(3200 - 62.5 * Math.PI, within(0.5));
    assertThat(drilled.metal(0.2).assumptions()).anyMatch(s -> s.contains("a move of the program"));
  }

  /** Common practice, no source: without its pitch nothing is known of a tap but its outside. */
  @Test
  void a_tap_without_a_pitch_leaves_its_outside_and_says_so() {
    Tool tap = SampleTools.tool(3, Tool.Kind.TAP, 6, 20);
    Job job = new Job().block(-10, -8, -10, 10, 8, 0).take(tap).rapid(0, 0, 5).line(0, 0, -12);
    Metal metal = job.metal(0.2);
    double bored = metal.volume(0) - metal.volume(2);
    assertThat(bored / (Math.PI * 9 * 10)).isCloseTo(1, within(2e-3));
    assertThat(metal.assumptions())
        .containsExactly(
            "tool 3: the pitch of the tap is not stated, so it leaves a smooth hole of its whole"
                + " diameter, its thread is not modelled");
  }

  @Test
  void a_sheet_without_stock_is_refused() {
    Job job = new Job().take(endMill(1, 5)).line(0, 0, 1);
    assertThatThrownBy(() -> job.metal(0.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no stock");
  }
}
