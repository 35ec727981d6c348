package flankfit.draft;

import flankfit.cutting.Engagement;
import flankfit.cutting.WorkMaterial;
import flankfit.draft.DraftChoices.Entry;
import flankfit.draft.DraftChoices.Path;
import flankfit.standard.Drill;
import flankfit.standard.Limits;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts the numbers of a draft together, each with formula and figures. */
final class Worksheet {
  /** Twice three quarters of H, the height that counts as 100 % of thread, over the pitch (1). */
  private static final double FULL_HEIGHT = 1.299038;

  private final PathPlan plan;
  private final ThreadJob job;
  private final Grid grid;
  private final boolean internal;
  private final List<WorksheetRow> rows = new ArrayList<>();

  Worksheet(PathPlan plan) {
    this.plan = plan;
    this.job = plan.job();
    this.grid = plan.grid();
    this.internal = job.internal();
  }

  /**
   * The rows.
   *
   * @param wear the wear entry found by gauging (mm, as it moves the path)
   * @param seconds time of the motion (s)
   */
  List<WorksheetRow> rows(double wear, double seconds) {
    before();
    path(wear);
    heights();
    entry();
    passes();
    speeds();
    clearances();
    add(
        "time",
        "time of the motion",
        "length over feed, summed over all moves",
        job.holes().size() + (internal ? " hole" : " boss") + (job.holes().size() == 1 ? "" : "s"),
        seconds,
        "s",
        Math.round(seconds) + " s",
        "without acceleration and tool change");
    return List.copyOf(rows);
  }

  private void add(
      String key,
      String name,
      String formula,
      String inserted,
      double value,
      String unit,
      String result,
      String note) {
    rows.add(new WorksheetRow(key, name, formula, inserted, value, unit, result, note));
  }

  private void length(
      String key, String name, String formula, String inserted, double value, String note) {
    add(key, name, formula, inserted, value, "mm", grid.text(value), note);
  }

  private String n(double millimetres) {
    return grid.number(millimetres);
  }

  private static String plain(double number, int decimals) {
    return Lengths.plain(number, decimals);
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
              + n(limits.majorMin().orElse(blank))
              + " to "
              + n(limits.majorMax().orElse(blank));
      length("blank", "boss before the thread", "as the sheet says", range, blank, "");
      return;
    }
    String range =
        "limits of the minor diameter "
            + n(limits.minorMin().orElse(blank))
            + " to "
            + n(limits.minorMax().orElse(blank));
    String drill = job.spec().drill().map(Drill::name).map(d -> "drill suggested: " + d).orElse("");
    length("blank", "hole before the thread", "as the sheet says", range, blank, drill);
    double percent = (job.spec().nominal() - blank) / (FULL_HEIGHT * plan.pitch()) * 100;
    add(
        "engagement",
        "height of thread",
        "(D - hole) / (1.299 · P) · 100",
        "("
            + n(job.spec().nominal())
            + " - "
            + n(blank)
            + ") / (1.299 · "
            + n(plan.pitch())
            + ") · 100",
        percent,
        "%",
        plain(percent, 1) + " %",
        "");
  }

  private void path(double wear) {
    double bottom = job.bottomDiameter();
    double move = internal ? (bottom - mill()) / 2 : (bottom + mill()) / 2;
    length(
        "radialMove",
        "radial move, axis to cutter's centre",
        internal ? "(D - d) / 2" : "(d3 + d) / 2, d3 the basic minor diameter",
        "(" + n(bottom) + (internal ? " - " : " + ") + n(mill()) + ") / 2",
        move,
        "");
    boolean centre = plan.choices().path() == Path.WEAR;
    length(
        "programmedRadius",
        "radius of the programmed path",
        centre ? "the radial move" : "half the diameter where the teeth's tips run",
        centre ? n(move) : n(bottom) + " / 2",
        grid.millimetres(plan.last().programmed()),
        centre ? "rounded to an even number of increments" : "D holds the radius of the mill");
    Limits limits = job.spec().limits();
    double middle = (limits.pitchMin() + limits.pitchMax()) / 2;
    length(
        "wear",
        "wear in D" + plan.choices().tool(),
        "found by gauging: pitch diameter in the middle of its limits",
        "(" + n(limits.pitchMin()) + " + " + n(limits.pitchMax()) + ") / 2 = " + n(middle),
        wear,
        "the over-cut of the mill and its bending are in it");
    length(
        "radiusCut",
        "radius that the cutter's centre runs on",
        internal ? "radial move - wear" : "radial move + wear",
        n(plan.last().path()) + (internal ? " - " : " + ") + "(" + n(wear) + ")",
        plan.last().path() + (internal ? -wear : wear),
        "");
  }

  private void heights() {
    int starts = job.spec().starts();
    length(
        "risePerTurn",
        "rise in one turn",
        "lead = starts · P",
        starts + " · " + n(plan.pitch()),
        plan.lead(),
        "");
    boolean single = job.teeth().rows() == 1;
    String margin = starts == 1 ? "3/4 P" : "3/4 P + 2 · (starts - 1) · P";
    String inserted =
        "("
            + n(job.depth())
            + " + "
            + n(plan.below() + plan.above())
            + (single ? "" : " - " + n(job.comb()))
            + ") / "
            + n(plan.lead())
            + ", rounded up";
    add(
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
            : "after a turn each row stands where the one above began; entry and exit arcs overlap");
    double lowest = job.depth() + plan.below();
    length(
        "lowestGroove",
        "lowest groove below the top",
        starts == 1 ? "depth + P / 4" : "depth + P / 4 + (starts - 1) · P",
        n(job.depth()) + " + " + n(plan.below()),
        lowest,
        "so that the gauge reaches the depth");
    double from = grid.millimetres(plan.tip(0, 0));
    length(
        "startHeight",
        "Z of the tip where the helix begins",
        plan.rising()
            ? "-(lowest groove + tip below the first row)"
            : "-(lowest groove + tip below the first row) + turns · lead",
        "-("
            + n(lowest)
            + " + "
            + n(job.teeth().tip())
            + ")"
            + (plan.rising() ? "" : " + " + plan.turns() + " · " + n(plan.lead())),
        from,
        plan.rising() ? "from the bottom up" : "from the top down");
    length(
        "endHeight",
        "Z of the tip where the helix ends",
        plan.rising() ? "start + turns · lead" : "start - turns · lead",
        n(from) + (plan.rising() ? " + " : " - ") + plan.turns() + " · " + n(plan.lead()),
        grid.millimetres(plan.tip(plan.turns(), 0)),
        "");
  }

  private void entry() {
    PassPlan last = plan.last();
    if (plan.choices().entry() == Entry.STRAIGHT) {
      String note = internal ? "all teeth meet the wall at once: half the feed" : "";
      length(
          "entryRise",
          "rise on the way in",
          internal ? "none on a line square to the wall" : "lead · way / (2 · π · path radius)",
          internal
              ? "0"
              : n(plan.lead())
                  + " · "
                  + n(grid.millimetres(plan.tangent(last)))
                  + " / (2 · π · "
                  + n(last.path())
                  + ")",
          plan.entryRise(last),
          note);
      return;
    }
    double arc = plan.toolArc(last.arc());
    length(
        "entryRadius",
        "radius of the entry arc",
        internal ? "path radius / 2" : "radial depth + 1 mm, to stand clear of the boss",
        internal ? n(last.path()) + " / 2" : n(plan.radialDepth()) + " + " + n(1),
        arc,
        "of the cutter's centre; it touches the helix");
    double degrees = Math.rint(Angles.toDegrees(plan.choices().entry().sweep()));
    length(
        "entryRise",
        "rise on the entry arc",
        "lead · sweep / 360 · arc radius / path radius",
        n(plan.lead()) + " · " + plain(degrees, 0) + " / 360 · " + n(arc) + " / " + n(last.path()),
        plan.entryRise(last),
        "leaves no mark: the tooth follows the groove where they meet");
  }

  private void passes() {
    int number = plan.passes().size();
    for (PassPlan pass : plan.passes()) {
      double to = plan.radialDepth() * Math.sqrt((double) pass.number() / number);
      length(
          "pass" + pass.number(),
          "pass " + pass.number() + ", radial depth after it",
          "radial depth · √(pass / passes)",
          n(plan.radialDepth()) + " · √(" + pass.number() + " / " + number + ")",
          to,
          plain(pass.share() * 100, 0) + " % of the depth; each pass takes the same area of the V");
    }
  }

  private void speeds() {
    Feeds feeds = plan.feeds();
    boolean inch = grid.unit() == LengthUnit.INCH;
    String metal =
        feeds.metal().map(WorkMaterial::key).orElse("metal not named: taken as one of the steels");
    String source =
        feeds.fromTable() ? metal + ": " + CuttingData.SOURCE : "given with the request";
    double shownSpeed = inch ? feeds.speed() * 1000 / grid.unit().toMillimetres(12) : feeds.speed();
    String speedUnit = inch ? " ft/min" : " m/min";
    add(
        "speed",
        "cutting speed",
        feeds.fromTable() ? "from the table, group " + feeds.data().group() : "as given",
        feeds.data().metals(),
        feeds.speed(),
        "m/min",
        plain(shownSpeed, 0) + speedUnit,
        source);
    add(
        "spindle",
        "spindle speed",
        inch ? "12 · v / (π · d)" : "1000 · v / (π · d)",
        (inch ? "12 · " : "1000 · ")
            + plain(shownSpeed, 0)
            + " / (π · "
            + n(mill())
            + ") = "
            + plain(feeds.reckoned(), 0),
        feeds.rpm(),
        "1/min",
        plain(feeds.rpm(), 0) + " 1/min",
        feeds.reckoned() > plan.choices().mostRpm()
            ? "held to " + plain(plan.choices().mostRpm(), 0) + " 1/min"
            : "rounded down to tens");
    length(
        "toothFeed",
        "feed of the edge for one tooth",
        feeds.fromTable()
            ? plain(feeds.data().share(), 4) + " · d, within 0.008 and 0.08 mm"
            : "as given",
        plain(feeds.data().share(), 4) + " · " + n(mill()),
        feeds.tooth(),
        source);
    feed(
        "edgeFeed",
        "feed of the edge",
        "S · teeth · feed for one tooth",
        plain(feeds.rpm(), 0) + " · " + job.mill().flutes() + " · " + n(feeds.tooth()),
        feeds.edge(),
        "");
    double reach = 2 * plan.last().reach();
    feed(
        "centreFeed",
        "feed of the centre, F of the helix",
        internal ? "edge feed · (D - d) / D" : "edge feed · (d3 + d) / d3",
        shownFeed(feeds.edge())
            + " · ("
            + n(reach)
            + (internal ? " - " : " + ")
            + n(mill())
            + ") / "
            + n(reach),
        plan.last().feed(),
        "rounded down; a control that feeds the edge itself wants the edge feed");
    if (plan.last().entryFeed() != plan.last().feed()) {
      boolean arc = plan.choices().entry() != Entry.STRAIGHT;
      double radius = arc ? plan.toolArc(plan.last().arc()) : 0;
      feed(
          "entryFeed",
          "feed on the way in",
          arc ? "edge feed · arc radius / (arc radius + d / 2)" : "half of F",
          arc
              ? shownFeed(feeds.edge())
                  + " · "
                  + n(radius)
                  + " / ("
                  + n(radius)
                  + " + "
                  + n(mill() / 2)
                  + ")"
              : shownFeed(plan.last().feed()) + " / 2",
          plan.last().entryFeed(),
          "");
    }
    chip();
  }

  private void chip() {
    PassPlan last = plan.last();
    Feeds feeds = plan.feeds();
    double tooth = last.feed() / feeds.rpm() / job.mill().flutes();
    Engagement cut = new Engagement(internal, last.path(), job.mill().radius(), last.metal());
    double chip = cut.greatestChip(tooth);
    double degrees = Angles.toDegrees(cut.angle());
    length(
        "chip",
        "greatest chip at the crest, last pass",
        "F / (S · teeth) · sin ψ, ψ from the finished wall to where the metal ends",
        n(tooth) + " · sin " + plain(degrees, 1) + "°",
        chip,
        chip < WorkMaterial.LEAST_CHIP
            ? "below "
                + n(WorkMaterial.LEAST_CHIP)
                + ": the edge rubs; feed more or take fewer passes"
            : "");
  }

  private void clearances() {
    length(
        "clearHeight",
        "height of rapids over the part",
        "above the top",
        n(grid.millimetres(plan.clear())),
        grid.millimetres(plan.clear()),
        "common practice, no source");
    if (internal) {
      length(
          "room",
          "room round the mill in the hole",
          "(hole - d) / 2",
          "(" + n(job.hole().diameter()) + " - " + n(mill()) + ") / 2",
          plan.room(),
          "");
    }
    length(
        "leastDepth",
        internal ? "least depth of the hole" : "least height of the boss",
        "lowest groove + tip + entry rise + room below",
        n(job.depth() + plan.below())
            + " + "
            + n(job.teeth().tip())
            + " + "
            + n(plan.entryRise(plan.last()))
            + " + "
            + n(PathPlan.ROOM_BELOW),
        plan.neededDepth(),
        "room below is common practice, no source");
  }

  private void feed(
      String key, String name, String formula, String inserted, double value, String note) {
    add(key, name, formula, inserted, value, "mm/min", shownFeed(value) + feedUnit(), note);
  }

  private String shownFeed(double feed) {
    return plain(grid.unit().fromMillimetres(feed), 1);
  }

  private String feedUnit() {
    return String.format(Locale.ROOT, " %s/min", grid.unit().symbol());
  }
}
