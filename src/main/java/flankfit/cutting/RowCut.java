package flankfit.cutting;

import flankfit.unit.Angles;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One row on a helix, sliced along its edge. All points of the cutter move alike for one tooth: the
 * feed along the path, and its share of the rise along the axis. Normal to the edge that gives the
 * chip {@code h(ψ) = f (n_r sin ψ + n_s p/e)}: {@code f sin ψ} on the crest, {@code f sin α (sin ψ
 * ± r_b/e)} on the flanks, 0 just where the finished surface is left.
 *
 * @param internal whether the cutter runs inside a hole
 * @param climb whether it is a climb cut
 * @param pathRadius radius of the path of the cutter's axis, e (mm), above 0
 * @param risePerRadian rise for one radian in the direction of travel, p (mm), signed
 * @param edge edge of the row
 * @param feedPerTooth feed of the centre for one tooth, f (mm), above 0
 * @param teeth number of teeth round the cutter, from 1
 * @see "derived from the envelope of the moving cutter"
 */
public record RowCut(
    boolean internal,
    boolean climb,
    double pathRadius,
    double risePerRadian,
    EdgeLine edge,
    double feedPerTooth,
    int teeth) {
  /** Places along one piece of the edge. */
  private static final int ALONG = 4;

  /** Pieces of a flank. */
  private static final int PIECES = 5;

  /** Shortest piece worth its own places (mm). */
  private static final double LEAST_PIECE = 0.01;

  /** Places round one stretch of metal. */
  private static final int ROUND = 10;

  /** Steps in which the metal round the cutter is looked for. */
  private static final int SCAN = 20;

  private static final int HALVINGS = 30;
  private static final int PEAK_STEPS = 90;

  public RowCut {
    Require.positive("pathRadius", pathRadius);
    Require.finite("risePerRadian", risePerRadian);
    Objects.requireNonNull(edge, "edge");
    Require.positive("feedPerTooth", feedPerTooth);
    Require.within("teeth", teeth, 1, 100);
  }

  /** The same row on another path. */
  RowCut onPath(double radius) {
    return new RowCut(internal, climb, radius, risePerRadian, edge, feedPerTooth, teeth);
  }

  /** What the row feels where it meets this metal. */
  public RowForce force(Metal metal, ForceLaw law) {
    RowForce sum = RowForce.NONE;
    for (Slice slice : slices(metal)) {
      sum = sum.plus(slice.force(metal, law));
    }
    return sum;
  }

  /** Thickest chip that the middle of the crest takes (mm); 0 where it meets no metal. */
  double crestChip(Metal metal) {
    double stands = metal.radius(0);
    double reach = internal ? pathRadius + edge.outside() : pathRadius - edge.outside();
    boolean meets = internal ? reach > stands : reach < stands;
    return meets
        ? new Engagement(internal, pathRadius, edge.outside(), stands).greatestChip(feedPerTooth)
        : 0;
  }

  /** Greatest cutting force on one tooth of the row anywhere in its turn (N). */
  public double peak(Metal metal, ForceLaw law) {
    List<Slice> slices = slices(metal);
    double greatest = 0;
    for (int k = 0; k <= PEAK_STEPS; k++) {
      double psi = Math.PI * (k / (double) PEAK_STEPS - 0.5);
      double force = 0;
      for (Slice slice : slices) {
        force += slice.onTooth(psi, metal, law);
      }
      greatest = Math.max(greatest, force);
    }
    return greatest;
  }

  /** The edge in short pieces, as far as it can reach the metal. */
  private List<Slice> slices(Metal metal) {
    double least = Math.abs(metal.blank() - pathRadius);
    double longest = Math.max(LEAST_PIECE, (edge.outside() - least) / PIECES);
    List<Slice> slices = new ArrayList<>();
    for (int line = 0; line < edge.lines(); line++) {
      double from = edge.shareAt(line, least, true);
      double to = edge.shareAt(line, least, false);
      if (to > from && edge.normalRadial(line) > 0) {
        double length = edge.length(line) * (to - from);
        int pieces = (int) Math.ceil(length / longest);
        for (int k = 0; k < pieces; k++) {
          for (int i = 0; i < ALONG; i++) {
            double within = (k + GaussPoints.place(ALONG, i)) / pieces;
            double weight = GaussPoints.weight(ALONG, i) / pieces;
            slices.add(new Slice(line, from + (to - from) * within, length * weight));
          }
        }
      }
    }
    return slices;
  }

  /** A short piece of the edge. */
  private final class Slice {
    private final double height;
    private final double radius;
    private final double length;
    private final double radial;
    private final double axial;

    Slice(int line, double share, double length) {
      this.height = edge.height(line, share);
      this.radius = edge.radius(line, share);
      this.length = length;
      this.radial = edge.normalRadial(line);
      this.axial = edge.normalAxial(line) * risePerRadian / pathRadius;
    }

    double chip(double psi) {
      return feedPerTooth * (radial * Math.sin(psi) + axial);
    }

    private double outwards() {
      return internal ? 1 : -1;
    }

    /**
     * How deep the edge stands in the metal (mm), along the radius; negative when it is outside.
     */
    double depth(double psi, Metal metal) {
      double ahead = pathRadius + outwards() * radius * Math.cos(psi);
      double aside = radius * Math.sin(psi);
      double rho = Math.hypot(ahead, aside);
      double turned = Math.atan2(aside, ahead);
      return outwards() * (rho - metal.radius(height - risePerRadian * turned));
    }

    /** Cutting force on one tooth at an angle (N). */
    double onTooth(double psi, Metal metal, ForceLaw law) {
      double chip = chip(psi);
      return chip > 0 && depth(psi, metal) > 0 ? law.cutting(chip) * length : 0;
    }

    RowForce force(Metal metal, ForceLaw law) {
      double sine = -axial / radial;
      if (radius <= 0 || sine >= 1) {
        return RowForce.NONE;
      }
      double low = Math.asin(Math.max(-1, sine));
      double high = new Engagement(internal, pathRadius, radius, metal.blank()).angle();
      return high > low ? between(low, high, metal, law) : RowForce.NONE;
    }

    /** Sums over all stretches of metal in the range. */
    private RowForce between(double low, double high, Metal metal, ForceLaw law) {
      RowForce sum = RowForce.NONE;
      double step = (high - low) / SCAN;
      double before = low;
      boolean wasIn = depth(low, metal) > 0;
      double entered = low;
      for (int i = 1; i <= SCAN; i++) {
        double here = low + i * step;
        boolean in = i < SCAN && depth(here, metal) > 0;
        if (in != wasIn) {
          double border = border(before, here, wasIn, metal);
          if (in) {
            entered = border;
          } else {
            sum = sum.plus(stretch(entered, border, law));
          }
        }
        wasIn = in;
        before = here;
      }
      return sum;
    }

    private double border(double from, double to, boolean fromIn, Metal metal) {
      double low = from;
      double high = to;
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        if (depth(middle, metal) > 0 == fromIn) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }

    private RowForce stretch(double from, double to, ForceLaw law) {
      double volume = 0;
      double cutting = 0;
      double away = 0;
      double along = 0;
      double side = climb ? 1 : -1;
      for (int i = 0; i < ROUND; i++) {
        double psi = from + (to - from) * GaussPoints.place(ROUND, i);
        double weight = (to - from) * GaussPoints.weight(ROUND, i);
        double chip = Math.max(0, chip(psi));
        double tangential = law.cutting(chip) * length;
        double normal = law.normal(chip) * length * radial;
        volume += chip * length * radius * weight;
        cutting += tangential * weight;
        away += (side * tangential * Math.sin(psi) + normal * Math.cos(psi)) * weight;
        along += (side * tangential * Math.cos(psi) - normal * Math.sin(psi)) * weight;
      }
      double mean = teeth / Angles.TURN;
      double greatest = Math.max(0, chip(Math.min(to, Math.PI / 2)));
      return new RowForce(
          volume, cutting * mean, away * mean, along * mean, greatest, to - Math.max(0, from));
    }
  }
}
