package flankfit.solid;

import java.util.HashMap;
import java.util.Map;

/**
 * The polygon round each crossing edge, through the vertices of the leaves around it. One reader
 * for each thread; what they share is data.
 */
final class Polygons {
  /** What all readers share. */
  record Source(
      SurfaceCells cells,
      GridEdges edges,
      Share share,
      Hermite hermite,
      Sheets sheets,
      Vertices vertices,
      Middles middles) {}

  /**
   * Vertices in the middle of sides. Two leaves beside a face with four crossings can have both
   * sides between the same two vertices; a vertex in each keeps them apart.
   */
  static final class Middles {
    private final Map<Long, Integer> ofSide;
    private final int[] edges;

    Middles(Map<Long, Integer> ofSide, int[] edges) {
      this.ofSide = ofSide;
      this.edges = edges;
    }

    /** Number of the middle, by edge times 4 plus quadrant. */
    Map<Long, Integer> ofSide() {
      return ofSide;
    }

    /** The two crossings of each middle, one after the other. */
    int[] edges() {
      return edges;
    }

    int count() {
      return edges.length / 2;
    }
  }

  /** Four vertices, four middles. */
  static final int MOST = 8;

  private final Source source;

  /** Vertices of the polygon, counter-clockwise seen from the air; middles follow all sheets'. */
  final int[] corners = new int[MOST];

  int count;

  /** Whether a corner is a middle; then no diagonal may pass it by. */
  boolean hasMiddle;

  /** Whether the diagonal from corner 0 to corner 2 would touch one of a neighbouring polygon. */
  boolean firstDiagonalBarred;

  /** The same for corners 1 and 3; one of the two is free. */
  boolean secondDiagonalBarred;

  Polygons(Source source) {
    this.source = source;
  }

  /** Reads the polygon of an edge. */
  void read(int edge) {
    GridEdges edges = source.edges();
    boolean forward = edges.metalLow(edge);
    count = 0;
    hasMiddle = false;
    for (int step = 0; step < 4; step++) {
      int quadrant = forward ? step : 3 - step;
      int next = forward ? quadrant + 1 & 3 : quadrant + 3 & 3;
      int leaf = edges.leaf(edge, quadrant);
      int nextLeaf = edges.leaf(edge, next);
      if (leaf != nextLeaf) {
        corners[count++] = source.sheets().vertex(leaf, edge);
        Integer middle =
            source.middles().ofSide().isEmpty()
                ? null
                : source.middles().ofSide().get(side(edge, forward ? quadrant : next));
        if (middle != null) {
          hasMiddle = true;
          corners[count++] = source.vertices().count() + middle;
        }
      }
    }
    // Two larger leaves on both sides of one split edge have both its halves in common.
    firstDiagonalBarred = larger(edge, forward ? 0 : 3) && larger(edge, forward ? 2 : 1);
    secondDiagonalBarred = larger(edge, forward ? 1 : 2) && larger(edge, forward ? 3 : 0);
  }

  private boolean larger(int edge, int quadrant) {
    GridEdges edges = source.edges();
    return source.cells().size(edges.leaf(edge, quadrant)) > edges.length(edge);
  }

  private static long side(int edge, int quadrant) {
    return 4L * edge + quadrant;
  }

  /** Axis across the face between a quadrant and the next. */
  private static int faceAxis(int axis, int quadrant) {
    return (axis + 1 + (quadrant & 1)) % 3;
  }

  /** The crossing whose polygon lies across the side between a quadrant and the next. */
  static int across(SurfaceCells cells, GridEdges edges, Sheets sheets, int edge, int quadrant) {
    int leaf = edges.leaf(edge, quadrant);
    int next = edges.leaf(edge, quadrant + 1 & 3);
    int smaller = cells.size(leaf) <= cells.size(next) ? leaf : next;
    return sheets.partner(smaller, edge, faceAxis(edges.axis(edge), quadrant));
  }

  /** Finds the sides that need a middle. */
  static Middles middles(SurfaceCells cells, GridEdges edges, Sheets sheets) {
    Map<Long, Integer> uses = new HashMap<>();
    IntColumn suspects = new IntColumn();
    for (int edge = 0; edge < edges.count(); edge++) {
      for (int quadrant = 0; quadrant < 4; quadrant++) {
        int leaf = edges.leaf(edge, quadrant);
        int next = edges.leaf(edge, quadrant + 1 & 3);
        if (leaf != next && sheets.crowded(leaf) && sheets.crowded(next)) {
          suspects.add(edge);
          suspects.add(quadrant);
          uses.merge(pair(sheets, leaf, next, edge), 1, Integer::sum);
        }
      }
    }
    Map<Long, Integer> ofSide = new HashMap<>();
    Map<Segment, Integer> ofSegment = new HashMap<>();
    IntColumn ends = new IntColumn();
    for (int i = 0; i < suspects.size(); i += 2) {
      int edge = suspects.get(i);
      int quadrant = suspects.get(i + 1);
      int leaf = edges.leaf(edge, quadrant);
      int next = edges.leaf(edge, quadrant + 1 & 3);
      if (uses.get(pair(sheets, leaf, next, edge)) > 2) {
        int other = across(cells, edges, sheets, edge, quadrant);
        Segment segment =
            new Segment(
                Math.min(edge, other),
                Math.max(edge, other),
                Math.min(leaf, next),
                Math.max(leaf, next));
        Integer middle = ofSegment.get(segment);
        if (middle == null) {
          middle = ofSegment.size();
          ofSegment.put(segment, middle);
          ends.add(segment.edge());
          ends.add(segment.other());
        }
        ofSide.put(side(edge, quadrant), middle);
      }
    }
    return new Middles(ofSide, IntColumn.joined(new IntColumn[] {ends}));
  }

  /** Two joined crossings on the face between two leaves. */
  private record Segment(int edge, int other, int leaf, int next) {}

  private static long pair(Sheets sheets, int leaf, int next, int edge) {
    int a = sheets.vertex(leaf, edge);
    int b = sheets.vertex(next, edge);
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }
}
