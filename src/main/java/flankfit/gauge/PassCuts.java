package flankfit.gauge;

import flankfit.cutting.EdgeFeed;
import flankfit.cutting.Engagement;
import flankfit.cutting.Rung;
import flankfit.gauge.PassCut.Push;
import flankfit.motion.ModalState;
import flankfit.motion.Tape;
import flankfit.unit.Angles;
import java.util.Optional;
import java.util.OptionalDouble;

/** Says how each pass cuts: feeds, chip, time, and force where the metal is known. */
final class PassCuts {
  private static final double SECONDS = 60;
  private static final double PER_METRE = 1000;

  private final FoundThread found;
  private final Tape tape;

  PassCuts(FoundThread found, Tape tape) {
    this.found = found;
    this.tape = tape;
  }

  /** Feed of the centre for one tooth (mm); 0 when feed or speed is not known. */
  static double toothLoad(CutPass cut) {
    ModalState state = cut.pass().state();
    boolean turns = state.spindle() != ModalState.Spindle.OFF && state.rpm() > 0;
    return turns ? state.feed() / state.rpm() / Math.max(1, cut.tool().flutes()) : 0;
  }

  /** How a pass cuts; empty when no feed is known. */
  Optional<PassCut> of(int i) {
    ThreadModel model = found.model();
    CutPass cut = model.passes().get(i);
    double feed = cut.pass().state().feed();
    boolean internal = model.spec().internal();
    if (feed <= 0) {
      return Optional.empty();
    }
    EdgeFeed edge = new EdgeFeed(internal, cut.pass().radius(), cut.tooth().outsideRadius());
    double load = toothLoad(cut);
    Optional<Engagement> met = engagement(i);
    return Optional.of(
        new PassCut(
            feed,
            edge.edge(feed),
            load > 0 ? OptionalDouble.of(load) : OptionalDouble.empty(),
            met.map(Engagement::angle).orElse(0.0),
            met.filter(e -> load > 0)
                .map(e -> OptionalDouble.of(e.greatestChip(load)))
                .orElseGet(OptionalDouble::empty),
            seconds(cut.pass()),
            found.bending().map(bending -> push(cut, bending.rungs().get(i)))));
  }

  /** Engagement of the crest; empty when an earlier pass already reached as far. */
  private Optional<Engagement> engagement(int i) {
    ThreadModel model = found.model();
    boolean internal = model.spec().internal();
    CutPass cut = model.passes().get(i);
    double metal = model.blankRadius();
    for (int k = 0; k < i; k++) {
      double reach = model.passes().get(k).reach(internal);
      metal = internal ? Math.max(metal, reach) : Math.min(metal, reach);
    }
    double stock = cut.reach(internal) - metal;
    boolean meets = (internal ? stock : -stock) > ThreadModel.SAME_RADIUS;
    return meets
        ? Optional.of(
            new Engagement(internal, cut.pass().radius(), cut.tooth().outsideRadius(), metal))
        : Optional.empty();
  }

  private double seconds(Pass pass) {
    double seconds = 0;
    for (int move = pass.first(); move <= pass.last(); move++) {
      seconds += tape.seconds(move);
    }
    return seconds;
  }

  private static Push push(CutPass cut, Rung rung) {
    double radius = cut.tooth().outsideRadius();
    double speed = Angles.TURN * radius * cut.pass().state().rpm() / SECONDS / PER_METRE;
    double low = rung.cutShort().get(0);
    double high = rung.cutShort().get(rung.cutShort().size() - 1);
    return new Push(
        rung.total().cutting(),
        rung.total().away(),
        rung.peak(),
        rung.total().cutting() * speed,
        rung.total().cutting() * radius / PER_METRE,
        rung.total().volume(),
        rung.meanCutShort(),
        low - high,
        rung.rubs().stream().allMatch(rubs -> rubs));
  }
}
