package flankfit.window;

import static org.lwjgl.glfw.GLFW.*;

import java.util.ArrayList;
import java.util.List;

/**
 * A key with what is held down beside it, or a character however the keyboard makes it.
 *
 * @param key the key's GLFW number; 0 for a character
 * @param character the character; 0 for a key
 * @param ctrl whether Ctrl is held, or the command key
 * @param shift whether Shift is held; never for a character
 * @param alt whether Alt is held
 */
record KeyStroke(int key, int character, boolean ctrl, boolean shift, boolean alt) {
  /** A key alone. */
  static KeyStroke key(int key) {
    return new KeyStroke(key, 0, false, false, false);
  }

  static KeyStroke ctrl(int key) {
    return new KeyStroke(key, 0, true, false, false);
  }

  static KeyStroke shift(int key) {
    return new KeyStroke(key, 0, false, true, false);
  }

  static KeyStroke alt(int key) {
    return new KeyStroke(key, 0, false, false, true);
  }

  /** A character, on whatever key the keyboard has it. */
  static KeyStroke typed(int character) {
    return new KeyStroke(0, character, false, false, false);
  }

  /** A key as the display reports it. */
  static KeyStroke pressed(int key, int mods) {
    return new KeyStroke(
        key,
        0,
        (mods & (GLFW_MOD_CONTROL | GLFW_MOD_SUPER)) != 0,
        (mods & GLFW_MOD_SHIFT) != 0,
        (mods & GLFW_MOD_ALT) != 0);
  }

  /** Whether it is a key of the keypad, which repeats one of the other keys. */
  boolean isOnKeypad() {
    return key >= GLFW_KEY_KP_0 && key <= GLFW_KEY_KP_EQUAL;
  }

  /** The stroke as people read it. */
  String words() {
    if (character != 0) {
      return Character.toString(character);
    }
    List<String> parts = new ArrayList<>();
    if (ctrl) {
      parts.add("Ctrl");
    }
    if (alt) {
      parts.add("Alt");
    }
    if (shift) {
      parts.add("Shift");
    }
    parts.add(name());
    return String.join("+", parts);
  }

  private String name() {
    if (key >= GLFW_KEY_F1 && key <= GLFW_KEY_F12) {
      return "F" + (key - GLFW_KEY_F1 + 1);
    }
    return switch (key) {
      case GLFW_KEY_RIGHT -> "→";
      case GLFW_KEY_LEFT -> "←";
      case GLFW_KEY_UP -> "↑";
      case GLFW_KEY_DOWN -> "↓";
      case GLFW_KEY_HOME -> "Home";
      case GLFW_KEY_END -> "End";
      case GLFW_KEY_PAGE_UP -> "Page ↑";
      case GLFW_KEY_PAGE_DOWN -> "Page ↓";
      case GLFW_KEY_SPACE -> "Space";
      case GLFW_KEY_ENTER -> "Enter";
      case GLFW_KEY_ESCAPE -> "Esc";
      case GLFW_KEY_TAB -> "Tab";
      case GLFW_KEY_BACKSPACE -> "Backspace";
      default -> Character.toString((char) key);
    };
  }
}
