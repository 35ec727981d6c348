package flankfit.motion;

import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Writes a {@link Tape} move by move. Not for use by several threads. */
public final class TapeBuilder {
  private static final int FIRST_CAPACITY = 256;

  /** Numbers in the pool that count as a move: index of the state and numbers of an arc. */
  private static final int NUMBERS_A_MOVE = 1 + Tape.ARC_NUMBERS;

  /** Index of the state and programmed end. */
  private static final int PROGRAMMED_NUMBERS = 1 + 3;

  /** The pool grows by this share of all moves at least, which may go beyond the limit. */
  private static final int LEAST_STEP = 32;

  /** Moves that take as much memory as a state and what finds it again. */
  private static final int MOVES_A_STATE = 8;

  /** States that are not counted: more than a program written by hand has. */
  private static final int FREE_STATES = 1000;

  /** The most moves a tape is made for: an index into the pool has 28 bits. */
  public static final int MOST_MOVES = 70_000_000;

  private final Point start;
  private final double[] rapidRates;
  private final int mostMoves;
  private int size;
  private double[] x;
  private double[] y;
  private double[] z;
  private int[] line;
  private int[] block;
  private int[] flags;
  private double[] pool = new double[FIRST_CAPACITY];
  private int poolSize;
  private final List<ModalState> states = new ArrayList<>();
  private final Map<ModalState, Integer> known = new HashMap<>();
  private ModalState lastState;
  private int lastIndex;

  /**
   * Begins an empty tape of unknown length.
   *
   * @param start where the first move begins
   * @param rapidRates speed of a rapid on each axis (mm/min), 3 long, above 0
   */
  public TapeBuilder(Point start, double[] rapidRates) {
    this(start, rapidRates, 0, MOST_MOVES);
  }

  /**
   * Begins an empty tape.
   *
   * @param start where the first move begins
   * @param rapidRates speed of a rapid on each axis (mm/min), 3 long, above 0
   * @param likelyMoves room to set aside for so many moves; there may be more or fewer
   * @param mostMoves straight moves that there is room for at all, 1 to {@value #MOST_MOVES}; an
   *     arc takes the room of two, and from {@value #FREE_STATES} on a state of the control that of
   *     {@value #MOVES_A_STATE}
   */
  public TapeBuilder(Point start, double[] rapidRates, int likelyMoves, int mostMoves) {
    if (mostMoves < 1 || mostMoves > MOST_MOVES) {
      throw new IllegalArgumentException(
          "mostMoves must lie between 1 and " + MOST_MOVES + ": " + mostMoves);
    }
    this.mostMoves = mostMoves;
    int capacity = Math.min(mostMoves, Math.max(FIRST_CAPACITY, likelyMoves));
    x = new double[capacity];
    y = new double[capacity];
    z = new double[capacity];
    line = new int[capacity];
    block = new int[capacity];
    flags = new int[capacity];
    this.start = start;
    this.rapidRates = rapidRates.clone();
    if (rapidRates.length != 3) {
      throw new IllegalArgumentException("rapidRates must be 3 long: " + rapidRates.length);
    }
    for (double rate : rapidRates) {
      Require.positive("rapidRates", rate);
    }
  }

  /** Number of moves so far. */
  public int size() {
    return size;
  }

  /**
   * Adds a straight move.
   *
   * @param kind RAPID or LINE
   * @param x end, part frame (mm)
   * @param y end, part frame (mm)
   * @param z end, part frame (mm)
   * @param line line of the program, from 1
   * @param block number of the executed block, from 1
   * @param state state of the control during the move
   */
  public void straight(
      MoveKind kind, double x, double y, double z, int line, int block, ModalState state) {
    if (kind != MoveKind.RAPID && kind != MoveKind.LINE) {
      throw new IllegalArgumentException("kind must be RAPID or LINE: " + kind);
    }
    add(kind, x, y, z, line, block, state);
  }

  /**
   * Adds an arc in the plane of the state.
   *
   * @param centreU centre on the plane's first axis (mm)
   * @param centreV centre on the plane's second axis (mm)
   * @param radius radius at the start (mm), not below 0
   * @param endRadius radius at the end (mm), not below 0
   * @param sweep signed sweep (rad), positive anticlockwise, not 0
   */
  public void arc(
      double x,
      double y,
      double z,
      double centreU,
      double centreV,
      double radius,
      double endRadius,
      double sweep,
      int line,
      int block,
      ModalState state) {
    Require.notNegative("radius", radius);
    Require.notNegative("endRadius", endRadius);
    Require.finite("centreU", centreU);
    Require.finite("centreV", centreV);
    if (Require.finite("sweep", sweep) == 0) {
      throw new IllegalArgumentException("sweep must not be 0");
    }
    makeRoom(1 + Tape.ARC_NUMBERS);
    add(MoveKind.ARC, x, y, z, line, block, state);
    append(centreU);
    append(centreV);
    append(radius);
    append(endRadius);
    append(sweep);
  }

  /**
   * Adds a dwell where the tool stands.
   *
   * @param seconds how long (s), not below 0
   */
  public void dwell(double seconds, int line, int block, ModalState state) {
    Require.notNegative("seconds", seconds);
    makeRoom(1 + 1);
    Point at = size == 0 ? start : new Point(x[size - 1], y[size - 1], z[size - 1]);
    add(MoveKind.DWELL, at.x(), at.y(), at.z(), line, block, state);
    append(seconds);
  }

  /** Marks the last move as put in at a corner by compensation. */
  public void markInserted() {
    flags[last()] |= Tape.INSERTED_BIT;
  }

  /** Says where the last move's block told the tool to be; nothing is kept when it is there. */
  public void programmedTo(double px, double py, double pz) {
    int last = last();
    if (px == x[last] && py == y[last] && pz == z[last]) {
      return;
    }
    if ((flags[last] & Tape.PROGRAMMED_BIT) != 0) {
      throw new IllegalStateException("the programmed end of this move is set already");
    }
    makeRoomOfLast();
    if (!ownsPool(last)) {
      int state = flags[last] >>> Tape.FLAG_BITS;
      flags[last] = (flags[last] & Tape.FLAG_MASK) | poolSize << Tape.FLAG_BITS;
      append(state);
    }
    flags[last] |= Tape.PROGRAMMED_BIT;
    append(px);
    append(py);
    append(pz);
  }

  private int last() {
    if (size == 0) {
      throw new IllegalStateException("the tape has no move yet");
    }
    return size - 1;
  }

  private boolean ownsPool(int move) {
    MoveKind kind = MoveKind.ofBits(flags[move] & Tape.KIND_BITS);
    return kind == MoveKind.ARC || kind == MoveKind.DWELL;
  }

  /** The tape of all moves so far; the builder may go on, the tape does not change. */
  public Tape build() {
    return new Tape(
        start,
        size,
        Arrays.copyOf(x, size),
        Arrays.copyOf(y, size),
        Arrays.copyOf(z, size),
        Arrays.copyOf(line, size),
        Arrays.copyOf(block, size),
        Arrays.copyOf(flags, size),
        Arrays.copyOf(pool, poolSize),
        states,
        rapidRates);
  }

  /**
   * The moves so far without copying them: the columns are shared, for they only grow. The builder
   * may go on; between two moves nothing that the tape shows changes any more.
   */
  public Tape soFar() {
    return new Tape(start, size, x, y, z, line, block, flags, pool, states, rapidRates);
  }

  /** Number of the executed block of a move so far. */
  public int block(int move) {
    return block[move];
  }

  /**
   * Some of the moves so far as a tape of their own, beginning where the first of them begins.
   *
   * @param from first move
   * @param to move after the last; not below {@code from}
   */
  public Tape part(int from, int to) {
    Point begin = from == 0 ? start : new Point(x[from - 1], y[from - 1], z[from - 1]);
    List<ModalState> distinct = new ArrayList<>();
    int[] partFlags = Arrays.copyOfRange(flags, from, to);
    int firstNumber = firstNumber(from, to);
    double[] partPool = Arrays.copyOfRange(pool, firstNumber, poolSize);
    for (int i = 0; i < partFlags.length; i++) {
      int upper = partFlags[i] >>> Tape.FLAG_BITS;
      boolean pooled = usesPool(from + i);
      ModalState state = states.get(pooled ? (int) pool[upper] : upper);
      int known = distinct.indexOf(state);
      if (known < 0) {
        known = distinct.size();
        distinct.add(state);
      }
      if (pooled) {
        partPool[upper - firstNumber] = known;
      }
      int partUpper = pooled ? upper - firstNumber : known;
      partFlags[i] = (partFlags[i] & Tape.FLAG_MASK) | partUpper << Tape.FLAG_BITS;
    }
    return new Tape(
        begin,
        to - from,
        Arrays.copyOfRange(x, from, to),
        Arrays.copyOfRange(y, from, to),
        Arrays.copyOfRange(z, from, to),
        Arrays.copyOfRange(line, from, to),
        Arrays.copyOfRange(block, from, to),
        partFlags,
        partPool,
        distinct,
        rapidRates);
  }

  /** Where the numbers of some moves begin in the pool; those of later moves stand further back. */
  private int firstNumber(int from, int to) {
    for (int move = from; move < to; move++) {
      if (usesPool(move)) {
        return flags[move] >>> Tape.FLAG_BITS;
      }
    }
    return poolSize;
  }

  private boolean usesPool(int move) {
    return ownsPool(move) || (flags[move] & Tape.PROGRAMMED_BIT) != 0;
  }

  /**
   * The tape of all moves; the builder must not be used any more. Takes hardly more memory than the
   * tape alone, for the columns are handed over or cut one by one. They keep room that is not used
   * as long as a move takes no more than {@value Tape#MOST_BYTES} bytes with it.
   */
  public Tape finish() {
    if ((long) x.length * Tape.BYTES > (long) size * Tape.MOST_BYTES) {
      x = Arrays.copyOf(x, size);
      y = Arrays.copyOf(y, size);
      z = Arrays.copyOf(z, size);
      line = Arrays.copyOf(line, size);
      block = Arrays.copyOf(block, size);
      flags = Arrays.copyOf(flags, size);
    }
    if (pool.length > poolSize) {
      pool = Arrays.copyOf(pool, poolSize);
    }
    return new Tape(start, size, x, y, z, line, block, flags, pool, states, rapidRates);
  }

  /**
   * Makes sure that there is room for moves that wait elsewhere.
   *
   * @param moves how many moves' memory they take
   * @throws TapeFullException if there is not
   */
  public void checkRoom(int moves) {
    if (roomOfMoves() - size < moves) {
      throw new TapeFullException(mostMoves);
    }
  }

  /** Straight moves there is room for beside arcs and states, those on the tape included. */
  private int roomOfMoves() {
    return mostMoves
        - poolSize / NUMBERS_A_MOVE
        - MOVES_A_STATE * Math.max(0, states.size() - FREE_STATES);
  }

  private void add(
      MoveKind kind, double px, double py, double pz, int atLine, int atBlock, ModalState state) {
    if (!Double.isFinite(px + py + pz)) { // one test for all three: the bulk of moves comes here
      Require.finite("x", px);
      Require.finite("y", py);
      Require.finite("z", pz);
    }
    if (size == x.length) {
      grow();
    }
    x[size] = px;
    y[size] = py;
    z[size] = pz;
    line[size] = atLine;
    block[size] = atBlock;
    int index = indexOf(state);
    boolean pooled = kind == MoveKind.ARC || kind == MoveKind.DWELL;
    flags[size] = kind.bits() | (pooled ? poolSize : index) << Tape.FLAG_BITS;
    size++;
    if (pooled) {
      append(index);
    }
  }

  @SuppressWarnings("ReferenceEquality") // a shortcut only: unequal references are looked up
  private int indexOf(ModalState state) {
    // Runs of moves share one state object; look it up only when it changes.
    if (state == lastState) {
      return lastIndex;
    }
    Integer index = known.get(state);
    if (index == null) {
      if (states.size() >= FREE_STATES) {
        checkRoom(MOVES_A_STATE);
      }
      index = states.size();
      states.add(state);
      known.put(state, index);
    }
    lastState = state;
    lastIndex = index;
    return index;
  }

  private void append(double value) {
    pool[poolSize++] = value;
  }

  /** Makes room for numbers of the pool before a move is begun, so that none is told by half. */
  private void makeRoom(int numbers) {
    if (poolSize + numbers > pool.length) {
      int room = roomOfMoves() - size;
      if (room < 2) {
        throw new TapeFullException(mostMoves);
      }
      // Half the room is for columns; never so little that copying takes all the time.
      long more = numbers + (long) NUMBERS_A_MOVE * Math.max(room / 2, mostMoves / LEAST_STEP);
      int capacity = (int) Math.min(poolSize + more, 2L * pool.length);
      pool = Arrays.copyOf(pool, capacity);
    }
  }

  /** A last move whose programmed end finds no room is taken back. */
  private void makeRoomOfLast() {
    try {
      makeRoom(PROGRAMMED_NUMBERS);
    } catch (TapeFullException full) {
      size--;
      throw full;
    }
  }

  private void grow() {
    int capacity = (int) Math.min(roomOfMoves(), 2L * x.length);
    if (capacity <= size) {
      throw new TapeFullException(mostMoves);
    }
    x = Arrays.copyOf(x, capacity);
    y = Arrays.copyOf(y, capacity);
    z = Arrays.copyOf(z, capacity);
    line = Arrays.copyOf(line, capacity);
    block = Arrays.copyOf(block, capacity);
    flags = Arrays.copyOf(flags, capacity);
  }
}
