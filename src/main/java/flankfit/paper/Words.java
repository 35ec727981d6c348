package flankfit.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A run of text of which parts may be strong or code.
 *
 * @param spans its parts, in order
 */
public record Words(List<Span> spans) {
  /** How a part looks. */
  public enum Look {
    PLAIN,
    STRONG,
    CODE
  }

  /**
   * A part.
   *
   * @param text what it says
   * @param look how
   */
  public record Span(String text, Look look) {
    public Span {
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(look, "look");
    }
  }

  public Words {
    spans = List.copyOf(spans);
  }

  /** Plain words. */
  public static Words of(String text) {
    return new Words(List.of(new Span(text, Look.PLAIN)));
  }

  /** Strong words. */
  public static Words strong(String text) {
    return new Words(List.of(new Span(text, Look.STRONG)));
  }

  /** The same with a part more. */
  public Words then(String text, Look look) {
    List<Span> more = new ArrayList<>(spans);
    more.add(new Span(text, look));
    return new Words(more);
  }

  /** The same with plain words more. */
  public Words then(String text) {
    return then(text, Look.PLAIN);
  }
}
