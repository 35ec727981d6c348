package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.unit.LengthUnit;
import java.util.Locale;
import java.util.Optional;

/**
 * A plane across an axis.
 *
 * @param axis 0 X, 1 Y, 2 Z
 * @param place where on the axis (mm)
 */
record SectionOption(int axis, double place) {
  /**
   * Reads {@code x=0}.
   *
   * @param unit unit of the place
   * @throws RequestException if it is no such plane
   */
  static Optional<SectionOption> of(Optional<String> text, LengthUnit unit)
      throws RequestException {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String[] parts = text.get().trim().toLowerCase(Locale.ROOT).split("=", -1);
    int axis = parts.length == 2 && parts[0].length() == 1 ? "xyz".indexOf(parts[0]) : -1;
    if (axis >= 0) {
      try {
        double place = unit.toMillimetres(Double.parseDouble(parts[1]));
        if (Double.isFinite(place)) {
          return Optional.of(new SectionOption(axis, place));
        }
      } catch (NumberFormatException e) {
        throw wrong(text.get(), parts[1] + " is not a number");
      }
    }
    throw wrong(text.get(), "a plane is an axis and a place on it");
  }

  private static RequestException wrong(String text, String why) {
    return RequestException.wrong(
        Finding.of(
            Code.RQ04,
            Place.file(""),
            "--section " + text + " is not a plane",
            why,
            "write x=0, y=12.5 or z=-8"));
  }
}
