package flankfit.solid;

/**
 * Triangles of all polygons. Points are numbered: the normals of the sheets' vertices, two for each
 * middle of a side, one for each polygon's centre that is used.
 */
final class Triangles {
  private static final int EDGES_IN_PIECE = 2048;

  final int[] points;
  final int[] makers;

  /** Edges whose crossings are vertices. */
  final int[] centres;

  private Triangles(int[] points, int[] makers, int[] centres) {
    this.points = points;
    this.makers = makers;
    this.centres = centres;
  }

  static Triangles of(Polygons.Source source, Workers workers) {
    int edges = source.edges().count();
    int pieces = Workers.pieces(edges, EDGES_IN_PIECE);
    IntColumn[] points = new IntColumn[pieces];
    IntColumn[] makers = new IntColumn[pieces];
    IntColumn[] centres = new IntColumn[pieces];
    workers.run(
        edges,
        EDGES_IN_PIECE,
        () -> {
          PolygonCutter cutter = new PolygonCutter(source);
          return (piece, from, to) -> {
            points[piece] = new IntColumn();
            makers[piece] = new IntColumn();
            centres[piece] = new IntColumn();
            for (int edge = from; edge < to; edge++) {
              if (source.share().owns(edge)) {
                cutter.cut(edge);
                add(source, cutter, edge, points[piece], makers[piece], centres[piece]);
              }
            }
          };
        });
    int firstCentre = firstMiddle(source) + 2 * source.middles().count();
    int[] all = IntColumn.joined(points);
    int at = 0;
    for (int piece = 0; piece < pieces; piece++) {
      for (int end = at + points[piece].size(); at < end; at++) {
        if (all[at] < 0) {
          all[at] = firstCentre - 1 - all[at];
        }
      }
      firstCentre += centres[piece].size();
    }
    return new Triangles(all, IntColumn.joined(makers), IntColumn.joined(centres));
  }

  private static int firstMiddle(Polygons.Source source) {
    return source.vertices().normals.length / 3;
  }

  private static void add(
      Polygons.Source source,
      PolygonCutter cutter,
      int edge,
      IntColumn points,
      IntColumn makers,
      IntColumn centres) {
    boolean centred = false;
    for (int i = 0; i < 3 * cutter.triangles; i++) {
      int corner = cutter.cuts[i];
      if (corner < 0) {
        centred = true;
        points.add(-1 - centres.size());
      } else {
        points.add(point(source, cutter.vertex(corner), edge));
      }
    }
    for (int i = 0; i < cutter.triangles; i++) {
      makers.add(source.hermite().maker(edge));
    }
    if (centred) {
      centres.add(edge);
    }
  }

  /** The point of a vertex whose normal fits the crossing of an edge best. */
  static int point(Polygons.Source source, int vertex, int edge) {
    Hermite hermite = source.hermite();
    int middle = vertex - source.vertices().count();
    if (middle < 0) {
      return source
          .vertices()
          .nearestNormal(
              vertex, hermite.normal(edge, 0), hermite.normal(edge, 1), hermite.normal(edge, 2));
    }
    return firstMiddle(source)
        + 2 * middle
        + (source.middles().edges()[2 * middle] == edge ? 0 : 1);
  }
}
