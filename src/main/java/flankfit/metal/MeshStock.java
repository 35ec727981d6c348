package flankfit.metal;

import flankfit.motion.Extents;
import flankfit.solid.MeshBody;

/** The body of a mesh file, moved so that the low corner of its box is that of the stock's. */
record MeshStock(MeshBody body, double shiftX, double shiftY, double shiftZ) {
  MeshStock(MeshBody body, Extents box) {
    this(
        body,
        box.min().x() - body.low(0),
        box.min().y() - body.low(1),
        box.min().z() - body.low(2));
  }

  double distance(double x, double y, double z) {
    return body.value(x - shiftX, y - shiftY, z - shiftZ);
  }

  void normal(double x, double y, double z, double[] target) {
    body.normal(x - shiftX, y - shiftY, z - shiftZ, target);
  }
}
