package flankfit.lesson;

import flankfit.control.BlockTrace;
import flankfit.control.WordMeaning;
import flankfit.control.WordTrace;
import flankfit.lesson.Telling.Changed;
import flankfit.motion.ModalState.Distance;
import flankfit.setup.ControlSwitches;
import flankfit.unit.LengthUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Writes the words of a block in a distance mode as one line, without number and comments. */
final class WordsInMode {
  private final ControlSwitches.Reading reading;
  private boolean leadingZero = true;

  WordsInMode(ControlSwitches.Reading reading) {
    this.reading = reading;
  }

  /** The mode word of a mode. */
  static String modeWord(Distance mode) {
    return mode == Distance.ABSOLUTE ? "G90" : "G91";
  }

  /** Whether a word states the distance mode. */
  static boolean isModeWord(WordTrace word) {
    double code = word.value().orElse(-1);
    return word.meaning() == WordMeaning.PREPARATORY && (code == 90 || code == 91);
  }

  /**
   * The words in a mode.
   *
   * @param telling what changes; not for a block that cannot be said in it
   */
  String of(BlockTrace block, Distance mode, Telling telling) {
    return String.join(" ", list(block, mode, telling));
  }

  /** The same words one by one, the mode word first where the block does not state it. */
  List<String> list(BlockTrace block, Distance mode, Telling telling) {
    Map<Integer, Changed> changed = new HashMap<>();
    if (telling instanceof Telling.Words words) {
      words.changed().forEach(c -> changed.put(c.word(), c));
    }
    List<String> line = new ArrayList<>();
    if (addsModeWord(block, telling)) {
      line.add(modeWord(mode));
    }
    lookAt(block);
    for (int i = 0; i < block.words().size(); i++) {
      WordTrace word = block.words().get(i);
      Changed other = changed.get(i);
      if (word.meaning() == WordMeaning.LEFT_OUT) {
        continue;
      }
      if (isModeWord(word)) {
        line.add(modeWord(mode));
      } else if (other == null) {
        line.add(word.text());
      } else {
        line.add(word.letter() + written(word, other.value(), block.after().unit()));
      }
    }
    return line;
  }

  /** Whether the words begin with a mode word that the block does not have. */
  static boolean addsModeWord(BlockTrace block, Telling telling) {
    return telling instanceof Telling.Words
        && block.words().stream().noneMatch(WordsInMode::isModeWord);
  }

  /** Looks how the writer writes fractions below 1; what was seen last counts. */
  private void lookAt(BlockTrace block) {
    for (WordTrace word : block.words()) {
      String digits = word.text().replaceAll("[^0-9.]", "");
      if (digits.startsWith(".")) {
        leadingZero = false;
      } else if (digits.startsWith("0.") && digits.length() > 2) {
        leadingZero = true;
      }
    }
  }

  private String written(WordTrace word, double millimetres, LengthUnit unit) {
    int decimals =
        Math.max(
            Numeral.decimals(reading, unit), isNumber(word) ? Numeral.decimals(word.text()) : 0);
    BigDecimal value = Numeral.rounded(millimetres, unit, decimals);
    return numeral(word).write(value);
  }

  /** The manner of a word; a computed one has none of its own. */
  private Numeral numeral(WordTrace word) {
    Numeral like = isNumber(word) ? Numeral.like(word.text()) : new Numeral(true, 0, true);
    boolean counts = reading.numbers() == ControlSwitches.NumberReading.LEAST_INCREMENT;
    // Without a point the control would count least increments.
    return new Numeral(like.point() || counts, like.zeros(), leadingZero);
  }

  /** Whether the value of a word is a plain number. */
  static boolean isNumber(WordTrace word) {
    return word.text().matches("[A-Za-z]\\s*[-+\\s]*[0-9.][0-9.\\s]*");
  }
}
