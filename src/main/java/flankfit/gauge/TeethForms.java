package flankfit.gauge;

import flankfit.setup.Tool;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.GroundTooth;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.Tooth;
import java.util.List;

/** Makes a tooth of what the sheet says of a thread mill. */
final class TeethForms {
  private final ThreadLookup threads;

  TeethForms(ThreadLookup threads) {
    this.threads = threads;
  }

  /**
   * The tooth of a tool.
   *
   * @throws InvalidDesignationException if the thread it is ground for is none
   * @throws IllegalArgumentException if no tooth can have these sizes; says why
   */
  Tooth tooth(Tool tool, Tool.Teeth teeth) throws InvalidDesignationException {
    Tool.CutterForm form = teeth.form();
    if (form instanceof Tool.CutterForm.GroundFor ground) {
      return groundFor(threads.of(ground.designation()), tool.radius());
    }
    if (form instanceof Tool.CutterForm.Measured measured) {
      return PolylineTooth.measured(measured.profile());
    }
    if (form instanceof Tool.CutterForm.Straight) {
      return straight(tool, teeth);
    }
    throw new IllegalArgumentException("form of the teeth is not known here: " + form);
  }

  /**
   * The tooth of a pass's mill when it is larger over its teeth, with the same form.
   *
   * @param more how much larger (mm on the radius), either sign
   * @param straight whether its flanks are true V, whatever the sheet says
   */
  static Tooth larger(CutPass cut, double more, boolean straight, ThreadLookup threads) {
    Tool.CutterForm form = cut.teeth().form();
    double radius = cut.tool().radius() + more;
    if (straight || form instanceof Tool.CutterForm.Straight) {
      return PolylineTooth.straight(radius, cut.teeth().crestFlat(), cut.teeth().halfAngle());
    }
    if (form instanceof Tool.CutterForm.Measured measured) {
      return PolylineTooth.measured(
          measured.profile().stream()
              .map(row -> List.of(row.get(0), Math.max(0, row.get(1) + more)))
              .toList());
    }
    if (form instanceof Tool.CutterForm.GroundFor ground) {
      try {
        return groundFor(threads.of(ground.designation()), radius);
      } catch (InvalidDesignationException e) {
        throw new IllegalStateException("a thread that was known is not: " + e.getMessage(), e);
      }
    }
    throw new IllegalArgumentException("form of the teeth is not known here: " + form);
  }

  /** The tooth of true V flanks with the tool's radius and crest. */
  static Tooth straight(Tool tool, Tool.Teeth teeth) {
    return PolylineTooth.straight(tool.radius(), teeth.crestFlat(), teeth.halfAngle());
  }

  /**
   * The tooth ground for a thread: inside a hole on the path that lays the teeth on the basic major
   * diameter, on a boss on the basic minor diameter.
   */
  static Tooth groundFor(ThreadSpec spec, double outsideRadius) {
    double bottom = spec.internal() ? spec.nominal() / 2 : spec.basicMinor() / 2;
    return new GroundTooth(
        new GroundTooth.Basis(
            spec.internal(),
            bottom,
            spec.basicPitch() / 2,
            spec.pitch(),
            spec.lead(),
            spec.halfAngle()),
        outsideRadius);
  }
}
