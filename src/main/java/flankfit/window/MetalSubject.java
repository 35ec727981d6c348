package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Scene;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.solid.MeshBody;
import java.util.Optional;

/** What is cut: a program's moves, its sheet with a stock. Two are equal if they are one. */
final class MetalSubject {
  private final Tape tape;
  private final SetupSheet setup;
  private final Cutting cutting;
  private final Scene scene;

  private MetalSubject(Loaded loaded, Cutting cutting) {
    tape = loaded.input().tape();
    setup = loaded.input().setup();
    scene = loaded.scene();
    this.cutting = cutting;
  }

  /** That of a program; empty where no stock is stated, or the program is not executed yet. */
  static Optional<MetalSubject> of(Loaded loaded) {
    return loaded
        .input()
        .cutting()
        .filter(c -> loaded.input().setup().stock().isPresent() && loaded.input().tape().size() > 0)
        .map(c -> new MetalSubject(loaded, c));
  }

  /** Whether a program is still the same moves and the same sheet. */
  boolean isOf(Loaded loaded) {
    // each load makes a tape of its own
    return loaded.input().tape().equals(tape) && loaded.input().cutting().isPresent();
  }

  Tape tape() {
    return tape;
  }

  SetupSheet setup() {
    return setup;
  }

  Cutting cutting() {
    return cutting;
  }

  Optional<MeshBody> mesh() {
    return cutting.mesh();
  }

  /** The scene, without a cutter. */
  Scene scene() {
    return scene;
  }

  Extents stock() {
    return setup.stock().orElseThrow().box();
  }

  /** Where planes begin: in the axis of the first threaded hole, half way down its thread. */
  Point middle() {
    Point middle = stock().middle();
    Optional<Hole> hole =
        setup.holes().stream()
            .filter(h -> h.thread().isPresent())
            .findFirst()
            .or(() -> setup.holes().stream().findFirst());
    return hole.map(
            h ->
                new Point(
                    h.x(),
                    h.y(),
                    h.top() - h.threadDepth().or(h::depth).orElse(h.top() - stock().min().z()) / 2))
        .orElse(middle);
  }
}
