package flankfit.paper;

import flankfit.picture.Diagram;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One step of a lesson on paper, with its drawing at the right. It stays on one page where it fits
 * one.
 *
 * @param bar what the bar at its left tells
 * @param heading place and block
 * @param plain what it does, in a sentence
 * @param rows more of it, named
 * @param drawing what it looks like; empty if nothing is drawn
 */
public record LessonStep(
    Bar bar, Words heading, String plain, List<Row> rows, Optional<Diagram> drawing) {
  /** The bar at the left: single or double, so that it is told without colour, too. */
  public enum Bar {
    NONE(""),
    ABSOLUTE("absolute"),
    INCREMENTAL("incremental");

    private final String word;

    Bar(String word) {
      this.word = word;
    }

    /** Its name; empty for none. */
    String word() {
      return word;
    }
  }

  /**
   * A line of a step.
   *
   * @param name what it tells
   * @param words what it is
   * @param own whether the program itself says it so
   */
  public record Row(String name, String words, boolean own) {}

  public LessonStep {
    Objects.requireNonNull(bar, "bar");
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(plain, "plain");
    rows = List.copyOf(rows);
    Objects.requireNonNull(drawing, "drawing");
  }
}
