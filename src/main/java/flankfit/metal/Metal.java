package flankfit.metal;

import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.solid.MeshBody;
import flankfit.solid.Solid;
import flankfit.solid.SurfaceCells;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * The stock of a program at every moment. Nothing depends on which moments were asked for before,
 * or on the number of threads: the same question gives the same bits. Safe for many readers.
 */
public final class Metal {
  private final Workpiece piece;
  private final Skeleton skeleton;
  private final Bricks bricks;
  private final ForkJoinPool pool;
  private final Pace pace;
  private final ThreadLocal<Probe> probes;
  private final ThreadLocal<QuickProbe> quicks;
  private final List<String> assumptions;

  private Metal(
      Workpiece piece,
      Skeleton skeleton,
      MetalOptions options,
      ForkJoinPool pool,
      Pace pace,
      List<String> assumptions) {
    this.piece = piece;
    this.skeleton = skeleton;
    this.pool = pool;
    this.pace = pace;
    this.assumptions = List.copyOf(assumptions);
    ThreadLocal<NodeMaker> makers =
        ThreadLocal.withInitial(() -> new NodeMaker(piece, skeleton.lattice(), skeleton.scale()));
    this.bricks = new Bricks(skeleton.leaves(), options.memory() - skeleton.bytes(), makers);
    this.probes = ThreadLocal.withInitial(() -> new Probe(piece, skeleton));
    this.quicks = ThreadLocal.withInitial(() -> new QuickProbe(piece, skeleton));
  }

  /**
   * The metal of a program. Finds out which moves may cut where; what the surface looks like is
   * found when it is asked for.
   *
   * @param sheet must state the stock
   * @param progress told of this work and of all later work
   * @throws IllegalArgumentException if the sheet states no stock, or a mesh
   * @throws TooFineException if the cells that the options ask for need more memory than they give
   * @throws java.util.concurrent.CancellationException if the progress ends the work
   */
  public static Metal of(Tape tape, SetupSheet sheet, MetalOptions options, MetalProgress progress)
      throws TooFineException {
    return of(tape, sheet, Optional.empty(), options, progress);
  }

  /**
   * The same for a stock that may be a mesh.
   *
   * @param mesh the body of the file that the sheet names as stock; empty for other stock
   */
  public static Metal of(
      Tape tape,
      SetupSheet sheet,
      Optional<MeshBody> mesh,
      MetalOptions options,
      MetalProgress progress)
      throws TooFineException {
    Stock stock =
        sheet.stock().orElseThrow(() -> new IllegalArgumentException("the sheet states no stock"));
    Workpiece piece = Workpiece.of(tape, sheet, stock, mesh);
    ForkJoinPool pool = new ForkJoinPool(options.threads());
    Pace pace = new Pace(progress);
    double wanted = piece.finest();
    double asked = options.cell().orElse(wanted);
    double cell = asked;
    Optional<Skeleton> skeleton = Optional.empty();
    while (skeleton.isEmpty()) {
      skeleton = Skeleton.of(piece, cell, cell / wanted, options.memory(), pool, pace);
      if (skeleton.isEmpty()) {
        cell *= 2;
      }
    }
    List<String> assumptions = new ArrayList<>(piece.assumptions());
    if (cell > asked) {
      if (options.cell().isPresent()) {
        throw new TooFineException(asked, cell, options.memory());
      }
      assumptions.add(
          String.format(
              Locale.ROOT,
              "cells of %.3f mm instead of %.3f mm, so that the metal fits into %d MiB",
              cell,
              asked,
              options.memory() >> 20));
    }
    return new Metal(piece, skeleton.get(), options, pool, pace, assumptions);
  }

  /**
   * Side of the cells that the tools of a program want at the finest (mm).
   *
   * @param mesh the body of the file that the sheet names as stock; empty for other stock
   * @throws IllegalArgumentException if the sheet states no stock
   */
  public static double finest(Tape tape, SetupSheet sheet, Optional<MeshBody> mesh) {
    Stock stock =
        sheet.stock().orElseThrow(() -> new IllegalArgumentException("the sheet states no stock"));
    return Workpiece.of(tape, sheet, stock, mesh).finest();
  }

  /** What was assumed, a sentence each. */
  public List<String> assumptions() {
    return assumptions;
  }

  /** The moves that take metal away, and their tools. */
  public Cuts cuts() {
    return piece.cuts();
  }

  /** The stock before the first move. */
  public StockBody stock() {
    return piece.stock();
  }

  /** Side of the finest cells (mm). */
  public double cell() {
    return skeleton.lattice().cell();
  }

  /** Memory that nodes and bricks take now (bytes). */
  public long memoryUsed() {
    return skeleton.bytes() + bricks.bytes();
  }

  /** Bricks that have been made so far, those made again included. */
  public long bricksMade() {
    return bricks.made();
  }

  Probe probe() {
    return probes.get();
  }

  QuickProbe quick() {
    return quicks.get();
  }

  Workpiece piece() {
    return piece;
  }

  Skeleton skeleton() {
    return skeleton;
  }

  /**
   * The metal that is left.
   *
   * @param moves number of moves that have been made, 0 to the size of the tape
   */
  public Solid at(int moves) {
    return new MetalSolid(this, checked(moves));
  }

  /**
   * Whether a place is metal after some moves; much quicker than asking how far away the surface
   * is.
   *
   * @param moves number of moves that have been made, 0 to the size of the tape
   */
  public boolean isMetal(double x, double y, double z, int moves) {
    if (piece.stock().distance(x, y, z) > 0) {
      return false;
    }
    MoveList near = new MoveList();
    piece.tree().collect(x, y, z, 0, checked(moves), near);
    SweptCut cut = new SweptCut();
    for (int i = 0; i < near.size(); i++) {
      cuts().load(near.get(i), cut);
      if (cut.holds(x, y, z)) {
        return false;
      }
    }
    return true;
  }

  private int checked(int moves) {
    return (int) Require.within("moves", moves, 0, piece.cuts().tape().size());
  }

  /** The cells that hold surface after some moves. */
  SurfaceCells cells(int after) {
    bricks.begin();
    List<Node> holding = new ArrayList<>();
    for (Node leaf : skeleton.leaves()) {
      if (leaf.mayHoldSurface(after)) {
        holding.add(leaf);
      }
    }
    long[][] surface = new long[holding.size()][];
    each(holding.size(), i -> surface[i] = CellMarks.surface(bricks.of(holding.get(i)), after));
    CellMarks marks = new CellMarks(skeleton.root());
    for (int i = 0; i < surface.length; i++) {
      marks.mark(holding.get(i), surface[i]);
    }
    return marks.list(skeleton.lattice(), new Corners(skeleton.root(), bricks, after));
  }

  /** The cells that hold the surface of one block after some moves. */
  SurfaceCells cells(Node block, int after) {
    bricks.begin();
    return BlockCells.of(skeleton, bricks, block, after);
  }

  /**
   * The surface in pieces.
   *
   * @param reach how far from a surface its shade depends on cuts (mm), not below 0
   * @throws IllegalArgumentException if the reach is below 0 or not a number
   */
  public MetalPieces pieces(double reach) {
    return new MetalPieces(this, reach);
  }

  /** Does something for each index, on all threads; counts as one step of the progress. */
  void each(int count, IntConsumer work) {
    pace.begin(count);
    pool.submit(
            () ->
                IntStream.range(0, count)
                    .parallel()
                    .forEach(
                        i -> {
                          work.accept(i);
                          pace.done(1);
                        }))
        .join();
  }

  /** Volume of the metal that is left after so many moves (mm³). */
  public double volume(int moves) {
    return volumes(new int[] {checked(moves)})[0];
  }

  /**
   * What each tool took away, run by run in the order of time. The volumes add up to the difference
   * between the stock and what is left.
   */
  public List<Removed> removed() {
    return balance(piece.cuts().tape().size()).removed();
  }

  /**
   * Stock and what was taken away as far as the program has come, measured at once.
   *
   * @param moves number of moves that have been made, 0 to the size of the tape
   */
  public Balance balance(int moves) {
    Runs runs = Runs.of(piece, checked(moves));
    double[] volumes = volumes(runs.moments());
    return new Balance(volumes[0], runs.removed(volumes));
  }

  /**
   * Volumes after several numbers of moves (mm³).
   *
   * @param moments numbers of moves, rising
   */
  double[] volumes(int[] moments) {
    bricks.begin();
    VolumeSum sum = new VolumeSum(skeleton, bricks, moments);
    ThreadLocal<BrickVolume> volumes =
        ThreadLocal.withInitial(
            () -> new BrickVolume(piece.stock(), bricks.field(), skeleton.lattice()));
    each(sum.chunks(), i -> sum.chunk(i, volumes.get()));
    return sum.total();
  }
}
