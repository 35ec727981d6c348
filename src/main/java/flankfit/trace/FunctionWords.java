package flankfit.trace;

/** What the G and M functions do, in a few words of the trade. */
final class FunctionWords {
  private FunctionWords() {}

  /** A G function by its number, such as 54.1; empty text for one that is not modelled. */
  static String preparatory(double number) {
    return switch ((int) Math.rint(number * 10)) {
      case 0 -> "rapid";
      case 10 -> "line at feed";
      case 20 -> "arc clockwise";
      case 30 -> "arc anticlockwise";
      case 40 -> "dwell";
      case 90 -> "exact stop in this block";
      case 100 -> "sets offsets or registers";
      case 150 -> "polar input off";
      case 170 -> "plane XY";
      case 180 -> "plane ZX";
      case 190 -> "plane YZ";
      case 200, 700 -> "inches";
      case 210, 710 -> "millimetres";
      case 280 -> "return to the reference point";
      case 300 -> "return to another reference point";
      case 400 -> "radius compensation off";
      case 410 -> "radius compensation left";
      case 420 -> "radius compensation right";
      case 430 -> "tool length added";
      case 440 -> "tool length subtracted";
      case 490 -> "tool length off";
      case 500 -> "scaling off";
      case 501 -> "mirror off";
      case 510 -> "scaling";
      case 511 -> "mirror";
      case 520 -> "local shift";
      case 530 -> "machine coordinates in this block";
      case 540, 550, 560, 570, 580, 590, 591, 592, 593 -> "work offset";
      case 541 -> "further work offset";
      case 610 -> "exact path";
      case 611 -> "exact stop";
      case 640 -> "continuous path";
      case 650 -> "calls a program with arguments";
      case 660 -> "every motion calls a program";
      case 670 -> "motions call no program";
      case 680 -> "rotation";
      case 690 -> "rotation off";
      case 730 -> "drilling, pecks break the chip";
      case 740 -> "tapping, left hand";
      case 760 -> "fine boring";
      case 800 -> "cycle off";
      case 810 -> "drilling";
      case 820 -> "drilling with dwell";
      case 830 -> "drilling, pecks clear the hole";
      case 840 -> "tapping";
      case 850 -> "boring, out at feed";
      case 860 -> "boring, out with the spindle stopped";
      case 870 -> "back boring";
      case 880 -> "boring, out by hand";
      case 890 -> "boring with dwell, out at feed";
      case 900 -> "absolute";
      case 901 -> "arc centres absolute";
      case 910 -> "incremental";
      case 911 -> "arc centres incremental";
      case 920 -> "present point gets coordinates";
      case 921 -> "shift of G92 off";
      case 922 -> "shift of G92 suspended";
      case 923 -> "shift of G92 back";
      case 930 -> "inverse time feed";
      case 940 -> "feed per minute";
      case 950 -> "feed per revolution";
      case 970 -> "spindle speed in rev/min";
      case 980 -> "holes end at the initial level";
      case 990 -> "holes end at the R level";
      default -> "";
    };
  }

  /** An M function by its number; empty text for one that is not modelled. */
  static String miscellaneous(double number) {
    return switch ((int) Math.rint(number)) {
      case 0 -> "stop";
      case 1 -> "optional stop";
      case 2 -> "end of program";
      case 3 -> "spindle clockwise";
      case 4 -> "spindle counter-clockwise";
      case 5 -> "spindle stop";
      case 6 -> "tool change";
      case 7 -> "mist on";
      case 8 -> "flood on";
      case 9 -> "coolant off";
      case 19 -> "spindle stop, oriented";
      case 30 -> "end of program";
      case 48 -> "overrides on";
      case 49 -> "overrides off";
      case 60 -> "stop";
      case 98 -> "calls a program";
      case 99 -> "returns";
      default -> "";
    };
  }

  /** A G function with its words, such as {@code G91 incremental}. */
  static String withCode(double number) {
    return "G" + Numbers.plain(number) + " " + preparatory(number);
  }
}
