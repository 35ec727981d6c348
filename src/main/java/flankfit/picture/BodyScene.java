package flankfit.picture;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A body of metal as it is shown.
 *
 * @param ground motion, sheet and title it belongs to
 * @param faces its triangles
 * @param walls exact walls of threads, in place of faces
 * @param regions where faces are not drawn, as a wall stands there; {@value MOST_REGIONS} at most
 * @param creases its sharp edges: six numbers a piece, both ends (mm)
 * @param cut where it is cut open
 * @param key what its colours mean
 */
public record BodyScene(
    Scene ground,
    BodyFaces faces,
    BodyFaces walls,
    List<ThreadRegion> regions,
    Coordinates creases,
    Optional<Cut> cut,
    List<KeyRow> key) {
  /** Regions at most; the shader counts on it. */
  public static final int MOST_REGIONS = 8;

  public BodyScene {
    Objects.requireNonNull(ground, "ground");
    Objects.requireNonNull(faces, "faces");
    Objects.requireNonNull(walls, "walls");
    Objects.requireNonNull(cut, "cut");
    if (!walls.origin().equals(faces.origin())) {
      throw new IllegalArgumentException("walls and faces must be about one origin");
    }
    regions = List.copyOf(regions);
    if (regions.size() > MOST_REGIONS) {
      throw new IllegalArgumentException("at most " + MOST_REGIONS + " walls: " + regions.size());
    }
    Objects.requireNonNull(creases, "creases");
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
      double nx, double ny, double nz, double distance, Coordinates cap, Coordinates outline) {
    public Cut {
      Objects.requireNonNull(cap, "cap");
      Objects.requireNonNull(outline, "outline");
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
