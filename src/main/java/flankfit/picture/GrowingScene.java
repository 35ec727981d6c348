package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The scene of a program that is still being executed. Each call costs time in proportion to the
 * moves that are new. For use by one thread; the scenes may go to any.
 */
public final class GrowingScene {
  private static final int ARC_POINTS = 16;

  private final SetupSheet setup;
  private final String title;
  private final Map<String, Double> majorDiameters;
  private final double[] feedLow = new double[3];
  private final double[] feedHigh = new double[3];
  private final double[] low = new double[3];
  private final double[] high = new double[3];
  private final double[] p = new double[3];
  private boolean feeds;
  private int moves;
  private LineKinds kinds = LineKinds.NONE;
  private Optional<Scene> last = Optional.empty();

  /**
   * A scene without a move yet.
   *
   * @param setup what the program does not say
   * @param title shown above a picture; may be empty
   * @param majorDiameters major diameter of the thread wanted by name of the hole (mm)
   */
  public GrowingScene(SetupSheet setup, String title, Map<String, Double> majorDiameters) {
    this.setup = Objects.requireNonNull(setup, "setup");
    this.title = Objects.requireNonNull(title, "title");
    this.majorDiameters = Map.copyOf(majorDiameters);
    clear(feedLow, feedHigh);
    clear(low, high);
  }

  private static void clear(double[] lows, double[] highs) {
    Arrays.fill(lows, Double.MAX_VALUE);
    Arrays.fill(highs, -Double.MAX_VALUE);
  }

  /**
   * The scene of the moves so far, passes not told apart.
   *
   * @param soFar the moves of the call before and perhaps more
   * @throws IllegalArgumentException if it has fewer moves than the one before
   */
  public Scene grow(Tape soFar) {
    if (soFar.size() < moves) {
      throw new IllegalArgumentException(
          "the tape has lost moves: " + soFar.size() + " of " + moves);
    }
    include(soFar.start().x(), soFar.start().y(), soFar.start().z(), low, high);
    kinds = kinds.and(soFar, moves);
    for (int move = moves; move < soFar.size(); move++) {
      measure(soFar, move);
    }
    moves = soFar.size();
    Optional<Extents> cut = feeds ? Optional.of(box(feedLow, feedHigh)) : Optional.empty();
    Scene first = new Scene(soFar, setup, title, Passes.unknown(), kinds, cut, box(low, high));
    Scene scene =
        last.map(before -> first.after(before, true))
            .orElseGet(() -> first.withMajorDiameters(majorDiameters));
    last = Optional.of(scene);
    return scene;
  }

  /**
   * The scene of all moves, with passes told apart.
   *
   * @param tape the moves of the call before and perhaps more
   */
  public Scene finish(Tape tape) {
    Scene grown = grow(tape);
    Scene whole = new Scene(tape, setup, title);
    boolean sameLines = !whole.passes().several() && tape.size() > PathLines.EXACT_MOVES;
    return whole.after(grown, sameLines);
  }

  private void measure(Tape tape, int move) {
    MoveKind kind = tape.kind(move);
    boolean feed = kind == MoveKind.LINE || kind == MoveKind.ARC;
    feeds |= feed;
    int steps = kind == MoveKind.ARC ? ARC_POINTS : 1;
    for (int i = feed ? 0 : steps; i <= steps; i++) {
      tape.pointAt(move, (double) i / steps, p);
      include(p[0], p[1], p[2], low, high);
      if (feed) {
        include(p[0], p[1], p[2], feedLow, feedHigh);
      }
    }
  }

  private static void include(double x, double y, double z, double[] lows, double[] highs) {
    lows[0] = Math.min(lows[0], x);
    lows[1] = Math.min(lows[1], y);
    lows[2] = Math.min(lows[2], z);
    highs[0] = Math.max(highs[0], x);
    highs[1] = Math.max(highs[1], y);
    highs[2] = Math.max(highs[2], z);
  }

  private static Extents box(double[] lows, double[] highs) {
    return new Extents(
        new Point(lows[0], lows[1], lows[2]), new Point(highs[0], highs[1], highs[2]));
  }
}
