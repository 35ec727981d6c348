package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.setup.SetupSheet;
import java.util.Optional;

/** Whether the control takes the wear that is advised. */
final class WearRule {
  private WearRule() {}

  static void check(Scene scene, OffsetAdvice offset, SetupSheet setup, Findings findings) {
    Optional<Double> limit = setup.control().tools().wearLimit();
    double wanted = offset.keyToMiddle();
    if (limit.isEmpty() || Math.abs(wanted) <= limit.get() || !offset.hasWindow()) {
      return;
    }
    Text text = scene.found().text();
    boolean suits =
        Math.min(Math.abs(offset.keyToGoLimit()), Math.abs(offset.keyToNoGoLimit())) <= limit.get();
    findings.add(
        Code.GA11,
        scene.at(scene.found().model().finish().pass()),
        offset.register()
            + " wear "
            + text.length(wanted)
            + ", the middle of the limits for "
            + scene.found().hole().name()
            + ", is beyond what the control takes, "
            + text.length(limit.get()),
        suits
            ? "some entries that suit both gauges are within it"
            : "no entry that suits both gauges is within it",
        "put the difference into the geometry entry, or mend path or mill");
  }
}
