package flankfit.trace;

import flankfit.control.BlockTrace;
import flankfit.control.BlockTrace.Outcome;
import flankfit.control.FlowStep;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is to be said of a block beyond what the control told while it was executed: findings of
 * rules on the whole program that point at its line, and messages that the control displays.
 */
public final class BlockNotes {
  private final Map<String, Map<Integer, List<Finding>>> findings = new HashMap<>();
  private final Function<String, List<String>> lines;

  /**
   * Sorts findings by their lines.
   *
   * @param findings all findings of the program
   * @param lines the lines of one of its files by name; empty for a file that is not known
   */
  public BlockNotes(List<Finding> findings, Function<String, List<String>> lines) {
    this.lines = Objects.requireNonNull(lines, "lines");
    for (Finding finding : findings) {
      Place place = finding.place();
      if (place.line() > 0) {
        this.findings
            .computeIfAbsent(place.file(), file -> new HashMap<>())
            .computeIfAbsent(place.line(), line -> new ArrayList<>())
            .add(finding);
      }
    }
  }

  /** Nothing to be said. */
  public static BlockNotes none() {
    return new BlockNotes(List.of(), file -> List.of());
  }

  /** Findings that point at the line of a block and are not among its own. */
  public List<Finding> further(BlockTrace block) {
    Place place = block.place();
    return findings
        .getOrDefault(place.file(), Map.of())
        .getOrDefault(place.line(), List.of())
        .stream()
        .filter(finding -> !block.findings().contains(finding))
        .toList();
  }

  /**
   * What the control displays when it executes a block: messages on lines without a block since the
   * block before, then those of the block itself.
   *
   * @param block the block
   * @param before the block told before it; empty for the first one
   */
  public List<String> messages(BlockTrace block, Optional<BlockTrace> before) {
    if (block.outcome() != Outcome.EXECUTED && block.outcome() != Outcome.STOPPED) {
      return List.of();
    }
    List<String> messages = new ArrayList<>(above(block.place(), before));
    messages.addAll(Messages.in(block.text()));
    return messages;
  }

  /** Whether what follows a block in its file is read next. */
  private static boolean leadsOn(BlockTrace block, String file) {
    return block.place().file().equals(file)
        && block.steps().stream()
            .noneMatch(
                step ->
                    step instanceof FlowStep.Jumped
                        || step instanceof FlowStep.LoopLeft
                        || step instanceof FlowStep.LoopBack
                        || step instanceof FlowStep.Called
                        || step instanceof FlowStep.Returned);
  }

  /** Messages on the lines between two blocks, when the second was read right after the first. */
  private List<String> above(Place place, Optional<BlockTrace> before) {
    List<String> text = lines.apply(place.file());
    if (before.isPresent() && !leadsOn(before.get(), place.file())) {
      return List.of();
    }
    int from = before.map(b -> b.place().line()).orElse(0);
    if (from >= place.line() || place.line() > text.size()) {
      return List.of();
    }
    List<String> messages = new ArrayList<>();
    for (int line = from + 1; line < place.line(); line++) {
      String written = text.get(line - 1);
      boolean tapeMark = written.strip().startsWith("%");
      if (!tapeMark && !Messages.isAllComment(written)) {
        return List.of();
      }
      messages.addAll(Messages.in(written));
    }
    return messages;
  }
}
