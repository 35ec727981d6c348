package flankfit.nc;

import flankfit.finding.Code;
import flankfit.finding.Place;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * The words of one block, as columns that are used again for the next block. A word is a letter
 * (capital) and a number as written; a corner word with a comma has its letter in lower case.
 */
public final class Block {
  private static final int FIRST_CAPACITY = 16;

  private final SourceText source;
  private int line;
  private int lineStart;
  private int start;
  private int end;
  private int size;
  private byte[] letters = new byte[FIRST_CAPACITY];
  private double[] values = new double[FIRST_CAPACITY];
  private int[] at = new int[FIRST_CAPACITY];
  private int[] lengths = new int[FIRST_CAPACITY];
  private int[] digits = new int[FIRST_CAPACITY];
  private int[] decimals = new int[FIRST_CAPACITY];
  private boolean allHadPoint;
  private int sequence;
  private int programNumber;
  private int headAt;
  private int headLength;
  private int deleteLevel;
  private boolean deleted;
  private Optional<Code> fault = Optional.empty();
  private Optional<Statement> statement = Optional.empty();
  private Expression[] formulas = {};
  private boolean flow;
  private boolean macroCall;

  /** An empty block to be filled from this text. */
  public Block(SourceText source) {
    this.source = Objects.requireNonNull(source, "source");
  }

  void begin(int atLine, int atLineStart, int offset) {
    line = atLine;
    lineStart = atLineStart;
    start = offset;
    end = offset;
    size = 0;
    allHadPoint = true;
    sequence = -1;
    programNumber = -1;
    deleteLevel = 0;
    deleted = false;
    fault = Optional.empty();
    macroCall = false;
    if (flow) {
      statement = Optional.empty();
      flow = false;
    }
  }

  void end(int offset) {
    end = offset;
  }

  void add(int letter, double value, int offset, int length, int digitCount, int decimalCount) {
    if (size == letters.length) {
      grow();
    }
    letters[size] = (byte) letter;
    values[size] = value;
    at[size] = offset;
    lengths[size] = length;
    digits[size] = digitCount;
    decimals[size] = decimalCount;
    if (letter == 'G' && (value == 65 || value == 66)) {
      macroCall = true;
    }
    allHadPoint &= decimalCount >= 0;
    size++;
  }

  /** A word whose value is computed when the block is executed. */
  void addFormula(int letter, Expression formula, int offset, int length) {
    if (!flow) {
      Arrays.fill(formulas, null);
    }
    if (formulas.length <= size) {
      formulas = Arrays.copyOf(formulas, Math.max(size + 1, 2 * formulas.length));
    }
    formulas[size] = formula;
    flow = true;
    add(letter, 0, offset, length, 0, 0);
  }

  private void grow() {
    int capacity = size * 2;
    letters = Arrays.copyOf(letters, capacity);
    values = Arrays.copyOf(values, capacity);
    at = Arrays.copyOf(at, capacity);
    lengths = Arrays.copyOf(lengths, capacity);
    digits = Arrays.copyOf(digits, capacity);
    decimals = Arrays.copyOf(decimals, capacity);
  }

  void sequence(int number) {
    sequence = number;
  }

  void programNumber(int number, int offset, int length) {
    programNumber = number;
    headAt = offset;
    headLength = length;
  }

  void delete(int level, boolean on) {
    deleteLevel = level;
    deleted = on;
  }

  void fault(Code code) {
    fault = fault.isPresent() ? fault : Optional.of(code);
  }

  void statement(Statement what) {
    statement = Optional.of(what);
    flow = true;
  }

  /**
   * Becomes a block without words at the place of another, to be filled with its words.
   *
   * @see #take(Block, int)
   */
  public void beginLike(Block other) {
    begin(other.line, other.lineStart, other.start);
    end = other.end;
    sequence = other.sequence;
    programNumber = other.programNumber;
    headAt = other.headAt;
    headLength = other.headLength;
    deleteLevel = other.deleteLevel;
  }

  /** Becomes a block without words that stands where a plain one stands. */
  public void beginLike(PlainBlock plain) {
    begin(plain.line, plain.start, plain.start);
    moveTo(plain);
  }

  /** Stands where another plain block stands; remains without words. */
  public void moveTo(PlainBlock plain) {
    line = plain.line;
    lineStart = plain.start;
    start = plain.start;
    end = plain.end;
  }

  /** Takes over a word of another block of the same text. */
  public void take(Block other, int word) {
    add(
        other.letters[word],
        other.values[word],
        other.at[word],
        other.lengths[word],
        other.digits[word],
        other.decimals[word]);
  }

  /**
   * Takes over a word of another block with the value computed for it. It counts as written with a
   * point, but for P, which no control reads with one.
   */
  public void take(Block other, int word, double value) {
    boolean whole = other.letters[word] == 'P';
    add(
        other.letters[word],
        value,
        other.at[word],
        other.lengths[word],
        whole ? digitsOf(value) : 0,
        whole ? -1 : 0);
  }

  private static int digitsOf(double value) {
    int count = 1;
    for (double rest = Math.rint(Math.abs(value)); rest >= 10 && count < 20; rest /= 10) {
      count++;
    }
    return count;
  }

  /** An empty block of the same text. */
  public Block another() {
    return new Block(source);
  }

  /** Whether two blocks are of one text. */
  public boolean sharesText(Block other) {
    return source.equals(other.source);
  }

  /** The same block, to be kept while this one is used again. */
  public Block copy() {
    Block copy = new Block(source);
    copy.beginLike(this);
    copy.letters = Arrays.copyOf(letters, size);
    copy.values = Arrays.copyOf(values, size);
    copy.at = Arrays.copyOf(at, size);
    copy.lengths = Arrays.copyOf(lengths, size);
    copy.digits = Arrays.copyOf(digits, size);
    copy.decimals = Arrays.copyOf(decimals, size);
    copy.size = size;
    copy.allHadPoint = allHadPoint;
    copy.deleted = deleted;
    copy.fault = fault;
    copy.statement = statement;
    copy.formulas = flow ? Arrays.copyOf(formulas, size) : formulas;
    copy.flow = flow;
    copy.macroCall = macroCall;
    return copy;
  }

  /** Whether there are no words but expressions behind X, Y and Z, each once at most. */
  public boolean isComputedPoint() {
    int axes = 0;
    for (int word = 0; word < size; word++) {
      int axis = letters[word] - 'X';
      if (axis < 0 || axis > 2 || (axes & (1 << axis)) != 0 || !isFormula(word)) {
        return false;
      }
      axes |= 1 << axis;
    }
    return axes != 0;
  }

  /** Line of the text, from 1. */
  public int line() {
    return line;
  }

  /** Number of words, sequence and program number apart. */
  public int size() {
    return size;
  }

  /** Letter of a word. */
  public char letter(int word) {
    return (char) letters[word];
  }

  /** Number of a word as written. */
  public double value(int word) {
    return values[word];
  }

  /** Whether the number of a word has a decimal point. */
  public boolean hadPoint(int word) {
    return decimals[word] >= 0;
  }

  /** Whether the number of every word has a decimal point. */
  public boolean allHadPoint() {
    return allHadPoint;
  }

  /** How many digits follow the point; 0 without one. */
  public int decimals(int word) {
    return Math.max(0, decimals[word]);
  }

  /** How many digits the number of a word has, leading zeros included. */
  public int digits(int word) {
    return digits[word];
  }

  /** A word as written. */
  public String text(int word) {
    return source.text(at[word], lengths[word]);
  }

  /** Where a word stands. */
  public Place place(int word) {
    return source.place(line, lineStart, at[word], lengths[word]);
  }

  /** Where the block stands. */
  public Place place() {
    return source.place(line, lineStart, start, end - start);
  }

  /** The sequence number; -1 for none. */
  public int sequence() {
    return sequence;
  }

  /** The program number that the block begins with; -1 for none. */
  public int programNumber() {
    return programNumber;
  }

  /** The program number as written. */
  public String programText() {
    return source.text(headAt, headLength);
  }

  /** Where the program number stands. */
  public Place programPlace() {
    return source.place(line, lineStart, headAt, headLength);
  }

  /** Level of block delete, 1 to 9; 0 when the block has no slash. */
  public int deleteLevel() {
    return deleteLevel;
  }

  /** Whether block delete skips this block. */
  public boolean deleted() {
    return deleted;
  }

  /** The first reading error that stops here. */
  public Optional<Code> fault() {
    return fault;
  }

  /** Whether it holds an assignment, a control statement, or a word with a value to compute. */
  public boolean isFlow() {
    return flow;
  }

  /** The assignment or control statement that it is; empty for words. */
  public Optional<Statement> statement() {
    return statement;
  }

  /** Whether the value of a word must be computed. */
  public boolean isFormula(int word) {
    return flow && word < formulas.length && formulas[word] != null;
  }

  /**
   * What gives the value of a word.
   *
   * @throws IllegalArgumentException if the word has a plain number
   */
  public Expression formula(int word) {
    if (!isFormula(word)) {
      throw new IllegalArgumentException("word must have a value to compute: " + word);
    }
    return formulas[word];
  }

  /** Whether one of its words is G65 or G66, which take all others as arguments. */
  public boolean isMacroCall() {
    return macroCall;
  }

  /** Offset in the text where it begins. */
  public int offset() {
    return start;
  }

  /** Offset in the text where the line begins in which it begins. */
  public int lineStart() {
    return lineStart;
  }

  /** The whole block as written, comments included, without blanks at its ends. */
  public String text() {
    return source.text(start, end - start).strip();
  }

  /** A stretch of the text of this block as written. */
  public String textAt(int offset, int length) {
    return source.text(offset, length);
  }

  /** Where a stretch of this block stands. */
  public Place placeAt(int offset, int length) {
    return source.place(line, lineStart, offset, length);
  }

  /** Whether nothing has been read yet but a slash or a sequence number. */
  boolean isBare() {
    return mayState() && programNumber < 0;
  }

  /** Whether a statement may begin: after a program or sequence number at most. */
  boolean mayState() {
    return size == 0 && !flow;
  }

  /** Whether nothing stands in it but blanks and comments. */
  boolean isBlank() {
    return size == 0
        && sequence < 0
        && programNumber < 0
        && deleteLevel == 0
        && fault.isEmpty()
        && !flow;
  }
}
