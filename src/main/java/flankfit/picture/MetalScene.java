package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.motion.Point;
import flankfit.picture.BodyScene.KeyRow;
import flankfit.solid.Crossing;
import flankfit.solid.Mesh;
import flankfit.solid.Section;
import flankfit.solid.SectionPlane;
import flankfit.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Puts together what is drawn of the metal that is left: mesh, exact walls of threads, a cut. */
public final class MetalScene {
  private final Scene ground;
  private final Mesh mesh;
  private final Solid solid;
  private final BodyFaces faces;
  private final BodyFaces walls;
  private final List<ThreadRegion> regions = new ArrayList<>();
  private final MetalInk ink;
  private final boolean byTool;

  /**
   * A scene of a mesh.
   *
   * @param ground motion, sheet and title
   * @param mesh surface of the solid
   * @param byTool whether each tool's faces have a colour of their own
   */
  public MetalScene(Scene ground, Mesh mesh, Solid solid, boolean byTool) {
    this.ground = ground;
    this.mesh = mesh;
    this.solid = solid;
    this.byTool = byTool;
    Point origin = ground.bounds().middle();
    faces = new BodyFaces(origin);
    walls = new BodyFaces(origin);
    ink = new MetalInk(ground.tape(), ground.setup());
    CutMarks marks = new CutMarks(ground.tape(), ground.setup());
    MeshFaces.add(faces, mesh, marks, byTool ? ink::mirror : maker -> ink.metal());
  }

  /**
   * Adds the exact wall of a thread where it is the surface of the body.
   *
   * @param millimetresPerPixel scale at which it is seen (mm), above 0
   */
  public void addWall(ThreadAnswer thread, double millimetresPerPixel) {
    if (regions.size() < BodyScene.MOST_REGIONS) {
      ThreadWalls.add(ground, solid, walls, thread, byTool, millimetresPerPixel)
          .ifPresent(regions::add);
    }
  }

  /** First step at which the air before a wall is asked for (mm). */
  public static final double OPEN_STEP = 0.2;

  /** The scene, not cut open. */
  public BodyScene whole() {
    return scene(Optional.empty());
  }

  /**
   * The scene cut open at a plane; what lies on the side that its normal points to is taken away.
   */
  public BodyScene cut(SectionPlane plane) {
    Section section = Section.of(mesh, solid, plane);
    double[] cap = new double[9 * section.triangleCount()];
    for (int t = 0; t < section.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        put(section, section.corner(t, k), cap, 9 * t + 3 * k);
      }
    }
    double[] outline = new double[6 * section.pointCount()];
    for (int loop = 0; loop < section.loopCount(); loop++) {
      int from = section.start(loop);
      int end = section.start(loop + 1);
      for (int p = from; p < end; p++) {
        put(section, p, outline, 6 * p);
        put(section, p + 1 == end ? from : p + 1, outline, 6 * p + 3);
      }
    }
    return scene(
        Optional.of(
            new BodyScene.Cut(
                -plane.normalX(),
                -plane.normalY(),
                -plane.normalZ(),
                -plane.offset(),
                new Coordinates(cap),
                new Coordinates(outline))));
  }

  private static void put(Section section, int point, double[] target, int at) {
    double right = section.right(point);
    double up = section.up(point);
    target[at] = section.plane().x(right, up);
    target[at + 1] = section.plane().y(right, up);
    target[at + 2] = section.plane().z(right, up);
  }

  private BodyScene scene(Optional<BodyScene.Cut> cut) {
    return new BodyScene(ground, faces, walls, regions, MeshFaces.creases(mesh), cut, key());
  }

  private List<KeyRow> key() {
    TreeSet<Integer> numbers = new TreeSet<>();
    for (int t = 0; byTool && t < mesh.triangleCount(); t++) {
      if (mesh.maker(t) != Crossing.STOCK) {
        numbers.add(ground.tape().state(mesh.maker(t)).tool());
      }
    }
    return ink.key(numbers, byTool);
  }
}
