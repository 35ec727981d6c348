package flankfit.lesson;

import flankfit.control.BlockTrace;
import flankfit.control.BlockTrace.Outcome;
import flankfit.control.ControlSetting;
import flankfit.control.ControlState;
import flankfit.control.FlowStep;
import flankfit.control.WordMeaning;
import flankfit.control.WordTrace;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.trace.StateChange;
import flankfit.trace.TraceRow;
import flankfit.trace.TraceRows;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a block does, in a plain sentence. */
final class Sentence {
  private static final double MANY = 3;
  private static final Pattern PROGRAM = Pattern.compile("[Oo:]\\s*\\d");

  private final BlockTrace block;
  private final LengthUnit unit;
  private final Optional<ArcStep> arc;

  private Sentence(BlockTrace block, Optional<ArcStep> arc) {
    this.block = block;
    this.arc = arc;
    unit = block.after().unit();
  }

  /** The sentence of a block. */
  static String of(BlockTrace block, Optional<ArcStep> arc) {
    return new Sentence(block, arc).text();
  }

  private String text() {
    if (block.outcome() == Outcome.DELETED) {
      return "skipped by block delete";
    }
    if (block.outcome() == Outcome.NOT_EXECUTED) {
      return "not executed";
    }
    List<String> parts = new ArrayList<>();
    settings(parts);
    motion().ifPresent(parts::add);
    flow(parts);
    end().ifPresent(parts::add);
    if (parts.isEmpty() && PROGRAM.matcher(block.text()).lookingAt()) {
      return "a program begins";
    }
    return parts.isEmpty() ? "changes nothing" : String.join("; ", parts);
  }

  private void settings(List<String> parts) {
    List<StateChange> changes =
        StateChange.of(block, unit).stream().filter(c -> !isMotion(c.setting())).toList();
    for (StateChange change : changes) {
      if (changes.size() <= MANY || isTaught(change.setting())) {
        parts.add(setting(change));
      }
    }
    if (changes.size() > MANY) {
      parts.add(
          "sets "
              + String.join(
                  ", ",
                  changes.stream()
                      .filter(c -> !isTaught(c.setting()))
                      .map(c -> c.label() + " " + c.to())
                      .toList()));
    }
    if (changes.isEmpty() && block.moves().size() == 0) {
      stated().ifPresent(parts::add);
    }
  }

  /** A block that says what is in force anyway. */
  private Optional<String> stated() {
    boolean functions =
        block.words().stream().anyMatch(word -> word.meaning() == WordMeaning.PREPARATORY);
    boolean mode = block.words().stream().anyMatch(WordsInMode::isModeWord);
    if (mode) {
      return Optional.of("states the modes; " + mode(block.after()));
    }
    return functions && block.steps().isEmpty()
        ? Optional.of("states what is in force already")
        : Optional.empty();
  }

  private static boolean isMotion(ControlSetting setting) {
    return setting == ControlSetting.MOTION || setting == ControlSetting.FEED;
  }

  private static boolean isTaught(ControlSetting setting) {
    return setting == ControlSetting.DISTANCE || setting == ControlSetting.COMPENSATION;
  }

  private String setting(StateChange change) {
    return switch (change.setting()) {
      case DISTANCE -> mode(block.after());
      case COMPENSATION -> side(block.after());
      default -> change.label() + ": " + change.to();
    };
  }

  /** What words count from in the mode in force. */
  private static String mode(ControlState state) {
    return state.distance() == Distance.ABSOLUTE
        ? "from here on words are coordinates, counted from the zero of " + state.workOffset()
        : "from here on words are distances, counted from where the tool stands";
  }

  private String side(ControlState state) {
    if (state.side() == Compensation.OFF) {
      return "from here on the tool goes back to the path told";
    }
    String way = state.side() == Compensation.LEFT ? "left" : "right";
    String other = state.side() == Compensation.LEFT ? "right" : "left";
    double radius = state.radius();
    if (Math.abs(radius) < 1e-9) {
      return "compensation " + way + " with 0: the tool keeps to the path told until D says more";
    }
    return "from here on the tool runs "
        + Numeral.plain(Math.abs(radius), unit)
        + " to the "
        + (radius > 0 ? way : other)
        + " of the path told";
  }

  private Optional<String> motion() {
    Tape moves = block.moves();
    if (block.after().cycle().isPresent() && moves.size() > 0) {
      return Optional.of(hole());
    }
    Optional<String> dwell = dwell(moves);
    if (dwell.isPresent()) {
      return dwell;
    }
    if (!tellsMotion(block)) {
      return Optional.empty();
    }
    if (block.way().isStill() && arc.isEmpty()) {
      return Optional.of("goes nowhere: the tool stands there already");
    }
    return Optional.of(isReturn() ? returning() : arc.map(this::round).orElseGet(this::straight));
  }

  /** Whether a block tells the tool to go somewhere. */
  static boolean tellsMotion(BlockTrace block) {
    boolean words =
        block.words().stream()
            .anyMatch(
                w ->
                    switch (w.meaning()) {
                      case END_POINT,
                          DISTANCE,
                          MACHINE_POINT,
                          INTERMEDIATE_POINT,
                          INTERMEDIATE_DISTANCE,
                          CENTRE_DISTANCE,
                          CENTRE_POINT ->
                          true;
                      default -> false;
                    });
    return words || !block.way().isStill();
  }

  private static Optional<String> dwell(Tape moves) {
    for (int i = 0; i < moves.size(); i++) {
      if (moves.kind(i) == MoveKind.DWELL) {
        return Optional.of(
            "waits " + Numeral.plain(moves.seconds(i), LengthUnit.MILLIMETRE) + " s");
      }
    }
    return Optional.empty();
  }

  private boolean has(WordMeaning... meanings) {
    return block.words().stream().anyMatch(w -> List.of(meanings).contains(w.meaning()));
  }

  private boolean isReturn() {
    return has(WordMeaning.INTERMEDIATE_POINT, WordMeaning.INTERMEDIATE_DISTANCE);
  }

  private String returning() {
    String axes =
        String.join(
            ", ",
            block.words().stream()
                .filter(
                    w ->
                        w.meaning() == WordMeaning.INTERMEDIATE_POINT
                            || w.meaning() == WordMeaning.INTERMEDIATE_DISTANCE)
                .map(w -> String.valueOf(w.letter()))
                .toList());
    return "rapid to the reference point in " + axes + ": " + way();
  }

  private String way() {
    Point way = block.way().partWay();
    String words = Sides.way(way, unit);
    return words.isEmpty() ? "back to where it stood" : words;
  }

  /** Coordinates that the block names, such as {@code X3 Y0}. */
  private String named() {
    List<String> all = new ArrayList<>();
    Point end = block.way().end();
    for (WordTrace word : block.words()) {
      if (word.meaning() == WordMeaning.END_POINT) {
        all.add(word.letter() + Numeral.plain(end.axis(word.letter() - 'X'), unit));
      }
    }
    return String.join(" ", all);
  }

  private String turned() {
    return block.way().frame().transformed() ? ", as turned, scaled or mirrored on the part" : "";
  }

  private String straight() {
    boolean rapid =
        block.moves().size() > 0
            ? block.moves().kind(0) == MoveKind.RAPID
            : block.after().motion() == 0;
    String how = rapid ? "rapid " : "straight at feed ";
    if (has(WordMeaning.MACHINE_POINT)) {
      return how + "to machine coordinates: " + way();
    }
    return has(WordMeaning.END_POINT)
        ? how + "to " + named() + ", counted from the zero of " + zero() + ": " + way() + turned()
        : how + "from where it stands, " + way() + turned();
  }

  private String zero() {
    return block.after().workOffset();
  }

  private String round(ArcStep round) {
    Point way = block.way().partWay();
    String words = Sides.way(way, unit);
    String centre = ", centre " + Sides.way(round.partToCentre(), unit);
    String turns = Sides.round(round.sweep(), round.plane());
    String going = words.isEmpty() ? "" + turns : words + " while going " + turns;
    if (has(WordMeaning.END_POINT)) {
      return "to "
          + named()
          + ", counted from the zero of "
          + zero()
          + ": "
          + going
          + centre
          + turned();
    }
    return "from where it stands, " + going + centre + turned();
  }

  private String hole() {
    ControlState.Cycle cycle = block.after().cycle().orElseThrow();
    Point end = block.way().end();
    int n = block.after().plane().n();
    StringBuilder at = new StringBuilder();
    for (int axis = 0; axis < 3; axis++) {
      if (axis != n) {
        at.append(at.length() == 0 ? "" : " ").append((char) ('X' + axis));
        at.append(Numeral.plain(end.axis(axis), unit));
      }
    }
    String depth =
        cycle.depth().isPresent() ? Numeral.plain(cycle.depth().getAsDouble(), unit) : "unknown";
    String level =
        cycle.clearance().isPresent()
            ? Numeral.plain(cycle.clearance().getAsDouble(), unit)
            : "unknown";
    return cycle.function()
        + " makes "
        + holes()
        + at
        + ": rapid to R "
        + level
        + ", down to "
        + depth
        + ", back up to "
        + Numeral.plain(end.axis(n), unit)
        + ", "
        + block.moves().size()
        + " moves from one line";
  }

  private String holes() {
    for (WordTrace word : block.words()) {
      if (word.meaning() == WordMeaning.HOLES && word.value().orElse(1) > 1) {
        return Numeral.plain(word.value().getAsDouble(), LengthUnit.MILLIMETRE)
            + " holes, the last at ";
      }
    }
    return "a hole at ";
  }

  private void flow(List<String> parts) {
    if (block.steps().isEmpty()) {
      return;
    }
    for (TraceRow row : TraceRows.of(block, unit)) {
      if (row.kind() == TraceRow.Kind.STEP) {
        parts.add(row.label() + " " + row.text());
      }
    }
  }

  private Optional<String> end() {
    boolean returns = block.steps().stream().anyMatch(s -> s instanceof FlowStep.Returned);
    for (WordTrace word : block.words()) {
      double code = word.meaning() == WordMeaning.MISCELLANEOUS ? word.value().orElse(-1) : -1;
      if (code == 2 || code == 30 || (code == 99 && !returns)) {
        return Optional.of("the program ends");
      }
    }
    return block.outcome() == Outcome.STOPPED
        ? Optional.of("an error ends the run here")
        : Optional.empty();
  }
}
