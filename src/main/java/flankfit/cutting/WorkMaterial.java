package flankfit.cutting;

import flankfit.unit.Require;
import java.util.Objects;

/**
 * A row of the table of specific cutting forces.
 *
 * @param key name in the sheet
 * @param isoGroup ISO group: P, M, K, N, S or H
 * @param kc11 specific cutting force at a chip of 1 mm by 1 mm (N/mm²)
 * @param exponent mc (1)
 * @param normalShare normal force for one of cutting force (1)
 * @param edgeForce force of the edge on its length (N/mm)
 * @param read whether kc1.1 and mc were read from a printed table; otherwise they are from memory
 * @param source where kc1.1 and mc come from
 * @param edgeSource where the edge's share comes from
 */
public record WorkMaterial(
    String key,
    String isoGroup,
    double kc11,
    double exponent,
    double normalShare,
    double edgeForce,
    boolean read,
    String source,
    String edgeSource) {
  /**
   * Chip below which a ground carbide edge rubs (mm): 0.3 of an edge radius of 6 micrometres.
   *
   * @see "least chip 0.2 to 0.4 of the edge radius (from memory of texts on metal cutting)"
   */
  public static final double LEAST_CHIP = 0.0018;

  public WorkMaterial {
    Require.positive("kc11", kc11);
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(edgeSource, "edgeSource");
  }

  /** The same metal with forces so many times as great (1), above 0. */
  public WorkMaterial stronger(double times) {
    return new WorkMaterial(
        key,
        isoGroup,
        times * kc11,
        exponent,
        normalShare,
        times * edgeForce,
        read,
        source,
        edgeSource);
  }

  /** The chip alone: the kinder end of the range. */
  public ForceLaw ofChip() {
    return ForceLaw.ofChip(kc11, exponent, normalShare);
  }

  /** With edge force and least chip: the end of the range nearer to practice. */
  public ForceLaw withEdge() {
    return new ForceLaw(kc11, exponent, normalShare, edgeForce, LEAST_CHIP);
  }
}
