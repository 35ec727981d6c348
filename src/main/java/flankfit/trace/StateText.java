package flankfit.trace;

import flankfit.control.ControlSetting;
import flankfit.control.ControlState;
import java.util.ArrayList;
import java.util.List;

/** A whole state of the control in words. */
public final class StateText {
  private StateText() {}

  /** What is in force, setting by setting, such as {@code feed none}; the registers apart. */
  public static List<String> of(ControlState state) {
    List<String> all = new ArrayList<>();
    for (ControlSetting setting : ControlSetting.values()) {
      if (setting != ControlSetting.REGISTERS) {
        all.add(label(setting) + " " + value(setting, state));
      }
    }
    return all;
  }

  /** What a setting is called. */
  public static String label(ControlSetting setting) {
    return SettingWords.label(setting);
  }

  /** The value of a setting in a state. */
  public static String value(ControlSetting setting, ControlState state) {
    return new SettingWords(new Numbers(state.unit())).value(setting, state);
  }
}
