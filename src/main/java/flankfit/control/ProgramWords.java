package flankfit.control;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import flankfit.unit.Tolerance;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/**
 * Which words a program and its subprograms are written with, executed or not, and which kinds of
 * move came of them: enough to know what a switch cannot matter for. Where a number is a formula,
 * every number is taken to be there.
 */
final class ProgramWords {
  private static final int CODES = 1000;
  private static final int DECIMALS_OF_INCREMENT = 3;
  private static final double NEAR = Tolerance.MODEL.value();

  private final BitSet functions = new BitSet(CODES);
  private final BitSet miscellaneous = new BitSet(CODES);
  private final BitSet letters = new BitSet();
  private final StringBuilder text = new StringBuilder();
  private boolean slashes;
  private boolean withoutPoint;
  private boolean fine;
  private boolean negativeRadius;
  private boolean unitStated;
  private boolean unitRelied;
  private boolean arcs;
  private boolean helices;
  private boolean slantedRapids;

  private ProgramWords() {}

  /**
   * Reads the texts through.
   *
   * @param texts the program, then the files with further programs
   * @param rules how they were read
   * @param tape the moves of the program
   */
  static ProgramWords of(List<SourceText> texts, ReadingRules rules, Tape tape) {
    ProgramWords words = new ProgramWords();
    for (SourceText source : texts) {
      Block block = new Block(source);
      BlockReader reader = BlockReader.quiet(source, rules);
      while (reader.next(block)) {
        words.look(block);
      }
      words.text.append(source.text(0, source.size()).toUpperCase(Locale.ROOT));
    }
    words.look(tape);
    return words;
  }

  /** Whether a G function is written, by its number times ten. */
  boolean g(int code) {
    return functions.get(code);
  }

  /** Whether one of a run of G functions is written, by their numbers times ten. */
  boolean gWithin(int first, int last) {
    int next = functions.nextSetBit(first);
    return next >= 0 && next <= last;
  }

  /** Whether an M function is written. */
  boolean m(int number) {
    return miscellaneous.get(number);
  }

  /** Whether one of some letters begins a word. */
  boolean anyOf(String some) {
    return some.chars().anyMatch(letters::get);
  }

  /** Whether some characters stand in the texts, comments included; capitals. */
  boolean says(String characters) {
    return text.indexOf(characters) >= 0;
  }

  /** Whether a block is under block delete. */
  boolean slashes() {
    return slashes;
  }

  /** Whether a number other than zero has no point. */
  boolean withoutPoint() {
    return withoutPoint;
  }

  /** Whether a number has more decimals than the least increment of millimetres, or is computed. */
  boolean fine() {
    return fine;
  }

  /** Whether R may be below zero. */
  boolean negativeRadius() {
    return negativeRadius;
  }

  /** Whether a dimension may be met before a unit is stated. */
  boolean reliesOnUnit() {
    return unitRelied;
  }

  /** Whether there are arcs. */
  boolean arcs() {
    return arcs;
  }

  /** Whether there are arcs that rise or fall. */
  boolean helices() {
    return helices;
  }

  /** Whether a rapid goes along more than one axis. */
  boolean slantedRapids() {
    return slantedRapids;
  }

  private void look(Block block) {
    slashes |= block.deleteLevel() > 0;
    boolean dimensions = block.statement().isPresent() || block.isMacroCall();
    for (int word = 0; word < block.size(); word++) {
      char letter = block.letter(word);
      letters.set(letter);
      boolean formula = block.isFormula(word);
      if (letter == 'G') {
        code(functions, block, word, 10);
        unitStated |= !formula && isUnit(block.value(word));
      } else if (letter == 'M') {
        code(miscellaneous, block, word, 1);
        dimensions |= formula || block.value(word) == 98;
      } else {
        number(block, word);
        dimensions |= "FIJKQRXYZ".indexOf(letter) >= 0;
      }
    }
    unitRelied |= dimensions && !unitStated;
  }

  private static boolean isUnit(double number) {
    return number == 20 || number == 21 || number == 70 || number == 71;
  }

  private static void code(BitSet codes, Block block, int word, int scale) {
    long code = block.isFormula(word) ? -1 : Math.round(block.value(word) * scale);
    if (block.isFormula(word)) {
      codes.set(0, CODES);
    } else if (code >= 0 && code < CODES) {
      codes.set((int) code);
    }
  }

  private void number(Block block, int word) {
    boolean formula = block.isFormula(word);
    withoutPoint |= !formula && !block.hadPoint(word) && block.value(word) != 0;
    fine |= formula || block.decimals(word) > DECIMALS_OF_INCREMENT;
    negativeRadius |= block.letter(word) == 'R' && (formula || block.value(word) < 0);
  }

  private void look(Tape tape) {
    for (int move = 0; move < tape.size(); move++) {
      if (tape.kind(move) == MoveKind.ARC) {
        arcs = true;
        helices |= Math.abs(tape.rise(move)) > NEAR;
      } else if (tape.kind(move) == MoveKind.RAPID) {
        slantedRapids |= axes(tape, move) > 1;
      }
    }
  }

  private static int axes(Tape tape, int move) {
    int axes = Math.abs(tape.toX(move) - tape.fromX(move)) > NEAR ? 1 : 0;
    axes += Math.abs(tape.toY(move) - tape.fromY(move)) > NEAR ? 1 : 0;
    return axes + (Math.abs(tape.toZ(move) - tape.fromZ(move)) > NEAR ? 1 : 0);
  }
}
