package flankfit.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Blocks of well-formed and nearly well-formed words from the whole language, in any order. Limits
 * of the sheet are small, since most loops never end.
 */
final class WordsText {
  static final String SHEET =
      """
      [control]
      loop-limit = 60
      block-limit = 3000
      move-limit = 4000
      arc-turns = "P"
      machine-zero = [-200.0, -150.0, -300.0]
      subprograms = ["more.nc"]
      block-delete = [2, 3]

      [[hole]]
      name = "port"
      at = [0.0, 0.0]
      diameter = 18.5
      depth = 22.0
      thread = "M20x1.5-6H"

      [[tool]]
      number = 4
      kind = "thread mill"
      diameter = 14.0
      rows = 12
      pitch = 1.5
      form = "straight"
      flank-angle = 60.0
      crest-flat = 0.1875
      tip = 0.5

      [offsets]
      H4 = { geometry = 120.0 }
      D4 = { geometry = 0.0, wear = -0.045 }
      D1 = { geometry = 1.0 }
      """;

  private static final String HEAD = "G21 G90 G17 G54 G40 G49 G80 S1000 M3 F200. T4 M6\n";

  private static final String MOTIONS = "G0 G1 G1 G2 G3 G81 G82 G83 G73 G84 G85 G76 G87 G89";

  private static final String FUNCTIONS =
      "G0 G1 G2 G3 G4 G9 G10 G15 G17 G18 G19 G20 G21 G28 G30 G40 G41 G42 G43 G44 G49 G50 G50.1"
          + " G51 G51.1 G52 G53 G54 G55 G59 G54.1 G59.1 G59.3 G61 G61.1 G64 G65 G66 G67 G68 G69"
          + " G70 G71 G73 G74 G76 G80 G81 G82 G83 G84 G85 G86 G87 G88 G89 G90 G91 G90.1 G91.1"
          + " G92 G92.1 G92.2 G92.3 G93 G94 G95 G97 G98 G99 G33 G16 G255 G-1 M0 M1 M2 M3 M4 M5 M6"
          + " M7 M8 M9 M19 M30 M48 M49 M60 M98 M99 M123";

  private final Choices choices;
  private final StringBuilder out = new StringBuilder();

  private WordsText(Choices choices) {
    this.choices = choices;
  }

  static FuzzCase of(byte[] bytes) {
    return new FuzzCase(text(bytes), SHEET, "O8000\nG91 X1.\nM99\nO8001\n#1=#1+1\nM99\n");
  }

  private static byte[] text(byte[] bytes) {
    return new WordsText(new Choices(bytes)).text().getBytes(StandardCharsets.UTF_8);
  }

  private String text() {
    if (!choices.oneIn(4)) {
      out.append(HEAD);
    }
    while (!choices.isEmpty()) {
      int from = out.length();
      block();
      if (choices.oneIn(12)) {
        slip(from);
      }
      out.append(choices.oneIn(40) ? "\r" : "\n");
    }
    return out.toString();
  }

  private void block() {
    switch (choices.below(14)) {
      case 0 -> out.append(statement());
      case 1 -> out.append(jump());
      case 2 -> call();
      case 3 -> out.append(choices.of("%", "/", "/2", "O1", ":7", "O8000", "N1", "N2 N3", ""));
      case 4 -> out.append(choices.of("(a)", "(a", ";G1 X1", "(MSG,é)", "a)", "\u2212", ")("));
      case 5, 6, 7 -> motion();
      default -> words();
    }
  }

  private void motion() {
    out.append(choices.of(MOTIONS.split(" ", -1)));
    for (char letter : "XYZIJKR".toCharArray()) {
      if (choices.below(3) == 0) {
        out.append(' ').append(letter).append(Numbers.plain(choices));
      }
    }
    for (char letter : "QPLFD".toCharArray()) {
      if (choices.oneIn(5)) {
        out.append(' ').append(letter).append(choices.of("1", "2.", "4", ".5", "12"));
      }
    }
  }

  private void words() {
    int count = choices.between(1, 5);
    for (int i = 0; i < count; i++) {
      if (choices.below(2) == 0) {
        out.append(choices.of(FUNCTIONS.split(" ", -1)));
      } else {
        String letter = choices.of("XYZIJKRFSTDHPQLABCEUVWNO".split("", -1));
        out.append(choices.oneIn(9) ? letter.toLowerCase(Locale.ROOT) : letter);
        out.append(choices.below(2) == 0 ? Numbers.plain(choices) : Numbers.any(choices));
      }
      out.append(choices.of(" ", "", "\t"));
    }
  }

  private String statement() {
    String variable = Numbers.variable(choices);
    return switch (choices.below(3)) {
      case 0 -> variable + "=" + Numbers.expression(choices, 0);
      case 1 -> variable + "=" + variable + "+1";
      default ->
          "IF[" + Numbers.condition(choices) + "]THEN " + variable + "=" + Numbers.any(choices);
    };
  }

  private String jump() {
    String loop = Integer.toString(choices.between(1, 3));
    return switch (choices.below(6)) {
      case 0 -> "WHILE[" + Numbers.condition(choices) + "]DO" + loop;
      case 1 -> "DO" + loop;
      case 2 -> "IF[" + Numbers.condition(choices) + "]GOTO" + loop;
      case 3 -> "GOTO" + loop;
      case 4 -> "N" + loop;
      default -> "END" + loop;
    };
  }

  private void call() {
    out.append(choices.of("M98 P", "G65 P", "G66 P", "M99 P", "M98 L2 P", "G67 M98 P", "G65 L3 P"));
    out.append(choices.of("1", "7", "8000", "8001", "28001", "9", "#1"));
    if (choices.below(2) == 0) {
      out.append(choices.of(" A1.", " B#2 C3", " Z-5. X1.", " I1. J2. K3.", " L3", " M1 F2", ""));
    }
  }

  /** A slip of the finger: a character too many, one too few, two exchanged. */
  private void slip(int from) {
    if (out.length() <= from) {
      return;
    }
    int at = from + choices.below(out.length() - from);
    switch (choices.below(3)) {
      case 0 -> out.deleteCharAt(at);
      case 1 -> out.insert(at, choices.of("O", ".", "-", "#", "[", "]", "(", "/", " ", ",", "="));
      default -> out.setCharAt(at, out.charAt(from));
    }
  }
}
