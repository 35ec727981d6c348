package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.nc.Block;
import flankfit.nc.Expression;
import flankfit.nc.Statement;
import flankfit.nc.Statement.Assignment;

/** Assignments, conditions and the values of words; asks for jumps through {@link Leave}. */
final class Flow {
  private static final int ALARM = 3000;
  private static final double MOST_SEQUENCE = 99_999_999;
  private static final double WHOLE = 1e-4;

  private final Report report;
  private final Variables variables = new Variables();
  private final Evaluator evaluator;
  private final Leave leave = new Leave();
  private final FlowLog log;
  private Block computed;

  Flow(Machine machine, Block block) {
    report = machine.report;
    log = machine.log;
    computed = block.another();
    evaluator = new Evaluator(machine, variables, block);
  }

  Variables variables() {
    return variables;
  }

  Leave leave() {
    return leave;
  }

  /** Executes a statement. */
  void execute(Statement statement, Block block) {
    switch (statement.kind()) {
      case ASSIGN -> assign(statement, block);
      case IF_THEN -> {
        if (holds(statement, block)) {
          assign(statement, block);
        }
      }
      case GOTO -> jump(statement, block);
      case IF_GOTO -> {
        if (holds(statement, block)) {
          jump(statement, block);
        }
      }
      case WHILE -> {
        boolean enters = holds(statement, block);
        if (!report.stopped()) {
          leave.jump(enters ? Leave.Jump.ENTER : Leave.Jump.SKIP, 0);
        }
      }
      case DO -> leave.jump(Leave.Jump.ENTER, 0);
      case END -> leave.jump(Leave.Jump.BACK, 0);
    }
  }

  private boolean holds(Statement statement, Block block) {
    Expression condition = statement.condition().orElseThrow();
    double value = evaluator.value(condition, block);
    if (report.stopped()) {
      return false;
    }
    boolean holds = number(value, condition, block) != 0;
    if (log.isOn()) {
      log.add(new FlowStep.Tested(holds));
    }
    return holds;
  }

  /** A value where one is needed: 0 for a vacant variable, with FL03. */
  private double number(double value, Expression source, Block block) {
    if (Double.isNaN(value)) {
      int variable = evaluator.vacantVariable();
      evaluator.vacant(variable, source.offset(), source.length(), "taken as 0", block);
      return 0;
    }
    return value;
  }

  private void assign(Statement statement, Block block) {
    for (int i = 0; i < statement.assignments().size() && !report.stopped(); i++) {
      assign(statement.assignments().get(i), statement, block);
    }
  }

  private void assign(Assignment assignment, Statement statement, Block block) {
    double value = evaluator.value(assignment.value(), block);
    if (report.stopped()) {
      return;
    }
    double wanted = evaluator.value(assignment.variable(), block);
    if (report.stopped()) {
      return;
    }
    int number = whole(number(wanted, assignment.variable(), block), assignment.variable(), block);
    if (report.stopped()) {
      return;
    }
    if (number == ALARM) {
      alarm(number(value, assignment.value(), block), statement, block);
    } else if (Variables.isWritable(number)) {
      if (log.isOn()) {
        double old = variables.get(number);
        log.add(new FlowStep.Assigned(number, FlowLog.optional(old), FlowLog.optional(value)));
      }
      variables.set(number, value);
    } else {
      boolean readable = number == 0 || (number > 5000 && number < 5044);
      report.add(
          Code.FL06,
          place(assignment.variable(), block),
          "#" + number + " is not " + (readable ? "writable" : "known"),
          readable
              ? "it " + (number == 0 ? "is always vacant" : "tells a position")
              : "programs may set #1–#33, #100–#199, #500–#999",
          "use #1–#33, #100–#199, #500–#999");
    }
  }

  private static Place place(Expression expression, Block block) {
    return block.placeAt(expression.offset(), expression.length());
  }

  private void alarm(double number, Statement statement, Block block) {
    String remark = statement.remark();
    report.add(
        Code.FL28,
        block.place(),
        "alarm " + Wording.number(number) + (remark.isEmpty() ? "" : ": " + remark),
        "raised by the program itself",
        remark.isEmpty() ? "mend what led to it" : "mend what its comment says");
  }

  private void jump(Statement statement, Block block) {
    Expression target = statement.target().orElseThrow();
    double value = evaluator.value(target, block);
    if (!report.stopped()) {
      int sequence = whole(number(value, target, block), target, block);
      if (!report.stopped()) {
        leave.jump(Leave.Jump.GOTO, sequence);
      }
    }
  }

  /** WD10, WD11 unless a value is the number of a block or variable. */
  private int whole(double value, Expression source, Block block) {
    if (Math.abs(value - Math.rint(value)) > WHOLE) {
      report.add(
          Code.WD10,
          place(source, block),
          Wording.number(value) + " is not a whole number",
          "it is the number of a block or a variable",
          "correct it");
      return 0;
    }
    if (value < -WHOLE || value > MOST_SEQUENCE) {
      report.add(
          Code.WD11,
          place(source, block),
          Wording.number(value) + " is out of range 0 to 99999999",
          "it is the number of a block or a variable",
          "correct it");
      return 0;
    }
    return (int) Math.rint(value);
  }

  /** The value of an expression if nothing is to be told of it; else not a number. */
  double quick(Expression expression) {
    return evaluator.quick(expression);
  }

  /** The words of a block with their values computed; a vacant variable leaves its word out. */
  Block compute(Block block) {
    computed = computed.sharesText(block) ? computed : block.another();
    computed.beginLike(block);
    for (int word = 0; word < block.size() && !report.stopped(); word++) {
      if (!block.isFormula(word)) {
        computed.take(block, word);
        continue;
      }
      Expression formula = block.formula(word);
      double value = evaluator.value(formula, block);
      if (report.stopped()) {
        break;
      }
      if (Double.isNaN(value)) {
        int variable = evaluator.vacantVariable();
        evaluator.vacant(variable, formula.offset(), formula.length(), "word left out", block);
      } else {
        computed.take(block, word, value);
      }
    }
    if (log.isOn() && !report.stopped()) {
      log.words(computed);
    }
    return computed;
  }
}
