package flankfit.solid;

import java.util.Arrays;

/**
 * What of a list of cells is worked on: all of it, or for a piece of the surface the edges that are
 * its own, the leaves round them, and the edges whose crossings those leaves need.
 */
final class Share {
  private final boolean[] owned;
  private final boolean[] needed;
  private final boolean[] asked;

  private Share(int edges, int leaves) {
    owned = new boolean[edges];
    needed = new boolean[leaves];
    asked = new boolean[edges];
  }

  static Share of(SurfaceCells cells, GridEdges edges) {
    Share share = new Share(edges.count(), cells.count());
    if (!cells.isPiece()) {
      Arrays.fill(share.owned, true);
      Arrays.fill(share.needed, true);
      Arrays.fill(share.asked, true);
      return share;
    }
    for (int edge = 0; edge < edges.count(); edge++) {
      if (cells.owns(edges.low(edge, 0), edges.low(edge, 1), edges.low(edge, 2))) {
        share.owned[edge] = true;
        for (int quadrant = 0; quadrant < 4; quadrant++) {
          share.needed[edges.leaf(edge, quadrant)] = true;
        }
      }
    }
    for (int edge = 0; edge < edges.count(); edge++) {
      for (int quadrant = 0; quadrant < 4; quadrant++) {
        share.asked[edge] |= share.needed[edges.leaf(edge, quadrant)];
      }
    }
    return share;
  }

  /** Whether the polygon round an edge is to be made. */
  boolean owns(int edge) {
    return owned[edge];
  }

  /** Whether a leaf has a corner of such a polygon. */
  boolean needs(int leaf) {
    return needed[leaf];
  }

  /** Whether the crossing of an edge is needed. */
  boolean asks(int edge) {
    return asked[edge];
  }
}
