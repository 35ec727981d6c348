package flankfit.lesson;

import java.util.List;
import java.util.Objects;

/** How the words of a block read in a distance mode. */
sealed interface Telling {
  /** No word depends on the distance mode. */
  record Either() implements Telling {}

  /**
   * Some words depend on it.
   *
   * @param changed the words that read otherwise than written; none in the mode of the program
   */
  record Words(List<Changed> changed) implements Telling {
    public Words {
      changed = List.copyOf(changed);
    }
  }

  /**
   * It cannot be said in that mode.
   *
   * @param why the reason, as part of a sentence
   * @param positioning whether only where the tool comes from is not known, so that a program goes
   *     on well when this block keeps its mode
   */
  record Unsayable(String why, boolean positioning) implements Telling {
    public Unsayable {
      Objects.requireNonNull(why, "why");
    }
  }

  /**
   * A word with another value.
   *
   * @param word index among the words of the block
   * @param axis axis it counts along, 0 (X), 1 (Y) or 2 (Z)
   * @param value its value (mm)
   */
  record Changed(int word, int axis, double value) {}
}
