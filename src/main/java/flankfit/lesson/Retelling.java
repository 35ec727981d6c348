package flankfit.lesson;

import flankfit.control.BlockTrace;
import flankfit.control.ControlState;
import flankfit.control.WordMeaning;
import flankfit.control.WordTrace;
import flankfit.lesson.Telling.Changed;
import flankfit.lesson.Telling.Either;
import flankfit.lesson.Telling.Unsayable;
import flankfit.lesson.Telling.Words;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says the words of one block in a distance mode. */
final class Retelling {
  private static final double SAME = 1e-9;

  private final BlockTrace block;
  private final StatedAxes stated;
  private final int normal;
  private Optional<Unsayable> unsayable = Optional.empty();

  private Retelling(BlockTrace block, StatedAxes stated) {
    this.block = block;
    this.stated = stated;
    normal = block.after().plane().n();
  }

  /**
   * The words of a block in a mode.
   *
   * @param stated where the tool stood by the program's own words, the frame of the block taken in
   */
  static Telling of(BlockTrace block, Distance mode, StatedAxes stated) {
    boolean depends = block.words().stream().anyMatch(word -> dependsOnMode(word.meaning()));
    if (!depends) {
      return new Either();
    }
    return block.after().distance() == mode
        ? new Words(List.of())
        : new Retelling(block, stated).other();
  }

  /** Whether a word counts otherwise in the other distance mode. */
  static boolean dependsOnMode(WordMeaning meaning) {
    return switch (meaning) {
      case END_POINT,
          DISTANCE,
          MACHINE_POINT,
          INTERMEDIATE_POINT,
          INTERMEDIATE_DISTANCE,
          HOLE_POSITION,
          HOLE_DISTANCE,
          DEPTH,
          DEPTH_FROM_CLEARANCE,
          CLEARANCE_LEVEL,
          CLEARANCE_DISTANCE,
          BACK_BORE_TOP,
          OFFSET_VALUE,
          REGISTER_VALUE,
          ROTATION_ANGLE ->
          true;
      default -> false;
    };
  }

  /** Whether a word of the block names an end on an axis, 0 (X), 1 (Y) or 2 (Z). */
  static boolean names(BlockTrace block, int axis) {
    return block.words().stream()
        .anyMatch(
            w ->
                w.letter() - 'X' == axis
                    && (w.meaning() == WordMeaning.END_POINT
                        || w.meaning() == WordMeaning.DISTANCE));
  }

  private Telling other() {
    List<Changed> changed = new ArrayList<>();
    for (int i = 0; i < block.words().size() && unsayable.isEmpty(); i++) {
      word(i, block.words().get(i), changed);
    }
    return unsayable.isPresent() ? unsayable.get() : new Words(changed);
  }

  private void no(String why) {
    unsayable = Optional.of(new Unsayable(why, false));
  }

  private void notFromHere(String why) {
    unsayable = Optional.of(new Unsayable(why, true));
  }

  private void word(int index, WordTrace word, List<Changed> changed) {
    if (!dependsOnMode(word.meaning())) {
      holes(word);
      return;
    }
    if (word.value().isEmpty()) {
      no("the run ended before " + word.text() + " had a value");
      return;
    }
    double value = word.value().getAsDouble();
    switch (word.meaning()) {
      case END_POINT, INTERMEDIATE_POINT, HOLE_POSITION ->
          from(index, word, value, begin(word), -1, changed);
      case DISTANCE, INTERMEDIATE_DISTANCE, HOLE_DISTANCE ->
          from(index, word, value, begin(word), 1, changed);
      case CLEARANCE_LEVEL -> clearance(index, value, -1, changed);
      case CLEARANCE_DISTANCE -> clearance(index, value, 1, changed);
      case DEPTH -> changed.add(new Changed(index, normal, value - level()));
      case DEPTH_FROM_CLEARANCE -> changed.add(new Changed(index, normal, value + level()));
      case MACHINE_POINT -> notFromHere("machine coordinates are absolute: G53 needs G90");
      case OFFSET_VALUE, REGISTER_VALUE -> no("G10 sets in G90 and adds in G91");
      case ROTATION_ANGLE -> no("the angle of G68 is set in G90 and added in G91");
      default -> no(word.text() + " of a back bore counts from the depth in G91");
    }
  }

  private double begin(WordTrace word) {
    Point begin = block.way().begin();
    return begin.axis(word.letter() - 'X');
  }

  private void from(
      int index, WordTrace word, double value, double begin, int sign, List<Changed> changed) {
    int axis = word.letter() - 'X';
    if (!stated.has(axis)) {
      notFromHere(unstated(axis));
      return;
    }
    changed.add(new Changed(index, axis, value + sign * begin));
  }

  private static String unstated(int axis) {
    return "where the tool stands in "
        + (char) ('X' + axis)
        + " before is not said by a coordinate that counts from the same zero";
  }

  /** Several holes of one block lie side by side in G91, and on one place in G90. */
  private void holes(WordTrace word) {
    if (word.meaning() == WordMeaning.HOLES && word.value().orElse(1) != 1) {
      no(word.text() + " repeats the step from hole to hole, which is a distance");
    }
  }

  private void clearance(int index, double value, int sign, List<Changed> changed) {
    Optional<ControlState.Cycle> before = block.before().cycle();
    boolean depthNamed =
        block.words().stream()
            .anyMatch(
                w ->
                    w.meaning() == WordMeaning.DEPTH
                        || w.meaning() == WordMeaning.DEPTH_FROM_CLEARANCE);
    boolean depthKept = !depthNamed && before.isPresent() && before.get().depth().isPresent();
    if (depthKept && Math.abs(before.get().clearance().orElse(0) - level()) > SAME) {
      no("a new R without a depth word carries the depth with it in G91 only");
    } else if (!stated.has(normal)) {
      notFromHere(unstated(normal));
    } else {
      changed.add(new Changed(index, normal, value + sign * initial()));
    }
  }

  /** R level of the cycle, program coordinate (mm). */
  private double level() {
    Optional<ControlState.Cycle> cycle = block.after().cycle();
    if (cycle.isEmpty() || cycle.get().clearance().isEmpty()) {
      no("the R level is not known");
      return 0;
    }
    return cycle.get().clearance().getAsDouble();
  }

  /** Level at which the run of the cycle began, program coordinate (mm). */
  private double initial() {
    double part = block.after().cycle().map(ControlState.Cycle::initial).orElse(0.0);
    double[] p = {0, 0, 0};
    p[normal] = part;
    return block.way().frame().coordinates(new Point(p[0], p[1], p[2])).axis(normal);
  }
}
