package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.unit.Angles;
import java.util.List;

/** Compares a tape with rows of the worked examples: rounded to 1e-6, compared to 2e-6. */
final class TapeRows {
  private static final double PRINTED = 2e-6;
  private static final int COLUMNS = 13;

  private TapeRows() {}

  /**
   * Rows of {@code line kind X Y Z plane cX cY cZ r sweep rise length ...}; a dash does not apply.
   */
  static void assertRows(Tape tape, String table) {
    List<String> rows = table.lines().filter(row -> !row.isBlank()).toList();
    assertThat(tape.size()).isEqualTo(rows.size());
    for (int i = 0; i < rows.size(); i++) {
      assertRow(tape, i, rows.get(i), List.of(rows.get(i).trim().split("\\s+")));
    }
    TapeChecks.assertContinuous(tape);
  }

  private static void assertRow(Tape tape, int i, String row, List<String> cells) {
    assertThat(cells).hasSizeGreaterThanOrEqualTo(COLUMNS);
    assertThat(tape.line(i)).as(row).isEqualTo(Integer.parseInt(cells.get(0)));
    assertThat(tape.kind(i).word()).as(row).isEqualTo(cells.get(1));
    near(row, tape.toX(i), cells.get(2));
    near(row, tape.toY(i), cells.get(3));
    near(row, tape.toZ(i), cells.get(4));
    if (tape.kind(i) == MoveKind.ARC) {
      assertThat(cells.get(5)).as("the rows of this table lie in XY").isEqualTo("XY");
      near(row, tape.centreU(i), cells.get(6));
      near(row, tape.centreV(i), cells.get(7));
      near(row, tape.fromZ(i), cells.get(8));
      near(row, tape.radius(i), cells.get(9));
      near(row, Angles.toDegrees(tape.sweep(i)), cells.get(10));
      near(row, tape.rise(i), cells.get(11));
    }
    if (tape.kind(i) == MoveKind.DWELL) {
      near(row, tape.seconds(i), cells.get(12).replace("s", ""));
    } else {
      near(row, tape.length(i), cells.get(12));
    }
  }

  private static void near(String row, double actual, String expected) {
    assertThat(actual).as(row).isCloseTo(Double.parseDouble(expected), within(PRINTED));
  }
}
