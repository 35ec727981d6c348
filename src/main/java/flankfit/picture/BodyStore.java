package flankfit.picture;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Faces of a body on their way into graphics memory, over as many frames as that needs; until all
 * are there, those before are drawn.
 */
final class BodyStore implements AutoCloseable {
  /** Pieces brought in a frame at least: on a loaded machine time flies. */
  private static final int LEAST_PIECES = 8;

  private final BodyBatch walls = new BodyBatch();
  private IdentityHashMap<BodyFaces, BodyBatch> shown = new IdentityHashMap<>();
  private List<BodyBatch> drawn = List.of();
  private IdentityHashMap<BodyFaces, BodyBatch> coming = new IdentityHashMap<>();
  private Optional<BodyPieces> wanted = Optional.empty();
  private Optional<BodyPieces> complete = Optional.empty();
  private Optional<ThreadWalls> wantedWalls = Optional.empty();
  private Optional<ThreadWalls> shownWalls = Optional.empty();

  /** Wants a body shown, in place of the one before. */
  void show(BodyPieces pieces) {
    wanted = Optional.of(pieces);
  }

  /** Wants exact walls shown, or none. */
  void show(Optional<ThreadWalls> exact) {
    wantedWalls = exact;
  }

  /** Forgets the body: nothing is shown until the next is there. */
  void forget() {
    wanted = Optional.empty();
    complete = Optional.empty();
    wantedWalls = Optional.empty();
    shownWalls = Optional.empty();
    shown.values().forEach(BodyBatch::close);
    coming.forEach((faces, batch) -> batch.close());
    shown = new IdentityHashMap<>();
    coming = new IdentityHashMap<>();
    drawn = List.of();
  }

  /** Whether a body is shown. */
  boolean isThere() {
    return complete.isPresent();
  }

  /** Whether exact walls of threads are shown. */
  boolean showsWalls() {
    return shownWalls.filter(w -> !w.regions().isEmpty()).isPresent();
  }

  /** Whether all that is wanted is shown. */
  boolean isComplete() {
    return isSame(wanted, complete) && isSame(wantedWalls, shownWalls);
  }

  private static boolean isSame(Optional<?> one, Optional<?> other) {
    return one.isPresent() == other.isPresent() && (one.isEmpty() || one.get() == other.get());
  }

  /**
   * Brings faces into graphics memory.
   *
   * @param until the time (ns, of {@link System#nanoTime}) after which no more is begun
   * @return whether something else is shown now
   */
  boolean upload(long until) {
    boolean changed = false;
    if (!isSame(wanted, complete) && wanted.isPresent() && bring(wanted.get(), until)) {
      swap(wanted.get());
      changed = true;
    }
    if (isSame(wanted, complete) && !isSame(wantedWalls, shownWalls)) {
      wantedWalls.ifPresent(w -> walls.upload(w.faces()));
      shownWalls = wantedWalls;
      changed = true;
    }
    return changed;
  }

  /** Whether all pieces are in graphics memory. */
  private boolean bring(BodyPieces pieces, long until) {
    int brought = 0;
    for (BodyFaces piece : pieces.faces()) {
      if (piece.triangles() > 0 && !shown.containsKey(piece) && !coming.containsKey(piece)) {
        if (brought++ >= LEAST_PIECES && System.nanoTime() > until) {
          return false;
        }
        BodyBatch batch = new BodyBatch();
        batch.upload(piece);
        coming.put(piece, batch);
      }
    }
    return true;
  }

  private void swap(BodyPieces pieces) {
    IdentityHashMap<BodyFaces, BodyBatch> next = new IdentityHashMap<>();
    List<BodyBatch> order = new ArrayList<>();
    for (BodyFaces piece : pieces.faces()) {
      BodyBatch batch = coming.remove(piece);
      if (batch == null) {
        batch = shown.remove(piece);
      }
      if (batch != null) {
        next.put(piece, batch);
        order.add(batch);
      }
    }
    shown.values().forEach(BodyBatch::close);
    coming.values().forEach(BodyBatch::close);
    coming = new IdentityHashMap<>();
    shown = next;
    drawn = order;
    complete = Optional.of(pieces);
  }

  /** The body that is drawn. */
  Optional<BodyPieces> complete() {
    return complete;
  }

  /** Its pieces. */
  List<BodyBatch> drawn() {
    return drawn;
  }

  /** The exact walls that are drawn. */
  Optional<ThreadWalls> walls() {
    return shownWalls;
  }

  /** Draws those walls with the program in use. */
  void drawWalls() {
    walls.draw();
  }

  @Override
  public void close() {
    forget();
    walls.close();
  }
}
