package flankfit.metal;

import flankfit.setup.Tool;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Tools of every kind for tests. */
final class SampleTools {
  private SampleTools() {}

  static Tool tool(int number, Tool.Kind kind, double diameter, double flute) {
    return tool(number, kind, diameter, flute, Math.PI, 0, Optional.empty());
  }

  static Tool tool(
      int number,
      Tool.Kind kind,
      double diameter,
      double flute,
      double point,
      double corner,
      Optional<Tool.Teeth> teeth) {
    return new Tool(
        number,
        kind,
        false,
        diameter,
        2,
        teeth,
        point,
        corner,
        flute,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        0,
        "carbide",
        0);
  }

  static Tool threadMill(int number, double diameter, int rows, double pitch) {
    return tool(
        number,
        Tool.Kind.THREAD_MILL,
        diameter,
        (rows + 0.5) * pitch + 1,
        Math.PI,
        0,
        Optional.of(
            new Tool.Teeth(
                rows,
                Optional.of(pitch),
                Math.PI / 6,
                pitch / 8,
                new Tool.CutterForm.Straight(),
                pitch)));
  }

  /** A mill ground for a thread. */
  static Tool groundMill(int number, double diameter, int rows, double pitch, String thread) {
    return tool(
        number,
        Tool.Kind.THREAD_MILL,
        diameter,
        (rows + 0.5) * pitch + 1,
        Math.PI,
        0,
        Optional.of(
            new Tool.Teeth(
                rows,
                Optional.of(pitch),
                Math.PI / 6,
                pitch / 8,
                new Tool.CutterForm.GroundFor(thread, false),
                pitch)));
  }

  /** A body of any kind, sizes at random. */
  static ToolBody any(Random random) {
    double d = 2 + 6 * random.nextDouble();
    double flute = 3 + 6 * random.nextDouble();
    double point = 1 + 1.5 * random.nextDouble();
    return ToolBody.of(
        switch (random.nextInt(6)) {
          case 0 -> tool(1, Tool.Kind.END_MILL, d, flute);
          case 1 -> tool(1, Tool.Kind.BALL_MILL, d, flute, Math.PI, d / 2, Optional.empty());
          case 2 -> tool(1, Tool.Kind.BULL_NOSE_MILL, d, flute, Math.PI, d / 5, Optional.empty());
          case 3 -> tool(1, Tool.Kind.DRILL, d, flute, point, 0, Optional.empty());
          case 4 -> threadMill(1, d, 1 + random.nextInt(4), 0.8);
          default ->
              tool(
                  1,
                  Tool.Kind.THREAD_MILL,
                  d,
                  flute,
                  Math.PI,
                  0,
                  Optional.of(
                      new Tool.Teeth(
                          2,
                          Optional.of(1.0),
                          0.5,
                          0.1,
                          new Tool.CutterForm.Measured(
                              List.of(
                                  List.of(-0.6, d / 2 - 0.5),
                                  List.of(-0.1, d / 2),
                                  List.of(0.05, d / 2),
                                  List.of(0.5, d / 2 - 0.6))),
                          0.7)));
        });
  }
}
