package flankfit.metal;

import flankfit.solid.Crossing;
import flankfit.solid.Solid;
import flankfit.solid.SurfaceCells;
import java.util.Optional;

/** The metal after some moves: a view of a {@link Metal}, cheap to make. */
final class MetalSolid implements Solid {
  private final Metal metal;
  private final int after;
  private final Optional<Node> block;

  MetalSolid(Metal metal, int after) {
    this(metal, after, Optional.empty());
  }

  /** The same with the cells of one block alone. */
  MetalSolid(Metal metal, int after, Node block) {
    this(metal, after, Optional.of(block));
  }

  private MetalSolid(Metal metal, int after, Optional<Node> block) {
    this.metal = metal;
    this.after = after;
    this.block = block;
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
  public boolean isMetal(double x, double y, double z) {
    return metal.quick().isMetal(x, y, z, after);
  }

  @Override
  public double air(double x, double y, double z, double enough) {
    return metal.quick().air(x, y, z, after, enough);
  }

  @Override
  public void edge(
      double metalX,
      double metalY,
      double metalZ,
      double airX,
      double airY,
      double airZ,
      Crossing result) {
    if (!metal.quick().crossing(metalX, metalY, metalZ, airX, airY, airZ, after, result)) {
      crossing(metalX, metalY, metalZ, airX, airY, airZ, result);
    }
  }

  @Override
  public SurfaceCells cells() {
    return block.isPresent() ? metal.cells(block.get(), after) : metal.cells(after);
  }
}
