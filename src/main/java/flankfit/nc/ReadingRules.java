package flankfit.nc;

import java.util.List;

/**
 * What of the reading a switch decides.
 *
 * @param semicolonEndsBlock whether a semicolon ends the block instead of starting a comment
 * @param blockDelete levels of block delete that are on, each 1 to 9; empty for none
 */
public record ReadingRules(boolean semicolonEndsBlock, List<Integer> blockDelete) {
  public ReadingRules {
    blockDelete = List.copyOf(blockDelete);
  }

  /** A semicolon starts a comment, no block is deleted. */
  public static ReadingRules defaults() {
    return new ReadingRules(false, List.of());
  }
}
