package flankfit.window;

import flankfit.motion.Extents;
import flankfit.picture.Camera;
import flankfit.picture.Scene;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What the user has chosen; knows no graphics. Counts its changes, so that drawing can follow. */
final class ViewState {
  private static final double TURN_PER_PIXEL = 0.008;

  /** Lines that a page is. */
  private static final int PAGE = 20;

  private final Loads loads;
  private final Camera camera;
  private Loaded loaded;
  private Steps steps;
  private Scene scene;
  private View view;
  private Optional<View> standing;
  private Theme theme;
  private LengthUnit unit;
  private boolean help;
  private boolean explains;
  private boolean close;
  private final Fitting fitting;
  private String sentence;
  private int wishedLine;
  private long contents;
  private int position;
  private long changes;
  private long positionChanges;
  private List<StateWords.Row> stateRows = List.of();
  private List<StateWords.Row> positionRows = List.of();

  ViewState(WindowInput input, Preferences preferences) {
    this(Loads.fixed(input), preferences);
  }

  ViewState(Loads loads, Preferences preferences) {
    this.loads = loads;
    loaded = loads.latest();
    steps = loaded.steps();
    view = preferences.view();
    standing = Optional.of(view);
    camera = new Camera(view);
    theme = preferences.theme();
    unit = preferences.unit().orElse(input().setup().unit());
    scene = loaded.scene();
    sentence = LoadWords.sentence(loaded);
    position = -1;
    fitting = new Fitting(scene, view != View.ISO);
    begin();
  }

  private void begin() {
    goTo(input().tape().size() == 0 ? -1 : steps.endOfBlock(0));
  }

  /** Takes what has come since; gives whether there was more. */
  boolean follow() {
    Loaded now = loads.latest();
    if (now.equals(loaded)) {
      return false;
    }
    take(now);
    return true;
  }

  private void take(Loaded now) {
    boolean sameMoves = now.beginning() == loaded.beginning();
    boolean sameStage = now.stage() == loaded.stage();
    int lineBefore = wishedLine > 0 ? wishedLine : line();
    loaded = now;
    steps = now.steps();
    sentence = LoadWords.sentence(now);
    contents++;
    changed();
    if (sameMoves && position >= 0) {
      scene = now.scene().withCutterAfter(position);
    } else {
      scene = now.scene();
      position = -1;
      begin();
      wishedLine = lineBefore;
    }
    if (wishedLine > 0 && !now.stage().isGoing()) {
      toLine(wishedLine);
    }
    word();
    fitting.follow(scene, now.stage() == Stage.EXECUTING, sameStage);
  }

  /** Whether the program is still being read, executed, checked or gauged. */
  boolean isLoading() {
    return loaded.stage().isGoing();
  }

  /** What there is of the program. */
  Loaded loaded() {
    return loaded;
  }

  /** The sentence above everything. */
  String sentence() {
    return sentence;
  }

  /** Grows whenever there is more, or something else, of the program. */
  long contents() {
    return contents;
  }

  /** Stops what is under way; what there is stays. */
  void stop() {
    loads.stop();
  }

  /** Reads the program anew. */
  void reload() {
    loads.begin();
  }

  /** What the window was given. */
  WindowInput input() {
    return loaded.input();
  }

  /** The scene with the cutter at the position. */
  Scene scene() {
    return scene;
  }

  /** Blocks, lines and times of the tape. */
  Steps steps() {
    return steps;
  }

  /** The eye. */
  Camera camera() {
    return camera;
  }

  /** The standard view chosen last. */
  View view() {
    return view;
  }

  /** The standard view the eye has; empty after a turn by hand. */
  Optional<View> standing() {
    return standing;
  }

  Theme theme() {
    return theme;
  }

  LengthUnit unit() {
    return unit;
  }

  boolean help() {
    return help;
  }

  /** Whether the block at the position is explained. */
  boolean explains() {
    return explains;
  }

  boolean closes() {
    return close;
  }

  /** The move whose end is shown; -1 for an empty tape. */
  int position() {
    return position;
  }

  /** Line of the program at the position; 0 for an empty tape. */
  int line() {
    return position < 0 ? 0 : input().tape().line(position);
  }

  /** Grows with everything that changes what is seen. */
  long changes() {
    return changes;
  }

  /** Grows whenever the position changes. */
  long positionChanges() {
    return positionChanges;
  }

  List<StateWords.Row> stateRows() {
    return stateRows;
  }

  List<StateWords.Row> positionRows() {
    return positionRows;
  }

  private void changed() {
    changes++;
  }

  private void goTo(int move) {
    if (move != position && move >= 0) {
      position = move;
      wishedLine = 0;
      positionChanges++;
      scene = loaded.scene().withCutterAfter(move);
      word();
      changed();
    }
  }

  private void word() {
    if (position >= 0) {
      stateRows = StateWords.state(input().tape(), input().setup(), position, unit);
      positionRows = StateWords.positions(input().tape(), position, unit);
    }
  }

  void stepForward() {
    if (position >= 0) {
      goTo(steps.next(position));
    }
  }

  void stepBack() {
    if (position >= 0) {
      goTo(steps.previous(position));
    }
  }

  void toStart() {
    if (position >= 0) {
      goTo(steps.endOfBlock(0));
    }
  }

  void toEnd() {
    goTo(input().tape().size() - 1);
    wishedLine = 0;
  }

  /** Goes on by a page of the program, or back. */
  void page(int pages) {
    if (position >= 0) {
      int before = position;
      toLine(Math.max(1, line() + pages * PAGE));
      if (position == before && pages > 0) {
        toEnd();
      }
    }
  }

  /** Goes to the first block that a line made, or the nearest line below that made one. */
  void toLine(int line) {
    OptionalInt move = steps.ofLine(line);
    if (move.isPresent()) {
      goTo(move.getAsInt());
    }
  }

  /** Goes to the block that runs at a share of the time (1). */
  void toShareOfTime(double share) {
    if (position >= 0) {
      goTo(steps.endOfBlock(steps.at(share * steps.seconds())));
    }
  }

  void look(View wanted) {
    view = wanted;
    standing = Optional.of(wanted);
    camera.look(wanted);
    fit(wanted != View.ISO);
  }

  /** Fits the whole part into the scene, or closely what is cut. */
  void fit(boolean toCut) {
    fitting.ask(scene, toCut);
    changed();
  }

  /** What a fit shall show. */
  Extents fitted() {
    return fitting.box();
  }

  /** Whether the eye shall be fitted before the next drawing; asking takes the wish away. */
  boolean takeFit() {
    return fitting.take();
  }

  void otherTheme() {
    theme = theme.other();
    changed();
  }

  void otherUnit() {
    unit = unit == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    word();
    changed();
  }

  void toggleHelp() {
    help = !help;
  }

  void toggleExplanation() {
    explains = !explains;
  }

  /** Closes the help, else stops the load, else closes the window. */
  void leave() {
    if (help) {
      help = false;
    } else if (isLoading()) {
      loads.stop();
    } else {
      close = true;
    }
  }

  void quit() {
    close = true;
  }

  /** Turns the eye as a hand drags over the scene (px, rows downwards). */
  void orbit(double columns, double rows) {
    camera.turn(
        camera.azimuth() - columns * TURN_PER_PIXEL, camera.elevation() + rows * TURN_PER_PIXEL);
    standing = Optional.empty();
    changed();
  }

  /** Shifts the paper (px, rows downwards). */
  void pan(double columns, double rows) {
    fitting.touch();
    camera.pan(columns, -rows);
    changed();
  }

  /** Zooms about a place in the scene (px, rows upwards). */
  void zoom(double notches, double column, double row) {
    fitting.touch();
    camera.zoom(Math.pow(1.15, notches), column, row);
    changed();
  }

  /** Takes another size of the scene (px). */
  void resize(int width, int height) {
    if (width != camera.width() || height != camera.height()) {
      camera.resize(width, height);
      changed();
    }
  }

  /** What to remember. */
  Preferences preferences(int width, int height) {
    Optional<LengthUnit> chosen =
        unit == input().setup().unit() ? Optional.empty() : Optional.of(unit);
    return new Preferences(width, height, view, theme, chosen);
  }
}
