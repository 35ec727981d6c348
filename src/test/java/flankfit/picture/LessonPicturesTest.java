package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.Interpreter;
import flankfit.lesson.Step;
import flankfit.lesson.Steps;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Pictures of lessons: what is drawn in which hue, and that nothing leaves its panel. */
class LessonPicturesTest {
  private static final String PROGRAM =
      """
      G21 G90 G17 G54 F200. S1000 M3
      G0 X0 Y0 Z5.
      G1 X10. Y5.
      G91 G3 X4. Y4. I0 J4.
      G90
      G1 Z-3.
      G0 X900. Y-700.
      M30
      """;

  private static final Pattern POINT = Pattern.compile("(-?[0-9.]+),(-?[0-9.]+) ");

  private static SourceText source(String text) {
    return SourceText.of("p.nc", text.getBytes(StandardCharsets.UTF_8));
  }

  private static Tape tape(String text) {
    return Interpreter.replay(source(text), SetupSheet.empty(), List.of()).tape();
  }

  private static Step step(int line) {
    Steps steps = new Steps(SetupSheet.empty(), block -> block.place().line() == line);
    Interpreter.observe(source(PROGRAM), SetupSheet.empty(), List.of(), steps);
    return steps.all().get(0);
  }

  private static String svg(Diagram diagram) {
    return new String(DiagramFile.svg(diagram), StandardCharsets.UTF_8);
  }

  private static List<double[]> points(String svg, String colour) {
    List<double[]> points = new ArrayList<>();
    for (String line : svg.lines().filter(l -> l.contains("stroke=\"" + colour)).toList()) {
      Matcher point = POINT.matcher(line);
      while (point.find()) {
        points.add(
            new double[] {Double.parseDouble(point.group(1)), Double.parseDouble(point.group(2))});
      }
    }
    return points;
  }

  @Test
  void step_has_the_hue_of_its_mode_and_the_rest_is_pale() {
    String absolute = svg(StepPicture.of(tape(PROGRAM), step(3), "t", 420, 300));
    assertThat(points(absolute, "#0072B2")).isNotEmpty();
    assertThat(points(absolute, "#E69F00")).isEmpty();
    assertThat(absolute).contains(">zero<", ">end<").doesNotContain(">start<");
    String incremental = svg(StepPicture.of(tape(PROGRAM), step(4), "t", 420, 300));
    assertThat(points(incremental, "#E69F00").size()).isGreaterThan(5);
    assertThat(points(incremental, "#0072B2")).isEmpty();
    assertThat(incremental).contains(">start<", ">end<").doesNotContain(">zero<");
  }

  @Test
  void step_along_the_tool_is_seen_from_the_front() {
    String down = svg(StepPicture.of(tape(PROGRAM), step(6), "t", 420, 300));
    assertThat(down).contains("Z upwards").doesNotContain("Y upwards");
  }

  /** Half of the sheet each; the far rapid is cut off at the edge of its panel. */
  @Test
  void paths_stay_within_their_panels() {
    Tape wrong = tape(PROGRAM.replace("G90\nG1 Z", "G1 Z"));
    String svg =
        svg(
            PartingPicture.of(
                tape(PROGRAM),
                wrong,
                "head",
                "why",
                LengthUnit.MILLIMETRE,
                1200,
                800,
                Theme.LIGHT));
    List<double[]> moves = points(svg, "#0072B2");
    moves.addAll(points(svg, "#E69F00"));
    assertThat(moves).hasSizeGreaterThan(20);
    assertThat(moves)
        .allSatisfy(
            p -> {
              assertThat(p[0]).isBetween(69.9, 1130.1);
              assertThat(p[0] < 559.1 || p[0] > 640.9).isTrue();
              assertThat(p[1]).isBetween(100.0, 740.0);
            });
    assertThat(svg).contains("as written", "word forgotten");
  }
}
