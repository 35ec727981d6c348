package flankfit.window;

import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import java.util.List;
import java.util.Optional;

/**
 * What was picked, marked in the scene, and told in a card in its corner: the move, its centre with
 * I J K as vectors from its start; the points measured and the line between them.
 */
final class SelectionMarks {
  private static final int ARC_STEPS = 96;
  private static final String[] WORDS = {"I", "J", "K"};

  private final ViewState state;
  private final ImVec2 size = new ImVec2();
  private List<StateWords.Row> rows = List.of();
  private long shownSelection = -1;
  private long shownContents = -1;
  private LengthUnit shownUnit = LengthUnit.MILLIMETRE;
  private final double[] p = new double[3];

  SelectionMarks(ViewState state) {
    this.state = state;
  }

  private void follow() {
    Selection selection = state.selection();
    if (shownSelection == selection.changes()
        && shownUnit == state.unit()
        && shownContents == state.contents()) {
      return;
    }
    shownSelection = selection.changes();
    shownUnit = state.unit();
    shownContents = state.contents();
    if (selection.isMeasuring()) {
      rows = SelectionWords.measured(selection, state.course().tape(), shownUnit);
    } else {
      rows =
          selection
              .picked()
              .map(pick -> SelectionWords.picked(state.input(), pick, shownUnit))
              .orElse(List.of());
    }
  }

  void draw(Paper paper) {
    follow();
    if (rows.isEmpty()) {
      return;
    }
    ImDrawList list = ImGui.getBackgroundDrawList();
    Layout layout = paper.layout();
    list.pushClipRect(
        0, layout.header(), layout.sceneWidth(), layout.header() + layout.sceneHeight(), true);
    Sight sight =
        new Sight(
            state.viewpoint().camera(), state.viewpoint().wall(), layout.header(), paper.pixels());
    Selection selection = state.selection();
    if (selection.isMeasuring()) {
      measure(list, paper, sight, selection);
    } else {
      selection.picked().ifPresent(pick -> picked(list, paper, sight, pick));
    }
    card(list, paper, rows, 0);
    list.popClipRect();
  }

  private void picked(ImDrawList list, Paper paper, Sight sight, Pick pick) {
    Tape tape = state.course().tape();
    if (pick.move() >= tape.size()) {
      return;
    }
    float s = paper.scale();
    int ink = PaperStyle.ink(paper.palette().ink());
    int steps =
        tape.kind(pick.move()) == MoveKind.ARC || state.viewpoint().isUnrolled() ? ARC_STEPS : 1;
    Point last = tape.from(pick.move());
    float gap = layoutGap(paper);
    for (int i = 1; i <= steps; i++) {
      tape.pointAt(pick.move(), (double) i / steps, p);
      Point next = new Point(p[0], p[1], p[2]);
      float x0 = sight.x(last);
      float x1 = sight.x(next);
      if (Math.abs(x1 - x0) < gap) {
        list.addLine(x0, sight.y(last), x1, sight.y(next), ink, 2 * s);
      }
      last = next;
    }
    dot(list, sight, tape.to(pick.move()), ink, 3.5f * s);
    if (tape.kind(pick.move()) == MoveKind.ARC && !state.viewpoint().isUnrolled()) {
      vectors(list, paper, sight, tape, pick.move());
    }
  }

  /** On a wall laid flat a chord over the seam would run across everything. */
  private float layoutGap(Paper paper) {
    return state.viewpoint().isUnrolled() ? paper.layout().sceneWidth() * 0.3f : Float.MAX_VALUE;
  }

  private void vectors(ImDrawList list, Paper paper, Sight sight, Tape tape, int move) {
    ArcVectors v = ArcVectors.of(tape, move);
    float s = paper.scale();
    boolean absolute = tape.state(move).distance() == flankfit.motion.ModalState.Distance.ABSOLUTE;
    int hue = absolute ? paper.palette().absoluteText() : paper.palette().incrementalText();
    int ink = PaperStyle.ink(hue);
    ImGui.pushFont(paper.style().strong());
    for (int axis = 0; axis < 3; axis++) {
      if (Math.abs(v.word(axis)) > 1e-9) {
        Point from = v.corner(axis);
        Point to = v.corner(axis + 1);
        arrow(list, sight.x(from), sight.y(from), sight.x(to), sight.y(to), ink, s);
        float x = (sight.x(from) + sight.x(to)) / 2;
        float y = (sight.y(from) + sight.y(to)) / 2;
        label(list, paper, x + 6 * s, y - 20 * s, WORDS[axis], ink);
      }
    }
    Point c = v.centre();
    float x = sight.x(c);
    float y = sight.y(c);
    list.addLine(x - 7 * s, y, x + 7 * s, y, ink, 1.5f * s);
    list.addLine(x, y - 7 * s, x, y + 7 * s, ink, 1.5f * s);
    list.addCircle(x, y, 4 * s, ink, 16, 1.5f * s);
    ImGui.popFont();
  }

  private void measure(ImDrawList list, Paper paper, Sight sight, Selection selection) {
    float s = paper.scale();
    int ink = PaperStyle.ink(paper.palette().ink());
    List<Pick> points = selection.points();
    for (int i = 0; i < points.size(); i++) {
      Point at = points.get(i).point();
      float x = sight.x(at);
      float y = sight.y(at);
      list.addCircle(x, y, 6 * s, ink, 20, 1.6f * s);
      list.addCircleFilled(x, y, 2 * s, ink);
    }
    Optional<Measure> measure = selection.measure();
    if (measure.isPresent()) {
      Point a = measure.get().from();
      Point b = measure.get().to();
      Point c1 = new Point(b.x(), a.y(), a.z());
      Point c2 = new Point(b.x(), b.y(), a.z());
      int soft = PaperStyle.ink(paper.palette().softInk());
      if (!state.viewpoint().isUnrolled()) {
        leg(list, sight, a, c1, soft);
        leg(list, sight, c1, c2, soft);
        leg(list, sight, c2, b, soft);
      }
      list.addLine(sight.x(a), sight.y(a), sight.x(b), sight.y(b), ink, 2 * s);
    }
  }

  private static void leg(ImDrawList list, Sight sight, Point a, Point b, int ink) {
    list.addLine(sight.x(a), sight.y(a), sight.x(b), sight.y(b), ink, 1);
  }

  private static void dot(ImDrawList list, Sight sight, Point at, int ink, float radius) {
    list.addCircleFilled(sight.x(at), sight.y(at), radius, ink);
  }

  /** An arrow from place to place (window units). */
  static void arrow(ImDrawList list, float x0, float y0, float x1, float y1, int ink, float s) {
    list.addLine(x0, y0, x1, y1, ink, 2 * s);
    double length = Math.hypot(x1 - x0, y1 - y0);
    if (length > 1) {
      float ux = (float) ((x1 - x0) / length);
      float uy = (float) ((y1 - y0) / length);
      float head = (float) Math.min(9 * s, length / 2);
      float side = head * 0.45f;
      list.addTriangleFilled(
          x1,
          y1,
          x1 - head * ux - side * uy,
          y1 - head * uy + side * ux,
          x1 - head * ux + side * uy,
          y1 - head * uy - side * ux,
          ink);
    }
  }

  private void label(ImDrawList list, Paper paper, float x, float y, String text, int ink) {
    ImGui.calcTextSize(size, text);
    float room = 2 * paper.scale();
    int ground = PaperStyle.ink(paper.palette().ground(), 0.8);
    list.addRectFilled(x - room, y, x + size.x + room, y + size.y, ground);
    list.addText(x, y, ink, text);
  }

  /**
   * Rows of words in the scene's upper left corner, beside the rule of depth.
   *
   * @param down how far below it (window units)
   */
  void card(ImDrawList list, Paper paper, List<StateWords.Row> told, float down) {
    float s = paper.scale();
    float left = 92 * s;
    float top = paper.layout().header() + 14 * s + down;
    float row = 20 * s;
    ImGui.pushFont(paper.style().small());
    float wide = 0;
    for (int i = 0; i < told.size(); i++) {
      ImGui.calcTextSize(size, told.get(i).value());
      wide = Math.max(wide, size.x);
    }
    float width = Math.min(72 * s + wide + 20 * s, paper.layout().sceneWidth() - left - 14 * s);
    float height = told.size() * row + 14 * s;
    list.addRectFilled(
        left, top, left + width, top + height, PaperStyle.ink(paper.palette().ground(), 0.94));
    list.addRect(left, top, left + width, top + height, PaperStyle.ink(paper.palette().rule()));
    list.pushClipRect(left, top, left + width - 4 * s, top + height, true);
    int ink = PaperStyle.ink(paper.palette().ink());
    int soft = PaperStyle.ink(paper.palette().softInk());
    for (int i = 0; i < told.size(); i++) {
      float y = top + 7 * s + i * row;
      list.addText(left + 10 * s, y, soft, told.get(i).label());
      list.addText(left + 76 * s, y, ink, told.get(i).value());
    }
    list.popClipRect();
    ImGui.popFont();
  }

  /** What the card says; for tests. */
  List<StateWords.Row> rows() {
    follow();
    return rows;
  }
}
