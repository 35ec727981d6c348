package flankfit.bench;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Makes a three-axis surfacing program: one line a block, as a CAM system's post writes it. */
final class Surfacing {
  private Surfacing() {}

  /**
   * The program's bytes.
   *
   * @param blocks number of motion blocks
   */
  static byte[] program(int blocks) {
    String head = "%\nG21 G17 G40 G49 G80 G90 G94\nG54 G0 X0. Y0. S9000 M3\nZ5.\nG1 Z0. F2500.\n";
    return program(head, blocks, "G0 Z50.\nM30\n%\n");
  }

  /** The bytes of such a program between blocks of one's own. */
  static byte[] program(String before, int blocks, String after) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(blocks * 26 + 200);
    byte[] head = before.getBytes(StandardCharsets.US_ASCII);
    out.write(head, 0, head.length);
    StringBuilder line = new StringBuilder();
    int perRow = 1000;
    for (int i = 0; i < blocks; i++) {
      int row = i / perRow;
      int step = row % 2 == 0 ? i % perRow : perRow - 1 - i % perRow;
      double x = step * 0.1;
      double y = row * 0.05;
      double z = -2 + StrictMath.sin(x / 7) * StrictMath.cos(y / 5);
      line.setLength(0);
      number(line.append('X'), x);
      number(line.append('Y'), y);
      number(line.append('Z'), z);
      line.append('\n');
      for (int k = 0; k < line.length(); k++) {
        out.write(line.charAt(k));
      }
    }
    byte[] tail = after.getBytes(StandardCharsets.US_ASCII);
    out.write(tail, 0, tail.length);
    return out.toByteArray();
  }

  private static void number(StringBuilder line, double value) {
    long tenThousandths = Math.round(value * 10000);
    if (tenThousandths < 0) {
      line.append('-');
      tenThousandths = -tenThousandths;
    }
    line.append(tenThousandths / 10000).append('.');
    long rest = tenThousandths % 10000;
    line.append((char) ('0' + rest / 1000))
        .append((char) ('0' + rest / 100 % 10))
        .append((char) ('0' + rest / 10 % 10))
        .append((char) ('0' + rest % 10));
  }
}
