/**
 * The setup sheet: stock, holes, threads wanted, tools, offsets, and how the control reads. All
 * lengths are millimetres, all angles radians, positions in the part frame.
 */
package flankfit.setup;
