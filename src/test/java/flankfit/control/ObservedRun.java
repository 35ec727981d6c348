package flankfit.control;

import flankfit.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps everything that an observer is told. */
final class ObservedRun implements BlockObserver {
  private final List<BlockTrace> blocks = new ArrayList<>();
  private final List<Finding> others = new ArrayList<>();
  private Optional<ControlState> start = Optional.empty();

  @Override
  public void begins(ControlState state) {
    start = Optional.of(state);
  }

  @Override
  public void block(BlockTrace block) {
    blocks.add(block);
  }

  @Override
  public void ends(List<Finding> findings) {
    others.addAll(findings);
  }

  ControlState start() {
    return start.orElseThrow();
  }

  List<BlockTrace> blocks() {
    return blocks;
  }

  List<Finding> others() {
    return others;
  }
}
