package flankfit.setup;

import flankfit.finding.Code;
import flankfit.standard.ThreadSpec;
import flankfit.unit.Angles;
import flankfit.unit.Lengths;
import flankfit.unit.Tolerance;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code [[tool]]}. */
final class ToolReader {
  private static final String LENGTH = "a length above 0";
  private static final String FROM_ZERO = "a length, not below 0";
  private static final int GREATEST_NUMBER = 99_999_999;
  private static final double GREATEST_COMPLIANCE = 10;
  private static final double MICROMETRES = 1000;
  private static final double USUAL_DRILL_POINT = Angles.toRadians(118);
  private static final double USUAL_CONE = Angles.toRadians(90);

  private final SheetLog log;
  private final TeethReader teeth;
  private final Map<Integer, Integer> lineOfNumber = new HashMap<>();

  ToolReader(SheetLog log, DesignationCheck designations, List<ThreadSpec> wanted) {
    this.log = log;
    this.teeth = new TeethReader(log, designations, wanted);
  }

  static Keys keys() {
    Keys keys =
        Keys.none()
            .and("number", "a whole number from 1")
            .and("kind", "a kind of tool, such as \"thread mill\"")
            .and("hand", "\"right\" or \"left\"")
            .and("diameter", LENGTH)
            .and("flutes", "a whole number from 1 to 100");
    TeethReader.addTo(keys);
    return keys.and("point-angle", "an angle above 0, up to 180 degrees")
        .and("corner-radius", "a length, not below 0, up to half the diameter")
        .and("flute-length", LENGTH)
        .and("neck", "{ diameter = …, reach = … }")
        .and("shank", "{ diameter = …, length = … }")
        .and("holder", "{ diameter = …, length = … }")
        .and("diameter-tolerance", FROM_ZERO)
        .and("runout", FROM_ZERO)
        .and("crest-flat-tolerance", FROM_ZERO)
        .and("material", "text")
        .and("holder-compliance", "micrometres for one newton, a number from 0 to 10");
  }

  Optional<Tool> read(SheetTable table) {
    Optional<Integer> number = number(table);
    String called = number.map(n -> "tool " + n).orElse("tool");
    Optional<Tool.Kind> kind =
        table
            .needed("kind")
            .flatMap(i -> i.choice(Choice.each(Tool.Kind.values(), Tool.Kind::word)));
    Optional<Double> diameter = table.needed("diameter").flatMap(SheetItem::lengthAboveZero);
    Optional<Boolean> left = hand(table, kind, called);
    Optional<Integer> flutes = flutes(table, kind, called);
    Optional<Tool.Teeth> itsTeeth = kind.flatMap(k -> teeth.read(table, k, diameter, called));
    Optional<Double> point = pointAngle(table, kind, called);
    Optional<Double> corner = cornerRadius(table, kind, diameter, called);
    Optional<Tool.Section> neck = section(table, "neck", "reach");
    Optional<Tool.Section> shank = section(table, "shank", "length");
    Optional<Tool.Section> holder = section(table, "holder", "length");
    Optional<Double> fluteLength = fluteLength(table, diameter, itsTeeth, neck, called);
    boolean threads = kind.filter(ToolReader::cutsThreads).isPresent();
    Optional<Double> tolerance = notMeasured(table, "diameter-tolerance", threads);
    Optional<Double> runout = notMeasured(table, "runout", threads);
    Optional<Double> crest = crestTolerance(table, kind, called);
    Optional<String> material = table.item("material").flatMap(SheetItem::text);
    Optional<Double> yields = holderCompliance(table);
    checkLengths(table, fluteLength, neck, itsTeeth);
    if (number.isEmpty() || kind.isEmpty() || diameter.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Tool(
            number.get(),
            kind.get(),
            left.orElse(false),
            diameter.get(),
            flutes.orElse(1),
            itsTeeth,
            point.orElse(Math.PI),
            corner.orElse(0.0),
            fluteLength.orElse(diameter.get()),
            neck,
            shank,
            holder,
            tolerance.orElse(0.0),
            runout.orElse(0.0),
            material.orElse(""),
            yields,
            new Tool.Stated(
                table.has("diameter-tolerance") ? tolerance : Optional.empty(),
                table.has("runout") ? runout : Optional.empty(),
                crest),
            table.place().line()));
  }

  private Optional<Integer> number(SheetTable table) {
    Optional<SheetItem> item = table.needed("number");
    Optional<Integer> number = item.flatMap(i -> i.whole(1, GREATEST_NUMBER));
    if (number.isPresent()) {
      Integer first = lineOfNumber.putIfAbsent(number.get(), table.place().line());
      if (first != null) {
        log.report(
            Code.SH05,
            item.orElseThrow().place(),
            "tool " + number.get() + " is in the sheet twice, first at line " + first,
            "expected each tool number once",
            "give one of them another number");
      }
    }
    return number;
  }

  static boolean cutsThreads(Tool.Kind kind) {
    return kind == Tool.Kind.THREAD_MILL || kind == Tool.Kind.TAP;
  }

  private static Optional<Boolean> hand(SheetTable table, Optional<Tool.Kind> kind, String called) {
    List<Choice<Boolean>> hands = List.of(Choice.of("right", false), Choice.of("left", true));
    return kind.filter(ToolReader::cutsThreads).isPresent()
        ? table.or("hand", i -> i.choice(hands), false, called + ": hand not stated: right")
        : table.item("hand").flatMap(i -> i.choice(hands));
  }

  private static Optional<Integer> flutes(
      SheetTable table, Optional<Tool.Kind> kind, String called) {
    boolean matters = kind.filter(ToolReader::mills).isPresent();
    return matters
        ? table.or("flutes", i -> i.whole(1, 100), 1, called + ": flutes not stated: 1")
        : table.item("flutes").flatMap(i -> i.whole(1, 100));
  }

  private static boolean mills(Tool.Kind kind) {
    return switch (kind) {
      case FACE_MILL, END_MILL, BALL_MILL, BULL_NOSE_MILL, THREAD_MILL -> true;
      case DRILL, SPOT_DRILL, COUNTERSINK, REAMER, BORING_BAR, TAP -> false;
    };
  }

  private Optional<Double> pointAngle(SheetTable table, Optional<Tool.Kind> kind, String called) {
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case DRILL -> point(table, USUAL_DRILL_POINT, called);
      case SPOT_DRILL, COUNTERSINK -> point(table, USUAL_CONE, called);
      case FACE_MILL, END_MILL, BALL_MILL, BULL_NOSE_MILL, REAMER, BORING_BAR, TAP, THREAD_MILL -> {
        Optional<SheetItem> item = table.item("point-angle");
        item.flatMap(i -> i.angle(180))
            .filter(a -> a < Math.PI)
            .ifPresent(a -> log.assume(unused(called, "point-angle", kind.get())));
        yield Optional.of(Math.PI);
      }
    };
  }

  private static Optional<Double> point(SheetTable table, double usual, String called) {
    String degrees = Lengths.plain(Math.rint(Angles.toDegrees(usual)));
    return table.or(
        "point-angle",
        i -> i.angle(180),
        usual,
        called + ": point-angle not stated: " + degrees + " degrees");
  }

  static String unused(String called, String key, Tool.Kind kind) {
    return called + ": " + key + " is not used for a " + kind.word();
  }

  private Optional<Double> cornerRadius(
      SheetTable table, Optional<Tool.Kind> kind, Optional<Double> diameter, String called) {
    boolean bullNose = kind.filter(k -> k == Tool.Kind.BULL_NOSE_MILL).isPresent();
    boolean ball = kind.filter(k -> k == Tool.Kind.BALL_MILL).isPresent();
    Optional<SheetItem> item =
        bullNose ? table.needed("corner-radius") : table.item("corner-radius");
    Optional<Double> corner = item.flatMap(SheetItem::lengthFromZero);
    if (corner.isPresent() && diameter.isPresent() && corner.get() > diameter.get() / 2) {
      item.orElseThrow()
          .impossible("it must not exceed half the diameter, " + log.shown(diameter.get() / 2));
    }
    if (!bullNose && kind.isPresent() && corner.filter(c -> c > 0).isPresent()) {
      log.assume(unused(called, "corner-radius", kind.get()));
    }
    if (ball) {
      return diameter.map(d -> d / 2);
    }
    return bullNose ? corner : Optional.of(0.0);
  }

  private static Optional<Tool.Section> section(SheetTable table, String key, String length) {
    Keys keys = Keys.none().and("diameter", LENGTH).and(length, LENGTH);
    Optional<SheetTable> inner = table.table(key, keys);
    Optional<Double> diameter =
        inner.flatMap(t -> t.needed("diameter")).flatMap(SheetItem::lengthAboveZero);
    Optional<Double> extent =
        inner.flatMap(t -> t.needed(length)).flatMap(SheetItem::lengthAboveZero);
    return diameter.flatMap(d -> extent.map(l -> new Tool.Section(d, l)));
  }

  private static Optional<Double> fluteLength(
      SheetTable table,
      Optional<Double> diameter,
      Optional<Tool.Teeth> teeth,
      Optional<Tool.Section> neck,
      String called) {
    if (table.has("flute-length") || diameter.isEmpty()) {
      return table.item("flute-length").flatMap(SheetItem::lengthAboveZero);
    }
    Optional<Double> overRows =
        teeth.flatMap(t -> t.pitch().map(p -> t.tip() + (t.rows() - 0.5) * p));
    double usual = overRows.orElse(neck.map(Tool.Section::length).orElse(3 * diameter.get()));
    String how =
        overRows.isPresent()
            ? "up to half a pitch above the highest row"
            : neck.isPresent() ? "the reach of the neck" : "three diameters";
    String sentence =
        called + ": flute-length not stated: " + how + ", " + table.log().shown(usual);
    return table.or("flute-length", SheetItem::lengthAboveZero, usual, sentence);
  }

  /** A deviation of the tool: 0 when left out; the odds then take a usual one and say so. */
  private static Optional<Double> notMeasured(SheetTable table, String key, boolean matters) {
    Optional<SheetItem> item = table.item(key);
    return matters && item.isEmpty() ? Optional.of(0.0) : item.flatMap(SheetItem::lengthFromZero);
  }

  private Optional<Double> crestTolerance(
      SheetTable table, Optional<Tool.Kind> kind, String called) {
    Optional<Double> crest = table.item("crest-flat-tolerance").flatMap(SheetItem::lengthFromZero);
    if (crest.isPresent() && kind.filter(k -> !cutsThreads(k)).isPresent()) {
      log.assume(unused(called, "crest-flat-tolerance", kind.get()));
    }
    return crest;
  }

  /** How far the holder yields for one newton (mm/N); stated in micrometres. */
  private static Optional<Double> holderCompliance(SheetTable table) {
    return table
        .item("holder-compliance")
        .flatMap(
            item ->
                item.number()
                    .flatMap(
                        um ->
                            um >= 0 && um <= GREATEST_COMPLIANCE
                                ? Optional.of(um / MICROMETRES)
                                : item.impossible("it must lie between 0 and 10")));
  }

  private static void checkLengths(
      SheetTable table,
      Optional<Double> fluteLength,
      Optional<Tool.Section> neck,
      Optional<Tool.Teeth> teeth) {
    if (fluteLength.isEmpty()) {
      return;
    }
    if (neck.isPresent() && neck.get().length() < fluteLength.get()) {
      table
          .item("neck")
          .ifPresent(
              i ->
                  i.impossible(
                      "its reach, counted from the tip, is shorter than the flute-length, "
                          + table.log().shown(fluteLength.get())));
    }
    double highest = teeth.map(t -> t.tip() + (t.rows() - 1) * t.pitch().orElse(0.0)).orElse(0.0);
    if (highest > fluteLength.get() + Tolerance.MODEL.value()) {
      table
          .item("flute-length")
          .ifPresent(
              i ->
                  i.impossible(
                      "the highest row lies " + table.log().shown(highest) + " above the tip"));
    }
  }
}
