package flankfit.cutting;

import flankfit.unit.Require;

/**
 * Force on a piece of edge. The chip alone: {@code dF_c = kc1.1 h^(1-mc) dl}, normal to the edge in
 * the axial plane {@code dF_n = k_n dF_c}. Where a rubbing edge asks for more than that, on thin
 * chips, {@code dF_c = (K_e + kc1.1 h) dl} and {@code dF_n = (K_e + k_n kc1.1 h) dl} instead: the
 * power law already holds part of the edge force, so the two are not added.
 *
 * @param kc11 specific cutting force at a chip of 1 mm by 1 mm (N/mm²), above 0
 * @param exponent mc (1), in [0, 1)
 * @param normalShare k_n, normal force for one of cutting force (1), not below 0
 * @param edgeForce K_e, force of a rubbing edge on its length (N/mm), not below 0
 * @param leastChip chip below which the edge rubs (mm), not below 0
 * @see "O. Kienzle, H. Victor, Spezifische Schnittkräfte bei der Metallbearbeitung, 1957 (from
 *     memory)"
 */
public record ForceLaw(
    double kc11, double exponent, double normalShare, double edgeForce, double leastChip) {
  public ForceLaw {
    Require.positive("kc11", kc11);
    Require.within("exponent", exponent, 0, 0.99);
    Require.notNegative("normalShare", normalShare);
    Require.notNegative("edgeForce", edgeForce);
    Require.notNegative("leastChip", leastChip);
  }

  /** The law of the chip alone: no edge force and no least chip. */
  public static ForceLaw ofChip(double kc11, double exponent, double normalShare) {
    return new ForceLaw(kc11, exponent, normalShare, 0, 0);
  }

  /** Cutting force on one millimetre of edge under a chip (N/mm). */
  double cutting(double chip) {
    return larger(ofChip(chip), kc11 * chip);
  }

  /** Force normal to the edge on one millimetre of it (N/mm). */
  double normal(double chip) {
    return larger(normalShare * ofChip(chip), normalShare * kc11 * chip);
  }

  private double larger(double chipAlone, double linear) {
    return edgeForce > 0 ? Math.max(chipAlone, edgeForce + linear) : chipAlone;
  }

  private double ofChip(double chip) {
    return kc11 * Math.pow(chip, 1 - exponent);
  }
}
