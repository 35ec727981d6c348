package flankfit.setup;

import flankfit.finding.Place;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Registers as the operator entered them (mm).
 *
 * @param lengths H registers by number
 * @param radii D registers by number, as entered: radius or diameter by the switches
 * @param trials changes, for a trial, of what a program itself enters, by the place of its word
 *     (mm)
 */
public record Offsets(
    Map<Integer, Register> lengths, Map<Integer, Register> radii, Map<Place, Double> trials) {
  public Offsets {
    lengths = Collections.unmodifiableMap(new TreeMap<>(lengths));
    radii = Collections.unmodifiableMap(new TreeMap<>(radii));
    trials = Collections.unmodifiableMap(new TreeMap<>(trials));
  }

  /** Registers without a trial. */
  public Offsets(Map<Integer, Register> lengths, Map<Integer, Register> radii) {
    this(lengths, radii, Map.of());
  }

  /** No register entered. */
  public static Offsets none() {
    return new Offsets(Map.of(), Map.of());
  }

  /** The H register of a number. */
  public Optional<Register> length(int number) {
    return Optional.ofNullable(lengths.get(number));
  }

  /** The D register of a number. */
  public Optional<Register> radius(int number) {
    return Optional.ofNullable(radii.get(number));
  }

  /** The same with another D register. */
  public Offsets withRadius(int number, Register register) {
    Map<Integer, Register> changed = new TreeMap<>(radii);
    changed.put(number, register);
    return new Offsets(lengths, changed, trials);
  }

  /** The same with another H register. */
  public Offsets withLength(int number, Register register) {
    Map<Integer, Register> changed = new TreeMap<>(lengths);
    changed.put(number, register);
    return new Offsets(changed, radii, trials);
  }

  /** The same for a trial in which a program enters so much more in one place (mm). */
  public Offsets withTrial(Place word, double more) {
    return new Offsets(lengths, radii, Map.of(word, more));
  }

  /** What a program enters more in a place, for a trial (mm); 0 elsewhere. */
  public double trial(Place word) {
    return trials.getOrDefault(word, 0.0);
  }

  /**
   * One register.
   *
   * @param geometry entry of the geometry page (mm)
   * @param wear entry of the wear page (mm)
   */
  public record Register(double geometry, double wear) {}
}
