package flankfit.gauge;

import flankfit.setup.Hole;
import flankfit.setup.Tool;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One thread as it comes out when its making departs from sheet and program: measured exactly, on
 * the endless regular helix with bending, and gauged on the wall of its path as moved. What the
 * odds and what is believed of the cutter rest on.
 */
public final class ThreadVariation {
  /** Bends of passes: mean over the rows, at the tightest row, where NO-GO must have stopped. */
  private record Bends(List<Double> mean, List<Double> tight, List<Double> felt) {}

  private final FoundThread found;
  private final double[] perDepth;
  private final Optional<Double> depthPerEntry;
  private final double increment;
  private final Optional<Double> wearLimit;
  private final ThreadLookup threads;
  private final Rebending rebending;
  private final Optional<VariedWalls> walls;
  private final boolean straight;
  private final Measurer measurer;
  private final Map<Double, Tooth> teeth = new ConcurrentHashMap<>();
  private final Map<Double, Bends> bends = new ConcurrentHashMap<>();

  /** Bends a thread again with forces so many times as great. */
  interface Rebending {
    Optional<Bending> at(double times);
  }

  /**
   * Makes a variation.
   *
   * @param found the thread with its bending
   * @param slopes how a register moves the radius of each pass (1); empty when none does
   * @param control what the register's entries are
   * @param walls walls of its path as moved; empty where only the endless helix is asked for
   */
  ThreadVariation(
      FoundThread found,
      Optional<double[]> slopes,
      Entries control,
      ThreadLookup threads,
      Rebending rebending,
      Optional<VariedWalls> walls) {
    this(
        found,
        perDepth(found, slopes),
        slopes.map(s -> deeper(found) * s[found.model().finishing()]),
        control.increment(),
        control.wearLimit(),
        threads,
        rebending,
        walls,
        false);
  }

  private ThreadVariation(
      FoundThread found,
      double[] perDepth,
      Optional<Double> depthPerEntry,
      double increment,
      Optional<Double> wearLimit,
      ThreadLookup threads,
      Rebending rebending,
      Optional<VariedWalls> walls,
      boolean straight) {
    this.found = Objects.requireNonNull(found, "found");
    this.perDepth = perDepth;
    this.depthPerEntry = depthPerEntry;
    this.increment = increment;
    this.wearLimit = wearLimit;
    this.threads = threads;
    this.rebending = rebending;
    this.walls = walls;
    this.straight = straight;
    this.measurer = new Measurer(found.spec());
  }

  /**
   * What the control takes as an entry of a register.
   *
   * @param increment least increment (mm)
   * @param wearLimit largest wear that it takes, either sign (mm)
   */
  record Entries(double increment, Optional<Double> wearLimit) {}

  private static double deeper(FoundThread found) {
    return found.spec().internal() ? 1 : -1;
  }

  private static double[] perDepth(FoundThread found, Optional<double[]> slopes) {
    double[] each = new double[found.model().passes().size()];
    int finish = found.model().finishing();
    for (int i = 0; i < each.length; i++) {
      int pass = i;
      each[i] = deeper(found) * slopes.map(s -> s[pass] / s[finish]).orElse(1.0);
    }
    return each;
  }

  /** The same thread by a mill whose flanks are true V instead of ground for a thread. */
  public ThreadVariation withStraightFlanks() {
    return new ThreadVariation(
        found, perDepth, depthPerEntry, increment, wearLimit, threads, rebending, walls, true);
  }

  /**
   * The thread with a deviation.
   *
   * @return its diameters; empty when nothing can be measured on it
   */
  public Optional<Formed> formed(Deviation deviation) {
    Bends bent = bends.computeIfAbsent(deviation.bending(), this::bends);
    RegularThread mean = thread(deviation, bent.mean());
    if (Judge.notMeasurable(found, mean).isPresent()) {
      return Optional.empty();
    }
    boolean stiff = found.bending().isEmpty();
    double simple = measurer.simple(mean);
    double felt = stiff ? simple : measurer.simple(thread(deviation, bent.felt()));
    RegularThread tight = stiff ? mean : thread(deviation, bent.tight());
    Mate mate = Mate.of(spec());
    double flanks = Fit.ofFlanks(tight, mate, found.accumulatedError());
    double play = Fit.play(tight, mate);
    return Double.isFinite(simple + felt + flanks)
        ? Optional.of(new Formed(simple, felt, flanks, play, 2 * mean.crest()))
        : Optional.empty();
  }

  /** Whether the thread is known on its path as moved, too. */
  public boolean isMoved() {
    return walls.isPresent();
  }

  /**
   * What gauges of all sizes do in the thread with a deviation on the wall of the path as moved, in
   * the hole as stated and with teeth as wide as stated.
   *
   * @return empty when there is no such wall, or it was not asked for
   */
  public Optional<Ways> ways(Deviation deviation) {
    if (walls.isEmpty()) {
      return Optional.empty();
    }
    ThreadModel old = found.model();
    ThreadModel model = new ThreadModel(old.spec(), old.blankRadius(), passes(deviation));
    FoundThread varied =
        new FoundThread(found.hole(), spec(), model, found.partBottom(), found.text())
            .bent(bending(deviation.bending()));
    return walls.get().of(varied, change(deviation));
  }

  private List<CutPass> passes(Deviation deviation) {
    List<CutPass> passes = new ArrayList<>();
    for (CutPass cut : found.model().passes()) {
      boolean same = cut.tool().number() == tool().number();
      passes.add(same ? new CutPass(cut.pass(), cut.tool(), cut.teeth(), tooth(deviation)) : cut);
    }
    return passes;
  }

  /** What is added to the radius of each pass's path (mm). */
  private double[] change(Deviation deviation) {
    return Arrays.stream(perDepth).map(per -> per * deviation.depth()).toArray();
  }

  private RegularThread thread(Deviation deviation, List<Double> bend) {
    double[] change = change(deviation);
    double blank = found.model().blankRadius() + deviation.hole();
    RegularThread thread =
        new ThreadModel(spec(), blank, passes(deviation), bend).thread(change, change.length);
    return deviation.crest() == 0
        ? thread
        : new RegularThread(
            new WidenedGroove(thread.groove(), deviation.crest()), thread.spacing(), blank);
  }

  private Tooth tooth(Deviation deviation) {
    CutPass finish = found.model().finish();
    if (deviation.cutter() == 0 && !straight) {
      return finish.tooth();
    }
    return teeth.computeIfAbsent(
        deviation.cutter(), more -> TeethForms.larger(finish, more, straight, threads));
  }

  private Bends bends(double times) {
    if (found.bending().isEmpty()) {
      List<Double> none = found.model().bend();
      return new Bends(none, none, none);
    }
    Bending bending = bending(times).orElseThrow();
    return new Bends(bending.mean(), bending.tight(), bending.felt());
  }

  /** The bending so many times as great; that reckoned where it cannot be had. */
  private Optional<Bending> bending(double times) {
    return found.bending().isEmpty() || times == 1
        ? found.bending()
        : rebending.at(times).or(found::bending);
  }

  /**
   * How much deeper the passes reach by another bending alone (mm on the radius).
   *
   * @param times bending as many times as reckoned (1)
   */
  public Reaches reaches(double times) {
    Bends now = bends.computeIfAbsent(1.0, this::bends);
    Bends then = bends.computeIfAbsent(times, this::bends);
    return new Reaches(
        deepest(then.mean()) - deepest(now.mean()),
        deepest(then.tight()) - deepest(now.tight()),
        deepest(then.felt()) - deepest(now.felt()));
  }

  /**
   * Change of the deepest reach (mm on the radius).
   *
   * @param mean mean over the rows
   * @param tight at the tightest row
   * @param felt where a NO-GO gauge must have stopped
   */
  public record Reaches(double mean, double tight, double felt) {}

  private double deepest(List<Double> bend) {
    double deepest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < bend.size(); i++) {
      double reach = found.model().passes().get(i).reach(spec().internal()) + bend.get(i);
      deepest = Math.max(deepest, deeper(found) * reach);
    }
    return deepest;
  }

  /** What all gauges together say of diameters (mm), by the rules of every verdict here. */
  public Verdict verdict(double functional, double felt, double minor) {
    return Judge.verdict(spec(), functional, felt, minor);
  }

  /** What the gauges leave to spare (mm on the diameter); negative where one does not pass. */
  public Spare spare(double functional, double felt, double minor) {
    double sign = spec().internal() ? 1 : -1;
    double go = sign * (functional - Mate.goPitch(spec()));
    double noGo = -sign * (felt - Mate.noGoPitch(spec()));
    double plain =
        spec()
            .gauges()
            .map(g -> Math.min(minor - g.plainGo(), g.plainNoGo() - minor))
            .orElse(Double.POSITIVE_INFINITY);
    return new Spare(go, noGo, plain);
  }

  /**
   * What is to spare (mm on the diameter).
   *
   * @param go GO gauge
   * @param noGo NO-GO gauge
   * @param plain nearer one of the plain plugs; infinite where there are none
   */
  public record Spare(double go, double noGo, double plain) {
    /** The least of all. */
    public double least() {
      return Math.min(go, Math.min(noGo, plain));
    }
  }

  /** The thread wanted. */
  public ThreadSpec spec() {
    return found.spec();
  }

  /** Turns that a NO-GO gauge may go by the rule of the thread's own system (1). */
  public double turnsAllowed() {
    return TurnsRuling.allowed(spec());
  }

  /** Turns over which a gauge engages: what is wanted and cut (1). */
  public double engagedTurns() {
    return found.engaged() / spec().lead();
  }

  /** The hole or boss. */
  public Hole hole() {
    return found.hole();
  }

  /** The mill of the finishing pass. */
  public Tool tool() {
    return found.model().finish().tool();
  }

  /** Radius over its teeth as they are formed (mm). */
  public double cutterRadius() {
    return found.model().finish().tooth().outsideRadius();
  }

  /** Whether bending is reckoned. */
  public boolean bends() {
    return found.bending().isPresent();
  }

  /** Depth of the finishing pass for one length of the register's entry (1); empty: no register. */
  public Optional<Double> depthPerEntry() {
    return depthPerEntry;
  }

  /** Least increment of path and register (mm). */
  public double increment() {
    return increment;
  }

  /** Largest wear that the control takes, either sign (mm); empty when not stated. */
  public Optional<Double> wearLimit() {
    return wearLimit;
  }

  /** Words lengths in the program's unit. */
  public Text text() {
    return found.text();
  }

  /** Whether the sheet leaves the form of the teeth open, so that ground flanks are assumed. */
  public boolean formAssumed() {
    return found.model().finish().teeth().form() instanceof Tool.CutterForm.GroundFor ground
        && ground.assumed();
  }

  /** How far the depth may change before a path loses its radius (mm): deeper, shallower. */
  public double room(boolean shallower) {
    double most = spec().pitch() / 2;
    for (int i = 0; i < perDepth.length; i++) {
      CutPass cut = found.model().passes().get(i);
      double least = spec().internal() ? 0.01 : cut.tooth().outsideRadius() + 0.01;
      boolean shrinks = spec().internal() == shallower;
      if (shrinks && perDepth[i] != 0) {
        most = Math.min(most, (cut.pass().radius() - least) / Math.abs(perDepth[i]));
      }
    }
    return most;
  }
}
