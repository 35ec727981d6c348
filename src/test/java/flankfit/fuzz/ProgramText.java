package flankfit.fuzz;

import java.nio.charset.StandardCharsets;

/**
 * A whole plausible program with its sheet: threads, contours with compensation, cycles, loops,
 * subprograms, macros, transforms, one after the other.
 */
final class ProgramText {
  private static final String MORE =
      "O8000\nG91 G1 X1.\nX-1.\nG90\nM99\nO8001\n#100=#100+#1\nM99\n";

  /** Blocks that a program with the usual loop-limit may run; the work is counted against time. */
  private static final int MANY_BLOCKS = 60_000;

  private final Choices choices;
  private final StringBuilder out = new StringBuilder();
  private final StringBuilder programs = new StringBuilder();
  private int nextProgram = 100;
  private int nextLabel = 10;

  private ProgramText(Choices choices) {
    this.choices = choices;
  }

  static FuzzCase of(byte[] bytes) {
    Choices choices = new Choices(bytes);
    int blocks = choices.oneIn(16) ? MANY_BLOCKS : 2500;
    String sheet = SheetText.of(choices, blocks);
    String program = new ProgramText(choices).text();
    return new FuzzCase(program.getBytes(StandardCharsets.UTF_8), sheet, MORE);
  }

  private String text() {
    out.append("%\nO1 (FUZZ)\n");
    out.append(choices.of("G21", "G21", "G21", "G20")).append(" G17 G40 G49 G80 G90 G94\nT4 M6\n");
    out.append("G54 G0 X0. Y0. S2200 M3\nG43 H4 Z5. M8\nF200.\n");
    int sections = choices.between(1, 9);
    for (int i = 0; i < sections && !choices.isEmpty(); i++) {
      section(0);
    }
    out.append(choices.of("G0 Z50.\nM30\n", "G91 G28 Z0.\nG90\nM30\n", "M2\n", "M99\n", ""));
    out.append(programs).append(choices.of("%\n", ""));
    return out.toString();
  }

  private void section(int depth) {
    int kind = choices.below(depth < 3 ? 15 : 9);
    switch (kind) {
      case 0 -> thread();
      case 1 -> contour();
      case 2 -> cycle();
      case 3 -> lines();
      case 4 -> arcs();
      case 5 -> settings();
      case 6 -> returns();
      case 7 -> assignments();
      case 8 ->
          out.append(choices.of("G4 P1.5\n", "M9\n", "M0\n", "/G0 Z9.\n", "M1\n", "M5\nM3\n"));
      case 9 -> transformed(depth);
      case 10 -> whileLoop(depth);
      case 11 -> gotoLoop(depth);
      case 12 -> call(depth);
      case 13 -> macro(depth);
      default -> modal(depth);
    }
  }

  private String p() {
    return choices.oneIn(60) ? Numbers.value(choices) : Numbers.plain(choices);
  }

  private void thread() {
    String r = choices.of("1.5", "1.3", "3.", "0.5", "6.");
    String q = choices.of("0.188", "0.375", "0.", "-0.1");
    out.append("G90 G0 X0 Y0\nG1 Z-")
        .append(choices.of("17.", "12.", "3.5"))
        .append(" F1000.\nG91\n");
    out.append("G41 D").append(choices.of("4", "4", "1", "9")).append(" G1 X").append(r);
    out.append(" Y-").append(r).append(" F400.\n");
    out.append("G3 X").append(r).append(" Y").append(r).append(" Z").append(q).append(" J");
    out.append(r).append(" F120.\n");
    int turns = choices.between(1, 5);
    String rise = choices.of("1.5", "1.25", "1.953125", "3.", "-1.5", "1.");
    for (int i = 0; i < turns; i++) {
      out.append("G3 I-[2*").append(r).append("] Z").append(rise).append('\n');
    }
    out.append("G3 X-").append(r).append(" Y").append(r).append(" Z").append(q).append(" I-");
    out.append(r).append('\n');
    out.append(choices.of("G1 G40 X-", "G40 G1 X-", "G1 X-")).append(r).append(" Y-");
    out.append(r).append("\nG90\n");
  }

  private void contour() {
    out.append("G90 G1 Z-").append(Numbers.length(choices)).append('\n');
    out.append(choices.of("G41 D1", "G42 D1", "G41 D4", "G42 D4", "G41 D9")).append(" G1");
    out.append(" X").append(p()).append(" Y").append(p()).append('\n');
    int elements = choices.between(1, 12);
    for (int i = 0; i < elements; i++) {
      element();
    }
    out.append(choices.of("G40 G1 X", "G40\nX", "G0 G40 X", "X", "G40 G3 R9. X"));
    out.append(p()).append(" Y").append(p()).append('\n');
  }

  private void element() {
    switch (choices.below(8)) {
      case 0 -> arc();
      case 1 -> out.append("Z").append(p()).append('\n');
      case 2 -> out.append(choices.of("M8\n", "G4 X.5\n", "Z-1.\nZ-2.\n", "(stay)\n", "#1=3\n"));
      case 3 -> out.append("G0 X").append(p()).append('\n');
      default -> out.append("G1 X").append(p()).append(" Y").append(p()).append('\n');
    }
  }

  private void arc() {
    out.append(choices.of("G2", "G3"));
    switch (choices.below(8)) {
      case 0 -> out.append(" X").append(p()).append(" Y").append(p()).append(" R");
      case 1 -> out.append(" G91 X").append(Numbers.plain(choices)).append("5 R-");
      case 2, 3 -> out.append(" Z").append(p()).append(" I");
      case 4 -> out.append(" G91 X7.5 Y7.5 I7.5 J0 (");
      default -> halfCircle();
    }
    out.append(choices.of("40.", "45.", "75", "28.2842712"));
    out.append(out.lastIndexOf("(") > out.lastIndexOf("\n") ? ")\nG90\n" : "\nG90\n");
  }

  /** A half circle by a distance, which always closes. */
  private void halfCircle() {
    String r = Numbers.length(choices);
    out.append(" G91 Y[2*").append(r).append("] J").append(r).append(" (");
  }

  private void arcs() {
    out.append(choices.of("G17", "G18", "G19", "G91.1", "G90.1", "G95 F.1", "G95 F.2", "G94 F90."));
    out.append('\n');
    int count = choices.between(1, 4);
    for (int i = 0; i < count; i++) {
      arc();
    }
    out.append("G17 G91.1 G94 G90\n");
  }

  private void lines() {
    int count = choices.between(1, 8);
    out.append(choices.of("G1", "G0", "G1 G91", "G0 G91", "G53 G0")).append('\n');
    for (int i = 0; i < count; i++) {
      out.append(choices.of("X", "Y", "Z")).append(p()).append('\n');
    }
    out.append("G90\n");
  }

  private void cycle() {
    out.append(choices.of("", "", "G91 ", choices.of("G18 ", "G19 ")))
        .append(choices.of("G98 ", "G99 "));
    out.append(
        choices.of(
            "G81", "G82", "G83", "G73", "G84", "G74", "G85", "G86", "G76", "G87", "G88", "G89"));
    out.append(" X")
        .append(p())
        .append(" Y")
        .append(p())
        .append(" Z-")
        .append(Numbers.length(choices));
    out.append(" R").append(choices.of("2.", "5.", "2.", "0", "-3."));
    out.append(choices.of(" Q1.", " Q.1", " Q.5 P.2", " Q9. P1.", " I.5 J.5", " Q1. K-2.", ""));
    out.append(choices.of("", "", " L3", " K3", " L0", " L30")).append('\n');
    int more = choices.below(4);
    for (int i = 0; i < more; i++) {
      out.append(choices.of("X", "Y", "X5. Y", "Z")).append(p());
      out.append(choices.of("", " L2", " R1.", " G98")).append('\n');
    }
    out.append(choices.of("G80\n", "G0\n", "G1\n", "")).append("G17 G90\n");
  }

  private void settings() {
    String way = choices.of("G10 L2 P1 X", "G10 L20 P2 X", "G52 X", "G92 X", "G10 L12 P4 R");
    out.append(way).append(p()).append('\n');
    out.append(
        choices.of(
            "G55\n",
            "G54.1 P7\n",
            "G59.1\n",
            "G92.1\n",
            "G92.2\n",
            "G92.3\n",
            "G20\n",
            "G21\n",
            "G49\n",
            "G43 H2 Z9.\n",
            "G52 X0 Y0 Z0\n",
            "G54\n",
            "T2 M6\n",
            "T4\nM6\n"));
  }

  private void returns() {
    out.append(choices.of("G28 Z", "G91 G28 Z", "G30 X", "G30 P3 Z", "G53 G0 Z", "G28 X0 Y"));
    out.append(p()).append("\nG90\n");
  }

  private void assignments() {
    out.append('#').append(choices.between(1, 5)).append('=');
    out.append(Numbers.expression(choices, 1)).append('\n');
    out.append("IF[").append(Numbers.condition(choices)).append("]THEN #2=#1+1\n");
  }

  private void transformed(int depth) {
    switch (choices.below(4)) {
      case 0 -> out.append("G68 X").append(p()).append(" Y").append(p()).append(" R30.\n");
      case 1 ->
          out.append("G51 X0 Y0 Z0 P").append(choices.of("2.", ".5", "1", "100.")).append('\n');
      case 2 -> out.append("G51 I2. J1. K1.\n");
      default -> out.append("G51.1 ").append(choices.of("X0", "Y0", "X5. Y0", "Z0")).append('\n');
    }
    section(depth + 1);
    out.append(choices.of("G69 G50 G50.1\n", "G69\n", "G50\n", "G50.1\n"));
  }

  private void whileLoop(int depth) {
    int number = Math.min(3, depth + 1);
    String counter = "#" + (10 + depth);
    out.append(counter).append("=0\nWHILE[").append(counter).append(" LT ");
    out.append(choices.of("3", "5", "40", "1000")).append("]DO").append(number).append('\n');
    section(depth + 1);
    out.append(counter)
        .append('=')
        .append(counter)
        .append('+')
        .append(choices.of("1", "1", ".5", "0"));
    out.append("\nEND").append(number).append('\n');
  }

  private void gotoLoop(int depth) {
    int label = nextLabel++;
    out.append("#20=0\nN").append(label).append('\n');
    section(depth + 1);
    out.append("#20=#20+1\nIF[#20 LT ").append(choices.of("2", "9", "300")).append("]GOTO");
    out.append(choices.oneIn(8) ? label + 1 : label).append('\n');
  }

  private void call(int depth) {
    int number = subprogram(depth);
    out.append("M98 P").append(number).append(choices.of("", " L2", " L9", " L0")).append('\n');
    out.append(choices.of("", "", "M98 P8000\n", "M98 P30100\n"));
  }

  private void macro(int depth) {
    int number = subprogram(depth);
    out.append("G65 P").append(number).append(" A").append(p()).append(" B").append(p());
    out.append(choices.of("", " L2", " Z-3. R2.")).append('\n');
  }

  private void modal(int depth) {
    int number = subprogram(depth);
    out.append("G66 P").append(choices.oneIn(3) ? 8001 : number).append(" A1.\n");
    section(depth + 2);
    out.append("G67\n");
  }

  /** Writes a subprogram behind the main program; its number. */
  private int subprogram(int depth) {
    int number = nextProgram++;
    int from = out.length();
    section(depth + 1);
    if (choices.oneIn(6)) {
      out.append("M98 P").append(choices.between(100, 104)).append('\n');
    }
    programs.append('O').append(number).append('\n').append(out, from, out.length());
    programs.append(choices.of("M99\n", "M99\n", "M99\n", "M99 P10\n", ""));
    out.setLength(from);
    return number;
  }
}
