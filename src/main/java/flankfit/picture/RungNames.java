package flankfit.picture;

import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.util.List;

/** How the rungs of a ladder are named: alike for all of them, so that none goes without. */
enum RungNames {
  /** Such as "finish pass", and its line below. */
  FULL,
  /** Such as "finish", and its line below. */
  SHORT,
  /** The same without lines, every other one a row lower. */
  STAGGERED;

  private static final double GAP = 5;
  private static final double NAME = 24;
  private static final double LINE = 41;
  private static final double LOWER = 16;

  /** The fullest names that stand side by side in columns of a width (px). */
  static RungNames of(Diagram diagram, List<PassAnswer> passes, double column) {
    for (RungNames way : List.of(FULL, SHORT)) {
      if (way.fits(diagram, passes, column)) {
        return way;
      }
    }
    return STAGGERED;
  }

  private boolean fits(Diagram diagram, List<PassAnswer> passes, double column) {
    int last = passes.size() - 1;
    for (int i = 1; i <= last; i++) {
      double half =
          width(diagram, passes.get(i - 1), false) + width(diagram, passes.get(i), i == last);
      if (half / 2 + GAP > column) {
        return false;
      }
    }
    return true;
  }

  private double width(Diagram diagram, PassAnswer pass, boolean last) {
    double line = diagram.width(Face.SMALL, line(pass));
    return Math.max(line, diagram.width(face(last), words(pass)));
  }

  private Face face(boolean last) {
    return last ? Face.STRONG : this == FULL ? Face.BODY : Face.SMALL;
  }

  private String words(PassAnswer pass) {
    return this == FULL ? pass.role().word() + " pass" : pass.role().word();
  }

  private static String line(PassAnswer pass) {
    return "line " + pass.line();
  }

  /** Writes the name of one below the ladder's lower end; the last one is the strong one. */
  void name(Diagram diagram, PassAnswer pass, int index, boolean last, double x, double bottom) {
    int soft = diagram.palette().softInk();
    double row = bottom + NAME + (this == STAGGERED && index % 2 == 1 ? LOWER : 0);
    int colour = last ? diagram.palette().ink() : soft;
    diagram.label(face(last), x, row, words(pass), Align.MIDDLE, colour);
    if (this != STAGGERED) {
      diagram.label(Face.SMALL, x, bottom + LINE, line(pass), Align.MIDDLE, soft);
    }
  }
}
