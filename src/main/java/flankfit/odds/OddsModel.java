package flankfit.odds;

import flankfit.chance.Spread;
import flankfit.gauge.Deviation;
import flankfit.gauge.Formed;
import flankfit.gauge.ThreadVariation;
import flankfit.gauge.ThreadVariation.Spare;
import flankfit.odds.Input.Kind;
import flankfit.setup.Scatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes threads of points in the unit cube: one coordinate for each input. */
final class OddsModel {
  /** Depth beyond the odds' own that advice can reach (mm). */
  private static final double MARGIN = 0.1;

  /** Depth beyond the window to which the path as moved is read (mm). */
  private static final double BEYOND = 0.03;

  private final ThreadVariation thread;
  private final Inputs inputs;
  private final Gauges given;
  private final Optional<Gauges> straight;
  private final double toWindow;

  private OddsModel(
      ThreadVariation thread,
      Inputs inputs,
      Gauges given,
      Optional<Gauges> straight,
      double toWindow) {
    this.thread = thread;
    this.inputs = inputs;
    this.given = given;
    this.straight = straight;
    this.toWindow = toWindow;
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
    Optional<Gauges> straight =
        open ? gauges(thread.withStraightFlanks(), ranges, toWindow) : Optional.empty();
    return gauges(thread, ranges, toWindow)
        .filter(given -> !open || straight.isPresent())
        .map(given -> new OddsModel(thread, inputs, given, straight, toWindow));
  }

  private static Optional<Gauges> gauges(ThreadVariation thread, Ranges ranges, double toWindow) {
    return Response.of(thread, ranges)
        .map(
            response ->
                new Gauges(
                    response,
                    MovedResponse.of(thread, far(response, toWindow, true), ranges.bending())));
  }

  /** Depth beyond the window that is read (mm), shallower or deeper than now. */
  private static double far(Response response, double toWindow, boolean deeper) {
    return deeper
        ? Math.min(response.deepest(), Math.max(0, toWindow) + BEYOND)
        : Math.max(response.shallowest(), Math.min(0, toWindow) - BEYOND);
  }

  /** The same with the path as moved read about all entries that may be advised. */
  OddsModel forAdvice() {
    return new OddsModel(thread, inputs, farther(given), straight.map(this::farther), toWindow);
  }

  private Gauges farther(Gauges gauges) {
    Response response = gauges.response();
    List<Double> depths = new ArrayList<>();
    depths.add(far(response, toWindow, false));
    depths.add(toWindow);
    depths.add(far(response, toWindow, true));
    return gauges.withDepths(depths);
  }

  private static double reach(Inputs inputs, Kind kind) {
    Spread spread = inputs.spread(kind);
    return Math.max(Math.abs(spread.quantile(1e-9)), Math.abs(spread.quantile(1 - 1e-9)));
  }

  /**
   * One making of the thread.
   *
   * @param gauges which form of teeth
   * @param mill deviations that stay with the mill
   * @param path radius of this part's path, deeper (mm)
   * @param oval greatest less least radius of its circles (mm)
   * @param hole radius of its hole (mm)
   * @param isStraight whether flanks are true V where the sheet leaves them open
   */
  record Made(
      Gauges gauges, Deviation mill, double path, double oval, double hole, boolean isStraight) {
    /** The deviation with the path so much deeper by the register (mm). */
    private Deviation deviation(double depth) {
      return new Deviation(depth + path, mill.cutter(), mill.crest(), mill.bending(), hole);
    }

    /** Diameters with the path so much deeper by the register (mm). */
    Formed at(double depth) {
      return gauges.response().at(deviation(depth));
    }

    /** What gauges have to spare with the path so much deeper (mm). */
    Spare spare(double depth) {
      return gauges.spare(deviation(depth), oval);
    }

    /** What the GO gauge has to spare on a part of its way (mm). */
    double goTo(double length, double depth) {
      return gauges.goTo(length, deviation(depth), oval);
    }

    /** By how much the NO-GO gauge stops on a part of its way (mm). */
    double noGoTo(double length, double depth) {
      return gauges.noGoTo(length, deviation(depth));
    }

    /** Simple pitch diameter by the mill alone, with machine and hole as stated (mm). */
    double ofMill() {
      return gauges.response().at(mill).simple();
    }
  }

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

  ThreadVariation thread() {
    return thread;
  }

  /** The thread as given, without deviations but of depth. */
  Response given() {
    return given.response();
  }

  /** The gauges in the thread as given. */
  Gauges gauges() {
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
