package flankfit.solid;

/** Makes a mesh, phase by phase. */
final class Mesher {
  private static final int EDGES_IN_PIECE = 2048;

  /** Times that vertices whose polygons fold over are put back into their leaves. */
  private static final int ROUNDS = 3;

  private final Solid solid;
  private final Meshing meshing;
  private final Workers workers;
  private final SurfaceCells cells;

  Mesher(Solid solid, Meshing meshing) {
    this.solid = solid;
    this.meshing = meshing;
    workers = new Workers(meshing.threads(), meshing.halt());
    cells = solid.cells();
  }

  Mesh mesh() {
    LeafIndex index = new LeafIndex(cells);
    GridEdges edges = GridEdges.of(cells, index, workers);
    Hermite hermite = Hermite.of(solid, cells, edges, workers);
    Sheets sheets = Sheets.of(solid, cells, index, edges, workers);
    Polygons.Middles middles = Polygons.middles(cells, edges, sheets);
    boolean[] inside = new boolean[sheets.vertexCount()];
    Vertices vertices = Vertices.of(solid, cells, hermite, sheets, workers);
    Polygons.Source source = new Polygons.Source(cells, edges, hermite, sheets, vertices, middles);
    for (int round = 0; round < ROUNDS && markFolds(source, inside); round++) {
      vertices = vertices.withInside(inside, solid, cells, hermite, sheets, workers);
      source = new Polygons.Source(cells, edges, hermite, sheets, vertices, middles);
    }
    Triangles triangles = Triangles.of(source, workers);
    return new MeshAssembly(solid, source, triangles, meshing.opennessStep(), workers).mesh();
  }

  /**
   * Marks vertices outside their leaves in polygons that fold over; true if there are new marks.
   */
  private boolean markFolds(Polygons.Source source, boolean[] inside) {
    int edges = source.edges().count();
    IntColumn[] parts = new IntColumn[Workers.pieces(edges, EDGES_IN_PIECE)];
    workers.run(
        edges,
        EDGES_IN_PIECE,
        () -> {
          PolygonCutter cutter = new PolygonCutter(source);
          return (piece, from, to) -> {
            IntColumn marks = new IntColumn();
            for (int edge = from; edge < to; edge++) {
              cutter.cut(edge);
              if (cutter.foldsOver()) {
                cutter.collectOutside(marks);
              }
            }
            parts[piece] = marks;
          };
        });
    boolean marked = false;
    for (int vertex : IntColumn.joined(parts)) {
      marked |= !inside[vertex];
      inside[vertex] = true;
    }
    return marked;
  }
}
