package flankfit.window;

import java.util.Objects;

/**
 * A stretch of the program that does one thing: one tool at one place.
 *
 * @param first its first move
 * @param last its last move
 * @param tool number of the tool; 0 for none
 * @param kind what it does
 * @param name what it is called, such as the hole's name; may be empty
 */
record Operation(int first, int last, int tool, Kind kind, String name) {
  /** What an operation does. */
  enum Kind {
    /** A helix of a thread mill or in a hole that wants a thread; any, where neither is known. */
    THREAD,
    /** Other work at a hole. */
    HOLE,
    /** Feed moves elsewhere. */
    CUT,
    /** Rapids alone. */
    TRAVEL
  }

  Operation {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(name, "name");
  }

  /** The operation as a label: the tool, then the place. */
  String label() {
    String mill = tool == 0 ? "" : "T" + tool;
    return name.isEmpty() ? mill : mill.isEmpty() ? name : mill + " " + name;
  }
}
