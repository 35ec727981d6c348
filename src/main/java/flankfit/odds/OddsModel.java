package flankfit.odds;

import flankfit.chance.Spread;
import flankfit.gauge.Deviation;
import flankfit.gauge.Formed;
import flankfit.gauge.ThreadVariation;
import flankfit.odds.Input.Kind;
import flankfit.setup.Scatter;
import java.util.List;
import java.util.Optional;

/** Makes threads of points in the unit cube: one coordinate for each input. */
final class OddsModel {
  /** Depth beyond the odds' own that advice can reach (mm). */
  private static final double MARGIN = 0.1;

  private final ThreadVariation thread;
  private final Inputs inputs;
  private final Response given;
  private final Optional<Response> straight;

  private OddsModel(
      ThreadVariation thread, Inputs inputs, Response given, Optional<Response> straight) {
    this.thread = thread;
    this.inputs = inputs;
    this.given = given;
    this.straight = straight;
  }

  /**
   * The model of a thread; empty when no measures can be taken around it.
   *
   * @param toWindow depth from here to the middle between the gauges (mm), either sign
   */
  static Optional<OddsModel> of(ThreadVariation thread, Scatter scatter, double toWindow) {
    Inputs inputs = Inputs.of(thread, scatter);
    double tolerance = thread.spec().limits().pitchMax() - thread.spec().limits().pitchMin();
    double around = MARGIN + tolerance / 2;
    Ranges ranges =
        new Ranges(
            around + Math.max(0, -toWindow),
            around + Math.max(0, toWindow),
            reach(inputs, Kind.CUTTER) + reach(inputs, Kind.RUNOUT),
            reach(inputs, Kind.CREST),
            reach(inputs, Kind.DEFLECTION),
            reach(inputs, Kind.HOLE));
    boolean open = inputs.index(Kind.FORM) >= 0;
    Optional<Response> straight =
        open ? Response.of(thread.withStraightFlanks(), ranges) : Optional.empty();
    return Response.of(thread, ranges)
        .filter(given -> !open || straight.isPresent())
        .map(given -> new OddsModel(thread, inputs, given, straight));
  }

  private static double reach(Inputs inputs, Kind kind) {
    Spread spread = inputs.spread(kind);
    return Math.max(Math.abs(spread.quantile(1e-9)), Math.abs(spread.quantile(1 - 1e-9)));
  }

  /**
   * One making of the thread.
   *
   * @param response which form of teeth
   * @param mill deviations that stay with the mill
   * @param path radius of this part's path, deeper (mm)
   * @param oval greatest less least radius of its circles (mm)
   * @param hole radius of its hole (mm)
   * @param isStraight whether flanks are true V where the sheet leaves them open
   */
  record Made(
      Response response,
      Deviation mill,
      double path,
      double oval,
      double hole,
      boolean isStraight) {
    /** Diameters with the path so much deeper by the register (mm). */
    Formed at(double depth) {
      return response.at(
          new Deviation(depth + path, mill.cutter(), mill.crest(), mill.bending(), hole));
    }

    /** Simple pitch diameter by the mill alone, with machine and hole as stated (mm). */
    double ofMill() {
      return response.at(mill).simple();
    }
  }

  /**
   * What the gauges feel.
   *
   * @param functional functional diameter, the least over an oval circle (mm)
   * @param felt simple pitch diameter for the NO-GO gauge (mm)
   * @param minor diameter of the ridge (mm)
   */
  record Gauged(double functional, double felt, double minor) {}

  /** The making of a point. */
  Made made(double[] point) {
    double cutter = value(point, Kind.CUTTER) + value(point, Kind.RUNOUT);
    double bending = 1 + value(point, Kind.DEFLECTION);
    boolean isStraight = straight.isPresent() && point[inputs.index(Kind.FORM)] < 0.5;
    return new Made(
        isStraight ? straight.orElseThrow() : given,
        new Deviation(0, cutter, value(point, Kind.CREST), bending, 0),
        value(point, Kind.RESOLUTION) + value(point, Kind.CIRCLE),
        value(point, Kind.ROUNDNESS),
        value(point, Kind.HOLE),
        isStraight);
  }

  /** The mill's own deviation of the radius at a point (mm). */
  double cutterAlone(double[] point) {
    return value(point, Kind.CUTTER);
  }

  private double value(double[] point, Kind kind) {
    int i = inputs.index(kind);
    return i < 0 ? 0 : inputs.list().get(i).spread().quantile(point[i]);
  }

  /** What the gauges feel of a making with the path so much deeper (mm). */
  Gauged gauged(Made made, double depth) {
    Formed formed = made.at(depth);
    double functional = formed.functional(thread.spec());
    double least = thread.spec().internal() ? functional - made.oval() : functional + made.oval();
    return new Gauged(least, formed.felt(), formed.ridge());
  }

  ThreadVariation.Spare spare(Gauged g) {
    return thread.spare(g.functional(), g.felt(), g.minor());
  }

  ThreadVariation thread() {
    return thread;
  }

  /** The thread as given, without deviations but of depth. */
  Response given() {
    return given;
  }

  Inputs inputs() {
    return inputs;
  }

  int dimension() {
    return inputs.list().size();
  }

  List<Input> list() {
    return inputs.list();
  }
}
