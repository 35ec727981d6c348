/**
 * Executes the blocks of a program as a control does: modal state, work offsets, tool length, arcs,
 * return moves, radius compensation. Yields the tape of moves and the findings. Subprograms,
 * variables, canned cycles and transformed frames are not modelled: each is an error that stops.
 */
package flankfit.control;
