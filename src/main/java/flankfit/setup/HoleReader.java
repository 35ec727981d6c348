package flankfit.setup;

import flankfit.finding.Code;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.unit.Lengths;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.tomlj.TomlArray;

/** Reads {@code [[hole]]} and {@code [[boss]]}. */
final class HoleReader {
  private static final String LENGTH = "a length above 0";

  /** A depth as stated: a limit (mm), or none for through. */
  private record Depth(Optional<Double> limit) {}

  private final SheetLog log;
  private final DesignationCheck designations;
  private final Optional<Stock> stock;
  private final List<Hole> holes = new ArrayList<>();
  private final List<ThreadSpec> threads = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  HoleReader(SheetLog log, DesignationCheck designations, Optional<Stock> stock) {
    this.log = log;
    this.designations = designations;
    this.stock = stock;
  }

  static Keys keys() {
    return Keys.none()
        .and("name", "text, each name once")
        .and("at", "a pair [x, y], or a list of pairs for a pattern")
        .and("top", "a length")
        .and("diameter", LENGTH)
        .and("diameter-tolerance", "a length, not below 0, below the diameter")
        .and("depth", "\"through\" or a length above 0")
        .and("bottom", "\"flat\" or an angle above 0, up to 180 degrees")
        .and("made-by", "\"program\" or \"stock\"")
        .and("countersink", "{ diameter = …, angle = … }")
        .and("thread", "a thread designation, such as \"M20x1.5-6H\"")
        .and("thread-depth", "a length above 0, not above the depth");
  }

  List<Hole> holes() {
    return holes;
  }

  /** The distinct threads wanted, in the order of the sheet. */
  List<ThreadSpec> threads() {
    return threads;
  }

  void read(SheetTable table, boolean boss) {
    Optional<SheetItem> nameItem = table.needed("name");
    Optional<String> name = nameItem.flatMap(SheetItem::text);
    String called = (boss ? "boss" : "hole") + " \"" + name.orElse("") + "\"";
    Optional<List<List<Double>>> places = table.needed("at").flatMap(HoleReader::places);
    Optional<Double> top = top(table, called);
    Optional<Double> diameter = diameter(table, boss);
    Optional<Depth> depth = depth(table);
    Optional<Double> bottom = bottom(table, depth, called);
    Optional<Hole.MadeBy> madeBy = madeBy(table, boss, called);
    Optional<Hole.Countersink> countersink = countersink(table, boss, diameter);
    Optional<Double> tolerance = diameterTolerance(table, diameter);
    Optional<ThreadSpec> thread = thread(table, boss, diameter, called);
    Optional<Double> threadDepth = threadDepth(table, thread.isPresent(), depth, called);
    if (name.isEmpty() || places.isEmpty() || top.isEmpty() || diameter.isEmpty()) {
      return;
    }
    if (depth.isEmpty() || bottom.isEmpty()) {
      return;
    }
    boolean pattern = table.item("at").filter(HoleReader::isPattern).isPresent();
    for (int i = 0; i < places.get().size(); i++) {
      String one = pattern ? name.get() + " " + (i + 1) : name.get();
      if (!names.add(one)) {
        nameItem.orElseThrow().impossible("\"" + one + "\" is the name of another hole or boss");
      }
      holes.add(
          new Hole(
              one,
              boss,
              places.get().get(i).get(0),
              places.get().get(i).get(1),
              top.get(),
              diameter.get(),
              depth.get().limit(),
              bottom.get(),
              countersink,
              thread.map(ThreadSpec::designation),
              threadDepth,
              madeBy,
              tolerance,
              table.place().line()));
    }
  }

  private static boolean isPattern(SheetItem at) {
    return at.value() instanceof TomlArray list
        && !list.isEmpty()
        && list.get(0) instanceof TomlArray;
  }

  private static Optional<List<List<Double>>> places(SheetItem at) {
    if (!isPattern(at)) {
      return at.lengths(2).map(List::of);
    }
    return at.list()
        .flatMap(pairs -> SheetItem.all(pairs.stream().map(p -> p.lengths(2)).toList()));
  }

  private Optional<Double> top(SheetTable table, String called) {
    double usual = stock.map(Stock::top).orElse(0.0);
    String where = stock.isPresent() ? "the top of the stock, Z" : "Z";
    return table.or(
        "top", SheetItem::length, usual, called + ": top not stated: " + where + log.shown(usual));
  }

  private Optional<Double> diameter(SheetTable table, boolean boss) {
    Optional<SheetItem> item = table.needed("diameter");
    Optional<Double> diameter = item.flatMap(SheetItem::lengthAboveZero);
    if (boss || stock.isEmpty() || diameter.isEmpty()) {
      return diameter;
    }
    var box = stock.get().box();
    double width = Math.min(box.max().x() - box.min().x(), box.max().y() - box.min().y());
    return diameter.get() < width
        ? diameter
        : item.orElseThrow().impossible("the stock is only " + log.shown(width) + " wide");
  }

  private Optional<Double> diameterTolerance(SheetTable table, Optional<Double> diameter) {
    Optional<SheetItem> item = table.item("diameter-tolerance");
    return item.flatMap(SheetItem::lengthFromZero)
        .flatMap(
            width ->
                diameter.filter(d -> width >= d).isPresent()
                    ? item.orElseThrow()
                        .impossible("the diameter is only " + log.shown(diameter.get()))
                    : Optional.of(width));
  }

  private static Optional<Depth> depth(SheetTable table) {
    Optional<SheetItem> item = table.needed("depth");
    if (item.isPresent() && item.get().value() instanceof String text) {
      if (text.equals("through")) {
        return Optional.of(new Depth(Optional.empty()));
      }
      if (Lengths.quantity(text).isEmpty()) {
        return item.get().unknownWord(text, List.of("through"));
      }
    }
    return item.flatMap(SheetItem::lengthAboveZero).map(d -> new Depth(Optional.of(d)));
  }

  private Optional<Double> bottom(SheetTable table, Optional<Depth> depth, String called) {
    Optional<SheetItem> item = table.item("bottom");
    if (item.isEmpty()) {
      if (depth.flatMap(Depth::limit).isPresent()) {
        log.assume(called + ": bottom not stated: flat");
      }
      return Optional.of(Math.PI);
    }
    return item.get().value() instanceof String
        ? item.get().choice(List.of(Choice.of("flat", Math.PI)))
        : item.get().angle(180);
  }

  private Optional<Hole.MadeBy> madeBy(SheetTable table, boolean boss, String called) {
    Optional<SheetItem> item = table.item("made-by");
    if (item.isEmpty()) {
      log.assume(
          called
              + ": made-by not stated: the program when one of its moves makes the "
              + (boss ? "boss" : "hole")
              + ", else the stock");
    }
    return item.flatMap(i -> i.choice(Choice.each(Hole.MadeBy.values(), Hole.MadeBy::word)));
  }

  private static Optional<Hole.Countersink> countersink(
      SheetTable table, boolean boss, Optional<Double> hole) {
    Keys keys = Keys.none().and("diameter", LENGTH).and("angle", "an angle, below 180 degrees");
    Optional<SheetTable> inner = table.table("countersink", keys);
    Optional<SheetItem> item = inner.flatMap(t -> t.needed("diameter"));
    Optional<Double> diameter = item.flatMap(SheetItem::lengthAboveZero);
    Optional<Double> angle =
        inner
            .flatMap(t -> t.needed("angle"))
            .flatMap(i -> i.angle(180).filter(a -> a < Math.PI).or(() -> blunt(i)));
    if (diameter.isPresent() && hole.isPresent()) {
      if (boss ? diameter.get() >= hole.get() : diameter.get() <= hole.get()) {
        String side = boss ? "below the boss's, " : "above the hole's, ";
        item.orElseThrow().impossible("it must be " + side + table.log().shown(hole.get()));
      }
    }
    return diameter.flatMap(d -> angle.map(a -> new Hole.Countersink(d, a)));
  }

  private static Optional<Double> blunt(SheetItem item) {
    // An angle over 180 degrees is reported already; a flat one is a cone of no depth.
    return item.number().filter(n -> n <= 180 && n > 0).isPresent()
        ? item.impossible("a countersink of 180 degrees has no depth")
        : Optional.empty();
  }

  private Optional<ThreadSpec> thread(
      SheetTable table, boolean boss, Optional<Double> diameter, String called) {
    Optional<SheetItem> item = table.item("thread");
    Optional<ThreadSpec> spec =
        item.flatMap(i -> i.text().flatMap(text -> designation(designations, i, text)));
    if (spec.isEmpty()) {
      return Optional.empty();
    }
    if (spec.get().internal() == boss) {
      return item.orElseThrow()
          .impossible(
              boss
                  ? "that is an internal thread, and a boss has an external one"
                  : "that is an external thread, and a hole has an internal one",
              boss
                  ? "state an external class such as 6g, or use [[hole]]"
                  : "state an internal class such as 6H, or use [[boss]]");
    }
    if (diameter.isPresent()) {
      checkDiameter(table.item("diameter").orElseThrow(), boss, diameter.get(), spec.get());
    }
    noteClass(item.orElseThrow(), spec.get(), called);
    if (threads.stream().noneMatch(t -> t.designation().equals(spec.get().designation()))) {
      threads.add(spec.get());
    }
    return spec;
  }

  private void noteClass(SheetItem item, ThreadSpec spec, String called) {
    String text = item.shown().replace(" ", "").toUpperCase(Locale.ROOT);
    if (!text.contains(spec.threadClass().toUpperCase(Locale.ROOT))) {
      log.assume(called + ": class of the thread not stated: " + spec.designation());
    }
  }

  private static void checkDiameter(
      SheetItem item, boolean boss, double diameter, ThreadSpec spec) {
    if (!boss && diameter >= spec.nominal()) {
      item.impossible(
          "it must be below the major diameter of "
              + spec.designation()
              + ", "
              + item.log().shown(spec.nominal()),
          "state the diameter before the thread is milled");
    }
    if (boss && diameter <= spec.basicMinor()) {
      item.impossible(
          "it must be above the minor diameter of "
              + spec.designation()
              + ", "
              + item.log().shown(spec.basicMinor()),
          "state the diameter before the thread is milled");
    }
  }

  /** The thread of a designation; reports an invalid one at the item. */
  static Optional<ThreadSpec> designation(
      DesignationCheck designations, SheetItem item, String text) {
    try {
      return Optional.of(designations.parse(text));
    } catch (InvalidDesignationException e) {
      String what = item.label() + ": " + e.getMessage();
      item.log().report(Code.SH07, item.place(), what, e.why(), e.fix());
      return Optional.empty();
    }
  }

  private Optional<Double> threadDepth(
      SheetTable table, boolean threaded, Optional<Depth> depth, String called) {
    Optional<SheetItem> item = table.item("thread-depth");
    if (item.isEmpty() && threaded) {
      log.assume(called + ": thread-depth not stated: the whole depth");
    }
    if (item.isPresent() && !table.has("thread")) {
      table.reportMissing("thread", "a thread-depth without a thread says nothing");
    }
    Optional<Double> threadDepth = item.flatMap(SheetItem::lengthAboveZero);
    Optional<Double> limit = depth.flatMap(Depth::limit);
    if (threadDepth.isPresent() && limit.isPresent() && threadDepth.get() > limit.get()) {
      item.orElseThrow().impossible("it must not exceed the depth, " + log.shown(limit.get()));
    }
    return threadDepth;
  }
}
