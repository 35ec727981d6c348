package flankfit.picture;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.solid.Crossing;

/**
 * Which way the marks run that an edge leaves: round the tool's axis on walls and cones, along the
 * trailing arc of the tool on floors.
 */
public final class CutMarks {
  /** Above this a face counts as a floor (1): a cone of 150 degrees is none. */
  private static final double FLOOR = 0.985;

  private final Tape tape;
  private final double[] radii;

  /** Marks of a program's moves with the tools of a sheet. */
  public CutMarks(Tape tape, SetupSheet sheet) {
    this.tape = tape;
    radii = new double[tape.states().size()];
    for (int i = 0; i < radii.length; i++) {
      radii[i] = sheet.tool(tape.states().get(i).tool()).map(Tool::radius).orElse(0.0);
    }
  }

  /**
   * The way of the marks at a place.
   *
   * @param maker move that made the face, or {@link Crossing#STOCK}
   * @param x place (mm)
   * @param y place (mm)
   * @param nx unit normal, out of the metal
   * @param ny unit normal
   * @param nz unit normal
   * @param grain takes a unit vector, or zeros where there are no marks
   */
  public void at(int maker, double x, double y, double nx, double ny, double nz, double[] grain) {
    grain[0] = 0;
    grain[1] = 0;
    grain[2] = 0;
    if (maker == Crossing.STOCK) {
      return;
    }
    double level = Math.hypot(nx, ny);
    if (Math.abs(nz) < FLOOR) {
      grain[0] = -ny / level;
      grain[1] = nx / level;
      return;
    }
    floor(maker, x, y, grain);
  }

  private void floor(int move, double x, double y, double[] grain) {
    double radius = radii[tape.stateIndex(move)];
    if (tape.kind(move) == MoveKind.ARC && tape.state(move).plane() == Plane.XY) {
      double dx = x - tape.centreU(move);
      double dy = y - tape.centreV(move);
      double out = Math.hypot(dx, dy);
      if (out > 1e-9) {
        double way = Math.signum(tape.sweep(move));
        trailing(-way * dy / out, way * dx / out, way * (tape.radius(move) - out), radius, grain);
      }
      return;
    }
    double dx = tape.toX(move) - tape.fromX(move);
    double dy = tape.toY(move) - tape.fromY(move);
    double length = Math.hypot(dx, dy);
    if (length < 1e-9) {
      // a plunge: marks run round the axis
      double px = x - tape.toX(move);
      double py = y - tape.toY(move);
      double out = Math.hypot(px, py);
      grain[0] = out > 1e-9 ? -py / out : 1;
      grain[1] = out > 1e-9 ? px / out : 0;
      return;
    }
    double aside = ((x - tape.fromX(move)) * -dy + (y - tape.fromY(move)) * dx) / length;
    trailing(dx / length, dy / length, aside, radius, grain);
  }

  /**
   * Tangent of the tool's trailing arc.
   *
   * @param fx way of the feed (1)
   * @param aside distance to the left of the path (mm)
   */
  private static void trailing(double fx, double fy, double aside, double radius, double[] grain) {
    double side = radius > 0 ? Math.max(-1, Math.min(1, aside / radius)) : 0;
    double back = Math.sqrt(1 - side * side);
    // from the tool's middle the place lies back along the feed and aside; the mark stands across
    grain[0] = fx * side + fy * -back;
    grain[1] = fy * side + fx * back;
  }
}
