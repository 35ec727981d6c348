package flankfit.solid;

/** Vertices of all sheets with the normals of the faces that meet there. */
final class Vertices {
  private static final int LEAVES_IN_PIECE = 1024;

  final double[] places;
  final int[] normalStarts;
  double[] normals = new double[0];
  private final boolean[] outside;

  private Vertices(int count) {
    places = new double[Math.multiplyExact(count, 3)];
    normalStarts = new int[count + 1];
    outside = new boolean[count];
  }

  /** Places all vertices. */
  static Vertices of(
      Solid solid, SurfaceCells cells, Hermite hermite, Sheets sheets, Workers workers) {
    Vertices result = new Vertices(sheets.vertexCount());
    result.fill(
        cells.count(),
        workers,
        () -> {
          VertexPlacer placer = new VertexPlacer(solid, cells, hermite);
          return (leaf, normals) -> {
            int first = sheets.firstVertex(leaf);
            for (int vertex = first; vertex < sheets.firstVertex(leaf + 1); vertex++) {
              placer.enter(sheets, leaf, vertex - first);
              placer.place();
              result.keep(vertex, placer, normals);
            }
          };
        });
    return result;
  }

  /** The same vertices, but those marked inside their leaves. */
  Vertices withInside(
      boolean[] inside,
      Solid solid,
      SurfaceCells cells,
      Hermite hermite,
      Sheets sheets,
      Workers workers) {
    Vertices result = new Vertices(count());
    result.fill(
        cells.count(),
        workers,
        () -> {
          VertexPlacer placer = new VertexPlacer(solid, cells, hermite);
          return (leaf, normals) -> {
            int first = sheets.firstVertex(leaf);
            for (int vertex = first; vertex < sheets.firstVertex(leaf + 1); vertex++) {
              if (inside[vertex]) {
                placer.enter(sheets, leaf, vertex - first);
                placer.placeInside();
                result.keep(vertex, placer, normals);
              } else {
                result.keep(vertex, this, normals);
              }
            }
          };
        });
    return result;
  }

  /** Places the vertices of one leaf and adds their normals. */
  private interface Leaves {
    void take(int leaf, DoubleColumn normals);
  }

  private interface LeafHands {
    Leaves make();
  }

  private void fill(int leaves, Workers workers, LeafHands hands) {
    DoubleColumn[] parts = new DoubleColumn[Workers.pieces(leaves, LEAVES_IN_PIECE)];
    workers.run(
        leaves,
        LEAVES_IN_PIECE,
        () -> {
          Leaves hand = hands.make();
          return (piece, from, to) -> {
            DoubleColumn found = new DoubleColumn();
            for (int leaf = from; leaf < to; leaf++) {
              hand.take(leaf, found);
            }
            parts[piece] = found;
          };
        });
    normals = DoubleColumn.joined(parts);
    for (int vertex = 0; vertex < count(); vertex++) {
      normalStarts[vertex + 1] += normalStarts[vertex];
    }
  }

  private void keep(int vertex, Vertices from, DoubleColumn to) {
    System.arraycopy(from.places, 3 * vertex, places, 3 * vertex, 3);
    outside[vertex] = from.outside[vertex];
    int start = from.normalStarts[vertex];
    int end = from.normalStarts[vertex + 1];
    normalStarts[vertex + 1] = end - start;
    for (int i = 3 * start; i < 3 * end; i++) {
      to.add(from.normals[i]);
    }
  }

  private void keep(int vertex, VertexPlacer placer, DoubleColumn to) {
    for (int axis = 0; axis < 3; axis++) {
      places[3 * vertex + axis] = placer.at(axis);
    }
    outside[vertex] = placer.isOutside();
    normalStarts[vertex + 1] = placer.faces();
    for (int face = 0; face < placer.faces(); face++) {
      to.add(placer.normal(face, 0), placer.normal(face, 1), placer.normal(face, 2));
    }
  }

  int count() {
    return outside.length;
  }

  /** Whether a vertex lies outside its leaf. */
  boolean isOutside(int vertex) {
    return outside[vertex];
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
