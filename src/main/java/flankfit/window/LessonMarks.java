package flankfit.window;

import flankfit.lesson.ArcStep;
import flankfit.lesson.Step;
import flankfit.lesson.Told;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The vectors that the words of the block mean, drawn in the scene: from the zero to the end for
 * coordinates, from where the tool stood for distances, I J K to the centre; and the path that the
 * tool would go if a word were forgotten.
 */
final class LessonMarks {
  private static final int ARC_STEPS = 48;

  /** Moves of the other path that are drawn round the position. */
  private static final int MOST_WRONG = 300;

  private static final int MOST_OF_BLOCK = 60;
  private static final double NOTHING = 1e-6;
  private static final String[] CENTRE = {"I", "J", "K"};

  private final ViewState state;
  private final ImVec2 size = new ImVec2();
  private final FreePlaces labels = new FreePlaces();
  private final double[] p = new double[3];
  private long shownChange = -1;
  private long shownView = -1;
  private String zero = "";
  private String end = "";
  private String move = "";
  private final String[] centre = {"", "", ""};

  LessonMarks(ViewState state) {
    this.state = state;
  }

  void draw(Paper paper) {
    Optional<Told> told = state.lesson().told();
    if (told.isEmpty() || state.viewpoint().isUnrolled() || state.position() < 0) {
      return;
    }
    Step step = told.get().step();
    word(step);
    ImDrawList list = ImGui.getBackgroundDrawList();
    Layout layout = paper.layout();
    list.pushClipRect(
        0, layout.header(), layout.sceneWidth(), layout.header() + layout.sceneHeight(), true);
    Sight sight =
        new Sight(
            state.viewpoint().camera(), state.viewpoint().wall(), layout.header(), paper.pixels());
    ImGui.pushFont(paper.style().strong());
    labels.clear();
    if (!state.lesson().isHiding()) {
      block(list, paper, sight, step);
      step.onPart().ifPresent(at -> vectors(list, paper, sight, told.get(), at));
    }
    wrong(list, paper, sight);
    ImGui.popFont();
    list.popClipRect();
  }

  private void word(Step step) {
    if (shownChange == state.lesson().changes() && shownView == state.changes()) {
      return;
    }
    shownChange = state.lesson().changes();
    shownView = state.changes();
    LessonWords words = new LessonWords(state.unit());
    zero = "zero " + step.zero();
    end = words.point(step.end());
    move = words.way(step.move());
    step.arc().ifPresent(arc -> wordCentre(words, arc));
  }

  private void wordCentre(LessonWords words, ArcStep arc) {
    for (int axis = 0; axis < 3; axis++) {
      centre[axis] = CENTRE[axis] + " " + words.signed(arc.toCentre().axis(axis));
    }
  }

  /** The moves of the block, strong. */
  private void block(ImDrawList list, Paper paper, Sight sight, Step step) {
    Tape tape = state.course().tape();
    int last = state.steps().endOfBlock(state.position());
    int ink = PaperStyle.ink(hue(paper.palette(), step.mode()), 0.55);
    for (int i = last, n = 0;
        i >= 0 && n < MOST_OF_BLOCK && tape.block(i) == tape.block(last);
        i--, n++) {
      path(list, sight, tape, i, ink, 5 * paper.scale());
    }
  }

  private static int hue(Theme.Palette palette, Distance mode) {
    return mode == Distance.ABSOLUTE ? palette.absoluteText() : palette.incrementalText();
  }

  private void path(ImDrawList list, Sight sight, Tape tape, int at, int ink, float thick) {
    if (tape.kind(at) == MoveKind.DWELL) {
      return;
    }
    int steps = tape.kind(at) == MoveKind.ARC ? ARC_STEPS : 1;
    Point from = tape.from(at);
    float x = sight.x(from);
    float y = sight.y(from);
    for (int i = 1; i <= steps; i++) {
      tape.pointAt(at, (double) i / steps, p);
      Point next = new Point(p[0], p[1], p[2]);
      float nextX = sight.x(next);
      float nextY = sight.y(next);
      list.addLine(x, y, nextX, nextY, ink, thick);
      x = nextX;
      y = nextY;
    }
  }

  private void vectors(ImDrawList list, Paper paper, Sight sight, Told told, Step.OnPart at) {
    Step step = told.step();
    float s = paper.scale();
    boolean written = step.mode() == Distance.ABSOLUTE;
    int ink = PaperStyle.ink(paper.palette().ink());
    if (shows(told, Distance.ABSOLUTE)) {
      int blue = PaperStyle.ink(paper.palette().absoluteText());
      vector(list, sight, at.zero(), at.end(), blue, written ? 1.5f * s : s);
      float x = sight.x(at.zero());
      float y = sight.y(at.zero());
      list.addCircle(x, y, 6 * s, ink, 20, 1.5f * s);
      list.addLine(x - 10 * s, y, x + 10 * s, y, ink, 1.5f * s);
      list.addLine(x, y - 10 * s, x, y + 10 * s, ink, 1.5f * s);
      label(list, paper, sight.x(at.end()) + 10 * s, sight.y(at.end()) + 6 * s, end, blue);
      label(list, paper, x + 10 * s, y + 4 * s, zero, ink);
    }
    if (shows(told, Distance.INCREMENTAL)) {
      int orange = PaperStyle.ink(paper.palette().incrementalText());
      vector(list, sight, at.begin(), at.end(), orange, written ? s : 1.5f * s);
      float x = sight.x(at.begin());
      float y = sight.y(at.begin());
      list.addCircleFilled(x, y, 4.5f * s, orange);
      float middleX = (x + sight.x(at.end())) / 2;
      float middleY = (y + sight.y(at.end())) / 2;
      label(list, paper, middleX + 10 * s, middleY - 24 * s, move, orange);
      label(list, paper, x - 44 * s, y - 24 * s, "start", ink);
    }
    step.arc().ifPresent(arc -> centre(list, paper, sight, at.begin(), arc));
    list.addCircleFilled(sight.x(at.end()), sight.y(at.end()), 4 * s, ink);
  }

  /** What cannot be said in a mode has no vector either: where it begins is not known. */
  private boolean shows(Told told, Distance mode) {
    return state.lesson().shown().has(mode) && told.in(mode).isSaid();
  }

  private static void vector(
      ImDrawList list, Sight sight, Point from, Point to, int ink, float thick) {
    SelectionMarks.arrow(list, sight.x(from), sight.y(from), sight.x(to), sight.y(to), ink, thick);
  }

  private void centre(ImDrawList list, Paper paper, Sight sight, Point begin, ArcStep arc) {
    float s = paper.scale();
    int ink = PaperStyle.ink(paper.palette().ink());
    double[] at = {begin.x(), begin.y(), begin.z()};
    for (int axis = 0; axis < 3; axis++) {
      double way = arc.partToCentre().axis(axis);
      if (Math.abs(way) > NOTHING) {
        Point from = new Point(at[0], at[1], at[2]);
        at[axis] += way;
        Point to = new Point(at[0], at[1], at[2]);
        vector(list, sight, from, to, ink, s);
        float x = (sight.x(from) + sight.x(to)) / 2;
        float y = (sight.y(from) + sight.y(to)) / 2;
        label(list, paper, x + 8 * s, y - 24 * s, centre[axis], ink);
      }
    }
    Point middle = new Point(at[0], at[1], at[2]);
    float x = sight.x(middle);
    float y = sight.y(middle);
    list.addLine(x - 6 * s, y, x + 6 * s, y, ink, 1.5f * s);
    list.addLine(x, y - 6 * s, x, y + 6 * s, ink, 1.5f * s);
  }

  /** The path without the word: near the position, the block itself strong, its end marked. */
  private void wrong(ImDrawList list, Paper paper, Sight sight) {
    Optional<Accident> accident = state.lesson().accident();
    if (accident.isEmpty() || accident.get().path().size() == 0) {
      return;
    }
    float s = paper.scale();
    Tape path = accident.get().path();
    int number = state.course().tape().block(state.position());
    OptionalInt here = accident.get().move(number, state.line());
    int middle = here.orElse(Math.min(state.position(), path.size() - 1));
    int first = Math.max(0, middle - MOST_WRONG / 2);
    int last = Math.min(path.size() - 1, middle + MOST_WRONG / 2);
    int ink = PaperStyle.ink(paper.palette().alarm());
    int pale = PaperStyle.ink(paper.palette().alarm(), 0.6);
    for (int i = first; i <= last; i++) {
      path(list, sight, path, i, pale, 1.5f * s);
    }
    if (here.isPresent()) {
      path(list, sight, path, middle, ink, 3.5f * s);
      Point at = path.to(middle);
      float x = sight.x(at);
      float y = sight.y(at);
      list.addTriangleFilled(x, y - 7 * s, x - 6 * s, y + 5 * s, x + 6 * s, y + 5 * s, ink);
      label(list, paper, x + 10 * s, y - 26 * s, "▲ without " + accident.get().left().word(), ink);
    }
  }

  /** A text near a place, held within the scene and off those written before. */
  private void label(ImDrawList list, Paper paper, float x, float y, String text, int ink) {
    ImGui.calcTextSize(size, text);
    labels.put(x, y, size.x, size.y, paper);
    float room = 3 * paper.scale();
    int ground = PaperStyle.ink(paper.palette().ground(), 0.85);
    float left = labels.left();
    float top = labels.top();
    list.addRectFilled(left - room, top, left + size.x + room, top + size.y, ground);
    list.addText(left, top, ink, text);
  }
}
