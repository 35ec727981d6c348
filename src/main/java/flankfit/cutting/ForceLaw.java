package flankfit.cutting;

import flankfit.unit.Require;

/**
 * Force on a piece of edge: {@code dF_c = (kc1.1 h^(1-mc) + K_e) dl}, normal to the edge in the
 * axial plane {@code dF_n = (k_n kc1.1 h^(1-mc) + K_e) dl}.
 *
 * @param kc11 specific cutting force at a chip of 1 mm by 1 mm (N/mm²), above 0
 * @param exponent mc (1), in [0, 1)
 * @param normalShare k_n, normal force for one of cutting force (1), not below 0
 * @param edgeForce K_e, force of a rubbing edge on its length (N/mm), not below 0
 * @param leastChip chip below which the edge rubs and takes nothing (mm), not below 0
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

  /** Force of the chip on one millimetre of edge (N/mm). */
  double ofChip(double chip) {
    return kc11 * Math.pow(chip, 1 - exponent);
  }
}
