package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Point;

/** Draws lines and direction marks with their programs, in the styles of a paper. */
final class LinePen implements AutoCloseable {
  static final int BEHIND = 0;
  static final int CASING = 1;
  static final int CORE = 2;
  static final int FRINGE = 3;

  /** Lines of one pixel, with hard edges. */
  static final int HAIR = 4;

  /** Pixels a dash and its gap take up at least. */
  private static final double LEAST_DASH = 9;

  private final double contentScale;
  private final ShaderProgram lineProgram = new ShaderProgram("line");
  private final ShaderProgram tickProgram = new ShaderProgram("tick");
  private final float[] colour = new float[4];
  private LineStyles styles;
  private Theme theme = Theme.LIGHT;

  LinePen(double contentScale) {
    this.contentScale = contentScale;
    styles = new LineStyles(theme, contentScale);
  }

  /** Takes another paper. */
  void paper(Theme wanted) {
    if (wanted != theme) {
      theme = wanted;
      styles = new LineStyles(theme, contentScale);
    }
  }

  LineStyles styles() {
    return styles;
  }

  /** The line program; {@link #use} makes it the current one. */
  ShaderProgram program() {
    return lineProgram;
  }

  /** Takes up the line program with a matrix to the frame. */
  void use(Camera camera, float[] matrix) {
    lineProgram.use();
    glUniformMatrix4fv(lineProgram.uniform("toClip"), false, matrix);
    glUniform2f(lineProgram.uniform("viewport"), camera.width(), camera.height());
    glUniform4fv(lineProgram.uniform("colour"), styles.colours());
    glUniform4fv(lineProgram.uniform("shape"), styles.shapes());
    Colours.put(theme.palette().casing(), 1, colour, 0);
    glUniform4fv(lineProgram.uniform("casingColour"), colour);
    Colours.put(theme.palette().ground(), 0.72, colour, 0);
    glUniform4fv(lineProgram.uniform("ground"), colour);
    glUniform1f(lineProgram.uniform("hiddenAlpha"), 0.42f);
    double least = LEAST_DASH * contentScale * camera.millimetresPerPixel();
    double period = Math.pow(2, Math.ceil(Math.log(least) / Math.log(2)));
    glUniform1f(lineProgram.uniform("dashPeriod"), (float) period);
  }

  /** Takes the colours for lines of one pixel, which have no casing. */
  void useThinColours() {
    glUniform4fv(lineProgram.uniform("colour"), styles.thinColours());
  }

  /** Tells where a chord is split: the tool's tip. */
  void tip(Point tip, Point origin) {
    glUniform3f(
        lineProgram.uniform("tip"),
        (float) (tip.x() - origin.x()),
        (float) (tip.y() - origin.y()),
        (float) (tip.z() - origin.z()));
  }

  /**
   * Draws lines in one phase.
   *
   * @param position texel from which on chords lie beyond the position
   * @param split texel whose chord the position lies within; -1 for none
   */
  void pass(LineBatch batch, int phase, float[] matrix, int position, int split) {
    glUniform1i(lineProgram.uniform("phase"), phase);
    batch.draw(lineProgram, matrix, position, split);
  }

  /** Draws lines in one phase that know of no position. */
  void pass(LineBatch batch, int phase, float[] matrix) {
    pass(batch, phase, matrix, Integer.MAX_VALUE, -1);
  }

  /** Draws direction marks. */
  void marks(TickBatch ticks, Camera camera, float[] matrix, int position) {
    tickProgram.use();
    glUniformMatrix4fv(tickProgram.uniform("toClip"), false, matrix);
    glUniform2f(tickProgram.uniform("viewport"), camera.width(), camera.height());
    glUniform1f(tickProgram.uniform("pixelsPerMm"), (float) (1 / camera.millimetresPerPixel()));
    glUniform4fv(tickProgram.uniform("tickColour"), styles.tickColours());
    Colours.put(theme.palette().ground(), 0.72, colour, 0);
    glUniform4fv(tickProgram.uniform("ground"), colour);
    glUniform1i(tickProgram.uniform("position"), position);
    glUniform2f(
        tickProgram.uniform("tick"), (float) (6.5 * contentScale), (float) (0.75 * contentScale));
    ticks.draw();
  }

  @Override
  public void close() {
    tickProgram.close();
    lineProgram.close();
  }
}
