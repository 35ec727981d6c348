package flankfit.solid;

import java.util.HashMap;
import java.util.Map;

/**
 * Follows the cut of a plane through a closed mesh from triangle to triangle, and puts each point
 * of it where the body says that metal ends. A vertex on the plane counts as above it, so that the
 * cut always closes.
 */
final class OutlineTracer {
  /** Points nearer than this are one (mm); the model's own nearness. */
  private static final double ONE = 1e-6;

  private final Mesh mesh;
  private final SectionPlane plane;
  private final OutlinePoint point;

  /** Triangle by its edge that runs down through the plane. */
  private final Map<Long, Integer> byDownEdge = new HashMap<>();

  private final DoubleColumn places = new DoubleColumn();
  private final IntColumn makers = new IntColumn();
  private final IntColumn starts = new IntColumn();
  private final DoubleColumn loop = new DoubleColumn();
  private final IntColumn loopMakers = new IntColumn();

  OutlineTracer(Mesh mesh, Solid solid, SectionPlane plane) {
    this.mesh = mesh;
    this.plane = plane;
    point = new OutlinePoint(mesh, solid, plane);
  }

  Outline trace() {
    boolean[] above = new boolean[mesh.vertexCount()];
    for (int v = 0; v < above.length; v++) {
      above[v] = plane.height(mesh.x(v), mesh.y(v), mesh.z(v)) >= 0;
    }
    IntColumn cut = new IntColumn();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int corner = downCorner(above, t);
      if (corner >= 0) {
        byDownEdge.put(edge(mesh.vertex(t, corner), mesh.vertex(t, (corner + 1) % 3)), t);
        cut.add(t);
      }
    }
    boolean[] done = new boolean[mesh.triangleCount()];
    for (int i = 0; i < cut.size(); i++) {
      if (!done[cut.get(i)]) {
        follow(above, cut.get(i), done);
      }
    }
    starts.add(makers.size());
    return new Outline(
        places.toArray(),
        IntColumn.joined(new IntColumn[] {makers}),
        IntColumn.joined(new IntColumn[] {starts}));
  }

  private static long edge(int from, int to) {
    return (long) from << 32 | to;
  }

  /** The corner whose edge to the next runs down through the plane, or -1. */
  private static int downCornerOf(boolean a, boolean b, boolean c) {
    return a && !b ? 0 : b && !c ? 1 : c && !a ? 2 : -1;
  }

  private int downCorner(boolean[] above, int t) {
    return downCornerOf(
        above[mesh.vertex(t, 0)], above[mesh.vertex(t, 1)], above[mesh.vertex(t, 2)]);
  }

  private int upCorner(boolean[] above, int t) {
    return downCornerOf(
        !above[mesh.vertex(t, 0)], !above[mesh.vertex(t, 1)], !above[mesh.vertex(t, 2)]);
  }

  /** Follows one loop, metal to the left, and keeps it if it is one. */
  private void follow(boolean[] above, int first, boolean[] done) {
    loop.clear();
    loopMakers.clear();
    int t = first;
    do {
      done[t] = true;
      int up = upCorner(above, t);
      int low = mesh.vertex(t, up);
      int high = mesh.vertex(t, (up + 1) % 3);
      Integer next = byDownEdge.get(edge(high, low));
      if (next == null) {
        throw new IllegalStateException("the mesh is open at triangle " + t);
      }
      point.place(t, up, next, downCorner(above, next));
      loop.add(point.right());
      loop.add(point.up());
      loopMakers.add(mesh.maker(next));
      t = next;
    } while (t != first);
    keep();
  }

  private void keep() {
    int count = loopMakers.size();
    int start = makers.size();
    starts.add(start);
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % count;
      // of points that are one the last is kept, for the piece that starts there
      if (Math.abs(loop.get(2 * i) - loop.get(2 * next)) > ONE
          || Math.abs(loop.get(2 * i + 1) - loop.get(2 * next + 1)) > ONE) {
        places.add(loop.get(2 * i));
        places.add(loop.get(2 * i + 1));
        makers.add(loopMakers.get(i));
      }
    }
    if (makers.size() - start < 3) {
      places.shorten(2 * start);
      makers.shorten(start);
      starts.shorten(starts.size() - 1);
    }
  }
}
