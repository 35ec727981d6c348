package flankfit.gauge;

import flankfit.gauge.Travel.End;
import java.util.Objects;
import java.util.Optional;

/**
 * What plain plugs do between the crests of a real wall's ridges. The GO plug has to pass the
 * length wanted; the NO-GO plug may go in by no more than one pitch, from where the ridges begin.
 *
 * @param go the plain GO plug's way
 * @param noGo the plain NO-GO plug's way
 * @param goEnters whether the GO plug passes the length wanted
 * @param noGoStops whether the NO-GO plug stops in time
 * @see "the one pitch of the plain NO-GO plug: from memory of ISO 1502"
 */
public record PlainRuling(PlainTravel go, PlainTravel noGo, boolean goEnters, boolean noGoStops) {
  /** Pitches that the plain NO-GO plug may go in (1). */
  private static final double ALLOWED = 1;

  public PlainRuling {
    Objects.requireNonNull(go, "go");
    Objects.requireNonNull(noGo, "noGo");
  }

  /**
   * Tries the plain plugs of a thread; empty where it has none.
   *
   * @param wantedBottom height that the GO plug has to reach (mm)
   */
  static Optional<PlainRuling> of(WallField field, double wantedBottom) {
    if (!field.spec().internal()) {
      return Optional.empty();
    }
    return field
        .spec()
        .gauges()
        .map(
            gauges -> {
              PlainTravel go = PlainTravel.of(field, gauges.plainGo());
              PlainTravel noGo = PlainTravel.of(field, gauges.plainNoGo());
              double least = field.mouth() - ALLOWED * field.spec().pitch();
              return new PlainRuling(
                  go,
                  noGo,
                  go.end() != End.STOPPED || go.z() <= wantedBottom,
                  noGo.end() == End.STOPPED && noGo.z() >= least);
            });
  }
}
