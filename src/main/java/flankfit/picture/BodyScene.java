package flankfit.picture;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A body of metal as it is shown.
 *
 * @param ground motion, sheet and title it belongs to
 * @param faces its triangles
 * @param creases its sharp edges: six numbers a piece, both ends (mm)
 * @param cut where it is cut open
 * @param key what its colours mean
 */
public record BodyScene(
    Scene ground, BodyFaces faces, double[] creases, Optional<Cut> cut, List<KeyRow> key) {
  public BodyScene {
    Objects.requireNonNull(ground, "ground");
    Objects.requireNonNull(faces, "faces");
    Objects.requireNonNull(cut, "cut");
    creases = creases.clone();
    key = List.copyOf(key);
  }

  /**
   * A plane that takes away what lies before it.
   *
   * @param nx normal towards what is kept (1)
   * @param ny normal towards what is kept (1)
   * @param nz normal towards what is kept (1)
   * @param distance of the plane from the zero along the normal (mm)
   * @param cap triangles that close the cut, nine numbers each (mm)
   * @param outline edges of the cut, six numbers a piece (mm)
   */
  public record Cut(
      double nx, double ny, double nz, double distance, double[] cap, double[] outline) {
    public Cut {
      cap = cap.clone();
      outline = outline.clone();
    }
  }

  /**
   * A row of the key.
   *
   * @param colour 0xRRGGBB
   * @param words what has this colour
   */
  public record KeyRow(int colour, String words) {}
}
