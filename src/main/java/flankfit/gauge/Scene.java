package flankfit.gauge;

import flankfit.finding.Place;
import flankfit.motion.Tape;

/**
 * What a rule looks at.
 *
 * @param program name of the program
 * @param tape the motion
 * @param found the thread
 */
record Scene(String program, Tape tape, FoundThread found) {
  Place at(int line) {
    return new Place(program, line, 0, 0);
  }

  Place at(Pass pass) {
    return at(pass.line());
  }
}
