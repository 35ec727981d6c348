package flankfit.cli;

import flankfit.check.MetalCheck;
import flankfit.finding.Finding;
import flankfit.metal.Balance;
import flankfit.metal.Metal;
import flankfit.metal.Removed;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is told of the metal.
 *
 * @param metal the stock at every moment
 * @param moves number of moves that have been made
 * @param stockVolume volume before the first move (mm³)
 * @param remainingVolume volume that is left (mm³)
 * @param byTool volume that each tool took away (mm³), by number
 * @param collisions what touches metal or a clamp that should not, by place
 * @param findings these and all others of the program, by place
 * @param assumptions what was assumed, a sentence each
 */
record MetalAnswer(
    Metal metal,
    int moves,
    double stockVolume,
    double remainingVolume,
    Map<Integer, Double> byTool,
    List<Finding> collisions,
    List<Finding> findings,
    List<String> assumptions) {
  MetalAnswer {
    collisions = List.copyOf(collisions);
    findings = List.copyOf(findings);
    assumptions = List.copyOf(assumptions);
  }

  /** Measures the metal after some moves. */
  static MetalAnswer of(Metal metal, ProgramOptions.Job job, int moves) {
    Map<Integer, Double> byTool = new TreeMap<>();
    Balance balance = metal.balance(moves);
    for (Removed removed : balance.removed()) {
      byTool.merge(removed.tool(), removed.volume(), Double::sum);
    }
    Set<String> assumptions = new LinkedHashSet<>(job.interpretation().assumptions());
    assumptions.addAll(metal.assumptions());
    MetalCheck check = MetalCheck.of(job.interpretation(), job.sheet(), metal, moves);
    assumptions.addAll(check.assumptions());
    List<Finding> findings = check.with(job.interpretation().findings());
    return new MetalAnswer(
        metal,
        moves,
        balance.stock(),
        balance.left(),
        byTool,
        MetalCheck.touching(findings),
        findings,
        List.copyOf(assumptions));
  }

  /** Volume taken away by all tools (mm³). */
  double removedVolume() {
    return stockVolume - remainingVolume;
  }
}
