package flankfit.control;

import flankfit.finding.Place;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;

/**
 * A move as programmed, before radius compensation, in the part frame.
 *
 * @param kind RAPID, LINE, ARC or DWELL
 * @param fromX where the programmed point stands (mm)
 * @param fromY likewise (mm)
 * @param fromZ likewise (mm)
 * @param toX programmed end (mm)
 * @param toY likewise (mm)
 * @param toZ likewise (mm)
 * @param centreU centre of an arc on the plane's first axis (mm); else 0
 * @param centreV centre of an arc on the second axis (mm); else 0
 * @param radius radius of an arc at its start (mm); else 0
 * @param endRadius radius of an arc at its end (mm); else 0
 * @param sweep signed sweep of an arc (rad), positive anticlockwise; else 0
 * @param seconds time of a dwell (s); else 0
 * @param line line of the program, from 1
 * @param block number of the executed block, from 1
 * @param state state of the control during the move
 * @param place the block in the text
 */
record ProgrammedMove(
    MoveKind kind,
    double fromX,
    double fromY,
    double fromZ,
    double toX,
    double toY,
    double toZ,
    double centreU,
    double centreV,
    double radius,
    double endRadius,
    double sweep,
    double seconds,
    int line,
    int block,
    ModalState state,
    Place place) {}
