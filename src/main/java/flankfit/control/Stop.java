package flankfit.control;

import flankfit.finding.Code;
import java.util.Objects;

/**
 * Where an error ended interpretation.
 *
 * @param line line of the block that was not executed, from 1
 * @param code the error
 */
public record Stop(int line, Code code) {
  public Stop {
    Objects.requireNonNull(code, "code");
  }
}
