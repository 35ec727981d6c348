package flankfit.control;

import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Where the programs of a text begin, where their sequence numbers stand, and which WHILE or DO
 * belongs to which END. Made in one pass, only when something first jumps or calls.
 */
final class ProgramIndex {
  /** A program number of a text that begins without one. */
  static final int UNNUMBERED = -1;

  private final List<Program> programs = new ArrayList<>();
  private final OffsetMap<Loop> loops = new OffsetMap<>();
  private final Deque<OpenLoop> open = new ArrayDeque<>();

  private record OpenLoop(int number, Spot begin) {}

  /** Reads a text to its end. */
  ProgramIndex(BlockReader reader, Block block) {
    while (reader.next(block)) {
      if (!block.deleted()) {
        add(block, Spot.of(reader));
      }
    }
  }

  private void add(Block block, Spot after) {
    Spot here = new Spot(block.offset(), block.line(), block.lineStart());
    if (block.programNumber() >= 0 || programs.isEmpty()) {
      int number = block.programNumber() >= 0 ? block.programNumber() : UNNUMBERED;
      programs.add(new Program(number, here));
      open.clear();
    }
    Program program = programs.get(programs.size() - 1);
    if (block.sequence() >= 0) {
      program.add(block.sequence(), here);
    }
    Optional<Statement> statement = block.isFlow() ? block.statement() : Optional.empty();
    if (statement.isPresent() && statement.get().isLoop()) {
      loop(statement.get(), here, after, program);
    }
  }

  /** Loops pair by number and do not cross: END ends the loop begun last, or has no partner. */
  private void loop(Statement statement, Spot here, Spot after, Program program) {
    int number = statement.loop();
    if (statement.kind() != Statement.Kind.END) {
      open.push(new OpenLoop(number, here));
      return;
    }
    if (open.isEmpty() || open.peek().number() != number) {
      return;
    }
    OpenLoop begun = open.pop();
    if (open.stream().anyMatch(outer -> outer.number() == number)) {
      return;
    }
    Loop loop = new Loop(number, begun.begin(), here.offset(), after);
    loops.put(begun.begin().offset(), loop);
    loops.put(here.offset(), loop);
    program.loops.add(loop);
  }

  /** The programs in the order of the text; at least one. */
  List<Program> programs() {
    return programs;
  }

  /** The loop that a WHILE, DO or END belongs to; empty when it has no partner. */
  Optional<Loop> loop(Block block) {
    return loops.get(block.offset());
  }

  /** One program of the text. */
  static final class Program {
    private final int number;
    private final Spot begin;
    private final List<Loop> loops = new ArrayList<>();

    // One column for each number of a sequence: many programs number every block.
    private int[] sequences = new int[16];
    private int[] offsets = new int[16];
    private int[] lines = new int[16];
    private int[] lineStarts = new int[16];
    private int size;

    private Program(int number, Spot begin) {
      this.number = number;
      this.begin = begin;
    }

    private void add(int sequence, Spot spot) {
      if (size == sequences.length) {
        sequences = Arrays.copyOf(sequences, 2 * size);
        offsets = Arrays.copyOf(offsets, 2 * size);
        lines = Arrays.copyOf(lines, 2 * size);
        lineStarts = Arrays.copyOf(lineStarts, 2 * size);
      }
      sequences[size] = sequence;
      offsets[size] = spot.offset();
      lines[size] = spot.line();
      lineStarts[size] = spot.lineStart();
      size++;
    }

    int number() {
      return number;
    }

    Spot begin() {
      return begin;
    }

    /** Where a sequence number stands first. */
    Optional<Spot> target(int sequence) {
      for (int i = 0; i < size; i++) {
        if (sequences[i] == sequence) {
          return Optional.of(new Spot(offsets[i], lines[i], lineStarts[i]));
        }
      }
      return Optional.empty();
    }

    /** How often a sequence number stands. */
    int count(int sequence) {
      int count = 0;
      for (int i = 0; i < size; i++) {
        count += sequences[i] == sequence ? 1 : 0;
      }
      return count;
    }

    /** The loop that a jump would enter from outside. */
    Optional<Loop> enteredFromOutside(int from, int to) {
      return loops.stream().filter(l -> l.holds(to) && !l.holds(from)).findFirst();
    }
  }
}
