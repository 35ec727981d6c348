package flankfit.control;

import flankfit.finding.Place;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import java.util.Objects;

/**
 * One move as the program says it, before radius compensation, in the part frame. Plane coordinates
 * are those of {@code state.plane()}.
 *
 * @param kind what kind of move
 * @param fromX where it begins (mm)
 * @param fromY where it begins (mm)
 * @param fromZ where it begins (mm)
 * @param toX where it ends (mm)
 * @param toY where it ends (mm)
 * @param toZ where it ends (mm)
 * @param centreU centre of an arc on the plane's first axis (mm); else 0
 * @param centreV centre of an arc on the plane's second axis (mm); else 0
 * @param radius radius of an arc at its start (mm); else 0
 * @param endRadius radius of an arc at its end (mm), the same but for a spiral; else 0
 * @param sweep signed sweep of an arc (rad), positive anticlockwise; else 0
 * @param seconds how long a dwell lasts (s); else 0
 * @param line line of the program, from 1
 * @param block number of the executed block, from 1
 * @param state state of the control during the move
 * @param place where a finding about the move points
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
    Place place) {
  ProgrammedMove {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(place, "place");
  }

  /** Where it begins on axis 0 (X), 1 (Y) or 2 (Z) (mm). */
  double from(int axis) {
    return axis == 0 ? fromX : axis == 1 ? fromY : fromZ;
  }

  /** Where it ends on axis 0 (X), 1 (Y) or 2 (Z) (mm). */
  double to(int axis) {
    return axis == 0 ? toX : axis == 1 ? toY : toZ;
  }

  /** Whether it is an arc. */
  boolean isArc() {
    return kind == MoveKind.ARC;
  }

  /** Whether it is a rapid. */
  boolean isRapid() {
    return kind == MoveKind.RAPID;
  }
}
