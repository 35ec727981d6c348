package flankfit.finding;

import java.util.Objects;

/**
 * Where a finding points: the smallest guilty span of a file.
 *
 * @param file name of the file as the user gave it
 * @param line line, from 1; 0 when the whole file is meant
 * @param column column in characters, from 1; 0 when the whole line is meant
 * @param length length of the span in characters; 0 when unknown
 */
public record Place(String file, int line, int column, int length) implements Comparable<Place> {
  public Place {
    Objects.requireNonNull(file, "file");
    if (line < 0 || column < 0 || length < 0) {
      throw new IllegalArgumentException(
          "line, column and length must not be negative: " + line + ", " + column + ", " + length);
    }
  }

  /** The whole of a file. */
  public static Place file(String file) {
    return new Place(file, 0, 0, 0);
  }

  @Override
  public int compareTo(Place other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }
}
