package flankfit.window;

import flankfit.gauge.ThreadAnswer;
import flankfit.picture.BodyScene.KeyRow;
import flankfit.picture.Camera;
import flankfit.picture.Insets;
import flankfit.picture.LiveBody;
import flankfit.picture.MetalInk;
import flankfit.picture.ThreadWalls;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;
import java.util.List;
import java.util.Optional;

/** What the program leaves: the metal at the position, opened by planes, with the cutter in it. */
final class MetalSheet implements Sheet {
  /** Time that a frame may spend on bringing faces into graphics memory (ns). */
  private static final long UPLOADING = 4_000_000;

  /** Grooves that are seen this wide get their exact wall (px a pitch). */
  private static final double EXACT_FROM = 12;

  private final ViewState state;
  private final int samples;
  private final SelectionMarks marks;
  private final MetalMarks over;
  private final MetalTelling telling;
  private final ImVec2 size = new ImVec2();
  private LiveBody body;
  private double contentScale;
  private long drawnChanges = -1;
  private Optional<MetalPicture> given = Optional.empty();
  private Optional<ThreadWalls> exact = Optional.empty();
  private Optional<MetalPicture> seen = Optional.empty();
  private boolean seenExact;
  private List<StateWords.Row> rows = List.of();
  private long shownChanges = -1;

  /**
   * Prepares shaders and letters with the current context.
   *
   * @param contentScale pixels a logical pixel (1)
   * @param samples samples a pixel; 0 where the processor draws
   */
  MetalSheet(ViewState state, double contentScale, int samples) {
    this.state = state;
    this.samples = samples;
    this.contentScale = contentScale;
    marks = new SelectionMarks(state);
    over = new MetalMarks(state);
    telling = new MetalTelling(state);
    body = new LiveBody(contentScale, samples);
  }

  @Override
  public SheetName name() {
    return SheetName.METAL;
  }

  private MetalSide side() {
    return state.metal();
  }

  private Camera camera() {
    return state.viewpoint().camera();
  }

  @Override
  public void picture(Paper paper, int below) {
    if (state.viewpoint().isUnrolled()) {
      state.viewpoint().look(state.viewpoint().view());
    }
    Insets insets = Insets.ofWindow(contentScale);
    if (state.viewpoint().takeFit()) {
      camera().fit(state.viewpoint().fitted(), insets.widened(18 * contentScale));
      drawnChanges = -1;
    }
    take();
    if (side().bench().subject().isEmpty()) {
      return;
    }
    boolean other = body.upload(System.nanoTime() + UPLOADING);
    if (body.isThere() && (other || body.isComplete())) {
      seen = given;
      seenExact = body.showsWalls();
    }
    if (other || drawnChanges != state.changes()) {
      drawnChanges = state.changes();
      LiveBody.Look look =
          new LiveBody.Look(
              side().sections().cuts(camera()),
              side().seesThrough(),
              side().isByTool() ? Optional.empty() : Optional.of(plain()),
              !side().isBare());
      body.draw(state.scene(), camera(), state.theme(), state.unit(), insets, look);
    } else if (rests() && body.isComplete() && !body.isSoft()) {
      body.soften();
    }
    body.copyTo(0, 0, below);
  }

  /** Whether nothing moves, so that edges are worth softening. */
  private boolean rests() {
    return side().dragged() < 0 && !state.player().playback().isPlaying();
  }

  private int plain() {
    MetalSubject subject = side().bench().subject().orElseThrow();
    return new MetalInk(subject.tape(), subject.setup()).metal();
  }

  /** Hands over what is to be shown. */
  private void take() {
    Optional<MetalPicture> now = side().bench().shown();
    if (now.isEmpty() && given.isPresent()) {
      seen = Optional.empty();
      body.forget();
      drawnChanges = -1;
    }
    boolean other = now.isPresent() && !now.equals(given);
    given = now;
    if (other) {
      body.show(now.get().pieces());
    }
    exact = Optional.empty();
    if (now.isPresent() && isClose()) {
      exact = side().bench().walls(side().threads(), camera().millimetresPerPixel());
    }
    body.show(exact);
  }

  /** Whether grooves are seen so large that their exact wall is worth while. */
  private boolean isClose() {
    double pixels = EXACT_FROM * contentScale * camera().millimetresPerPixel();
    for (ThreadAnswer thread : side().threads()) {
      if (thread.spec().pitch() >= pixels) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void words(Paper paper) {
    if (side().bench().subject().isEmpty()) {
      ImGui.pushStyleColor(ImGuiCol.WindowBg, PaperStyle.ink(paper.palette().ground(), 0));
      Layout layout = paper.layout();
      Panels.begin("metal", 0, layout.header(), layout.sceneWidth(), layout.sceneHeight());
      LackWords.draw(paper, MissingStock.heading(state.loaded()), MissingStock.of(state.loaded()));
      ImGui.end();
      ImGui.popStyleColor();
      return;
    }
    ImDrawList list = ImGui.getBackgroundDrawList();
    Layout layout = paper.layout();
    Insets insets = Insets.ofWindow(contentScale);
    float px = paper.pixels();
    list.pushClipRect(
        insets.left() / px,
        layout.header() + insets.top() / px,
        layout.sceneWidth() - insets.right() / px,
        layout.header() + layout.sceneHeight() - insets.bottom() / px,
        true);
    Sight sight = new Sight(camera(), Optional.empty(), layout.header(), paper.pixels());
    over.draw(list, paper, sight);
    list.popClipRect();
    key(list, paper);
    telling.draw(paper, seen, seenExact);
    if (state.selection().isMeasuring()) {
      marks.draw(paper);
    } else {
      side().picked().ifPresent(p -> picked(paper, sight, p));
    }
  }

  /** What the colours mean, below the rules. */
  private void key(ImDrawList list, Paper paper) {
    if (seen.isEmpty() || !side().isByTool()) {
      return;
    }
    float s = paper.scale();
    float x = 28 * s;
    float y = paper.layout().header() + paper.layout().sceneHeight() - 32 * s;
    float end = paper.layout().sceneWidth() - 190 * s;
    ImGui.pushFont(paper.style().small());
    int ink = PaperStyle.ink(paper.palette().softInk());
    for (KeyRow row : seen.get().key()) {
      ImGui.calcTextSize(size, row.words());
      if (x + 20 * s + size.x > end) {
        break;
      }
      list.addRectFilled(x, y + 2 * s, x + 14 * s, y + 12 * s, PaperStyle.ink(row.colour()));
      list.addRect(x, y + 2 * s, x + 14 * s, y + 12 * s, ink);
      list.addText(x + 20 * s, y, ink, row.words());
      x += 20 * s + size.x + 18 * s;
    }
    ImGui.popFont();
  }

  private void picked(Paper paper, Sight sight, MetalPick pick) {
    if (shownChanges != state.changes()) {
      shownChanges = state.changes();
      rows = new MetalWords(state.unit()).picked(pick, state.input(), state.scene().top());
    }
    float s = paper.scale();
    ImDrawList list = ImGui.getBackgroundDrawList();
    int ink = PaperStyle.ink(paper.palette().ink());
    float x = sight.x(pick.place());
    float y = sight.y(pick.place());
    list.addCircleFilled(x, y, 6 * s, PaperStyle.ink(paper.palette().ground()), 20);
    list.addCircle(x, y, 6 * s, ink, 20, 1.8f * s);
    list.addCircleFilled(x, y, 2 * s, ink);
    marks.card(list, paper, rows, telling.end());
  }

  /** What the card of the pick says; for tests. */
  List<StateWords.Row> rows() {
    return side().picked().isPresent() ? rows : List.of();
  }

  @Override
  public boolean isUnfinished() {
    return side().bench().subject().isPresent()
        && (!body.isComplete() || (rests() && !body.isSoft()));
  }

  @Override
  public Optional<Pick> pick(double column, double row) {
    return side()
        .pick(camera(), column, row)
        .filter(p -> p.maker() >= 0 || state.selection().isMeasuring())
        .map(p -> new Pick(Pick.Kind.SURFACE, Math.max(0, p.maker()), 0, p.place()));
  }

  @Override
  public void rescale(double wanted) {
    contentScale = wanted;
    body.close();
    body = new LiveBody(wanted, samples);
    given = Optional.empty();
    drawnChanges = -1;
  }

  @Override
  public void close() {
    body.close();
  }
}
