package flankfit.lesson;

import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.nc.SourceText;
import java.util.List;
import java.util.Objects;

/** What became of rewriting a program in the other distance mode. */
public sealed interface Rewriting {
  /**
   * It is rewritten, and proved by execution to make the same moves.
   *
   * @param text the program in the other mode
   * @param lines lines that differ
   * @param kept blocks that keep their mode
   * @param decimals decimals that words are rounded to
   * @param rounding greatest difference of a programmed coordinate that rounding makes (mm)
   * @param closing greatest difference with which a chain of distances closes (mm)
   * @param difference greatest difference found between the two tapes (mm)
   * @param moves number of moves compared
   * @param raised findings of codes that the program did not raise before
   */
  record Done(
      SourceText text,
      int lines,
      List<Kept> kept,
      int decimals,
      double rounding,
      double closing,
      double difference,
      int moves,
      List<Finding> raised)
      implements Rewriting {
    public Done {
      Objects.requireNonNull(text, "text");
      kept = List.copyOf(kept);
      raised = List.copyOf(raised);
    }
  }

  /**
   * A block that keeps its mode.
   *
   * @param line its line
   * @param why the reason
   */
  record Kept(int line, String why) {
    public Kept {
      Objects.requireNonNull(why, "why");
    }
  }

  /**
   * It is not rewritten.
   *
   * @param place where it cannot be
   * @param what what stands in the way, as a statement
   * @param why the reason
   * @param fix what would help
   */
  record Refused(Place place, String what, String why, String fix) implements Rewriting {
    public Refused {
      Objects.requireNonNull(place, "place");
      Objects.requireNonNull(what, "what");
      Objects.requireNonNull(why, "why");
      Objects.requireNonNull(fix, "fix");
    }
  }
}
