package flankfit.gauge;

import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;

/** Where the thread of a designation is looked up. */
interface ThreadLookup {
  ThreadSpec of(String designation) throws InvalidDesignationException;
}
