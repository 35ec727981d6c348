package flankfit.metal;

import flankfit.motion.Point;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A part of a tool in metal, or in a body that nothing may touch, during one move.
 *
 * @param move index of the move on the tape
 * @param part which part of the tool
 * @param keepOut name of the body that is touched; empty when it is the metal
 * @param depth how far the part goes in at the deepest (mm): the distance from there to the part's
 *     own side, or to its lower face where that stands out
 * @param place the deepest place, part frame
 * @param deepestAt share of the move at which the part is there, 0 to 1 (1)
 * @param within how exact the depth is (mm): it may be greater by as much
 */
public record Contact(
    int move,
    Part part,
    Optional<String> keepOut,
    double depth,
    Point place,
    double deepestAt,
    double within) {
  public Contact {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(keepOut, "keepOut");
    Objects.requireNonNull(place, "place");
  }

  /** Parts of a tool, from the tip upwards. */
  public enum Part {
    /** The part that cuts. */
    CUTTER("cutting part"),
    NECK("neck"),
    SHANK("shank"),
    HOLDER("holder");

    private final String word;

    Part(String word) {
      this.word = word;
    }

    /** The word for people. */
    public String word() {
      return word;
    }

    /** The part of a name in {@link ToolBody.Part}. */
    static Part named(String name) {
      return valueOf(name.toUpperCase(Locale.ROOT));
    }
  }
}
