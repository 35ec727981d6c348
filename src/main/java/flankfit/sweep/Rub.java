package flankfit.sweep;

/**
 * A part of a cutter above its teeth driven into the metal that stood before the thread was cut.
 *
 * @param sweep index of the sweep
 * @param section what rubs
 * @param move index of the tape's move in which it is deepest; -1 when the path names none
 * @param theta polar angle about the thread's axis of the deepest place (rad), in (-π, π]
 * @param z height of its lower end there (mm), not below the wall's bottom
 * @param depth depth beyond the blank (mm), above 0; accurate to 1e-6 on arcs about the axis
 */
public record Rub(
    int sweep, Cutter.Section section, int move, double theta, double z, double depth) {
  /** The same place in another move of the tape. */
  public Rub inMove(int other) {
    return new Rub(sweep, section, other, theta, z, depth);
  }
}
