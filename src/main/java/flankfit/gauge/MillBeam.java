package flankfit.gauge;

import flankfit.cutting.Cantilever;
import flankfit.cutting.ToolMaterial;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a beam of what the sheet says of a mill above its teeth. */
final class MillBeam {
  private static final double MICROMETRES = 1000;

  private MillBeam() {}

  /**
   * The mill as a beam.
   *
   * @param beam the beam, its holder included
   * @param assumed what was taken for granted, one sentence each
   */
  record Made(Cantilever beam, List<String> assumed) {
    Made {
      assumed = List.copyOf(assumed);
    }
  }

  /** The beam of a tool; empty when neither neck nor shank is known, so that no overhang is. */
  static Optional<Made> of(Tool tool) {
    if (tool.neck().isEmpty() && tool.shank().isEmpty()) {
      return Optional.empty();
    }
    List<String> assumed = new ArrayList<>();
    String called = "tool " + tool.number();
    Optional<ToolMaterial> known = ToolMaterial.of(tool.material());
    if (known.isEmpty()) {
      assumed.add(
          called
              + " is taken as made of carbide"
              + (tool.material().isEmpty()
                  ? ", since the sheet says no material"
                  : ", since \"" + tool.material() + "\" is not known"));
    }
    Cantilever alone =
        new Cantilever(sections(tool), known.orElse(ToolMaterial.CARBIDE).modulus(), 0);
    double holder = tool.holderCompliance().orElse(alone.compliance(0, 0));
    if (tool.holderCompliance().isEmpty()) {
      assumed.add(
          called
              + ": holder and spindle yield as much as the mill's tip, "
              + Text.number(MICROMETRES * holder, 3)
              + " µm/N (from memory)");
    }
    return Optional.of(new Made(alone.inHolder(holder), assumed));
  }

  private static List<Cantilever.Section> sections(Tool tool) {
    List<Cantilever.Section> sections = new ArrayList<>();
    double end = tool.fluteLength();
    sections.add(new Cantilever.Section(Cantilever.FLUTED * tool.diameter(), end));
    if (tool.neck().isPresent() && tool.neck().get().length() > end) {
      end = tool.neck().get().length();
      sections.add(new Cantilever.Section(tool.neck().get().diameter(), end));
    }
    if (tool.shank().isPresent()) {
      end += tool.shank().get().length();
      sections.add(new Cantilever.Section(tool.shank().get().diameter(), end));
    }
    return sections;
  }
}
