package flankfit.sweep;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a continuous function of one variable is 0, between places where its signs differ. */
public final class Root {
  /** Width of the bracket at which the search ends, absolute and relative. */
  private static final double SETTLED = 1e-14;

  private static final int ORDER = 5;
  private static final int MOST_EVALUATIONS = 200;

  private Root() {}

  /**
   * The place between two others where a function passes 0; one of them when it is 0 there.
   *
   * @throws org.hipparchus.exception.MathIllegalArgumentException if the signs at both ends agree
   */
  public static double between(DoubleUnaryOperator f, double low, double high) {
    return new BracketingNthOrderBrentSolver(SETTLED, SETTLED, ORDER)
        .solve(MOST_EVALUATIONS, f::applyAsDouble, low, high);
  }
}
