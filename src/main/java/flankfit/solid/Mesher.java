package flankfit.solid;

/** Makes a mesh, phase by phase. */
final class Mesher {
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
    Share share = Share.of(cells, edges);
    Hermite hermite = Hermite.of(solid, cells, edges, share, workers);
    Sheets sheets = Sheets.of(solid, cells, index, edges, share, workers);
    Polygons.Middles middles = Polygons.middles(cells, edges, sheets);
    Vertices vertices = Vertices.of(solid, cells, hermite, sheets, share, workers);
    Polygons.Source source =
        new Polygons.Source(cells, edges, share, hermite, sheets, vertices, middles);
    Triangles triangles = Triangles.of(source, workers);
    return new MeshAssembly(solid, source, triangles, meshing.opennessStep(), workers).mesh();
  }
}
