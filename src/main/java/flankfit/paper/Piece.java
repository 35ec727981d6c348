package flankfit.paper;

import java.io.IOException;
import java.util.Objects;
import java.util.Optional;

/**
 * A strip of paper across its whole width that never parts between pages.
 *
 * @param height height (1/72 in)
 * @param hold what of it holds to what
 * @param head what stands above it again where it begins a page, as the names of columns do
 * @param ink what is on it
 */
record Piece(double height, Hold hold, Optional<Piece> head, Ink ink) {
  /** What a piece is held to. */
  enum Hold {
    /** Nothing. */
    NONE,
    /** It stands on the page of what follows. */
    NEXT,
    /** It begins a page, and stays with what follows. */
    PAGE,
    /** Empty room, left out where a page begins. */
    ROOM
  }

  /** What is on a piece. */
  interface Ink {
    /**
     * Draws it.
     *
     * @param left left edge (1/72 in)
     * @param top upper edge, from the lower edge of the page (1/72 in)
     */
    void draw(PdfCanvas canvas, double left, double top) throws IOException;
  }

  Piece {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(head, "head");
    Objects.requireNonNull(ink, "ink");
  }

  /** One that holds to nothing. */
  static Piece of(double height, Ink ink) {
    return new Piece(height, Hold.NONE, Optional.empty(), ink);
  }

  /** One that stays with what follows. */
  static Piece withNext(double height, Ink ink) {
    return new Piece(height, Hold.NEXT, Optional.empty(), ink);
  }

  /** Empty room. */
  static Piece room(double height) {
    return new Piece(height, Hold.ROOM, Optional.empty(), (canvas, left, top) -> {});
  }
}
