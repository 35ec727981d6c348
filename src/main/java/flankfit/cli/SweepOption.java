package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.gauge.RegisterSweep;
import flankfit.unit.LengthUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sweep as asked for: {@code D4=-0.05:0.05:0.005}, wear entries from, to, by.
 *
 * @param register number of the D register
 * @param from first wear entry (mm, as entered)
 * @param to last one (mm)
 * @param by distance of entries (mm)
 */
record SweepOption(int register, double from, double to, double by) {
  private static final String NUMBER = "([-+]?(?:\\d+\\.?\\d*|\\.\\d+))";
  private static final Pattern FORM =
      Pattern.compile("[Dd](\\d{1,3})=" + NUMBER + ":" + NUMBER + ":" + NUMBER);

  /**
   * Reads a sweep.
   *
   * @param unit unit of the figures
   * @throws RequestException if the text is none, or has too many entries
   */
  static SweepOption of(String text, LengthUnit unit) throws RequestException {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      throw wrong(text, "a D register, =, and from:to:step of its wear entry are wanted");
    }
    int register = Integer.parseInt(form.group(1));
    if (register == 0) {
      throw wrong(text, "D0 is always 0 and cannot be set");
    }
    double[] figures = new double[3];
    for (int i = 0; i < 3; i++) {
      figures[i] = unit.toMillimetres(Double.parseDouble(form.group(i + 2)));
    }
    SweepOption sweep = new SweepOption(register, figures[0], figures[1], figures[2]);
    try {
      sweep.entries();
    } catch (IllegalArgumentException e) {
      throw wrong(text, e.getMessage());
    }
    return sweep;
  }

  /** The wear entries (mm, as entered). */
  double[] entries() {
    return RegisterSweep.entries(from, to, by);
  }

  private static RequestException wrong(String text, String why) {
    return RequestException.wrong(
        Finding.of(
            Code.RQ04,
            Place.file(""),
            "--sweep " + text + " is not a sweep",
            why,
            "write, say, --sweep D4=-0.05:0.05:0.005"));
  }
}
