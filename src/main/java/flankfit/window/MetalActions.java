package flankfit.window;

import static flankfit.window.KeyStroke.key;
import static flankfit.window.KeyStroke.shift;
import static org.lwjgl.glfw.GLFW.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** The actions of the Metal sheet. */
final class MetalActions {
  private final List<Action> all;

  private MetalActions(List<Action> all) {
    this.all = all;
  }

  /** Adds them to a table. */
  static void addTo(List<Action> table) {
    List<Action> own = new ArrayList<>();
    new MetalActions(own).fill();
    table.addAll(own);
  }

  private void fill() {
    for (int axis = 0; axis < 3; axis++) {
      int of = axis;
      String name = Sections.name(axis);
      add(
          "metal.section-" + name.toLowerCase(Locale.ROOT),
          "open the metal by a plane across " + name + ", or close it",
          s -> s.metal().toggleSection(of),
          key(GLFW_KEY_X + axis));
    }
    step("metal.plane-on", "plane: a step to greater coordinates", 1, false, key(GLFW_KEY_UP));
    step("metal.plane-back", "plane: a step back", -1, false, key(GLFW_KEY_DOWN));
    step("metal.plane-on-ten", "plane: ten steps on", 1, true, shift(GLFW_KEY_UP));
    step("metal.plane-back-ten", "plane: ten steps back", -1, true, shift(GLFW_KEY_DOWN));
    all.add(
        new Action(
            "metal.plane-home",
            "plane: back to the axis of the hole",
            List.of(key(GLFW_KEY_BACKSPACE)),
            When.SECTION,
            false,
            s -> s.metal().home()));
    add(
        "metal.see-through",
        "see through the metal, or not",
        s -> s.metal().toggleSeeThrough(),
        key(GLFW_KEY_S));
    add(
        "metal.by-tool",
        "a colour for each tool, or plain metal",
        s -> s.metal().toggleByTool(),
        key(GLFW_KEY_K));
    add(
        "metal.cutter",
        "show the cutter, or leave it out",
        s -> s.metal().toggleCutter(),
        key(GLFW_KEY_G));
    add(
        "metal.close",
        "close to the thread, then to the next one",
        s -> s.metal().close(s.viewpoint()),
        key(GLFW_KEY_D));
  }

  private void step(String id, String words, int way, boolean large, KeyStroke stroke) {
    all.add(
        new Action(
            id, words, List.of(stroke), When.SECTION, true, s -> s.metal().step(way, large)));
  }

  private void add(String id, String words, Consumer<ViewState> does, KeyStroke stroke) {
    all.add(new Action(id, words, List.of(stroke), When.METAL, false, does));
  }
}
