package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The worked entries of section 11.8: two ways to program, three registers, one motion each. */
class WorkedEntriesPublishedTest {
  private static final double PRINTED = 2e-6;
  private static final int CCW = 1;

  @ParameterizedTest(name = "{0}, {1}, D {2}")
  @CsvFileSource(resources = "worked-entries.csv", delimiter = ';', useHeadersInDisplayName = true)
  void tool_ends_each_move_where_the_table_says(
      String entry, String path, double offset, String positions, double radius) {
    double wall = path.equals("contour") ? 7 : 0;
    Contour.Run run = program(entry, wall, offset).run();
    Tape tape = run.tape();
    List<String> expected = List.of(positions.split("\\|"));
    int first = tape.size() - expected.size();
    for (int i = 0; i < expected.size(); i++) {
      List<String> xyz = List.of(expected.get(i).split(" "));
      assertThat(tape.toX(first + i)).isCloseTo(Double.parseDouble(xyz.get(0)), within(PRINTED));
      assertThat(tape.toY(first + i)).isCloseTo(Double.parseDouble(xyz.get(1)), within(PRINTED));
      assertThat(tape.toZ(first + i)).isCloseTo(Double.parseDouble(xyz.get(2)), within(PRINTED));
    }
    int turn = entry.equals("straight") ? first + 1 : first + 2;
    assertThat(tape.kind(turn)).isEqualTo(MoveKind.ARC);
    assertThat(tape.radius(turn)).isCloseTo(radius, within(PRINTED));
    assertThat(tape.sweep(turn)).isEqualTo(2 * Math.PI);
    assertThat(run.findings()).isEmpty();
    TapeChecks.assertContinuous(tape);
  }

  private static Contour program(String entry, double wall, double offset) {
    double r = 3 + wall;
    double e = 1.5 + wall;
    return switch (entry) {
      case "straight" ->
          new Contour(0, 0, 5)
              .line(0, 0, -14)
              .on(offset)
              .line(r, 0, -14)
              .arc(CCW, r, 0, -12.5, -r, 0)
              .off()
              .line(0, 0, -12.5);
      case "quarter" ->
          new Contour(0, 0, 5)
              .line(0, 0, -14)
              .on(offset)
              .line(1.5, -e, -14)
              .arc(CCW, r, 0, -13.625, 0, e)
              .arc(CCW, r, 0, -12.125, -r, 0)
              .arc(CCW, 1.5, e, -11.75, -e, 0)
              .off()
              .line(0, 0, -11.75);
      case "half" ->
          new Contour(0, 1, 5)
              .line(0, 1, -14)
              .on(offset)
              .line(-wall, 0, -14)
              .arc(CCW, r, 0, -13.25, e, 0)
              .arc(CCW, r, 0, -11.75, -r, 0)
              .arc(CCW, -wall, 0, -11, -e, 0)
              .off()
              .line(0, 1, -11);
      default -> throw new IllegalArgumentException("entry must be one of the table: " + entry);
    };
  }
}
