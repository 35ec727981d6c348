package flankfit.control;

import flankfit.finding.Code;
import flankfit.nc.Block;

/**
 * The words of one block by letter and by group of function. Reports what is wrong with the words
 * alone: WD01 to WD03, WD05 to WD08, WD10, WD13. Used again for every block.
 */
final class BlockWords {
  private static final int LETTERS = 26;
  private static final int NONE = -1;
  private static final int MANY_M = 3;
  private static final double WHOLE = 1e-4;

  /** Letters of which a word needs no look but whether it stands alone. */
  private static final int PLAIN =
      bit('X') | bit('Y') | bit('Z') | bit('I') | bit('J') | bit('K') | bit('R') | bit('F');

  private static final int AXES_AND_FEED = bit('X') | bit('Y') | bit('Z') | bit('F');

  private final Report report;
  private final int[] byLetter = new int[LETTERS];
  private final int[] gWord = new int[GCode.GROUPS];
  private final int[] gCode = new int[GCode.GROUPS];
  private final int[] mWord = new int[MCode.GROUPS];
  private final int[] mCode = new int[MCode.GROUPS];

  // Which entries of the arrays hold something: cheaper than clearing them for every block.
  private int letters;
  private int gGroups;
  private int mGroups;
  private Block block;
  private int mist;
  private int flood;
  private int coolantOff;
  private int mCount;
  private boolean simple;

  BlockWords(Report report, Block block) {
    this.report = report;
    this.block = block;
  }

  /** Sorts the words of a block; the report stops when they contradict each other. */
  void decode(Block next) {
    block = next;
    letters = 0;
    gGroups = 0;
    mGroups = 0;
    mist = NONE;
    flood = NONE;
    coolantOff = NONE;
    mCount = 0;
    simple = true;
    for (int word = 0; word < next.size() && !report.stopped(); word++) {
      char letter = next.letter(word);
      boolean first = letter <= 'Z' && (bit(letter) & PLAIN & ~letters) != 0;
      if (first) {
        keep(letter, word);
      } else {
        sort(word);
      }
    }
    if (mCount > MANY_M) {
      report.add(
          Code.WD13,
          NONE,
          mCount + " M functions in one block",
          "many controls take one, or three",
          "use more blocks");
    }
  }

  private void sort(int word) {
    char letter = block.letter(word);
    switch (letter) {
      case 'X', 'Y', 'Z', 'I', 'J', 'K', 'R', 'F' -> once(letter, word);
      case 'G' -> preparatory(word);
      case 'M' -> miscellaneous(word);
      case 'A', 'B', 'C' -> rotary(letter, word);
      case 'E', 'U', 'V', 'W' -> notModelled(word, "no such axis is modelled");
      case 'c', 'r' -> notModelled(word, "corner word");
      case 'T', 'D', 'H', 'L' -> {
        simple = false;
        whole(word);
        once(letter, word);
      }
      default -> {
        simple = false;
        once(letter, word);
      }
    }
  }

  private void once(char letter, int word) {
    int before = word(letter);
    if (before == NONE) {
      keep(letter, word);
    } else {
      twice(letter, before, word);
    }
  }

  private void keep(char letter, int word) {
    byLetter[letter - 'A'] = word;
    letters |= bit(letter);
  }

  private void twice(char letter, int before, int word) {
    report.add(
        Code.WD02,
        word,
        letter + " stands twice (" + block.text(before) + ", " + block.text(word) + ")",
        "only one can be meant",
        "delete one");
  }

  private void rotary(char letter, int word) {
    if (block.value(word) != 0) {
      notModelled(word, "rotary axis");
      return;
    }
    report.add(
        Code.WD06,
        word,
        block.text(word) + " ignored",
        "no rotary axis is modelled",
        "none needed");
    once(letter, word);
  }

  private void notModelled(int word, String why) {
    report.add(Code.WD05, word, block.text(word) + " is not modelled", why, "write it out");
  }

  /** WD10 unless the number of a word is whole; returns whether it is. */
  boolean whole(int word) {
    return whole(block, word);
  }

  /** WD10 unless the number of a word of the block being executed is whole. */
  boolean whole(Block in, int word) {
    double value = in.value(word);
    if (Math.abs(value - Math.rint(value)) <= WHOLE) {
      return true;
    }
    report.add(
        Code.WD10,
        word,
        in.text(word) + " is not a whole number",
        in.letter(word) + " is a number of something",
        "correct it");
    return false;
  }

  private void preparatory(int word) {
    double tenfold = block.value(word) * 10;
    long code = Math.round(tenfold);
    if (Math.abs(tenfold - code) > WHOLE * 10) {
      report.add(
          Code.WD10,
          word,
          block.text(word) + " is not a whole number",
          "G functions have one decimal at most",
          "correct it");
      return;
    }
    int group = code < 0 || code > Integer.MAX_VALUE ? GCode.UNKNOWN : GCode.group((int) code);
    if (group == GCode.UNKNOWN || group == GCode.LATER) {
      unknown(word, (int) Math.max(-1, Math.min(code, Integer.MAX_VALUE)), group);
      return;
    }
    simple &= group == GCode.MOTION && code < CycleKind.FIRST_CODE;
    if (group == GCode.STATED) {
      return;
    }
    if (gWord(group) != NONE) {
      excludes(word, (int) code, group);
      return;
    }
    gGroups |= 1 << group;
    gWord[group] = word;
    gCode[group] = (int) code;
  }

  private void unknown(int word, int code, int group) {
    String text = GCode.group(code) == GCode.LATER ? GCode.text(code) : capital(word);
    String meaning = GCode.commonMeaning(code);
    boolean later = group == GCode.LATER;
    report.add(
        Code.WD01,
        word,
        text + " is not modelled" + (meaning.isEmpty() ? "" : ": " + meaning),
        later
            ? "this version does not model it; its motion would be guessed"
            : "its motion would be guessed",
        "take it out, or write the motion with G0 to G3");
  }

  private String capital(int word) {
    return block.letter(word) + block.text(word).substring(1).strip();
  }

  private void excludes(int word, int code, int group) {
    if (gCode[group] == code) {
      report.add(
          Code.WD03,
          word,
          GCode.text(code) + " stands twice",
          "the " + GCode.groupName(group) + " is set once in a block",
          "delete one");
      return;
    }
    report.add(
        Code.WD03,
        word,
        GCode.text(gCode[group]) + " and " + GCode.text(code) + " exclude each other",
        "both set the " + GCode.groupName(group),
        "keep one, or use two blocks");
  }

  private void miscellaneous(int word) {
    simple = false;
    mCount++;
    if (!whole(word)) {
      return;
    }
    double value = Math.rint(block.value(word));
    int code = value < 0 || value > 9999 ? NONE : (int) value;
    int group = MCode.group(code);
    if (group == MCode.UNKNOWN) {
      report.add(
          Code.WD07,
          word,
          capital(word) + ": no effect modelled",
          "its meaning is the machine builder’s",
          "check that it moves nothing");
    } else if (group == MCode.COOLANT) {
      coolant(word, code);
    } else if (mWord(group) != NONE) {
      excludes(word, mCode[group], code, group);
    } else {
      mGroups |= 1 << group;
      mWord[group] = word;
      mCode[group] = code;
    }
  }

  private void excludes(int word, int first, int second, int group) {
    boolean same = first == second;
    report.add(
        Code.WD08,
        word,
        same
            ? "M" + first + " stands twice"
            : "M" + first + " and M" + second + " exclude each other",
        "both set the " + MCode.groupName(group),
        "keep one");
  }

  /** M7 and M8 may both be on; M9 ends both. */
  private void coolant(int word, int code) {
    boolean clash = code == 9 ? mist != NONE || flood != NONE : coolantOff != NONE;
    int before = code == 7 ? mist : code == 8 ? flood : coolantOff;
    if (clash || before != NONE) {
      int other = before != NONE ? code : code == 9 ? (mist != NONE ? 7 : 8) : 9;
      excludes(word, other, code, MCode.COOLANT);
    } else if (code == 7) {
      mist = word;
    } else if (code == 8) {
      flood = word;
    } else {
      coolantOff = word;
    }
  }

  /** Whether nothing but coordinates, arc words, F and a motion function stands in the block. */
  boolean isSimple() {
    return simple;
  }

  Block block() {
    return block;
  }

  /** Index of the word of a letter; -1 for none. */
  int word(char letter) {
    return has(letter) ? byLetter[letter - 'A'] : NONE;
  }

  boolean has(char letter) {
    return (letters & bit(letter)) != 0;
  }

  private static int bit(char letter) {
    return 1 << (letter - 'A');
  }

  /** Whether nothing but coordinates and F stands in the block: no function, no other word. */
  boolean onlyAxesAndFeed() {
    return simple && gGroups == 0 && (letters & ~AXES_AND_FEED) == 0;
  }

  /** Number of the word of a letter, which must be there. */
  double value(char letter) {
    return block.value(byLetter[letter - 'A']);
  }

  boolean hasAxis() {
    return has('X') || has('Y') || has('Z');
  }

  /** Index of the word of axis 0 X, 1 Y, 2 Z; -1 for none. */
  int axis(int axis) {
    return word((char) ('X' + axis));
  }

  /** Index of the centre word along axis 0 to 2: I, J, K; -1 for none. */
  int centre(int axis) {
    return word((char) ('I' + axis));
  }

  boolean hasCentre() {
    return has('I') || has('J') || has('K');
  }

  /** The function of a group, times ten; -1 for none. */
  int g(int group) {
    return gWord(group) == NONE ? NONE : gCode[group];
  }

  int gWord(int group) {
    return (gGroups & (1 << group)) != 0 ? gWord[group] : NONE;
  }

  /** The function of a group of M; -1 for none. */
  int m(int group) {
    return mWord(group) == NONE ? NONE : mCode[group];
  }

  int mWord(int group) {
    return (mGroups & (1 << group)) != 0 ? mWord[group] : NONE;
  }

  boolean mist() {
    return mist != NONE;
  }

  boolean flood() {
    return flood != NONE;
  }

  int coolantOff() {
    return coolantOff;
  }

  /** The function of group 0 that takes the axis words, times ten; -1 for none. */
  int axisTaker() {
    int code = g(GCode.ONE_BLOCK);
    boolean takes =
        switch (code) {
          case 100, 280, 300, 520, 920 -> true;
          case 40 -> has('X');
          default -> false;
        };
    if (takes) {
      return code;
    }
    int group = frameTaker();
    return group == NONE ? NONE : g(group);
  }

  /** Group of the first function of scale, mirror and rotation that takes axis words. */
  private int frameTaker() {
    if (g(GCode.SCALE) == 510) {
      return GCode.SCALE;
    }
    if (g(GCode.ROTATION) == 680) {
      return GCode.ROTATION;
    }
    boolean mirrors = g(GCode.MIRROR) == 511 || (g(GCode.MIRROR) == 501 && hasAxis());
    return mirrors ? GCode.MIRROR : NONE;
  }

  /** Index of the word of {@link #axisTaker}. */
  int axisTakerWord() {
    int taker = axisTaker();
    return gWord(taker == g(GCode.ONE_BLOCK) ? GCode.ONE_BLOCK : frameTaker());
  }

  /** How many functions of the block take axis words. */
  int axisTakers() {
    int count = axisTaker() >= 0 && axisTaker() == g(GCode.ONE_BLOCK) ? 1 : 0;
    count += g(GCode.SCALE) == 510 ? 1 : 0;
    count += g(GCode.ROTATION) == 680 ? 1 : 0;
    return count + (g(GCode.MIRROR) == 511 || (g(GCode.MIRROR) == 501 && hasAxis()) ? 1 : 0);
  }

  /** Whether the block ends a cycle: G80, or G0 to G3. */
  boolean endsCycle() {
    return g(GCode.CYCLE_END) >= 0
        || (g(GCode.MOTION) >= 0 && g(GCode.MOTION) < CycleKind.FIRST_CODE);
  }
}
