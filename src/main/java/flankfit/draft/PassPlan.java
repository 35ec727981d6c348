package flankfit.draft;

/**
 * One pass of a draft, at the registers' nominal entries.
 *
 * @param number from 1
 * @param share share of the radial depth of all passes that this one takes (1)
 * @param programmed radius of the programmed path (increments)
 * @param arc radius of the programmed arc of entry and exit (increments); 0 for none
 * @param path radius of the path of the cutter's centre (mm)
 * @param reach radius that the teeth reach (mm)
 * @param metal radius at which the metal begins (mm)
 * @param feed feed of the centre on the helix (mm/min), as programmed
 * @param entryFeed feed of the centre on the way in (mm/min), as programmed
 */
record PassPlan(
    int number,
    double share,
    long programmed,
    long arc,
    double path,
    double reach,
    double metal,
    double feed,
    double entryFeed) {}
