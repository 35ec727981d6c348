package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.DogLeg;
import flankfit.motion.Tape;
import flankfit.setup.KeepOut;
import flankfit.unit.Tolerance;
import java.util.Optional;

/**
 * HZ09: a rapid that touches nothing when it runs straight would touch stock or a keep-out body
 * when each axis runs at its own rate. Nothing is looked at when the sheet says that rapids run so.
 */
final class DogLegTouch implements Rule {
  private final Scene scene;
  private final Tape tape;
  private final double[] from = new double[3];
  private final double[] to = new double[3];
  private final double[] stops = new double[3 * DogLeg.MOST_STOPS];
  private final double[] start = new double[3];
  private final double[] end = new double[3];
  private final double[] met = new double[3];
  private final double floor;

  DogLegTouch(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
    double highest = scene.stock().map(stock -> stock.top()).orElse(Double.NEGATIVE_INFINITY);
    for (KeepOut body : scene.sheet().keepOuts()) {
      highest = Math.max(highest, body.box().max().z());
    }
    floor = highest;
  }

  @Override
  public void look(int move) {
    if (!scene.isRapid(move) || scene.low(move) >= floor || scene.isCollision(move)) {
      return;
    }
    if (scene.inPlane(move) <= Tolerance.MODEL.value()
        || scene.isShift(move)
        || scene.sheet().control().rapids().dogLeg()) {
      return;
    }
    tape.pointAt(move, 0, from);
    tape.pointAt(move, 1, to);
    DogLeg.write(from, to, scene.sheet().control().rapids().rates(), stops);
    touched(move)
        .ifPresent(
            what ->
                scene.report(
                    Code.HZ09,
                    move,
                    "a dog-leg rapid would touch " + what,
                    "the straight one does not, but not every machine runs straight",
                    "split the move: one axis after the other"));
  }

  private Optional<String> touched(int move) {
    double radius = scene.body(move);
    for (KeepOut body : scene.sheet().keepOuts()) {
      boolean straight = KeepOutTouch.touches(body, from, to, 1, radius);
      if (!straight && KeepOutTouch.touches(body, from, stops, DogLeg.MOST_STOPS, radius)) {
        return Optional.of(body.name());
      }
    }
    CutPlan plan = scene.planBefore(move);
    System.arraycopy(from, 0, start, 0, 3);
    for (int stop = 0; stop < stops.length; stop += 3) {
      System.arraycopy(stops, stop, end, 0, 3);
      if (plan.metalAlong(start, end, radius, met)) {
        return Optional.of("the stock at " + scene.at(met));
      }
      System.arraycopy(end, 0, start, 0, 3);
    }
    return Optional.empty();
  }
}
