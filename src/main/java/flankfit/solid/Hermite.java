package flankfit.solid;

/** Where surface crosses the edges of the grid: exact places, normals and makers. */
final class Hermite {
  private static final int EDGES_IN_PIECE = 1024;

  private final double[] places;
  private final double[] normals;
  private final int[] makers;

  private Hermite(int edges) {
    places = new double[Math.multiplyExact(edges, 3)];
    normals = new double[edges * 3];
    makers = new int[edges];
  }

  static Hermite of(
      Solid solid, SurfaceCells cells, GridEdges edges, Share share, Workers workers) {
    Hermite result = new Hermite(edges.count());
    workers.run(
        edges.count(),
        EDGES_IN_PIECE,
        () -> {
          Crossing crossing = new Crossing();
          double[] low = new double[3];
          double[] high = new double[3];
          return (piece, from, to) -> {
            for (int edge = from; edge < to; edge++) {
              if (share.asks(edge)) {
                result.fill(solid, cells, edges, edge, low, high, crossing);
              }
            }
          };
        });
    return result;
  }

  private void fill(
      Solid solid,
      SurfaceCells cells,
      GridEdges edges,
      int edge,
      double[] low,
      double[] high,
      Crossing crossing) {
    double cell = cells.cell();
    int axis = edges.axis(edge);
    low[0] = cells.originX() + edges.low(edge, 0) * cell;
    low[1] = cells.originY() + edges.low(edge, 1) * cell;
    low[2] = cells.originZ() + edges.low(edge, 2) * cell;
    high[0] = low[0];
    high[1] = low[1];
    high[2] = low[2];
    double origin = axis == 0 ? cells.originX() : axis == 1 ? cells.originY() : cells.originZ();
    high[axis] = origin + (edges.low(edge, axis) + edges.length(edge)) * cell;
    double[] metal = edges.metalLow(edge) ? low : high;
    double[] air = edges.metalLow(edge) ? high : low;
    solid.edge(metal[0], metal[1], metal[2], air[0], air[1], air[2], crossing);
    places[3 * edge] = crossing.x();
    places[3 * edge + 1] = crossing.y();
    places[3 * edge + 2] = crossing.z();
    normals[3 * edge] = crossing.normalX();
    normals[3 * edge + 1] = crossing.normalY();
    normals[3 * edge + 2] = crossing.normalZ();
    makers[edge] = crossing.maker();
  }

  /** Coordinate of the crossing (mm). */
  double place(int edge, int axis) {
    return places[3 * edge + axis];
  }

  /** Coordinate of the unit normal, out of metal. */
  double normal(int edge, int axis) {
    return normals[3 * edge + axis];
  }

  int maker(int edge) {
    return makers[edge];
  }
}
