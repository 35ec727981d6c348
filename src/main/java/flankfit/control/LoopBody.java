package flankfit.control;

import flankfit.nc.Block;
import flankfit.nc.Expression;
import flankfit.nc.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The blocks of a WHILE loop that are nothing but computed points and single assignments to
 * variables that are named outright, in the order they stand.
 *
 * @param condition what WHILE asks
 * @param entries the blocks between WHILE and END
 */
record LoopBody(Expression condition, List<Entry> entries) {
  /**
   * A block.
   *
   * @param block the block
   * @param at where it begins
   * @param after where the next one begins
   */
  record Entry(Block block, Spot at, Spot after) {
    private boolean isPlain() {
      return block.fault().isEmpty() && block.deleteLevel() == 0 && block.programNumber() < 0;
    }

    private boolean isRunnable() {
      return isPlain() && (isAssignment() || (isPoint() && block.isComputedPoint()));
    }

    private boolean isAssignment() {
      return block
          .statement()
          .filter(s -> s.kind() == Statement.Kind.ASSIGN && s.assignments().size() == 1)
          .map(s -> s.assignments().get(0).variable())
          .filter(v -> v.size() == 1 && v.step(0) == Expression.Step.NUMBER)
          .filter(v -> Variables.isWritable((int) v.number(0)) && v.number(0) % 1 == 0)
          .isPresent();
    }

    /** Whether it has words; else it is an assignment. */
    boolean isPoint() {
      return block.statement().isEmpty();
    }

    /** Number of the variable that is assigned. */
    int variable() {
      return (int) assignment().variable().number(0);
    }

    /** What gives the value that is assigned. */
    Expression value() {
      return assignment().value();
    }

    private Statement.Assignment assignment() {
      return block.statement().orElseThrow().assignments().get(0);
    }
  }

  LoopBody {
    entries = List.copyOf(entries);
  }

  /** Blocks of one pass. */
  int size() {
    return entries.size() + 2;
  }

  /**
   * The body of a loop; empty when any block is of another kind.
   *
   * @param blockAt the block that begins somewhere, if it is known
   */
  static Optional<LoopBody> of(Loop loop, Function<Spot, Optional<Entry>> blockAt) {
    Optional<Entry> at = blockAt.apply(loop.begin()).filter(Entry::isPlain);
    Optional<Expression> condition =
        at.flatMap(e -> e.block().statement())
            .filter(s -> s.kind() == Statement.Kind.WHILE)
            .flatMap(Statement::condition);
    List<Entry> entries = new ArrayList<>();
    while (at.isPresent()) {
      at = blockAt.apply(at.get().after());
      if (at.isPresent() && at.get().block().offset() == loop.endOffset()) {
        boolean plainEnd = at.get().isPlain();
        return condition.filter(c -> plainEnd).map(c -> new LoopBody(c, entries));
      }
      at = at.filter(Entry::isRunnable);
      at.ifPresent(entries::add);
    }
    return Optional.empty();
  }
}
