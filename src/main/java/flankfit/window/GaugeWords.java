package flankfit.window;

import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Travel;
import flankfit.gauge.TurnsRuling;
import flankfit.gauge.Verdict;
import flankfit.picture.Figures;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.util.Optional;

/** What the Gauge sheet says of a thread, in sentences. */
final class GaugeWords {
  private final LengthUnit unit;

  GaugeWords(LengthUnit unit) {
    this.unit = unit;
  }

  /** Thread, hole and verdict, with a shape that tells good from bad. */
  static String verdict(ThreadAnswer thread) {
    return (isGood(thread) ? "■ " : "▲ ") + thread.designation() + ": " + thread.verdict().words();
  }

  static boolean isGood(ThreadAnswer thread) {
    return thread.verdict() == Verdict.GAUGES_GOOD;
  }

  /** What each gauge does, and what it has to spare. */
  String because(ThreadAnswer thread) {
    if (thread.go().isEmpty() || thread.noGo().isEmpty() || thread.finished().isEmpty()) {
      return thread.reason();
    }
    String kind = thread.internal() ? " plug" : " ring";
    ThreadAnswer.Go go = thread.go().get();
    ThreadAnswer.NoGo noGo = thread.noGo().get();
    double inside = thread.internal() ? 1 : -1;
    double over = inside * (noGo.pitch() - thread.finished().get().pitchSimple());
    String ofGo =
        go.clearance() >= 0
            ? (go.enters() ? " enters, " : " does not go far enough, though it has ")
                + length(go.clearance())
                + " to spare"
            : " is refused: it lacks " + length(-go.clearance());
    String ofNoGo =
        over >= 0
            ? (noGo.stops() ? " stops, " : " goes too far, though it has ")
                + length(over)
                + " to spare"
            : " enters: the thread is " + length(-over) + " too large for it";
    return "GO" + kind + ofGo + " · NO-GO" + kind + ofNoGo + plain(thread);
  }

  private static String plain(ThreadAnswer thread) {
    return switch (thread.verdict()) {
      case MINOR_SMALL -> " · the plain GO plug does not enter";
      case MINOR_LARGE -> " · the plain NO-GO plug enters";
      default -> "";
    };
  }

  /** Which entry the words belong to, and what is still to come. */
  String entry(Bench bench) {
    Optional<Dial> dial = bench.dial();
    Bench.Shown shown = bench.shown();
    String coming =
        bench.isStale()
            ? "the program is read anew: computing…"
            : bench.isGauging() ? "gauges on the path as moved: computing…" : "";
    if (dial.isEmpty()) {
      return "no register moves this thread: there is no dial" + after(coming);
    }
    OffsetAdvice offset = dial.get().offset();
    String register = offset.register() + " wear ";
    String now = length(shown.entry());
    String words =
        shown.entry() == offset.now()
            ? register
                + now
                + ", as it stands in "
                + where(offset).replace("the sheet", "the setup sheet")
            : "what if "
                + register
                + "were "
                + now
                + "? "
                + capital(where(offset))
                + " has "
                + length(offset.now());
    return words + after(coming);
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String where(OffsetAdvice offset) {
    return offset.setBy().map(s -> "line " + s.place().line()).orElse("the sheet");
  }

  private static String after(String coming) {
    return coming.isEmpty() ? "" : " · " + coming;
  }

  /** How far a gauge was screwed in by hand, and what holds it. */
  String plug(Plug plug, ThreadAnswer thread, Optional<RealAnswer> real) {
    if (plug.travel().isEmpty() || real.isEmpty()) {
      return "cannot be tried: no wall is known";
    }
    Travel travel = plug.travel().get();
    if (plug.turns() == 0 && !plug.isAtEnd()) {
      return "not put on";
    }
    if (!plug.isAtEnd()) {
      return Figures.fixed(plug.turns(), 2) + " turns in";
    }
    String turns = Figures.fixed(travel.turns(), 1) + " turns";
    return switch (travel.end()) {
      case THROUGH -> "goes through: " + turns + ruling(plug, real.get());
      case ON_FLOOR -> "as far as there is room: " + turns + ruling(plug, real.get());
      case STOPPED ->
          "stops after "
              + turns
              + travel.stoppedOn().map(c -> on(c, thread.internal())).orElse("")
              + ruling(plug, real.get());
    };
  }

  private static String ruling(Plug plug, RealAnswer real) {
    return switch (plug.kind()) {
      case GO -> real.reachesWanted() ? "; far enough" : "; too short";
      case NO_GO -> {
        TurnsRuling ruling = real.noGo();
        yield "; " + Figures.plain(ruling.allowed(), 1) + " allowed";
      }
    };
  }

  private static String on(Travel.Contact contact, boolean internal) {
    String part = part(contact.by().word(), internal);
    return ": " + part + " at " + Math.round(Angles.toDegrees(contact.theta())) + "°";
  }

  private static String part(String word, boolean internal) {
    return switch (word) {
      case "flank-up" -> "on the upper flank";
      case "flank-down" -> "on the lower flank";
      default -> "its crest on the " + (internal ? "groove's bottom" : "root");
    };
  }

  /** A length with its unit. */
  String length(double millimetres) {
    return Figures.lengthWithUnit(millimetres, unit);
  }

  /** A length to a tenth of the usual last digit, without its unit. */
  String fine(double millimetres) {
    return Figures.fixed(unit.fromMillimetres(millimetres), unit == LengthUnit.INCH ? 5 : 4);
  }

  LengthUnit unit() {
    return unit;
  }
}
