package flankfit.standard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Diameters and pitches of the general metric series up to 100 mm, in micrometres.
 *
 * @see "ISO 261, table 2; the coarse pitches as in ISO 724, the fine ones from memory"
 */
final class MetricSeries {
  /** Diameter, coarse pitch or a dash, fine pitches (mm). */
  private static final String TABLE =
      """
      1 .25 .2; 1.1 .25 .2; 1.2 .25 .2; 1.4 .3 .2; 1.6 .35 .2; 1.8 .35 .2; 2 .4 .25; 2.2 .45 .25;
      2.5 .45 .35; 3 .5 .35; 3.5 .6 .35; 4 .7 .5; 4.5 .75 .5; 5 .8 .5; 5.5 - .5; 6 1 .75; 7 1 .75;
      8 1.25 1 .75; 9 1.25 1 .75; 10 1.5 1.25 1 .75; 11 1.5 1 .75; 12 1.75 1.5 1.25 1;
      14 2 1.5 1.25 1; 15 - 1.5 1; 16 2 1.5 1; 17 - 1.5 1; 18 2.5 2 1.5 1; 20 2.5 2 1.5 1;
      22 2.5 2 1.5 1; 24 3 2 1.5 1; 25 - 2 1.5 1; 26 - 1.5; 27 3 2 1.5 1; 28 - 2 1.5 1;
      30 3.5 3 2 1.5 1; 32 - 2 1.5; 33 3.5 3 2 1.5; 35 - 1.5; 36 4 3 2 1.5; 38 - 1.5;
      39 4 3 2 1.5; 40 - 3 2 1.5; 42 4.5 4 3 2 1.5; 45 4.5 4 3 2 1.5; 48 5 4 3 2 1.5;
      50 - 3 2 1.5; 52 5 4 3 2 1.5; 55 - 4 3 2 1.5; 56 5.5 4 3 2 1.5; 58 - 4 3 2 1.5;
      60 5.5 4 3 2 1.5; 62 - 4 3 2 1.5; 64 6 4 3 2 1.5; 65 - 4 3 2 1.5; 68 6 4 3 2 1.5;
      70 - 6 4 3 2 1.5; 72 - 6 4 3 2 1.5; 75 - 4 3 2 1.5; 76 - 6 4 3 2 1.5; 78 - 2;
      80 - 6 4 3 2 1.5; 82 - 2; 85 - 6 4 3 2; 90 - 6 4 3 2; 95 - 6 4 3 2; 100 - 6 4 3 2
      """;

  /** By diameter (µm): the coarse pitch, or 0, then the fine ones (µm). */
  private static final Map<Long, List<Long>> PITCHES = read();

  private MetricSeries() {}

  /** The coarse pitch of a diameter (µm); empty where the series has none. */
  static OptionalLong coarse(long d) {
    List<Long> pitches = PITCHES.getOrDefault(d, List.of(0L));
    return pitches.get(0) == 0 ? OptionalLong.empty() : OptionalLong.of(pitches.get(0));
  }

  /** All pitches the series has for a diameter (µm), coarse first; empty for another diameter. */
  static List<Long> pitches(long d) {
    return PITCHES.getOrDefault(d, List.of()).stream().filter(P -> P > 0).toList();
  }

  /** The word for a pitch of a diameter: coarse, fine, or nothing where the series lacks it. */
  static String word(long d, long P) {
    if (coarse(d).orElse(0) == P) {
      return "coarse";
    }
    return pitches(d).contains(P) ? "fine" : "";
  }

  /** The diameters with a coarse pitch next below and above a diameter (µm), one or two. */
  static List<Long> coarseNear(long d) {
    List<Long> near = new ArrayList<>();
    coarseDiameters().stream()
        .filter(x -> x <= d)
        .max(Comparator.naturalOrder())
        .ifPresent(near::add);
    coarseDiameters().stream()
        .filter(x -> x > d)
        .min(Comparator.naturalOrder())
        .ifPresent(near::add);
    return near;
  }

  private static List<Long> coarseDiameters() {
    return PITCHES.keySet().stream().filter(d -> coarse(d).isPresent()).toList();
  }

  private static Map<Long, List<Long>> read() {
    Map<Long, List<Long>> table = new TreeMap<>();
    for (String row : TABLE.split(";", -1)) {
      List<Long> figures = new ArrayList<>();
      for (String word : row.strip().split(" ", -1)) {
        figures.add(word.equals("-") ? 0 : Rounding.steps(Double.parseDouble(word) * 1000));
      }
      table.put(figures.get(0), List.copyOf(figures.subList(1, figures.size())));
    }
    return Map.copyOf(table);
  }
}
