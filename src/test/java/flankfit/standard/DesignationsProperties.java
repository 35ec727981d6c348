package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Laws that hold for every size and every class. */
class DesignationsProperties {
  private static final List<String> METRIC_CLASSES =
      List.of(
          "4H", "5H", "6H", "7H", "8H", "6G", "7G", "5H6H", "4h", "6h", "6g", "6f", "6e", "8g",
          "4g6g", "3h4h", "7g6g", "9g8g");
  private static final List<String> UNIFIED_CLASSES = List.of("1B", "2B", "3B", "1A", "2A", "3A");

  /** Every size of the tables with every class that it may have. */
  private static List<ThreadSpec> threads = List.of();

  @BeforeAll
  static void parseAll() throws InvalidDesignationException {
    threads = all();
  }

  private static List<ThreadSpec> all() throws InvalidDesignationException {
    List<ThreadSpec> threads = new ArrayList<>();
    for (int tenths = 10; tenths <= 1000; tenths++) {
      for (long pitch : MetricSeries.pitches(tenths * 100L)) {
        String size = "M" + tenths / 10.0 + "x" + pitch / 1000.0;
        METRIC_CLASSES.forEach(known -> addIfStandard(threads, size + "-" + known));
      }
    }
    for (int sixteenths = 4; sixteenths <= 96; sixteenths++) {
      for (String tpi : "4 4.5 5 6 7 8 9 10 11 12 13 14 16 18 20 24 28 32".split(" ", -1)) {
        String size = InchSize.fractionText(sixteenths, 16) + "-" + tpi;
        if (isInSeries(size)) {
          for (String known : UNIFIED_CLASSES) {
            threads.add(Designations.parse(size + "-" + known));
          }
        }
      }
    }
    for (String size :
        "#0-80 #1-64 #1-72 #2-56 #2-64 #3-48 #3-56 #4-40 #4-48 #5-40 #5-44 #6-32 #6-40 #8-32 #8-36 #10-24 #10-32 #12-24 #12-28 #12-32"
            .split(" ", -1)) {
      for (String known : UNIFIED_CLASSES) {
        threads.add(Designations.parse(size + "-" + known));
      }
    }
    return threads;
  }

  private static boolean isInSeries(String size) {
    try {
      Designations.parse(size);
      return true;
    } catch (InvalidDesignationException e) {
      return false;
    }
  }

  private static void addIfStandard(List<ThreadSpec> threads, String text) {
    try {
      threads.add(Designations.parse(text));
    } catch (InvalidDesignationException e) {
      assertThat(e.getMessage()).as(text).containsAnyOf("is not a class for", "no position");
    }
  }

  @Test
  void enough_threads_are_looked_at() throws Exception {
    assertThat(threads).hasSizeGreaterThan(3000);
  }

  @Test
  void least_lies_below_greatest() throws Exception {
    for (ThreadSpec thread : threads) {
      Limits limits = thread.limits();
      assertThat(limits.pitchMin()).as(thread.designation()).isLessThan(limits.pitchMax());
      if (thread.internal()) {
        assertThat(limits.minorMin().orElseThrow())
            .as(thread.designation())
            .isLessThan(limits.minorMax().orElseThrow());
      } else {
        assertThat(limits.majorMin().orElseThrow())
            .as(thread.designation())
            .isLessThan(limits.majorMax().orElseThrow());
      }
    }
  }

  @Test
  void holes_lie_above_the_basic_profile_and_screws_below() throws Exception {
    // half a step of the last printed decimal: basic sizes are rounded, 0.0005 in for minor ones
    double rounding = LengthUnit.INCH.toMillimetres(0.0005) + 1e-9;
    for (ThreadSpec thread : threads) {
      Limits limits = thread.limits();
      String text = thread.designation();
      if (thread.internal()) {
        assertThat(limits.majorMin().orElseThrow()).as(text).isGreaterThan(thread.nominal() - 2e-3);
        assertThat(limits.pitchMin()).as(text).isGreaterThan(thread.basicPitch() - 2e-3);
        assertThat(limits.minorMin().orElseThrow())
            .as(text)
            .isGreaterThan(thread.basicMinor() - rounding);
      } else {
        assertThat(limits.majorMax().orElseThrow()).as(text).isLessThan(thread.nominal() + 2e-3);
        assertThat(limits.pitchMax()).as(text).isLessThan(thread.basicPitch() + 2e-3);
      }
    }
  }

  @Test
  void diameters_of_a_hole_follow_each_other() throws Exception {
    for (ThreadSpec thread : threads) {
      if (thread.internal()) {
        Limits limits = thread.limits();
        assertThat(limits.minorMax().orElseThrow())
            .as(thread.designation())
            .isLessThan(limits.majorMin().orElseThrow());
        assertThat(limits.pitchMax())
            .as(thread.designation())
            .isLessThan(limits.majorMin().orElseThrow());
      }
    }
  }

  @Test
  void the_go_plug_lies_below_the_no_go_plug_and_the_drill_within_the_limits() throws Exception {
    for (ThreadSpec thread : threads) {
      thread
          .gauges()
          .ifPresent(
              plugs ->
                  assertThat(plugs.goPitch())
                      .as(thread.designation())
                      .isLessThan(plugs.noGoPitch()));
      thread
          .drill()
          .ifPresent(
              drill ->
                  assertThat(drill.diameter())
                      .as(thread.designation())
                      .isBetween(
                          thread.limits().minorMin().orElseThrow() - 1e-9,
                          thread.limits().minorMax().orElseThrow() + 1e-9));
    }
  }

  @Test
  void the_canonical_designation_means_the_same_thread() throws Exception {
    for (ThreadSpec thread : threads) {
      ThreadSpec again = Designations.parse(thread.designation());
      assertThat(again.designation()).isEqualTo(thread.designation());
      assertThat(again.limits()).isEqualTo(thread.limits());
      assertThat(again.gauges()).isEqualTo(thread.gauges());
    }
  }

  @Test
  void the_hand_changes_no_limit() throws Exception {
    for (ThreadSpec thread : threads) {
      ThreadSpec left = Designations.parse(thread.designation() + "-LH");
      assertThat(left.leftHand()).isTrue();
      assertThat(left.designation()).isEqualTo(thread.designation() + "-LH");
      assertThat(left.limits()).isEqualTo(thread.limits());
      assertThat(left.gauges()).isEqualTo(thread.gauges());
      assertThat(left.drill()).isEqualTo(thread.drill());
    }
  }

  @Test
  void a_finer_grade_lies_within_a_coarser_one() throws Exception {
    for (long pitch : new long[] {1000, 1500, 2000}) {
      double before = 0;
      for (int grade = 4; grade <= 8; grade++) {
        Limits limits = Designations.parse("M20x" + pitch / 1000.0 + "-" + grade + "H").limits();
        assertThat(limits.pitchMax()).isGreaterThan(before);
        before = limits.pitchMax();
      }
    }
  }

  /**
   * Texts made of the letters of designations, valid and not: an answer or a refusal, nothing else.
   */
  @Test
  void any_text_is_answered_or_refused() {
    Random random = new Random(20);
    String letters = "M0123456789xX.-/ #UNCFES2B6HghGPhLH()\u00D7,\"";
    int refused = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder(i % 3 == 0 ? "M1" : i % 3 == 1 ? "1/" : "");
      for (int j = random.nextInt(14); j >= 0; j--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      try {
        assertThat(Designations.parse(text.toString()).limits().pitchMin()).isPositive();
      } catch (InvalidDesignationException e) {
        assertThat(e.getMessage()).isNotBlank();
        assertThat(e.fix()).isNotBlank();
        refused++;
      }
    }
    assertThat(refused).isBetween(1, 19_999);
  }
}
