package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.BodyScene.KeyRow;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.solid.Crossing;
import flankfit.solid.Mesh;
import flankfit.solid.Section;
import flankfit.solid.SectionPlane;
import flankfit.solid.Solid;
import flankfit.sweep.Wall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Puts together what is drawn of the metal that is left: mesh, exact walls of threads, a cut. */
public final class MetalScene {
  /** Mirror colours of metals (0xRRGGBB): aluminium, steel and what else there is, brass. */
  private static final int ALUMINIUM = 0xF4F5F5;

  private static final int STEEL = 0xC8C9CB;
  private static final int BRASS = 0xE3CF92;

  /** Colours of tools, of a published colour-blind-safe set (Okabe and Ito, 2008), lightened. */
  private static final int[] TOOLS = {
    0x7FB8DA, 0xF1CB7C, 0x7FCDB6, 0xE6B6CF, 0xF2EC9A, 0xEBA27F, 0xB7DCF5, 0xC0C0C0
  };

  private final Scene ground;
  private final Mesh mesh;
  private final Solid solid;
  private final BodyFaces faces;
  private final BodyFaces walls;
  private final List<ThreadRegion> regions = new ArrayList<>();
  private final int metal;
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
    metal = metal(ground.setup().workpieceMaterial());
    CutMarks marks = new CutMarks(ground.tape(), ground.setup());
    MeshFaces.add(faces, mesh, marks, this::mirror);
  }

  private static int metal(String material) {
    if (material.startsWith("aluminium")) {
      return ALUMINIUM;
    }
    return material.startsWith("brass") || material.startsWith("bronze") ? BRASS : STEEL;
  }

  private int mirror(int maker) {
    return byTool && maker != Crossing.STOCK ? ofTool(ground.tape().state(maker).tool()) : metal;
  }

  private int ofTool(int number) {
    int place = 0;
    for (Tool tool : ground.setup().tools()) {
      if (tool.number() == number) {
        break;
      }
      place++;
    }
    return TOOLS[place % TOOLS.length];
  }

  /**
   * Adds the exact wall of a thread where it is the surface of the body.
   *
   * @param millimetresPerPixel scale at which it is seen (mm), above 0
   */
  public void addWall(ThreadAnswer thread, double millimetresPerPixel) {
    Optional<Hole> hole =
        ground.setup().holes().stream().filter(h -> h.name().equals(thread.hole())).findFirst();
    if (thread.real().isEmpty()
        || hole.isEmpty()
        || regions.size() == BodyScene.MOST_REGIONS
        || thread.finished().isEmpty()) {
      return;
    }
    Wall wall = thread.real().get().wall();
    double sign = thread.internal() ? 1 : -1;
    double shallow = hole.get().diameter() / 2;
    double deepest =
        Arrays.stream(wall.likelyRadii())
            .filter(r -> sign * (r - shallow) < thread.spec().pitch())
            .reduce(shallow, thread.internal() ? Math::max : Math::min);
    double perRadian = (thread.rightHand() ? 1 : -1) * thread.lead() / (2 * Math.PI);
    int tool = ground.tape().state(move(thread.line())).tool();
    WallFaces.Look look =
        new WallFaces.Look(
            byTool ? ofTool(tool) : metal, millimetresPerPixel / 2, millimetresPerPixel / 4);
    new WallFaces(walls, solid, look)
        .add(
            wall,
            hole.get().x(),
            hole.get().y(),
            shallow,
            deepest + sign * 1e-4,
            thread.spec().pitch(),
            perRadian,
            this::open)
        .ifPresent(regions::add);
  }

  private int move(int line) {
    Tape tape = ground.tape();
    for (int i = 0; i < tape.size(); i++) {
      if (tape.line(i) == line) {
        return i;
      }
    }
    return 0;
  }

  private int open(double x, double y, double z, double nx, double ny, double nz) {
    double step = OPEN_STEP;
    double open = 0;
    double all = 0;
    double weight = 1;
    for (int k = 0; k < 4; k++) {
      double value = solid.value(x + nx * step, y + ny * step, z + nz * step);
      open += weight * Math.max(0, Math.min(1, value / step));
      all += weight;
      weight /= 2;
      step *= 2;
    }
    return (int) Math.round(255 * open / all);
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
    SetupSheet sheet = ground.setup();
    List<KeyRow> rows = new ArrayList<>();
    String material = sheet.workpieceMaterial().isEmpty() ? "metal" : sheet.workpieceMaterial();
    if (!byTool) {
      rows.add(new KeyRow(metal, material));
      return rows;
    }
    rows.add(new KeyRow(metal, "skin of the stock"));
    TreeSet<Integer> numbers = new TreeSet<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      if (mesh.maker(t) != Crossing.STOCK) {
        numbers.add(ground.tape().state(mesh.maker(t)).tool());
      }
    }
    for (int number : numbers) {
      String kind = sheet.tool(number).map(t -> " " + t.kind().word()).orElse("");
      rows.add(new KeyRow(ofTool(number), "T" + number + kind));
    }
    return rows;
  }
}
