package flankfit.lesson;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.BlockTrace.Outcome;
import flankfit.control.ControlState;
import flankfit.control.Interpreter;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.List;

/** Where the tool stood after each executed block, to compare two runs block by block. */
final class Trail implements BlockObserver {
  private final Place but;
  private final List<Stand> stands = new ArrayList<>();
  private Point tip = Point.ZERO;

  /**
   * After one block.
   *
   * @param place where the block stands
   * @param tip where the tool stands (mm)
   * @param length way of the block (mm)
   * @param seconds time of its moves (s)
   */
  record Stand(Place place, Point tip, double length, double seconds) {
    boolean isLike(Stand other) {
      return tip.distance(other.tip) <= Parting.SAME
          && Math.abs(length - other.length) <= Parting.SAME;
    }
  }

  private Trail(Place but) {
    this.but = but;
  }

  /**
   * The trail of a program.
   *
   * @param but a block that is left out of it
   */
  static List<Stand> of(
      SourceText text, SetupSheet setup, List<SourceText> subprograms, Place but) {
    Trail trail = new Trail(but);
    Interpreter.observe(text, setup, subprograms, trail);
    return trail.stands;
  }

  @Override
  public void begins(ControlState start) {
    // Every stand is where a block ended.
  }

  @Override
  public void ends(List<Finding> others) {
    // Findings are compared by whoever executes both programs with the rules.
  }

  @Override
  public void block(BlockTrace block) {
    if (block.outcome() != Outcome.EXECUTED) {
      return;
    }
    Tape moves = block.moves();
    double length = 0;
    double seconds = 0;
    for (int i = 0; i < moves.size(); i++) {
      length += moves.length(i);
      seconds += moves.seconds(i);
    }
    tip = moves.size() > 0 ? moves.to(moves.size() - 1) : stands.isEmpty() ? block.way().to() : tip;
    Place place = block.place();
    boolean skipped = place.line() == but.line() && place.file().equals(but.file());
    if (!skipped) {
      stands.add(new Stand(place, tip, length, seconds));
    }
  }
}
