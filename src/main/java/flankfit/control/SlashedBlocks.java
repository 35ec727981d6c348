package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.nc.Block;
import java.util.List;
import java.util.Optional;

/** Counts the blocks that block delete may skip: RD19. */
final class SlashedBlocks {
  private final List<Integer> levels;
  private int skipped;
  private int executed;
  private Optional<Place> firstSkipped = Optional.empty();
  private Optional<Place> firstExecuted = Optional.empty();

  SlashedBlocks(List<Integer> levels) {
    this.levels = levels;
  }

  void add(Block block) {
    if (block.deleted()) {
      skipped++;
      firstSkipped = firstSkipped.isPresent() ? firstSkipped : Optional.of(block.place());
    } else {
      executed++;
      firstExecuted = firstExecuted.isPresent() ? firstExecuted : Optional.of(block.place());
    }
  }

  void report(Findings findings) {
    firstSkipped.ifPresent(place -> report(findings, place, skipped, "skipped"));
    firstExecuted.ifPresent(place -> report(findings, place, executed, "executed"));
  }

  private void report(Findings findings, Place place, int count, String what) {
    findings.add(
        Code.RD19,
        place,
        count + (count == 1 ? " block with / was " : " blocks with / were ") + what,
        "block-delete = " + (levels.isEmpty() ? "false" : levels.toString()),
        "set it as the switch on the machine stands");
  }
}
