package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches.CallForm;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;

/** Reads the words of M98, M99, G65, G66 and G67. Reports FL22, FL30 and the faults of words. */
final class Calls {
  /** How deep calls of every kind may nest. */
  static final int DEEPEST = 10;

  private static final int NONE = -1;
  private static final int MOST_TIMES = 9999;
  private static final int SPLIT_DIGITS = 4;
  private static final int MOST_DIGITS = 8;
  private static final int SPLIT = 10_000;
  private static final int LOCALS = 34;

  /** Number of the local variable that a letter fills, A to Z; 0 for letters that fill none. */
  private static final int[] ARGUMENT = {
    1, 2, 3, 7, 8, 9, 0, 11, 4, 5, 6, 0, 13, 0, 0, 0, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26
  };

  private final BlockWords words;
  private final Report report;
  private final CallForm form;
  private final IntPredicate exists;
  private Optional<Call> modal = Optional.empty();
  private boolean modalOn;
  private boolean withinModal;
  private Block functions;

  /**
   * @param block a block of the text that is executed first
   * @param exists whether there is a program of a number
   */
  Calls(Machine machine, Block block, IntPredicate exists) {
    functions = block.another();
    words = machine.words;
    report = machine.report;
    form = machine.switches.flow().callForm();
    this.exists = exists;
  }

  /** Number of the local variable that an argument's letter fills; 0 for none. */
  static int variableOf(char letter) {
    return letter >= 'A' && letter <= 'Z' ? ARGUMENT[letter - 'A'] : 0;
  }

  /** The call that every motion makes while G66 is on. */
  Optional<Call> modal() {
    return modal;
  }

  /** Whether a motion calls a program; not within one that a motion has called. */
  boolean isModal() {
    return modalOn && !withinModal;
  }

  void withinModal(boolean on) {
    withinModal = on;
  }

  /** The G functions beside G65 or G66. */
  Block otherFunctions() {
    return functions;
  }

  /** Takes over the call of G66 that another run left on. */
  void takeOverModal(Calls other) {
    modal = other.modal;
    modalOn = other.modalOn;
  }

  void endModal() {
    modal = Optional.empty();
    modalOn = false;
  }

  /** M98 of the present block; empty after an error, or when it is called no times. */
  Optional<Call> subprogram() {
    int word = words.word('P');
    if (word == NONE) {
      missing(words.mWord(MCode.STOP), "M98");
      return Optional.empty();
    }
    Block block = words.block();
    int number = number(block, word);
    int times = words.has('L') ? times(block, words.word('L')) : NONE;
    if (report.stopped()) {
      return Optional.empty();
    }
    int program = number;
    if (form != CallForm.PLAIN && block.digits(word) > SPLIT_DIGITS && splits(number, word)) {
      program = number % SPLIT;
      times = Math.max(1, number / SPLIT);
    }
    if (report.stopped()) {
      return Optional.empty();
    }
    Place place = block.place(word);
    return called(new Call(program, times == NONE ? 1 : times, Optional.empty(), false, place));
  }

  /** Whether P of five digits and more is count and program. */
  private boolean splits(int number, int word) {
    boolean counted = words.has('L');
    if (form == CallForm.SPLIT) {
      if (counted) {
        String text = words.block().text(word);
        report.add(
            Code.FL22,
            word,
            text + " is ambiguous: it holds a count, and so does L",
            unclear(number),
            "write Pnnnn Ln");
      }
      return true;
    }
    if (counted || number < SPLIT) {
      return false;
    }
    boolean whole = exists.test(number);
    boolean split = exists.test(number % SPLIT);
    if (whole && split) {
      report.add(
          Code.FL22,
          word,
          words.block().text(word) + " is ambiguous",
          unclear(number),
          "write Pnnnn Ln");
    }
    return split || !whole;
  }

  private static String unclear(int number) {
    return "program " + number + ", or " + number % SPLIT + " " + number / SPLIT + " times";
  }

  private void missing(int word, String function) {
    report.add(
        Code.FL22,
        word,
        "P is missing",
        function + " calls the program of number P",
        "write Pnnnn Ln");
  }

  private Optional<Call> called(Call call) {
    if (call.times() > 0) {
      return Optional.of(call);
    }
    report.add(
        Code.FL30,
        call.place(),
        "O" + call.program() + " called 0 times",
        "L is 0",
        "L1, or delete the call");
    return Optional.empty();
  }

  private int number(Block block, int word) {
    if (!words.whole(block, word)) {
      return 0;
    }
    double value = Math.rint(block.value(word));
    if (value < 0 || block.digits(word) > MOST_DIGITS) {
      outOfRange(block, word, "0 to 99999999", "P is the number of a program or block");
      return 0;
    }
    return (int) value;
  }

  private int times(Block block, int word) {
    if (!words.whole(block, word)) {
      return 0;
    }
    double value = Math.rint(block.value(word));
    if (value < 0 || value > MOST_TIMES) {
      outOfRange(block, word, "0 to " + MOST_TIMES, "L says how often");
      return 0;
    }
    return (int) value;
  }

  private void outOfRange(Block block, int word, String range, String why) {
    report.add(Code.WD11, word, block.text(word) + " is out of range " + range, why, "correct it");
  }

  /** Where M99 of the present block goes on in the caller: the number P, or -1. */
  int returnTarget() {
    int word = words.word('P');
    return word == NONE ? NONE : number(words.block(), word);
  }

  /**
   * Reads a block of G65 or G66: every other letter but G, L, N, O and P is an argument.
   *
   * @return the call of G65; that of G66 is kept for the motions to come
   */
  Optional<Call> macro(Block block) {
    functions = functions.sharesText(block) ? functions : block.another();
    functions.beginLike(block);
    double[] arguments = new double[LOCALS];
    Arrays.fill(arguments, Double.NaN);
    int[] first = new int['Z' + 1];
    Arrays.fill(first, NONE);
    for (int word = 0; word < block.size() && !report.stopped(); word++) {
      char letter = block.letter(word);
      if (letter == 'G' && !isCall(block, word)) {
        functions.take(block, word);
      } else {
        macroWord(block, word, letter, first, arguments);
      }
    }
    if (report.stopped()) {
      return Optional.empty();
    }
    return macro(block, first, arguments);
  }

  private static boolean isCall(Block block, int word) {
    return block.value(word) == 65 || block.value(word) == 66;
  }

  private void macroWord(Block block, int word, char letter, int[] first, double[] arguments) {
    if (letter > 'Z') {
      report.add(
          Code.WD05, word, block.text(word) + " is not modelled", "corner word", "write it out");
      return;
    }
    if (first[letter] != NONE) {
      String before = block.text(first[letter]);
      if (letter == 'G') {
        report.add(
            Code.WD03,
            word,
            before + " and " + block.text(word) + " exclude each other",
            "both call a program",
            "keep one, or use two blocks");
        return;
      }
      report.add(
          Code.WD02,
          word,
          letter + " stands twice (" + before + ", " + block.text(word) + ")",
          "only one can be meant",
          "delete one");
      return;
    }
    first[letter] = word;
    if (ARGUMENT[letter - 'A'] > 0) {
      arguments[ARGUMENT[letter - 'A']] = block.value(word);
    }
  }

  private Optional<Call> macro(Block block, int[] first, double[] arguments) {
    boolean once = block.value(first['G']) == 65;
    String name = once ? "G65" : "G66";
    if (!once && modal.isPresent()) {
      report.add(
          Code.WD01,
          first['G'],
          "G66 while G66 is on is not modelled: nested modal call",
          "its motion would be guessed",
          "end the first with G67");
      return Optional.empty();
    }
    if (first['P'] == NONE) {
      missing(first['G'], name);
      return Optional.empty();
    }
    int program = number(block, first['P']);
    int times = first['L'] == NONE ? 1 : times(block, first['L']);
    if (report.stopped()) {
      return Optional.empty();
    }
    Place place = block.place(first['P']);
    Optional<Call> call = called(new Call(program, times, Optional.of(arguments), !once, place));
    if (once) {
      return call;
    }
    modal = call;
    modalOn = call.isPresent();
    return Optional.empty();
  }
}
