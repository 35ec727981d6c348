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
  private int flowAt;
  private int flowLength;

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
    flowAt = -1;
    flowLength = 0;
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
    allHadPoint &= decimalCount >= 0;
    size++;
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

  void flow(int offset, int length) {
    if (flowAt < 0) {
      flowAt = offset;
      flowLength = length;
    }
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

  /** Whether it holds a variable, an expression, an assignment or a control statement. */
  public boolean isFlow() {
    return flowAt >= 0;
  }

  /** The first variable, expression or control statement as written. */
  public String flowText() {
    return source.text(flowAt, flowLength);
  }

  /** Where that stands. */
  public Place flowPlace() {
    return source.place(line, lineStart, flowAt, flowLength);
  }

  /** Whether nothing stands in it but blanks and comments. */
  boolean isBlank() {
    return size == 0
        && sequence < 0
        && programNumber < 0
        && deleteLevel == 0
        && fault.isEmpty()
        && flowAt < 0;
  }
}
