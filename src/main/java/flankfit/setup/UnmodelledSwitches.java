package flankfit.setup;

import flankfit.finding.Code;
import java.util.List;

/**
 * Switches for things that this version does not model. Their defaults are accepted; anything else
 * is an error, so that no sheet is read as if it had been obeyed.
 */
final class UnmodelledSwitches {

  /** One switch: name, its only value, why. */
  private record Switch(String key, String only, String why) {}

  private static final List<Switch> ALL =
      List.of(new Switch("end-reset", "power-up", "a second run of the program is not modelled"));

  private UnmodelledSwitches() {}

  static void addTo(Keys keys) {
    ALL.forEach(s -> keys.and(s.key(), "nothing but the default, " + shown(s.only())));
  }

  static void check(SheetTable table) {
    ALL.forEach(s -> table.item(s.key()).ifPresent(item -> check(s, item)));
  }

  private static void check(Switch s, SheetItem item) {
    if (!s.only().equals(item.value())) {
      refuse(s.key(), s.why(), shown(s.only()), item);
    }
  }

  private static void refuse(String key, String why, String only, SheetItem item) {
    item.log()
        .report(
            Code.SH08,
            item.place(),
            item.label() + " = " + item.shown() + " is not available in this version",
            why + "; " + only + " is the only value",
            "leave " + key + " out, or write " + only);
  }

  private static String shown(String only) {
    return "\"" + only + "\"";
  }
}
