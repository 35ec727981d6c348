package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.gauge.ThreadAnswer;
import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.BodyPicture;
import flankfit.picture.BodyScene;
import flankfit.picture.Camera;
import flankfit.picture.MetalScene;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.Scene;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.solid.Crossing;
import flankfit.solid.GlbFile;
import flankfit.solid.Halt;
import flankfit.solid.Mesh;
import flankfit.solid.Meshing;
import flankfit.solid.Paint;
import flankfit.solid.SectionPlane;
import flankfit.solid.Solid;
import flankfit.solid.StlFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Surface and pictures of the metal that is left. */
final class MetalDrawing {
  /** Room round a hole that is looked at closely, as a share of its diameter (1). */
  private static final double ROUND = 0.3;

  private final ProgramOptions.Job job;
  private final MetalAnswer answer;
  private final String title;
  private final Solid solid;
  private final Mesh mesh;

  /**
   * How the picture is wanted.
   *
   * @param view where from
   * @param section where it is cut open
   * @param close hole that is looked at
   * @param byTool whether tools have colours
   */
  record Wish(View view, Optional<SectionOption> section, Optional<Hole> close, boolean byTool) {}

  /** Makes the surface. */
  MetalDrawing(ProgramOptions.Job job, MetalAnswer answer, String title) {
    this.job = job;
    this.answer = answer;
    this.title = title;
    solid = answer.metal().at(answer.moves());
    int threads = Runtime.getRuntime().availableProcessors();
    mesh = new Meshing(threads, MetalScene.OPEN_STEP, Halt.NEVER).mesh(solid);
  }

  /** Refuses an ending that says no form of mesh. */
  static void checkEnding(Path file) throws RequestException {
    String name = file.toString().toLowerCase(Locale.ROOT);
    if (!name.endsWith(".stl") && !name.endsWith(".glb")) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ04,
              Place.file(""),
              "mesh " + file + " has neither ending .stl nor .glb",
              "the ending says how it is written",
              "name it " + file + ".stl"));
    }
  }

  /** Writes the surface in the form that the file's ending says. */
  void writeMesh(Path file) throws RequestException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      if (file.toString().toLowerCase(Locale.ROOT).endsWith(".stl")) {
        StlFile.write(mesh, bytes);
      } else {
        writeGlb(bytes);
      }
    } catch (IOException e) {
      throw RequestException.failed(
          Finding.of(Code.RQ03, Place.file(file.toString()), e.getMessage(), "", ""));
    }
    OutputFile.write(file, bytes.toByteArray());
  }

  private void writeGlb(ByteArrayOutputStream bytes) throws IOException {
    SetupSheet sheet = job.sheet();
    Tape tape = job.interpretation().tape();
    List<Paint> paints = new ArrayList<>();
    Map<Integer, Integer> groups = new HashMap<>();
    paints.add(new Paint("skin of the stock", 0.56, 0.57, 0.58));
    for (int number : answer.byTool().keySet()) {
      groups.put(number, paints.size());
      paints.add(new Paint(ToolNames.of(sheet, number), 0.77, 0.78, 0.78));
    }
    GlbFile.write(
        mesh,
        paints,
        maker -> maker == Crossing.STOCK ? 0 : groups.getOrDefault(tape.state(maker).tool(), 0),
        bytes);
  }

  /**
   * The picture.
   *
   * @throws RequestException if there is no OpenGL
   */
  byte[] png(Wish wish, int width, int height, Theme theme) throws RequestException {
    Scene ground =
        new Scene(job.interpretation().tape(), job.sheet(), title)
            .withMajorDiameters(job.majorDiameters());
    Extents subject = subject(ground, wish);
    MetalScene metal = new MetalScene(ground, mesh, solid, wish.byTool());
    if (answer.moves() == job.interpretation().tape().size()) {
      Camera camera = BodyPicture.camera(wish.view(), subject, width, height);
      for (ThreadAnswer thread : job.gauge().threads()) {
        metal.addWall(thread, camera.millimetresPerPixel());
      }
    }
    BodyScene scene =
        wish.section().isPresent()
            ? metal.cut(plane(wish.section().get(), wish.view()))
            : metal.whole();
    try {
      return BodyPicture.png(scene, wish.view(), subject, width, height, theme);
    } catch (NoOpenGlException e) {
      throw PictureOptions.refused(e);
    }
  }

  private static Extents subject(Scene ground, Wish wish) {
    Extents stock = ground.setup().stock().orElseThrow().box();
    if (wish.close().isEmpty()) {
      return stock;
    }
    Hole hole = wish.close().get();
    double half = hole.diameter() * (0.5 + ROUND);
    double deep = hole.threadDepth().or(hole::depth).orElse(hole.top() - stock.min().z());
    double below = Math.max(stock.min().z(), hole.top() - deep - ROUND * hole.diameter());
    return new Extents(
        new Point(hole.x() - half, hole.y() - half, below),
        new Point(hole.x() + half, hole.y() + half, hole.top()));
  }

  /** The plane, its normal to the eye: what lies before it is taken away. */
  private static SectionPlane plane(SectionOption section, View view) {
    double[] normal = new double[3];
    normal[section.axis()] = new Camera(view).eye(section.axis()) < -1e-9 ? -1 : 1;
    double[] place = new double[3];
    place[section.axis()] = section.place();
    return SectionPlane.through(place[0], place[1], place[2], normal[0], normal[1], normal[2]);
  }
}
