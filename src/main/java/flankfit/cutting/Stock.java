package flankfit.cutting;

/** What earlier passes left for a row of a later one. */
public interface Stock {
  /**
   * The metal a row meets.
   *
   * @param step number of the pass, from 0
   * @param row number of the row among those in the metal, from 0
   * @param cutShort how far each row of each earlier pass was pushed off its path (mm)
   */
  Metal before(int step, int row, double[][] cutShort);

  /**
   * How far the metal stands in front of the row's path (mm): by how much less the deepest earlier
   * pass reached there than this path would; not above 0 when nothing is left, infinite before the
   * first pass.
   *
   * @param step number of the pass, from 0
   * @param row number of the row, from 0
   * @param cutShort how far each row of each earlier pass was pushed off its path (mm)
   */
  double standing(int step, int row, double[][] cutShort);
}
