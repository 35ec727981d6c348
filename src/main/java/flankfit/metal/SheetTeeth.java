package flankfit.metal;

import flankfit.setup.Tool;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.Flank;
import flankfit.sweep.GroundTooth;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.Tooth;
import java.util.List;
import java.util.TreeSet;

/** The rows of a thread mill as a profile. */
final class SheetTeeth {
  /** How far straight bands may stray from a curved flank (mm). */
  private static final double STRAY = 5e-5;

  /** A band is not split below this height (mm). */
  private static final double NARROWEST = 1e-5;

  /** A profile is read this much inside a piece, so that a jump at its end does not count (mm). */
  private static final double INSIDE = 1e-10;

  private final Tooth tooth;
  private final Tool.Teeth teeth;
  private final double pitch;
  private final double reach;
  private final Profile.Builder builder = new Profile.Builder(0);

  private SheetTeeth(Tool tool, Tool.Teeth teeth) {
    this.tooth = tooth(tool, teeth);
    this.teeth = teeth;
    this.pitch = teeth.pitch().orElse(0.0);
    this.reach = pitch > 0 ? pitch : Double.POSITIVE_INFINITY;
  }

  /**
   * The profile of all rows, from the tool's lowest point up to the end of its flutes. A row
   * reaches one pitch to either side where the pitch is known.
   *
   * @throws IllegalArgumentException if no tooth can have the sizes of the sheet; says why
   */
  static Profile of(Tool tool, Tool.Teeth teeth) {
    return new SheetTeeth(tool, teeth).profile(tool.fluteLength());
  }

  /** The form of the teeth as the sheet states it. */
  static Tooth tooth(Tool tool, Tool.Teeth teeth) {
    Tool.CutterForm form = teeth.form();
    if (form instanceof Tool.CutterForm.GroundFor ground) {
      return groundFor(ground.designation(), tool.radius());
    }
    if (form instanceof Tool.CutterForm.Measured measured) {
      return PolylineTooth.measured(measured.profile());
    }
    if (form instanceof Tool.CutterForm.Straight) {
      return PolylineTooth.straight(tool.radius(), teeth.crestFlat(), teeth.halfAngle());
    }
    throw new IllegalArgumentException("form of the teeth is not known here: " + form);
  }

  private static Tooth groundFor(String designation, double radius) {
    try {
      ThreadSpec spec = Designations.parse(designation);
      double bottom = spec.internal() ? spec.nominal() / 2 : spec.basicMinor() / 2;
      return new GroundTooth(
          new GroundTooth.Basis(
              spec.internal(),
              bottom,
              spec.basicPitch() / 2,
              spec.pitch(),
              spec.lead(),
              spec.halfAngle()),
          radius);
    } catch (InvalidDesignationException e) {
      throw new IllegalArgumentException("the mill is ground for no thread: " + e.getMessage(), e);
    }
  }

  private Profile profile(double top) {
    TreeSet<Double> ends = new TreeSet<>(List.of(0.0, top));
    for (int row = 0; row < teeth.rows(); row++) {
      for (double s : ends()) {
        double h = middle(row) + s;
        if (h > 0 && h < top) {
          ends.add(h);
        }
      }
    }
    double from = 0;
    for (double to : ends.tailSet(0.0, false)) {
      if (to - from > NARROWEST) {
        piece(from, to);
        from = to;
      }
    }
    return builder.build();
  }

  private double middle(int row) {
    return teeth.tip() + row * pitch;
  }

  /** Where the form of one row begins, breaks, meets the next row's, and ends (mm). */
  private List<Double> ends() {
    TreeSet<Double> found = new TreeSet<>();
    if (teeth.form() instanceof Tool.CutterForm.Measured measured) {
      for (List<Double> row : measured.profile()) {
        found.add(row.get(0));
        found.add(-row.get(0));
      }
    } else {
      for (double r : new double[] {tooth.outsideRadius(), Math.max(0, tooth.rootRadius())}) {
        found.add(tooth.halfWidth(r, Flank.UP));
        found.add(-tooth.halfWidth(r, Flank.DOWN));
      }
    }
    found.add(pitch / 2);
    found.add(-pitch / 2);
    found.add(pitch);
    found.add(-pitch);
    return List.copyOf(found);
  }

  private void piece(double from, double to) {
    double r0 = radius(from + INSIDE);
    double r1 = radius(to - INSIDE);
    double r = radius((from + to) / 2);
    if (r <= 0 && r0 <= 0 && r1 <= 0) {
      builder.gap(to);
      return;
    }
    boolean straight =
        near((r0 + r1) / 2, r)
            && near((3 * r0 + r1) / 4, radius((3 * from + to) / 4))
            && near((r0 + 3 * r1) / 4, radius((from + 3 * to) / 4));
    if (straight || to - from < 2 * NARROWEST) {
      builder.line(to, r0, r1);
    } else {
      piece(from, (from + to) / 2);
      piece((from + to) / 2, to);
    }
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < STRAY;
  }

  private double radius(double height) {
    double best = 0;
    for (int row = 0; row < teeth.rows(); row++) {
      double s = height - middle(row);
      if (Math.abs(s) <= reach) {
        best = Math.max(best, tooth.radius(s));
      }
    }
    return best;
  }
}
