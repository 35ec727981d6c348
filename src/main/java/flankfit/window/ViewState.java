package flankfit.window;

import flankfit.motion.Point;
import flankfit.picture.Scene;
import flankfit.picture.Theme;
import flankfit.unit.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * All that is shown and chosen, put together of its parts; knows no graphics. Counts its changes,
 * so that drawing can follow.
 */
final class ViewState {
  private final Loads loads;
  private final Course course;
  private final Viewpoint viewpoint;
  private final Look look;
  private final Player player;
  private final Opening opening;
  private final Selection selection = new Selection();
  private final Desk desk = new Desk();
  private final Search search;
  private final Habits habits;
  private final GaugeSide gauge;
  private final LessonSide lesson;
  private final MetalSide metal;
  private final LessonBox lessonBox = new LessonBox();
  private SheetName sheet;
  private boolean explains;
  private boolean close;
  private String sentence;
  private boolean unitChosen;
  private long changes;

  ViewState(WindowInput input, Preferences preferences) {
    this(Loads.fixed(input), preferences);
  }

  ViewState(Loads loads, Preferences preferences) {
    this(loads, preferences, Habits.none());
  }

  ViewState(Loads loads, Preferences preferences, Habits habits) {
    this.loads = loads;
    this.habits = habits;
    Loaded first = loads.latest();
    unitChosen = preferences.unit().isPresent();
    look =
        new Look(
            preferences.theme(),
            preferences.unit().orElse(first.input().setup().unit()),
            preferences.textSize(),
            preferences.still());
    course = new Course(first, look, this::changed);
    viewpoint = new Viewpoint(course, preferences.view(), this::changed);
    player = new Player(course, look, desk, new Playback(preferences.times()));
    opening = new Opening(loads, desk);
    search = new Search(WindowLoop::wake);
    gauge = new GaugeSide(course, look, desk, this::changed, WindowLoop::wake);
    lesson = new LessonSide(course, desk, this::changed, WindowLoop::wake);
    metal = new MetalSide(course, look, desk, this::changed, WindowLoop::wake);
    sheet = preferences.sheet();
    explains = preferences.explains();
    sentence = LoadWords.sentence(first);
    desk.welcome(first.stage() == Stage.NOTHING);
    if (preferences.wall() && first.stage() != Stage.NOTHING) {
      viewpoint.unroll();
    }
  }

  /** Takes what has come since; gives whether there was more. */
  boolean follow() {
    boolean found = search.settle();
    Loaded now = loads.latest();
    if (!now.equals(course.loaded())) {
      take(now);
      found = true;
    }
    if (sheet == SheetName.LESSON) {
      lessonBox.at(course).ifPresent(viewpoint::offer);
    }
    boolean came = gauge.follow(sheet == SheetName.GAUGE);
    boolean told = lesson.follow(sheet == SheetName.LESSON);
    boolean cut = metal.follow(sheet == SheetName.METAL, player.playback().isPlaying());
    return came || found || told || cut;
  }

  private void take(Loaded now) {
    Loaded before = course.loaded();
    boolean sameStage = now.stage() == before.stage();
    boolean sameFile = now.input().file().equals(before.input().file());
    boolean sameMoves = now.beginning() == before.beginning();
    course.take(now);
    sentence = LoadWords.sentence(now);
    if (!unitChosen && look.unit() != now.input().setup().unit()) {
      look.unit(now.input().setup().unit());
      course.word();
    }
    if (!sameMoves) {
      selection.clear();
    }
    if (!sameFile) {
      player.playback().pause();
      search.clear();
      desk.problems(List.of());
      viewpoint.begin(now.scene());
    }
    if (now.whole() && search.isOn()) {
      search.again(now.input().programLines());
    }
    boolean failsAnew = now.stage() == Stage.FAILED && before.stage() != Stage.FAILED;
    if (failsAnew || !now.problems().equals(before.problems())) {
      desk.problems(now.problems());
    }
    if ((now.whole() && !before.whole()) || !sameFile) {
      habits.opened(now);
    }
    viewpoint.follow(now.scene(), now.stage() == Stage.EXECUTING, sameStage && sameFile);
  }

  private void changed() {
    changes++;
    viewpoint.followWall();
  }

  /** Whether the program is still being read, executed, checked or gauged. */
  boolean isLoading() {
    return loaded().stage().isGoing();
  }

  /** What there is of the program. */
  Loaded loaded() {
    return course.loaded();
  }

  /** The position and the ways to go from there. */
  Course course() {
    return course;
  }

  Selection selection() {
    return selection;
  }

  Desk desk() {
    return desk;
  }

  Search search() {
    return search;
  }

  Look paper() {
    return look;
  }

  /** What a hand does on the Gauge sheet. */
  GaugeSide gauge() {
    return gauge;
  }

  /** What the Lesson sheet tells. */
  LessonSide lesson() {
    return lesson;
  }

  /** What a hand does on the Metal sheet. */
  MetalSide metal() {
    return metal;
  }

  /** Whether metal is being cut for the sheet that is shown. */
  boolean isCutting() {
    return sheet == SheetName.METAL && metal.bench().isWorking();
  }

  /** Programs opened before, the last one first. */
  List<Path> recent() {
    return habits.recent();
  }

  /** The sentence above everything. */
  String sentence() {
    return sentence;
  }

  /** Grows whenever there is more, or something else, of the program. */
  long contents() {
    return course.contents();
  }

  /** Stops what is under way; what there is stays. */
  void stop() {
    loads.stop();
  }

  /** Reads the program anew. */
  void reload() {
    loads.begin();
  }

  /** Opens other programs. */
  Opening opening() {
    return opening;
  }

  /** What the window was given. */
  WindowInput input() {
    return loaded().input();
  }

  /** The scene with the cutter at the position. */
  Scene scene() {
    return course.scene();
  }

  /** Blocks, lines and times of the tape. */
  Steps steps() {
    return course.steps();
  }

  /** Where the part or a wall is looked at from. */
  Viewpoint viewpoint() {
    return viewpoint;
  }

  Theme theme() {
    return look.theme();
  }

  LengthUnit unit() {
    return look.unit();
  }

  /** The sheet that is shown. */
  SheetName sheet() {
    return sheet;
  }

  void sheet(SheetName wanted) {
    if (wanted == SheetName.LESSON && sheet != wanted) {
      viewpoint.beginOffers();
    }
    sheet = wanted;
    changed();
  }

  boolean help() {
    return desk.over() == Desk.Over.KEYS;
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
    return course.move();
  }

  /** Line of the program at the position; 0 for an empty tape. */
  int line() {
    return course.line();
  }

  /** Grows with everything that changes what is seen. */
  long changes() {
    return changes;
  }

  /** Grows whenever the position changes. */
  long positionChanges() {
    return course.position().changes();
  }

  /** Goes to the first block that a line made, or the nearest line below that made one. */
  void toLine(int line) {
    course.toLine(line);
  }

  /** Goes to a share of the time (1), as a hand drags. */
  void toShareOfTime(double share) {
    player.playback().pause();
    course.toTime(share * steps().seconds());
  }

  /** Goes to the move that was picked. */
  void toPicked() {
    selection.picked().ifPresent(p -> course.toMove(p.move()));
  }

  /** Goes to the move that was picked, else to the line that was found. */
  void toChosen() {
    if (selection.picked().isPresent()) {
      toPicked();
    } else if (search.current() > 0) {
      toLine(search.current());
    }
  }

  /** Plays the program. */
  Player player() {
    return player;
  }

  /** Goes to the next line found, or the one before, and shows it. */
  OptionalInt find(boolean forward) {
    OptionalInt line = search.next(forward);
    desk.choose(desk.chosen());
    return line;
  }

  void otherTheme() {
    look.otherTheme();
    changed();
  }

  void otherUnit() {
    look.otherUnit();
    unitChosen = look.unit() != input().setup().unit();
    course.word();
    changed();
  }

  void larger(int by) {
    look.larger(by);
    changed();
  }

  void plainSize() {
    look.plainSize();
    changed();
  }

  void otherStill() {
    look.otherStill();
    desk.notice(look.isStill() ? "the cutter goes block by block" : "the cutter glides");
  }

  void toggleHelp() {
    desk.toggleKeys();
  }

  void toggleExplanation() {
    explains = !explains;
    changed();
  }

  void toggleMeasuring() {
    selection.toggleMeasuring();
    desk.notice(selection.isMeasuring() ? "click two points" : "");
  }

  /** The tip at the position. */
  Optional<Point> tip() {
    if (position() < 0) {
      return Optional.empty();
    }
    double[] p = new double[3];
    course.tape().pointAt(position(), course.position().share(), p);
    return Optional.of(new Point(p[0], p[1], p[2]));
  }

  /** Closes, lets go, holds or stops one thing. */
  void leave() {
    new Leaving(this, loads).leave();
  }

  void quit() {
    close = true;
  }

  /** What to remember. */
  Preferences preferences(int width, int height) {
    return new Preferences(
        width,
        height,
        viewpoint.view(),
        theme(),
        unitChosen ? Optional.of(unit()) : Optional.empty(),
        look.textSize(),
        look.isStill(),
        sheet,
        viewpoint.isUnrolled(),
        explains,
        player.playback().times());
  }
}
