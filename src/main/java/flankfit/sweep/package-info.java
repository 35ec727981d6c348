/**
 * The surface that a thread mill leaves. A spinning cutter is a surface of revolution; carried
 * along a helix it leaves, for the endless regular helix, one axial profile by helical symmetry.
 * The profile is exact: no flank is taken for straight because the cutter's flank is. Entry and
 * exit arcs, deflection and run-out are not part of it.
 */
package flankfit.sweep;
