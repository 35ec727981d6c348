package flankfit.metal;

import flankfit.solid.Crossing;
import flankfit.solid.Solid;
import flankfit.solid.SurfaceCells;

/** The metal after some moves: a view of a {@link Metal}, cheap to make. */
final class MetalSolid implements Solid {
  private final Metal metal;
  private final int after;

  MetalSolid(Metal metal, int after) {
    this.metal = metal;
    this.after = after;
  }

  @Override
  public double value(double x, double y, double z) {
    return metal.probe().value(x, y, z, after);
  }

  @Override
  public void crossing(
      double metalX,
      double metalY,
      double metalZ,
      double airX,
      double airY,
      double airZ,
      Crossing result) {
    metal.probe().crossing(metalX, metalY, metalZ, airX, airY, airZ, after, true, result);
  }

  @Override
  public SurfaceCells cells() {
    return metal.cells(after);
  }
}
