/**
 * Executes the blocks of a program as a control does: modal state, work offsets, tool length, arcs,
 * return moves, radius compensation, drilling and boring cycles, mirror, scale and rotation. Yields
 * the tape of moves and the findings. Subprograms and variables are not modelled: each is an error
 * that stops.
 */
package flankfit.control;
