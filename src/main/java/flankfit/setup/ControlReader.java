package flankfit.setup;

import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches.Arcs;
import flankfit.setup.ControlSwitches.BoreShift;
import flankfit.setup.ControlSwitches.CallForm;
import flankfit.setup.ControlSwitches.CancelReference;
import flankfit.setup.ControlSwitches.Compensation;
import flankfit.setup.ControlSwitches.Cycles;
import flankfit.setup.ControlSwitches.DwellP;
import flankfit.setup.ControlSwitches.Entry;
import flankfit.setup.ControlSwitches.Flow;
import flankfit.setup.ControlSwitches.NumberReading;
import flankfit.setup.ControlSwitches.Places;
import flankfit.setup.ControlSwitches.Rapids;
import flankfit.setup.ControlSwitches.Reading;
import flankfit.setup.ControlSwitches.RepeatWord;
import flankfit.setup.ControlSwitches.ScaleReading;
import flankfit.setup.ControlSwitches.Semicolon;
import flankfit.setup.ControlSwitches.StartUp;
import flankfit.setup.ControlSwitches.Tools;
import flankfit.setup.ControlSwitches.TurnsWord;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Reads {@code [control]}: every switch, its words, its default. */
final class ControlReader {
  private static final String LENGTH = "a length above 0";
  private static final String LENGTH_FROM_ZERO = "a length, not below 0";
  private static final int MOST_PASSES = 1_000_000_000;
  private static final int MOST_BLOCKS = 1_000_000_000;
  private static final String POINT = "a point, [x, y, z]";

  private final SheetTable table;

  private ControlReader(SheetTable table) {
    this.table = table;
  }

  static Keys keys() {
    Keys keys =
        Keys.none()
            .and("number-reading", "\"calculator\" or \"least-increment\"")
            .and("input-rounding", "\"none\" or \"least-increment\"")
            .and("least-increment-mm", LENGTH)
            .and("least-increment-inch", LENGTH)
            .and("power-up-units", "\"mm\" or \"inch\"")
            .and("semicolon", "\"comment\" or \"end-of-block\"")
            .and("block-delete", "false, true, or a list of numbers from 1 to 9")
            .and("optional-stop", "true or false")
            .and("dwell-p", "\"by-point\", \"milliseconds\" or \"seconds\"")
            .and("arc-centre", "\"incremental\" or \"absolute\"")
            .and("arc-closure-limit", LENGTH)
            .and("arc-turns", "\"off\", \"P\" or \"L\"")
            .and("long-arc-by-negative-r", "true or false")
            .and("helix-feed", "\"along-path\" or \"in-plane\"")
            .and("rapid-path", "\"straight\" or \"dog-leg\"")
            .and("rapid-rates", "a list of 3 speeds")
            .and("max-feed", "a speed above 0")
            .and("reference-point", POINT)
            .and("reference-point-2", POINT)
            .and("reference-point-3", POINT)
            .and("reference-point-4", POINT)
            .and("machine-zero", POINT)
            .and("start", POINT)
            .and("clearance", LENGTH_FROM_ZERO)
            .and("tool-change", "\"t-then-m6\" or \"t-alone\"")
            .and("tool-change-moves", "\"none\" or \"z-home\"")
            .and("geometry-entry", "\"radius\" or \"diameter\"")
            .and("wear-entry", "\"radius\" or \"diameter\"")
            .and("d-default", "\"modal\" or \"tool-number\"")
            .and("wear-limit", LENGTH)
            .and("compensation-start", "\"next-normal\", \"own-normal\" or \"tangent\"")
            .and("compensation-start-on-arc", "true or false")
            .and("compensation-cancel-reference", "\"programmed\" or \"actual\"")
            .and("outside-corner", "\"round\" or \"mitre\"")
            .and("inside-corner", "\"trim\" or \"error\"")
            .and("scale-reading", "\"factor\" or \"thousandths\"")
            .and("cycle-repeat", "\"either\", \"K\" or \"L\"")
            .and("after-g80", "\"previous-motion\" or \"error\"")
            .and("peck-clearance", LENGTH_FROM_ZERO)
            .and("chip-break-retract", LENGTH_FROM_ZERO)
            .and("bore-shift", "\"-X\", \"+X\", \"-Y\" or \"+Y\"")
            .and("back-bore", "\"R-bottom\" or \"Z-bottom\"")
            .and("m98-form", "\"auto\", \"4+4\" or \"plain\"")
            .and("subprograms", "a list of file names")
            .and("fix-rounding", "\"toward-zero\" or \"down\"")
            .and("loop-limit", "a whole number from 1 to " + MOST_PASSES)
            .and("block-limit", "a whole number from 1 to " + MOST_BLOCKS)
            .and("move-limit", "a whole number from 1 to " + TapeBuilder.MOST_MOVES)
            .and("end-reset", "\"power-up\" or \"keep\"");
    return keys;
  }

  static ControlSwitches read(SheetTable table) {
    ControlReader reader = new ControlReader(table);
    return new ControlSwitches(
        reader.reading(),
        reader.arcs(),
        reader.rapids(),
        reader.places(),
        reader.tools(),
        reader.compensation(),
        reader.cycles(),
        reader.either("scale-reading", "factor", "thousandths")
            ? ScaleReading.THOUSANDTHS
            : ScaleReading.FACTOR,
        reader.flow());
  }

  private Reading reading() {
    Reading usual = ControlSwitches.defaults().reading();
    return new Reading(
        word(
            "number-reading",
            List.of(
                Choice.of("calculator", NumberReading.CALCULATOR),
                Choice.of("least-increment", NumberReading.LEAST_INCREMENT)),
            usual.numbers()),
        either("input-rounding", "none", "least-increment"),
        set(
            "least-increment-mm",
            i -> increment(i, LengthUnit.MILLIMETRE),
            usual.leastIncrementMm()),
        set("least-increment-inch", i -> increment(i, LengthUnit.INCH), usual.leastIncrementInch()),
        word(
            "power-up-units",
            List.of(Choice.of("mm", LengthUnit.MILLIMETRE), Choice.of("inch", LengthUnit.INCH)),
            usual.powerUpUnit()),
        word(
            "semicolon",
            List.of(
                Choice.of("comment", Semicolon.COMMENT),
                Choice.of("end-of-block", Semicolon.END_OF_BLOCK)),
            usual.semicolon()),
        set("block-delete", ControlReader::deletedLevels, usual.blockDelete()),
        set("optional-stop", SheetItem::flag, usual.optionalStop()),
        word(
            "dwell-p",
            List.of(
                Choice.of("by-point", DwellP.BY_POINT),
                Choice.of("milliseconds", DwellP.MILLISECONDS),
                Choice.of("seconds", DwellP.SECONDS)),
            usual.dwellP()));
  }

  private Arcs arcs() {
    Arcs usual = ControlSwitches.defaults().arcs();
    return new Arcs(
        either("arc-centre", "incremental", "absolute"),
        set("arc-closure-limit", SheetItem::lengthAboveZero, usual.closureLimit()),
        word(
            "arc-turns",
            List.of(
                Choice.of("off", TurnsWord.OFF),
                Choice.of("P", TurnsWord.P),
                Choice.of("L", TurnsWord.L)),
            usual.turns()),
        set("long-arc-by-negative-r", SheetItem::flag, usual.longArcByNegativeR()),
        either("helix-feed", "along-path", "in-plane"));
  }

  private Rapids rapids() {
    Rapids usual = ControlSwitches.defaults().rapids();
    return new Rapids(
        either("rapid-path", "straight", "dog-leg"),
        set("rapid-rates", ControlReader::rates, usual.rates()),
        set("max-feed", SheetItem::speed, usual.maxFeed()));
  }

  private Places places() {
    return new Places(
        point("reference-point"),
        point("reference-point-2"),
        point("reference-point-3"),
        point("reference-point-4"),
        point("machine-zero"),
        point("start"),
        set(
            "clearance",
            SheetItem::lengthFromZero,
            ControlSwitches.defaults().places().clearance()));
  }

  private Tools tools() {
    return new Tools(
        either("tool-change", "t-then-m6", "t-alone"),
        either("tool-change-moves", "none", "z-home"),
        entry("geometry-entry"),
        entry("wear-entry"),
        either("d-default", "modal", "tool-number"),
        table.item("wear-limit").flatMap(SheetItem::lengthAboveZero));
  }

  private Entry entry(String key) {
    return either(key, "radius", "diameter") ? Entry.DIAMETER : Entry.RADIUS;
  }

  private Compensation compensation() {
    Compensation usual = ControlSwitches.defaults().compensation();
    return new Compensation(
        word(
            "compensation-start",
            List.of(
                Choice.of("next-normal", StartUp.NEXT_NORMAL),
                Choice.of("own-normal", StartUp.OWN_NORMAL),
                Choice.of("tangent", StartUp.TANGENT)),
            usual.startUp()),
        set("compensation-start-on-arc", SheetItem::flag, usual.startOnArc()),
        word(
            "compensation-cancel-reference",
            List.of(
                Choice.of("programmed", CancelReference.PROGRAMMED),
                Choice.of("actual", CancelReference.ACTUAL)),
            usual.cancelReference()),
        either("outside-corner", "round", "mitre"),
        either("inside-corner", "trim", "error"));
  }

  private Cycles cycles() {
    Cycles usual = ControlSwitches.defaults().cycles();
    return new Cycles(
        word(
            "cycle-repeat",
            List.of(
                Choice.of("either", RepeatWord.EITHER),
                Choice.of("K", RepeatWord.K),
                Choice.of("L", RepeatWord.L)),
            usual.repeat()),
        either("after-g80", "previous-motion", "error"),
        set("peck-clearance", SheetItem::lengthFromZero, usual.peckClearance()),
        set("chip-break-retract", SheetItem::lengthFromZero, usual.chipBreakRetract()),
        word("bore-shift", Choice.each(BoreShift.values(), BoreShift::word), usual.boreShift()),
        either("back-bore", "R-bottom", "Z-bottom"));
  }

  private Flow flow() {
    Flow usual = ControlSwitches.defaults().flow();
    return new Flow(
        word(
            "m98-form",
            List.of(
                Choice.of("auto", CallForm.AUTO),
                Choice.of("4+4", CallForm.SPLIT),
                Choice.of("plain", CallForm.PLAIN)),
            usual.callForm()),
        set("subprograms", ControlReader::fileNames, usual.subprograms()),
        either("fix-rounding", "toward-zero", "down"),
        set("loop-limit", item -> item.whole(1, MOST_PASSES), usual.loopLimit()),
        set("block-limit", item -> item.whole(1, MOST_BLOCKS), usual.blockLimit()),
        set("move-limit", item -> item.whole(1, TapeBuilder.MOST_MOVES), usual.moveLimit()),
        either("end-reset", "power-up", "keep"));
  }

  private static Optional<List<String>> fileNames(SheetItem item) {
    return item.list()
        .flatMap(names -> SheetItem.all(names.stream().map(SheetItem::fileName).toList()));
  }

  /** Whether the switch has the second word; the first is the default. */
  private boolean either(String key, String usual, String other) {
    return word(key, List.of(Choice.of(usual, false), Choice.of(other, true)), false);
  }

  private <T> T word(String key, List<Choice<T>> choices, T usual) {
    return set(key, item -> item.choice(choices), usual);
  }

  private Optional<Point> point(String key) {
    Optional<SheetItem> item = table.item(key);
    Optional<Point> point = item.flatMap(SheetItem::point);
    point.ifPresent(p -> table.log().assume(key + " = " + item.orElseThrow().shown()));
    return point;
  }

  /** The switch as set, which is noted when it differs from the usual. */
  private <T> T set(String key, Function<SheetItem, Optional<T>> read, T usual) {
    Optional<SheetItem> item = table.item(key);
    T value = item.flatMap(read).orElse(usual);
    if (!value.equals(usual)) {
      item.ifPresent(i -> table.log().assume(key + " = " + i.shown()));
    }
    return value;
  }

  /** A least increment: a plain number is in the unit that the switch names. */
  private static Optional<Double> increment(SheetItem item, LengthUnit unit) {
    Optional<Double> length =
        item.value() instanceof String ? item.length() : item.number().map(unit::toMillimetres);
    return length.flatMap(mm -> mm > 0 ? length : item.impossible("it must be above 0"));
  }

  private static Optional<List<Integer>> deletedLevels(SheetItem item) {
    if (item.value() instanceof Boolean all) {
      return Optional.of(all ? IntStream.rangeClosed(1, 9).boxed().toList() : List.of());
    }
    return item.list()
        .flatMap(levels -> SheetItem.all(levels.stream().map(i -> i.whole(1, 9)).toList()))
        .map(levels -> levels.stream().distinct().sorted().toList());
  }

  private static Optional<List<Double>> rates(SheetItem item) {
    Optional<List<SheetItem>> items = item.list();
    if (items.isPresent() && items.get().size() != 3) {
      return item.wrongType("a list of 3 speeds");
    }
    return items.flatMap(list -> SheetItem.all(list.stream().map(SheetItem::speed).toList()));
  }
}
