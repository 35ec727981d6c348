package flankfit.control;

import flankfit.finding.Code;

/** Where axis words lead in transformed coordinates, and in the plane of a cycle. */
final class Aim {
  private final Machine machine;
  private final BlockWords words;
  private final double[] given = new double[3];

  Aim(Machine machine) {
    this.machine = machine;
    this.words = machine.words;
  }

  /**
   * Works out the point that the axis words name, in any frame; axes not named stay.
   *
   * @param but axis whose word is not looked at; -1 for none
   * @param target takes the point, part frame (mm)
   */
  void toward(int but, double[] target) {
    System.arraycopy(machine.tip, 0, target, 0, 3);
    if (machine.modes.absolute()) {
      coordinates(but, target);
    } else {
      distances(but, target);
    }
  }

  private void coordinates(int but, double[] target) {
    boolean transformed = machine.frame.transforms().isOn();
    System.arraycopy(machine.tip, 0, given, 0, 3);
    machine.frame.toProgram(given);
    boolean mixed = false;
    for (int axis = 0; axis < 3; axis++) {
      int word = axis == but ? -1 : words.axis(axis);
      if (word >= 0) {
        given[axis] = machine.dimensions.millimetres(words.block(), word);
        mixed |= machine.frame.transforms().mixes(axis);
        machine.assumed[axis] = false;
      }
    }
    if (transformed) {
      machine.frame.toPart(given);
    }
    for (int axis = 0; axis < 3; axis++) {
      boolean named = axis != but && words.axis(axis) >= 0;
      if (named || (mixed && machine.frame.transforms().mixes(axis))) {
        target[axis] = transformed ? given[axis] : given[axis] + machine.frame.zero(axis);
      }
    }
  }

  private void distances(int but, double[] target) {
    for (int axis = 0; axis < 3; axis++) {
      int word = axis == but ? -1 : words.axis(axis);
      given[axis] = 0;
      if (word >= 0) {
        given[axis] = machine.dimensions.millimetres(words.block(), word);
        fromAssumed(axis, word, given[axis]);
      }
    }
    machine.frame.transforms().turn(given);
    for (int axis = 0; axis < 3; axis++) {
      target[axis] += given[axis];
    }
  }

  /** OF13 for a distance on an axis whose place is only assumed. */
  void fromAssumed(int axis, int word, double value) {
    if (machine.assumed[axis] && value != 0) {
      machine.assumed[axis] = false;
      machine.report.add(
          Code.OF13,
          word,
          "distance from an assumed point",
          "where the axis stands is not known",
          "state a coordinate first");
    }
  }
}
