package flankfit.window;

import flankfit.finding.Finding;
import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Camera;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Marks over the picture of the metal: planes with their grips, and where something touches. */
final class MetalMarks {
  /** How near the pointer must come to a grip (px at scale 1). */
  static final double GRIP_REACH = 14;

  /** Radius of a grip (px at scale 1). */
  private static final float GRIP = 9;

  /** Places along a move that are looked at. */
  private static final int STEPS = 64;

  private final ViewState state;
  private final List<Point> places = new ArrayList<>();
  private List<Finding> touching = List.of();
  private final ImVec2 size = new ImVec2();

  MetalMarks(ViewState state) {
    this.state = state;
  }

  private MetalSide side() {
    return state.metal();
  }

  private Camera camera() {
    return state.viewpoint().camera();
  }

  /** Draws all of them. */
  void draw(ImDrawList list, Paper paper, Sight sight) {
    for (int axis = 0; axis < 3; axis++) {
      if (side().sections().isOn(axis)) {
        plane(list, paper, sight, axis);
      }
    }
    touches(list, paper, sight);
  }

  private void plane(ImDrawList list, Paper paper, Sight sight, int axis) {
    float s = paper.scale();
    Sections sections = side().sections();
    boolean held = sections.held() == axis;
    int colour = held ? paper.palette().ink() : paper.palette().softInk();
    int ink = PaperStyle.ink(colour);
    int edge = PaperStyle.ink(colour, held ? 0.5 : 0.3);
    for (int corner = 0; corner < 4; corner++) {
      Point a = SectionGrips.corner(sections, axis, corner);
      Point b = SectionGrips.corner(sections, axis, (corner + 1) % 4);
      list.addLine(sight.x(a), sight.y(a), sight.x(b), sight.y(b), edge, s);
    }
    Point grip = SectionGrips.grip(sections, axis, camera());
    float x = sight.x(grip);
    float y = sight.y(grip);
    double near = Math.hypot(x - paper.column(), y - paper.row());
    boolean hot = side().dragged() == axis || near < GRIP_REACH * s;
    float r = (hot ? GRIP + 2 : GRIP) * s;
    list.addCircleFilled(x, y, r, PaperStyle.ink(paper.palette().ground()), 24);
    list.addCircle(x, y, r, ink, 24, 2 * s);
    arrows(list, axis, x, y, r, ink);
    String words = new MetalWords(state.unit()).section(sections, axis);
    ImGui.pushFont(paper.style().small());
    ImGui.calcTextSize(size, words);
    float left = Math.min(x + r + 12 * s, paper.layout().sceneWidth() - size.x - 8 * s);
    float top = Math.max(paper.layout().header() + 4 * s, y - r - size.y);
    list.addRectFilled(
        left - 3 * s,
        top,
        left + size.x + 3 * s,
        top + size.y,
        PaperStyle.ink(paper.palette().ground(), 0.85));
    list.addText(left, top, ink, words);
    ImGui.popFont();
  }

  /** Two arrow heads at a grip, the ways it can go. */
  private void arrows(ImDrawList list, int axis, float x, float y, float r, int ink) {
    double ux = camera().right(axis);
    double uy = -camera().up(axis);
    double length = Math.hypot(ux, uy);
    if (length < 0.12) {
      ux = 0;
      uy = 1;
      length = 1;
    }
    float dx = (float) (ux / length);
    float dy = (float) (uy / length);
    for (int way = -1; way <= 1; way += 2) {
      float tipX = x + way * dx * r * 0.72f;
      float tipY = y + way * dy * r * 0.72f;
      float backX = x + way * dx * r * 0.2f;
      float backY = y + way * dy * r * 0.2f;
      float side = r * 0.34f;
      list.addTriangleFilled(
          tipX,
          tipY,
          backX - dy * side,
          backY + dx * side,
          backX + dy * side,
          backY - dx * side,
          ink);
    }
  }

  /** Marks where something touches that should not. */
  private void touches(ImDrawList list, Paper paper, Sight sight) {
    follow();
    float s = paper.scale();
    int alarm = PaperStyle.ink(paper.palette().alarm());
    int ground = PaperStyle.ink(paper.palette().ground());
    for (Point at : places) {
      float x = sight.x(at);
      float y = sight.y(at);
      list.addTriangleFilled(x, y - 11 * s, x - 9 * s, y + 5 * s, x + 9 * s, y + 5 * s, ground);
      list.addTriangle(x, y - 11 * s, x - 9 * s, y + 5 * s, x + 9 * s, y + 5 * s, alarm, 2 * s);
      list.addLine(x, y - 5 * s, x, y, alarm, 2 * s);
      list.addCircleFilled(x, y + 2.6f * s, 1.2f * s, alarm);
    }
  }

  private void follow() {
    List<Finding> now = side().touching();
    if (now.equals(touching)) {
      return;
    }
    touching = now;
    places.clear();
    Tape tape = state.course().tape();
    Extents stock = side().bench().subject().orElseThrow().stock();
    Set<Integer> lines = new HashSet<>();
    for (Finding finding : now) {
      if (finding.place().file().equals(state.input().file())) {
        lines.add(finding.place().line());
      }
    }
    for (int move = 0; move < tape.size(); move++) {
      if (lines.remove(tape.line(move))) {
        places.add(entry(tape, move, stock));
      }
    }
  }

  /** Where the tip comes into the box of the stock, or else the end of the move. */
  static Point entry(Tape tape, int move, Extents stock) {
    double[] p = new double[3];
    for (int i = 0; i <= STEPS; i++) {
      tape.pointAt(move, (double) i / STEPS, p);
      boolean within = true;
      for (int axis = 0; axis < 3; axis++) {
        within &= p[axis] >= stock.min().axis(axis) && p[axis] <= stock.max().axis(axis);
      }
      if (within) {
        break;
      }
    }
    return new Point(p[0], p[1], p[2]);
  }
}
