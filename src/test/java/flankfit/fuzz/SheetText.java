package flankfit.fuzz;

/** A whole setup sheet: switches at random, tools, registers, holes, stock. */
final class SheetText {
  private static final String[][] SWITCHES = {
    {"number-reading", "\"calculator\"", "\"least-increment\""},
    {"input-rounding", "\"none\"", "\"least-increment\""},
    {"least-increment-mm", "0.001", "0.01", "0.0001"},
    {"least-increment-inch", "0.0001", "0.00001"},
    {"power-up-units", "\"mm\"", "\"inch\""},
    {"semicolon", "\"comment\"", "\"end-of-block\""},
    {"block-delete", "false", "true", "[1, 3]"},
    {"optional-stop", "false", "true"},
    {"dwell-p", "\"by-point\"", "\"milliseconds\"", "\"seconds\""},
    {"arc-centre", "\"incremental\"", "\"absolute\""},
    {"arc-closure-limit", "0.02", "0.5", "0.0001", "5.0"},
    {"arc-turns", "\"off\"", "\"P\"", "\"L\""},
    {"long-arc-by-negative-r", "true", "false"},
    {"helix-feed", "\"along-path\"", "\"in-plane\""},
    {"rapid-path", "\"straight\"", "\"dog-leg\""},
    {"rapid-rates", "[20000, 20000, 20000]", "[100, 20000, 7]", "[1, 1, 1]"},
    {"max-feed", "20000", "100"},
    {"reference-point", "[0.0, 0.0, 300.0]", "[10.0, -5.0, 20.0]"},
    {"reference-point-2", "[0.0, 0.0, 30.0]"},
    {"reference-point-3", "[1.0, 2.0, 30.0]"},
    {"reference-point-4", "[-9.0, 2.0, 30.0]"},
    {"machine-zero", "[-200.0, -150.0, -300.0]", "[0.0, 0.0, 0.0]"},
    {"start", "[0.0, 0.0, 5.0]", "[3.0, -4.0, 50.0]"},
    {"clearance", "1.0", "0.0", "30.0"},
    {"tool-change", "\"t-then-m6\"", "\"t-alone\""},
    {"tool-change-moves", "\"none\"", "\"z-home\""},
    {"geometry-entry", "\"radius\"", "\"diameter\""},
    {"wear-entry", "\"radius\"", "\"diameter\""},
    {"d-default", "\"modal\"", "\"tool-number\""},
    {"compensation-start", "\"next-normal\"", "\"own-normal\"", "\"tangent\""},
    {"compensation-start-on-arc", "false", "true"},
    {"compensation-cancel-reference", "\"programmed\"", "\"actual\""},
    {"outside-corner", "\"round\"", "\"mitre\""},
    {"inside-corner", "\"trim\"", "\"error\""},
    {"scale-reading", "\"factor\"", "\"thousandths\""},
    {"cycle-repeat", "\"either\"", "\"K\"", "\"L\""},
    {"after-g80", "\"previous-motion\"", "\"error\""},
    {"peck-clearance", "1.0", "0.0", "0.3"},
    {"chip-break-retract", "0.5", "0.0", "5.0"},
    {"bore-shift", "\"-X\"", "\"+X\"", "\"-Y\"", "\"+Y\""},
    {"back-bore", "\"R-bottom\"", "\"Z-bottom\""},
    {"m98-form", "\"auto\"", "\"4+4\"", "\"plain\""},
    {"fix-rounding", "\"toward-zero\"", "\"down\""},
  };

  private static final String[][] THREADS = {
    {"M20x1.5-6H", "1.5", "18.5"},
    {"M12x1.25-6H", "1.25", "10.75"},
    {"M8-6H", "1.25", "6.8"},
    {"1/2-13 UNC-2B", "1.9538461538", "10.8"},
    {"M16x1.5-6H-LH", "1.5", "14.5"},
    {"M24x3-7H", "3.0", "21.0"},
    {"M6x0.75-5H", "0.75", "5.2"}
  };

  private final Choices choices;
  private final StringBuilder out = new StringBuilder();

  private SheetText(Choices choices) {
    this.choices = choices;
  }

  /**
   * A sheet.
   *
   * @param blockLimit most blocks, since a fuzzed program may never end
   */
  static String of(Choices choices, int blockLimit) {
    return new SheetText(choices).text(blockLimit);
  }

  private String text(int blockLimit) {
    out.append("units = \"mm\"\n[control]\n");
    int set = choices.below(7);
    boolean[] taken = new boolean[SWITCHES.length];
    for (int i = 0; i < set; i++) {
      int at = choices.below(SWITCHES.length);
      if (!taken[at]) {
        String[] words = SWITCHES[at];
        int word = choices.between(1, words.length - 1);
        out.append(words[0]).append(" = ").append(words[word]).append('\n');
        taken[at] = true;
      }
    }
    out.append("subprograms = [\"more.nc\"]\n");
    out.append("block-limit = ").append(blockLimit).append('\n');
    if (choices.oneIn(6)) {
      out.append("move-limit = ").append(choices.of("40", "90", "1500")).append('\n');
      out.append("loop-limit = ").append(choices.of("2", "40", "700")).append('\n');
    }
    bodies();
    return out.toString();
  }

  private void bodies() {
    if (choices.below(2) == 0) {
      out.append("[stock]\nshape = \"block\"\nsize = [80.0, 60.0, 30.0]\n");
      out.append("zero = [40.0, 30.0, ").append(choices.of("30.0", "0.0")).append("]\n");
    }
    out.append("[work-offsets]\nG54 = [").append(choices.of("0.0", "5.5")).append(", 0.0, 0.0]\n");
    out.append("\"G54.1 P7\" = [1.0, 2.0, 3.0]\n\"G59.1\" = [0.5, 0.0, 0.0]\n");
    String[] wanted = THREADS[choices.below(THREADS.length)];
    String thread = wanted[0];
    String form =
        choices.of(
            "form = \"straight\"\nflank-angle = 60.0\ncrest-flat = 0.08\n",
            "ground-for = \"" + thread + "\"\n",
            "profile = [[0.0, 6.5], [0.3, 6.5], [0.7, 5.9]]\n");
    boolean ground = form.startsWith("ground");
    String pitch = ground ? wanted[1] : choices.of("1.5", "1.25", "1.0", "1.953125", "3.0");
    out.append("[[hole]]\nname = \"port\"\nat = [0.0, 0.0]\ndiameter = ");
    out.append(wanted[2]).append("\ndepth = 22.0\n");
    out.append("thread = \"").append(thread).append("\"\nthread-depth = 16.0\n");
    out.append("[[tool]]\nnumber = 4\nkind = \"thread mill\"\ndiameter = ");
    out.append(choices.of("14.0", "9.0", "5.0", "12.5")).append("\nrows = ");
    out.append(choices.of("12", "1", "3")).append("\npitch = ").append(pitch).append('\n');
    out.append(form);
    out.append("tip = 0.5\n[[tool]]\nnumber = 2\nkind = \"drill\"\ndiameter = 6.8\n");
    out.append("[offsets]\nH4 = { geometry = 120.0, wear = 0.0 }\nD4 = { geometry = ");
    out.append(choices.of("0.0", "7.0", "1.0", "-2.0", "14.0")).append(", wear = ");
    out.append(choices.of("-0.045", "0.0", "0.3", "-1.0")).append(" }\n");
    out.append("H2 = { geometry = 80.0 }\nD1 = { geometry = ");
    out.append(choices.of("0.5", "1.0", "3.0", "0.02", "-1.0")).append(" }\n");
  }
}
