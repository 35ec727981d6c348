package flankfit.window;

import flankfit.check.MetalCheck;
import flankfit.finding.Finding;
import flankfit.gauge.ThreadAnswer;
import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.MetalProgress;
import flankfit.metal.TooFineException;
import flankfit.picture.ThreadWalls;
import java.util.List;
import java.util.Optional;

/**
 * The metal at the position, made on threads of its own: coarsely and at once while the position
 * moves, finely when it rests; then the exact walls of threads that are looked at closely, and what
 * touches metal that should not.
 */
final class MetalBench implements AutoCloseable {
  /** Cells are so many times coarser than tools want, while the position moves and at rest. */
  static final double COARSE = 8;

  static final double FINE = 4;

  /** Time that the position rests before the fine picture is begun (ms). */
  private static final long REST = 300;

  /** Words tell of work that takes longer (ns). */
  private static final long PATIENCE = 200_000_000;

  /** Exact walls are made no finer than this asks for (mm a pixel): half a million triangles. */
  private static final double FINEST_WALL = 0.03;

  /** Cells along the stock's diagonal where only touches are asked. */
  private static final double TOUCH_CELLS = 100;

  private final MetalMaker coarsely;
  private final MetalMaker finely;
  private final Latest<MetalQuestion, MetalPicture> coarse;
  private final Latest<MetalQuestion, MetalPicture> fine;
  private final Latest<WallQuestion, ThreadWalls> walls;
  private final Latest<MetalSubject, Touches> touches;
  private Optional<MetalSubject> subject = Optional.empty();
  private Optional<MetalQuestion> stopped = Optional.empty();
  private Optional<MetalPicture> shown = Optional.empty();
  private Optional<MetalQuestion> wanted = Optional.empty();
  private long since;

  /**
   * Exact walls that are wanted.
   *
   * @param picture the metal that has them
   * @param threads gauged threads
   * @param scale what a pixel shows, a power of two (mm)
   */
  private record WallQuestion(MetalPicture picture, List<ThreadAnswer> threads, double scale) {}

  /** What touches. */
  private record Touches(List<Finding> findings) {}

  /**
   * Has made nothing yet.
   *
   * @param wake called on any thread when something has come
   */
  MetalBench(Runnable wake) {
    int threads = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    coarsely = new MetalMaker(COARSE, threads);
    finely = new MetalMaker(FINE, threads);
    coarse = new Latest<>("metal", 0, coarsely, wake);
    fine = new Latest<>("metal-fine", REST, finely, wake);
    walls = new Latest<>("metal-walls", REST, MetalBench::walls, wake);
    touches = new Latest<>("metal-touches", REST, MetalBench::touches, wake);
  }

  private static ThreadWalls walls(WallQuestion question, Latest.Watch watch) {
    MetalPicture picture = question.picture();
    return ThreadWalls.of(
        picture.of().subject().scene(), picture.solid(), question.threads(), question.scale());
  }

  private static Touches touches(MetalSubject subject, Latest.Watch watch) {
    MetalProgress progress = watch::goesOn;
    MetalOptions options =
        MetalOptions.usual().withThreads(1).withCell(subject.stock().diagonal() / TOUCH_CELLS);
    while (true) {
      try {
        Metal metal = Metal.of(subject.tape(), subject.setup(), subject.mesh(), options, progress);
        MetalCheck check =
            MetalCheck.of(
                subject.cutting().checked(), subject.setup(), metal, subject.tape().size());
        return new Touches(MetalCheck.touching(check.findings()));
      } catch (TooFineException e) {
        options = options.withCell(e.fits());
      }
    }
  }

  /**
   * Takes the program and the position.
   *
   * @param moves number of moves that have been made
   * @param moving whether the position is on its way: then nothing fine is begun
   * @return whether there is something else to show
   */
  boolean follow(Loaded loaded, int moves, boolean moving) {
    boolean changed = false;
    if (subject.isEmpty() || !subject.get().isOf(loaded)) {
      Optional<MetalSubject> now = MetalSubject.of(loaded);
      changed = now.isPresent() || (subject.isPresent() && !loaded.stage().isGoing());
      if (changed) {
        // What was made of another program is of no use, and takes much memory.
        forget();
        subject = now;
        stopped = Optional.empty();
      }
    }
    if (subject.isEmpty()) {
      shown = Optional.empty();
      wanted = Optional.empty();
      return changed;
    }
    MetalQuestion question = new MetalQuestion(subject.get(), moves);
    if (!Optional.of(question).equals(wanted)) {
      wanted = Optional.of(question);
      since = System.nanoTime();
      fine.stop();
    }
    if (!wanted.equals(stopped)) {
      stopped = Optional.empty();
      ask(question, moving);
    }
    Optional<MetalPicture> best = best(question);
    boolean other = !best.equals(shown);
    shown = best;
    return changed || other;
  }

  private void ask(MetalQuestion question, boolean moving) {
    boolean isFine = fine.told(question).isPresent();
    // One under way is ended while the position moves on: else a film would show nothing.
    if (!isFine && coarse.told(question).isEmpty() && !coarse.isGoing()) {
      coarse.ask(question);
    }
    if (!isFine && !moving && coarse.told(question).isPresent()) {
      fine.ask(question);
    }
    if (isFine && !moving) {
      touches.ask(question.subject());
    }
  }

  /** The finest picture of the moment; else the last one of the program. */
  private Optional<MetalPicture> best(MetalQuestion question) {
    Optional<MetalPicture> exact = fine.told(question).or(() -> coarse.told(question));
    if (exact.isPresent()) {
      return exact;
    }
    Optional<MetalPicture> last =
        coarse.told().map(Latest.Told::answer).filter(p -> p.of().subject() == question.subject());
    Optional<MetalPicture> before = shown.filter(p -> p.of().subject() == question.subject());
    return isNewer(last, before) ? last : before;
  }

  private boolean isNewer(Optional<MetalPicture> last, Optional<MetalPicture> before) {
    if (last.isEmpty() || before.isEmpty()) {
      return last.isPresent();
    }
    int target = wanted.map(MetalQuestion::moves).orElse(0);
    return Math.abs(last.get().of().moves() - target)
        < Math.abs(before.get().of().moves() - target);
  }

  /** What is cut; empty without a stock. */
  Optional<MetalSubject> subject() {
    return subject;
  }

  /** The picture to show. */
  Optional<MetalPicture> shown() {
    return shown;
  }

  /** Whether the picture is that of the position. */
  boolean isCurrent() {
    return shown.isPresent() && wanted.isPresent() && shown.get().of().equals(wanted.get());
  }

  /** Whether the picture is as fine as it gets. */
  boolean isFine() {
    return wanted.isPresent() && fine.told(wanted.get()).isPresent();
  }

  /**
   * The exact walls of threads in the picture; asks for those that are missing.
   *
   * @param scale what a pixel shows (mm)
   */
  Optional<ThreadWalls> walls(List<ThreadAnswer> threads, double scale) {
    if (!isFine() || threads.isEmpty()) {
      return Optional.empty();
    }
    double least = Math.max(FINEST_WALL, scale);
    double bucket = StrictMath.pow(2, Math.ceil(StrictMath.log(least) / StrictMath.log(2)));
    WallQuestion question = new WallQuestion(shown.orElseThrow(), threads, bucket);
    walls.ask(question);
    return walls
        .told()
        .filter(t -> t.question().picture().equals(question.picture()))
        .map(Latest.Told::answer);
  }

  /** What touches metal or a clamp that should not; empty while that is not known. */
  Optional<List<Finding>> touching() {
    return subject.flatMap(touches::told).map(Touches::findings);
  }

  /** Whether work is under way that takes long enough to tell of. */
  boolean isLong() {
    return isWorking() && System.nanoTime() - since > PATIENCE;
  }

  /** Whether the picture of the position, or a finer one, is under way. */
  boolean isWorking() {
    return coarse.isGoing() || fine.isGoing();
  }

  /** Share of the work under way that is done (1). */
  double share() {
    return coarse.isGoing() ? coarse.share() : fine.share();
  }

  /** Whether the finer picture alone is under way. */
  boolean isRefining() {
    return !coarse.isGoing() && fine.isGoing();
  }

  /** Stops what is under way until the position changes; gives whether there was anything. */
  boolean stop() {
    boolean any = isWorking() || touches.isGoing();
    if (any) {
      stopAll();
      stopped = wanted;
    }
    return any;
  }

  /** Whether the user stopped the picture of the position. */
  boolean isStopped() {
    return stopped.isPresent() && stopped.equals(wanted);
  }

  private void stopAll() {
    coarse.stop();
    fine.stop();
    walls.stop();
    touches.stop();
  }

  /** Drops all that was made; what is asked for next is made anew. */
  void forget() {
    coarse.forget();
    fine.forget();
    walls.forget();
    touches.forget();
    coarsely.forget();
    finely.forget();
    shown = Optional.empty();
    wanted = Optional.empty();
  }

  /** Why the last picture did not come: the tool failed. */
  Optional<String> failure() {
    return coarse.failure().or(fine::failure).or(walls::failure).or(touches::failure);
  }

  @Override
  public void close() {
    coarse.close();
    fine.close();
    walls.close();
    touches.close();
  }
}
