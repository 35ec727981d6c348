package flankfit.gauge;

import flankfit.cutting.WorkMaterial;
import flankfit.cutting.WorkMaterials;
import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import flankfit.setup.SetupSheet;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The metal of the workpiece, and what bending it causes. */
final class WorkpieceMetal {
  /** Names told when none is near. */
  private static final int MOST_TOLD = 6;

  private static final String STIFF = "the cutter, its holder and the machine are taken as stiff: ";

  private final Assumptions assumptions;
  private final Optional<WorkMaterial> material;

  /** The holes of a pattern bend the mill alike. */
  private final Map<List<Object>, Optional<Bending>> known = new HashMap<>();

  WorkpieceMetal(SetupSheet setup, Findings findings, Assumptions assumptions) {
    this.assumptions = assumptions;
    String name = setup.workpieceMaterial();
    WorkMaterials table = WorkMaterials.builtIn();
    this.material = name.isBlank() ? Optional.empty() : table.of(name);
    if (name.isBlank()) {
      assumptions.add(STIFF + "the sheet names no material of the workpiece");
    } else if (material.isEmpty()) {
      assumptions.add(STIFF + "no cutting force is known for \"" + name + "\"");
      findings.add(
          Code.GA09,
          Place.file(setup.file()),
          "no cutting force is known for the material \"" + name + "\"",
          "without it neither force nor bending is predicted: the mill is taken as stiff",
          fix(name, table));
    }
  }

  private static String fix(String name, WorkMaterials table) {
    Set<String> near = new TreeSet<>();
    Nearest.of(name, table.keys()).ifPresent(near::add);
    near.addAll(table.alike(name));
    List<String> told = near.isEmpty() ? table.keys() : List.copyOf(near);
    String names =
        String.join("; ", told.stream().limit(MOST_TOLD).map(key -> "\"" + key + "\"").toList());
    return "write one of: " + names + (told.size() > MOST_TOLD ? "; …" : "");
  }

  /** What bending does to a thread; empty when metal or mill are not known. */
  Optional<Bending> bending(FoundThread found) {
    if (material.isEmpty()) {
      return Optional.empty();
    }
    Optional<Bending> bending =
        known.computeIfAbsent(
            alike(found), key -> BendingSolver.of(found, material.get(), assumptions::add));
    bending.ifPresent(b -> said(b.material()));
    return bending;
  }

  /** The bending of a trial with another register, of which nothing is told. */
  Optional<Bending> ofTrial(FoundThread found) {
    return material.flatMap(
        m -> known.computeIfAbsent(alike(found), key -> BendingSolver.of(found, m, told -> {})));
  }

  /** The bending by forces so many times as great; empty when metal or mill are not known. */
  Optional<Bending> bending(FoundThread found, double times) {
    return material.flatMap(m -> BendingSolver.of(found, m.stronger(times), told -> {}));
  }

  /** What bending depends on, nothing of where the hole lies; lengths to a nanometre. */
  private static List<Object> alike(FoundThread found) {
    List<Object> alike = new ArrayList<>();
    alike.add(found.spec().designation());
    alike.add(found.hole().countersink());
    alike.add(rounded(2 * found.model().blankRadius()));
    alike.add(found.hole().depth().map(WorkpieceMetal::rounded));
    alike.add(found.partBottom().map(bottom -> rounded(found.hole().top() - bottom)));
    for (CutPass cut : found.model().passes()) {
      Pass pass = cut.pass();
      alike.add(cut.tool());
      alike.add(cut.isClimb(found.spec().internal()));
      for (double length :
          List.of(
              pass.radius(),
              pass.rise(),
              pass.sweep(),
              pass.phase() - found.hole().top(),
              pass.zStart() - found.hole().top(),
              pass.state().feed(),
              pass.state().rpm())) {
        alike.add(rounded(length));
      }
    }
    return alike;
  }

  private static long rounded(double length) {
    return Math.round(length / Tolerance.MODEL.value());
  }

  private void said(WorkMaterial metal) {
    assumptions.add(
        "cutting forces of "
            + metal.key()
            + ": kc1.1 "
            + Text.number(metal.kc11(), 0)
            + " N/mm², mc "
            + Text.number(metal.exponent(), 3)
            + (metal.read() ? ", read from a printed table" : ", from memory"));
    assumptions.add(
        "bending is that of the mean force over a turn of the cutter; the offset advice holds it");
  }
}
