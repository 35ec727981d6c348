package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.SurfaceStore.Part;
import flankfit.setup.Hole;
import flankfit.setup.KeepOut;
import flankfit.setup.Stock;
import java.util.ArrayList;
import java.util.List;

/** Stock, holes and keep-outs of a scene as faces and edges. */
final class Furniture {
  private final Scene scene;
  private final SurfaceStore faces;
  private final LineStore edges;
  private final List<Barrel> barrels = new ArrayList<>();

  /** Builds all faces and edges. */
  Furniture(Scene scene) {
    this.scene = scene;
    faces = new SurfaceStore(scene.origin());
    edges = new LineStore(scene.origin());
    scene.setup().stock().ifPresent(this::stock);
    for (Hole hole : scene.setup().holes()) {
      if (hole.boss()) {
        boss(hole);
      } else {
        hole(hole);
      }
    }
    for (KeepOut keepOut : scene.setup().keepOuts()) {
      box(keepOut.box(), Part.KEEP_OUT, Part.KEEP_OUT, Part.KEEP_OUT, LineStyles.KEEP_OUT_EDGE);
    }
  }

  /** The faces. */
  SurfaceStore faces() {
    return faces;
  }

  /** The edges. */
  LineStore edges() {
    return edges;
  }

  /**
   * The outlines that upright barrels show to an eye.
   *
   * @param rightX part of X that points to the right in the frame (1)
   * @param rightY part of Y that points to the right in the frame (1)
   */
  LineStore outlines(double rightX, double rightY) {
    LineStore outlines = new LineStore(scene.origin());
    for (Barrel barrel : barrels) {
      for (int side = -1; side <= 1; side += 2) {
        double x = barrel.x + side * rightX * barrel.radius;
        double y = barrel.y + side * rightY * barrel.radius;
        outlines.segment(new Point(x, y, barrel.low), new Point(x, y, barrel.high), barrel.style);
      }
    }
    return outlines;
  }

  /** An upright cylinder whose outline depends on where the eye stands (mm). */
  private record Barrel(double x, double y, double radius, double low, double high, int style) {}

  private void stock(Stock stock) {
    Extents box = stock.box();
    switch (stock.shape()) {
      case BLOCK, MESH ->
          box(box, Part.STOCK_SIDES, Part.STOCK_TOP, Part.STOCK_BOTTOM, LineStyles.STOCK_EDGE);
      case CYLINDER -> round(box);
      case TUBE -> {
        round(box);
        Point m = box.middle();
        bore(m.x(), m.y(), stock.top(), stock.bottom(), stock.bore() / 2, true);
      }
    }
  }

  private void round(Extents box) {
    Point m = box.middle();
    double r = (box.max().x() - box.min().x()) / 2;
    double low = box.min().z();
    double high = box.max().z();
    int sides = SurfaceStore.sides(r);
    faces.frustum(m.x(), m.y(), low, r, high, r);
    faces.end(Part.STOCK_SIDES);
    faces.disc(m.x(), m.y(), high, r, sides, true);
    faces.end(Part.STOCK_TOP);
    faces.disc(m.x(), m.y(), low, r, sides, false);
    faces.end(Part.STOCK_BOTTOM);
    edges.circle(m.x(), m.y(), high, r, sides, LineStyles.STOCK_EDGE);
    edges.circle(m.x(), m.y(), low, r, sides, LineStyles.STOCK_EDGE);
    sideLines(m.x(), m.y(), r, low, high, LineStyles.STOCK_EDGE);
  }

  private void box(Extents box, Part sides, Part top, Part bottom, int edge) {
    Point a = box.min();
    Point b = box.max();
    double[][] low = corners(a, b, a.z());
    double[][] high = corners(a, b, b.z());
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      faces.quad(low[i], low[j], high[j], high[i]);
    }
    faces.end(sides);
    faces.quad(high[0], high[1], high[2], high[3]);
    faces.end(top);
    faces.quad(low[3], low[2], low[1], low[0]);
    faces.end(bottom);
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      edges.segment(point(low[i]), point(low[j]), edge);
      edges.segment(point(high[i]), point(high[j]), edge);
      edges.segment(point(low[i]), point(high[i]), edge);
    }
  }

  private static double[][] corners(Point a, Point b, double z) {
    return new double[][] {
      {a.x(), a.y(), z}, {b.x(), a.y(), z}, {b.x(), b.y(), z}, {a.x(), b.y(), z}
    };
  }

  private static Point point(double[] p) {
    return new Point(p[0], p[1], p[2]);
  }

  private void hole(Hole hole) {
    double r = hole.diameter() / 2;
    double low = hole.depth().map(d -> hole.top() - d).orElse(scene.bottom());
    boolean through = hole.depth().isEmpty() || low <= scene.bottom();
    bore(hole.x(), hole.y(), hole.top(), low, r, through);
    if (!through) {
      floor(hole, low, r);
    }
    hole.countersink().ifPresent(c -> ring(hole, c.diameter() / 2, LineStyles.HOLE_EDGE));
    scene.majorDiameter(hole).ifPresent(d -> thread(hole, d / 2, low));
  }

  private void bore(double x, double y, double high, double low, double r, boolean through) {
    int sides = SurfaceStore.sides(r);
    faces.disc(x, y, high, r, sides, true);
    faces.end(Part.HOLE_MOUTH);
    if (through) {
      faces.disc(x, y, low, r, sides, false);
      faces.end(Part.HOLE_EXIT);
    }
    faces.frustum(x, y, low, r, high, r);
    faces.end(Part.HOLE_WALL);
    edges.circle(x, y, high, r, sides, LineStyles.HOLE_EDGE);
    edges.circle(x, y, low, r, sides, LineStyles.HOLE_EDGE);
    sideLines(x, y, r, low, high, LineStyles.HOLE_EDGE);
  }

  private void sideLines(double x, double y, double r, double low, double high, int style) {
    barrels.add(new Barrel(x, y, r, low, high, style));
  }

  private void floor(Hole hole, double low, double r) {
    double slope = Math.tan(hole.bottomAngle() / 2);
    double drop = hole.bottomAngle() < 3.1 ? r / slope : 0;
    if (drop > 0) {
      faces.frustum(hole.x(), hole.y(), low - drop, 0, low, r);
      Point tip = new Point(hole.x(), hole.y(), low - drop);
      for (int side = -1; side <= 1; side += 2) {
        edges.segment(tip, new Point(hole.x() + side * r, hole.y(), low), LineStyles.HOLE_EDGE);
        edges.segment(tip, new Point(hole.x(), hole.y() + side * r, low), LineStyles.HOLE_EDGE);
      }
    } else {
      faces.disc(hole.x(), hole.y(), low, r, SurfaceStore.sides(r), true);
    }
    faces.end(Part.HOLE_FLOOR);
  }

  private void thread(Hole hole, double r, double low) {
    double end = hole.threadDepth().map(d -> Math.max(low, hole.top() - d)).orElse(low);
    ring(hole, r, LineStyles.THREAD_EDGE);
    int sides = SurfaceStore.sides(r);
    edges.circle(hole.x(), hole.y(), end, r, sides, LineStyles.THREAD_EDGE);
    sideLines(hole.x(), hole.y(), r, end, hole.top(), LineStyles.THREAD_EDGE);
  }

  private void ring(Hole hole, double r, int style) {
    edges.circle(hole.x(), hole.y(), hole.top(), r, SurfaceStore.sides(r), style);
  }

  private void boss(Hole boss) {
    double r = boss.diameter() / 2;
    double low = boss.depth().map(d -> boss.top() - d).orElse(scene.bottom());
    faces.frustum(boss.x(), boss.y(), low, r, boss.top(), r);
    faces.end(Part.HOLE_WALL);
    ring(boss, r, LineStyles.HOLE_EDGE);
    edges.circle(boss.x(), boss.y(), low, r, SurfaceStore.sides(r), LineStyles.HOLE_EDGE);
    sideLines(boss.x(), boss.y(), r, low, boss.top(), LineStyles.HOLE_EDGE);
    scene.majorDiameter(boss).ifPresent(d -> thread(boss, d / 2, low));
  }
}
