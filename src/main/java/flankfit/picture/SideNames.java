package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Names beside the end of a scale, each tied by a line to what it names and pushed apart so that
 * none covers another.
 */
final class SideNames {
  private static final double ROW = 36;
  private static final double NARROW_ROW = 20;

  private final Diagram diagram;
  private final double x;
  private final boolean narrow;
  private final List<Name> names = new ArrayList<>();

  /**
   * No names yet.
   *
   * @param x column where the scale ends (px)
   * @param narrow whether there is room for a word and a figure only
   */
  SideNames(Diagram diagram, double x, boolean narrow) {
    this.diagram = diagram;
    this.x = x;
    this.narrow = narrow;
  }

  private record Name(double y, String words, String shortWords, String rule) {}

  /**
   * Adds one.
   *
   * @param y row of what is named (px)
   * @param words name and figure
   * @param shortWords the same where room is scarce
   * @param rule a line in small letters below; may be empty
   */
  void add(double y, String words, String shortWords, String rule) {
    names.add(new Name(y, words, shortWords, rule));
  }

  /** Writes all of them between two rows. */
  void draw(double top, double bottom) {
    names.sort(Comparator.comparingDouble(Name::y));
    double row = narrow ? NARROW_ROW : ROW;
    double[] wanted = names.stream().mapToDouble(Name::y).toArray();
    double[] at = apart(wanted, row, top + 8, bottom - (narrow ? 4 : 18));
    Theme.Palette palette = diagram.palette();
    for (int i = 0; i < at.length; i++) {
      Name name = names.get(i);
      diagram.line(x + 2, name.y(), x + 16, at[i], 1, palette.softInk());
      diagram.keepFree(x + 2, Math.min(name.y(), at[i]) - 1, x + 16, Math.max(name.y(), at[i]) + 1);
      Face face = narrow ? Face.SMALL : Face.STRONG;
      String words = narrow ? name.shortWords() : name.words();
      diagram.text(face, x + 21, at[i] + 4, words, Align.LEFT, palette.ink());
      if (!narrow) {
        diagram.label(Face.SMALL, x + 21, at[i] + 19, name.rule(), Align.LEFT, palette.softInk());
      }
    }
  }

  /**
   * Rows at least so far apart, in the same order, whose squared distances from the wanted ones are
   * least: with i rows taken off the i-th it is a rising fit, found by pooling neighbours.
   *
   * @see "R. E. Barlow et al., Statistical Inference under Order Restrictions, 1972, section 1.2
   *     (pool adjacent violators), from memory"
   */
  static double[] apart(double[] wanted, double row, double least, double most) {
    int n = wanted.length;
    double[] mean = new double[n];
    int[] size = new int[n];
    int pools = 0;
    for (int i = 0; i < n; i++) {
      mean[pools] = wanted[i] - i * row;
      size[pools++] = 1;
      while (pools > 1 && mean[pools - 2] > mean[pools - 1]) {
        int both = size[pools - 2] + size[pools - 1];
        mean[pools - 2] =
            (mean[pools - 2] * size[pools - 2] + mean[pools - 1] * size[pools - 1]) / both;
        size[pools - 2] = both;
        pools--;
      }
    }
    double[] at = new double[n];
    int i = 0;
    for (int pool = 0; pool < pools; pool++) {
      for (int k = 0; k < size[pool]; k++, i++) {
        double kept = Math.max(least, Math.min(most - (n - 1) * row, mean[pool]));
        at[i] = kept + i * row;
      }
    }
    return at;
  }
}
