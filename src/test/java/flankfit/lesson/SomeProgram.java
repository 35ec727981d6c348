package flankfit.lesson;

import java.math.BigDecimal;
import java.util.Random;

/**
 * A seeded program of lines, arcs, helices, cycles, compensation and calls, in words of both modes,
 * written in one of several manners. Coordinates are whole counts of the least increment.
 */
final class SomeProgram {
  private static final String AXES = "XYZ";

  private final Random random;
  private final StringBuilder out = new StringBuilder();
  private final String gap;
  private final boolean bare;
  private final int decimals;
  private final long[] at = new long[3];
  private boolean absolute = true;
  private boolean called;

  private SomeProgram(long seed) {
    random = new Random(seed);
    gap = random.nextBoolean() ? " " : "";
    bare = random.nextBoolean();
    decimals = random.nextInt(3) == 0 ? 4 : 3;
  }

  static String of(long seed) {
    return new SomeProgram(seed).text();
  }

  private String text() {
    out.append("%\nO10 (BRACKET, DRAWN BY NOBODY)\n");
    out.append(decimals == 4 ? "G20" : "G21").append(" G17 G40 G49 G80 G94\n");
    out.append("G54 S1000 M3 F200.\n");
    out.append(words("G90 G0", "X0.", "Y0.", "Z5.")).append('\n');
    at[2] = pow(5);
    int count = 5 + random.nextInt(25);
    for (int i = 0; i < count; i++) {
      piece();
    }
    mode(true);
    out.append(random.nextBoolean() ? "G91 G28 Z0.\nG90\nM30\n" : "G0 Z50.\nM30\n");
    if (called) {
      out.append("O20\nG91 G1 X1. Y-.5\nG3 Y1. J.5\nG1 X-1.\nY-.5\nG90\nM99\n");
    }
    return out.append("%\n").toString();
  }

  private long pow(long units) {
    return units * (decimals == 4 ? 10_000 : 1000);
  }

  private void piece() {
    switch (random.nextInt(12)) {
      case 0 -> out.append("(ROUND THE PORT, Ø 12)\n");
      case 1 -> toggle();
      case 2 -> out.append("\n");
      case 3 -> cycle();
      case 4 -> compensated();
      case 5 -> call();
      case 6 -> turn();
      case 7, 8 -> arc();
      default -> line();
    }
  }

  private void toggle() {
    mode(!absolute);
  }

  private void mode(boolean wanted) {
    if (wanted != absolute) {
      absolute = wanted;
      out.append(wanted ? "G90\n" : "G91\n");
    }
  }

  private String words(String... parts) {
    return String.join(gap, parts);
  }

  private String number(long counts) {
    String text = BigDecimal.valueOf(counts, decimals).stripTrailingZeros().toPlainString();
    if (bare) {
      text = text.replaceFirst("^(-?)0\\.", "$1.");
    }
    return text.contains(".") ? text : text + ".";
  }

  private String word(int axis, long to) {
    long value = absolute ? to : to - at[axis];
    at[axis] = to;
    return AXES.charAt(axis) + number(value);
  }

  private long some(long units) {
    return random.nextLong(2 * pow(units)) - pow(units);
  }

  private void line() {
    out.append(number()).append(random.nextBoolean() ? "G1" : "G0");
    int axes = 1 + random.nextInt(7);
    for (int axis = 0; axis < 3; axis++) {
      if ((axes & (1 << axis)) != 0) {
        out.append(gap).append(word(axis, some(40)));
      }
    }
    out.append(random.nextInt(4) == 0 ? gap + "(TO THE NEXT)" : "").append('\n');
  }

  private String number() {
    return random.nextInt(3) == 0 ? "N" + (10 + out.length()) + gap : "";
  }

  /** A half or quarter arc, by centre or radius. */
  private void arc() {
    long r = 1 + random.nextLong(pow(9));
    boolean half = random.nextBoolean();
    long x = at[0] + (half ? 2 * r : r);
    long y = at[1] + (half ? 0 : r);
    boolean helix = random.nextBoolean();
    String centre =
        half || random.nextBoolean() ? gap + "I" + number(r) + gap + "J0." : gap + "R" + number(r);
    String sense = half ? random.nextBoolean() ? "G2" : "G3" : "G2";
    out.append(number()).append(sense).append(gap).append(word(0, x));
    out.append(gap).append(word(1, y));
    if (helix) {
      out.append(gap).append(word(2, at[2] + some(2)));
    }
    out.append(centre).append('\n');
  }

  private void turn() {
    out.append("G3").append(gap).append("I-").append(number(1 + random.nextLong(pow(9))));
    out.append(gap).append(word(2, at[2] + some(2))).append('\n');
  }

  private void cycle() {
    long initial = at[2];
    long level = initial - pow(2);
    long depth = level - 1 - random.nextLong(pow(9));
    out.append(random.nextBoolean() ? "G98" : "G99").append('\n');
    boolean back = out.toString().endsWith("G98\n");
    out.append(random.nextBoolean() ? "G81" : "G83" + gap + "Q" + number(pow(3)));
    out.append(gap).append(word(0, some(40))).append(gap).append(word(1, some(40)));
    out.append(gap).append("Z").append(number(absolute ? depth : depth - level));
    out.append(gap).append("R").append(number(absolute ? level : level - initial)).append('\n');
    at[2] = back ? initial : level;
    for (int i = random.nextInt(3); i > 0; i--) {
      out.append(word(0, some(40))).append('\n');
      if (random.nextBoolean()) {
        toggle();
      }
    }
    out.append("G80\n");
  }

  /** Round a rectangle on its left, well beyond the radius. */
  private void compensated() {
    long side = pow(20) + random.nextLong(pow(20));
    out.append("G41 D1 G1").append(gap).append(word(0, at[0] + pow(15))).append('\n');
    out.append(word(1, at[1] + side)).append('\n');
    out.append(word(0, at[0] - side)).append('\n');
    if (random.nextBoolean()) {
      toggle();
    }
    out.append(word(1, at[1] - side)).append('\n');
    out.append("G40 G1").append(gap).append(word(0, at[0] - pow(15))).append('\n');
  }

  private void call() {
    // An incremental subprogram called from two places has no absolute words.
    if (!called) {
      called = true;
      mode(true);
      out.append("M98 P20\n");
    }
  }
}
