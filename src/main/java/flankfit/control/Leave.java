package flankfit.control;

import java.util.Optional;

/** What a block asks for that the next line of the text does not answer. Used again. */
final class Leave {
  /** What a control statement asks for. */
  enum Jump {
    NONE,
    /** To a sequence number. */
    GOTO,
    /** Into the loop that begins here. */
    ENTER,
    /** Past the loop that begins here. */
    SKIP,
    /** Back to the beginning of the loop that ends here. */
    BACK
  }

  private Jump jump = Jump.NONE;
  private int target;
  private Optional<Call> call = Optional.empty();
  private boolean returns;
  private int returnTarget;
  private boolean modal;
  private boolean asked;

  void clear() {
    jump = Jump.NONE;
    call = Optional.empty();
    returns = false;
    modal = false;
    asked = false;
  }

  /** Whether anything was asked for. */
  boolean asked() {
    return asked;
  }

  void jump(Jump where, int sequence) {
    jump = where;
    target = sequence;
    asked = true;
  }

  void call(Call what) {
    call = Optional.of(what);
    asked = true;
  }

  /** M99; a sequence number of the caller, or -1. */
  void returns(int sequence) {
    returns = true;
    returnTarget = sequence;
    asked = true;
  }

  /** An axis moved while a modal call is on. */
  void modalCall() {
    modal = true;
    asked = true;
  }

  Jump jump() {
    return jump;
  }

  int target() {
    return target;
  }

  Optional<Call> call() {
    return call;
  }

  boolean returns() {
    return returns;
  }

  int returnTarget() {
    return returnTarget;
  }

  boolean callsModally() {
    return modal;
  }
}
