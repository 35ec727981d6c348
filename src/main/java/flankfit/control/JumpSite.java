package flankfit.control;

import java.util.Optional;

/** One GOTO, with where it last led and how often it led back. */
final class JumpSite {
  private final ProgramFile file;
  private final int offset;
  private final Loop.Counter backward = new Loop.Counter();
  private final Snapshot before = new Snapshot();
  private int sequence = -1;
  private Optional<Spot> target = Optional.empty();

  JumpSite(ProgramFile file, int offset) {
    this.file = file;
    this.offset = offset;
  }

  int offset() {
    return offset;
  }

  /** Whether it stands between two places of a text. */
  boolean isWithin(ProgramFile text, int from, int to) {
    return text.equals(file) && offset > from && offset < to;
  }

  Loop.Counter backward() {
    return backward;
  }

  Snapshot before() {
    return before;
  }

  /** Where it led when the number was this one; empty when that must be looked up. */
  Optional<Spot> target(int number) {
    return number == sequence ? target : Optional.empty();
  }

  void leadsTo(int number, Spot spot) {
    sequence = number;
    target = Optional.of(spot);
  }
}
