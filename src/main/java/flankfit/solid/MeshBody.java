package flankfit.solid;

import java.io.InputStream;

/** A body within a closed mesh, such as stock that is a casting. Safe for many readers. */
public final class MeshBody {
  private final Facets facets;
  private final FacetTree tree;

  MeshBody(Facets facets, FacetTree tree) {
    this.facets = facets;
    this.tree = tree;
  }

  /**
   * Reads STL, text or binary, coordinates in millimetres in the part frame.
   *
   * @param name what to call the file in messages
   * @param mostFacets a limit on facets
   * @throws MeshFileException if it is no STL, empty, not closed, inside out, crosses itself, or is
   *     of a size that no milling machine holds
   */
  public static MeshBody read(InputStream in, String name, int mostFacets)
      throws MeshFileException {
    Facets facets = new FacetWeld(name).weld(StlFacets.read(in, name, mostFacets));
    FacetChecks checks = new FacetChecks(name, facets);
    checks.checkSize();
    checks.checkClosed();
    FacetTree tree = new FacetTree(facets);
    new FacetCrossings(name, facets, tree).check();
    return new MeshBody(facets, tree);
  }

  /** Number of facets that have area. */
  public int facetCount() {
    return facets.count();
  }

  /** Volume (mm³). */
  public double volume() {
    return facets.volume();
  }

  /** Least coordinate along axis 0, 1 or 2 (mm). */
  public double low(int axis) {
    return tree.low(0, axis);
  }

  /** Greatest coordinate along axis 0, 1 or 2 (mm). */
  public double high(int axis) {
    return tree.high(0, axis);
  }

  /** Distance to the nearest facet, negative inside (mm). */
  public double value(double x, double y, double z) {
    double distance = new Nearest(facets, tree, x, y, z).distance();
    return winding(0, x, y, z) > 0 ? -distance : distance;
  }

  /**
   * The outward direction of the facet nearest to a place.
   *
   * @param target takes the unit vector, 3 long
   */
  public void normal(double x, double y, double z, double[] target) {
    int facet = new Nearest(facets, tree, x, y, z).facet();
    double nx = facets.normal(facet, 0);
    double ny = facets.normal(facet, 1);
    double nz = facets.normal(facet, 2);
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    target[0] = nx / length;
    target[1] = ny / length;
    target[2] = nz / length;
  }

  /**
   * How often the mesh goes round a place: facets that a ray along +X leaves through, less those it
   * enters through. Edges count for one of their two facets only, by the same bits on both sides,
   * so the sum is right wherever the ray passes.
   */
  private int winding(int node, double x, double y, double z) {
    if (tree.count(node) == 0
        || tree.high(node, 0) < x
        || y < tree.low(node, 1)
        || y > tree.high(node, 1)
        || z < tree.low(node, 2)
        || z > tree.high(node, 2)) {
      return 0;
    }
    if (!tree.isLeaf(node)) {
      return winding(2 * node + 1, x, y, z) + winding(2 * node + 2, x, y, z);
    }
    int sum = 0;
    for (int i = 0; i < tree.count(node); i++) {
      sum += crossed(tree.facet(node, i), x, y, z);
    }
    return sum;
  }

  private int crossed(int f, double x, double y, double z) {
    int turn = 0;
    for (int corner = 0; corner < 3; corner++) {
      int next = (corner + 1) % 3;
      double az = facets.place(f, corner, 2) - z;
      double bz = facets.place(f, next, 2) - z;
      if (az <= 0 != bz <= 0) {
        double left = (facets.place(f, corner, 1) - y) * bz - (facets.place(f, next, 1) - y) * az;
        if (az <= 0 && left > 0) {
          turn++;
        } else if (az > 0 && left < 0) {
          turn--;
        }
      }
    }
    if (turn == 0) {
      return 0;
    }
    double nx = facets.normal(f, 0);
    double ahead =
        nx * (facets.place(f, 0, 0) - x)
            + facets.normal(f, 1) * (facets.place(f, 0, 1) - y)
            + facets.normal(f, 2) * (facets.place(f, 0, 2) - z);
    return turn > 0 == ahead > 0 ? turn : 0;
  }

  /**
   * Where the body ends on the segment from a place inside to one outside: the first facet left
   * through, its normal, made by the stock.
   *
   * @throws IllegalArgumentException if the first place is not inside or the second not outside
   */
  public void crossing(
      double mx, double my, double mz, double ax, double ay, double az, Crossing result) {
    SegmentHit hit = new SegmentHit(facets, tree, mx, my, mz, ax, ay, az);
    int facet = hit.facet();
    double share = hit.share();
    if (facet < 0) {
      // The segment slips between two facets by rounding: halve it by sign.
      share = halved(mx, my, mz, ax, ay, az);
      facet =
          new Nearest(
                  facets,
                  tree,
                  mx + share * (ax - mx),
                  my + share * (ay - my),
                  mz + share * (az - mz))
              .facet();
    }
    double nx = facets.normal(facet, 0);
    double ny = facets.normal(facet, 1);
    double nz = facets.normal(facet, 2);
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    result.place(mx + share * (ax - mx), my + share * (ay - my), mz + share * (az - mz));
    result.normal(nx / length, ny / length, nz / length);
    result.maker(Crossing.STOCK);
  }

  private double halved(double mx, double my, double mz, double ax, double ay, double az) {
    double in = 0;
    double out = 1;
    if (winding(0, mx, my, mz) <= 0 || winding(0, ax, ay, az) > 0) {
      throw new IllegalArgumentException(
          "the segment from "
              + mx
              + " "
              + my
              + " "
              + mz
              + " to "
              + ax
              + " "
              + ay
              + " "
              + az
              + " does not lead out of the mesh");
    }
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (in + out);
      boolean inside =
          winding(0, mx + middle * (ax - mx), my + middle * (ay - my), mz + middle * (az - mz)) > 0;
      in = inside ? middle : in;
      out = inside ? out : middle;
    }
    return out;
  }
}
