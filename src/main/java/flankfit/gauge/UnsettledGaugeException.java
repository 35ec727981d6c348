package flankfit.gauge;

/** The search for the largest gauge does not come to an end. */
final class UnsettledGaugeException extends RuntimeException {
  private static final long serialVersionUID = 1;

  UnsettledGaugeException(String message) {
    super(message);
  }
}
