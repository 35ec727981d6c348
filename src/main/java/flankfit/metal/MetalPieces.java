package flankfit.metal;

import flankfit.solid.Solid;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The surface of the metal in pieces, so that only those are made anew in which something changed.
 * A piece belongs to a cube of the octree; the cubes are the same at every moment. All pieces
 * together are the surface of the whole, triangle by triangle, bit for bit. Safe for many readers.
 */
public final class MetalPieces {
  /** Cells along the side of a cube, at most, counted in its finest. */
  private static final int SIDE = 32;

  /** Cells around a cube whose cuts have a say in its vertices. */
  private static final int ROUND = 4;

  private final Metal metal;
  private final List<Node> blocks = new ArrayList<>();
  private final int reach;

  /**
   * The pieces of a metal.
   *
   * @param reach how far from a surface its shade depends on cuts (mm), not below 0
   */
  MetalPieces(Metal metal, double reach) {
    this.metal = metal;
    double cells = Math.ceil(Require.notNegative("reach", reach) / metal.cell());
    // No place of the octree lies farther from another.
    this.reach = (int) Math.min(metal.skeleton().root().size, cells);
    divide(metal.skeleton().root());
  }

  private void divide(Node node) {
    int finest = finest(node);
    if (finest == Integer.MAX_VALUE) {
      return;
    }
    if (node.isLeaf() || node.size <= SIDE * finest) {
      blocks.add(node);
      return;
    }
    for (Node child : node.children) {
      divide(child);
    }
  }

  private static int finest(Node node) {
    if (node.isLeaf()) {
      return node.isUniform() ? Integer.MAX_VALUE : node.cell();
    }
    int finest = Integer.MAX_VALUE;
    for (Node child : node.children) {
      finest = Math.min(finest, finest(child));
    }
    return finest;
  }

  /** Number of pieces, those without surface included. */
  public int count() {
    return blocks.size();
  }

  /**
   * The metal after some moves, with the cells of one piece alone: its mesh is the piece.
   *
   * @param moves number of moves that have been made, 0 to the size of the tape
   */
  public Solid at(int piece, int moves) {
    return new MetalSolid(metal, moves, blocks.get(piece));
  }

  /** Whether a piece may look otherwise after one number of moves than after another. */
  public boolean mayDiffer(int piece, int moves, int otherMoves) {
    Node block = blocks.get(piece);
    int from = Math.min(moves, otherMoves);
    int to = Math.max(moves, otherMoves);
    return from < to && cuts(metal.skeleton().root(), block, from, to);
  }

  private boolean cuts(Node node, Node block, int from, int to) {
    int around = node.isLeaf() ? ROUND * node.cell() : ROUND * block.size;
    if (!BlockCells.touches(node, block, reach + around)) {
      return false;
    }
    if (node.isLeaf()) {
      return hasMove(node, from, to);
    }
    for (Node child : node.children) {
      if (cuts(child, block, from, to)) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasMove(Node node, int from, int to) {
    int at = Arrays.binarySearch(node.moves, from);
    int first = at < 0 ? -1 - at : at;
    return first < node.moves.length && node.moves[first] < to;
  }
}
