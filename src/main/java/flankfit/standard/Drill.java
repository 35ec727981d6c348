package flankfit.standard;

/**
 * A drill for the hole before the thread.
 *
 * @param diameter drill diameter (mm)
 * @param name how the drill is ordered, such as {@code 18.5 mm} or {@code letter F}
 * @param engagementPercent share of the height 3/4 H, 0.6495 of the pitch on either side, that the
 *     hole leaves for the thread (%); common practice, no source
 */
public record Drill(double diameter, String name, double engagementPercent) {}
