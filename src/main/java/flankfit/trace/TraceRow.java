package flankfit.trace;

import java.util.Objects;

/**
 * One line about a block.
 *
 * @param kind what it is about
 * @param label the word, expression, setting or kind of move
 * @param text what that means
 * @param value its value with the unit; may be empty
 */
public record TraceRow(Kind kind, String label, String text, String value) {
  /** What a row is about. */
  public enum Kind {
    MESSAGE("display"),
    WORD("words"),
    STEP("steps"),
    STATE("state"),
    MOVE("moves");

    private final String heading;

    Kind(String heading) {
      this.heading = heading;
    }

    /** What stands above or before the rows of a kind. */
    public String heading() {
      return heading;
    }
  }

  public TraceRow {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(value, "value");
  }
}
