package flankfit.odds;

import flankfit.unit.Require;

/**
 * How far a response reaches.
 *
 * @param shallow depth away from the metal (mm), not below 0
 * @param deep depth into the metal (mm), above 0
 * @param cutter deviation of the mill's radius, either way (mm)
 * @param crest deviation of its teeth's width, either way (mm)
 * @param bending departure of bending from what was reckoned, either way (1), below 1
 * @param hole deviation of the hole's radius, either way (mm)
 */
record Ranges(
    double shallow, double deep, double cutter, double crest, double bending, double hole) {
  Ranges {
    Require.notNegative("shallow", shallow);
    Require.positive("deep", deep);
    Require.notNegative("cutter", cutter);
    Require.notNegative("crest", crest);
    Require.within("bending", bending, 0, 0.99);
    Require.notNegative("hole", hole);
  }
}
