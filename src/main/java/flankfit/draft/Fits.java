package flankfit.draft;

import flankfit.draft.DraftChoices.Entry;
import flankfit.motion.ModalState.Distance;
import flankfit.setup.Tool;
import flankfit.standard.Drill;
import flankfit.standard.Limits;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.InvoluteFlank;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import flankfit.unit.Tolerance;
import java.util.OptionalDouble;

/** Refuses what cannot be cut as asked, each with the nearest that can. */
final class Fits {
  /** Least room between mill and hole, on the diameter (mm): common practice, no source. */
  static final double LEAST_ROOM = 0.2;

  /**
   * Difference of rows and pitch, of a flank's angle (rad), and of a lead that still count as none.
   */
  private static final double ROW_SHARE = 1e-3;

  private static final double ANGLE = Angles.toRadians(0.5);
  private static final double LEAD_SHARE = 8e-4;

  /** How far one start may lie beside its place (mm): more widens the grooves of a single row. */
  private static final double START_OFF = 0.0005;

  /** How near the wall the start of a quarter arc may stand (mm). */
  private static final double LEAST_ASIDE = 0.02;

  private final PathPlan plan;
  private final ThreadJob job;
  private final ThreadSpec spec;
  private final Grid grid;

  Fits(PathPlan plan) {
    this.plan = plan;
    this.job = plan.job();
    this.spec = job.spec();
    this.grid = plan.grid();
  }

  /** What can be told before a path is laid out. */
  static void checkJob(ThreadJob job, DraftChoices choices, Grid grid) throws NotDraftedException {
    ThreadSpec spec = job.spec();
    if (job.sheet().control().arcs().absoluteCentre()) {
      throw new NotDraftedException(
          "the control of the sheet reads I and J as coordinates",
          "a draft writes them as distances from the start of the arc",
          "set arc-centre = \"incremental\"");
    }
    if (choices.subprogram() && choices.mode() == Distance.ABSOLUTE && job.holes().size() > 1) {
      throw new NotDraftedException(
          "one subprogram in absolute words for " + job.holes().size() + " places",
          "its coordinates are those of one place",
          "write it in incremental words, or without a subprogram");
    }
    if (Math.abs(job.teeth().halfAngle() - spec.halfAngle()) > ANGLE) {
      throw new NotDraftedException(
          "the flanks of tool "
              + job.mill().number()
              + " stand at "
              + Math.round(Angles.toDegrees(2 * job.teeth().halfAngle()))
              + "° to each other, those of the thread at "
              + Math.round(Angles.toDegrees(2 * spec.halfAngle()))
              + "°",
          "gauge and screw would bear on one end of the flank only",
          "take a mill for this form of thread");
    }
    rows(job, grid);
    if (job.depth() < spec.pitch() - Tolerance.MODEL.value()) {
      throw new NotDraftedException(
          "a thread "
              + grid.text(job.depth())
              + " deep is less than one pitch, "
              + grid.text(spec.pitch()),
          "there is no whole groove that a gauge could feel",
          "the least depth is " + grid.text(spec.pitch()));
    }
    blank(job.spec(), job.hole().diameter(), grid);
    if (job.internal()) {
      mill(job, grid);
    }
  }

  private static void rows(ThreadJob job, Grid grid) throws NotDraftedException {
    if (job.teeth().rows() == 1) {
      return;
    }
    double pitch = job.spec().pitch();
    double rows = job.teeth().pitch().orElse(pitch);
    if (Math.abs(rows - pitch) > ROW_SHARE * pitch) {
      throw new NotDraftedException(
          "the rows of tool "
              + job.mill().number()
              + " stand "
              + grid.text(rows)
              + " apart, the pitch of "
              + job.spec().designation()
              + " is "
              + grid.text(pitch),
          "every row would cut a groove of its own",
          "take a mill with rows " + grid.text(pitch) + " apart, or with one row");
    }
  }

  /** Whether hole or boss has a diameter (mm) that the thread's limits allow. */
  static void blank(ThreadSpec spec, double diameter, Grid grid) throws NotDraftedException {
    Limits limits = spec.limits();
    OptionalDouble least = spec.internal() ? limits.minorMin() : limits.majorMin();
    OptionalDouble most = spec.internal() ? limits.minorMax() : limits.majorMax();
    boolean small = least.isPresent() && diameter < least.getAsDouble() - Tolerance.MODEL.value();
    boolean large = most.isPresent() && diameter > most.getAsDouble() + Tolerance.MODEL.value();
    if (!small && !large) {
      return;
    }
    String range =
        least.isPresent() && most.isPresent()
            ? grid.number(least.getAsDouble()) + " to " + grid.text(most.getAsDouble())
            : "";
    throw new NotDraftedException(
        (spec.internal() ? "the hole of " : "the boss of ")
            + grid.text(diameter)
            + " is too "
            + (small ? "small" : "large")
            + " for "
            + spec.designation(),
        (spec.internal() ? "the minor diameter may be " : "the major diameter may be ") + range,
        spec.internal()
            ? spec.drill().map(Drill::name).map(d -> "drill " + d).orElse("bore it to size")
            : "turn or mill it to size first");
  }

  private static void mill(ThreadJob job, Grid grid) throws NotDraftedException {
    double hole = job.hole().diameter();
    double base = InvoluteFlank.baseRadius(job.spec().lead(), job.spec().halfAngle());
    double byHole = hole - LEAST_ROOM;
    double byLead = job.spec().nominal() - 2 * base - LEAST_ROOM;
    double most = Math.min(byHole, byLead);
    if (job.mill().diameter() > most + Tolerance.MODEL.value()) {
      throw new NotDraftedException(
          "a mill of "
              + job.millText(grid)
              + " is too large for "
              + (byHole <= byLead ? "the hole of " + grid.text(hole) : "the lead of the thread"),
          byHole <= byLead
              ? "it would meet the wall on the way in; "
                  + grid.text(LEAST_ROOM)
                  + " of room are wanted"
              : "on so small a path its flanks would cut away those of the thread",
          most > 0
              ? "the largest mill that fits has " + grid.text(grid.mill(most))
              : "no mill fits");
    }
  }

  /** What the path laid out needs. */
  void check() throws NotDraftedException {
    lead();
    holeDepth();
    quarter();
    body();
  }

  private void lead() throws NotDraftedException {
    double travel = grid.millimetres(Math.abs(plan.tip(plan.turns(), 0) - plan.tip(0, 0)));
    double perTurn = travel / plan.turns();
    if (Math.abs(perTurn - plan.lead()) > LEAD_SHARE * plan.lead()) {
      throw tooCoarse("one turn can rise " + grid.text(perTurn) + " only", plan.lead());
    }
    double apart = grid.millimetres(plan.tip(0, plan.helices() - 1) - plan.tip(0, 0));
    double wanted = (plan.helices() - 1) * spec.pitch();
    if (Math.abs(apart - wanted) > START_OFF) {
      throw tooCoarse("the starts can lie " + grid.text(apart) + " apart only", wanted);
    }
  }

  private NotDraftedException tooCoarse(String what, double wanted) {
    return new NotDraftedException(
        what + ", " + grid.text(wanted) + " is wanted",
        "the control takes steps of "
            + grid.text(grid.increment())
            + "; the gauge would feel the difference",
        "write the program in "
            + (grid.unit() == LengthUnit.INCH ? "mm" : "inch")
            + ", or state a finer least increment in the sheet");
  }

  private void holeDepth() throws NotDraftedException {
    if (job.hole().depth().isPresent()) {
      deepEnough(job.hole().depth().get());
    }
  }

  /** Whether hole or boss is deep enough with a depth (mm). */
  void deepEnough(double stated) throws NotDraftedException {
    double needed = plan.neededDepth();
    if (stated >= needed - Tolerance.MODEL.value()) {
      return;
    }
    double deepest = job.depth() - (needed - stated);
    long steps = (long) Math.floor(deepest / grid.increment() + 1e-6);
    throw new NotDraftedException(
        (job.internal() ? "a hole " : "a boss ")
            + grid.text(stated)
            + " deep is too shallow for "
            + grid.text(job.depth())
            + " of thread",
        "below the thread the mill needs "
            + grid.text(needed - job.depth())
            + ": a quarter pitch, its tip, the rise of the entry, and room",
        "the least depth is "
            + grid.text(grid.millimetres(grid.stepsUp(needed)))
            + (deepest >= spec.pitch()
                ? "; the deepest thread in this one is " + grid.text(grid.millimetres(steps))
                : ""));
  }

  private void quarter() throws NotDraftedException {
    if (!job.internal() || plan.choices().entry() != Entry.QUARTER) {
      return;
    }
    double path = plan.last().path();
    double stands = path / Math.sqrt(2);
    if (stands > plan.room() - LEAST_ASIDE) {
      double hole = job.hole().diameter();
      double most =
          (hole - 2 * LEAST_ASIDE - spec.nominal() / Math.sqrt(2)) / (1 - 1 / Math.sqrt(2));
      throw new NotDraftedException(
          "a quarter arc would begin "
              + grid.text(stands)
              + " off the axis, where "
              + grid.text(plan.room())
              + " of room are",
          "the mill would meet the wall before the arc begins",
          "enter on a half turn, which begins at the axis"
              + (most > 0 ? "; or take a mill of " + grid.text(grid.mill(most)) + " or less" : ""));
    }
  }

  /** Whether what stands above the teeth goes into the hole without rubbing. */
  private void body() throws NotDraftedException {
    double deep = job.hole().top() - plan.lowest();
    if (!job.internal() || job.mill().neck().isEmpty() || job.mill().fluteLength() >= deep) {
      return;
    }
    Tool.Section neck = job.mill().neck().get();
    double most = job.hole().diameter() - 2 * plan.last().path() - LEAST_ROOM;
    if (neck.diameter() > most) {
      throw new NotDraftedException(
          "a neck of "
              + grid.text(neck.diameter())
              + " rubs in the hole of "
              + grid.text(job.hole().diameter()),
          "the mill goes "
              + grid.text(deep)
              + " deep, its teeth are "
              + grid.text(job.mill().fluteLength())
              + " long, and its axis runs "
              + grid.text(plan.last().path())
              + " off the hole's",
          most > 0
              ? "the thickest neck that clears has "
                  + grid.text(grid.mill(most))
                  + "; or take a mill with longer flutes"
              : "take a mill with longer flutes");
    }
    boolean thick = job.mill().shank().filter(s -> s.diameter() <= most).isEmpty();
    if (neck.length() < deep && thick) {
      throw new NotDraftedException(
          "the neck reaches "
              + grid.text(neck.length())
              + " from the tip, the mill goes "
              + grid.text(deep)
              + " deep",
          "the shank above it would meet the wall",
          "take a mill that reaches "
              + grid.text(deep)
              + ", or cut "
              + grid.text(deep - neck.length())
              + " less deep");
    }
  }
}
