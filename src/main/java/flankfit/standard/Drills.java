package flankfit.standard;

import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Suggests a drill for the hole before an internal thread, out of the sizes commonly sold. Always
 * one within the limits of the minor diameter. Common practice, no source.
 *
 * <p>Metric threads take the drill nearest to diameter less pitch, which is 77 % engagement, a half
 * tenth to the even tenth: 6.75 gives 6.8 and 10.25 gives 10.2, the sizes sold for M8 and M12.
 * Unified threads take the inch drill nearest to 75 %, or the metric drill where no inch drill lies
 * within the limits. Engagement is the share of the height 0.6495 of the pitch on either side.
 */
final class Drills {
  /** Engagement aimed at for Unified threads (%). */
  private static final double WANTED_PERCENT = 75;

  /**
   * Limits are printed to 0.0001 in at finest; what binary arithmetic leaves is below this (mm).
   */
  private static final double NOISE = 1e-9;

  /** Number drills 1 to 80 (0.0001 in). */
  private static final int[] NUMBER = {
    2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770,
    1730, 1695, 1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160,
    1130, 1110, 1100, 1065, 1040, 1015, 995, 980, 960, 935, 890, 860, 820, 810, 785, 760, 730, 700,
    670, 635, 595, 550, 520, 465, 430, 420, 410, 400, 390, 380, 370, 360, 350, 330, 320, 310, 292,
    280, 260, 250, 240, 225, 210, 200, 180, 160, 145, 135
  };

  /** Letter drills A to Z (0.0001 in). */
  private static final int[] LETTER = {
    2340, 2380, 2420, 2460, 2500, 2570, 2610, 2660, 2720, 2770, 2810, 2900, 2950, 3020, 3160, 3230,
    3320, 3390, 3480, 3580, 3680, 3770, 3860, 3970, 4040, 4130
  };

  private static final List<Drill> INCH = inchDrills();
  private static final List<Drill> MILLIMETRE = millimetreDrills();

  private Drills() {}

  /** Says in the sources how the drill was chosen, or why there is none. */
  static String source(boolean found) {
    return found
        ? "drill: common practice, no source; a size sold, within the minor-diameter limits"
        : "drill: none, no size commonly sold lies within the minor-diameter limits";
  }

  /** The drill for a metric thread: nominal diameter, pitch and limits (mm). */
  static Optional<Drill> metric(double nominal, double pitch, Limits limits) {
    double wanted = nominal - pitch;
    return within(limits, MILLIMETRE).stream()
        .min(
            Comparator.comparingLong((Drill drill) -> distance(drill.diameter(), wanted))
                .thenComparing(drill -> isOddTenth(drill.diameter())))
        .map(drill -> withEngagement(drill, nominal, pitch));
  }

  /** The drill for a Unified thread: nominal diameter, pitch and limits (mm). */
  static Optional<Drill> unified(double nominal, double pitch, Limits limits) {
    List<Drill> inch = within(limits, INCH);
    List<Drill> candidates = inch.isEmpty() ? within(limits, MILLIMETRE) : inch;
    return candidates.stream()
        .map(drill -> withEngagement(drill, nominal, pitch))
        .min(
            Comparator.comparingDouble(
                drill -> Math.abs(drill.engagementPercent() - WANTED_PERCENT)));
  }

  /** Engagement of a hole (%): share of twice 3/4 of H, which is 1.299 times the pitch. */
  static double engagementPercent(double nominal, double pitch, double hole) {
    return (nominal - hole) / (2 * BasicProfile.MAJOR_TO_PITCH * pitch) * 100;
  }

  private static Drill withEngagement(Drill drill, double nominal, double pitch) {
    return new Drill(
        drill.diameter(), drill.name(), engagementPercent(nominal, pitch, drill.diameter()));
  }

  /** The drills within the limits of the minor diameter, of a list that ascends. */
  private static List<Drill> within(Limits limits, List<Drill> drills) {
    int from = countBelow(drills, limits.minorMin().orElseThrow() - NOISE);
    int to = countBelow(drills, limits.minorMax().orElseThrow() + NOISE);
    return drills.subList(from, to);
  }

  private static int countBelow(List<Drill> drills, double diameter) {
    int low = 0;
    int high = drills.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (drills.get(middle).diameter() < diameter) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Distance in whole micrometres, so that a tie is a tie. */
  private static long distance(double a, double b) {
    return Rounding.steps(Math.abs(a - b) * 1000);
  }

  private static boolean isOddTenth(double diameter) {
    return Rounding.steps(diameter * 10) % 2 != 0;
  }

  /** Fractions of 1/64 in to 2 in and 1/32 in to 3 in, numbers and letters, ascending. */
  private static List<Drill> inchDrills() {
    List<Drill> drills = new ArrayList<>();
    for (int n = 1; n <= 192; n += n < 128 ? 1 : 2) {
      drills.add(inch(n / 64.0, InchSize.fractionText(n, 64) + " in"));
    }
    for (int i = 0; i < NUMBER.length; i++) {
      drills.add(inch(NUMBER[i] / 1e4, "number " + (i + 1)));
    }
    for (int i = 0; i < LETTER.length; i++) {
      drills.add(inch(LETTER[i] / 1e4, "letter " + (char) ('A' + i)));
    }
    drills.sort(Comparator.comparingDouble(Drill::diameter));
    return List.copyOf(drills);
  }

  private static Drill inch(double diameter, String name) {
    return new Drill(LengthUnit.INCH.toMillimetres(diameter), name, 0);
  }

  /** Steps of 0.05 mm to 3 mm, 0.1 to 14, 0.25 to 32, 0.5 to 100. */
  private static List<Drill> millimetreDrills() {
    List<Drill> drills = new ArrayList<>();
    int hundredths = 50;
    while (hundredths <= 10000) {
      double diameter = hundredths / 100.0;
      drills.add(new Drill(diameter, Rounding.text(diameter) + " mm", 0));
      hundredths += millimetreStep(hundredths);
    }
    return List.copyOf(drills);
  }

  private static int millimetreStep(int hundredths) {
    if (hundredths < 300) {
      return 5;
    }
    if (hundredths < 1400) {
      return 10;
    }
    return hundredths < 3200 ? 25 : 50;
  }
}
