package flankfit.standard;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Tolerances and fundamental deviations of ISO metric threads in whole micrometres. Diameters d and
 * pitches P come in micrometres too, so that every figure is a whole number.
 *
 * <p>A tolerance is the preferred number nearest to the formula of grade 6, moved by whole steps of
 * R40 for another grade. The few printed figures that are not the nearest number stand here.
 *
 * @see "ISO 965-1, clauses 13.1, 13.3 and 13.4, tables 1 and 3 to 6"
 */
final class MetricTolerances {
  /** Pitches of table 1 (µm). */
  private static final long[] PITCHES = {
    200, 250, 300, 350, 400, 450, 500, 600, 700, 750, 800, 1000, 1250, 1500, 1750, 2000, 2500, 3000,
    3500, 4000, 4500, 5000, 5500, 6000, 8000
  };

  // Table 1, one figure a pitch (µm); 0 where the table has none. Row f from 0.5 mm up is from
  // memory of that table.
  private static final int[] G = {
    17, 18, 18, 19, 19, 20, 20, 21, 22, 22, 24, 26, 28, 32, 34, 38, 42, 48, 53, 60, 63, 71, 75, 80,
    100
  };
  private static final int[] F = {
    0, 0, 0, 34, 34, 35, 36, 36, 38, 38, 38, 40, 42, 45, 48, 52, 58, 63, 70, 75, 80, 85, 90, 95, 118
  };
  private static final int[] E = {
    0, 0, 0, 0, 0, 0, 50, 53, 56, 56, 60, 60, 63, 67, 71, 71, 80, 85, 90, 95, 100, 106, 112, 118,
    140
  };

  /** Ends of the diameter ranges of tables 5 and 6 (µm). */
  private static final long[] RANGES = {
    990, 1400, 2800, 5600, 11200, 22400, 45000, 90000, 180000, 355000
  };

  // Steps of R40 from grade 6 to grades 3 to 9.
  private static final int[] SCREW_STEPS = {-12, -8, -4, 0, 4, 8, 12};
  private static final int[] NUT_STEPS = {0, -3, 1, 5, 9, 13, 0};

  private MetricTolerances() {}

  /** Finest pitch of table 1 (µm). */
  static long finestPitch() {
    return PITCHES[0];
  }

  /** Coarsest pitch of table 1 (µm). */
  static long greatestPitch() {
    return PITCHES[PITCHES.length - 1];
  }

  /** The one or two pitches of table 1 nearest to a pitch, none above the greatest (µm). */
  static List<Long> pitchesNear(long P, long greatest) {
    return Arrays.stream(PITCHES)
        .filter(p -> p <= greatest)
        .boxed()
        .sorted(Comparator.comparingLong(p -> Math.abs(p - P)))
        .limit(2)
        .sorted()
        .toList();
  }

  /** Whether table 1 has a row for this pitch (µm). */
  static boolean hasPitch(long P) {
    return Arrays.binarySearch(PITCHES, P) >= 0;
  }

  /** Whether tables 5 and 6 reach this diameter (µm). */
  static boolean hasDiameter(long d) {
    return d > RANGES[0] && d <= RANGES[RANGES.length - 1];
  }

  /** Whether table 1 has a deviation of this position, one of e f g h G H, at this pitch (µm). */
  static boolean hasPosition(char position, long P) {
    return position == 'h' || position == 'H' || deviation(position, P) > 0;
  }

  /** Size of the fundamental deviation (µm): EI upwards for G and H, es downwards for e f g h. */
  static long deviation(char position, long P) {
    int row = Arrays.binarySearch(PITCHES, P);
    return switch (position) {
      case 'H', 'h' -> 0;
      case 'G', 'g' -> G[row];
      case 'f' -> F[row];
      case 'e' -> E[row];
      default -> throw new IllegalArgumentException("position must be e f g h G H: " + position);
    };
  }

  /** T_d2, pitch diameter of the screw (µm), grades 3 to 9. */
  static long pitchScrew(long d, long P, int grade) {
    return R40.micrometres(pitchGrade6(d, P) + SCREW_STEPS[grade - 3]);
  }

  /** T_D2, pitch diameter of the nut (µm), grades 4 to 8. */
  static long pitchNut(long d, long P, int grade) {
    return R40.micrometres(pitchGrade6(d, P) + NUT_STEPS[grade - 3]);
  }

  /** T_D1, minor diameter of the nut (µm), grades 4 to 8. */
  static long minorNut(long P, int grade) {
    double p = P / 1000.0;
    double formula = p < 1 ? 433 * p - 190 * StrictMath.pow(p, 1.22) : 230 * StrictMath.pow(p, 0.7);
    double grade6 =
        switch ((int) P) {
          case 250 -> 71;
          case 500 -> 140;
          case 1000 -> 236;
          case 2500 -> 450;
          default -> formula;
        };
    return R40.micrometres(R40.nearest(grade6) + SCREW_STEPS[grade - 3]);
  }

  /** T_d, major diameter of the screw (µm), grades 4, 6 and 8. */
  static long majorScrew(long P, int grade) {
    if (P == 8000 && grade == 8) {
      return 1180; // as printed; eight steps above 710 would be 1120
    }
    double p = P / 1000.0;
    double formula = 180 * StrictMath.pow(p, 2 / 3.0) - 3.15 / Math.sqrt(p);
    double grade6 = P == 4000 ? 475 : formula;
    return R40.micrometres(R40.nearest(grade6) + SCREW_STEPS[grade - 3]);
  }

  private static int pitchGrade6(long d, long P) {
    int range = range(d);
    if (range == 2 && P == 500) {
      return R40.nearest(75);
    }
    if ((range == 6 && P == 5000) || (range == 8 && P == 3000)) {
      return R40.nearest(250);
    }
    if (range == 8 && P == 4000) {
      return R40.nearest(280);
    }
    double mean = Math.sqrt((double) RANGES[range] * RANGES[range + 1]) / 1000;
    return R40.nearest(90 * StrictMath.pow(P / 1000.0, 0.4) * StrictMath.pow(mean, 0.1));
  }

  /** Which diameter range the diameter (µm) falls in: over the lower end, up to the upper. */
  private static int range(long d) {
    int range = 0;
    while (range < RANGES.length - 2 && d > RANGES[range + 1]) {
      range++;
    }
    return range;
  }
}
