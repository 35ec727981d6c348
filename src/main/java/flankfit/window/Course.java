package flankfit.window;

import flankfit.motion.Tape;
import flankfit.picture.Scene;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.OptionalInt;

/** The program as far as it is there, the one position in it, and the ways to go from there. */
final class Course {
  /** Lines that a page is. */
  private static final int PAGE = 20;

  private final Runnable changed;
  private final Look look;
  private final Position position = new Position();
  private final History history = new History();
  private Loaded loaded;
  private Steps steps;
  private Scene scene;
  private Jumps tools = new Jumps(new int[0]);
  private Jumps threads = tools;
  private Jumps findings = tools;
  private int wishedLine;
  private long contents;
  private List<StateWords.Row> stateRows = List.of();
  private List<StateWords.Row> positionRows = List.of();

  /**
   * Begins at the first block.
   *
   * @param changed told of everything that changes what is seen
   */
  Course(Loaded first, Look look, Runnable changed) {
    this.look = look;
    this.changed = changed;
    loaded = first;
    steps = first.steps();
    scene = first.scene();
    survey();
    begin();
  }

  private void begin() {
    if (tape().size() > 0 && position.go(steps.endOfBlock(0), 1)) {
      scene = loaded.scene().withCutterAt(position.move(), 1);
      word();
    }
  }

  private void survey() {
    Survey survey = loaded.survey();
    tools = new Jumps(survey.operations().toolChanges());
    threads = new Jumps(survey.operations().threads());
    findings = new Jumps(survey.findingMoves());
  }

  /** Takes what has come of the program, or another program; the position stays by its block. */
  void take(Loaded now) {
    boolean sameMoves = now.beginning() == loaded.beginning();
    boolean sameFile = now.input().file().equals(loaded.input().file());
    int lineBefore = sameFile ? (wishedLine > 0 ? wishedLine : line()) : 0;
    if (!sameMoves && sameFile && lineBefore > 0 && now.whole()) {
      lineBefore =
          NearestLine.of(loaded.input().programLines(), lineBefore, now.input().programLines());
    }
    if (!sameMoves) {
      history.clear();
    }
    loaded = now;
    steps = now.steps();
    survey();
    contents++;
    changed.run();
    if (sameMoves && position.move() >= 0) {
      scene = now.scene().withCutterAt(position.move(), position.share());
    } else {
      scene = now.scene();
      position.clear();
      begin();
      wishedLine = lineBefore;
    }
    if (wishedLine > 0 && (now.whole() || !now.stage().isGoing())) {
      step(steps.ofLine(wishedLine));
    }
    word();
  }

  /** What there is of the program. */
  Loaded loaded() {
    return loaded;
  }

  Tape tape() {
    return loaded.input().tape();
  }

  /** Blocks, lines and times of the tape. */
  Steps steps() {
    return steps;
  }

  /** The scene with the cutter at the position. */
  Scene scene() {
    return scene;
  }

  /** Grows whenever there is more, or something else, of the program. */
  long contents() {
    return contents;
  }

  Position position() {
    return position;
  }

  /** The move under way or done; -1 for no move. */
  int move() {
    return position.move();
  }

  /** Line of the program at the position; 0 for no move. */
  int line() {
    return move() < 0 ? 0 : tape().line(move());
  }

  List<StateWords.Row> stateRows() {
    return stateRows;
  }

  List<StateWords.Row> positionRows() {
    return positionRows;
  }

  /** Words the state anew, in the unit that is chosen. */
  void word() {
    if (move() >= 0) {
      LengthUnit unit = look.unit();
      stateRows = StateWords.state(tape(), loaded.input().setup(), move(), unit);
      positionRows = StateWords.positions(tape(), move(), position.share(), unit);
    }
  }

  private void go(int move, double share) {
    if (position.go(move, share)) {
      went();
    }
  }

  private void went() {
    wishedLine = 0;
    scene = loaded.scene().withCutterAt(position.move(), position.share());
    word();
    changed.run();
  }

  private void step(OptionalInt move) {
    if (move.isPresent()) {
      go(move.getAsInt(), 1);
    }
  }

  private void jump(OptionalInt move) {
    if (move.isPresent()) {
      history.leave(move());
      go(move.getAsInt(), 1);
    }
  }

  void stepForward() {
    if (move() >= 0) {
      int end = steps.endOfBlock(move());
      boolean within = position.share() < 1 || move() != end;
      go(within ? end : steps.next(move()), 1);
    }
  }

  void stepBack() {
    if (move() >= 0) {
      go(steps.previous(move()), 1);
    }
  }

  void toStart() {
    if (move() >= 0) {
      jump(OptionalInt.of(steps.endOfBlock(0)));
    }
  }

  void toEnd() {
    if (tape().size() > 0) {
      jump(OptionalInt.of(tape().size() - 1));
    }
    wishedLine = 0;
  }

  /** Goes on by a page of the program, or back. */
  void page(int pages) {
    if (move() >= 0) {
      int before = move();
      step(steps.ofLine(Math.max(1, line() + pages * PAGE)));
      if (move() == before && pages > 0) {
        go(tape().size() - 1, 1);
      }
    }
  }

  /** Goes to the first block that a line made, or the nearest line below that made one. */
  void toLine(int line) {
    jump(steps.ofLine(line));
  }

  /** Goes to the end of the block of a move. */
  void toMove(int move) {
    jump(OptionalInt.of(steps.endOfBlock(move)));
  }

  /** Goes to a time (s), within a block where it lies there. */
  void toTime(double seconds) {
    if (position.goToTime(steps, seconds)) {
      went();
    }
  }

  /** Time at the position (s). */
  double seconds() {
    return position.seconds(steps);
  }

  /** Goes to the next tool change, or the one before. */
  void toTool(boolean forward) {
    jump(forward ? tools.after(move()) : tools.before(move()));
  }

  /** Goes to the beginning of the next thread, or of the one before. */
  void toThread(boolean forward) {
    jump(forward ? threads.after(move()) : threads.before(move()));
  }

  /** Goes to the next block with a finding, or the one before. */
  void toFinding(boolean forward) {
    jump(forward ? findings.after(move()) : findings.before(move()));
  }

  /** Goes back to where the last jump came from. */
  void back() {
    step(history.back(move()));
  }

  /** Goes on again. */
  void forth() {
    step(history.forth(move()));
  }
}
