package flankfit.nc;

import flankfit.finding.Place;
import java.util.Objects;

/**
 * A stretch of one line that is to be replaced.
 *
 * @param place where it stands; with length 0 the text is put in before its column
 * @param text what stands there then; ASCII, may be empty
 */
public record Edit(Place place, String text) {
  public Edit {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(text, "text");
  }
}
