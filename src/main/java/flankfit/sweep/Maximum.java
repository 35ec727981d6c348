package flankfit.sweep;

import java.util.function.DoubleUnaryOperator;

/**
 * The greatest value of a function of one variable with a single peak, by Brent's method: golden
 * section with parabolic steps. The place is good to about 1e-8 of the range, so the value is good
 * to far better than 1e-9.
 *
 * @see "R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5 (from
 *     memory)"
 */
public final class Maximum {
  private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;
  private static final double RELATIVE = 1e-8;
  private static final int MOST_STEPS = 100;

  private Maximum() {}

  /** The greatest value between two places, ends included. */
  public static double of(DoubleUnaryOperator f, double low, double high) {
    double atEnds = Math.max(f.applyAsDouble(low), f.applyAsDouble(high));
    return Math.max(atEnds, inside(f, low, high));
  }

  private static double inside(DoubleUnaryOperator f, double low, double high) {
    double a = low;
    double b = high;
    double x = a + GOLDEN * (b - a);
    double w = x;
    double v = x;
    double fx = f.applyAsDouble(x);
    double fw = fx;
    double fv = fx;
    double step = 0;
    double before = 0;
    double near = RELATIVE * (high - low) + 1e-14;
    for (int i = 0; i < MOST_STEPS; i++) {
      double middle = (a + b) / 2;
      if (Math.abs(x - middle) <= 2 * near - (b - a) / 2) {
        break;
      }
      double parabola = parabola(x, w, v, fx, fw, fv);
      boolean usable =
          Math.abs(parabola) < Math.abs(before) / 2 && x + parabola > a && x + parabola < b;
      if (usable) {
        before = step;
        step = parabola;
      } else {
        before = x < middle ? b - x : a - x;
        step = GOLDEN * before;
      }
      double u = Math.abs(step) >= near ? x + step : x + Math.copySign(near, step);
      double fu = f.applyAsDouble(u);
      if (fu >= fx) {
        if (u >= x) {
          a = x;
        } else {
          b = x;
        }
        v = w;
        fv = fw;
        w = x;
        fw = fx;
        x = u;
        fx = fu;
      } else {
        if (u < x) {
          a = u;
        } else {
          b = u;
        }
        if (fu >= fw || w == x) {
          v = w;
          fv = fw;
          w = u;
          fw = fu;
        } else if (fu >= fv || v == x || v == w) {
          v = u;
          fv = fu;
        }
      }
    }
    return fx;
  }

  /** Step from x to the peak of the parabola through three points; infinite where there is none. */
  private static double parabola(double x, double w, double v, double fx, double fw, double fv) {
    double r = (x - w) * (fv - fx);
    double q = (x - v) * (fw - fx);
    double p = (x - v) * q - (x - w) * r;
    double twice = 2 * (q - r);
    return twice == 0 ? Double.POSITIVE_INFINITY : -p / twice;
  }
}
