package flankfit.chance;

import flankfit.unit.Require;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** How a quantity scatters; closed, so that each kind has its quantile and its moments. */
public sealed interface Spread {
  /**
   * The value below which the quantity falls with a probability.
   *
   * @param u probability (1), inside (0, 1)
   */
  double quantile(double u);

  /** Expected value. */
  double mean();

  /** Standard deviation. */
  double deviation();

  /**
   * Anything between two limits, all alike, centred on 0.
   *
   * @param halfWidth half the distance of the limits, not below 0
   * @see "JCGM 101:2008, 6.4.2, rectangular distributions: limits are known and nothing else (from
   *     memory)"
   */
  record Rectangular(double halfWidth) implements Spread {
    public Rectangular {
      Require.notNegative("halfWidth", halfWidth);
    }

    @Override
    public double quantile(double u) {
      return halfWidth * (2 * u - 1);
    }

    @Override
    public double mean() {
      return 0;
    }

    @Override
    public double deviation() {
      return halfWidth / Math.sqrt(3);
    }
  }

  /**
   * From 0 up to a limit, all alike: a size without a sign.
   *
   * @param most the limit, not below 0
   */
  record UpTo(double most) implements Spread {
    public UpTo {
      Require.notNegative("most", most);
    }

    @Override
    public double quantile(double u) {
      return most * u;
    }

    @Override
    public double mean() {
      return most / 2;
    }

    @Override
    public double deviation() {
      return most / Math.sqrt(12);
    }
  }

  /**
   * Normal about 0.
   *
   * @param deviation standard deviation, not below 0
   */
  record Normal(double deviation) implements Spread {
    public Normal {
      Require.notNegative("deviation", deviation);
    }

    @Override
    public double quantile(double u) {
      return deviation == 0
          ? 0
          : deviation * new NormalDistribution().inverseCumulativeProbability(u);
    }

    @Override
    public double mean() {
      return 0;
    }
  }

  /**
   * How far the tooth that stands out most does so when the cutter turns off its centre: the
   * direction of the error is any, so the gain is the eccentricity times {@code cos ψ}, with ψ
   * spread evenly up to half the angle between two teeth.
   *
   * @param eccentricity distance of the cutter's axis from the spindle's, not below 0
   * @param teeth number of teeth on the circumference, from 1
   */
  record Eccentric(double eccentricity, int teeth) implements Spread {
    public Eccentric {
      Require.notNegative("eccentricity", eccentricity);
      Require.within("teeth", teeth, 1, Integer.MAX_VALUE);
    }

    @Override
    public double quantile(double u) {
      return eccentricity * StrictMath.cos(half() * (1 - u));
    }

    @Override
    public double mean() {
      return eccentricity * StrictMath.sin(half()) / half();
    }

    @Override
    public double deviation() {
      double square =
          eccentricity * eccentricity * (0.5 + StrictMath.sin(2 * half()) / (4 * half()));
      return Math.sqrt(Math.max(0, square - mean() * mean()));
    }

    private double half() {
      return Math.PI / teeth;
    }
  }
}
