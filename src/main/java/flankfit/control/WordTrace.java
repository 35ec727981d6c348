package flankfit.control;

import flankfit.finding.Place;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One word as the control understood it.
 *
 * @param text the word as written
 * @param place where it stands
 * @param letter its letter, a capital; in lower case that of a corner word
 * @param meaning what it is to the block
 * @param value its value in the unit of {@link WordMeaning#quantity()}: lengths in mm whatever the
 *     unit of the program; empty when the run ended before it had one
 * @param variable number of the local variable that an argument fills
 * @param register what the register of that number holds (mm), for D and H
 */
public record WordTrace(
    String text,
    Place place,
    char letter,
    WordMeaning meaning,
    OptionalDouble value,
    OptionalInt variable,
    OptionalDouble register) {
  public WordTrace {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(meaning, "meaning");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(variable, "variable");
    Objects.requireNonNull(register, "register");
  }
}
