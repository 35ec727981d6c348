package flankfit.nc;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a block without words says: assignments, a jump, the beginning or the end of a loop.
 *
 * @param kind which of them
 * @param condition what IF or WHILE asks; empty for the others
 * @param target the sequence number that GOTO goes to; empty for the others
 * @param loop number of the loop, 1 to 3; 0 outside DO, WHILE and END
 * @param assignments what is assigned, in order; empty for jumps and loops
 * @param remark the comment beside it; empty text without one
 */
public record Statement(
    Kind kind,
    Optional<Expression> condition,
    Optional<Expression> target,
    int loop,
    List<Assignment> assignments,
    String remark) {
  /** Which statement. */
  public enum Kind {
    ASSIGN,
    IF_GOTO,
    IF_THEN,
    GOTO,
    WHILE,
    DO,
    END
  }

  public Statement {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(target, "target");
    assignments = List.copyOf(assignments);
    Objects.requireNonNull(remark, "remark");
  }

  Statement withRemark(String comment) {
    return new Statement(kind, condition, target, loop, assignments, comment);
  }

  /** Whether it begins or ends a loop. */
  public boolean isLoop() {
    return loop > 0;
  }

  /**
   * One assignment.
   *
   * @param variable gives the number of the variable
   * @param value gives its value
   */
  public record Assignment(Expression variable, Expression value) {
    public Assignment {
      Objects.requireNonNull(variable, "variable");
      Objects.requireNonNull(value, "value");
    }
  }
}
