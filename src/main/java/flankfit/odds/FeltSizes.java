package flankfit.odds;

import flankfit.chance.DriftGrid;
import flankfit.chance.Spread;
import flankfit.chance.Tabulated;
import flankfit.gauge.Deviation;
import flankfit.odds.Input.Kind;
import flankfit.sweep.Root;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Everything that scatters, told by one size: how much larger the mill cuts than the sheet says, on
 * the radius, its form and bending included ("size as cut"). For each draw it is found from which
 * size on GO enters and up to which NO-GO stops; counted over the draws that gives the odds of each
 * gauge for any size and register.
 */
final class FeltSizes {
  /** Distance of sizes (mm on the radius). */
  static final double STEP = 2e-4;

  /** Sizes that are thought of (mm on the radius, either way). */
  static final double MOST = 0.3;

  /** Sizes with the register's change included (mm). */
  static final double WIDEST = 1.2;

  static final int CELLS = (int) Math.rint(2 * MOST / STEP) + 1;

  private static final int WIDE = (int) Math.rint(2 * WIDEST / STEP) + 1;

  /** Draws; each needs two searches. */
  private static final int DRAWS = 2048;

  /**
   * Standard deviation of a gauge's own size and of the hand that turns it (mm on the diameter):
   * common practice, no source.
   */
  static final double FEEL = 0.002;

  private static final int MOST_STEPS = 8;

  /** Spare at which a search ends (mm). */
  private static final double SETTLED = 1e-7;

  private final OddsModel model;
  private final double sign;
  private final Tabulated pitchOfSize;
  private final double[] restOfDraw = new double[DRAWS];
  private final OddsModel.Made[] made = new OddsModel.Made[DRAWS];
  private final double[] sizeOfDraw = new double[DRAWS];
  private final double[] go = new double[WIDE];
  private final double[] noGo = new double[WIDE];
  private final double[] good = new double[WIDE];
  private final double[] goOfPart = new double[WIDE];
  private final double[] runsOfPart = new double[WIDE];
  private final Map<Double, double[]> goTurns = new HashMap<>();
  private final Map<Double, double[]> noGoTurns = new HashMap<>();
  private final double plain;

  FeltSizes(OddsModel model, long seed) {
    this.model = model;
    this.sign = model.thread().spec().internal() ? 1 : -1;
    Response given = model.given();
    this.pitchOfSize =
        Tabulated.of(
            x -> sign * given.at(Deviation.none().deeper(x)).simple(),
            given.shallowest(),
            given.deepest(),
            1e-6);
    double[][] points = ThreadOdds.points(model, DRAWS, seed);
    int plainGood = 0;
    for (int m = 0; m < DRAWS; m++) {
      made[m] = model.made(points[m]);
      sizeOfDraw[m] = pitchOfSize.where(sign * made[m].ofMill());
      restOfDraw[m] = sizeOfDraw[m] - model.cutterAlone(points[m]);
      plainGood += count(made[m]) ? 1 : 0;
    }
    this.plain = (double) plainGood / DRAWS;
    sum(go);
    sum(noGo);
    sum(good);
    sum(goOfPart);
    sum(runsOfPart);
    for (int i = 0; i < WIDE; i++) {
      noGo[i] = 1 - noGo[i];
    }
  }

  /** Enters one draw into the tables, as steps; says whether the plain plugs pass. */
  private boolean count(OddsModel.Made draw) {
    boolean plainPasses = draw.spare(0).plain() >= 0;
    double part = threshold(draw, depth -> draw.spare(depth).go());
    double partRuns = threshold(draw, depth -> -draw.spare(depth).noGo());
    step(goOfPart, part, 1);
    step(runsOfPart, partRuns, 1);
    // The path of this part is not the mill's: it is taken off again.
    double enters = part - draw.path();
    double runs = partRuns - draw.path();
    step(go, enters, 1);
    step(noGo, runs, 1);
    if (plainPasses && enters < runs) {
      step(good, enters, 1);
      step(good, runs, -1);
    }
    return plainPasses;
  }

  /** Odds of a gauge for all sizes, of the size from which on it goes in each draw. */
  private double[] goes(Goes goes) {
    double[] table = new double[WIDE];
    for (OddsModel.Made draw : made) {
      step(table, threshold(draw, depth -> goes.spare(draw, depth)), 1);
    }
    sum(table);
    return table;
  }

  /** What a gauge has to spare to go somewhere in a draw (mm). */
  private interface Goes {
    double spare(OddsModel.Made draw, double depth);
  }

  /** Turns that the GO gauge has to go (1). */
  double wantedTurns() {
    return model.gauges().wanted() / model.thread().spec().lead();
  }

  /** Odds that GO passes the whole length, for all sizes of a part, its own path included. */
  double[] goPasses() {
    return goOfPart.clone();
  }

  /** Odds that NO-GO passes the turns allowed, likewise. */
  double[] noGoRuns() {
    return runsOfPart.clone();
  }

  /** Odds that GO goes at least so many turns by all that is known of the path, likewise. */
  double[] goTurns(double turns) {
    double length = turns * model.thread().spec().lead();
    return model.gauges().isMoved()
        ? goTurns.computeIfAbsent(turns, t -> goes((draw, depth) -> draw.goTo(length, depth)))
        : goPasses();
  }

  /** The same of the NO-GO gauge from the mouth. */
  double[] noGoTurns(double turns) {
    double length = turns * model.thread().spec().lead();
    return model.gauges().isMoved()
        ? noGoTurns.computeIfAbsent(turns, t -> goes((draw, depth) -> -draw.noGoTo(length, depth)))
        : noGoRuns();
  }

  /**
   * The size of the part, its path included, from which a spare that rises with depth is above 0.
   */
  private double threshold(OddsModel.Made draw, DoubleUnaryOperator spare) {
    double low = model.given().shallowest();
    double high = model.given().deepest();
    double depth = secant(spare, low, high);
    if (Double.isNaN(depth)) {
      if (spare.applyAsDouble(low) >= 0) {
        return Double.NEGATIVE_INFINITY;
      }
      if (spare.applyAsDouble(high) < 0) {
        return Double.POSITIVE_INFINITY;
      }
      depth = Root.between(spare, low, high);
    }
    return pitchOfSize.where(sign * draw.at(depth).simple());
  }

  /** Where a spare is 0, quickly, since it rises nearly evenly by 2 : 1; NaN when not found so. */
  private static double secant(DoubleUnaryOperator spare, double low, double high) {
    double at = 0;
    double value = spare.applyAsDouble(at);
    double slope = 2;
    for (int i = 0; i < MOST_STEPS; i++) {
      double next = at - value / slope;
      if (!(next >= low && next <= high)) {
        return Double.NaN;
      }
      double there = spare.applyAsDouble(next);
      if (Math.abs(there) < SETTLED) {
        return next;
      }
      slope = (there - value) / (next - at);
      at = next;
      value = there;
    }
    return Double.NaN;
  }

  /** A step at a size, shared by the two cells about it. */
  private static void step(double[] table, double size, double height) {
    double at = (size + WIDEST) / STEP;
    if (at >= WIDE - 1) {
      return;
    }
    double cell = Math.max(0, at);
    int i = (int) Math.floor(cell);
    double share = cell - i;
    table[i] += height * (1 - share) / DRAWS;
    table[i + 1] += height * share / DRAWS;
  }

  private static void sum(double[] steps) {
    for (int i = 1; i < steps.length; i++) {
      steps[i] += steps[i - 1];
    }
  }

  /**
   * How likely sizes as cut are by the sheet alone: one for each cell, summing to 1. The spread of
   * the cutter's diameter is put in exactly, all else by draws.
   */
  double[] prior() {
    Spread cutter = model.inputs().spread(Kind.CUTTER);
    double half = Math.max(STEP / 2, cutter.quantile(1 - 1e-12));
    double[] prior = new double[CELLS];
    for (int m = 0; m < DRAWS; m++) {
      double first = (restOfDraw[m] - half + MOST) / STEP;
      double last = (restOfDraw[m] + half + MOST) / STEP;
      for (int i = (int) Math.floor(first); i <= Math.ceil(last); i++) {
        double inside = Math.min(i + 0.5, last) - Math.max(i - 0.5, first);
        if (inside > 0) {
          prior[Math.min(CELLS - 1, Math.max(0, i))] += inside / (last - first) / DRAWS;
        }
      }
    }
    return prior;
  }

  /** Size of a cell (mm on the radius). */
  static double size(int cell) {
    return -MOST + cell * STEP;
  }

  /** Odds that GO enters for a size with the register's change (1). */
  double goEnters(double size) {
    return at(go, size);
  }

  /** Odds that NO-GO stops (1). */
  double noGoStops(double size) {
    return at(noGo, size);
  }

  /** Odds that all gauges pass (1). */
  double good(double size) {
    return at(good, size);
  }

  /** Odds that the plain plugs pass, whatever the size (1). */
  double plain() {
    return plain;
  }

  /** Odds over sizes, found by a hand and a gauge that are not perfect. */
  static double[] felt(double[] odds) {
    return DriftGrid.smoothed(odds, FEEL / 2 / STEP);
  }

  /** A table over all sizes. */
  double[] each(DoubleUnaryOperator value) {
    double[] table = new double[WIDE];
    for (int i = 0; i < WIDE; i++) {
      table[i] = value.applyAsDouble(i * STEP - WIDEST);
    }
    return table;
  }

  /** Half of the even spread of an input of the path (mm on the radius). */
  double half(Kind kind) {
    return model.inputs().spread(kind).quantile(1 - 1e-12);
  }

  /** Odds that all gauges pass when the size wanders by a standard deviation (mm). */
  double[] goodWandering(double deviation) {
    return DriftGrid.smoothed(good, deviation / STEP);
  }

  /** A value of one of these tables at a size (mm). */
  static double at(double[] table, double size) {
    double cell = Math.min(WIDE - 1.0, Math.max(0, (size + WIDEST) / STEP));
    int i = Math.min(WIDE - 2, (int) cell);
    double share = cell - i;
    return table[i] * (1 - share) + table[i + 1] * share;
  }

  /** Simple pitch diameter of a size as cut (mm). */
  double pitch(double size) {
    return sign * pitchOfSize.at(size);
  }

  /** Size as cut of a simple pitch diameter (mm on the radius). */
  double sizeOf(double pitch) {
    return pitchOfSize.where(sign * pitch);
  }

  /** Change of the pitch diameter with the size about a size (1), without sign. */
  double slope(double size) {
    double d = 0.005;
    return (pitchOfSize.at(size + d) - pitchOfSize.at(size - d)) / (2 * d);
  }

  /** Standard deviation of one part's path about the register's (mm on the radius). */
  double pathDeviation() {
    double a = model.inputs().spread(Kind.RESOLUTION).deviation();
    double b = model.inputs().spread(Kind.CIRCLE).deviation();
    return Math.sqrt(a * a + b * b);
  }

  int draws() {
    return DRAWS;
  }

  OddsModel.Made made(int draw) {
    return made[draw];
  }

  double sizeOfDraw(int draw) {
    return sizeOfDraw[draw];
  }
}
