package flankfit.gauge;

import flankfit.cutting.EdgeLine;
import flankfit.cutting.Ladder;
import flankfit.cutting.RowCut;
import flankfit.cutting.Rung;
import flankfit.cutting.Step;
import flankfit.cutting.WorkMaterial;
import flankfit.motion.ModalState;
import flankfit.standard.PlugGauges;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Finds how far the forces of each pass push the mill off its path. */
final class BendingSolver {
  private final FoundThread found;
  private final ThreadModel model;
  private final WorkMaterial material;
  private final Consumer<String> assume;
  private final List<PassRows> rows = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  private BendingSolver(FoundThread found, WorkMaterial material, Consumer<String> assume) {
    this.found = found;
    this.model = found.model();
    this.material = material;
    this.assume = assume;
  }

  /**
   * The bending of a thread's passes; empty when something needed is not known, which is said as an
   * assumption.
   */
  static Optional<Bending> of(FoundThread found, WorkMaterial material, Consumer<String> assume) {
    return new BendingSolver(found, material, assume).solve();
  }

  private Optional<Bending> solve() {
    Optional<String> unknown = unknown();
    if (unknown.isPresent()) {
      assume.accept(
          "no force is predicted for " + found.hole().name() + ": " + unknown.orElseThrow());
      return Optional.empty();
    }
    for (CutPass cut : model.passes()) {
      rows.add(PassRows.within(cut, metalBottom(), metalTop()));
    }
    rows.add(rows.get(model.finishing()));
    if (rows.stream().anyMatch(r -> r.count() == 0)) {
      assume.accept(
          "no force is predicted for "
              + found.hole().name()
              + ": in a pass no row stands in the metal");
      return Optional.empty();
    }
    for (PassRows each : rows) {
      steps.add(step(each));
    }
    return bending();
  }

  /** What is missing; empty when nothing is. */
  private Optional<String> unknown() {
    for (CutPass cut : model.passes()) {
      ModalState state = cut.pass().state();
      String tool = "tool " + cut.tool().number();
      if (state.spindle() == ModalState.Spindle.OFF || state.rpm() <= 0) {
        return Optional.of("the spindle does not turn in the pass at line " + cut.pass().line());
      }
      if (state.feed() <= 0) {
        return Optional.of("no feed is known for the pass at line " + cut.pass().line());
      }
      if (cut.pass().lead() <= 0) {
        return Optional.of("the pass at line " + cut.pass().line() + " does not rise");
      }
      if (MillBeam.of(cut.tool()).isEmpty()) {
        return Optional.of("the sheet gives neither neck nor shank of " + tool);
      }
    }
    return Optional.empty();
  }

  /** Height below which rows meet no metal, part frame (mm). */
  private double metalBottom() {
    return found
        .hole()
        .depth()
        .map(depth -> found.hole().top() - depth)
        .or(found::partBottom)
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** Height above which rows meet no metal (mm): the mouth, half a countersink's depth lower. */
  private double metalTop() {
    double sunk =
        found
            .hole()
            .countersink()
            .map(c -> (c.diameter() - found.hole().diameter()) / 2 / Math.tan(c.angle() / 2))
            .orElse(0.0);
    return found.hole().top() - Math.max(0, sunk) / 2;
  }

  private Step step(PassRows each) {
    CutPass cut = each.cut();
    MillBeam.Made made = MillBeam.of(cut.tool()).orElseThrow();
    made.assumed().forEach(assume);
    int n = each.count();
    double[][] compliance = new double[n][n];
    for (int k = 0; k < n; k++) {
      for (int j = 0; j < n; j++) {
        compliance[k][j] = made.beam().compliance(each.fromTip(j), each.fromTip(k));
      }
    }
    return new Step(rowCut(cut), compliance);
  }

  private RowCut rowCut(CutPass cut) {
    boolean internal = model.spec().internal();
    double least = Math.abs(model.blankRadius() - cut.pass().radius());
    // A pushed mill meets the metal a little farther in.
    EdgeLine edge = CutEdges.of(cut.tooth(), least - model.spec().pitch() / 4, model.spacing() / 2);
    return new RowCut(
        internal,
        cut.isClimb(internal),
        cut.pass().radius(),
        cut.pass().rise() / Math.abs(cut.pass().sweep()),
        edge,
        PassCuts.toothLoad(cut),
        cut.tool().flutes());
  }

  private Optional<Bending> bending() {
    PassStock stock = new PassStock(model, rows);
    List<Rung> rungs = Ladder.climb(steps, stock, material.ofChip());
    List<Rung> practice = Ladder.climb(steps, stock, material.withEdge());
    for (int i = 0; i < rungs.size(); i++) {
      if (!rungs.get(i).settled() || !practice.get(i).settled()) {
        assume.accept(
            "bending is left out for "
                + found.hole().name()
                + ": force and mill find no balance in the pass at line "
                + rows.get(i).cut().pass().line());
        return Optional.empty();
      }
    }
    List<Double> heights = heights();
    double tight = extreme(heights, rungs, true);
    double loose = extreme(heights, rungs, false);
    return Optional.of(
        new Bending(
            material,
            rows,
            rungs,
            means(rungs),
            at(tight, rungs),
            at(loose, rungs),
            at(feltHeight(heights), rungs),
            means(practice),
            sprung(rungs),
            sprung(practice)));
  }

  /** Heights of the finishing pass's rows, rising. */
  private List<Double> heights() {
    PassRows finishing = rows.get(model.finishing());
    List<Double> heights = new ArrayList<>();
    for (int k = 0; k < finishing.count(); k++) {
      heights.add(finishing.height(k));
    }
    return heights;
  }

  /** Height of the turn beyond those that a NO-GO gauge may travel from the mouth. */
  private double feltHeight(List<Double> heights) {
    double allowed = model.spec().gauges().map(PlugGauges::turnsAllowed).orElse(0.0);
    int down = (int) Math.min(heights.size() - 1, Math.floor(allowed));
    return heights.get(heights.size() - 1 - down);
  }

  private double outwards() {
    return model.spec().internal() ? -1 : 1;
  }

  private List<Double> means(List<Rung> rungs) {
    List<Double> means = new ArrayList<>();
    for (int i = 0; i < model.passes().size(); i++) {
      means.add(outwards() * rungs.get(i).meanCutShort());
    }
    return means;
  }

  /** The finishing pass run once more counts as that pass where it goes deeper. */
  private List<Double> sprung(List<Rung> rungs) {
    List<Double> means = means(rungs);
    double again = rungs.get(model.passes().size()).meanCutShort();
    double before = rungs.get(model.finishing()).meanCutShort();
    means.set(model.finishing(), outwards() * Math.min(before, again));
    return means;
  }

  private List<Double> at(double z, List<Rung> rungs) {
    List<Double> bend = new ArrayList<>();
    for (int i = 0; i < model.passes().size(); i++) {
      double[] values = rungs.get(i).cutShort().stream().mapToDouble(Double::doubleValue).toArray();
      bend.add(outwards() * rows.get(i).at(z, values));
    }
    return bend;
  }

  /** The height at which the passes together reach least or most. */
  private double extreme(List<Double> heights, List<Rung> rungs, boolean least) {
    double best = heights.get(0);
    double depth = Double.NaN;
    for (double z : heights) {
      double here = depth(at(z, rungs));
      if (Double.isNaN(depth) || (least ? here < depth : here > depth)) {
        depth = here;
        best = z;
      }
    }
    return best;
  }

  private double depth(List<Double> bend) {
    boolean internal = model.spec().internal();
    double deepest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < bend.size(); i++) {
      double reach = model.passes().get(i).reach(internal) + bend.get(i);
      deepest = Math.max(deepest, internal ? reach : -reach);
    }
    return deepest;
  }
}
