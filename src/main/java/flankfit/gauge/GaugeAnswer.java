package flankfit.gauge;

import flankfit.finding.Finding;
import java.util.List;

/**
 * What the gauges will say of a program.
 *
 * @param threads one for each hole or boss whose thread the program cuts, in order of cutting
 * @param assumptions what the answers rest on, one sentence each
 * @param findings what was found, by line
 */
public record GaugeAnswer(
    List<ThreadAnswer> threads, List<String> assumptions, List<Finding> findings) {
  public GaugeAnswer {
    threads = List.copyOf(threads);
    assumptions = List.copyOf(assumptions);
    findings = List.copyOf(findings);
  }
}
