package flankfit.control;

import flankfit.finding.Place;
import java.util.Objects;
import java.util.Optional;

/**
 * A call of a subprogram.
 *
 * @param program number of the program
 * @param times how often, 1 to 9999
 * @param arguments values of #1 to #33 by number, not a number where none is given; empty when the
 *     local variables of the caller are shared
 * @param modal whether it is made by a motion under G66
 * @param place where the number of the program stands
 */
record Call(int program, int times, Optional<double[]> arguments, boolean modal, Place place) {
  Call {
    Objects.requireNonNull(arguments, "arguments");
    Objects.requireNonNull(place, "place");
  }
}
