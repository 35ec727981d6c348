package flankfit.control;

import flankfit.motion.Tape;
import java.util.Optional;

/**
 * One execution of a program that is over: what it left and what it did.
 *
 * @param machine modes, frame, registers and where the tool stands
 * @param variables the variables
 * @param calls the call of G66
 * @param tape the moves
 * @param stop the error that ended it, if one did
 */
record FinishedRun(
    Machine machine, Variables variables, Calls calls, Tape tape, Optional<Stop> stop) {}
