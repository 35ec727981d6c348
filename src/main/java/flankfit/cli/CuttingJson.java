package flankfit.cli;

import flankfit.gauge.BendingAnswer;
import flankfit.gauge.PassCut;
import flankfit.unit.Angles;
import java.io.IOException;

/** How passes cut and what bending makes of a thread, in the answer {@code flankfit/gauge/1}. */
final class CuttingJson {
  private CuttingJson() {}

  /** Writes the cut of a pass into the pass that is open. */
  static void pass(PassCut cut, Json json) throws IOException {
    json.put("feedCentre", cut.feedCentre())
        .put("feedEdge", cut.feedEdge())
        .put("toothLoad", cut.toothLoad())
        .put("engagement", Angles.toDegrees(cut.engagement()))
        .put("greatestChip", cut.greatestChip())
        .put("seconds", cut.seconds());
    if (cut.push().isPresent()) {
      PassCut.Push push = cut.push().get();
      json.put("cuttingForce", push.cutting())
          .put("force", push.away())
          .put("peakForce", push.peak())
          .put("power", push.power())
          .put("torque", push.torque())
          .put("chipVolume", push.chipVolume())
          .put("deflection", push.deflection())
          .put("deflectionTaper", push.taper());
    }
  }

  /** Writes what bending makes of a thread. */
  static void bending(BendingAnswer bending, Json json) throws IOException {
    json.object("bending")
        .put("material", bending.material())
        .put("source", bending.source())
        .put("uncertainty", bending.uncertainty())
        .put("rigidPitch", bending.rigidPitch())
        .put("rigidVerdict", bending.rigidVerdict().words())
        .put("practicePitch", bending.practicePitch())
        .put("pitchTight", bending.pitchTight())
        .put("pitchLoose", bending.pitchLoose())
        .put("springGain", bending.springGain())
        .put("springGainPractice", bending.springGainPractice())
        .end();
  }
}
