package flankfit.setup;

import flankfit.standard.InvalidDesignationException;
import flankfit.standard.Limits;
import flankfit.standard.ThreadSpec;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Metric designations without limits of size: all that reading a sheet needs of a thread. */
final class SomeThreads {
  private static final Pattern METRIC = Pattern.compile("M(\\d+)x(\\d+(?:\\.\\d+)?)-6([Hg])");

  private SomeThreads() {}

  static ThreadSpec parse(String text) throws InvalidDesignationException {
    Matcher m = METRIC.matcher(text);
    if (!m.matches()) {
      throw new InvalidDesignationException(
          "unknown thread \"" + text + "\"", "metric threads begin with M", "write M20x1.5-6H");
    }
    double nominal = Double.parseDouble(m.group(1));
    double pitch = Double.parseDouble(m.group(2));
    double h = pitch * Math.sqrt(3) / 2;
    Limits limits =
        new Limits(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            nominal,
            nominal,
            OptionalDouble.empty(),
            OptionalDouble.empty());
    return new ThreadSpec(
        text,
        "ISO metric",
        "",
        nominal,
        pitch,
        OptionalDouble.empty(),
        1,
        Math.PI / 6,
        "6" + m.group(3),
        m.group(3).equals("H"),
        false,
        nominal - 0.75 * h,
        nominal - 1.25 * h,
        limits,
        Optional.empty(),
        Optional.empty(),
        List.of());
  }
}
