package flankfit.window;

import flankfit.motion.Point;
import java.util.Objects;

/**
 * What the pointer met.
 *
 * @param kind what kind of place it is
 * @param move the move it belongs to
 * @param share how much of the move lies before it (1); 0 for a centre
 * @param point the place itself, exact for ends and centres
 */
record Pick(Kind kind, int move, double share, Point point) {
  /** Kinds of places on a path, the most exact first. */
  enum Kind {
    CENTRE("arc centre"),
    END("end point"),
    LINE("point on the path"),
    SURFACE("place on the metal");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** As people call it. */
    String words() {
      return words;
    }
  }

  Pick {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(point, "point");
  }
}
