package flankfit.draft;

import flankfit.draft.DraftChoices.Entry;
import flankfit.draft.DraftChoices.Path;
import flankfit.gauge.OffsetAdvice;
import flankfit.standard.Drill;
import flankfit.standard.Limits;
import flankfit.unit.Angles;
import java.util.List;
import java.util.Optional;

/** Puts the numbers of a draft together, each with formula and figures. */
final class Worksheet {
  /** Twice three quarters of H, the height that counts as 100 % of thread, over the pitch (1). */
  private static final double FULL_HEIGHT = 1.299038;

  private final PathPlan plan;
  private final ThreadJob job;
  private final Grid grid;
  private final boolean internal;
  private final WorksheetRows rows;

  Worksheet(PathPlan plan) {
    this.plan = plan;
    this.job = plan.job();
    this.grid = plan.grid();
    this.internal = job.internal();
    this.rows = new WorksheetRows(grid);
  }

  /**
   * The rows.
   *
   * @param wear the wear entry found by gauging (mm, as it moves the path)
   * @param between the entries between which it is the middle, where a gauge fails in the middle of
   *     the limits
   * @param seconds time of the motion (s)
   */
  List<WorksheetRow> rows(double wear, Optional<OffsetAdvice> between, double seconds) {
    before();
    path();
    wear(wear, between);
    heights();
    entry();
    passes();
    new SpeedRows(plan, rows).add();
    clearances();
    rows.add(
        "time",
        "time of the motion",
        "length over feed, summed over all moves",
        job.holes().size() + " " + (internal ? "hole" : "boss") + plural(),
        seconds,
        "s",
        Math.round(seconds) + " s",
        "without acceleration and tool change");
    return rows.all();
  }

  private String plural() {
    return job.holes().size() == 1 ? "" : internal ? "s" : "es";
  }

  private double mill() {
    return job.mill().diameter();
  }

  private void before() {
    Limits limits = job.spec().limits();
    double blank = job.hole().diameter();
    if (!internal) {
      String range =
          "limits "
              + rows.number(limits.majorMin().orElse(blank))
              + " to "
              + rows.number(limits.majorMax().orElse(blank));
      rows.length("blank", "boss before the thread", "as the sheet says", range, blank, "");
      return;
    }
    String range =
        "limits of the minor diameter "
            + rows.number(limits.minorMin().orElse(blank))
            + " to "
            + rows.number(limits.minorMax().orElse(blank));
    String drill = job.spec().drill().map(Drill::name).map(d -> "drill suggested: " + d).orElse("");
    rows.length("blank", "hole before the thread", "as the sheet says", range, blank, drill);
    double percent = (job.spec().nominal() - blank) / (FULL_HEIGHT * plan.pitch()) * 100;
    rows.add(
        "engagement",
        "height of thread",
        "(D - hole) / (1.299 · P) · 100",
        "("
            + rows.number(job.spec().nominal())
            + " - "
            + rows.number(blank)
            + ") / (1.299 · "
            + rows.number(plan.pitch())
            + ") · 100",
        percent,
        "%",
        WorksheetRows.plain(percent, 1) + " %",
        "");
  }

  private void path() {
    double bottom = job.bottomDiameter();
    double move = internal ? (bottom - mill()) / 2 : (bottom + mill()) / 2;
    rows.length(
        "radialMove",
        "radial move, axis to cutter's centre",
        internal ? "(D - d) / 2" : "(d3 + d) / 2, d3 the basic minor diameter",
        "(" + rows.number(bottom) + (internal ? " - " : " + ") + rows.number(mill()) + ") / 2",
        move,
        "");
    boolean centre = plan.choices().path() == Path.WEAR;
    rows.length(
        "programmedRadius",
        "radius of the programmed path",
        centre ? "the radial move" : "half the diameter where the teeth's tips run",
        centre ? rows.number(move) : rows.number(bottom) + " / 2",
        grid.millimetres(plan.last().programmed()),
        centre ? "rounded to an even number of increments" : "D holds the radius of the mill");
  }

  private void wear(double wear, Optional<OffsetAdvice> between) {
    Limits limits = job.spec().limits();
    double divisor = job.sheet().control().tools().wearEntry().divisor();
    double low = between.map(o -> o.keyToGoLimit() / divisor).orElse(limits.pitchMin());
    double high = between.map(o -> o.keyToNoGoLimit() / divisor).orElse(limits.pitchMax());
    String entered = divisor == 1 ? "" : "; entered as a diameter: " + rows.number(wear * divisor);
    rows.length(
        "wear",
        "wear in D" + plan.choices().tool(),
        between.isPresent()
            ? "found by gauging: the middle between the last entries at which GO enters and NO-GO"
                + " stops"
            : "found by gauging: pitch diameter in the middle of its limits",
        "("
            + rows.number(low)
            + " + "
            + rows.number(high)
            + ") / 2 = "
            + rows.number((low + high) / 2),
        wear,
        "the over-cut of the mill and its bending are in it"
            + (between.isPresent()
                ? "; with the pitch diameter in the middle of its limits a gauge would refuse"
                : "")
            + entered);
    rows.length(
        "radiusCut",
        "radius that the cutter's centre runs on",
        internal ? "radial move - wear" : "radial move + wear",
        rows.number(plan.last().path())
            + (internal ? " - " : " + ")
            + "("
            + rows.number(wear)
            + ")",
        plan.last().path() + (internal ? -wear : wear),
        "");
  }

  private void heights() {
    int starts = job.spec().starts();
    rows.length(
        "risePerTurn",
        "rise in one turn",
        "lead = starts · P",
        starts + " · " + rows.number(plan.pitch()),
        plan.lead(),
        "");
    boolean single = job.teeth().rows() == 1;
    String margin = starts == 1 ? "3/4 P" : "3/4 P + 2 · (starts - 1) · P";
    String inserted =
        "("
            + rows.number(job.depth())
            + " + "
            + rows.number(plan.below() + plan.above())
            + (single ? "" : " - " + rows.number(job.comb()))
            + ") / "
            + rows.number(plan.lead())
            + ", rounded up";
    rows.add(
        "turns",
        "turns of each pass",
        single
            ? "(depth + " + margin + ") / lead, rounded up"
            : "(depth + " + margin + " - (rows - 1) · P) / lead, rounded up, at least 1",
        inserted,
        plan.turns(),
        "1",
        Integer.toString(plan.turns()),
        single
            ? "from half a pitch above the top to a quarter below the depth"
            : "after a turn each row stands where the one above began; entry and exit arcs"
                + " overlap");
    double lowest = job.depth() + plan.below();
    rows.length(
        "lowestGroove",
        "lowest groove below the top",
        starts == 1 ? "depth + P / 4" : "depth + P / 4 + (starts - 1) · P",
        rows.number(job.depth()) + " + " + rows.number(plan.below()),
        lowest,
        "so that the gauge reaches the depth");
    double from = grid.millimetres(plan.tip(0, 0));
    rows.length(
        "startHeight",
        "Z of the tip where the helix begins",
        plan.rising()
            ? "-(lowest groove + tip below the first row)"
            : "-(lowest groove + tip below the first row) + turns · lead",
        "-("
            + rows.number(lowest)
            + " + "
            + rows.number(job.teeth().tip())
            + ")"
            + (plan.rising() ? "" : " + " + plan.turns() + " · " + rows.number(plan.lead())),
        from,
        plan.rising() ? "from the bottom up" : "from the top down");
    rows.length(
        "endHeight",
        "Z of the tip where the helix ends",
        plan.rising() ? "start + turns · lead" : "start - turns · lead",
        rows.number(from)
            + (plan.rising() ? " + " : " - ")
            + plan.turns()
            + " · "
            + rows.number(plan.lead()),
        grid.millimetres(plan.tip(plan.turns(), 0)),
        "");
  }

  private void entry() {
    PassPlan last = plan.last();
    if (plan.choices().entry() == Entry.STRAIGHT) {
      String note = internal ? "all teeth meet the wall at once: half the feed" : "";
      rows.length(
          "entryRise",
          "rise on the way in",
          internal ? "none on a line square to the wall" : "lead · way / (2 · π · path radius)",
          internal
              ? "0"
              : rows.number(plan.lead())
                  + " · "
                  + rows.number(grid.millimetres(plan.tangent(last)))
                  + " / (2 · π · "
                  + rows.number(last.path())
                  + ")",
          plan.entryRise(last),
          note);
      return;
    }
    double arc = plan.toolArc(last.arc());
    rows.length(
        "entryRadius",
        "radius of the entry arc",
        internal ? "path radius / 2" : "radial depth + 1 mm, to stand clear of the boss",
        internal
            ? rows.number(last.path()) + " / 2"
            : rows.number(plan.radialDepth()) + " + " + rows.number(1),
        arc,
        "of the cutter's centre; it touches the helix");
    double degrees = Math.rint(Angles.toDegrees(plan.choices().entry().sweep()));
    rows.length(
        "entryRise",
        "rise on the entry arc",
        "lead · sweep / 360 · arc radius / path radius",
        rows.number(plan.lead())
            + " · "
            + WorksheetRows.plain(degrees, 0)
            + " / 360 · "
            + rows.number(arc)
            + " / "
            + rows.number(last.path()),
        plan.entryRise(last),
        "leaves no mark: the tooth follows the groove where they meet");
  }

  private void passes() {
    int number = plan.passes().size();
    for (PassPlan pass : plan.passes()) {
      double to = plan.radialDepth() * Math.sqrt((double) pass.number() / number);
      rows.length(
          "pass" + pass.number(),
          "pass " + pass.number() + ", radial depth after it",
          "radial depth · √(pass / passes)",
          rows.number(plan.radialDepth()) + " · √(" + pass.number() + " / " + number + ")",
          to,
          WorksheetRows.plain(pass.share() * 100, 0)
              + " % of the depth; each pass takes the same area of the V");
    }
  }

  private void clearances() {
    rows.length(
        "clearHeight",
        "height of rapids over the part",
        "above the top",
        rows.number(grid.millimetres(plan.clear())),
        grid.millimetres(plan.clear()),
        "common practice, no source");
    if (internal) {
      rows.length(
          "room",
          "room round the mill in the hole",
          "(hole - d) / 2",
          "(" + rows.number(job.hole().diameter()) + " - " + rows.number(mill()) + ") / 2",
          plan.room(),
          "");
    }
    rows.length(
        "leastDepth",
        internal ? "least depth of the hole" : "least height of the boss",
        "lowest groove + tip + entry rise + room below",
        rows.number(job.depth() + plan.below())
            + " + "
            + rows.number(job.teeth().tip())
            + " + "
            + rows.number(plan.entryRise(plan.last()))
            + " + "
            + rows.number(PathPlan.ROOM_BELOW),
        plan.neededDepth(),
        "room below is common practice, no source");
  }
}
