package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.util.ArrayList;
import java.util.List;

/** What a diagram puts on paper, kept to be looked at. */
final class Page implements Ink {
  /** A text with its place. */
  record Words(String text, TextBox box, int colour) {}

  final List<Words> words = new ArrayList<>();

  /** What each line takes, with half of its width round it. */
  final List<TextBox> marks = new ArrayList<>();

  final List<Integer> lineColours = new ArrayList<>();
  double left = Double.POSITIVE_INFINITY;
  double top = Double.POSITIVE_INFINITY;
  double right = Double.NEGATIVE_INFINITY;
  double bottom = Double.NEGATIVE_INFINITY;
  private final Letters letters = new Letters();

  static Page of(Diagram diagram) {
    Page page = new Page();
    diagram.onto(page);
    return page;
  }

  private void holds(double x, double y) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }

  @Override
  public void stroke(double[] points, double width, double dash, int colour) {
    lineColours.add(colour);
    double minX = Double.POSITIVE_INFINITY;
    double minY = minX;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = maxX;
    for (int i = 0; i < points.length; i += 2) {
      holds(points[i], points[i + 1]);
      minX = Math.min(minX, points[i]);
      maxX = Math.max(maxX, points[i]);
      minY = Math.min(minY, points[i + 1]);
      maxY = Math.max(maxY, points[i + 1]);
    }
    marks.add(new TextBox(minX - width / 2, minY - width / 2, maxX + width / 2, maxY + width / 2));
  }

  @Override
  public void fill(double[] x, double[] upper, double[] lower, int colour, double alpha) {
    for (int i = 0; i < x.length; i++) {
      holds(x[i], upper[i]);
      holds(x[i], lower[i]);
    }
  }

  @Override
  public void text(Face face, double x, double y, String text, Align align, int colour) {
    TextBox box = TextBox.of(face, x, y, letters.width(face, text), align);
    words.add(new Words(text, box, colour));
    holds(box.left(), box.top());
    holds(box.right(), box.bottom());
  }

  @Override
  public void raster(double x, double y, double width, double height, int columns, int[] cells) {
    holds(x, y);
    holds(x + width, y + height);
  }

  /** All texts, a line each. */
  String text() {
    StringBuilder all = new StringBuilder();
    words.forEach(w -> all.append(w.text()).append('\n'));
    return all.toString();
  }
}
