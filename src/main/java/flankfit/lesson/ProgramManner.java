package flankfit.lesson;

import flankfit.finding.Place;
import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.Semicolon;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How a program is written, looked up in its text before it is executed: decimals, fractions, and
 * the blocks whose words depend on the distance mode.
 *
 * @param decimals most decimals of a dimension word
 * @param leadingZero whether fractions below 1 are written with 0 before the point
 * @param points whether numbers but 0 are written with a point
 * @param minding places of blocks with X, Y, Z, G90 or G91, in order
 */
record ProgramManner(int decimals, boolean leadingZero, boolean points, List<Place> minding) {
  private static final String DIMENSIONS = "XYZIJKR";

  ProgramManner {
    minding = List.copyOf(minding);
  }

  static ProgramManner of(SourceText text, ControlSwitches.Reading reading) {
    BlockReader reader =
        BlockReader.quiet(
            text, new ReadingRules(reading.semicolon() == Semicolon.END_OF_BLOCK, List.of()));
    Block block = new Block(text);
    int decimals = 0;
    int bare = 0;
    int full = 0;
    int pointed = 0;
    int whole = 0;
    List<Place> minding = new ArrayList<>();
    while (reader.next(block)) {
      boolean minds = false;
      for (int word = 0; word < block.size(); word++) {
        char letter = block.letter(word);
        boolean dimension = DIMENSIONS.indexOf(letter) >= 0;
        boolean mode = letter == 'G' && (block.value(word) == 90 || block.value(word) == 91);
        minds |= mode || "XYZ".indexOf(letter) >= 0;
        if (dimension && !block.isFormula(word)) {
          decimals = Math.max(decimals, block.decimals(word));
          String digits = block.text(word).replaceAll("[^0-9.]", "");
          bare += digits.startsWith(".") ? 1 : 0;
          boolean point = digits.contains(".");
          pointed += point ? 1 : 0;
          whole += !point && block.value(word) != 0 ? 1 : 0;
          full += digits.startsWith("0.") && digits.length() > 2 ? 1 : 0;
        }
      }
      if (minds) {
        minding.add(block.place());
      }
    }
    return new ProgramManner(decimals, full >= bare, pointed > 0 && pointed >= whole, minding);
  }

  /**
   * The manner of one word; computed ones have none of their own.
   *
   * @param word the word as written
   */
  Numeral numeral(String word, ControlSwitches.Reading reading) {
    Numeral like = Numeral.like(word.toUpperCase(Locale.ROOT));
    boolean counts = reading.numbers() == ControlSwitches.NumberReading.LEAST_INCREMENT;
    // Without a point the control would count least increments.
    // A bare 0 means the same either way, so it says nothing of how the author writes numbers.
    boolean zero = word.replaceAll("[^0-9.]", "").matches("0+");
    return new Numeral(like.point() || counts || (zero && points), like.zeros(), leadingZero);
  }
}
