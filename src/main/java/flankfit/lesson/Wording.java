package flankfit.lesson;

import java.util.List;
import java.util.Objects;

/**
 * A block in the words of one distance mode.
 *
 * @param words its words in order; empty where it has none, or cannot be said so
 * @param whyNot why it cannot be said in that mode; empty otherwise
 */
public record Wording(List<Word> words, String whyNot) {
  /**
   * One of its words.
   *
   * @param text the word
   * @param differs whether it reads otherwise in the other mode
   * @param inForce whether it is not written in the block, for the mode is in force from before
   */
  public record Word(String text, boolean differs, boolean inForce) {
    public Word {
      Objects.requireNonNull(text, "text");
    }
  }

  public Wording {
    words = List.copyOf(words);
    Objects.requireNonNull(whyNot, "whyNot");
  }

  /** Whether the block can be said in that mode. */
  public boolean isSaid() {
    return whyNot.isEmpty();
  }
}
