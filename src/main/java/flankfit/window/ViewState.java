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

  private final WindowInput input;
  private final Scene base;
  private final Steps steps;
  private final Camera camera;
  private Scene scene;
  private View view;
  private Optional<View> standing;
  private Theme theme;
  private LengthUnit unit;
  private boolean help;
  private boolean explains;
  private boolean close;
  private boolean wantsFit = true;
  private boolean closely;
  private int position;
  private long changes;
  private long positionChanges;
  private List<StateWords.Row> stateRows = List.of();
  private List<StateWords.Row> positionRows = List.of();

  ViewState(WindowInput input, Preferences preferences) {
    this.input = input;
    base =
        new Scene(input.tape(), input.setup(), input.file())
            .withMajorDiameters(input.majorDiameters());
    steps = new Steps(input.tape());
    view = preferences.view();
    closely = view != View.ISO;
    standing = Optional.of(view);
    camera = new Camera(view);
    theme = preferences.theme();
    unit = preferences.unit().orElse(input.setup().unit());
    scene = base;
    position = -1;
    goTo(input.tape().size() == 0 ? -1 : steps.endOfBlock(0));
  }

  /** What the window was given. */
  WindowInput input() {
    return input;
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
    return position < 0 ? 0 : input.tape().line(position);
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
      positionChanges++;
      scene = base.withCutterAfter(move);
      word();
      changed();
    }
  }

  private void word() {
    if (position >= 0) {
      stateRows = StateWords.state(input.tape(), input.setup(), position, unit);
      positionRows = StateWords.positions(input.tape(), position, unit);
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
    goTo(input.tape().size() - 1);
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
    closely = toCut;
    wantsFit = true;
    changed();
  }

  /** What a fit shall show. */
  Extents fitted() {
    return closely ? scene.subject() : scene.bounds();
  }

  /** Whether the eye shall be fitted before the next drawing; asking takes the wish away. */
  boolean takeFit() {
    boolean wanted = wantsFit;
    wantsFit = false;
    return wanted;
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

  /** Closes the help, else the window. */
  void leave() {
    if (help) {
      help = false;
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
    camera.pan(columns, -rows);
    changed();
  }

  /** Zooms about a place in the scene (px, rows upwards). */
  void zoom(double notches, double column, double row) {
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
        unit == input.setup().unit() ? Optional.empty() : Optional.of(unit);
    return new Preferences(width, height, view, theme, chosen);
  }
}
