package flankfit.lesson;

import flankfit.finding.Place;

/** Leads out of the middle of rewriting; never leaves the package. */
final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Rewriting.Refused refused;

  RefusedException(Place place, String what, String why, String fix) {
    super(what);
    refused = new Rewriting.Refused(place, what, why, fix);
  }

  Rewriting.Refused refused() {
    return refused;
  }
}
