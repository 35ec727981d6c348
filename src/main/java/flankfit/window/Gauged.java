package flankfit.window;

import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import java.util.Objects;

/**
 * The threads of a program as they were gauged.
 *
 * @param request what was gauged, and how the program runs with other registers; asked on any
 *     thread
 * @param answer what came of it
 */
public record Gauged(GaugeRequest request, GaugeAnswer answer) {
  public Gauged {
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(answer, "answer");
  }
}
