package flankfit.draft;

import flankfit.cutting.Engagement;
import flankfit.cutting.WorkMaterial;
import flankfit.draft.DraftChoices.Entry;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;

/** The rows of a worksheet on speed, feeds and chip. */
final class SpeedRows {
  private final PathPlan plan;
  private final ThreadJob job;
  private final Grid grid;
  private final boolean internal;
  private final WorksheetRows rows;

  SpeedRows(PathPlan plan, WorksheetRows rows) {
    this.plan = plan;
    this.job = plan.job();
    this.grid = plan.grid();
    this.internal = job.internal();
    this.rows = rows;
  }

  /** Adds the rows. */
  void add() {
    Feeds feeds = plan.feeds();
    boolean inch = grid.unit() == LengthUnit.INCH;
    String metal =
        feeds.metal().map(WorkMaterial::key).orElse("metal not named: taken as one of the steels");
    String source =
        feeds.fromTable() ? metal + ": " + CuttingData.SOURCE : "given with the request";
    double shownSpeed = inch ? feeds.speed() * 1000 / grid.unit().toMillimetres(12) : feeds.speed();
    String speedUnit = inch ? " ft/min" : " m/min";
    rows.add(
        "speed",
        "cutting speed",
        feeds.fromTable() ? "from the table, group " + feeds.data().group() : "as given",
        feeds.data().metals(),
        feeds.speed(),
        "m/min",
        WorksheetRows.plain(shownSpeed, 0) + speedUnit,
        source);
    rows.add(
        "spindle",
        "spindle speed",
        inch ? "12 · v / (π · d)" : "1000 · v / (π · d)",
        (inch ? "12 · " : "1000 · ")
            + WorksheetRows.plain(shownSpeed, 0)
            + " / (π · "
            + rows.number(job.mill().diameter())
            + ") = "
            + WorksheetRows.plain(feeds.reckoned(), 0),
        feeds.rpm(),
        "1/min",
        WorksheetRows.plain(feeds.rpm(), 0) + " 1/min",
        feeds.reckoned() > plan.choices().mostRpm()
            ? "held to " + WorksheetRows.plain(plan.choices().mostRpm(), 0) + " 1/min"
            : "rounded down to tens");
    rows.length(
        "toothFeed",
        "feed of the edge for one tooth",
        feeds.fromTable()
            ? WorksheetRows.plain(feeds.data().share(), 4) + " · d, within 0.008 and 0.08 mm"
            : "as given",
        WorksheetRows.plain(feeds.data().share(), 4) + " · " + rows.number(job.mill().diameter()),
        feeds.tooth(),
        source);
    rows.feed(
        "edgeFeed",
        "feed of the edge",
        "S · teeth · feed for one tooth",
        WorksheetRows.plain(feeds.rpm(), 0)
            + " · "
            + job.mill().flutes()
            + " · "
            + rows.number(feeds.tooth()),
        feeds.edge(),
        "");
    double reach = 2 * plan.last().reach();
    rows.feed(
        "centreFeed",
        "feed of the centre, F of the helix",
        internal ? "edge feed · (D - d) / D" : "edge feed · (d3 + d) / d3",
        rows.shownFeed(feeds.edge())
            + " · ("
            + rows.number(reach)
            + (internal ? " - " : " + ")
            + rows.number(job.mill().diameter())
            + ") / "
            + rows.number(reach),
        plan.last().feed(),
        "rounded down; a control that feeds the edge itself wants the edge feed");
    if (plan.last().entryFeed() != plan.last().feed()) {
      boolean arc = plan.choices().entry() != Entry.STRAIGHT;
      double radius = arc ? plan.toolArc(plan.last().arc()) : 0;
      rows.feed(
          "entryFeed",
          "feed on the way in",
          arc ? "edge feed · arc radius / (arc radius + d / 2)" : "half of F",
          arc
              ? rows.shownFeed(feeds.edge())
                  + " · "
                  + rows.number(radius)
                  + " / ("
                  + rows.number(radius)
                  + " + "
                  + rows.number(job.mill().diameter() / 2)
                  + ")"
              : rows.shownFeed(plan.last().feed()) + " / 2",
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
    rows.length(
        "chip",
        "greatest chip at the crest, last pass",
        "F / (S · teeth) · sin ψ, ψ from the finished wall to where the metal ends",
        rows.number(tooth) + " · sin " + WorksheetRows.plain(degrees, 1) + "°",
        chip,
        chip < WorkMaterial.LEAST_CHIP
            ? "below "
                + rows.number(WorkMaterial.LEAST_CHIP)
                + ": the edge rubs; feed more or take fewer passes"
            : "");
  }
}
