package flankfit.gauge;

import flankfit.motion.ModalState;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Root;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds the register entries that put the thread where it is wanted. How far a register moves each
 * pass is learnt by running the program again with the entry changed both ways, so sign, side,
 * sense and kind of entry come from the motion itself. Entries are then solved on the surface with
 * moved passes, and proved by running the program once more.
 */
final class OffsetSolver {
  /** Change of the entry for the difference (mm): no path changes its shape over so little. */
  private static final double STEP = 0.001;

  /** Greatest departure of a pass's radius from its straight line over the step (mm). */
  private static final double LINEAR = 1e-7;

  /** Greatest departure of the proof from what was solved (mm). */
  private static final double PROVED = 1e-5;

  /** Change of the path with the register below which the register does not steer it (1). */
  private static final double LEAST_SLOPE = 1e-3;

  /** Halvings of the shallow end of a search until there is a groove to measure. */
  private static final int HALVINGS = 34;

  private final SetupSheet setup;
  private final RegisterInForce register;
  private final Function<Offsets, Optional<List<Pass>>> replayed;

  /**
   * Makes a solver.
   *
   * @param register the register of the finishing pass
   * @param replayed the passes about the thread's axis when the program runs with other registers
   */
  OffsetSolver(
      SetupSheet setup,
      RegisterInForce register,
      Function<Offsets, Optional<List<Pass>>> replayed) {
    this.setup = setup;
    this.register = register;
    this.replayed = replayed;
  }

  /** The advice; empty when no register moves the finishing pass, or not evenly. */
  Optional<OffsetAdvice> solve(FoundThread found) {
    Optional<double[]> slopes = slopes(found);
    if (slopes.isEmpty()) {
      return Optional.empty();
    }
    Search search = new Search(found, slopes.get());
    double more = search.simple(search.changeFor(STEP));
    double less = search.simple(search.changeFor(-STEP));
    double sensitivity = (more - less) / (2 * STEP);
    return search.advise(found.model().finish().pass().state(), sensitivity);
  }

  /**
   * How the wear entry moves the radius of each pass (1); empty when no register moves the
   * finishing pass, or not evenly.
   */
  Optional<double[]> slopes(FoundThread found) {
    ModalState state = found.model().finish().pass().state();
    if (state.radiusRegister() == 0 || state.compensation() == ModalState.Compensation.OFF) {
      return Optional.empty();
    }
    Optional<double[]> more = changes(found, STEP);
    Optional<double[]> less = changes(found, -STEP);
    if (more.isEmpty() || less.isEmpty() || !isLinear(more.get(), less.get())) {
      return Optional.empty();
    }
    double[] slopes = new double[more.get().length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = (more.get()[i] - less.get()[i]) / (2 * STEP);
    }
    boolean steered = Math.abs(slopes[found.model().finishing()]) >= LEAST_SLOPE;
    return steered ? Optional.of(slopes) : Optional.empty();
  }

  private static boolean isLinear(double[] more, double[] less) {
    for (int i = 0; i < more.length; i++) {
      if (Math.abs(more[i] + less[i]) > LINEAR) {
        return false;
      }
    }
    return true;
  }

  /** How the radii of the passes change when the wear entry does (mm). */
  private Optional<double[]> changes(FoundThread found, double change) {
    List<CutPass> passes = found.model().passes();
    return replayed
        .apply(register.tried(setup.offsets(), change))
        .filter(again -> again.size() == passes.size())
        .map(
            again -> {
              double[] radii = new double[passes.size()];
              for (int i = 0; i < radii.length; i++) {
                radii[i] = again.get(i).radius() - passes.get(i).pass().radius();
              }
              return radii;
            });
  }

  /** One search over the depth of the finishing pass. */
  private final class Search {
    private final FoundThread found;
    private final ThreadSpec spec;
    private final Measurer measurer;
    private final double[] slopes;
    private final double depthPerEntry;

    Search(FoundThread found, double[] slopes) {
      this.found = found;
      this.spec = found.spec();
      this.measurer = new Measurer(spec);
      this.slopes = slopes;
      double outwards = slopes[found.model().finishing()];
      this.depthPerEntry = spec.internal() ? outwards : -outwards;
    }

    double simple(double[] change) {
      return measurer.simple(thread(found.asLeft(), change));
    }

    /** Bending is held as it is now: a register moves all passes, and hardly what each takes. */
    private RegularThread thread(ThreadModel model, double[] change) {
      return model.thread(change, change.length);
    }

    private double[] changeFor(double entry) {
      double[] change = new double[slopes.length];
      for (int i = 0; i < change.length; i++) {
        change[i] = slopes[i] * entry;
      }
      return change;
    }

    private RegularThread deeper(ThreadModel model, double depth) {
      return thread(model, changeFor(depth / depthPerEntry));
    }

    Optional<OffsetAdvice> advise(ModalState state, double sensitivity) {
      double middle = (spec.limits().pitchMin() + spec.limits().pitchMax()) / 2;
      double toMiddle = depthOf(found.asLeft(), middle);
      double toGo = depthOfGo();
      double toNoGo = depthOf(found.felt(), Mate.noGoPitch(spec));
      if (!Double.isFinite(toMiddle + toGo + toNoGo) || !isProved(toMiddle, middle)) {
        return Optional.empty();
      }
      double increment = setup.control().reading().leastIncrement(state.unit());
      double now = register.entered().wear();
      double entryGo = now + toGo / depthPerEntry;
      double entryNoGo = now + toNoGo / depthPerEntry;
      boolean goIsLow = depthPerEntry > 0;
      return Optional.of(
          new OffsetAdvice(
              "D" + state.radiusRegister(),
              register.entered().geometry(),
              now,
              sensitivity,
              now + toMiddle / depthPerEntry,
              entryGo,
              entryNoGo,
              increment,
              Math.rint((now + toMiddle / depthPerEntry) / increment) * increment,
              rounded(entryGo, increment, goIsLow),
              rounded(entryNoGo, increment, !goIsLow),
              toGo <= toNoGo,
              register.setBy(),
              Optional.empty()));
    }

    private double rounded(double entry, double increment, boolean up) {
      double steps = entry / increment;
      return (up ? Math.ceil(steps) : Math.floor(steps)) * increment;
    }

    /** The change of depth that gives a simple pitch diameter (mm); NaN when out of reach. */
    private double depthOf(ThreadModel model, double pitchDiameter) {
      double low = -reach(true);
      double high = reach(false);
      double least = measurer.simple(deeper(model, low));
      // Far on the shallow side there may be no groove left to measure.
      for (int i = 0; i < HALVINGS && Double.isNaN(least); i++) {
        low /= 2;
        least = measurer.simple(deeper(model, low));
      }
      double most = measurer.simple(deeper(model, high));
      if (!((least - pitchDiameter) * (most - pitchDiameter) <= 0)) {
        return Double.NaN;
      }
      return Root.between(
          depth -> measurer.simple(deeper(model, depth)) - pitchDiameter, low, high);
    }

    /** The change of depth at which the GO gauge just enters (mm); NaN when out of reach. */
    private double depthOfGo() {
      double low = -reach(true);
      double high = reach(false);
      return clearance(low) < 0 && clearance(high) > 0
          ? Root.between(this::clearance, low, high)
          : Double.NaN;
    }

    private double clearance(double depth) {
      RegularThread thread = deeper(found.tight(), depth);
      if (!thread.isCut()) {
        return -spec.pitch();
      }
      double functional = measurer.fit(thread, found.accumulatedError()).functional();
      double beyond = functional - Mate.goPitch(spec);
      return spec.internal() ? beyond : -beyond;
    }

    /** How far the search goes (mm): half a pitch, and while every path keeps a radius. */
    private double reach(boolean shallower) {
      double most = spec.pitch() / 2;
      for (int i = 0; i < slopes.length; i++) {
        CutPass cut = found.model().passes().get(i);
        double least = spec.internal() ? 0.01 : cut.tooth().outsideRadius() + 0.01;
        boolean shrinks = spec.internal() == shallower;
        double share = Math.abs(slopes[i] / depthPerEntry);
        if (shrinks && share > 0) {
          most = Math.min(most, (cut.pass().radius() - least) / share);
        }
      }
      return most;
    }

    /** Whether the program, run with the solved entry, gives what was solved. */
    private boolean isProved(double depth, double wanted) {
      return changes(found, depth / depthPerEntry)
          .map(change -> Math.abs(simple(change) - wanted) <= PROVED)
          .orElse(false);
    }
  }
}
