package flankfit.chance;

import flankfit.unit.Require;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A continuous function of one variable held as straight pieces, cut finer where it bends: a kink
 * costs a few more pieces, not accuracy. Beyond its ends the last piece goes on.
 */
public final class Tabulated {
  /** Pieces to begin with, so that no bend hides between two ends. */
  private static final int FIRST = 8;

  /** Part of the whole range that a piece is not cut below. */
  private static final int FINEST = 1 << 16;

  private final double[] x;
  private final double[] y;

  private Tabulated(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /** One piece to be looked at. */
  private record Piece(double x0, double y0, double x1, double y1) {}

  /**
   * Holds a function.
   *
   * @param f the function, finite between the ends
   * @param low lower end
   * @param high upper end, above the lower
   * @param error departure that a piece may have in its middle, above 0
   * @throws IllegalArgumentException if the function is not finite, or bends without end
   */
  public static Tabulated of(DoubleUnaryOperator f, double low, double high, double error) {
    Require.positive("high less low", high - low);
    Require.positive("error", error);
    Deque<Piece> open = new ArrayDeque<>();
    double before = high;
    double beforeY = finite(f, high);
    for (int i = FIRST - 1; i >= 0; i--) {
      double at = low + (high - low) * i / FIRST;
      double value = finite(f, at);
      open.push(new Piece(at, value, before, beforeY));
      before = at;
      beforeY = value;
    }
    double narrowest = (high - low) / FINEST;
    List<double[]> done = new ArrayList<>();
    done.add(new double[] {low, beforeY});
    while (!open.isEmpty()) {
      Piece piece = open.pop();
      double middle = (piece.x0 + piece.x1) / 2;
      double value = finite(f, middle);
      boolean straight = Math.abs(value - (piece.y0 + piece.y1) / 2) <= error;
      if (straight || piece.x1 - piece.x0 <= narrowest) {
        done.add(new double[] {middle, value});
        done.add(new double[] {piece.x1, piece.y1});
      } else {
        open.push(new Piece(middle, value, piece.x1, piece.y1));
        open.push(new Piece(piece.x0, piece.y0, middle, value));
      }
    }
    return new Tabulated(
        done.stream().mapToDouble(p -> p[0]).toArray(),
        done.stream().mapToDouble(p -> p[1]).toArray());
  }

  private static double finite(DoubleUnaryOperator f, double at) {
    return Require.finite("value at " + at, f.applyAsDouble(at));
  }

  /** The value at a place. */
  public double at(double place) {
    int i = Arrays.binarySearch(x, place);
    int left = i >= 0 ? i : -i - 2;
    left = Math.max(0, Math.min(x.length - 2, left));
    return y[left] + (place - x[left]) * (y[left + 1] - y[left]) / (x[left + 1] - x[left]);
  }

  /**
   * The place of a value, for a function that rises everywhere.
   *
   * @throws IllegalArgumentException if it does not rise between the ends
   */
  public double where(double value) {
    int low = 0;
    int high = x.length - 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (y[middle] <= value) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double rise = y[low + 1] - y[low];
    Require.positive("rise", rise);
    return x[low] + (value - y[low]) * (x[low + 1] - x[low]) / rise;
  }

  /** Lower end. */
  public double low() {
    return x[0];
  }

  /** Upper end. */
  public double high() {
    return x[x.length - 1];
  }

  /** Number of straight pieces. */
  public int pieces() {
    return x.length - 1;
  }
}
