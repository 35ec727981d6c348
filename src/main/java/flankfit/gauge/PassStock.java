package flankfit.gauge;

import flankfit.cutting.GrooveMetal;
import flankfit.cutting.Metal;
import flankfit.cutting.Stock;
import flankfit.sweep.Flank;
import flankfit.sweep.Groove;
import flankfit.sweep.RegularThread;
import java.util.ArrayList;
import java.util.List;

/** The metal that the passes of a thread leave for each other. */
final class PassStock implements Stock {
  /** Cylinders on which a groove is taken; they lie closer towards its bottom. */
  private static final int CYLINDERS = 60;

  private final ThreadModel model;
  private final List<PassRows> rows;

  /**
   * Makes the stock.
   *
   * @param model the thread, nothing bent
   * @param rows the rows in the metal, one entry a pass; entries beyond the passes repeat the
   *     finishing one
   */
  PassStock(ThreadModel model, List<PassRows> rows) {
    this.model = model;
    this.rows = List.copyOf(rows);
  }

  /** The pass that a step stands for. */
  private int pass(int step) {
    return step < model.passes().size() ? step : model.finishing();
  }

  private double outwards() {
    return model.spec().internal() ? -1 : 1;
  }

  /** What is added to the path of each earlier pass at a height (mm). */
  private List<Double> bend(double z, double[][] cutShort) {
    List<Double> bend = new ArrayList<>();
    for (int i = 0; i < model.passes().size(); i++) {
      boolean done = i < cutShort.length && cutShort[i] != null && cutShort[i].length > 0;
      bend.add(done ? outwards() * rows.get(i).at(z, cutShort[i]) : 0.0);
    }
    return bend;
  }

  @Override
  public Metal before(int step, int row, double[][] cutShort) {
    if (step == 0) {
      return Metal.plain(model.blankRadius());
    }
    double z = rows.get(step).height(row);
    int count = Math.min(step, model.passes().size());
    ThreadModel bent = model.bent(bend(z, cutShort));
    RegularThread thread = bent.threadAfter(count);
    if (!thread.isCut()) {
      return Metal.plain(model.blankRadius());
    }
    double shift = model.shift(bent.deepestOf(count), pass(step));
    return shifted(metal(thread), shift);
  }

  private static Metal metal(RegularThread thread) {
    Groove groove = thread.groove();
    double[] radius = new double[CYLINDERS + 1];
    double[] up = new double[CYLINDERS + 1];
    double[] down = new double[CYLINDERS + 1];
    for (int i = 0; i <= CYLINDERS; i++) {
      double share = (double) i / CYLINDERS;
      radius[i] = groove.bottom() + (thread.blankRadius() - groove.bottom()) * share * share;
      up[i] = notNarrower(up, i, groove.halfWidth(radius[i], Flank.UP));
      down[i] =
          groove.isSymmetric()
              ? up[i]
              : notNarrower(down, i, groove.halfWidth(radius[i], Flank.DOWN));
    }
    return new GrooveMetal(thread.blankRadius(), thread.spacing(), radius, up, down);
  }

  /** Towards the blank a groove only widens; where it has no width yet it has that before. */
  private static double notNarrower(double[] widths, int i, double width) {
    double before = i > 0 ? widths[i - 1] : 0;
    return width > before ? width : before;
  }

  private static Metal shifted(Metal metal, double shift) {
    if (shift == 0) {
      return metal;
    }
    return new Metal() {
      @Override
      public double radius(double height) {
        return metal.radius(height + shift);
      }

      @Override
      public double blank() {
        return metal.blank();
      }
    };
  }

  @Override
  public double standing(int step, int row, double[][] cutShort) {
    double z = rows.get(step).height(row);
    List<Double> bend = bend(z, cutShort);
    boolean internal = model.spec().internal();
    int own = pass(step);
    double reach = model.passes().get(own).reach(internal);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < Math.min(step, model.passes().size()); i++) {
      double there = model.passes().get(i).reach(internal) + bend.get(i);
      boolean cuts = internal ? there > model.blankRadius() : there < model.blankRadius();
      if (cuts && model.hasLeadOf(own, i)) {
        least = Math.min(least, internal ? reach - there : there - reach);
      }
    }
    return least;
  }
}
