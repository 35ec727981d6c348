package flankfit.solid;

/** An analytic body for tests: below 0 inside, its size never more than the distance. */
interface Shape {
  double at(double x, double y, double z);

  /** The smooth shape that the surface belongs to near a place. */
  default Shape face(double x, double y, double z) {
    return this;
  }

  /** Maker of a smooth shape. */
  default int maker() {
    return Crossing.STOCK;
  }

  /** The same smooth shape made by a move. */
  default Shape madeBy(int move) {
    Shape self = this;
    return new Shape() {
      @Override
      public double at(double x, double y, double z) {
        return self.at(x, y, z);
      }

      @Override
      public int maker() {
        return move;
      }
    };
  }

  /** Half-space below a plane with a unit normal. */
  static Shape plane(double nx, double ny, double nz, double offset) {
    return (x, y, z) -> nx * x + ny * y + nz * z - offset;
  }

  static Shape sphere(double cx, double cy, double cz, double radius) {
    return (x, y, z) ->
        Math.sqrt((x - cx) * (x - cx) + (y - cy) * (y - cy) + (z - cz) * (z - cz)) - radius;
  }

  /** Endless cylinder along an axis 0, 1, 2 through a point. */
  static Shape cylinder(int axis, double cx, double cy, double cz, double radius) {
    return (x, y, z) -> {
      double dx = axis == 0 ? 0 : x - cx;
      double dy = axis == 1 ? 0 : y - cy;
      double dz = axis == 2 ? 0 : z - cz;
      return Math.sqrt(dx * dx + dy * dy + dz * dz) - radius;
    };
  }

  /** Endless cone about a line along z, opening upward from its tip. */
  static Shape cone(double cx, double cy, double tip, double halfAngle) {
    double c = Math.cos(halfAngle);
    double s = Math.sin(halfAngle);
    return (x, y, z) -> c * Math.hypot(x - cx, y - cy) - s * (z - tip);
  }

  /** Torus about z. */
  static Shape torus(double cz, double ring, double tube) {
    return (x, y, z) -> Math.hypot(Math.hypot(x, y) - ring, z - cz) - tube;
  }

  /** One flank of a V groove along a helix about z; inside is the groove's side of the flank. */
  static Shape flank(int side, double pitch, double rootRadius, double tangent, double least) {
    double lead = pitch / (2 * Math.PI);
    double scale = Math.sqrt(1 + tangent * tangent + lead * lead / (least * least));
    return (x, y, z) -> {
      double turn = z - lead * Math.atan2(y, x);
      double along = turn - pitch * Math.rint(turn / pitch);
      return (side * along - (rootRadius - Math.hypot(x, y)) * tangent) / scale;
    };
  }

  static Shape block(double x0, double y0, double z0, double x1, double y1, double z1) {
    return both(
        plane(-1, 0, 0, -x0),
        plane(1, 0, 0, x1),
        plane(0, -1, 0, -y0),
        plane(0, 1, 0, y1),
        plane(0, 0, -1, -z0),
        plane(0, 0, 1, z1));
  }

  static Shape not(Shape shape) {
    return new Shape() {
      @Override
      public double at(double x, double y, double z) {
        return -shape.at(x, y, z);
      }

      @Override
      public Shape face(double x, double y, double z) {
        Shape face = shape.face(x, y, z);
        return face == shape ? this : not(face);
      }

      @Override
      public int maker() {
        return shape.maker();
      }
    };
  }

  /** What lies in all of them. */
  static Shape both(Shape... shapes) {
    return new Shape() {
      @Override
      public double at(double x, double y, double z) {
        double most = Double.NEGATIVE_INFINITY;
        for (Shape shape : shapes) {
          most = Math.max(most, shape.at(x, y, z));
        }
        return most;
      }

      @Override
      public Shape face(double x, double y, double z) {
        double most = Double.NEGATIVE_INFINITY;
        Shape best = this;
        for (Shape shape : shapes) {
          double value = shape.at(x, y, z);
          if (value > most) {
            most = value;
            best = shape;
          }
        }
        return best.face(x, y, z);
      }
    };
  }

  /** What lies in the first and in none of the others. */
  static Shape minus(Shape shape, Shape... gone) {
    Shape[] all = new Shape[gone.length + 1];
    all[0] = shape;
    for (int i = 0; i < gone.length; i++) {
      all[i + 1] = not(gone[i]);
    }
    return both(all);
  }

  /** What lies in either. */
  static Shape either(Shape... shapes) {
    Shape[] outside = new Shape[shapes.length];
    for (int i = 0; i < shapes.length; i++) {
      outside[i] = not(shapes[i]);
    }
    return not(both(outside));
  }
}
