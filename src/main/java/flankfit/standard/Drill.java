package flankfit.standard;

/**
 * A drill for the hole before the thread.
 *
 * @param diameter drill diameter (mm)
 * @param name how the drill is ordered, such as {@code 18.5 mm} or {@code letter F}
 * @param engagementPercent share of the basic thread height that the hole leaves (%)
 */
public record Drill(double diameter, String name, double engagementPercent) {}
