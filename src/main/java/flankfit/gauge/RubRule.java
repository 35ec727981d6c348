package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.sweep.Rub;
import java.util.HashSet;
import java.util.Set;

/** Neck, shank or holder of a mill driven into metal: they do not cut. */
final class RubRule {
  /**
   * Depth from which it is told (mm). Drilled holes and ground necks differ by as much from the
   * sizes in a sheet, so less is neither known nor harmful: common practice, no source.
   */
  private static final double LEAST = 0.02;

  private RubRule() {}

  /** Tells the deepest place of each part of the mill. */
  static void check(Scene scene, RealAnswer real, Findings findings) {
    Text text = scene.found().text();
    Set<String> told = new HashSet<>();
    for (Rub rub : real.rubs()) {
      if (rub.depth() < LEAST || !told.add(rub.section().name())) {
        continue;
      }
      boolean inside = scene.found().spec().internal();
      findings.add(
          Code.TH17,
          scene.at(scene.tape().line(rub.move())),
          "the mill's "
              + rub.section().name()
              + " goes "
              + text.length(rub.depth())
              + " into the "
              + (inside ? "wall of " : "metal of ")
              + scene.found().hole().name()
              + ", deepest at Z"
              + text.coordinate(rub.z()),
          "it has diameter "
              + text.length(2 * rub.section().radius())
              + " and does not cut: it rubs, and pushes the mill off or breaks it",
          "cut from less deep, or take a mill with a thinner or longer neck");
    }
  }
}
