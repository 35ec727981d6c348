package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.FrameChainWitness.Expected;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Programs that switch every link of the frame chain on and off in random order give the tape that
 * the matrices of {@link FrameChainWitness} give.
 */
class FrameChainProperties {
  private static final int PROGRAMS = 800;
  private static final int BLOCKS = 40;
  private static final double LINE = 1e-9;
  private static final double ARC = 1e-6;
  private static final double[] MACHINE_ZERO = {-40, 30, 250};
  private static final double[] REFERENCE = {-40, 35, 220};
  private static final double OWN_LENGTH = 82.5;
  private static final List<Plane> PLANES = List.of(Plane.XY, Plane.ZX, Plane.YZ);
  private static final String[] OFFSETS = {"G54", "G55", "G57", "G59", "G59.1", "G54.1 P2"};
  private static final SetupSheet SHEET =
      ExampleSheet.of(
          "G54 = [4.5, 2.25, -1.5], G55 = [30, -12.75, 2], G59.1 = [-8, 6, 11], "
              + "G54.1 P2 = [1.125, -30, 4], common = [0.5, -0.25, 0.125], "
              + "machine-zero = [-40, 30, 250], reference-point = [-40, 35, 220], "
              + "H1 = { geometry = 82.5, wear = 0.0 }, H2 = { geometry = 97.25, wear = -0.125 }, "
              + "H3 = { geometry = -61.5, wear = 0.5 }");

  private final StringBuilder text = new StringBuilder();
  private FrameChainWitness witness = new FrameChainWitness(REFERENCE, 0);
  private Random random = new Random();
  private boolean inch;
  private boolean absoluteCentre;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void tape_agrees_with_the_product_of_matrices(long seed) {
    random = new Random(seed);
    for (int i = 0; i < PROGRAMS; i++) {
      write();
      compare(tape());
    }
  }

  private Tape tape() {
    byte[] bytes = text.toString().getBytes(StandardCharsets.US_ASCII);
    SourceText source = SourceText.of("chain.nc", bytes);
    Interpretation result = Interpreter.replay(source, SHEET, List.of());
    assertThat(result.complete()).as("%s\n%s", result.stoppedAt(), text).isTrue();
    return result.tape();
  }

  private void compare(Tape tape) {
    assertThat(tape.size()).as("moves of\n%s", text).isEqualTo(witness.moves.size());
    for (int i = 0; i < tape.size(); i++) {
      Expected expected = witness.moves.get(i);
      boolean same = tape.kind(i) == expected.kind() && sameEnd(tape.to(i), expected.end());
      if (!same || (expected.kind() == MoveKind.ARC && !sameArc(tape, i, expected))) {
        assertThat(tape.kind(i) + " to " + tape.to(i))
            .as("move %d, line %d, of\n%s", i, tape.line(i), text)
            .isEqualTo(expected.toString());
      }
    }
  }

  private static boolean sameEnd(Point actual, Point expected) {
    return Math.abs(actual.x() - expected.x()) <= LINE
        && Math.abs(actual.y() - expected.y()) <= LINE
        && Math.abs(actual.z() - expected.z()) <= LINE;
  }

  private static boolean sameArc(Tape tape, int i, Expected expected) {
    Plane plane = expected.plane();
    return tape.state(i).plane() == plane
        && Math.abs(tape.centreU(i) - expected.centre().axis(plane.u())) <= ARC
        && Math.abs(tape.centreV(i) - expected.centre().axis(plane.v())) <= ARC
        && Math.abs(tape.radius(i) - expected.radius()) <= ARC
        && Math.abs(tape.sweep(i) - expected.sweep()) * expected.radius() <= ARC;
  }

  private void write() {
    text.setLength(0);
    inch = false;
    absoluteCentre = false;
    witness = new FrameChainWitness(REFERENCE, OWN_LENGTH);
    witness.offset("G54", 4.5, 2.25, -1.5);
    witness.offset("G55", 30, -12.75, 2);
    witness.offset("G59.1", -8, 6, 11);
    witness.offset("G54.1 P2", 1.125, -30, 4);
    witness.offset("common", 0.5, -0.25, 0.125);
    witness.length(1, 82.5, 0);
    witness.length(2, 97.25, -0.125);
    witness.length(3, -61.5, 0.5);
    text.append("G21 G90 G17 G54 G94 S900 M3\nT1 M6\n");
    for (int i = 0; i < BLOCKS; i++) {
      if (random.nextInt(5) < 2) {
        link();
      } else {
        motion();
      }
      text.append('\n');
    }
    text.append("M30\n");
  }

  private void motion() {
    switch (random.nextInt(8)) {
      case 0, 1 -> line(false);
      case 2, 3 -> line(true);
      case 4, 5, 6 -> arc();
      default -> machinePoint();
    }
  }

  private void line(boolean feed) {
    text.append(feed ? feed("G1") : "G0");
    witness.line(feed, axes(1, 4));
  }

  private String feed(String function) {
    return function + (inch ? " F9." : " F200.");
  }

  /** Words of some axes: coordinates or distances in the active unit. */
  private double[] axes(int least, int chance) {
    double[] words = {Double.NaN, Double.NaN, Double.NaN};
    int sure = least > 0 ? random.nextInt(3) : -1;
    for (int axis = 0; axis < 3; axis++) {
      if (axis == sure || random.nextInt(4) >= chance - 2) {
        words[axis] = word((char) ('X' + axis), random.nextInt(80_000) - 40_000, 1000);
      }
    }
    return words;
  }

  /** Writes a word and gives what it says (mm). */
  private double word(char letter, double value) {
    String number = String.format(Locale.ROOT, "%.9f", value);
    text.append(' ').append(letter).append(number);
    return Double.parseDouble(number) * (inch ? 25.4 : 1);
  }

  private double word(char letter, int value, double share) {
    return word(letter, value / share / (inch ? 20 : 1));
  }

  private void arc() {
    Plane plane = witness.plane;
    if (witness.factor[plane.u()] != witness.factor[plane.v()]) {
      line(true);
      return;
    }
    boolean full = random.nextInt(5) == 0;
    boolean anticlockwise = random.nextBoolean();
    double turn = full ? 2 * Math.PI : 0.3 + random.nextDouble() * 5.5;
    boolean byRadius = !full && random.nextInt(3) == 0 && Math.abs(turn - Math.PI) > 0.3;
    double sweep = anticlockwise ? turn : -turn;
    double unit = inch ? 25.4 : 1;
    double[] p = witness.programmed();
    double radius = (1 + random.nextInt(9_000) / 1000.0) * (inch ? 0.1 : 1);
    double direction = random.nextDouble() * 2 * Math.PI;
    double[] toCentre = new double[3];
    toCentre[plane.u()] = rounded(radius * Math.cos(direction));
    toCentre[plane.v()] = rounded(radius * Math.sin(direction));
    text.append(feed(anticlockwise ? "G3" : "G2"));
    double[] centre = p.clone();
    centre[plane.u()] += toCentre[plane.u()] * unit;
    centre[plane.v()] += toCentre[plane.v()] * unit;
    double[] words = {Double.NaN, Double.NaN, Double.NaN};
    if (!full) {
      double cos = Math.cos(sweep);
      double sin = Math.sin(sweep);
      double du = -toCentre[plane.u()];
      double dv = -toCentre[plane.v()];
      endWord(words, p, plane.u(), toCentre[plane.u()] + cos * du - sin * dv, unit);
      endWord(words, p, plane.v(), toCentre[plane.v()] + sin * du + cos * dv, unit);
    }
    if (random.nextBoolean()) {
      endWord(words, p, plane.n(), random.nextInt(4000) / 1000.0 - 2, unit);
    }
    if (byRadius) {
      word('R', Math.hypot(toCentre[plane.u()], toCentre[plane.v()]) * (turn > Math.PI ? -1 : 1));
    } else {
      for (int axis : new int[] {plane.u(), plane.v()}) {
        word((char) ('I' + axis), absoluteCentre ? centre[axis] / unit : toCentre[axis]);
      }
    }
    witness.arc(words, centre, sweep);
  }

  private void endWord(double[] words, double[] from, int axis, double way, double unit) {
    double value = witness.absolute ? from[axis] / unit + way : way;
    words[axis] = word((char) ('X' + axis), value);
  }

  private static double rounded(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }

  /** G53 or G28. */
  private void machinePoint() {
    double[] end = witness.tip.clone();
    if (random.nextBoolean() && witness.absolute) {
      text.append("G53 G0");
      double[] words = axes(1, 4);
      for (int axis = 0; axis < 3; axis++) {
        end[axis] = Double.isNaN(words[axis]) ? end[axis] : MACHINE_ZERO[axis] + words[axis];
      }
    } else {
      text.append("G28");
      double[] words = axes(1, 4);
      witness.straightTo(false, witness.aim(words));
      System.arraycopy(witness.tip, 0, end, 0, 3);
      for (int axis = 0; axis < 3; axis++) {
        end[axis] = Double.isNaN(words[axis]) ? end[axis] : REFERENCE[axis];
      }
    }
    witness.straightTo(false, end);
  }

  /** Switches one link on or off, or changes how words are read. */
  private void link() {
    switch (random.nextInt(16)) {
      case 0, 1 -> distance();
      case 2 -> plane();
      case 3 -> unit();
      case 4 -> centreMode();
      case 5, 6 -> mirror();
      case 7, 8 -> scale();
      case 9, 10 -> rotation();
      case 11 -> local();
      case 12 -> shift();
      case 13 -> workOffset();
      case 14 -> length();
      default -> data();
    }
  }

  private void distance() {
    witness.absolute = random.nextBoolean();
    text.append(witness.absolute ? "G90" : "G91");
  }

  private void plane() {
    if (!witness.scaled && !witness.rotated) {
      witness.plane = PLANES.get(random.nextInt(3));
      text.append(Wording.planeFunction(witness.plane));
    }
  }

  private void unit() {
    if (!witness.scaled && !witness.rotated) {
      inch = random.nextBoolean();
      text.append(inch ? "G20" : "G21");
    }
  }

  private void centreMode() {
    absoluteCentre = random.nextBoolean();
    text.append(absoluteCentre ? "G90.1" : "G91.1");
  }

  private void mirror() {
    boolean on = random.nextBoolean();
    text.append(on ? "G51.1" : "G50.1");
    double[] words = axes(on ? 1 : 0, 4);
    boolean all = Double.isNaN(words[0]) && Double.isNaN(words[1]) && Double.isNaN(words[2]);
    for (int axis = 0; axis < 3; axis++) {
      if (on && !Double.isNaN(words[axis])) {
        witness.mirror(axis, words[axis]);
      } else if (!on && (all || !Double.isNaN(words[axis]))) {
        witness.mirrored[axis] = false;
      }
    }
  }

  private void scale() {
    if (random.nextBoolean()) {
      text.append("G50");
      witness.endScale();
      return;
    }
    text.append("G51");
    double[] at = axes(0, 4);
    double[] by = {1, 1, 1};
    if (random.nextInt(3) > 0) {
      Arrays.fill(by, factor());
      text.append(" P").append(by[0]);
    } else {
      for (int axis = 0; axis < 3; axis++) {
        by[axis] = axis == 0 || random.nextBoolean() ? factor() : 1;
        text.append(by[axis] == 1 ? "" : " " + (char) ('I' + axis) + by[axis]);
      }
    }
    witness.scale(at, by);
  }

  private double factor() {
    return (4 + random.nextInt(12)) / 8.0 + 1 / 64.0;
  }

  private void rotation() {
    if (random.nextBoolean()) {
      text.append("G69");
      witness.rotated = false;
      return;
    }
    text.append("G68");
    double[] at = {Double.NaN, Double.NaN, Double.NaN};
    for (int axis : new int[] {witness.plane.u(), witness.plane.v()}) {
      if (random.nextBoolean()) {
        at[axis] = word((char) ('X' + axis), random.nextInt(40_000) - 20_000, 1000);
      }
    }
    double angle = random.nextInt(8) == 0 ? random.nextInt(9) * 90 - 360.0 : angle();
    text.append(" R").append(angle);
    witness.rotate(at, angle);
  }

  private double angle() {
    return Math.rint(random.nextDouble() * 7200) / 8 - 450;
  }

  private void local() {
    text.append("G52");
    double[] words = axes(1, 4);
    for (int axis = 0; axis < 3; axis++) {
      witness.local[axis] = Double.isNaN(words[axis]) ? witness.local[axis] : words[axis];
    }
  }

  private void shift() {
    int kind = random.nextInt(4);
    if (kind == 0 && !witness.suspended) {
      text.append("G92");
      witness.present(axes(1, 4));
    } else if (kind <= 1) {
      text.append("G92.1");
      witness.endShift();
    } else {
      witness.suspended = kind == 2;
      text.append(witness.suspended ? "G92.2" : "G92.3");
    }
  }

  private void workOffset() {
    String name = OFFSETS[random.nextInt(OFFSETS.length)];
    text.append(name);
    witness.select(name);
  }

  private void length() {
    int sign = random.nextInt(3) - 1;
    int register = 1 + random.nextInt(3);
    text.append(sign == 0 ? "G49" : (sign > 0 ? "G43 H" : "G44 H") + register);
    witness.lengthMode(sign, sign == 0 ? 0 : register);
  }

  /** G10: a work offset, the common one, or a length register. */
  private void data() {
    int register = 2 + random.nextInt(2);
    int kind = random.nextInt(4);
    if (kind >= 2) {
      text.append("G10 L").append(kind == 2 ? 10 : 11).append(" P").append(register);
      double value = word('R', random.nextInt(9000), 1000);
      double[] entry = witness.length(register);
      entry[kind - 2] = witness.absolute ? value : entry[kind - 2] + value;
      witness.length(register, entry[0], entry[1]);
      return;
    }
    int number = random.nextInt(7);
    String name = kind == 1 ? "G54.1 P2" : number == 0 ? "common" : "G" + (53 + number);
    text.append(kind == 1 ? "G10 L20 P2" : "G10 L2 P" + number);
    double[] words = axes(1, 4);
    double[] value = witness.offset(name);
    for (int axis = 0; axis < 3; axis++) {
      double zero = name.equals("common") ? 0 : MACHINE_ZERO[axis];
      if (!Double.isNaN(words[axis])) {
        value[axis] = witness.absolute ? zero + words[axis] : value[axis] + words[axis];
      }
    }
    witness.offset(name, value);
  }
}
