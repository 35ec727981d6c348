package flankfit.picture;

/**
 * Room about a thread's axis in which its exact wall is drawn and no other surface: a ring between
 * two heights, its outer shell in solid metal for a hole, in air for a boss.
 *
 * @param x axis (mm)
 * @param y axis (mm)
 * @param low lower height (mm)
 * @param high upper height (mm)
 * @param inner inner radius (mm)
 * @param outer outer radius (mm)
 */
public record ThreadRegion(
    double x, double y, double low, double high, double inner, double outer) {}
