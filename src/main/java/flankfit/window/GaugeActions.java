package flankfit.window;

import static flankfit.window.KeyStroke.ctrl;
import static flankfit.window.KeyStroke.key;
import static flankfit.window.KeyStroke.shift;
import static org.lwjgl.glfw.GLFW.*;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** The actions of the Gauge sheet. */
final class GaugeActions {
  /** Increments of a great step of the dial. */
  private static final int GREAT = 10;

  private final List<Action> all;

  private GaugeActions(List<Action> all) {
    this.all = all;
  }

  /** Adds them to a table. */
  static void addTo(List<Action> table) {
    List<Action> own = new ArrayList<>();
    GaugeActions actions = new GaugeActions(own);
    actions.dial();
    actions.gauges();
    actions.seen();
    table.addAll(own);
  }

  private void dial() {
    step("gauge.larger", "dial: one step to a larger thread", 1, key(GLFW_KEY_UP));
    step("gauge.smaller", "dial: one step to a smaller thread", -1, key(GLFW_KEY_DOWN));
    step("gauge.larger-ten", "dial: ten steps to a larger thread", GREAT, shift(GLFW_KEY_UP));
    step("gauge.smaller-ten", "dial: ten steps to a smaller thread", -GREAT, shift(GLFW_KEY_DOWN));
    add(
        "gauge.type",
        "dial: type the wear entry",
        When.DIAL,
        GaugeSide::askForEntry,
        key(GLFW_KEY_D));
    add(
        "gauge.advised",
        "dial: the entry advised for the middle",
        When.DIAL,
        GaugeSide::toAdvised,
        key(GLFW_KEY_K));
    add(
        "gauge.home",
        "dial: back to the entry of the sheet",
        When.DIAL,
        GaugeSide::home,
        shift(GLFW_KEY_K));
    add("gauge.undo", "dial: undo", When.DIAL, GaugeSide::undo, ctrl(GLFW_KEY_Z));
    add("gauge.redo", "dial: do again", When.DIAL, GaugeSide::redo, ctrl(GLFW_KEY_Y));
    add(
        "gauge.put",
        "put the dial's entry into the setup sheet",
        When.DIAL,
        GaugeSide::put,
        ctrl(GLFW_KEY_S));
  }

  private void gauges() {
    twist("gauge.go-in", "turn the GO gauge in", g -> g.bench().go(), 1, key(GLFW_KEY_G));
    twist("gauge.go-out", "turn the GO gauge out", g -> g.bench().go(), -1, shift(GLFW_KEY_G));
    add(
        "gauge.go-end",
        "turn the GO gauge in as far as it goes",
        When.GAUGE,
        g -> g.drive(g.bench().go()),
        ctrl(GLFW_KEY_G));
    twist("gauge.no-go-in", "turn the NO-GO gauge in", g -> g.bench().noGo(), 1, key(GLFW_KEY_N));
    twist(
        "gauge.no-go-out",
        "turn the NO-GO gauge out",
        g -> g.bench().noGo(),
        -1,
        shift(GLFW_KEY_N));
    add(
        "gauge.no-go-end",
        "turn the NO-GO gauge in as far as it goes",
        When.GAUGE,
        g -> g.drive(g.bench().noGo()),
        ctrl(GLFW_KEY_N));
    add(
        "gauge.next",
        "the next thread of the program in hand",
        When.GAUGE,
        g -> g.bench().next(1),
        key(GLFW_KEY_TAB));
    add(
        "gauge.before",
        "the thread before in hand",
        When.GAUGE,
        g -> g.bench().next(-1),
        shift(GLFW_KEY_TAB));
    add(
        "gauge.picture",
        "tolerance ladder, or section through the flank",
        When.GAUGE,
        GaugeSide::otherPicture,
        key(GLFW_KEY_S));
  }

  private void seen() {
    add("gauge.seen", "tell what a gauge said", When.GAUGE, GaugeSide::askForSeen, key(GLFW_KEY_O));
    add(
        "gauge.take-back",
        "take back the last thing a gauge said",
        When.GAUGE,
        GaugeSide::takeBack,
        shift(GLFW_KEY_O));
    add("gauge.part", "begin the next part", When.GAUGE, GaugeSide::nextPart, key(GLFW_KEY_P));
    add(
        "gauge.believed",
        "dial: the entry that gauging advises",
        When.DIAL,
        GaugeSide::toBelieved,
        ctrl(GLFW_KEY_D));
    add(
        "gauge.odds",
        "stop reckoning the odds, or reckon them",
        When.GAUGE,
        g -> g.bench().stopOdds(),
        key(GLFW_KEY_X));
  }

  private void step(String id, String words, int steps, KeyStroke stroke) {
    all.add(new Action(id, words, List.of(stroke), When.DIAL, true, s -> s.gauge().step(steps)));
  }

  /** Finds a gauge. */
  private interface Which {
    Plug of(GaugeSide side);
  }

  private void twist(String id, String words, Which which, int way, KeyStroke stroke) {
    all.add(
        new Action(
            id,
            words,
            List.of(stroke),
            When.GAUGE_FREE,
            true,
            s -> s.gauge().twist(which.of(s.gauge()), way * Plug.TWIST)));
  }

  private void add(
      String id, String words, When when, Consumer<GaugeSide> does, KeyStroke... keys) {
    all.add(new Action(id, words, List.of(keys), when, false, s -> does.accept(s.gauge())));
  }
}
