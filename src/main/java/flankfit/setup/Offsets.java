package flankfit.setup;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Registers as the operator entered them (mm).
 *
 * @param lengths H registers by number
 * @param radii D registers by number, as entered: radius or diameter by the switches
 */
public record Offsets(Map<Integer, Register> lengths, Map<Integer, Register> radii) {
  public Offsets {
    lengths = Collections.unmodifiableMap(new TreeMap<>(lengths));
    radii = Collections.unmodifiableMap(new TreeMap<>(radii));
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
    return new Offsets(lengths, changed);
  }

  /** The same with another H register. */
  public Offsets withLength(int number, Register register) {
    Map<Integer, Register> changed = new TreeMap<>(lengths);
    changed.put(number, register);
    return new Offsets(changed, radii);
  }

  /**
   * One register.
   *
   * @param geometry entry of the geometry page (mm)
   * @param wear entry of the wear page (mm)
   */
  public record Register(double geometry, double wear) {}
}
