package flankfit.solid;

/** Vertices of all sheets with the normals of the faces that meet there. */
final class Vertices {
  private static final int LEAVES_IN_PIECE = 1024;

  final double[] places;
  final int[] normalStarts;
  double[] normals = new double[0];

  private Vertices(int count) {
    places = new double[Math.multiplyExact(count, 3)];
    normalStarts = new int[count + 1];
  }

  /** Places all vertices. */
  static Vertices of(
      Solid solid,
      SurfaceCells cells,
      Hermite hermite,
      Sheets sheets,
      Share share,
      Workers workers) {
    Vertices result = new Vertices(sheets.vertexCount());
    DoubleColumn[] parts = new DoubleColumn[Workers.pieces(cells.count(), LEAVES_IN_PIECE)];
    workers.run(
        cells.count(),
        LEAVES_IN_PIECE,
        () -> {
          VertexPlacer placer = new VertexPlacer(solid, cells, hermite);
          return (piece, from, to) -> {
            DoubleColumn normals = new DoubleColumn();
            for (int leaf = from; leaf < to; leaf++) {
              int first = sheets.firstVertex(leaf);
              int end = share.needs(leaf) ? sheets.firstVertex(leaf + 1) : first;
              for (int vertex = first; vertex < end; vertex++) {
                placer.enter(sheets, leaf, vertex - first);
                placer.place();
                result.keep(vertex, placer, normals);
              }
            }
            parts[piece] = normals;
          };
        });
    result.normals = DoubleColumn.joined(parts);
    for (int vertex = 0; vertex < result.count(); vertex++) {
      result.normalStarts[vertex + 1] += result.normalStarts[vertex];
    }
    return result;
  }

  private void keep(int vertex, VertexPlacer placer, DoubleColumn to) {
    for (int axis = 0; axis < 3; axis++) {
      places[3 * vertex + axis] = placer.at(axis);
    }
    normalStarts[vertex + 1] = placer.faces();
    for (int face = 0; face < placer.faces(); face++) {
      to.add(placer.normal(face, 0), placer.normal(face, 1), placer.normal(face, 2));
    }
  }

  int count() {
    return normalStarts.length - 1;
  }

  /** The one of a vertex's normals that is nearest to a given one, as index of all normals. */
  int nearestNormal(int vertex, double nx, double ny, double nz) {
    int best = normalStarts[vertex];
    double bestDot = -2;
    for (int at = best; at < normalStarts[vertex + 1]; at++) {
      double dot = nx * normals[3 * at] + ny * normals[3 * at + 1] + nz * normals[3 * at + 2];
      if (dot > bestDot) {
        bestDot = dot;
        best = at;
      }
    }
    return best;
  }
}
