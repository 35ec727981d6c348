package flankfit.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Balanced octree over the surface of a shape, built the plain way. */
final class ShapeCells implements SurfaceCells {
  /** Greatest size, in finest cells, of a leaf that holds surface. */
  interface Coarseness {
    int sizeAt(double x, double y, double z);
  }

  private final Shape shape;
  private final double ox;
  private final double oy;
  private final double oz;
  private final double cell;
  private final int root;
  private final Map<Long, Integer> leaves = new HashMap<>();
  private final List<int[]> listed = new ArrayList<>();

  private ShapeCells(Shape shape, double ox, double oy, double oz, double side, int root) {
    this.shape = shape;
    this.ox = ox;
    this.oy = oy;
    this.oz = oz;
    this.root = root;
    cell = side / root;
  }

  static ShapeCells of(
      Shape shape, double ox, double oy, double oz, double side, int root, Coarseness coarse) {
    ShapeCells cells = new ShapeCells(shape, ox, oy, oz, side, root);
    cells.split(0, 0, 0, root, coarse);
    cells.balance();
    cells.list();
    return cells;
  }

  private static long key(int x, int y, int z) {
    return ((long) x << 42) | ((long) y << 21) | z;
  }

  private void split(int x, int y, int z, int size, Coarseness coarse) {
    double half = 0.5 * size;
    double cx = ox + (x + half) * cell;
    double cy = oy + (y + half) * cell;
    double cz = oz + (z + half) * cell;
    boolean near = Math.abs(shape.at(cx, cy, cz)) <= 1.01 * Math.sqrt(3) * half * cell;
    if (size > 1 && near && size > coarse.sizeAt(cx, cy, cz)) {
      for (int i = 0; i < 8; i++) {
        int s = size / 2;
        split(x + (i & 1) * s, y + (i >> 1 & 1) * s, z + (i >> 2) * s, s, coarse);
      }
    } else {
      leaves.put(key(x, y, z), size);
    }
  }

  /** Low corner and size of the leaf over a finest cell, or an empty array outside the root. */
  private int[] over(int x, int y, int z) {
    if (Math.min(Math.min(x, y), z) < 0 || Math.max(Math.max(x, y), z) >= root) {
      return new int[0];
    }
    for (int size = 1; size <= root; size *= 2) {
      Integer found = leaves.get(key(x & -size, y & -size, z & -size));
      if (found != null && found >= size) {
        if (found == size) {
          return new int[] {x & -size, y & -size, z & -size, size};
        }
      }
    }
    throw new IllegalStateException("no leaf");
  }

  private void balance() {
    ArrayDeque<int[]> work = new ArrayDeque<>();
    for (Map.Entry<Long, Integer> leaf : leaves.entrySet()) {
      long k = leaf.getKey();
      work.add(
          new int[] {
            (int) (k >> 42), (int) (k >> 21) & 0x1fffff, (int) k & 0x1fffff, leaf.getValue()
          });
    }
    while (!work.isEmpty()) {
      int[] leaf = work.poll();
      Integer now = leaves.get(key(leaf[0], leaf[1], leaf[2]));
      if (now == null || now != leaf[3]) {
        continue;
      }
      for (int i = 0; i < 27; i++) {
        int[] other =
            over(
                leaf[0] + (i % 3 - 1) * leaf[3],
                leaf[1] + (i / 3 % 3 - 1) * leaf[3],
                leaf[2] + (i / 9 - 1) * leaf[3]);
        if (other.length > 0 && other[3] > 2 * leaf[3]) {
          int s = other[3] / 2;
          for (int j = 0; j < 8; j++) {
            int[] child = {
              other[0] + (j & 1) * s, other[1] + (j >> 1 & 1) * s, other[2] + (j >> 2) * s, s
            };
            leaves.put(key(child[0], child[1], child[2]), s);
            work.add(child);
          }
          work.add(leaf);
        }
      }
    }
  }

  private void list() {
    TreeSet<Long> wanted = new TreeSet<>();
    for (Map.Entry<Long, Integer> leaf : leaves.entrySet()) {
      long k = leaf.getKey();
      int x = (int) (k >> 42);
      int y = (int) (k >> 21) & 0x1fffff;
      int z = (int) k & 0x1fffff;
      int size = leaf.getValue();
      int metals = 0;
      for (int i = 0; i < 8; i++) {
        metals += metal(x + (i & 1) * size, y + (i >> 1 & 1) * size, z + (i >> 2) * size) ? 1 : 0;
      }
      if (metals % 8 != 0) {
        int step = Math.max(1, size / 2);
        for (int dx = -step; dx <= size; dx += step) {
          for (int dy = -step; dy <= size; dy += step) {
            for (int dz = -step; dz <= size; dz += step) {
              int[] other = over(x + dx, y + dy, z + dz);
              if (other.length > 0) {
                wanted.add(key(other[0], other[1], other[2]));
              }
            }
          }
        }
      }
    }
    for (long k : wanted) {
      listed.add(
          new int[] {
            (int) (k >> 42), (int) (k >> 21) & 0x1fffff, (int) k & 0x1fffff, leaves.get(k)
          });
    }
  }

  /** The same leaves in the opposite order. */
  ShapeCells backwards() {
    ShapeCells other = new ShapeCells(shape, ox, oy, oz, cell * root, root);
    other.listed.addAll(listed);
    Collections.reverse(other.listed);
    return other;
  }

  @Override
  public double originX() {
    return ox;
  }

  @Override
  public double originY() {
    return oy;
  }

  @Override
  public double originZ() {
    return oz;
  }

  @Override
  public double cell() {
    return cell;
  }

  @Override
  public int count() {
    return listed.size();
  }

  @Override
  public int x(int leaf) {
    return listed.get(leaf)[0];
  }

  @Override
  public int y(int leaf) {
    return listed.get(leaf)[1];
  }

  @Override
  public int z(int leaf) {
    return listed.get(leaf)[2];
  }

  @Override
  public int size(int leaf) {
    return listed.get(leaf)[3];
  }

  @Override
  public boolean metal(int x, int y, int z) {
    return shape.at(ox + x * cell, oy + y * cell, oz + z * cell) < 0;
  }
}
