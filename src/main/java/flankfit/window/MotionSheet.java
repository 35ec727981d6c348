package flankfit.window;

import flankfit.picture.Insets;
import flankfit.picture.LivePicture;
import java.util.Optional;

/** What the tool does: the scene of the part, or the wall of a hole unrolled. */
final class MotionSheet implements Sheet {
  /** Height of a scene below which it is worth more than the legend (logical px). */
  private static final int LOW = 320;

  private final ViewState state;
  private final int samples;
  private final UnrolledWall wall;
  private final SelectionMarks marks;
  private final DepthLine depthLine;
  private LivePicture picture;
  private double contentScale;
  private long drawnChanges = -1;

  /**
   * Prepares shaders and letters with the current context.
   *
   * @param contentScale pixels a logical pixel (1)
   * @param samples samples a pixel; 0 where the processor draws
   */
  MotionSheet(ViewState state, double contentScale, int samples) {
    this.state = state;
    this.samples = samples;
    this.contentScale = contentScale;
    wall = new UnrolledWall(state);
    marks = new SelectionMarks(state);
    depthLine = new DepthLine(state);
    picture = new LivePicture(contentScale, samples);
  }

  @Override
  public SheetName name() {
    return SheetName.MOTION;
  }

  /** The room round the scene, in units of which a logical pixel has so many. */
  static Insets insets(Paper paper, double scale) {
    return isLow(paper) ? Insets.ofLowWindow(scale) : Insets.ofWindow(scale);
  }

  private static boolean isLow(Paper paper) {
    return paper.layout().sceneHeight() < LOW * paper.scale();
  }

  @Override
  public void picture(Paper paper, int below) {
    Insets insets = insets(paper, contentScale);
    if (state.viewpoint().takeFit()) {
      double margin = isLow(paper) ? 4 : 18;
      state
          .viewpoint()
          .camera()
          .fit(state.viewpoint().fitted(), insets.widened(margin * contentScale));
      drawnChanges = -1;
    }
    if (state.viewpoint().isUnrolled()) {
      drawnChanges = -1;
      return;
    }
    if (drawnChanges != state.changes() || picture.isUnfinished()) {
      drawnChanges = state.changes();
      picture.draw(state.scene(), state.viewpoint().camera(), state.theme(), state.unit(), insets);
    }
    picture.copyTo(0, 0, below);
  }

  @Override
  public void words(Paper paper) {
    if (state.viewpoint().isUnrolled()) {
      wall.draw(paper);
    }
    depthLine.draw(
        paper.style(),
        paper.layout(),
        paper.palette(),
        paper.column(),
        paper.row(),
        paper.pixels());
    marks.draw(paper);
  }

  @Override
  public boolean isUnfinished() {
    return !state.viewpoint().isUnrolled() && picture.isUnfinished();
  }

  @Override
  public Optional<Pick> pick(double column, double row) {
    double reach = Picker.REACH * contentScale;
    if (state.viewpoint().isUnrolled()) {
      return wall.pick(column, row, reach);
    }
    boolean centres = state.selection().isMeasuring();
    return new Picker(
            state.course().tape(),
            state.loaded().survey().boxes(),
            state.viewpoint().camera(),
            reach,
            centres)
        .at(column, row);
  }

  @Override
  public void rescale(double wanted) {
    contentScale = wanted;
    picture.close();
    picture = new LivePicture(wanted, samples);
    drawnChanges = -1;
  }

  @Override
  public void close() {
    picture.close();
  }
}
