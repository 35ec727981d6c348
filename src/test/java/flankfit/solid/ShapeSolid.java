package flankfit.solid;

/** An analytic shape on an octree of its own. */
final class ShapeSolid implements Solid {
  private final Shape shape;
  private final SurfaceCells cells;

  ShapeSolid(Shape shape, SurfaceCells cells) {
    this.shape = shape;
    this.cells = cells;
  }

  /** A shape on cells of one size within a cube. */
  static ShapeSolid uniform(Shape shape, double low, double side, int cellsAlong) {
    return new ShapeSolid(
        shape, ShapeCells.of(shape, low, low, low, side, cellsAlong, (x, y, z) -> 1));
  }

  @Override
  public double value(double x, double y, double z) {
    return shape.at(x, y, z);
  }

  @Override
  public void crossing(
      double mx, double my, double mz, double ax, double ay, double az, Crossing result) {
    double length =
        Math.sqrt((ax - mx) * (ax - mx) + (ay - my) * (ay - my) + (az - mz) * (az - mz));
    double metal = 0;
    double air = 0;
    while (true) {
      double value = at(mx, my, mz, ax, ay, az, air);
      if (value >= 0 || air >= 1) {
        break;
      }
      metal = air;
      air = Math.min(1, air + Math.max(-value / length, 2e-3));
    }
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (metal + air);
      if (at(mx, my, mz, ax, ay, az, middle) < 0) {
        metal = middle;
      } else {
        air = middle;
      }
    }
    double x = mx + air * (ax - mx);
    double y = my + air * (ay - my);
    double z = mz + air * (az - mz);
    Shape face = shape.face(x, y, z);
    double h = 1e-6;
    double nx = face.at(x + h, y, z) - face.at(x - h, y, z);
    double ny = face.at(x, y + h, z) - face.at(x, y - h, z);
    double nz = face.at(x, y, z + h) - face.at(x, y, z - h);
    double n = Math.sqrt(nx * nx + ny * ny + nz * nz);
    result.place(x, y, z);
    result.normal(nx / n, ny / n, nz / n);
    result.maker(face.maker());
  }

  private double at(
      double mx, double my, double mz, double ax, double ay, double az, double share) {
    return shape.at(mx + share * (ax - mx), my + share * (ay - my), mz + share * (az - mz));
  }

  @Override
  public SurfaceCells cells() {
    return cells;
  }
}
