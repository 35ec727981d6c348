package flankfit.gauge;

import flankfit.gauge.Travel.From;
import flankfit.gauge.Travel.Play;
import flankfit.setup.Offsets;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import flankfit.sweep.SweptWall;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What GO and NO-GO do when the whole program runs with another register, by the rules of the
 * verdict: on an endless helix and on the wall of the path as moved, the mill bending anew. Holes
 * cut by the same moves share what is read of their wall.
 */
final class Trials {
  private final Replays replays;
  private final WorkpieceMetal metal;
  private final Map<RealPath.Key, Optional<Reading>> goTold = new HashMap<>();
  private final Map<RealPath.Key, Optional<Reading>> noGoTold = new HashMap<>();
  private Optional<ReadWall> latest = Optional.empty();

  /**
   * What a gauge does.
   *
   * @param passed whether it does what a good thread makes it do
   * @param margin what the pitch diameter has to spare (mm), below 0 when it does not pass; not a
   *     number when it is not known
   */
  record Reading(boolean passed, double margin) {
    static final Reading NOTHING = new Reading(false, Double.NaN);

    /** The worse of two; a margin that contradicts the other's verdict is none. */
    Reading and(Reading other) {
      double worse = Math.min(margin, other.margin);
      boolean both = passed && other.passed;
      return new Reading(both, both == worse >= 0 ? worse : Double.NaN);
    }
  }

  /** The wall read last: GO and NO-GO of one entry are asked one after the other. */
  private record ReadWall(RealPath.Key key, WallField field, double wanted) {}

  Trials(Replays replays, WorkpieceMetal metal) {
    this.replays = replays;
    this.metal = metal;
  }

  /** What the gauges do with other registers. */
  Tried with(FoundThread found, Offsets offsets) {
    return replays
        .again(offsets, found.model().finish().pass())
        .flatMap(run -> moved(found, run.passes()).map(m -> new Tried(m, run)))
        .orElseGet(Tried::new);
  }

  /** The same thread by passes of another run; empty when that makes other passes. */
  private Optional<FoundThread> moved(FoundThread found, List<Pass> passes) {
    List<CutPass> cuts = found.model().passes();
    if (cuts.size() != passes.size()) {
      return Optional.empty();
    }
    List<CutPass> again = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      CutPass cut = cuts.get(i);
      if (passes.get(i).state().tool() != cut.tool().number()) {
        return Optional.empty();
      }
      again.add(new CutPass(passes.get(i), cut.tool(), cut.teeth(), cut.tooth()));
    }
    ThreadModel model = new ThreadModel(found.spec(), found.model().blankRadius(), again);
    FoundThread stiff =
        new FoundThread(found.hole(), found.spec(), model, found.partBottom(), found.text());
    return Optional.of(stiff.bent(metal.ofTrial(stiff)));
  }

  /** One register, tried; the wall is read only when an endless helix would pass. */
  final class Tried {
    private final Optional<FoundThread> found;
    private final Optional<Replays.Again> run;
    private final Reading endlessGo;
    private final Reading endlessNoGo;

    private Tried() {
      found = Optional.empty();
      run = Optional.empty();
      endlessGo = Reading.NOTHING;
      endlessNoGo = Reading.NOTHING;
    }

    private Tried(FoundThread found, Replays.Again run) {
      this.found = Optional.of(found);
      this.run = Optional.of(run);
      RegularThread thread = found.asLeft().thread();
      if (Judge.notMeasurable(found, thread).isPresent()) {
        endlessGo = Reading.NOTHING;
        endlessNoGo = Reading.NOTHING;
        return;
      }
      ThreadSpec spec = found.spec();
      Measurer measurer = new Measurer(spec);
      Fit fit = measurer.fit(found.tight().thread(), found.accumulatedError());
      double felt = measurer.simple(found.felt().thread());
      double sign = spec.internal() ? 1 : -1;
      endlessGo = reading(sign * (fit.functional() - Mate.goPitch(spec)));
      endlessNoGo = reading(sign * (Mate.noGoPitch(spec) - felt));
    }

    /** Whether GO enters as far as the thread is wanted. */
    Reading go() {
      return endlessGo.passed() ? walked(endlessGo, true) : endlessGo;
    }

    /** Whether NO-GO stops within the turns that the rule allows. */
    Reading noGo() {
      return endlessNoGo.passed() ? walked(endlessNoGo, false) : endlessNoGo;
    }

    private Reading walked(Reading endless, boolean isGo) {
      RealPath path = new RealPath(found.orElseThrow(), run.orElseThrow().tape());
      if (path.impossible().isPresent()) {
        return endless;
      }
      Optional<Reading> walked =
          isGo
              ? goTold.computeIfAbsent(path.key(), key -> screwed(key, path, Trials::go))
              : noGoTold.computeIfAbsent(path.key(), key -> screwed(key, path, Trials::noGo));
      return walked.map(endless::and).orElse(endless);
    }
  }

  /** Empty where gauging would tell that no gauge can be screwed in. */
  private Optional<Reading> screwed(
      RealPath.Key key, RealPath path, Function<ReadWall, Reading> gauge) {
    try {
      return Optional.of(gauge.apply(read(key, path)));
    } catch (UnsettledGaugeException e) {
      // the verdict is that of an endless helix then, as in gauging itself
      return Optional.empty();
    }
  }

  private ReadWall read(RealPath.Key key, RealPath path) {
    if (latest.filter(l -> l.key().equals(key)).isEmpty()) {
      SweptWall wall = path.wall();
      double wanted = Math.max(path.wanted(), wall.bottom());
      latest = Optional.of(new ReadWall(key, path.read(wall), wanted));
    }
    return latest.orElseThrow();
  }

  private static Reading go(ReadWall wall) {
    ThreadGauge plug = ThreadGauge.go(wall.field().spec());
    boolean enters = Travel.of(wall.field(), plug).reaches(wall.wanted());
    Travelling way = new Travelling(wall.field(), plug, From.MOUTH, Play.FREE);
    return new Reading(enters, way.clearanceTo(wall.wanted()));
  }

  private static Reading reading(double margin) {
    return new Reading(margin >= 0, margin);
  }

  private static Reading noGo(ReadWall wall) {
    WallField field = wall.field();
    ThreadSpec spec = field.spec();
    ThreadGauge plug = ThreadGauge.noGo(spec);
    TurnsRuling ruling = TurnsRuling.of(field, plug);
    double allowed = ruling.allowed() * spec.lead();
    double least = Double.POSITIVE_INFINITY;
    for (Travel travel : ruling.travels()) {
      double limit =
          travel.from() == From.MOUTH ? field.mouth() - allowed : field.farMouth() + allowed;
      Travelling way = new Travelling(field, plug, travel.from(), Play.FREE);
      least = Math.min(least, -way.clearanceTo(limit));
    }
    return new Reading(ruling.accepted(), least);
  }
}
