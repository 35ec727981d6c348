package flankfit.window;

import flankfit.motion.Point;
import flankfit.picture.Camera;
import flankfit.picture.Colours;
import flankfit.picture.Figures;
import flankfit.picture.Insets;
import flankfit.picture.Scene;
import flankfit.picture.Theme;
import flankfit.picture.Ticks;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import java.util.Optional;

/**
 * The motion on the wall of a hole laid flat: angle across, depth down, both to one scale. Shows
 * the path of the tip, hue for the distance mode, paler beyond the position; and the mill's rows
 * where it stands.
 */
final class UnrolledWall {
  private static final int EIGHTHS = 8;

  private final ViewState state;
  private final ImVec2 size = new ImVec2();
  private Optional<FlatPath> path = Optional.empty();
  private Optional<WallFrame> shownWall = Optional.empty();
  private MoveBoxes shownBoxes = MoveBoxes.NONE;
  private int shownLevel;
  private double shownStep = -1;
  private LengthUnit shownUnit = LengthUnit.MILLIMETRE;
  private String[] labels = {};
  private long firstLabel;
  private String caption = "";

  UnrolledWall(ViewState state) {
    this.state = state;
  }

  /** The path laid flat, for the present zoom. */
  private FlatPath follow(WallFrame wall) {
    int level =
        (int) Math.floor(Math.log(state.viewpoint().camera().millimetresPerPixel()) / Math.log(4));
    MoveBoxes boxes = state.loaded().survey().boxes();
    if (path.isEmpty()
        || level != shownLevel
        || boxes != shownBoxes
        || !shownWall.equals(Optional.of(wall))) {
      shownLevel = level;
      shownBoxes = boxes;
      shownWall = Optional.of(wall);
      path = Optional.of(new FlatPath(wall, state.course().tape(), boxes, Math.pow(4, level) / 4));
      caption = caption(wall, path.orElseThrow());
    }
    return path.orElseThrow();
  }

  /** What lies within some pixels of a place in the scene (px, rows upwards). */
  Optional<Pick> pick(double column, double row, double within) {
    Optional<WallFrame> wall = state.viewpoint().wall();
    if (wall.isEmpty()) {
      return Optional.empty();
    }
    Camera camera = state.viewpoint().camera();
    double mm = camera.millimetresPerPixel();
    double across = camera.centre().x() + (column - camera.width() / 2.0) * mm;
    double height = camera.centre().z() + (row - camera.height() / 2.0) * mm;
    return follow(wall.get()).nearest(across, height, within * mm);
  }

  void draw(Paper paper) {
    ImDrawList list = ImGui.getBackgroundDrawList();
    float s = paper.scale();
    Theme.Palette palette = paper.palette();
    Layout layout = paper.layout();
    Optional<WallFrame> shown = state.viewpoint().wall();
    if (shown.isEmpty()) {
      list.addText(
          74 * s,
          layout.header() + 40 * s,
          PaperStyle.ink(palette.softInk()),
          "no hole in the setup sheet and no arc in the program: there is no wall to unroll");
      return;
    }
    WallFrame wall = shown.get();
    Insets insets = MotionSheet.insets(paper, s);
    float left = insets.left();
    float right = layout.sceneWidth() - insets.right();
    float top = layout.header() + insets.top();
    float bottom = layout.header() + layout.sceneHeight() - insets.bottom();
    list.pushClipRect(left, top, right, bottom, true);
    ground(list, paper, wall);
    path(list, paper, wall);
    cutter(list, paper, wall);
    list.popClipRect();
    angles(list, paper, wall, left, right, bottom);
    depths(list, paper, left, top, bottom);
    ImGui.pushFont(paper.style().small());
    list.addText(28 * s, bottom + 50 * s, PaperStyle.ink(palette.softInk()), caption);
    ImGui.popFont();
  }

  private static String caption(WallFrame wall, FlatPath path) {
    return "wall of "
        + wall.name()
        + " unrolled; path of the tip, rows of the mill where it is"
        + (path.isComplete() ? "" : "; the first moves only, there are more");
  }

  private float x(Paper paper, double across) {
    Camera c = state.viewpoint().camera();
    return (float)
        ((c.width() / 2.0 + (across - c.centre().x()) / c.millimetresPerPixel()) / paper.pixels());
  }

  private float y(Paper paper, double height) {
    return (float) DepthScale.of(state, paper.layout(), paper.pixels()).rowOf(height);
  }

  /** The wall itself, its mouth and its lower end. */
  private void ground(ImDrawList list, Paper paper, WallFrame wall) {
    float x0 = x(paper, 0);
    float x1 = x(paper, wall.circumference());
    float y0 = y(paper, wall.top());
    float y1 = y(paper, wall.bottom());
    Theme.Palette palette = paper.palette();
    list.addRectFilled(x0, y0, x1, y1, PaperStyle.ink(palette.stock(), 0.22));
    int edge = PaperStyle.ink(palette.stockEdge());
    float line = Math.max(1, paper.scale());
    list.addLine(x0, y0, x1, y0, edge, line);
    list.addLine(x0, y1, x1, y1, edge, line);
    for (int i = 0; i <= EIGHTHS; i++) {
      float x = x(paper, wall.circumference() * i / EIGHTHS);
      list.addLine(x, y0, x, y1, PaperStyle.ink(palette.stockEdge(), i % 2 == 0 ? 0.5 : 0.2), 1);
    }
  }

  private void path(ImDrawList list, Paper paper, WallFrame wall) {
    FlatPath flat = follow(wall);
    Theme.Palette palette = paper.palette();
    Camera c = state.viewpoint().camera();
    DepthScale depth = DepthScale.of(state, paper.layout(), paper.pixels());
    int move = state.position();
    double share = state.course().position().share();
    double perMm = 1 / c.millimetresPerPixel() / paper.pixels();
    double zeroX = c.width() / 2.0 / paper.pixels() - c.centre().x() * perMm;
    double zeroY = depth.rowOf(0);
    Scene scene = state.scene();
    float thick = 2.2f * paper.scale();
    for (int i = 0; i < flat.count(); i++) {
      int hue = flat.isAbsolute(i) ? palette.absoluteText() : palette.incrementalText();
      // Earlier passes paler, as in the scene; what is still to come see-through.
      int colour = Colours.mix(hue, palette.ground(), scene.paleness(flat.move(i)));
      int ink = PaperStyle.ink(colour, flat.isBeyond(i, move, share) ? 0.3 : 1);
      list.addLine(
          (float) (zeroX + flat.number(i, 0) * perMm),
          (float) (zeroY - flat.number(i, 1) * perMm),
          (float) (zeroX + flat.number(i, 2) * perMm),
          (float) (zeroY - flat.number(i, 3) * perMm),
          ink,
          flat.isRapid(i) ? 1 : thick);
    }
  }

  /** The rows of a thread mill where the cutter is turned to the wall; a bar for any other tool. */
  private void cutter(ImDrawList list, Paper paper, WallFrame wall) {
    Optional<Point> tip = state.tip();
    if (tip.isEmpty()) {
      return;
    }
    Point t = tip.get();
    double r = wall.distance(t.x(), t.y());
    if (r <= WallFrame.ON_AXIS || r > wall.radius() * 1.02) {
      return;
    }
    float x = x(paper, wall.flat(t.x(), t.y(), t.z()).x());
    int ink = PaperStyle.ink(paper.palette().ink());
    float s = paper.scale();
    Optional<Tool> tool =
        state.input().setup().tool(state.course().tape().state(state.position()).tool());
    if (tool.isPresent() && tool.get().teeth().isPresent()) {
      Tool.Teeth teeth = tool.get().teeth().get();
      double pitch = teeth.pitch().orElse(0.0);
      for (int row = 0; row < teeth.rows(); row++) {
        float y = y(paper, t.z() + teeth.tip() + row * pitch);
        list.addTriangleFilled(x + 9 * s, y - 4 * s, x, y, x + 9 * s, y + 4 * s, ink);
      }
    }
    list.addCircleFilled(x, y(paper, t.z()), 3.5f * s, ink);
  }

  private void angles(
      ImDrawList list, Paper paper, WallFrame wall, float left, float right, float bottom) {
    Theme.Palette palette = paper.palette();
    float s = paper.scale();
    list.addRectFilled(left, bottom, right, bottom + 1, PaperStyle.ink(palette.rule()));
    ImGui.pushFont(paper.style().small());
    int soft = PaperStyle.ink(palette.softInk());
    for (int i = 0; i <= EIGHTHS; i++) {
      float x = x(paper, wall.circumference() * i / EIGHTHS);
      if (x >= left - 1 && x <= right + 1) {
        list.addRectFilled(x, bottom, x + 1, bottom + 7 * s, soft);
        String label = ANGLES[i];
        ImGui.calcTextSize(size, label);
        list.addText(x - size.x / 2, bottom + 9 * s, soft, label);
      }
    }
    ImGui.popFont();
  }

  private static final String[] ANGLES = {
    "0° +X", "45°", "90° +Y", "135°", "180° −X", "225°", "270° −Y", "315°", "360°"
  };

  /** The common rule of depth, where the part's own picture has it too. */
  private void depths(ImDrawList list, Paper paper, float left, float top, float bottom) {
    Theme.Palette palette = paper.palette();
    float s = paper.scale();
    LengthUnit unit = state.unit();
    DepthScale depth = DepthScale.of(state, paper.layout(), paper.pixels());
    double perUnit = unit.toMillimetres(1) / depth.millimetresPerPixel() / paper.pixels();
    double step = Ticks.stepAtLeast(45 * s / perUnit);
    double zero = depth.rowOf(depth.zero());
    long first = (long) Math.ceil((zero - bottom) / perUnit / step);
    long last = (long) Math.floor((zero - top) / perUnit / step);
    word(first, last, step, unit);
    list.addRectFilled(left, top, left + 1, bottom, PaperStyle.ink(palette.rule()));
    int soft = PaperStyle.ink(palette.softInk());
    ImGui.pushFont(paper.style().small());
    for (long i = first; i <= last; i++) {
      float y = (float) Math.rint(zero - i * step * perUnit);
      list.addRectFilled(left - 7 * s, y, left, y + 1, soft);
      String label = labels[(int) (i - first)];
      ImGui.calcTextSize(size, label);
      list.addText(
          left - 11 * s - size.x,
          y - size.y / 2,
          i == 0 ? PaperStyle.ink(palette.ink()) : soft,
          label);
    }
    String name = unit == LengthUnit.INCH ? "depth in" : "depth mm";
    ImGui.calcTextSize(size, name);
    list.addText(left - 11 * s - size.x, top - 22 * s, soft, name);
    ImGui.popFont();
  }

  private void word(long first, long last, double step, LengthUnit unit) {
    boolean same =
        step == shownStep
            && unit == shownUnit
            && first == firstLabel
            && labels.length == last - first + 1;
    if (!same) {
      shownStep = step;
      shownUnit = unit;
      firstLabel = first;
      labels = new String[(int) Math.max(0, Math.min(1000, last - first + 1))];
      int decimals = Ticks.decimals(step);
      for (int i = 0; i < labels.length; i++) {
        labels[i] = Figures.fixed((first + i) * step, decimals);
      }
    }
  }
}
