package flankfit.setup;

import flankfit.finding.Place;
import java.util.Objects;

/**
 * A D register as a program enters it itself, by G10.
 *
 * @param number number of the register
 * @param wear whether it is the wear entry, else the geometry entry
 * @param adds whether the program adds to the entry, as in G91
 * @param value the entry after (mm)
 * @param block number of the executed block, from 1, as on the tape
 * @param word the word with the value, as written
 * @param place where that word stands
 */
public record RadiusSetting(
    int number, boolean wear, boolean adds, double value, int block, String word, Place place) {
  public RadiusSetting {
    Objects.requireNonNull(word, "word");
    Objects.requireNonNull(place, "place");
  }
}
