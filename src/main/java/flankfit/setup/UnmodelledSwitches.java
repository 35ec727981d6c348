package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Nearest;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;

/**
 * Switches for things that this version does not model. Their defaults are accepted; anything else
 * is an error, so that no sheet is read as if it had been obeyed.
 */
final class UnmodelledSwitches {

  /** One switch: name, its only value, why. */
  private record Switch(String key, Object only, String why) {}

  private static final List<Switch> ALL =
      List.of(new Switch("end-reset", "power-up", "a second run of the program is not modelled"));

  private static final List<String> RAPID_PATHS = List.of("straight", "dog-leg");

  private UnmodelledSwitches() {}

  static void addTo(Keys keys) {
    ALL.forEach(s -> keys.and(s.key(), "nothing but the default, " + shown(s.only())));
  }

  static void check(SheetTable table) {
    ALL.forEach(s -> table.item(s.key()).ifPresent(item -> check(s, item)));
    table.item("rapid-path").ifPresent(UnmodelledSwitches::checkRapidPath);
  }

  private static void check(Switch s, SheetItem item) {
    if (!isOnly(s.only(), item)) {
      refuse(s.key(), s.why(), shown(s.only()), item);
    }
  }

  private static boolean isOnly(Object only, SheetItem item) {
    if (only instanceof List<?>) {
      return item.value() instanceof TomlArray array && array.isEmpty();
    }
    return only.equals(item.value());
  }

  private static void checkRapidPath(SheetItem item) {
    Optional<String> word = item.text();
    if (word.isEmpty() || word.get().equals("straight")) {
      return;
    }
    if (Nearest.of(word.get(), RAPID_PATHS).filter("dog-leg"::equals).isPresent()) {
      refuse("rapid-path", "rapids are drawn straight", "\"straight\"", item);
    } else {
      item.unknownWord(word.get(), RAPID_PATHS);
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

  private static String shown(Object only) {
    return only instanceof String text ? "\"" + text + "\"" : only.toString();
  }
}
