package flankfit.lesson;

import java.util.Objects;

/**
 * A question about one block, with its answer.
 *
 * @param kind what is asked for
 * @param line the block's line
 * @param question the question, a full sentence or two
 * @param answer the answer
 */
public record Question(Kind kind, int line, String question, String answer) {
  /** What is asked for. */
  public enum Kind {
    WHERE("where the tool is"),
    CENTRE("centre words"),
    OTHER_MODE("other mode"),
    ROUND("which way round");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The words people and JSON see. */
    public String word() {
      return word;
    }
  }

  public Question {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(answer, "answer");
  }
}
