package flankfit.lesson;

import flankfit.finding.Place;
import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.Edit;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.Semicolon;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A program with one mode word left out, the classic accident.
 *
 * @param word the word as written
 * @param place where it stood
 * @param alone whether its block holds nothing else, so that the block is gone, too
 * @param text the program without it
 */
public record LeftOut(String word, Place place, boolean alone, SourceText text) {
  /** Functions that stay in force, times ten; the distance mode is asked for most. */
  private static final Set<Integer> MODES =
      Set.of(
          0, 10, 20, 30, 170, 180, 190, 200, 210, 400, 410, 420, 430, 440, 490, 500, 501, 540, 550,
          560, 570, 580, 590, 591, 592, 593, 690, 700, 710, 800, 900, 901, 910, 911, 930, 940, 950,
          980, 990);

  public LeftOut {
    Objects.requireNonNull(word, "word");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(text, "text");
  }

  /** The mode words of a line, in order. */
  public static List<String> words(SourceText text, ControlSwitches.Reading reading, int line) {
    return found(text, reading, line).stream().map(Found::word).toList();
  }

  /**
   * Leaves a word out.
   *
   * @param line line of the program
   * @param word which one, such as {@code G91}; when empty, G90 or G91 if the line has it, or the
   *     only mode word
   * @return empty if there is no such word, or several and none is meant
   */
  public static Optional<LeftOut> of(
      SourceText text, ControlSwitches.Reading reading, int line, Optional<String> word) {
    List<Found> all = found(text, reading, line);
    List<Found> meant = all.stream().filter(f -> f.isMeant(word)).toList();
    if (meant.isEmpty() && word.isEmpty()) {
      meant = all;
    }
    return meant.size() == 1 ? Optional.of(meant.get(0).leaveOut(text)) : Optional.empty();
  }

  private record Found(String word, int code, Place place, boolean alone) {
    boolean isMeant(Optional<String> wanted) {
      return wanted.isEmpty()
          ? code == 900 || code == 910
          : plain(wanted.get()).equals(plain(word));
    }

    private static String plain(String word) {
      return word.replaceAll("\\s", "").toUpperCase(Locale.ROOT).replaceFirst("^G0+(?=\\d)", "G");
    }

    LeftOut leaveOut(SourceText text) {
      return new LeftOut(word, place, alone, text.edited(List.of(new Edit(wide(text), ""))));
    }

    /** The word with the blanks before the next one. */
    private Place wide(SourceText text) {
      String line = text.line(place.line());
      int end = place.column() - 1 + place.length();
      while (end < line.length() && line.charAt(end) == ' ') {
        end++;
      }
      return new Place(place.file(), place.line(), place.column(), end - place.column() + 1);
    }
  }

  private static List<Found> found(SourceText text, ControlSwitches.Reading reading, int line) {
    BlockReader reader =
        BlockReader.quiet(
            text, new ReadingRules(reading.semicolon() == Semicolon.END_OF_BLOCK, List.of()));
    Block block = new Block(text);
    List<Found> found = new ArrayList<>();
    while (reader.next(block)) {
      for (int i = 0; i < block.size() && block.line() == line; i++) {
        int code = (int) Math.rint(10 * block.value(i));
        if (block.letter(i) == 'G' && !block.isFormula(i) && MODES.contains(code)) {
          boolean alone = block.size() == 1 && block.sequence() < 0 && block.programNumber() < 0;
          found.add(new Found(block.text(i), code, block.place(i), alone));
        }
      }
    }
    return found;
  }
}
