package flankfit.standard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads designations of ISO metric threads.
 *
 * @see "ISO 965-1, clause 5: designation"
 */
final class MetricDesignation {
  private static final String NUMBER = "(\\d{0,4}(?:\\.\\d{1,6})?)";
  private static final Pattern SIZE =
      Pattern.compile("(?i)M" + NUMBER + "(?:x(?:Ph" + NUMBER + "P" + NUMBER + "|(.+)))?");
  private static final Pattern PITCH = Pattern.compile(NUMBER);
  private static final Pattern PARTS = Pattern.compile("[- ]");
  private static final Pattern BLANK_AT_X = Pattern.compile("(?i)(?<=[\\d.]) ?x ?");
  private static final Pattern BLANK_AT_M = Pattern.compile("(?i)^M ");
  private static final Pattern LEAD_AND_PITCH = Pattern.compile("(?i)xPh ?([\\d.]+) ?P ?([\\d.]+)");
  private static final Pattern GROUP = Pattern.compile("[SNL]");

  /** Largest share of the diameter a pitch may have; M1x0.25 has it (1). */
  private static final int DIAMETER_BY_PITCH = 4;

  private final long d;
  private final long P;
  private final int starts;
  private final List<String> notes = new ArrayList<>();
  private Optional<MetricClass> threadClass = Optional.empty();
  private boolean leftHand;

  private MetricDesignation(long d, long P, int starts) {
    this.d = d;
    this.P = P;
    this.starts = starts;
  }

  /** The thread of a designation whose text is uniform. */
  static ThreadSpec parse(String text) throws InvalidDesignationException {
    String atM = BLANK_AT_M.matcher(text).replaceFirst("M");
    String atX = BLANK_AT_X.matcher(atM).replaceAll("x");
    String size = LEAD_AND_PITCH.matcher(atX).replaceFirst("xPh$1P$2");
    List<String> parts = List.of(PARTS.split(size, -1));
    MetricDesignation designation = size(parts.get(0), text);
    for (String part : parts.subList(1, parts.size())) {
      designation.read(part);
    }
    return designation.thread();
  }

  private static MetricDesignation size(String text, String whole)
      throws InvalidDesignationException {
    Matcher m = SIZE.matcher(text);
    if (!m.matches() || !isNumber(m.group(1))) {
      throw new InvalidDesignationException(
          whole + " is not a metric thread designation",
          "after M stand the diameter and, behind an x, the pitch (mm)",
          "write a designation such as M20x1.5-6H");
    }
    long d = requireDiameter(micrometres(m.group(1)), m.group(1));
    if (m.group(2) != null) {
      return multiStart(d, m.group(2), m.group(3), text);
    }
    if (m.group(4) == null) {
      return new MetricDesignation(d, coarse(d), 1);
    }
    if (!PITCH.matcher(m.group(4)).matches() || !isNumber(m.group(4))) {
      throw new InvalidDesignationException(
          m.group(4) + " is not a pitch",
          "behind the x stands the pitch as a number (mm)",
          nearest(d, 0));
    }
    return new MetricDesignation(d, requirePitch(d, m.group(4)), 1);
  }

  private static boolean isNumber(String text) {
    return !text.isEmpty() && !text.equals(".");
  }

  /** A decimal text (mm) in micrometres; what is finer than that cannot be a size: 0. */
  private static long micrometres(String text) {
    BigDecimal value = new BigDecimal(text).movePointRight(3);
    return value.stripTrailingZeros().scale() > 0 ? 0 : value.longValueExact();
  }

  private static MetricDesignation multiStart(long d, String lead, String pitch, String text)
      throws InvalidDesignationException {
    if (!isNumber(lead) || !isNumber(pitch)) {
      throw new InvalidDesignationException(
          text + " names no lead or no pitch",
          "a thread of several starts is written with Ph and the lead, then P and the pitch (mm)",
          "write a designation such as M20xPh3P1.5-6H");
    }
    long P = requirePitch(d, pitch);
    long Ph = micrometres(lead);
    long starts = Math.max(1, Math.round((double) Ph / P));
    if (starts * P != Ph) {
      throw new InvalidDesignationException(
          "the lead " + lead + " mm is no multiple of the pitch " + pitch + " mm",
          "the lead is the pitch times the number of starts",
          "write " + size(d) + "xPh" + mm(starts * P) + "P" + mm(P));
    }
    return new MetricDesignation(d, P, (int) starts);
  }

  private static long requireDiameter(long d, String written) throws InvalidDesignationException {
    if (!MetricTolerances.hasDiameter(d)) {
      throw new InvalidDesignationException(
          "the diameter " + written + " mm has no tolerances",
          "ISO 965-1 sets tolerances from 1 mm to 355 mm, in steps of 0.001 mm here",
          d > 0 && d < 1000 ? "the smallest is M1x0.25" : "write a diameter in that range");
    }
    return d;
  }

  private static long coarse(long d) throws InvalidDesignationException {
    if (MetricSeries.coarse(d).isEmpty()) {
      String near =
          MetricSeries.coarseNear(d).stream()
              .map(x -> size(x) + "x" + mm(MetricSeries.coarse(x).orElseThrow()))
              .collect(Collectors.joining(" and "));
      List<Long> pitches = MetricSeries.pitches(d);
      throw new InvalidDesignationException(
          size(d) + " has no coarse pitch, and no pitch is written",
          "ISO 261 has "
              + (pitches.isEmpty()
                  ? "no diameter of " + mm(d) + " mm"
                  : "only fine pitches for " + mm(d) + " mm"),
          pitches.isEmpty()
              ? "write the pitch, or take the nearest: " + near
              : "write the pitch: " + choices(d, pitches));
    }
    return MetricSeries.coarse(d).orElseThrow();
  }

  private static long requirePitch(long d, String written) throws InvalidDesignationException {
    long P = micrometres(written);
    if (P <= 0 || P > MetricTolerances.greatestPitch() || P < MetricTolerances.finestPitch()) {
      throw new InvalidDesignationException(
          "the pitch " + written + " mm of " + size(d) + " is out of range",
          "ISO 965-1 sets tolerances for pitches from 0.2 mm to 8 mm, in steps of 0.001 mm here",
          nearest(d, P));
    }
    if (!MetricTolerances.hasPitch(P)) {
      throw new InvalidDesignationException(
          "no metric thread has the pitch " + mm(P) + " mm",
          "ISO 965-1 table 1 sets no deviations for it",
          nearest(d, P));
    }
    if (P * DIAMETER_BY_PITCH > d) {
      throw new InvalidDesignationException(
          "the pitch " + mm(P) + " mm is too coarse for a diameter of " + mm(d) + " mm",
          "the coarsest metric thread, M1x0.25, has a quarter of its diameter",
          nearest(d, P));
    }
    return P;
  }

  /** What to write for a pitch that is none: the pitches the diameter has, or the nearest two. */
  private static String nearest(long d, long P) {
    List<Long> pitches = MetricSeries.pitches(d);
    if (!pitches.isEmpty()) {
      return "write " + choices(d, pitches);
    }
    List<Long> fitting = MetricTolerances.pitchesNear(P, d / DIAMETER_BY_PITCH);
    return "write " + choices(d, fitting);
  }

  private static String choices(long d, List<Long> pitches) {
    return pitches.stream().map(P -> size(d) + "x" + mm(P)).collect(Collectors.joining(" or "));
  }

  private static String size(long d) {
    return "M" + mm(d);
  }

  private static String mm(long micrometres) {
    return Rounding.text(micrometres / 1000.0);
  }

  /** Reads one part behind the size: class, length group or hand. */
  private void read(String part) throws InvalidDesignationException {
    if (part.equalsIgnoreCase("LH") && !leftHand) {
      leftHand = true;
    } else if (part.contains("/")) {
      throw new InvalidDesignationException(
          part + " names a fit, not one thread",
          "before the slash stands the class of the hole, behind it that of the screw",
          "write " + sizeText() + "-" + part.substring(0, part.indexOf('/')));
    } else if (threadClass.isPresent() && GROUP.matcher(part).matches() && !leftHand) {
      notes.add("length of engagement group " + part + ": the limits are those of the class");
    } else if (threadClass.isEmpty() && !leftHand) {
      threadClass = Optional.of(MetricClass.read(part, sizeText(), P));
    } else {
      throw new InvalidDesignationException(
          part.isEmpty()
              ? "the designation ends in a hyphen or has two together"
              : part + " has no meaning behind the class",
          "behind the class stand only a length group, S N or L, and LH",
          "write " + sizeText() + "-" + threadClass.map(MetricClass::text).orElse("6H"));
    }
  }

  private String sizeText() {
    String pitch = starts == 1 ? mm(P) : "Ph" + mm(P * starts) + "P" + mm(P);
    return size(d) + "x" + pitch;
  }

  private ThreadSpec thread() {
    if (threadClass.isEmpty()) {
      MetricClass ordinary = MetricClass.ordinaryNut(d, P);
      notes.add(
          0,
          "no class is written: " + ordinary.text() + " for a hole is assumed, the medium class");
    }
    MetricClass known = threadClass.orElseGet(() -> MetricClass.ordinaryNut(d, P));
    String text = sizeText() + "-" + known.text() + (leftHand ? "-LH" : "");
    return new MetricThread(d, P, starts, known, leftHand).toSpec(text, notes);
  }
}
