package flankfit.metal;

/** A cutting part of any form. */
final class CutterPath extends BodyPath {
  private static final double FINEST = 1e-4;
  private static final int MOST_PLACES = 400;
  private static final int GOLDEN_STEPS = 40;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final Profile profile;
  private final boolean convex;
  private final Near near = new Near();

  CutterPath(PathPiece piece, Profile profile, boolean convex) {
    super(piece);
    this.profile = profile;
    this.convex = convex;
  }

  @Override
  double depth(double x, double y, double z) {
    if (convex && !piece.turns()) {
      // The depth has one hill only along a straight way.
      return settle(x, y, z, 0.5, 0.5);
    }
    int first = piece.turns() ? 8 : 2;
    double best = Double.POSITIVE_INFINITY;
    double at = 0;
    double length = piece.length();
    int places = (int) Math.max(first, Math.min(MOST_PLACES, length / (profile.top() / 4)));
    int asked = 0;
    // Halving by the bound that a place's depth changes no faster than the tool moves.
    double[] ends = new double[2 * MOST_PLACES];
    double[] values = new double[2 * MOST_PLACES];
    int top = 0;
    for (int i = places; i >= 0; i--) {
      ends[top] = (double) i / places;
      values[top] = distance(x, y, z, ends[top]);
      if (values[top] < best) {
        best = values[top];
        at = ends[top];
      }
      top++;
    }
    double left = ends[--top];
    double leftValue = values[top];
    while (top > 0) {
      double right = ends[top - 1];
      double rightValue = values[top - 1];
      double way = length * (right - left);
      boolean done = (leftValue + rightValue - way) / 2 >= best - FINEST || way < FINEST;
      if (done || asked++ > MOST_PLACES || top >= ends.length) {
        left = right;
        leftValue = rightValue;
        top--;
        continue;
      }
      ends[top] = (left + right) / 2;
      values[top] = distance(x, y, z, ends[top]);
      if (values[top] < best) {
        best = values[top];
        at = ends[top];
      }
      top++;
    }
    return settle(x, y, z, at, length > 0 ? Math.min(0.5, 4 * FINEST / length) : 0);
  }

  /** Goes to the deepest place beside one that is nearly so, and reads the direction there. */
  private double settle(double x, double y, double z, double at, double around) {
    double low = Math.max(0, at - around);
    double high = Math.min(1, at + around);
    for (int i = 0; i < GOLDEN_STEPS && high - low > 1e-12; i++) {
      double a = high - GOLDEN * (high - low);
      double b = low + GOLDEN * (high - low);
      if (distance(x, y, z, a) <= distance(x, y, z, b)) {
        high = b;
      } else {
        low = a;
      }
    }
    share = (low + high) / 2;
    double found = distance(x, y, z, share);
    double dx = x - piece.x(share);
    double dy = y - piece.y(share);
    double r = Math.sqrt(dx * dx + dy * dy);
    alongX = r > 0 ? -near.alongRadius * dx / r : 0;
    alongY = r > 0 ? -near.alongRadius * dy / r : 0;
    alongZ = -near.alongAxis;
    room = profile.widest();
    return -found;
  }

  private double distance(double x, double y, double z, double t) {
    double dx = x - piece.x(t);
    double dy = y - piece.y(t);
    profile.distance(Math.sqrt(dx * dx + dy * dy), z - piece.z(t), near);
    return near.distance;
  }

  @Override
  boolean narrow(Clip clip, double deeper) {
    double x = clip.middle(0);
    double y = clip.middle(1);
    double z = clip.middle(2);
    double here = depth(x, y, z);
    if (here + clip.half() <= deeper) {
      return false;
    }
    if (convex && !piece.turns()) {
      clip.plane(
          alongX,
          alongY,
          alongZ,
          alongX * x + alongY * y + alongZ * z + deeper - here - 2 * FINEST);
    }
    return true;
  }
}
