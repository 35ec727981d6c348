package flankfit.check;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.metal.Metal;
import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.setup.Hole;
import flankfit.setup.Stock;
import flankfit.unit.Tolerance;

/**
 * What of stock, holes and program does not fit together: HZ19 a hole that the stock does not hold,
 * HZ20 a zero outside the stock, HZ21 a program that cuts nothing.
 */
final class StockRules {
  private StockRules() {}

  /** Compares the sheet's stock with its holes and zero. */
  static void check(Scene scene) {
    Stock stock = scene.stock().orElseThrow();
    for (Hole hole : scene.sheet().holes()) {
      checkHole(scene, stock, hole);
    }
    checkZero(scene, stock.box());
  }

  private static void checkHole(Scene scene, Stock stock, Hole hole) {
    double edge = fromEdge(stock, hole.x(), hole.y());
    double radius = hole.diameter() / 2;
    String kind = hole.boss() ? "boss " : "hole ";
    double tolerance = Tolerance.MODEL.value();
    if (edge < 0) {
      tell(
          scene,
          hole,
          kind + hole.name() + " stands " + scene.text().length(-edge) + " beside the stock",
          "X" + scene.text().coordinate(hole.x()) + " Y" + scene.text().coordinate(hole.y()));
    } else if (edge < radius - tolerance) {
      tell(
          scene,
          hole,
          kind
              + hole.name()
              + " is "
              + scene.text().length(hole.diameter())
              + " wide, and its axis is "
              + scene.text().length(edge)
              + " from the edge of the stock",
          "the stock does not hold all of it");
    } else if (hole.top() - hole.depth().orElse(0.0) < stock.bottom() - tolerance) {
      tell(
          scene,
          hole,
          kind
              + hole.name()
              + " goes "
              + scene.text().length(stock.bottom() - hole.top() + hole.depth().orElse(0.0))
              + " below the stock",
          "the stock is "
              + scene.text().length(stock.top() - stock.bottom())
              + " high; a hole through it has depth = \"through\"");
    }
  }

  private static void tell(Scene scene, Hole hole, String what, String why) {
    scene.report(
        Code.HZ19,
        new Place(scene.sheet().file(), hole.line(), 0, 0),
        what,
        why,
        "check size and zero of the stock, and the place of the hole");
  }

  /** Distance of an upright line from the edge of the stock's plan (mm); below 0 outside. */
  private static double fromEdge(Stock stock, double x, double y) {
    Extents box = stock.box();
    return switch (stock.shape()) {
      case BLOCK, MESH ->
          Math.min(
              Math.min(x - box.min().x(), box.max().x() - x),
              Math.min(y - box.min().y(), box.max().y() - y));
      case CYLINDER, TUBE -> {
        Point middle = box.middle();
        double radius = (box.max().x() - box.min().x()) / 2;
        yield radius - Math.hypot(x - middle.x(), y - middle.y());
      }
    };
  }

  private static void checkZero(Scene scene, Extents box) {
    double out = 0;
    for (int axis = 0; axis < 3; axis++) {
      out = Math.max(out, Math.max(box.min().axis(axis), -box.max().axis(axis)));
    }
    if (out > Tolerance.MODEL.value()) {
      scene.report(
          Code.HZ20,
          Place.file(scene.sheet().file()),
          "the zero of the part lies " + scene.text().length(out) + " outside the stock",
          "every place counts from there; stock.zero is counted from the low corner of the stock",
          "check zero in [stock]");
    }
  }

  /** Tells that nothing was cut. */
  static void nothingCut(Scene scene, Metal metal) {
    boolean known = metal.cuts().unknown().isEmpty();
    String why =
        known
            ? "no spinning tool of the sheet passes through the stock"
            : "tools " + metal.cuts().unknown().keySet() + " are not known well enough";
    scene.report(
        Code.HZ21,
        Place.file(scene.file()),
        "the program cuts nothing",
        why,
        known
            ? "check stock, work offset, tool length and spindle"
            : "describe the tools in the sheet");
  }
}
