package flankfit.gauge;

import flankfit.gauge.Travel.Contact;
import flankfit.gauge.Travel.From;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.util.Locale;
import java.util.Optional;

/** Words for a gauge's way, such as a machinist would note them. */
final class TravelText {
  private TravelText() {}

  /**
   * One sentence: how many turns, how deep, and on what it stops.
   *
   * @param internal whether the gauge is a plug
   */
  static String of(Travel travel, boolean internal, Text text) {
    String who = travel.gauge().kind().word() + (internal ? " plug" : " ring");
    String end = travel.from() == From.FAR_END ? " from the far end" : "";
    String turns = String.format(Locale.ROOT, "%.1f turns", travel.turns());
    return switch (travel.end()) {
      case THROUGH -> who + end + " goes through: " + turns;
      case ON_FLOOR -> who + " goes as far as there is room: " + turns + ", " + z(travel, text);
      case STOPPED ->
          who + end + " stops after " + turns + ", " + z(travel, text) + touching(travel, internal);
    };
  }

  private static String z(Travel travel, Text text) {
    int decimals = text.unit() == LengthUnit.INCH ? 3 : 2;
    return "Z" + Text.number(text.unit().fromMillimetres(travel.z()), decimals);
  }

  private static String touching(Travel travel, boolean internal) {
    Optional<Contact> contact = travel.stoppedOn();
    if (contact.isEmpty()) {
      return "";
    }
    String part =
        switch (contact.get().by()) {
          case CREST -> internal ? "its crest on the groove's bottom" : "its crest on the root";
          case FLANK_UP -> "on the groove's upper flank";
          case FLANK_DOWN -> "on the groove's lower flank";
        };
    long degrees = Math.round(Angles.toDegrees(contact.get().theta()));
    return ", " + part + " at " + degrees + "°";
  }
}
