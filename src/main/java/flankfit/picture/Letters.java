package flankfit.picture;

import flankfit.picture.TextAtlas.Face;
import java.util.EnumMap;
import java.util.Map;

/** How wide text is in the bundled faces at scale 1, without any OpenGL. */
final class Letters {
  private static final int FIRST = 32;
  private static final int LAST = 126;
  private static final String KNOWN = plain() + TextAtlas.EXTRA;

  private final Map<Face, int[]> advances = new EnumMap<>(Face.class);

  private static String plain() {
    StringBuilder all = new StringBuilder();
    for (char c = FIRST; c <= LAST; c++) {
      all.append(c);
    }
    return all.toString();
  }

  /** Width of a text (px). */
  double width(Face face, String text) {
    int[] units = advances.computeIfAbsent(face, f -> TextAtlas.advances(f.font(), KNOWN));
    long sum = 0;
    for (int i = 0; i < text.length(); i++) {
      int known = KNOWN.indexOf(text.charAt(i));
      sum += units[known < 0 ? '?' - FIRST : known];
    }
    return sum * emSize(face) / face.font().unitsPerEm();
  }

  /** Size of a face as font size, the side of its em square (px). */
  static double emSize(Face face) {
    return face.size() * face.font().emShare();
  }

  static boolean isStrong(Face face) {
    return face.font() == BundledFont.STRONG;
  }
}
