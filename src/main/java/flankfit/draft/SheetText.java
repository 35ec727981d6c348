package flankfit.draft;

import flankfit.setup.Offsets;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Setup sheets as text: a new one, and one with another D register. */
public final class SheetText {
  /** Stock beside the outermost hole, in diameters of the thread's hole or boss, and at least. */
  private static final double MARGIN = 1.5;

  private static final double LEAST_MARGIN = 10;

  /** Reference point above the part, and a length of tool to be replaced (mm and in). */
  private static final double HIGH_MM = 300;

  private static final double HIGH_INCH = 12;
  private static final double TOOL_MM = 100;
  private static final double TOOL_INCH = 4;

  private final StringBuilder out = new StringBuilder();
  private final SheetWanted wanted;

  private SheetText(SheetWanted wanted) {
    this.wanted = wanted;
  }

  /** A new sheet. */
  public static String of(SheetWanted wanted, Offsets.Register register) {
    SheetText text = new SheetText(wanted);
    text.head();
    text.stock();
    text.blank();
    text.mill();
    text.registers(register);
    return text.out.toString();
  }

  private String n(double millimetres) {
    String text = Lengths.plain(wanted.unit().fromMillimetres(millimetres), 9);
    return text.contains(".") ? text : text + ".0";
  }

  private SheetText line(String key, String value) {
    out.append(key).append(" = ").append(value).append('\n');
    return this;
  }

  private boolean inch() {
    return wanted.unit() == LengthUnit.INCH;
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  private void head() {
    out.append(
        "# Written with the program. Stock, reference point and the length in H are assumed:\n");
    out.append("# replace them by those of the job, and gauge the program again.\n");
    line("units", quoted(inch() ? "inch" : "mm"));
    line("title", quoted(wanted.designation()));
    out.append("\n[control]\n");
    line("power-up-units", quoted(inch() ? "inch" : "mm"));
    line("geometry-entry", quoted("radius"));
    line("wear-entry", quoted("radius"));
    line("reference-point", "[0.0, 0.0, " + (inch() ? HIGH_INCH : HIGH_MM) + "]");
    out.append("\n[work-offsets]\n");
    line("G54", "[0.0, 0.0, 0.0]");
  }

  private void stock() {
    if (wanted.boss()) {
      stud();
      return;
    }
    double margin = Math.max(LEAST_MARGIN, MARGIN * wanted.blank());
    // The zero of the part lies on the stock, too, as a zero that is touched off there does.
    double[] low = {0, 0};
    double[] high = {0, 0};
    for (List<Double> place : wanted.places()) {
      for (int k = 0; k < 2; k++) {
        low[k] = Math.min(low[k], place.get(k) - margin);
        high[k] = Math.max(high[k], place.get(k) + margin);
      }
    }
    out.append("\n[stock]\n");
    line("shape", quoted("block"));
    String thick = n(wanted.thickness());
    line("size", "[" + n(high[0] - low[0]) + ", " + n(high[1] - low[1]) + ", " + thick + "]");
    line("zero", "[" + n(-low[0]) + ", " + n(-low[1]) + ", " + thick + "]");
  }

  /**
   * A boss stands free: its stock is the boss alone. Several, or one beside the zero of the part,
   * are no shape of stock, so none is stated then.
   */
  private void stud() {
    List<Double> place = wanted.places().get(0);
    double radius = wanted.blank() / 2;
    if (wanted.places().size() > 1 || Math.hypot(place.get(0), place.get(1)) > radius) {
      return;
    }
    String high = n(wanted.thickness());
    out.append("\n[stock]\n");
    line("shape", quoted("cylinder"));
    line("diameter", n(wanted.blank()));
    line("height", high);
    line(
        "zero",
        "[" + n(radius - place.get(0)) + ", " + n(radius - place.get(1)) + ", " + high + "]");
  }

  private void blank() {
    out.append(wanted.boss() ? "\n[[boss]]\n" : "\n[[hole]]\n");
    line("name", quoted(wanted.boss() ? "boss" : "hole"));
    List<String> pairs =
        wanted.places().stream().map(p -> "[" + n(p.get(0)) + ", " + n(p.get(1)) + "]").toList();
    line(
        "at",
        pairs.size() == 1
            ? pairs.get(0)
            : pairs.stream().collect(Collectors.joining(", ", "[", "]")));
    line("top", "0.0");
    line("diameter", n(wanted.blank()));
    line("depth", wanted.blankDepth().map(this::n).orElse(quoted("through")));
    if (wanted.blankDepth().isPresent()) {
      line("bottom", quoted("flat"));
    }
    line("made-by", quoted("stock"));
    line("thread", quoted(wanted.designation()));
    line("thread-depth", n(wanted.depth()));
  }

  private void mill() {
    SheetWanted.MillWanted mill = wanted.mill();
    out.append("\n[[tool]]\n");
    line("number", Integer.toString(mill.number()));
    line("kind", quoted("thread mill"));
    line("hand", quoted(mill.leftHand() ? "left" : "right"));
    line("diameter", n(mill.diameter()));
    mill.flutes().ifPresent(z -> line("flutes", Integer.toString(z)));
    line("rows", Integer.toString(mill.rows()));
    if (mill.rows() > 1) {
      line("pitch", n(mill.pitch()));
    }
    line("flank-angle", "60.0");
    mill.crestFlat().ifPresent(flat -> line("crest-flat", n(flat)));
    mill.straight()
        .ifPresent(
            straight -> {
              if (straight) {
                line("form", quoted("straight"));
              } else {
                line("ground-for", quoted(wanted.designation()));
              }
            });
    line("tip", n(mill.tip()));
    mill.fluteLength().ifPresent(length -> line("flute-length", n(length)));
    mill.neck()
        .ifPresent(
            neck ->
                line(
                    "neck",
                    "{ diameter = " + n(neck.diameter()) + ", reach = " + n(neck.length()) + " }"));
    if (!mill.material().isEmpty()) {
      line("material", quoted(mill.material()));
    }
  }

  private void registers(Offsets.Register register) {
    int number = wanted.mill().number();
    out.append("\n[offsets]\n");
    line("H" + number, entry(n(inch() ? wanted.unit().toMillimetres(TOOL_INCH) : TOOL_MM), "0.0"));
    line("D" + number, entry(n(register.geometry()), n(register.wear())));
    if (!wanted.material().isEmpty()) {
      out.append("\n[workpiece]\n");
      line("material", quoted(wanted.material()));
    }
    out.append("\n[gauges]\n");
    line("condition", quoted("new"));
  }

  private static String entry(String geometry, String wear) {
    return "{ geometry = " + geometry + ", wear = " + wear + " }";
  }

  /**
   * A sheet's text with another D register, all else as it stands. The answer is to be read again
   * and compared: a sheet may be written in ways that this does not see through.
   *
   * @param number number of the register
   * @param unit unit of the sheet
   */
  public static String withRegister(
      String sheet, int number, Offsets.Register register, LengthUnit unit) {
    String name = "D" + number;
    String value = entry(number(register.geometry(), unit), number(register.wear(), unit));
    Pattern line = Pattern.compile("(?m)^([ \\t]*" + name + "[ \\t]*=[ \\t]*)\\{[^{}\\n]*\\}");
    Matcher found = line.matcher(sheet);
    if (found.find()) {
      return found.replaceFirst(Matcher.quoteReplacement(found.group(1) + value));
    }
    Matcher table = Pattern.compile("(?m)^[ \\t]*\\[offsets\\][^\\n]*\\n").matcher(sheet);
    if (table.find()) {
      return sheet.substring(0, table.end())
          + name
          + " = "
          + value
          + "\n"
          + sheet.substring(table.end());
    }
    String end = sheet.endsWith("\n") ? "" : "\n";
    return sheet + end + "\n[offsets]\n" + name + " = " + value + "\n";
  }

  private static String number(double millimetres, LengthUnit unit) {
    String text = Lengths.plain(unit.fromMillimetres(millimetres), 9);
    return text.contains(".") ? text : text + ".0";
  }
}
