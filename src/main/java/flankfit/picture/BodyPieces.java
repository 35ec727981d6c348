package flankfit.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A body's faces in pieces, as they are at one moment. A piece that looks as it did a moment before
 * is the very same object, so that it need not be brought into graphics memory again.
 *
 * @param faces of each piece, about one origin; at least one
 */
public record BodyPieces(List<BodyFaces> faces) {
  public BodyPieces {
    faces = List.copyOf(faces);
    if (faces.isEmpty()) {
      throw new IllegalArgumentException("a body has at least one piece");
    }
    for (BodyFaces piece : faces) {
      if (!piece.origin().equals(faces.get(0).origin())) {
        throw new IllegalArgumentException("pieces must be about one origin");
      }
    }
  }

  /** Number of triangles. */
  public long triangles() {
    long sum = 0;
    for (BodyFaces piece : faces) {
      sum += piece.triangles();
    }
    return sum;
  }

  /** The same with other faces of some pieces. */
  public BodyPieces with(List<Integer> pieces, List<BodyFaces> others) {
    List<BodyFaces> all = new ArrayList<>(faces);
    for (int i = 0; i < others.size(); i++) {
      all.set(pieces.get(i), others.get(i));
    }
    return new BodyPieces(all);
  }
}
