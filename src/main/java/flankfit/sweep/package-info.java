/**
 * The surface that a thread mill leaves. A spinning cutter is a surface of revolution; carried
 * along a helix it leaves, for the endless regular helix, one axial profile by helical symmetry.
 * The profile is exact: no flank is taken for straight because the cutter's flank is.
 *
 * <p>{@link flankfit.sweep.Wall} is the surface over the whole turn and length: {@link
 * flankfit.sweep.SweptWall} that of real, finite paths with entry and exit, several passes and
 * rows, {@link flankfit.sweep.RegularWall} that of a regular thread. {@link
 * flankfit.sweep.FlankField} and {@link flankfit.sweep.WallGrid} read it. How far rows are pushed
 * off is an input; cutter and path are else taken as they are told.
 */
package flankfit.sweep;
