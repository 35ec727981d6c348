package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.standard.ThreadSpec;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Rules on lead, hand, sense, turns, radius, place and depth of the helix. */
final class HelixRules {
  private static final double LEAD_SHARE = 1e-3;
  private static final double OFF_AXIS = 0.02;
  private static final double OFF_RADIUS = 0.5;

  /** Change of the pitch diameter from which a pass out of phase is told (mm). */
  private static final double WIDER = 1e-3;

  /** Sweep that a full turn may lack (1 turn) through rounded end points. */
  private static final double TURN_SLACK = 1e-4;

  private final Scene scene;
  private final ThreadSpec spec;
  private final ThreadModel model;
  private final CutPass finish;
  private final Findings findings;
  private final Text text;

  HelixRules(Scene scene, Findings findings) {
    this.scene = scene;
    this.spec = scene.found().spec();
    this.model = scene.found().model();
    this.finish = model.finish();
    this.findings = findings;
    this.text = scene.found().text();
  }

  void check() {
    lead();
    hand();
    sense();
    fullTurn();
    radius();
    axis();
    depth();
    turnsAndRows();
    rowPitch();
    phases();
  }

  private void lead() {
    double lead = finish.pass().lead();
    if (Math.abs(model.leadError()) > LEAD_SHARE * spec.lead()) {
      findings.add(
          Code.TH01,
          scene.at(finish.pass()),
          "the lead is " + text.length(lead) + ", the thread wants " + text.length(spec.lead()),
          "a gauge meets flanks that lie "
              + text.length(scene.found().accumulatedError())
              + " off over its engaged length",
          "move Z by " + text.length(spec.lead()) + " in a full turn");
    }
  }

  private void hand() {
    Pass pass = finish.pass();
    if (pass.lead() > 0 && pass.isRightHanded() == spec.leftHand()) {
      findings.add(
          Code.TH02,
          scene.at(pass),
          (spec.leftHand() ? "right-hand helix, left-hand" : "left-hand helix, right-hand")
              + " thread wanted",
          (pass.isAnticlockwise() ? "counter-clockwise" : "clockwise")
              + " and "
              + (pass.rise() > 0 ? "rising" : "falling"),
          "reverse the sense of the turn or the sign of its Z travel");
    }
  }

  private void sense() {
    for (CutPass cut : model.passes()) {
      Pass pass = cut.pass();
      findings.add(
          Code.TH03,
          scene.at(pass),
          cut.cutting(spec.internal())
              + " milling, "
              + (pass.rise() >= 0 ? "from the bottom up" : "from the top down"),
          (pass.isAnticlockwise() ? "counter-clockwise" : "clockwise")
              + (spec.internal() ? " inside a hole, spindle " : " around a boss, spindle ")
              + pass.state().spindle().word(),
          "");
    }
  }

  private void fullTurn() {
    double turns = finish.pass().turns();
    if (turns < 1 - TURN_SLACK) {
      findings.add(
          Code.TH04,
          scene.at(finish.pass()),
          "the last pass turns "
              + Text.degrees(Math.abs(finish.pass().sweep()))
              + " at full diameter, 360° is wanted",
          "over the rest the thread is not cut to size",
          "make the turn a full one");
    }
  }

  private void radius() {
    double reached = 2 * finish.reach(spec.internal());
    double wanted = spec.internal() ? spec.nominal() : spec.basicMinor();
    double off = reached - wanted;
    if (Math.abs(off) > OFF_RADIUS) {
      double path = finish.pass().radius() - off / 2;
      findings.add(
          Code.TH06,
          scene.at(finish.pass()),
          "helix radius "
              + text.length(finish.pass().radius())
              + " gives diameter "
              + text.length(reached)
              + ", "
              + text.length(wanted)
              + " is wanted",
          "the thread is " + spec.designation(),
          "let the centre of the tool run on radius " + text.length(path));
    }
  }

  private void axis() {
    double off = scene.found().offAxis();
    if (off > OFF_AXIS) {
      Pass pass = finish.pass();
      findings.add(
          Code.TH07,
          scene.at(pass),
          "the thread's axis is "
              + text.length(off)
              + " off "
              + scene.found().hole().name()
              + ", "
              + text.length(OFF_AXIS)
              + " is allowed",
          "axis at X"
              + text.coordinate(pass.x())
              + " Y"
              + text.coordinate(pass.y())
              + ": the thread is deeper on one side",
          "check I and J of the turn, or where it starts");
    }
  }

  private void depth() {
    FoundThread found = scene.found();
    double slack = spec.pitch() / 2;
    double top = found.hole().top();
    double bottom = found.wantedBottom();
    if (model.zTop() < top - slack || model.zBottom() > bottom + slack) {
      double deeper = Math.max(0, model.zBottom() - bottom);
      findings.add(
          Code.TH09,
          scene.at(finish.pass()),
          "the thread covers Z"
              + text.coordinate(model.zBottom())
              + " to Z"
              + text.coordinate(model.zTop())
              + ", Z"
              + text.coordinate(bottom)
              + " to Z"
              + text.coordinate(top)
              + " is wanted",
          "what is not reached stays without thread; rows and rise count together",
          deeper > slack
              ? "start "
                  + text.length(deeper)
                  + " deeper, at Z"
                  + text.coordinate(finish.pass().zLow() - deeper)
              : "go on to Z" + text.coordinate(finish.pass().zHigh() + top - model.zTop()));
    }
  }

  private void turnsAndRows() {
    double turns = finish.pass().turns();
    int rows = finish.teeth().rows();
    double wanted = scene.found().hole().top() - scene.found().wantedBottom();
    boolean singlePass = model.passes().stream().filter(model::isAtFullDepth).count() == 1;
    if (rows == 1 && turns < 1.5 && singlePass && wanted > 1.5 * spec.lead()) {
      findings.add(
          Code.TH10,
          scene.at(finish.pass()),
          "1 row and " + Text.number(turns, 2) + " turns for " + text.length(wanted) + " of thread",
          "the thread has only one groove",
          "make "
              + (int) Math.ceil(wanted / spec.lead())
              + " turns, or take a mill with more rows");
    }
    if (rows == 1 && startsCut() < spec.starts()) {
      findings.add(
          Code.TH10,
          scene.at(finish.pass()),
          startsCut() + " of " + spec.starts() + " starts are cut",
          "a single row cuts one groove along its helix",
          "begin each start " + text.length(spec.pitch()) + " higher");
    }
    double comb = (rows - 1) * finish.rowPitch();
    // With several starts the shortest groove at either end stops a gauge: the comb must be longer.
    double enough = wanted + (spec.starts() - 1) * spec.pitch();
    if (rows > 1 && turns > 1.5 && comb >= enough) {
      findings.add(
          Code.TH10,
          scene.at(finish.pass()),
          rows
              + " rows and "
              + Text.number(turns, 2)
              + " turns for "
              + text.length(wanted)
              + " of thread",
          "the rows pass through the same metal again",
          "one turn is enough");
    }
  }

  /** Number of grooves in a lead that passes at full depth cut. */
  private int startsCut() {
    int last = model.finishing();
    double pitch = spec.pitch();
    Set<Long> grooves = new HashSet<>();
    for (int i = 0; i < model.passes().size(); i++) {
      if (model.isAtFullDepth(model.passes().get(i)) && model.hasLeadOf(last, i)) {
        grooves.add(Math.floorMod(Math.round(model.apart(last, i) / pitch), (long) spec.starts()));
      }
    }
    return grooves.size();
  }

  private void rowPitch() {
    double rows = finish.rowPitch();
    double perGroove = finish.pass().lead() / spec.starts();
    if (rows > 0 && perGroove > 0) {
      double multiple = rows / perGroove;
      if (Math.rint(multiple) < 1
          || Math.abs(multiple - Math.rint(multiple)) > LEAD_SHARE * multiple) {
        findings.add(
            Code.TH13,
            scene.at(finish.pass()),
            "rows " + text.length(rows) + " apart, lead " + text.length(finish.pass().lead()),
            "every row cuts its own groove",
            mendedRows(rows));
      }
    }
  }

  /** The helix is to be mended only where the rows suit the thread wanted. */
  private String mendedRows(double rows) {
    double multiple = Math.rint(rows / spec.pitch());
    boolean fits = multiple >= 1 && Math.abs(rows - multiple * spec.pitch()) <= LEAD_SHARE * rows;
    return fits
        ? "move Z by " + text.length(spec.lead()) + " in a turn"
        : "take a mill with rows " + text.length(spec.pitch()) + " apart, or with one row";
  }

  /** A pass whose grooves lie beside those of the finishing pass widens them. */
  private void phases() {
    int last = model.finishing();
    List<CutPass> passes = model.passes();
    double alone =
        new Measurer(spec)
            .simple(new ThreadModel(spec, model.blankRadius(), List.of(finish)).thread());
    for (int i = 0; i < passes.size(); i++) {
      if (i == last || !model.hasLeadOf(last, i)) {
        continue;
      }
      double shift = model.shift(last, i);
      ThreadModel pair = new ThreadModel(spec, model.blankRadius(), List.of(finish, passes.get(i)));
      double wider = new Measurer(spec).simple(pair.thread()) - alone;
      if (Math.abs(wider) > WIDER) {
        findings.add(
            Code.TH14,
            scene.at(passes.get(i).pass()),
            "this pass lies " + text.length(Math.abs(shift)) + " beside the finishing pass along Z",
            "it changes the pitch diameter by " + text.length(wider),
            "start both so that their Z agrees at the same angle");
      }
    }
  }
}
