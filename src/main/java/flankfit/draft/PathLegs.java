package flankfit.draft;

import flankfit.draft.DraftChoices.Entry;
import flankfit.draft.DraftChoices.Path;
import flankfit.draft.Leg.Kind;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The blocks of motion round one hole or boss. They are laid out for a cutter that runs left of the
 * wall, counter-clockwise in a hole and clockwise round a boss, with the helix beginning at the
 * axis's X+ side; the other sense is the mirror image in Y.
 */
final class PathLegs {
  /** Feed down beside the metal, and feed while compensation comes on or goes off (mm/min). */
  private static final double DOWN = 1000;

  private static final double ASIDE = 300;

  private final PathPlan plan;
  private final Grid grid;
  private final Entry entry;
  private final boolean wear;
  private final long radius;
  private final List<Leg> legs = new ArrayList<>();

  PathLegs(PathPlan plan) {
    this.plan = plan;
    this.grid = plan.grid();
    this.entry = plan.choices().entry();
    this.wear = plan.choices().path() == Path.WEAR;
    this.radius = grid.steps(plan.job().mill().radius());
  }

  /**
   * The blocks: the first one begins, and the last one ends, at the clear height over {@link
   * #start}.
   */
  List<Leg> all() {
    for (PassPlan pass : plan.passes()) {
      for (int helix = 0; helix < plan.helices(); helix++) {
        if (plan.job().internal()) {
          inside(pass, helix);
        } else {
          outside(pass, helix);
        }
      }
    }
    if (plan.job().internal()) {
      legs.add(Leg.rapid(0, 0, plan.clear()));
    }
    return plan.leftOfWall()
        ? List.copyOf(legs)
        : legs.stream().map(Leg::mirrored).collect(Collectors.toUnmodifiableList());
  }

  /** Where the cutter goes down: the axis of a hole, a place beside a boss (increments). */
  long[] start() {
    long[] at = plan.job().internal() ? new long[2] : aside(plan.last());
    return new long[] {at[0], plan.leftOfWall() ? at[1] : -at[1]};
  }

  private String down() {
    return plan.feedWord(rounded(DOWN, 40));
  }

  private String sideways() {
    return plan.feedWord(rounded(ASIDE, 12));
  }

  private double rounded(double metric, double inch) {
    return grid.unit() == LengthUnit.INCH ? grid.unit().toMillimetres(inch) : metric;
  }

  private String name(PassPlan pass, int helix) {
    String of =
        plan.passes().size() == 1
            ? "ONE PASS"
            : "PASS " + pass.number() + " OF " + plan.passes().size();
    String start = plan.helices() == 1 ? "" : ", START " + (helix + 1) + " OF " + plan.helices();
    return of + start + ", PATH RADIUS " + grid.word(pass.programmed());
  }

  private String on() {
    return plan.leftOfWall() ? "G41" : "G42";
  }

  private String register() {
    return "D" + plan.choices().tool();
  }

  private int sign() {
    return plan.rising() ? 1 : -1;
  }

  private void inside(PassPlan pass, int helix) {
    long rho = pass.programmed();
    long arc = pass.arc();
    long rise = sign() * grid.steps(plan.entryRise(pass));
    long from = plan.tip(0, helix) - rise;
    long to = plan.tip(plan.turns(), helix) + rise;
    long side = entry == Entry.HALF ? plan.startLine() : 0;
    legs.add(Leg.line(0, 0, from, down()).under(name(pass, helix)));
    if (side != 0) {
      legs.add(Leg.line(0, side, from, sideways()));
    }
    String in = plan.feedWord(pass.entryFeed());
    switch (entry) {
      case STRAIGHT -> legs.add(Leg.line(rho, 0, from, in).with(on(), register()));
      case QUARTER -> {
        legs.add(Leg.line(rho - arc, -arc, from, sideways()).with(on(), register()));
        legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho, 0, plan.tip(0, helix), 0, arc, in));
      }
      case HALF -> {
        legs.add(Leg.line(rho - 2 * arc, 0, from, sideways()).with(on(), register()));
        legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho, 0, plan.tip(0, helix), arc, 0, in));
      }
    }
    turns(Kind.ANTICLOCKWISE, pass, helix);
    switch (entry) {
      case STRAIGHT -> legs.add(Leg.line(0, 0, to, sideways()).with("G40", ""));
      case QUARTER -> {
        legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho - arc, arc, to, -arc, 0, ""));
        legs.add(Leg.line(0, 0, to, sideways()).with("G40", ""));
      }
      case HALF -> {
        legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho - 2 * arc, 0, to, -arc, 0, ""));
        legs.add(Leg.line(0, -side, to, sideways()).with("G40", ""));
        legs.add(Leg.line(0, 0, to, sideways()));
      }
    }
  }

  /** Whole turns, one block each: heights are rounded one by one, so that nothing adds up. */
  private void turns(Kind kind, PassPlan pass, int helix) {
    long rho = pass.programmed();
    String feed = plan.feedWord(pass.feed());
    for (int turn = 1; turn <= plan.turns(); turn++) {
      legs.add(Leg.arc(kind, rho, 0, plan.tip(turn, helix), -rho, 0, turn == 1 ? feed : ""));
    }
  }

  /** Where the cutter goes down beside a boss before a pass (increments). */
  private long[] aside(PassPlan pass) {
    long centre = pass.programmed() + (wear ? 0 : radius);
    long arc = pass.arc() - (wear ? 0 : radius);
    long more = plan.startLine();
    return switch (entry) {
      case STRAIGHT -> new long[] {centre, plan.tangent(pass) + more};
      case QUARTER -> new long[] {centre + arc + more, arc};
      case HALF -> new long[] {centre + 2 * arc, -more};
    };
  }

  private void outside(PassPlan pass, int helix) {
    long rho = pass.programmed();
    long arc = pass.arc();
    long rise = sign() * grid.steps(plan.entryRise(pass));
    long from = plan.tip(0, helix) - rise;
    long to = plan.tip(plan.turns(), helix) + rise;
    long[] at = aside(pass);
    long[] start = aside(plan.last());
    if (!legs.isEmpty() || at[0] != start[0] || at[1] != start[1]) {
      legs.add(Leg.rapid(at[0], at[1], plan.clear()));
    }
    legs.add(Leg.line(at[0], at[1], from, down()).under(name(pass, helix)));
    String in = plan.feedWord(pass.entryFeed());
    long length = plan.tangent(pass);
    switch (entry) {
      case STRAIGHT -> {
        legs.add(Leg.line(rho, length, from, sideways()).with(on(), register()));
        legs.add(Leg.line(rho, 0, plan.tip(0, helix), in));
      }
      case QUARTER -> {
        legs.add(Leg.line(rho + arc, arc, from, sideways()).with(on(), register()));
        legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho, 0, plan.tip(0, helix), 0, -arc, in));
      }
      case HALF -> {
        legs.add(Leg.line(rho + 2 * arc, 0, from, sideways()).with(on(), register()));
        legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho, 0, plan.tip(0, helix), -arc, 0, in));
      }
    }
    turns(Kind.CLOCKWISE, pass, helix);
    switch (entry) {
      case STRAIGHT -> legs.add(Leg.line(rho, -length, to, ""));
      case QUARTER -> legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho + arc, -arc, to, arc, 0, ""));
      case HALF -> legs.add(Leg.arc(Kind.ANTICLOCKWISE, rho + 2 * arc, 0, to, arc, 0, ""));
    }
    legs.add(Leg.line(at[0], -at[1], to, sideways()).with("G40", ""));
    legs.add(Leg.rapid(at[0], -at[1], plan.clear()));
    boolean over = pass.number() == plan.passes().size() && helix == plan.helices() - 1;
    if (over) {
      legs.add(Leg.rapid(start[0], start[1], plan.clear()));
    }
  }
}
