package flankfit.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads designations of Unified threads.
 *
 * @see "ASME B1.1, section 6: screw thread designation"
 */
final class UnifiedDesignation {
  /** Size in four ways, threads per inch, series, class, gauging system, hand. */
  private static final Pattern WHOLE =
      Pattern.compile(
          "(?:(\\d{1,2})[- ](\\d{1,3})/(\\d{1,3})"
              + "|(\\d{1,3})/(\\d{1,3})"
              + "|(\\d{0,3}\\.\\d{1,6})"
              + "|(#?) ?(\\d{1,3}))"
              + "-(\\d{1,3}(?:\\.\\d{1,3})?|4[- ]1/2)"
              + "(?:[- ]?((?!LH)[A-Z][A-Z.]*))?"
              + "(?:[- ]?(\\d[A-Z]?))??"
              + "(?: ?\\((2[123])\\))?"
              + "([- ]LH)?");

  private static final Pattern METRIC_SIZE = Pattern.compile("\\d[\\d.]* ?x");
  private static final Pattern WITHOUT_THREADS =
      Pattern.compile("(#?[\\d./-]*\\d) ?-?UN[A-Z]*(?:-.*)?");

  /** Largest share of the diameter a pitch may have: 6-32 has nearly a quarter (1). */
  private static final int DIAMETER_BY_PITCH = 4;

  private static final double SMALLEST = 0.06;
  private static final double LARGEST = 6;
  private static final double FINEST = 80;
  private static final double COARSEST = 2;

  private final InchSize size;
  private final double n;
  private final List<String> notes = new ArrayList<>();

  private UnifiedDesignation(InchSize size, double n) {
    this.size = size;
    this.n = n;
  }

  /** The thread of a designation whose text is uniform. */
  static ThreadSpec parse(String text) throws InvalidDesignationException {
    Matcher m = WHOLE.matcher(DesignationText.upper(text));
    if (!m.matches()) {
      throw notReadable(text);
    }
    double n =
        m.group(9).startsWith("4") && m.group(9).endsWith("/2")
            ? 4.5
            : Double.parseDouble(m.group(9));
    UnifiedDesignation designation = new UnifiedDesignation(size(m, n), n);
    designation.requireRange();
    UnifiedClass threadClass = designation.threadClass(m.group(11), m.group(10));
    UnifiedSeries series = designation.series(m.group(10), threadClass);
    if (m.group(12) != null) {
      designation.notes.add(
          "gauging system " + m.group(12) + ": named only, the limits are the same");
    }
    return new UnifiedThread(designation.size, n, series, threadClass, m.group(13) != null)
        .toSpec(designation.notes);
  }

  /** Names what is missing, where that is plain: the M, or the threads per inch. */
  private static InvalidDesignationException notReadable(String text) {
    String what = text + " is not a Unified thread designation";
    String why = "size, threads per inch, series and class follow each other";
    if (METRIC_SIZE.matcher(text).lookingAt()) {
      return new InvalidDesignationException(
          what, "a metric designation begins with M", "write M" + text);
    }
    Matcher series = WITHOUT_THREADS.matcher(DesignationText.upper(text));
    if (series.matches()) {
      return new InvalidDesignationException(
          text + " names no threads per inch",
          why,
          "write them behind " + series.group(1) + " and a hyphen, as in 1/2-13 UNC-2B");
    }
    return new InvalidDesignationException(
        what, why, "write a designation such as 1/2-13 UNC-2B, #10-32 UNF-2B or .500-20 UNF-3B");
  }

  private static InchSize size(Matcher m, double n) throws InvalidDesignationException {
    if (m.group(2) != null) {
      return fraction(m.group(1), m.group(2), m.group(3));
    }
    if (m.group(4) != null) {
      return fraction("0", m.group(4), m.group(5));
    }
    if (m.group(6) != null) {
      return InchSize.decimal(m.group(6));
    }
    return whole(Integer.parseInt(m.group(8)), !m.group(7).isEmpty(), n);
  }

  private static InchSize fraction(String whole, String numerator, String denominator)
      throws InvalidDesignationException {
    int a = Integer.parseInt(numerator);
    int b = Integer.parseInt(denominator);
    Optional<InchSize> size = InchSize.fraction(Integer.parseInt(whole), a, b);
    if (size.isPresent()) {
      return size.get();
    }
    double value = Integer.parseInt(whole) + (b == 0 ? 0 : a / (double) b);
    throw new InvalidDesignationException(
        numerator + "/" + denominator + " is not a size in fractions of an inch",
        "the fraction is below 1 and goes by halves, quarters, eighths down to 64ths",
        "the nearest sixteenth is " + sixteenth(value) + "; other sizes are written as decimals");
  }

  private static String sixteenth(double inches) {
    return InchSize.fractionText((int) Math.max(1, Rounding.steps(inches * 16)), 16);
  }

  /** A whole number: a gauge number with its sign, or where that diameter could take the pitch. */
  private static InchSize whole(int number, boolean sign, double n)
      throws InvalidDesignationException {
    Optional<InchSize> gauge = InchSize.number(number);
    if (gauge.isPresent() && (sign || fits(gauge.get(), n) || number == 0 || number > LARGEST)) {
      return gauge.get();
    }
    if (!sign && number > 0 && number <= LARGEST) {
      return new InchSize(number * 1_000_000L);
    }
    throw new InvalidDesignationException(
        "there is no Unified size number " + number,
        "the numbers of ASME B1.1 are 0 to 6, 8, 10 and 12; sizes in inches go up to 6",
        "write " + nearestNumbers(number));
  }

  private static String nearestNumbers(int number) {
    return switch (number) {
      case 7 -> "#6 or #8";
      case 9 -> "#8 or #10";
      case 11 -> "#10 or #12";
      default -> "#12, or a larger size as a fraction of an inch";
    };
  }

  private static boolean fits(InchSize size, double n) {
    return size.inches() * n >= DIAMETER_BY_PITCH;
  }

  private void requireRange() throws InvalidDesignationException {
    if (size.inches() < SMALLEST || size.inches() > LARGEST) {
      throw new InvalidDesignationException(
          "the diameter " + Rounding.text(size.inches()) + " in is out of range",
          "Unified threads go from #0, 0.06 in, to 6 in",
          size.inches() < SMALLEST ? "the smallest is #0-80 UNF" : "the largest is 6 in");
    }
    if (n < COARSEST || n > FINEST) {
      throw new InvalidDesignationException(
          Rounding.text(n) + " threads per inch are out of range",
          "Unified threads have 80 threads per inch at finest, and 2 at coarsest here",
          "write " + inSeries());
    }
    if (!fits(size, n)) {
      throw new InvalidDesignationException(
          Rounding.text(n) + " threads per inch are too coarse for the size " + size.text(),
          "the pitch is above a quarter of the diameter, coarser than any thread of ASME B1.1",
          "write " + inSeries());
    }
  }

  private UnifiedClass threadClass(String written, String seriesWord)
      throws InvalidDesignationException {
    if (written == null) {
      notes.add("no class is written: 2B for a hole is assumed, the ordinary class");
      return UnifiedClass.CLASS_2B;
    }
    Optional<UnifiedClass> known = UnifiedClass.named(written);
    if (known.isPresent()) {
      return known.get();
    }
    String word = seriesWord == null ? UnifiedSeries.of(size, n).name() : seriesWord;
    String start = "write " + UnifiedThread.text(size, n) + " " + word + "-";
    char grade = written.charAt(0);
    boolean gradeKnown = grade >= '1' && grade <= '3';
    throw new InvalidDesignationException(
        written + " is not a class of Unified threads",
        "ASME B1.1 has 1B, 2B and 3B for holes, 1A, 2A and 3A for screws",
        gradeKnown
            ? start + grade + "B for a hole or -" + grade + "A for a screw"
            : start + "2B for a hole or -2A for a screw");
  }

  private UnifiedSeries series(String word, UnifiedClass threadClass)
      throws InvalidDesignationException {
    UnifiedSeries actual = UnifiedSeries.of(size, n);
    String thread = UnifiedThread.text(size, n);
    String correct = thread + " " + actual + "-" + threadClass.text();
    if (word == null) {
      if (actual == UnifiedSeries.UNS) {
        throw new InvalidDesignationException(
            thread + " belongs to no standard series, and no series is written",
            "ASME B1.1 lists no such pair of size and threads per inch",
            "write " + inSeries() + "; for a special thread " + correct);
      }
      notes.add("no series is written: " + actual + " is the one that lists " + thread);
      return actual;
    }
    Optional<UnifiedSeries> written = UnifiedSeries.named(word);
    if (written.isEmpty()) {
      throw new InvalidDesignationException(
          word + " is not a series of Unified threads known here",
          "the series known here are UNC, UNF, UNEF, UN and UNS",
          "write " + correct);
    }
    if (written.get() != actual) {
      throw new InvalidDesignationException(
          thread + " is not " + word,
          whyNot(written.get(), actual),
          instead(written.get(), actual, correct, threadClass));
    }
    return actual;
  }

  private String whyNot(UnifiedSeries written, UnifiedSeries actual) {
    if (actual != UnifiedSeries.UNS) {
      return "ASME B1.1 lists " + UnifiedThread.text(size, n) + " as " + actual;
    }
    OptionalDouble threads = written.threadsPerInch(size);
    return threads.isPresent()
        ? written
            + " has "
            + Rounding.text(threads.getAsDouble())
            + " threads per inch at "
            + size.text()
            + "; "
            + Rounding.text(n)
            + " are in no standard series"
        : written + " has no such pair of size and threads per inch, nor has another series";
  }

  private String instead(
      UnifiedSeries written, UnifiedSeries actual, String correct, UnifiedClass threadClass) {
    if (actual != UnifiedSeries.UNS) {
      return "write " + correct;
    }
    InchSize near = written.nearest(size).orElse(size);
    OptionalDouble threads = written.threadsPerInch(near);
    String special = correct + " for a special thread";
    return threads.isPresent()
        ? "write "
            + UnifiedThread.text(near, threads.getAsDouble())
            + " "
            + written
            + "-"
            + threadClass.text()
            + ", or "
            + special
        : "write " + special + ", or " + inSeries();
  }

  /** The coarse and fine thread of this size, or of the nearest coarse size. */
  private String inSeries() {
    InchSize near =
        UnifiedSeries.UNF.threadsPerInch(size).isPresent()
                || UnifiedSeries.UNC.threadsPerInch(size).isPresent()
            ? size
            : UnifiedSeries.UNC.nearest(size).orElseThrow();
    List<String> threads = new ArrayList<>();
    for (UnifiedSeries series : List.of(UnifiedSeries.UNC, UnifiedSeries.UNF)) {
      series
          .threadsPerInch(near)
          .ifPresent(tpi -> threads.add(UnifiedThread.text(near, tpi) + " " + series));
    }
    return String.join(" or ", threads);
  }
}
