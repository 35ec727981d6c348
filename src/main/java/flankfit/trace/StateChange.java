package flankfit.trace;

import flankfit.control.BlockTrace;
import flankfit.control.ControlSetting;
import flankfit.control.ControlState;
import flankfit.setup.Offsets.Register;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/**
 * One thing that a block changed, in words and functions.
 *
 * @param setting what it belongs to
 * @param label what it is called
 * @param from its value before
 * @param to its value after
 */
public record StateChange(ControlSetting setting, String label, String from, String to) {
  public StateChange {
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
  }

  /** Everything that a block changed, lengths in a unit. */
  public static List<StateChange> of(BlockTrace block, LengthUnit unit) {
    SettingWords words = new SettingWords(new Numbers(unit));
    List<StateChange> changes = new ArrayList<>();
    for (ControlSetting setting : block.changes()) {
      if (setting == ControlSetting.REGISTERS) {
        registers(block, words, changes);
      } else {
        changes.add(
            new StateChange(
                setting,
                SettingWords.label(setting),
                words.value(setting, block.before()),
                words.value(setting, block.after())));
      }
    }
    return changes;
  }

  private static void registers(BlockTrace block, SettingWords words, List<StateChange> changes) {
    ControlState before = block.before();
    ControlState after = block.after();
    registers("H", before.registers().lengths(), after.registers().lengths(), words, changes);
    registers("D", before.registers().radii(), after.registers().radii(), words, changes);
  }

  private static void registers(
      String letter,
      Map<Integer, Register> before,
      Map<Integer, Register> after,
      SettingWords words,
      List<StateChange> changes) {
    for (int number : new TreeSet<>(after.keySet())) {
      Optional<Register> old = Optional.ofNullable(before.get(number));
      Optional<Register> now = Optional.ofNullable(after.get(number));
      if (!old.equals(now)) {
        changes.add(
            new StateChange(
                ControlSetting.REGISTERS,
                letter + number,
                words.register(old),
                words.register(now)));
      }
    }
  }
}
