package flankfit.picture;

import flankfit.picture.TextAtlas.Face;
import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines that fit a width. */
final class Paragraph {
  private Paragraph() {}

  /**
   * Lines of a text; a single word wider than the width is broken, so that nothing is cut off.
   *
   * @param width width (px), above that of any letter
   */
  static List<String> wrap(Diagram diagram, Face face, String text, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && diagram.width(face, longer) > width) {
        lines.add(line.toString());
        longer = word;
      }
      line.setLength(0);
      line.append(longer);
      while (diagram.width(face, line.toString()) > width && line.length() > 1) {
        int end = line.length() - 1;
        while (end > 1 && diagram.width(face, line.substring(0, end)) > width) {
          end--;
        }
        lines.add(line.substring(0, end));
        line.delete(0, end);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
