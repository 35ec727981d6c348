package flankfit.odds;

import flankfit.chance.Spread;
import flankfit.gauge.Text;
import flankfit.gauge.ThreadVariation;
import flankfit.odds.Input.Kind;
import flankfit.setup.Scatter;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that scatters for one thread, from the sheet where it says so, else something usual, which is
 * told as an assumption.
 *
 * @param list the inputs, in a fixed order
 * @param assumptions what was taken, one sentence each
 */
record Inputs(List<Input> list, List<String> assumptions) {
  // Common practice, no source: of these the sheet states what is known better.
  private static final double DIAMETER = 0.020;
  private static final double RUNOUT = 0.010;
  private static final double CREST = 0.010;
  private static final double CIRCLE = 0.006;
  private static final double ROUNDNESS = 0.006;
  private static final double HOLE = 0.040;

  /** Forces rest on turning tables (1). */
  private static final double FORCE = 0.3;

  /** The same where the holder's compliance is a guess too (1). */
  private static final double FORCE_AND_HOLDER = 0.5;

  Inputs {
    list = List.copyOf(list);
    assumptions = List.copyOf(assumptions);
  }

  static Inputs of(ThreadVariation thread, Scatter scatter) {
    return new Reading(thread).read(scatter);
  }

  /** Index of a kind; -1 when it does not scatter here. */
  int index(Kind kind) {
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i).kind() == kind) {
        return i;
      }
    }
    return -1;
  }

  /** The spread of a kind; none when it does not scatter here. */
  Spread spread(Kind kind) {
    int i = index(kind);
    return i < 0 ? new Spread.Rectangular(0) : list.get(i).spread();
  }

  /** Collects the inputs of a thread. */
  private static final class Reading {
    private final ThreadVariation thread;
    private final Text text;
    private final List<Input> list = new ArrayList<>();
    private final List<String> assumptions = new ArrayList<>();
    private final List<String> usual = new ArrayList<>();

    Reading(ThreadVariation thread) {
      this.thread = thread;
      this.text = thread.text();
    }

    Inputs read(Scatter scatter) {
      Tool tool = thread.tool();
      Tool.Stated stated = tool.stated();
      double diameter = or(stated.diameterTolerance(), DIAMETER, "cutter diameter within ");
      add(Kind.CUTTER, new Spread.Rectangular(diameter / 4));
      double runout = or(stated.runout(), RUNOUT, "run-out ");
      add(Kind.RUNOUT, new Spread.Eccentric(runout / 2, tool.flutes()));
      double crest = or(stated.crestTolerance(), CREST, "crest width within ");
      add(Kind.CREST, new Spread.Rectangular(crest / 2));
      if (thread.bends()) {
        add(Kind.DEFLECTION, new Spread.Rectangular(force(scatter, tool)));
      }
      if (thread.formAssumed()) {
        add(Kind.FORM, new Spread.UpTo(1));
        assumptions.add(
            "odds: the sheet leaves the form of the teeth open: ground for the thread or true V,"
                + " each in half of the draws");
      }
      add(Kind.RESOLUTION, new Spread.Rectangular(thread.increment() / 2));
      double circle = or(scatter.circleRadius(), CIRCLE, "radius of circles within ");
      add(Kind.CIRCLE, new Spread.Rectangular(circle / 2));
      double round = or(scatter.roundness(), ROUNDNESS, "roundness of circles up to ");
      add(Kind.ROUNDNESS, new Spread.UpTo(round));
      double hole =
          or(
              thread.hole().diameterTolerance(),
              HOLE,
              (thread.hole().boss() ? "boss" : "hole") + " diameter within ");
      add(Kind.HOLE, new Spread.Rectangular(hole / 4));
      told();
      return new Inputs(list, assumptions);
    }

    private double or(Optional<Double> stated, double other, String what) {
      if (stated.isEmpty()) {
        usual.add(what + text.length(other));
      }
      return stated.orElse(other);
    }

    private double force(Scatter scatter, Tool tool) {
      if (scatter.force().isPresent()) {
        return scatter.force().get();
      }
      boolean measured = tool.holderCompliance().isPresent();
      double share = measured ? FORCE : FORCE_AND_HOLDER;
      assumptions.add(
          "odds: deflection good to "
              + Math.round(100 * share)
              + " %, since forces rest on turning tables"
              + (measured ? "" : " and the holder was not measured"));
      return share;
    }

    private void add(Kind kind, Spread spread) {
      if (spread.deviation() > 0) {
        list.add(new Input(kind, spread));
      }
    }

    private void told() {
      if (!usual.isEmpty()) {
        assumptions.add(
            "odds: not in the sheet, taken as usual (common practice, no source): "
                + String.join(", ", usual));
      }
      assumptions.add(
          "odds: limits are taken as even spreads, independent of each other; run-out in any"
              + " direction lets the tooth farthest out cut; an oval circle lets GO feel its least"
              + " diameter, NO-GO the mean");
      assumptions.add(
          thread.isMoved()
              ? "odds: the worse of the endless helix and the path as moved counts, as in the verdict;"
                  + " the hole's place scatters without effect, for gauges follow the thread"
              : "odds: of the endless helix only, since no gauge is screwed into the path as moved");
    }
  }
}
