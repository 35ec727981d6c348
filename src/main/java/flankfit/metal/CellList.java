package flankfit.metal;

import flankfit.solid.SurfaceCells;

/** The cells that hold surface at one moment, and their neighbours, in the octree's order. */
class CellList implements SurfaceCells {
  private static final int NUMBERS = 4;

  private final Lattice lattice;
  private final Corners corners;

  /** Rows of four numbers: place and side in finest cells. */
  private final int[] cells;

  private int count;

  /**
   * A list yet empty.
   *
   * @param most number of cells that there will be
   */
  CellList(Lattice lattice, Corners corners, int most) {
    this.lattice = lattice;
    this.corners = corners;
    this.cells = new int[Math.multiplyExact(NUMBERS, most)];
  }

  /** Adds a cell of a leaf; only while the list is made. */
  final void add(Node leaf, CellCursor cell) {
    int side = leaf.cell();
    int at = NUMBERS * count;
    cells[at] = leaf.x + cell.i * side;
    cells[at + 1] = leaf.y + cell.j * side;
    cells[at + 2] = leaf.z + cell.k * side;
    cells[at + 3] = side;
    count++;
  }

  @Override
  public double originX() {
    return lattice.originX();
  }

  @Override
  public double originY() {
    return lattice.originY();
  }

  @Override
  public double originZ() {
    return lattice.originZ();
  }

  @Override
  public double cell() {
    return lattice.cell();
  }

  @Override
  public int count() {
    return count;
  }

  @Override
  public int x(int leaf) {
    return cells[NUMBERS * leaf];
  }

  @Override
  public int y(int leaf) {
    return cells[NUMBERS * leaf + 1];
  }

  @Override
  public int z(int leaf) {
    return cells[NUMBERS * leaf + 2];
  }

  @Override
  public int size(int leaf) {
    return cells[NUMBERS * leaf + 3];
  }

  @Override
  public boolean metal(int x, int y, int z) {
    return corners.metal(x, y, z);
  }
}
