package flankfit.setup;

import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;

/** Looks a thread designation up. */
@FunctionalInterface
interface DesignationCheck {
  /**
   * The thread that a designation asks for.
   *
   * @throws InvalidDesignationException if no standard knows it
   */
  ThreadSpec parse(String designation) throws InvalidDesignationException;
}
