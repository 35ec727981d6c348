package flankfit.cutting;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;

/**
 * Pass after pass: each row is pushed as far as the forces of all rows push it, and meets what the
 * passes before it really left. So a rough, a finishing and each spring pass get a rung of their
 * own.
 *
 * <p>For each pass {@code y = C F(y)} is solved by Newton's steps, halved while they don't help.
 * The mean force of a turn counts, which is right while several teeth and rows are in cut. Forces
 * are reckoned on {@link SpacedRows} of a comb.
 */
public final class Ladder {
  /** Change of a row's path for the slope of its force (mm). */
  private static final double NUDGE = 1e-4;

  /** Error of balance at which a pass is settled (mm): a hundredth of the last figure told. */
  private static final double SETTLED = 1e-6;

  private static final int MOST_STEPS = 30;
  private static final int MOST_HALVINGS = 6;

  private final List<Step> steps;
  private final Stock stock;
  private final ForceLaw law;
  private final double[][] cutShort;

  private Ladder(List<Step> steps, Stock stock, ForceLaw law) {
    this.steps = steps;
    this.stock = stock;
    this.law = law;
    this.cutShort = new double[steps.size()][];
  }

  /**
   * Climbs the ladder.
   *
   * @param steps the passes in order
   * @param stock the metal each row meets
   * @param law force on a piece of edge
   * @return one rung a pass
   */
  public static List<Rung> climb(List<Step> steps, Stock stock, ForceLaw law) {
    return new Ladder(List.copyOf(steps), stock, law).climb();
  }

  private List<Rung> climb() {
    List<Rung> rungs = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      Rung rung = new Pass(i).rung();
      cutShort[i] = rung.cutShort().stream().mapToDouble(Double::doubleValue).toArray();
      rungs.add(rung);
    }
    return rungs;
  }

  /** One pass being solved on its spaced rows. */
  private final class Pass {
    private final int number;
    private final Step step;
    private final SpacedRows rows;
    private final List<Metal> metals = new ArrayList<>();

    /** Shift of each spaced row for one newton on each of them, shared out to all rows (mm/N). */
    private final double[][] compliance;

    Pass(int number) {
      this.number = number;
      this.step = steps.get(number);
      this.rows = new SpacedRows(step.rows());
      for (int k = 0; k < rows.count(); k++) {
        metals.add(stock.before(number, rows.row(k), cutShort));
      }
      this.compliance = new double[rows.count()][];
      for (int k = 0; k < rows.count(); k++) {
        compliance[k] = shared(rows.row(k));
      }
    }

    /** Shift of a row for one newton on each spaced row (mm/N). */
    private double[] shared(int row) {
      double[] shift = new double[rows.count()];
      for (int j = 0; j < step.rows(); j++) {
        for (int m = 0; m < shift.length; m++) {
          shift[m] += step.compliance(row, j) * rows.share(j, m);
        }
      }
      return shift;
    }

    Rung rung() {
      double[] y = new double[rows.count()];
      double[] force = away(y);
      double[] off = imbalance(y, force);
      DecompositionSolver slopes = slopes(y, force);
      for (int n = 0; n < MOST_STEPS && largest(off) > SETTLED; n++) {
        // The first slope serves while it helps: a force is dearer than a step.
        double before = largest(off);
        double[] change = slopes.solve(new ArrayRealVector(off, false)).toArray();
        double share = 1;
        double[] tried = moved(y, change, share);
        double[] left = imbalance(tried, away(tried));
        for (int h = 0; h < MOST_HALVINGS && largest(left) >= before; h++) {
          share /= 2;
          tried = moved(y, change, share);
          left = imbalance(tried, away(tried));
        }
        y = tried;
        off = left;
        if (largest(off) > before / 10) {
          slopes = slopes(y, away(y));
        }
      }
      return rung(y, largest(off) <= SETTLED);
    }

    private double[] moved(double[] y, double[] change, double share) {
      double[] moved = y.clone();
      for (int k = 0; k < y.length; k++) {
        moved[k] = step.limited(y[k] - share * change[k]);
      }
      return moved;
    }

    private double[] away(double[] y) {
      double[] force = new double[y.length];
      for (int k = 0; k < y.length; k++) {
        force[k] = step.pushed(y[k]).force(metals.get(k), law).away();
      }
      return force;
    }

    /** How far each shift is from what the forces make of it (mm). */
    private double[] imbalance(double[] y, double[] force) {
      double[] off = y.clone();
      for (int k = 0; k < y.length; k++) {
        for (int m = 0; m < y.length; m++) {
          off[k] -= compliance[k][m] * force[m];
        }
      }
      return off;
    }

    private DecompositionSolver slopes(double[] y, double[] force) {
      double[] nudged = y.clone();
      for (int k = 0; k < y.length; k++) {
        nudged[k] += NUDGE;
      }
      double[] there = away(nudged);
      double[][] jacobian = new double[y.length][y.length];
      for (int k = 0; k < y.length; k++) {
        for (int m = 0; m < y.length; m++) {
          double slope = (there[m] - force[m]) / NUDGE;
          jacobian[k][m] = (k == m ? 1 : 0) - compliance[k][m] * slope;
        }
      }
      LUDecomposition lu = new LUDecomposition(new Array2DRowRealMatrix(jacobian, false));
      if (lu.getSolver().isNonSingular()) {
        return lu.getSolver();
      }
      // Where a pulled-in mill has no balance nearby, plain steps go on.
      double[][] plain = new double[y.length][y.length];
      for (int k = 0; k < y.length; k++) {
        plain[k][k] = 1;
      }
      return new LUDecomposition(new Array2DRowRealMatrix(plain, false)).getSolver();
    }

    private Rung rung(double[] y, boolean settled) {
      RowForce[] forces = new RowForce[y.length];
      double[] away = new double[y.length];
      double[] chips = new double[y.length];
      double[] peaks = new double[y.length];
      for (int k = 0; k < y.length; k++) {
        RowCut cut = step.pushed(y[k]);
        forces[k] = cut.force(metals.get(k), law);
        away[k] = forces[k].away();
        chips[k] = cut.crestChip(metals.get(k));
        peaks[k] = cut.peak(metals.get(k), law);
      }
      List<Double> shifts = new ArrayList<>();
      List<Boolean> rubs = new ArrayList<>();
      RowForce total = RowForce.NONE;
      double peak = 0;
      for (int row = 0; row < step.rows(); row++) {
        double shift = step.limited(dot(shared(row), away));
        double standing = stock.standing(number, row, cutShort);
        boolean rubbing = rows.at(row, chips) < law.leastChip();
        // What a tooth leaves uncut makes the next one's chip thicker: a thin layer stays at most.
        shifts.add(rubbing ? Math.max(shift, Math.min(standing, law.leastChip())) : shift);
        rubs.add(rubbing);
        peak += rows.at(row, peaks);
        for (int k = 0; k < forces.length; k++) {
          total = total.plus(forces[k].times(rows.share(row, k)));
        }
      }
      return new Rung(shifts, total, peak, rubs, settled);
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }
}
