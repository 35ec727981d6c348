package flankfit.control;

import flankfit.setup.ControlSwitches;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * A switch and what else it may be set to.
 *
 * @param name its name in the sheet
 * @param usual its default, as in the sheet
 * @param others its other values
 * @param mayMatter whether it can make a difference to a program of such words
 */
record SwitchChoice(
    String name, String usual, List<Value> others, Predicate<ProgramWords> mayMatter) {
  SwitchChoice {
    others = List.copyOf(others);
  }

  /**
   * A value that is not the default.
   *
   * @param word as in the sheet
   * @param set sets the switch so
   */
  record Value(String word, UnaryOperator<ControlSwitches> set) {}
}
