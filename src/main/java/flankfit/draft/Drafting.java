package flankfit.draft;

import flankfit.control.WearBand;
import flankfit.draft.DraftChoices.Path;
import flankfit.finding.Finding;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.OffsetAdvice.AsMoved;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.solid.MeshBody;
import flankfit.standard.ThreadSpec;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.List;
import java.util.Optional;

/** Drafts a program: works out the numbers, writes it, and proves it before it is handed out. */
public final class Drafting {
  /** Runs of the program in search of the wear. */
  private static final int TRIALS = 3;

  /** Smallest share of the thread's diameter at which a smaller mill is looked for (1). */
  private static final double SMALLEST = 0.3;

  /** Wear beyond which the path does not belong to the thread any more (mm): as in gauging. */
  private static final double FAR_OFF = 0.25;

  /** Step in which mills are looked for (mm). */
  private static final double MILL_STEP = 0.1;

  private final String name;
  private final DraftChoices choices;

  private final Optional<MeshBody> mesh;

  private Drafting(String name, DraftChoices choices, Optional<MeshBody> mesh) {
    this.name = name;
    this.choices = choices;
    this.mesh = mesh;
  }

  /**
   * Drafts a program.
   *
   * @param name name of the program, for findings
   * @param sheet holes or bosses with a thread, the mill, registers, how the control reads
   * @param choices how it is to be written
   * @param mesh the body of the stock's file; empty for other stock
   * @throws NotDraftedException if no program as asked would gauge good without touching; says why
   *     and what would
   */
  public static Draft draft(
      String name, SetupSheet sheet, DraftChoices choices, Optional<MeshBody> mesh)
      throws NotDraftedException {
    return new Drafting(name, choices, mesh).draft(ThreadJob.of(sheet, choices.tool()));
  }

  /**
   * Depth that a hole or boss needs for a draft (mm), with room below; the depth that the sheet
   * states does not count.
   *
   * @param stated depth that it has (mm), if that is known
   * @throws NotDraftedException if that is too little, or there is no path whatever the depth
   */
  public static double leastDepth(SetupSheet sheet, DraftChoices choices, Optional<Double> stated)
      throws NotDraftedException {
    ThreadJob job = ThreadJob.of(sheet, choices.tool());
    Fits.checkJob(job, choices, grid(sheet, choices.unit()));
    PathPlan plan = new PathPlan(job, choices);
    if (stated.isPresent()) {
      new Fits(plan).deepEnough(stated.get());
    }
    return plan.neededDepth();
  }

  /**
   * Refuses a hole or boss whose diameter (mm) is not within the limits of the thread.
   *
   * @param unit unit to word it in
   * @throws NotDraftedException if it is not
   */
  public static void checkBlank(ThreadSpec spec, double diameter, LengthUnit unit)
      throws NotDraftedException {
    Fits.blank(spec, diameter, grid(SetupSheet.empty(), unit));
  }

  private static Grid grid(SetupSheet sheet, LengthUnit unit) {
    return new Grid(unit, sheet.control().reading().leastIncrement(unit));
  }

  private PathPlan plan(ThreadJob job) throws NotDraftedException {
    Fits.checkJob(job, choices, grid(job.sheet(), choices.unit()));
    PathPlan plan = new PathPlan(job, choices);
    new Fits(plan).check();
    return plan;
  }

  private Draft draft(ThreadJob job) throws NotDraftedException {
    PathPlan plan = plan(job);
    Offsets.Register register = withWear(job, plan, 0);
    OffsetAdvice advice = advice(job, plan, register, false);
    if (!advice.hasWindow()) {
      throw noWindow(job);
    }
    nearNominal(job, advice.keyToMiddle());
    register = withWear(job, plan, advice.keyToMiddle());
    Optional<OffsetAdvice> between = Optional.empty();
    Proof proof = proof(job, plan, register);
    for (int trial = 1; trial < TRIALS && onlyGaugesRefuse(proof, job); trial++) {
      OffsetAdvice held = advice(job, plan, register, true);
      if (!held.hasWindow()) {
        throw noWindow(job);
      }
      register = withWear(job, plan, held.keyToMiddle());
      between =
          Optional.of(held)
              .filter(h -> h.asMoved().map(AsMoved::middleBetweenGauges).orElse(false));
      proof = proof(job, plan, register);
    }
    if (!proof.isGood(job.holes().size())) {
      throw notGood(proof);
    }
    nearNominal(job, register.wear());
    proof = proof.againstMetal(sheet(job, register), mesh);
    if (!proof.touches().isEmpty() || !proof.errors().isEmpty()) {
      throw touches(job, proof, register);
    }
    double divisor = job.sheet().control().tools().wearEntry().divisor();
    return new Draft(
        choices,
        job.spec(),
        program(plan, register),
        sheet(job, register),
        register,
        advice(job, plan, register, between.isPresent()),
        new Worksheet(plan).rows(register.wear() / divisor, between, proof.seconds()),
        proof);
  }

  /** Teeth that have to run far from the basic diameter are not those of the thread. */
  private void nearNominal(ThreadJob job, double wear) throws NotDraftedException {
    double off = wear / job.sheet().control().tools().wearEntry().divisor();
    if (Math.abs(off) > Math.min(FAR_OFF, WearBand.of(job.mill().radius()))) {
      boolean deeper = off < 0;
      Grid grid = grid(job.sheet(), choices.unit());
      throw new NotDraftedException(
          "the teeth would have to run "
              + grid.text(Math.abs(off))
              + (deeper ? " deeper" : " less deep")
              + " than the basic profile",
          "a wear of " + grid.text(off) + " would be wanted: no wear, but another form of teeth",
          "take a mill ground for the thread, or one with a crest flat of "
              + grid.text(job.spec().pitch() / (job.internal() ? 8 : 4)));
    }
  }

  private static String program(PathPlan plan, Offsets.Register register) {
    return new ProgramWriter(plan, register).text();
  }

  private SetupSheet sheet(ThreadJob job, Offsets.Register register) {
    return job.sheet().withOffsets(job.sheet().offsets().withRadius(choices.tool(), register));
  }

  /** Entries of D: the radius of the mill for a contour, nothing for a centre path, and a wear. */
  private Offsets.Register withWear(ThreadJob job, PathPlan plan, double wear) {
    double divisor = job.sheet().control().tools().geometryEntry().divisor();
    Grid grid = plan.grid();
    double geometry =
        choices.path() == Path.WEAR
            ? 0
            : clean(grid.steps(job.mill().radius() * divisor) * grid.increment());
    return new Offsets.Register(geometry, clean(wear));
  }

  /** Without what binary arithmetic leaves. */
  private static double clean(double millimetres) {
    return Double.parseDouble(Lengths.plain(millimetres, 9));
  }

  private OffsetAdvice advice(
      ThreadJob job, PathPlan plan, Offsets.Register register, boolean realPath)
      throws NotDraftedException {
    String program = program(plan, register);
    Proof proof = Proof.of(name, program, sheet(job, register), realPath, true);
    Optional<OffsetAdvice> advice =
        proof.gauged().threads().stream().findFirst().flatMap(ThreadAnswer::offset);
    if (advice.isEmpty()) {
      throw notGood(proof);
    }
    return advice.get();
  }

  private Proof proof(ThreadJob job, PathPlan plan, Offsets.Register register) {
    return Proof.of(name, program(plan, register), sheet(job, register), true, false);
  }

  /** What touches, and how deep a thread could be cut without. */
  private NotDraftedException touches(ThreadJob job, Proof proof, Offsets.Register register) {
    List<Finding> told = proof.touches().isEmpty() ? proof.errors() : proof.touches();
    Finding first = told.get(0);
    Grid grid = grid(job.sheet(), choices.unit());
    String deepest =
        deepest(job, register)
            .map(depth -> "the deepest thread that clears is " + grid.text(depth) + "; or ")
            .orElse("");
    return new NotDraftedException(
        "the program would touch: line " + first.place().line() + ": " + first.what(),
        first.code().name() + (first.why().isEmpty() ? "" : ": " + first.why()),
        deepest + first.fix());
  }

  /** The greatest depth, by half pitches less than wanted, at which nothing touches (mm). */
  private Optional<Double> deepest(ThreadJob job, Offsets.Register register) {
    double step = job.spec().pitch() / 2;
    long clear = (long) Math.floor((job.depth() - job.spec().pitch()) / step + 1e-9);
    if (clear < 1 || !clears(job.withDepth(job.depth() - clear * step), register)) {
      return Optional.empty();
    }
    long touching = 0;
    while (clear - touching > 1) {
      long middle = (clear + touching) / 2;
      if (clears(job.withDepth(job.depth() - middle * step), register)) {
        clear = middle;
      } else {
        touching = middle;
      }
    }
    Grid grid = grid(job.sheet(), choices.unit());
    long steps = (long) Math.floor((job.depth() - clear * step) / grid.increment() + 1e-6);
    return Optional.of(grid.millimetres(steps));
  }

  private boolean clears(ThreadJob job, Offsets.Register register) {
    try {
      PathPlan plan = plan(job);
      Proof proof = Proof.of(name, program(plan, register), sheet(job, register), false, false);
      return proof.againstMetal(job.sheet(), mesh).touches().isEmpty();
    } catch (NotDraftedException e) {
      // Where there is no path of that depth, it is not what would do.
      return false;
    }
  }

  private static boolean onlyGaugesRefuse(Proof proof, ThreadJob job) {
    return !proof.isGood(job.holes().size())
        && proof.errors().isEmpty()
        && proof.gauged().threads().size() == job.holes().size();
  }

  private static NotDraftedException notGood(Proof proof) {
    Optional<Finding> error = proof.errors().stream().findFirst();
    if (error.isPresent()) {
      Finding finding = error.get();
      String at =
          finding.place().line() > 0 ? "block at line " + finding.place().line() + ": " : "";
      return new NotDraftedException(
          "the program would not do: " + at + finding.what(),
          finding.code().name() + (finding.why().isEmpty() ? "" : ": " + finding.why()),
          finding.fix());
    }
    Optional<ThreadAnswer> refused =
        proof.gauged().threads().stream()
            .filter(t -> t.verdict() != Verdict.GAUGES_GOOD)
            .findFirst();
    return refused
        .map(
            t ->
                new NotDraftedException(
                    t.hole() + " would not gauge: " + t.verdict().words(), t.reason(), ""))
        .orElseGet(
            () ->
                new NotDraftedException(
                    "no register entry steers the thread of the program",
                    "the wear for the middle of the limits cannot be found",
                    ""));
  }

  /** No entry makes both gauges good: the largest mill with which one does is looked for. */
  private NotDraftedException noWindow(ThreadJob job) {
    boolean straight = job.teeth().form() instanceof Tool.CutterForm.Straight;
    Optional<Double> mill =
        job.internal() && straight
            ? largestMill(job, Math.floor(SMALLEST * job.spec().nominal() / MILL_STEP))
            : Optional.empty();
    String other =
        straight ? "take a mill ground for the thread" : "take a mill ground for this very thread";
    return new NotDraftedException(
        "no wear makes both gauges good with a mill of "
            + Lengths.brief(job.mill().diameter(), choices.unit(), 4),
        straight
            ? "GO would enter only where NO-GO enters too: straight teeth leave the flanks too"
                + " wide beside their crest, the more the larger the mill"
            : "GO would enter only where NO-GO enters too, with this form of teeth",
        mill.map(
                d ->
                    "the largest mill of this form that does has "
                        + Lengths.brief(
                            grid(job.sheet(), choices.unit()).mill(d), choices.unit(), 4)
                        + "; or "
                        + other)
            .orElse(other + ", or one with a narrower crest"));
  }

  private Optional<Double> largestMill(ThreadJob job, double fewest) {
    long low = (long) fewest;
    long high = (long) Math.ceil(job.mill().diameter() / MILL_STEP);
    if (high <= low || !hasWindow(job, low * MILL_STEP)) {
      return Optional.empty();
    }
    while (high - low > 1) {
      long middle = (low + high) / 2;
      if (hasWindow(job, middle * MILL_STEP)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(clean(low * MILL_STEP));
  }

  private boolean hasWindow(ThreadJob job, double mill) {
    try {
      ThreadJob other = job.withMill(mill);
      PathPlan plan = plan(other);
      return advice(other, plan, withWear(other, plan, 0), false).hasWindow();
    } catch (NotDraftedException e) {
      // A mill for which there is no path has no window either.
      return false;
    }
  }
}
