package flankfit.control;

import flankfit.nc.Expression;
import flankfit.nc.Expression.Step;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Values of the variables of a condition, to tell which of them a pass did not change. */
final class Snapshot {
  private final SortedMap<Integer, Double> values = new TreeMap<>();

  void take(Optional<Expression> condition, Variables variables) {
    values.clear();
    condition.ifPresent(c -> take(c, variables));
  }

  private void take(Expression condition, Variables variables) {
    for (int i = 0; i < condition.size(); i++) {
      int number = (int) condition.number(i);
      if (condition.step(i) == Step.VARIABLE && Variables.isWritable(number)) {
        values.put(number, variables.get(number));
      }
    }
  }

  /** Says what did not change since, or that the condition goes on to hold. */
  String unchanged(Variables variables, String otherwise) {
    var same =
        values.entrySet().stream()
            .filter(e -> e.getValue().equals(variables.get(e.getKey())))
            .map(e -> "#" + e.getKey())
            .toList();
    if (same.isEmpty()) {
      return otherwise;
    }
    return same.stream().collect(Collectors.joining(" and "))
        + (same.size() == 1 ? " never changes" : " never change");
  }
}
