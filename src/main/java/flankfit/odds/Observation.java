package flankfit.odds;

import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import flankfit.unit.Require;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a gauge did, or a size that was measured. */
public sealed interface Observation {
  /** How it is asked for. */
  String FORMS =
      "go=enters, go=stops, go=stops:3 (turns gone), no-go=stops, no-go=enters, no-go=turns:0.5,"
          + " pitch=18.94, pitch=18.94±0.004";

  /** The same in words that {@link #of} reads again, lengths in millimetres. */
  String text();

  /**
   * A GO gauge was tried.
   *
   * @param enters whether it went the whole length
   * @param turns turns that it went when it did not (1)
   */
  record Go(boolean enters, OptionalDouble turns) implements Observation {
    @Override
    public String text() {
      return enters ? "go=enters" : "go=stops" + told(turns);
    }

    private static String told(OptionalDouble turns) {
      return turns.isPresent() ? ":" + Lengths.plain(turns.getAsDouble()) : "";
    }
  }

  /**
   * A NO-GO gauge was tried.
   *
   * @param stops whether it stopped; of no account when turns are told
   * @param turns turns that it went (1): the rule of the thread's own system says what they mean
   */
  record NoGo(boolean stops, OptionalDouble turns) implements Observation {
    @Override
    public String text() {
      if (turns.isPresent()) {
        return "no-go=turns:" + Lengths.plain(turns.getAsDouble());
      }
      return stops ? "no-go=stops" : "no-go=enters";
    }

    /** Whether it passes as stopped. */
    boolean accepted(double allowed) {
      return turns.isPresent() ? turns.getAsDouble() <= allowed : stops;
    }
  }

  /**
   * A simple pitch diameter was measured.
   *
   * @param diameter the diameter (mm)
   * @param expanded expanded uncertainty, two standard deviations (mm); empty when not told
   */
  record Pitch(double diameter, OptionalDouble expanded) implements Observation {
    /** Standard uncertainty where none is told (mm). */
    static final double USUAL = 0.003;

    public Pitch {
      Require.positive("diameter", diameter);
    }

    @Override
    public String text() {
      String size = "pitch=" + Lengths.plain(diameter, 6) + "mm";
      return expanded.isPresent()
          ? size + "±" + Lengths.plain(expanded.getAsDouble(), 6) + "mm"
          : size;
    }

    /**
     * Standard uncertainty (mm).
     *
     * @see "JCGM 100:2008, 6.2: expanded uncertainty with coverage factor 2 (from memory)"
     */
    double uncertainty() {
      return expanded.isPresent() ? expanded.getAsDouble() / 2 : USUAL;
    }
  }

  /**
   * Reads an observation.
   *
   * @param text such as {@code go=stops:3}
   * @param unit unit of plain lengths
   * @throws IllegalArgumentException if it is none; says what is wanted
   */
  static Observation of(String text, LengthUnit unit) {
    return new Reader(text, unit).read();
  }

  /** Reads one text. */
  final class Reader {
    private static final Pattern FORM =
        Pattern.compile("\\s*([A-Za-z-]+)\\s*=\\s*(.*?)\\s*", Pattern.DOTALL);
    private static final Pattern TURNS = Pattern.compile("(?:turns|stops)\\s*:\\s*(\\S+)");
    private static final Pattern SIZE = Pattern.compile("(.+?)(?:\\s*(?:±|\\+-|\\+/-)\\s*(.+))?");

    /** Most turns that make sense: a mistyped length is found. */
    private static final double MOST_TURNS = 1000;

    private final String text;
    private final LengthUnit unit;

    private Reader(String text, LengthUnit unit) {
      this.text = text;
      this.unit = unit;
    }

    private Observation read() {
      Matcher form = FORM.matcher(text);
      if (!form.matches()) {
        throw wrong("a name, = and what was seen are wanted");
      }
      String value = form.group(2).toLowerCase(Locale.ROOT);
      return switch (form.group(1).toLowerCase(Locale.ROOT)) {
        case "go" -> go(value);
        case "no-go" -> noGo(value);
        case "pitch" -> pitch(value);
        default -> throw wrong("go, no-go or pitch is wanted before the =");
      };
    }

    private Observation go(String value) {
      Matcher turns = TURNS.matcher(value);
      if (turns.matches() && value.startsWith("stops")) {
        return new Go(false, OptionalDouble.of(turns(turns.group(1))));
      }
      return switch (value) {
        case "enters" -> new Go(true, OptionalDouble.empty());
        case "stops" -> new Go(false, OptionalDouble.empty());
        default -> throw wrong("a GO gauge enters, stops, or stops:turns");
      };
    }

    private Observation noGo(String value) {
      Matcher turns = TURNS.matcher(value);
      if (turns.matches()) {
        return new NoGo(false, OptionalDouble.of(turns(turns.group(1))));
      }
      return switch (value) {
        case "enters" -> new NoGo(false, OptionalDouble.empty());
        case "stops" -> new NoGo(true, OptionalDouble.empty());
        default -> throw wrong("a NO-GO gauge stops, enters, or turns:number");
      };
    }

    private double turns(String word) {
      try {
        double turns = Double.parseDouble(word);
        if (turns >= 0 && turns <= MOST_TURNS) {
          return turns;
        }
      } catch (NumberFormatException e) {
        throw wrong("\"" + word + "\" is no number of turns");
      }
      throw wrong("turns are a number from 0 to " + Lengths.plain(MOST_TURNS));
    }

    private Observation pitch(String value) {
      Matcher size = SIZE.matcher(value);
      if (!size.matches()) {
        throw wrong("a diameter is wanted");
      }
      double diameter = length(size.group(1));
      OptionalDouble expanded =
          size.group(2) == null ? OptionalDouble.empty() : OptionalDouble.of(length(size.group(2)));
      if (!(diameter > 0) || expanded.orElse(1) <= 0) {
        throw wrong("diameter and uncertainty are above 0");
      }
      return new Pitch(diameter, expanded);
    }

    private double length(String word) {
      try {
        return unit.toMillimetres(Double.parseDouble(word));
      } catch (NumberFormatException e) {
        return Optional.of(Lengths.parse(word))
            .filter(OptionalDouble::isPresent)
            .orElseThrow(() -> wrong("\"" + word + "\" is no length"))
            .getAsDouble();
      }
    }

    private IllegalArgumentException wrong(String why) {
      return new IllegalArgumentException(why);
    }
  }
}
