package flankfit.control;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.CallForm;
import flankfit.setup.ControlSwitches.CancelReference;
import flankfit.setup.ControlSwitches.NumberReading;
import flankfit.setup.ControlSwitches.StartUp;
import flankfit.setup.ControlSwitches.TurnsWord;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.Offsets.Register;
import flankfit.setup.SetupSheet;
import flankfit.setup.SetupSheet.GaugeCondition;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the short sheet lines of the worked examples. */
public final class ExampleSheet {
  private static final Pattern REGISTER =
      Pattern.compile("\\b([HD])(\\d+) = \\{ geometry = (-?[\\d.]+)(?:, wear = (-?[\\d.]+))? \\}");
  private static final Pattern OFFSET =
      Pattern.compile(
          "\\b(G5[\\d.]+(?: P\\d+)?|common) = \\[(-?[\\d.]+), (-?[\\d.]+), (-?[\\d.]+)\\]");
  private static final Pattern POINT =
      Pattern.compile("([a-z-]+[a-z2-4]) = \\[(-?[\\d.]+), (-?[\\d.]+), (-?[\\d.]+)\\]");
  private static final Pattern SWITCH = Pattern.compile("([a-z][a-z0-9-]+) = \"?([A-Za-z+-]+)\"?");
  private static final Pattern NUMBER = Pattern.compile("([a-z]+-limit) = (\\d+)");
  private static final Pattern FORM = Pattern.compile("m98-form = \"([^\"]+)\"");
  private static final Pattern TOOL =
      Pattern.compile(
          "tool (\\d+): ([a-z ]+)(?:, diameter ([\\d.]+))?(?:, rows \\d+)?(?:, pitch ([\\d.]+))?");
  private static final Pattern HOLE =
      Pattern.compile(
          "(hole|boss) \"([^\"]+)\" (\\S+) at \\((-?[\\d.]+), (-?[\\d.]+)\\)(?:, diameter ([\\d.]+))?");
  private static final Pattern STOCK = Pattern.compile("stock block (\\d+) x (\\d+) x (\\d+)");

  private ExampleSheet() {}

  public static SetupSheet of(String text) {
    Map<Integer, Register> lengths = new TreeMap<>();
    Map<Integer, Register> radii = new TreeMap<>();
    Matcher register = REGISTER.matcher(text);
    while (register.find()) {
      double wear = register.group(4) == null ? 0 : Double.parseDouble(register.group(4));
      Register entry = new Register(Double.parseDouble(register.group(3)), wear);
      (register.group(1).equals("H") ? lengths : radii)
          .put(Integer.parseInt(register.group(2)), entry);
    }
    Map<String, Point> offsets = new TreeMap<>();
    Matcher offset = OFFSET.matcher(text);
    while (offset.find()) {
      offsets.put(offset.group(1), point(offset));
    }
    return new SetupSheet(
        "",
        "",
        LengthUnit.MILLIMETRE,
        switches(text),
        stock(text),
        List.of(),
        offsets,
        holes(text),
        tools(text),
        new Offsets(lengths, radii),
        "",
        GaugeCondition.NEW,
        List.of());
  }

  private static Point point(Matcher match) {
    return new Point(
        Double.parseDouble(match.group(2)),
        Double.parseDouble(match.group(3)),
        Double.parseDouble(match.group(4)));
  }

  private static Optional<Stock> stock(String text) {
    Matcher match = STOCK.matcher(text);
    if (!match.find()) {
      return Optional.empty();
    }
    double x = Double.parseDouble(match.group(1));
    double y = Double.parseDouble(match.group(2));
    double z = Double.parseDouble(match.group(3));
    Extents box = new Extents(new Point(0, 0, -z), new Point(x, y, 0));
    return Optional.of(new Stock(Stock.Shape.BLOCK, box, 0));
  }

  private static List<Tool> tools(String text) {
    List<Tool> tools = new ArrayList<>();
    Matcher match = TOOL.matcher(text);
    while (match.find()) {
      String kind = match.group(2).strip();
      double diameter = match.group(3) == null ? 8 : Double.parseDouble(match.group(3));
      Optional<Double> pitch = Optional.ofNullable(match.group(4)).map(Double::valueOf);
      tools.add(tool(Integer.parseInt(match.group(1)), kind, diameter, pitch));
    }
    return tools;
  }

  static Tool tool(int number, String kind, double diameter) {
    return tool(number, kind, diameter, Optional.empty());
  }

  private static Tool tool(int number, String kind, double diameter, Optional<Double> pitch) {
    Optional<Tool.Teeth> teeth =
        pitch.map(
            p -> new Tool.Teeth(8, pitch, Math.PI / 6, p / 8, new Tool.CutterForm.Straight(), 0));
    Tool.Kind found = Tool.Kind.END_MILL;
    for (Tool.Kind candidate : Tool.Kind.values()) {
      found = candidate.word().equals(kind) ? candidate : found;
    }
    return new Tool(
        number,
        found,
        false,
        diameter,
        4,
        teeth,
        Math.PI,
        0,
        20,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        0,
        "carbide",
        0);
  }

  private static List<Hole> holes(String text) {
    List<Hole> holes = new ArrayList<>();
    Matcher match = HOLE.matcher(text);
    while (match.find()) {
      double diameter = match.group(6) == null ? 20 : Double.parseDouble(match.group(6));
      holes.add(
          new Hole(
              match.group(2),
              match.group(1).equals("boss"),
              Double.parseDouble(match.group(4)),
              Double.parseDouble(match.group(5)),
              0,
              diameter,
              Optional.empty(),
              Math.PI,
              Optional.empty(),
              Optional.of(match.group(3)),
              Optional.empty(),
              0));
    }
    return holes;
  }

  private static ControlSwitches switches(String text) {
    ControlSwitches switches = ControlSwitches.defaults();
    Matcher point = POINT.matcher(text);
    while (point.find()) {
      switches = place(switches, point.group(1), point(point));
    }
    Matcher match = SWITCH.matcher(text);
    while (match.find()) {
      switches = set(switches, match.group(1), match.group(2));
    }
    return flow(switches, text);
  }

  private static ControlSwitches flow(ControlSwitches s, String text) {
    ControlSwitches.Flow f = s.flow();
    int loops = f.loopLimit();
    int blocks = f.blockLimit();
    int moves = f.moveLimit();
    Matcher number = NUMBER.matcher(text);
    while (number.find()) {
      int value = Integer.parseInt(number.group(2));
      loops = number.group(1).equals("loop-limit") ? value : loops;
      blocks = number.group(1).equals("block-limit") ? value : blocks;
      moves = number.group(1).equals("move-limit") ? value : moves;
    }
    CallForm form = f.callForm();
    Matcher written = FORM.matcher(text);
    if (written.find()) {
      form = written.group(1).equals("4+4") ? CallForm.SPLIT : form;
      form = written.group(1).equals("plain") ? CallForm.PLAIN : form;
    }
    boolean down = text.contains("fix-rounding = \"down\"");
    boolean keeps = text.contains("end-reset = \"keep\"");
    return s.with(
        new ControlSwitches.Flow(form, f.subprograms(), down, loops, blocks, moves, keeps));
  }

  private static ControlSwitches place(ControlSwitches s, String name, Point point) {
    ControlSwitches.Places p = s.places();
    Optional<Point> value = Optional.of(point);
    return s.with(
        new ControlSwitches.Places(
            name.equals("reference-point") ? value : p.reference(),
            name.equals("reference-point-2") ? value : p.reference2(),
            name.equals("reference-point-3") ? value : p.reference3(),
            name.equals("reference-point-4") ? value : p.reference4(),
            name.equals("machine-zero") ? value : p.machineZero(),
            name.equals("start") ? value : p.start(),
            p.clearance()));
  }

  /** The same switches with one set by its name in the sheet. */
  static ControlSwitches set(ControlSwitches s, String name, String value) {
    ControlSwitches.Reading r = s.reading();
    ControlSwitches.Arcs a = s.arcs();
    ControlSwitches.Rapids q = s.rapids();
    ControlSwitches.Tools t = s.tools();
    ControlSwitches.Compensation c = s.compensation();
    String constant = value.toUpperCase(Locale.ROOT).replace('-', '_');
    boolean yes = value.equals("true");
    return switch (name) {
      case "number-reading" -> s.with(reading(r, NumberReading.valueOf(constant), false));
      case "input-rounding" -> s.with(reading(r, r.numbers(), value.equals("least-increment")));
      case "block-delete" ->
          s.with(
              new ControlSwitches.Reading(
                  r.numbers(),
                  r.roundToLeastIncrement(),
                  r.leastIncrementMm(),
                  r.leastIncrementInch(),
                  r.powerUpUnit(),
                  r.semicolon(),
                  yes ? List.of(1, 2, 3, 4, 5, 6, 7, 8, 9) : List.of(),
                  r.optionalStop(),
                  r.dwellP()));
      case "semicolon" ->
          s.with(
              new ControlSwitches.Reading(
                  r.numbers(),
                  r.roundToLeastIncrement(),
                  r.leastIncrementMm(),
                  r.leastIncrementInch(),
                  r.powerUpUnit(),
                  ControlSwitches.Semicolon.valueOf(constant),
                  r.blockDelete(),
                  r.optionalStop(),
                  r.dwellP()));
      case "arc-turns" ->
          s.with(
              new ControlSwitches.Arcs(
                  a.absoluteCentre(),
                  a.closureLimit(),
                  TurnsWord.valueOf(constant),
                  a.longArcByNegativeR(),
                  a.inPlaneFeed()));
      case "long-arc-by-negative-r" ->
          s.with(
              new ControlSwitches.Arcs(
                  a.absoluteCentre(), a.closureLimit(), a.turns(), yes, a.inPlaneFeed()));
      case "helix-feed" ->
          s.with(
              new ControlSwitches.Arcs(
                  a.absoluteCentre(),
                  a.closureLimit(),
                  a.turns(),
                  a.longArcByNegativeR(),
                  value.equals("in-plane")));
      case "rapid-path" ->
          s.with(new ControlSwitches.Rapids(value.equals("dog-leg"), q.rates(), q.maxFeed()));
      case "tool-change" ->
          s.with(
              new ControlSwitches.Tools(
                  value.equals("t-alone"),
                  t.changeGoesHome(),
                  t.geometryEntry(),
                  t.wearEntry(),
                  t.registerByTool()));
      case "tool-change-moves" ->
          s.with(
              new ControlSwitches.Tools(
                  t.changeByT(),
                  value.equals("z-home"),
                  t.geometryEntry(),
                  t.wearEntry(),
                  t.registerByTool()));
      case "d-default" ->
          s.with(
              new ControlSwitches.Tools(
                  t.changeByT(),
                  t.changeGoesHome(),
                  t.geometryEntry(),
                  t.wearEntry(),
                  value.equals("tool-number")));
      case "compensation-start" ->
          s.with(
              new ControlSwitches.Compensation(
                  StartUp.valueOf(constant),
                  c.startOnArc(),
                  c.cancelReference(),
                  c.mitre(),
                  c.insideCornerIsError()));
      case "compensation-cancel-reference" ->
          s.with(
              new ControlSwitches.Compensation(
                  c.startUp(),
                  c.startOnArc(),
                  CancelReference.valueOf(constant),
                  c.mitre(),
                  c.insideCornerIsError()));
      case "outside-corner" ->
          s.with(
              new ControlSwitches.Compensation(
                  c.startUp(),
                  c.startOnArc(),
                  c.cancelReference(),
                  value.equals("mitre"),
                  c.insideCornerIsError()));
      case "scale-reading" -> s.with(ControlSwitches.ScaleReading.valueOf(constant));
      case "cycle-repeat", "after-g80", "bore-shift", "back-bore" ->
          s.with(cycles(s.cycles(), name, value));
      default -> s;
    };
  }

  private static ControlSwitches.Cycles cycles(
      ControlSwitches.Cycles c, String name, String value) {
    ControlSwitches.BoreShift shift = c.boreShift();
    for (ControlSwitches.BoreShift way : ControlSwitches.BoreShift.values()) {
      shift = name.equals("bore-shift") && way.word().equals(value) ? way : shift;
    }
    return new ControlSwitches.Cycles(
        name.equals("cycle-repeat")
            ? ControlSwitches.RepeatWord.valueOf(value.toUpperCase(Locale.ROOT))
            : c.repeat(),
        name.equals("after-g80") ? value.equals("error") : c.axisWordsAfterG80AreError(),
        c.peckClearance(),
        c.chipBreakRetract(),
        shift,
        name.equals("back-bore") ? value.equals("Z-bottom") : c.backBoreFromDepth());
  }

  private static ControlSwitches.Reading reading(
      ControlSwitches.Reading r, NumberReading numbers, boolean round) {
    return new ControlSwitches.Reading(
        numbers,
        round,
        r.leastIncrementMm(),
        r.leastIncrementInch(),
        r.powerUpUnit(),
        r.semicolon(),
        r.blockDelete(),
        r.optionalStop(),
        r.dwellP());
  }
}
