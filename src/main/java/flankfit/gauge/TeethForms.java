package flankfit.gauge;

import flankfit.setup.Tool;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.GroundTooth;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.Tooth;

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
