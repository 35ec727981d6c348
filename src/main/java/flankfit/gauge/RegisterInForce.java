package flankfit.gauge;

import flankfit.motion.ModalState.Compensation;
import flankfit.motion.Tape;
import flankfit.setup.Offsets;
import flankfit.setup.Offsets.Register;
import flankfit.setup.RadiusSetting;
import java.util.Optional;

/**
 * The D register of a pass, and where its wear is to be changed: in the sheet, or in the block of
 * the program that enters it itself and would overwrite the sheet.
 *
 * @param number number of the register
 * @param entered geometry and wear as the pass uses them (mm); wear without what the program adds
 * @param setBy the block that enters the wear; empty when the operator does
 */
record RegisterInForce(int number, Register entered, Optional<RadiusSetting> setBy) {

  /** The register of a pass as it stood when its compensation began: a later change waits. */
  static RegisterInForce of(GaugeRequest request, Pass pass) {
    int number = pass.state().radiusRegister();
    int block = startUp(request.tape(), pass.first());
    Register entered = request.setup().offsets().radius(number).orElse(new Register(0, 0));
    Optional<RadiusSetting> setBy = Optional.empty();
    for (RadiusSetting setting : request.radiusSettings()) {
      if (setting.number() != number || setting.block() > block) {
        continue;
      }
      if (!setting.wear()) {
        entered = new Register(setting.value(), entered.wear());
      } else if (!setting.adds()) {
        entered = new Register(entered.geometry(), setting.value());
        setBy = Optional.of(setting);
      }
    }
    return new RegisterInForce(number, entered, setBy);
  }

  /** The block in which the compensation of a move began. */
  private static int startUp(Tape tape, int move) {
    int first = move;
    while (first > 0 && tape.state(first - 1).compensation() != Compensation.OFF) {
      first--;
    }
    return tape.block(first);
  }

  /** The registers for a trial in which the wear is entered so much greater (mm). */
  Offsets tried(Offsets sheet, double more) {
    if (setBy.isPresent()) {
      return sheet.withTrial(setBy.get().place(), more);
    }
    Register old = sheet.radius(number).orElse(new Register(0, 0));
    return sheet.withRadius(number, new Register(old.geometry(), old.wear() + more));
  }
}
