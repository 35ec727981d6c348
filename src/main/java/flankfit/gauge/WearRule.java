package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.setup.SetupSheet;
import flankfit.unit.Tolerance;
import java.util.Optional;

/** Whether the control takes the wear that is advised. */
final class WearRule {
  private WearRule() {}

  static void check(Scene scene, OffsetAdvice offset, SetupSheet setup, Findings findings) {
    Optional<Double> limit = setup.control().tools().wearLimit();
    if (limit.isEmpty()) {
      return;
    }
    if (isBeyond(offset.keyToMiddle(), limit.get()) && offset.hasWindow()) {
      wanted(scene, offset, limit.get(), findings);
    } else if (isBeyond(offset.now(), limit.get()) && offset.setBy().isEmpty()) {
      entered(scene, offset, limit.get(), findings);
    }
  }

  private static boolean isBeyond(double wear, double limit) {
    return Math.abs(wear) > limit + Tolerance.MODEL.value();
  }

  private static void wanted(Scene scene, OffsetAdvice offset, double limit, Findings findings) {
    Text text = scene.found().text();
    double least = Math.min(Math.abs(offset.keyToGoLimit()), Math.abs(offset.keyToNoGoLimit()));
    findings.add(
        Code.GA11,
        scene.at(scene.found().model().finish().pass()),
        offset.register()
            + " wear "
            + text.length(offset.keyToMiddle())
            + ", the middle of the limits for "
            + scene.found().hole().name()
            + ", is beyond what the control takes, "
            + text.length(limit),
        isBeyond(least, limit)
            ? "no entry that suits both gauges is within it"
            : "some entries that suit both gauges are within it",
        "put the difference into the geometry entry, or mend path or mill");
  }

  /** The machine cannot hold what the sheet says, so the answer is for another register. */
  private static void entered(Scene scene, OffsetAdvice offset, double limit, Findings findings) {
    Text text = scene.found().text();
    findings.add(
        Code.GA11,
        scene.at(scene.found().model().finish().pass()),
        offset.register()
            + " wear "
            + text.length(offset.now())
            + " in the sheet is beyond what the control takes, "
            + text.length(limit),
        "the machine cannot hold it; the answer is for the entry in the sheet",
        "read the register at the machine and write its entry, or the right wear-limit, into the"
            + " sheet");
  }
}
