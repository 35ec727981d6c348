package flankfit.metal;

import java.util.HashMap;
import java.util.Map;

/** Cuts that are held ready, and what they cover. One for each thread. */
final class LoadedCuts {
  /** Rounding that a corner in a cut's own surface may suffer (mm). */
  static final double ROUNDING = 1e-7;

  /** So many are held at most: each takes some thousand bytes. */
  static final int MOST = 4096;

  private final Cuts cuts;
  private final Map<Integer, SweptCut> loaded = new HashMap<>();

  LoadedCuts(Cuts cuts) {
    this.cuts = cuts;
  }

  /**
   * Whether the cut of a move holds all of a clip: its corners, when the cut is convex.
   *
   * @param half half the diagonal of the clip's box (mm)
   */
  boolean covers(int move, Clip clip, double half) {
    SweptCut cut = cut(move);
    ToolPath path = cut.path();
    double sag = sag(path, clip, half);
    if (!isConvex(move) || path.kind == ToolPath.Kind.TILTED || sag > half) {
      return cut.coversBall(clip.middle(0), clip.middle(1), clip.middle(2), half);
    }
    for (int i = 0; i < clip.count; i++) {
      double px = clip.corners[3 * i];
      double py = clip.corners[3 * i + 1];
      double pz = clip.corners[3 * i + 2];
      if (!holds(cut, px, py, pz)) {
        return false;
      }
      if (sag > 0) {
        double inwards = sag / Math.max(sag, Math.hypot(px - path.centreU, py - path.centreV));
        double qx = px - inwards * (px - path.centreU);
        double qy = py - inwards * (py - path.centreV);
        if (!holds(cut, qx, qy, pz)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * How far the cut of an arc may bend in between the corners of the box (mm), towards the arc's
   * centre; above the box's size when the box is too large to say.
   */
  private static double sag(ToolPath path, Clip clip, double half) {
    if (path.kind != ToolPath.Kind.ROUND) {
      return 0;
    }
    double clear = Math.hypot(clip.middle(0) - path.centreU, clip.middle(1) - path.centreV) - half;
    // On the outer side of the path an arc's cut bulges outwards.
    double bent = clear >= path.widest() ? 0 : half * half / (2 * Math.max(clear, half / 4));
    return half > path.widest() / 4 ? Double.POSITIVE_INFINITY : bent;
  }

  private static boolean holds(SweptCut cut, double px, double py, double pz) {
    return cut.holds(px, py, pz) || cut.within(px, py, pz, ROUNDING) < ROUNDING;
  }

  /** Whether the tool of a move is a convex body. */
  boolean isConvex(int move) {
    return cuts.body(move).orElseThrow().isConvex();
  }

  /** Number of cuts held now. */
  int held() {
    return loaded.size();
  }

  /** The cut of a move, which is its own however many are asked for after it. */
  SweptCut cut(int move) {
    SweptCut cut = loaded.get(move);
    if (cut == null) {
      if (loaded.size() >= MOST) {
        loaded.clear();
      }
      cut = new SweptCut();
      cuts.load(move, cut);
      loaded.put(move, cut);
    }
    return cut;
  }
}
