package flankfit.window;

import java.util.Objects;

/**
 * What metal is left.
 *
 * @param subject what is cut
 * @param moves number of moves that have been made
 */
record MetalQuestion(MetalSubject subject, int moves) {
  MetalQuestion {
    Objects.requireNonNull(subject, "subject");
  }
}
