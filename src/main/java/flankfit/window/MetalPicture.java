package flankfit.window;

import flankfit.metal.Metal;
import flankfit.picture.BodyPieces;
import flankfit.picture.BodyScene.KeyRow;
import flankfit.solid.Solid;
import java.util.List;
import java.util.Objects;

/**
 * The metal after some moves, ready to be drawn.
 *
 * @param of what was asked
 * @param metal the metal at every moment
 * @param asked side of the cells that were asked for (mm); the metal has coarser ones for memory
 * @param fine whether it is as fine as pictures of this program get
 * @param pieces its faces
 * @param made number of pieces that were made anew
 * @param key what the colours of tools mean
 */
record MetalPicture(
    MetalQuestion of,
    Metal metal,
    double asked,
    boolean fine,
    BodyPieces pieces,
    int made,
    List<KeyRow> key) {
  MetalPicture {
    Objects.requireNonNull(of, "of");
    Objects.requireNonNull(metal, "metal");
    Objects.requireNonNull(pieces, "pieces");
    key = List.copyOf(key);
  }

  /** Two pictures are equal if they are one. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }

  /** The body. */
  Solid solid() {
    return metal.at(of.moves());
  }
}
