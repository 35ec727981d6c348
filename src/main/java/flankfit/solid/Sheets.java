package flankfit.solid;

import java.util.Arrays;

/**
 * The sheets of surface in each leaf: crossings joined along the leaf's faces. On a face crossings
 * are joined in twos; where there are more than two, the sign at the face's centre decides, so both
 * leaves beside the face join alike. Then the sheets' vertices and the crossings' polygons make a
 * closed surface whatever the signs are.
 */
final class Sheets {
  private static final int LEAVES_IN_PIECE = 4096;

  private final GridEdges edges;
  private final int[] starts;
  private final int[] crossings;
  private final int[] sheetOf;
  private final int[] partners;
  private final boolean[] crowded;
  private final int[] vertexStarts;

  private Sheets(GridEdges edges, int leaves) {
    this.edges = edges;
    starts = new int[leaves + 1];
    for (int edge = 0; edge < edges.count(); edge++) {
      for (int quadrant = 0; quadrant < 4; quadrant++) {
        if (isFirst(edge, quadrant)) {
          starts[edges.leaf(edge, quadrant) + 1]++;
        }
      }
    }
    for (int leaf = 0; leaf < leaves; leaf++) {
      starts[leaf + 1] += starts[leaf];
    }
    crossings = new int[starts[leaves]];
    sheetOf = new int[crossings.length];
    partners = new int[2 * crossings.length];
    crowded = new boolean[leaves];
    vertexStarts = new int[leaves + 1];
    int[] next = Arrays.copyOf(starts, leaves);
    for (int edge = 0; edge < edges.count(); edge++) {
      for (int quadrant = 0; quadrant < 4; quadrant++) {
        if (isFirst(edge, quadrant)) {
          crossings[next[edges.leaf(edge, quadrant)]++] = edge;
        }
      }
    }
  }

  /** Whether the leaf in this quadrant was not met in the quadrant before. */
  private boolean isFirst(int edge, int quadrant) {
    return edges.leaf(edge, quadrant) != edges.leaf(edge, quadrant + 3 & 3);
  }

  static Sheets of(
      Solid solid,
      SurfaceCells cells,
      LeafIndex index,
      GridEdges edges,
      Share share,
      Workers workers) {
    Sheets sheets = new Sheets(edges, cells.count());
    workers.run(
        cells.count(),
        LEAVES_IN_PIECE,
        () -> {
          SheetTracer tracer = new SheetTracer(solid, cells, index, edges);
          return (piece, from, to) -> {
            for (int leaf = from; leaf < to; leaf++) {
              int start = sheets.starts[leaf];
              int count = sheets.starts[leaf + 1] - start;
              if (count > 0 && share.needs(leaf)) {
                sheets.vertexStarts[leaf + 1] =
                    tracer.trace(
                        leaf, sheets.crossings, start, count, sheets.sheetOf, sheets.partners);
                sheets.crowded[leaf] = tracer.sawCrowdedFace();
              }
            }
          };
        });
    for (int leaf = 0; leaf < cells.count(); leaf++) {
      sheets.vertexStarts[leaf + 1] += sheets.vertexStarts[leaf];
    }
    return sheets;
  }

  /** Number of sheets of all leaves; each has one vertex. */
  int vertexCount() {
    return vertexStarts[vertexStarts.length - 1];
  }

  /** First vertex of a leaf. */
  int firstVertex(int leaf) {
    return vertexStarts[leaf];
  }

  /** First entry of a leaf; its entries end where those of the next leaf start. */
  int start(int leaf) {
    return starts[leaf];
  }

  /** Crossing edge of an entry. */
  int crossing(int entry) {
    return crossings[entry];
  }

  /** Number of the sheet within its leaf that an entry's crossing lies on. */
  int sheet(int entry) {
    return sheetOf[entry];
  }

  /** Whether more than two crossings met on a face of the leaf. */
  boolean crowded(int leaf) {
    return crowded[leaf];
  }

  /** Vertex of the sheet of a leaf that a crossing lies on. */
  int vertex(int leaf, int edge) {
    return vertexStarts[leaf] + sheetOf[entry(leaf, edge)];
  }

  /**
   * The crossing that an edge's is joined to on a face, asked of the smaller of the two leaves.
   *
   * @param faceAxis axis across the face, not the edge's own
   */
  int partner(int leaf, int edge, int faceAxis) {
    int which = (faceAxis - edges.axis(edge) + 3) % 3 - 1;
    return partners[2 * entry(leaf, edge) + which];
  }

  private int entry(int leaf, int edge) {
    int entry = starts[leaf];
    while (crossings[entry] != edge) {
      entry++;
    }
    return entry;
  }
}
