package flankfit.gauge;

import flankfit.gauge.Travel.Play;
import flankfit.gauge.WallMeasures.Held;
import flankfit.gauge.WallMeasures.Level;
import flankfit.gauge.WallMeasures.Spread;
import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Measures a wall read into a field. */
final class WallMeasurer {
  /** Points of the least-squares line of a flank, and share of a flank left out at each end. */
  private static final int FLANK_POINTS = 31;

  private static final double FLANK_END = 0.2;

  /** Turns below the first that a bell-mouth is held against (1). */
  private static final double TURNS_BELOW = 2;

  /**
   * Share of a turn that is left out at both ends of what functional diameters are about (1): where
   * the flanks run out they do so at every depth in another direction.
   */
  private static final double BARE_ENDS = 1.0 / 12;

  private final WallField field;
  private final FullForm form;
  private final int[] elements;
  private final PitchLine line;
  private final Across across;
  private final double sign;

  private WallMeasurer(WallField field, FullForm form, int[] elements) {
    this.field = field;
    this.form = form;
    this.elements = elements;
    this.line = new PitchLine(field, elements);
    this.across = new Across(field, line);
    this.sign = field.winding().sign();
  }

  static Optional<WallMeasures> measure(WallField field, double wantedBottom) {
    FullForm form = new FullForm(field);
    int[] elements =
        Arrays.stream(form.elements()).filter(e -> field.height(e) >= wantedBottom).toArray();
    boolean turn = field.turns(elements) >= 1;
    if (!turn) {
      return Optional.empty();
    }
    WallMeasurer measurer = new WallMeasurer(field, form, elements);
    return measurer.line.isTold() ? Optional.of(measurer.measures()) : Optional.empty();
  }

  private WallMeasures measures() {
    double lead = field.spec().lead();
    double bare = field.turns(elements) >= 2 ? BARE_ENDS * lead : 0;
    double low = field.height(elements[elements.length - 1]) + bare;
    double high = field.height(elements[0]) - bare;
    Spread bottoms = spread(all(), i -> across.at(i, k -> field.bottom(elements[k])));
    Spread ridges = spread(all(), i -> across.at(i, this::ridge));
    return new WallMeasures(
        sign > 0 ? bottoms.greatest() : ridges.greatest(),
        sign > 0 ? ridges.least() : bottoms.least(),
        spread(all(), this::pitchDiameter),
        overBall(),
        levels(),
        new Held(
            Functional.full(field, Play.FREE, low, high),
            Functional.full(field, Play.CENTRAL, low, high)),
        new Held(
            Functional.flanks(field, Play.FREE, low, high),
            Functional.flanks(field, Play.CENTRAL, low, high)),
        flankAngle(true),
        flankAngle(false),
        line.leadSlope() * field.spec().lead(),
        leadSpread(),
        sign * 2 * line.depthSlope(),
        roundness(),
        sign * line.axis(0),
        sign * line.axis(1),
        bellMouth(),
        Departure.within(field, line, 0, Angles.TURN).orElseThrow(),
        ThreadEnds.of(field, form, elements));
  }

  private int[] all() {
    return IntStream.range(0, elements.length).toArray();
  }

  private double ridge(int i) {
    return Math.min(field.ridge(elements[i], true), field.ridge(elements[i], false));
  }

  private double pitchDiameter(int i) {
    return across.at(i, line::depth);
  }

  /** Spread of signed diameters; places without a reading are left out. */
  private Spread spread(int[] places, IntToDoubleFunction diameters) {
    double sum = 0;
    double shares = 0;
    double least = Double.NaN;
    double greatest = Double.NaN;
    for (int i : places) {
      double value = sign * diameters.applyAsDouble(i);
      if (Double.isFinite(value)) {
        double share = field.share(elements[i]);
        sum += share * value;
        shares += share;
        least = value >= least ? least : value;
        greatest = value <= greatest ? greatest : value;
      }
    }
    return new Spread(sum / shares, least, greatest);
  }

  private Optional<Spread> overBall() {
    if (!field.spec().internal()) {
      return Optional.empty();
    }
    BallInGroove ball = new BallInGroove(field);
    double[] centres =
        IntStream.range(0, elements.length)
            .mapToDouble(i -> ball.centre(elements[i], line.depth(i)))
            .toArray();
    Spread read = spread(all(), i -> ball.pitchDiameter(across.at(i, k -> centres[k])));
    return Double.isFinite(read.mean()) ? Optional.of(read) : Optional.empty();
  }

  private List<Level> levels() {
    List<Level> levels = new ArrayList<>();
    int first = 0;
    for (int left = (int) field.turns(elements); left > 0; left--) {
      int count = field.within(elements, first, 1);
      int[] turn = IntStream.range(first, first + count).toArray();
      double z = (field.height(elements[first]) + field.height(elements[turn[count - 1]])) / 2;
      levels.add(new Level(z, spread(turn, this::pitchDiameter)));
      first += count;
    }
    return levels;
  }

  private double flankAngle(boolean up) {
    double products = 0;
    double squares = 0;
    for (int e : elements) {
      double weight = field.share(e);
      double ridge = field.ridge(e, up);
      double share = FLANK_END * (field.bottom(e) - ridge);
      double from = Math.max(ridge + share, field.depth(0));
      double to = Math.min(field.bottom(e) - share, field.depth(field.depths() - 1));
      for (int k = 0; k < FLANK_POINTS; k++) {
        double off = (to - from) * (k / (FLANK_POINTS - 1.0) - 0.5);
        products += weight * off * field.flankAt(e, (from + to) / 2 + off, up);
        squares += weight * off * off;
      }
    }
    return Math.atan(-products / squares);
  }

  private double leadSpread() {
    double[] middles = IntStream.range(0, elements.length).mapToDouble(line::middle).toArray();
    return Arrays.stream(middles).max().orElse(0) - Arrays.stream(middles).min().orElse(0);
  }

  private double roundness() {
    double[] sum = new double[field.directions()];
    int[] count = new int[field.directions()];
    for (int i = 0; i < elements.length; i++) {
      sum[field.direction(elements[i])] += line.depthOff(i);
      count[field.direction(elements[i])]++;
    }
    double[] means =
        IntStream.range(0, sum.length)
            .filter(d -> count[d] > 0)
            .mapToDouble(d -> sum[d] / count[d])
            .toArray();
    return Arrays.stream(means).max().orElse(0) - Arrays.stream(means).min().orElse(0);
  }

  private OptionalDouble bellMouth() {
    double lead = field.spec().lead();
    double edge = field.height(elements[0]) - lead;
    int[] below = Arrays.stream(elements).filter(e -> field.height(e) <= edge).toArray();
    boolean enough =
        edge - field.height(elements[elements.length - 1]) >= (TURNS_BELOW - 0.1) * lead;
    if (!enough) {
      return OptionalDouble.empty();
    }
    PitchLine others = new PitchLine(field, below);
    int first = elements.length - below.length;
    double[] wider =
        IntStream.range(0, first)
            .filter(i -> field.isEven(elements[i]))
            .mapToDouble(i -> line.depth(i) - others.depthAt(elements[i]))
            .sorted()
            .toArray();
    return wider.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(2 * wider[wider.length / 2]);
  }
}
