package flankfit.metal;

import java.util.List;

/** Volumes after several moments, summed in an order that does not depend on threads. */
final class VolumeSum {
  /** Leaves that are summed by one thread. */
  private static final int CHUNK = 32;

  private final Skeleton skeleton;
  private final Bricks bricks;
  private final int[] moments;
  private final double[][] parts;

  VolumeSum(Skeleton skeleton, Bricks bricks, int[] moments) {
    this.skeleton = skeleton;
    this.bricks = bricks;
    this.moments = moments.clone();
    this.parts = new double[(skeleton.leaves().size() + CHUNK - 1) / CHUNK][];
  }

  int chunks() {
    return parts.length;
  }

  /** Sums one chunk of leaves. */
  void chunk(int index, BrickVolume volume) {
    List<Node> leaves = skeleton.leaves();
    double[] sums = new double[moments.length];
    int end = Math.min(leaves.size(), (index + 1) * CHUNK);
    for (int i = index * CHUNK; i < end; i++) {
      leaf(leaves.get(i), volume, sums);
    }
    parts[index] = sums;
  }

  /** The metal of a leaf changes only where one of its moves lies between two moments. */
  private void leaf(Node leaf, BrickVolume volume, double[] sums) {
    int before = -1;
    double metal = 0;
    for (int m = 0; m < moments.length; m++) {
      int made = made(leaf, moments[m]);
      if (made != before) {
        before = made;
        metal = metal(leaf, moments[m], volume);
      }
      sums[m] += metal;
    }
  }

  private static int made(Node leaf, int moment) {
    int made = 0;
    while (made < leaf.moves.length && leaf.moves[made] < moment) {
      made++;
    }
    return made;
  }

  private double metal(Node leaf, int moment, BrickVolume volume) {
    if (leaf.mayHoldSurface(moment)) {
      return volume.metal(leaf, bricks.of(leaf), moment);
    }
    return leaf.isMetal(moment) ? cube(leaf) : 0;
  }

  private double cube(Node leaf) {
    double side = leaf.size * skeleton.lattice().cell();
    return side * side * side;
  }

  /** The volumes (mm³), once all chunks are summed. */
  double[] total() {
    double[] total = new double[moments.length];
    for (double[] part : parts) {
      for (int m = 0; m < total.length; m++) {
        total[m] += part[m];
      }
    }
    for (Node leaf : skeleton.uniform()) {
      double cube = cube(leaf);
      for (int m = 0; m < total.length; m++) {
        total[m] += leaf.isMetal(moments[m]) ? cube : 0;
      }
    }
    return total;
  }
}
