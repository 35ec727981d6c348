package flankfit.window;

import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.MetalPieces;
import flankfit.metal.MetalProgress;
import flankfit.metal.TooFineException;
import flankfit.motion.Tape;
import flankfit.picture.BodyFaces;
import flankfit.picture.BodyPieces;
import flankfit.picture.BodyScene.KeyRow;
import flankfit.picture.CutMarks;
import flankfit.picture.MeshFaces;
import flankfit.picture.MetalInk;
import flankfit.picture.MetalScene;
import flankfit.solid.Halt;
import flankfit.solid.Mesh;
import flankfit.solid.Meshing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Makes pictures of the metal. What it made last stays, and only pieces that may look otherwise are
 * made anew. Asked by one thread at a time.
 */
final class MetalMaker implements Latest.Work<MetalQuestion, MetalPicture> {
  /** Memory that octree and bricks of one metal may take (bytes). */
  static final long MEMORY = 192L << 20;

  /** How far shade depends on what is around: four steps, each twice the one before (mm). */
  private static final double REACH = 8 * MetalScene.OPEN_STEP;

  private final double coarser;
  private final int threads;
  private volatile Optional<Kept> kept = Optional.empty();

  /** What was made last. */
  private record Kept(MetalSubject subject, Body body, MetalPieces pieces, MetalPicture last) {}

  /** A metal, and the cells that were asked for (mm). */
  private record Body(Metal metal, double asked) {}

  /**
   * Has made nothing yet.
   *
   * @param coarser how many times coarser cells are than the tools want (1)
   * @param threads threads that work, at least 1
   */
  MetalMaker(double coarser, int threads) {
    this.coarser = coarser;
    this.threads = threads;
  }

  /** Drops what it made last, for its memory. */
  void forget() {
    kept = Optional.empty();
  }

  @Override
  public MetalPicture answer(MetalQuestion question, Latest.Watch watch) {
    Optional<Kept> before = kept.filter(k -> k.subject() == question.subject());
    Body body = before.isPresent() ? before.get().body() : cut(question.subject(), watch);
    MetalPieces pieces = before.isPresent() ? before.get().pieces() : body.metal().pieces(REACH);
    List<Integer> changed = new ArrayList<>();
    for (int i = 0; i < pieces.count(); i++) {
      if (before.isEmpty()
          || pieces.mayDiffer(i, before.get().last().of().moves(), question.moves())) {
        changed.add(i);
      }
    }
    double begun = before.isPresent() ? 0 : 0.3;
    List<BodyFaces> made =
        make(question, pieces, changed, share -> watch.goesOn(begun + (1 - begun) * share));
    BodyPieces all =
        before.isPresent()
            ? before.get().last().pieces().with(changed, made)
            : new BodyPieces(made.isEmpty() ? List.of(nothing(question)) : made);
    MetalPicture picture =
        new MetalPicture(
            question,
            body.metal(),
            body.asked(),
            coarser <= MetalBench.FINE,
            all,
            changed.size(),
            key(question));
    kept = Optional.of(new Kept(question.subject(), body, pieces, picture));
    return picture;
  }

  private static BodyFaces nothing(MetalQuestion question) {
    return new BodyFaces(question.subject().scene().bounds().middle());
  }

  /** The metal at cells some times coarser than tools want, or as coarse as the memory asks. */
  private Body cut(MetalSubject subject, Latest.Watch watch) {
    MetalProgress progress = share -> watch.goesOn(0.3 * share);
    double cell = coarser * Metal.finest(subject.tape(), subject.setup(), subject.mesh());
    MetalOptions options =
        MetalOptions.usual().withMemory(MEMORY).withThreads(threads).withCell(cell);
    while (true) {
      try {
        return new Body(
            Metal.of(subject.tape(), subject.setup(), subject.mesh(), options, progress), cell);
      } catch (TooFineException e) {
        options = options.withCell(e.fits());
      }
    }
  }

  private List<BodyFaces> make(
      MetalQuestion question, MetalPieces pieces, List<Integer> changed, Latest.Watch watch) {
    MetalSubject subject = question.subject();
    MetalInk ink = new MetalInk(subject.tape(), subject.setup());
    CutMarks marks = new CutMarks(subject.tape(), subject.setup());
    BodyFaces[] made = new BodyFaces[changed.size()];
    AtomicInteger done = new AtomicInteger();
    Meshing meshing = new Meshing(1, MetalScene.OPEN_STEP, Halt.NEVER);
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      pool.submit(
              () ->
                  IntStream.range(0, made.length)
                      .parallel()
                      .forEach(
                          i -> {
                            if (!watch.goesOn((double) done.getAndIncrement() / made.length)) {
                              throw new CancellationException("nobody waits any more");
                            }
                            Mesh mesh = meshing.mesh(pieces.at(changed.get(i), question.moves()));
                            made[i] = nothing(question);
                            MeshFaces.add(made[i], mesh, marks, ink::mirror);
                          }))
          .join();
    } finally {
      pool.shutdown();
    }
    return List.of(made);
  }

  private static List<KeyRow> key(MetalQuestion question) {
    Tape tape = question.subject().tape();
    boolean[] used = new boolean[tape.states().size()];
    for (int move = 0; move < question.moves(); move++) {
      used[tape.stateIndex(move)] = true;
    }
    TreeSet<Integer> numbers = new TreeSet<>();
    for (int i = 0; i < used.length; i++) {
      int number = tape.states().get(i).tool();
      if (used[i] && question.subject().setup().tool(number).isPresent()) {
        numbers.add(number);
      }
    }
    return new MetalInk(tape, question.subject().setup()).key(numbers, true);
  }
}
