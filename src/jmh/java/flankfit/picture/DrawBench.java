package flankfit.picture;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.lwjgl.opengl.GL33C;

/**
 * Frames a second of a long path at 1920 x 1080 with a context that has no window. The path is a
 * surface milled in rows, turned a little from frame to frame so that each is drawn anew. Beside it
 * stands the rate at which the same buffer goes through a vertex program that draws nothing.
 *
 * <p>Not with JMH: a context belongs to one thread, and what counts is the frame as it ends.
 */
public final class DrawBench {
  private static final int WIDTH = 1920;
  private static final int HEIGHT = 1080;
  private static final int FRAMES = 40;
  private static final int UNTIMED = 10;
  private static final int PER_ROW = 2500;
  private static final double PIXEL = 1e-6;

  private DrawBench() {}

  /** Measures paths of so many chords; 100 000 and 5 million if none are named. */
  public static void main(String[] args) throws NoOpenGlException {
    int[] chords = {100_000, 5_000_000};
    if (args.length > 0) {
      chords = Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    }
    for (int number : chords) {
      measure(number);
    }
  }

  private static Tape surface(int moves) {
    TapeBuilder tape = new TapeBuilder(new Point(0, 0, 20), new double[] {9000, 9000, 9000});
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    for (int i = 0; i < moves; i++) {
      int row = i / PER_ROW;
      int step = row % 2 == 0 ? i % PER_ROW : PER_ROW - 1 - i % PER_ROW;
      double x = step * 0.08;
      double y = row * 0.1;
      double z = -2 + StrictMath.sin(x / 9) * StrictMath.cos(y / 7);
      tape.straight(MoveKind.LINE, x, y, z, i + 2, i + 2, state);
    }
    return tape.build();
  }

  private static void measure(int chords) throws NoOpenGlException {
    Scene scene = new Scene(surface(chords), SetupSheet.empty(), "");
    try (GlContext context = GlContext.open(false);
        RenderTarget target = new RenderTarget(WIDTH, HEIGHT, 0)) {
      String card = GL33C.glGetString(GL33C.GL_RENDERER);
      boolean processor = card != null && card.toLowerCase(Locale.ROOT).contains("llvmpipe");
      System.out.println(chords + " chords, " + card);
      Camera camera = new Camera(View.ISO);
      camera.resize(WIDTH, HEIGHT);
      camera.fit(scene.bounds(), Insets.ofWindow(1).widened(18));
      target.bind();
      window(scene, camera, processor ? 0 : 4);
      buffer(scene, camera, target);
      context.requireNoError();
    }
  }

  /** As the window draws it: fewer chords where several fall into one pixel. */
  private static void window(Scene scene, Camera camera, int samples) {
    try (LivePicture picture = new LivePicture(1, samples)) {
      do {
        frame(picture, scene, camera);
      } while (picture.isUnfinished());
      double[] times = new double[FRAMES];
      for (int i = -UNTIMED; i < FRAMES; i++) {
        camera.turn(camera.azimuth() + 0.01, camera.elevation());
        long start = System.nanoTime();
        frame(picture, scene, camera);
        times[Math.max(0, i)] = (System.nanoTime() - start) / 1e6;
      }
      row("the window's picture, turned", times);
    }
  }

  private static void frame(LivePicture picture, Scene scene, Camera camera) {
    picture.draw(scene, camera, Theme.LIGHT, LengthUnit.MILLIMETRE, Insets.ofWindow(1));
    GL33C.glFinish();
  }

  /** All chords, whether they can be told apart or not. */
  private static void buffer(Scene scene, Camera camera, RenderTarget target) {
    try (PathDrawing path = new PathDrawing(scene, 0, PIXEL, PIXEL);
        LinePen pen = new LinePen(1);
        ShaderProgram reference = new ShaderProgram("vertexrate")) {
      while (!path.isComplete(scene)) {
        path.extend(scene, Long.MAX_VALUE);
      }
      LineBatch lines = path.actual();
      float[] toClip = new float[16];
      camera.writeClip(scene.origin(), 1e4, toClip);
      target.bind();
      GL33C.glViewport(0, 0, WIDTH, HEIGHT);
      GL33C.glEnable(GL33C.GL_DEPTH_TEST);
      GL33C.glDepthFunc(GL33C.GL_LEQUAL);
      System.out.println("  texels in graphics memory: " + lines.uploaded());
      Map<String, Integer> phases = new TreeMap<>();
      phases.put("lines", LinePen.CORE);
      phases.put("their soft edges", LinePen.FRINGE);
      phases.forEach(
          (name, phase) ->
              timed(
                  name,
                  () -> {
                    pen.use(camera, toClip);
                    pen.pass(lines, phase, toClip);
                  }));
      timed(
          "vertex program that draws nothing",
          () -> {
            reference.use();
            lines.draw(reference, toClip, 0, 0);
          });
    }
  }

  private static void timed(String what, Runnable draw) {
    double[] times = new double[FRAMES];
    for (int i = -UNTIMED; i < FRAMES; i++) {
      GL33C.glClear(GL33C.GL_COLOR_BUFFER_BIT | GL33C.GL_DEPTH_BUFFER_BIT);
      GL33C.glFinish();
      long start = System.nanoTime();
      draw.run();
      GL33C.glFinish();
      times[Math.max(0, i)] = (System.nanoTime() - start) / 1e6;
    }
    row(what, times);
  }

  private static void row(String what, double[] times) {
    Arrays.sort(times);
    double middle = times[times.length / 2];
    System.out.println(
        String.format(
            Locale.ROOT,
            "  %-36s %9.2f ms (%.2f to %.2f), %8.1f frames/s",
            what,
            middle,
            times[0],
            times[times.length - 1],
            1000 / middle));
  }
}
