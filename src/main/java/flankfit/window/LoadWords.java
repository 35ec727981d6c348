package flankfit.window;

import java.util.Locale;

/** How a load is told: counts and shares in words. */
final class LoadWords {
  private LoadWords() {}

  /** The sentence above everything. */
  static String sentence(Loaded now) {
    return switch (now.stage()) {
      case NOTHING -> "Will the thread gauge, and what do I key in if not?";
      case READING -> "reading " + now.input().file();
      case EXECUTING -> "executing " + now.input().file() + ": " + executed(now);
      case CHECKING ->
          "checking " + count(now.input().tape().size(), "move") + percent(now.share(), "");
      case GAUGING -> "gauging the threads";
      case DONE -> now.input().headline().isEmpty() ? now.input().file() : now.input().headline();
      case STOPPED, FAILED -> now.told();
    };
  }

  private static String executed(Loaded now) {
    return count(now.blocks(), "block") + percent(now.share(), " of the text");
  }

  /** What is told of a load that the user stops. */
  static String stopped(Loaded now) {
    return switch (now.stage()) {
      case READING ->
          now.whole() ? "stopped: not read anew" : "incomplete: stopped before it was read";
      case EXECUTING ->
          "incomplete: stopped after " + executed(now) + "; neither checked nor gauged";
      case CHECKING -> "stopped: the path is whole, but neither checked nor gauged";
      default -> "stopped: the path is whole and checked, but not gauged";
    };
  }

  private static String percent(double share, String what) {
    return share < 0 || share >= 1 ? "" : ", " + (int) Math.floor(100 * share) + " %" + what;
  }

  /** A number and what it counts, thousands apart. */
  static String count(long number, String noun) {
    return number(number) + " " + noun + (number == 1 ? "" : "s");
  }

  /** A number, thousands apart. */
  static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number).replace(',', ' ');
  }
}
