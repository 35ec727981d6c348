package flankfit.setup;

import flankfit.finding.Code;
import flankfit.motion.Extents;
import flankfit.motion.Point;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads {@code [stock]} and {@code [[keep-out]]}. */
final class BodyReader {
  private static final List<Choice<Stock.Shape>> SHAPES =
      List.of(
          Choice.of("block", Stock.Shape.BLOCK),
          Choice.of("cylinder", Stock.Shape.CYLINDER),
          Choice.of("tube", Stock.Shape.TUBE),
          Choice.of("mesh", Stock.Shape.MESH));

  private static final String ENDING = ".stl";

  private BodyReader() {}

  static Keys stockKeys() {
    return Keys.none()
        .and("shape", "\"block\", \"cylinder\", \"tube\" or \"mesh\"")
        .and("size", "three lengths above 0, [x, y, z]")
        .and("diameter", "a length above 0")
        .and("height", "a length above 0")
        .and("bore", "a length above 0, below the diameter")
        .and("zero", "a point, [x, y, z], from the low corner of the stock")
        .and("file", "the name of an STL file beside the sheet");
  }

  static Keys keepOutKeys() {
    return Keys.none()
        .and("name", "text")
        .and("min", "the low corner, [x, y, z]")
        .and("max", "the high corner, [x, y, z]");
  }

  static Optional<Stock> stock(SheetTable table, StockFiles files) {
    Optional<Stock.Shape> shape = table.needed("shape").flatMap(i -> i.choice(SHAPES));
    Optional<Point> zero = table.needed("zero").flatMap(SheetItem::point);
    if (shape.isEmpty()) {
      return Optional.empty();
    }
    refuseKeysOfOtherShapes(table, shape.get());
    if (shape.get() == Stock.Shape.MESH) {
      return mesh(table, zero, files);
    }
    Optional<Point> size = shape.get() == Stock.Shape.BLOCK ? blockSize(table) : roundSize(table);
    double bore = shape.get() == Stock.Shape.TUBE ? bore(table, size) : 0;
    return size.isPresent() && zero.isPresent()
        ? Optional.of(new Stock(shape.get(), box(size.get(), zero.get()), bore))
        : Optional.empty();
  }

  private static Optional<Stock> mesh(SheetTable table, Optional<Point> zero, StockFiles files) {
    Optional<SheetItem> item = table.needed("file");
    Optional<String> name = item.flatMap(SheetItem::fileName);
    if (name.isEmpty() || zero.isEmpty()) {
      return Optional.empty();
    }
    SheetLog log = table.log();
    if (!name.get().toLowerCase(Locale.ROOT).endsWith(ENDING)) {
      log.report(
          Code.SH08,
          item.get().place(),
          "stock file " + name.get() + " does not end in " + ENDING,
          "stock from a mesh is read from STL alone",
          "export the stock as STL");
      return Optional.empty();
    }
    try {
      Point size = files.size(name.get());
      log.assume(
          "stock: path and rules see the box of "
              + name.get()
              + ", "
              + log.shown(size.x())
              + " by "
              + log.shown(size.y())
              + " by "
              + log.shown(size.z())
              + "; the metal is cut from the mesh");
      return Optional.of(new Stock(Stock.Shape.MESH, box(size, zero.get()), 0, name));
    } catch (StockFileException e) {
      log.report(Code.SH09, item.get().place(), e.what(), e.why(), e.fix());
      return Optional.empty();
    }
  }

  private static void refuseKeysOfOtherShapes(SheetTable table, Stock.Shape shape) {
    List<String> foreign =
        switch (shape) {
          case BLOCK -> List.of("diameter", "height", "bore", "file");
          case CYLINDER -> List.of("size", "bore", "file");
          case TUBE -> List.of("size", "file");
          case MESH -> List.of("size", "diameter", "height", "bore");
        };
    for (String key : foreign) {
      table
          .item(key)
          .ifPresent(
              i -> i.impossible("stock of this shape has no " + key, "leave " + key + " out"));
    }
  }

  private static Optional<Point> blockSize(SheetTable table) {
    Optional<SheetItem> item = table.needed("size");
    return item.flatMap(SheetItem::point)
        .flatMap(
            p ->
                p.x() > 0 && p.y() > 0 && p.z() > 0
                    ? Optional.of(p)
                    : item.orElseThrow().impossible("every length must be above 0"));
  }

  private static Optional<Point> roundSize(SheetTable table) {
    Optional<Double> diameter = table.needed("diameter").flatMap(SheetItem::lengthAboveZero);
    Optional<Double> height = table.needed("height").flatMap(SheetItem::lengthAboveZero);
    return diameter.flatMap(d -> height.map(h -> new Point(d, d, h)));
  }

  private static double bore(SheetTable table, Optional<Point> size) {
    Optional<SheetItem> item = table.needed("bore");
    Optional<Double> bore = item.flatMap(SheetItem::lengthAboveZero);
    if (bore.isPresent() && size.isPresent() && bore.get() >= size.get().x()) {
      item.orElseThrow()
          .impossible("it must be below the diameter, " + table.log().shown(size.get().x()));
    }
    return bore.orElse(0.0);
  }

  private static Extents box(Point size, Point zero) {
    return new Extents(
        new Point(0 - zero.x(), 0 - zero.y(), 0 - zero.z()),
        new Point(size.x() - zero.x(), size.y() - zero.y(), size.z() - zero.z()));
  }

  static Optional<KeepOut> keepOut(SheetTable table) {
    Optional<String> name = table.needed("name").flatMap(SheetItem::text);
    Optional<Point> min = table.needed("min").flatMap(SheetItem::point);
    Optional<SheetItem> high = table.needed("max");
    Optional<Point> max = high.flatMap(SheetItem::point);
    if (name.isEmpty() || min.isEmpty() || max.isEmpty()) {
      return Optional.empty();
    }
    for (int axis = 0; axis < 3; axis++) {
      if (min.get().axis(axis) >= max.get().axis(axis)) {
        return high.orElseThrow().impossible("max must lie above min on every axis");
      }
    }
    return Optional.of(new KeepOut(name.get(), new Extents(min.get(), max.get())));
  }
}
