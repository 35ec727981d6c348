package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.solid.Solid;
import flankfit.sweep.Wall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Exact walls of threads, to be drawn in place of a body's own faces.
 *
 * @param faces the walls, about the origin of the body's faces
 * @param regions where the body's own faces are not drawn
 */
public record ThreadWalls(BodyFaces faces, List<ThreadRegion> regions) {
  public ThreadWalls {
    Objects.requireNonNull(faces, "faces");
    regions = List.copyOf(regions);
  }

  /**
   * The walls of all threads that a body has.
   *
   * @param ground motion and sheet
   * @param millimetresPerPixel scale at which they are seen (mm), above 0
   */
  public static ThreadWalls of(
      Scene ground, Solid solid, List<ThreadAnswer> threads, double millimetresPerPixel) {
    BodyFaces faces = new BodyFaces(ground.bounds().middle());
    List<ThreadRegion> regions = new ArrayList<>();
    for (ThreadAnswer thread : threads) {
      if (regions.size() < BodyScene.MOST_REGIONS) {
        add(ground, solid, faces, thread, true, millimetresPerPixel).ifPresent(regions::add);
      }
    }
    return new ThreadWalls(faces, regions);
  }

  /** Adds the wall of a thread where it is the surface of the body. */
  static Optional<ThreadRegion> add(
      Scene ground,
      Solid solid,
      BodyFaces walls,
      ThreadAnswer thread,
      boolean byTool,
      double millimetresPerPixel) {
    Optional<Hole> hole =
        ground.setup().holes().stream().filter(h -> h.name().equals(thread.hole())).findFirst();
    if (thread.real().isEmpty() || hole.isEmpty() || thread.finished().isEmpty()) {
      return Optional.empty();
    }
    MetalInk ink = new MetalInk(ground.tape(), ground.setup());
    Wall wall = thread.real().get().wall();
    double sign = thread.internal() ? 1 : -1;
    double shallow = hole.get().diameter() / 2;
    double deepest =
        Arrays.stream(wall.likelyRadii())
            .filter(r -> sign * (r - shallow) < thread.spec().pitch())
            .reduce(shallow, thread.internal() ? Math::max : Math::min);
    double perRadian = (thread.rightHand() ? 1 : -1) * thread.lead() / (2 * Math.PI);
    int tool = ground.tape().state(move(ground.tape(), thread.line())).tool();
    WallFaces.Look look =
        new WallFaces.Look(
            byTool ? ink.ofTool(tool) : ink.metal(),
            millimetresPerPixel / 2,
            millimetresPerPixel / 4);
    return new WallFaces(walls, solid, look)
        .add(
            wall,
            hole.get().x(),
            hole.get().y(),
            shallow,
            deepest + sign * 1e-4,
            thread.spec().pitch(),
            perRadian,
            (x, y, z, nx, ny, nz) -> open(solid, x, y, z, nx, ny, nz));
  }

  private static int move(Tape tape, int line) {
    for (int i = 0; i < tape.size(); i++) {
      if (tape.line(i) == line) {
        return i;
      }
    }
    return 0;
  }

  private static int open(
      Solid solid, double x, double y, double z, double nx, double ny, double nz) {
    double step = MetalScene.OPEN_STEP;
    double open = 0;
    double all = 0;
    double weight = 1;
    for (int k = 0; k < 4; k++) {
      double value = solid.air(x + nx * step, y + ny * step, z + nz * step, step);
      open += weight * Math.max(0, Math.min(1, value / step));
      all += weight;
      weight /= 2;
      step *= 2;
    }
    return (int) Math.round(255 * open / all);
  }
}
