package flankfit.metal;

import flankfit.motion.Extents;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small job for tests: a stock, tools, and moves in absolute coordinates. */
final class Job {
  private final List<Tool> tools = new ArrayList<>();
  private final List<Hole> holes = new ArrayList<>();
  private final TapeBuilder builder;
  private final double dx;
  private final double dy;
  private final double dz;
  private Stock stock;
  private ModalState.Spindle spindle = ModalState.Spindle.CLOCKWISE;
  private int tool;
  private double x;
  private double y;
  private double z;
  private int line = 1;

  Job() {
    this(0, 0, 0);
  }

  /** All places, the stock's too, shifted (mm). */
  Job(double dx, double dy, double dz) {
    this.dx = dx;
    this.dy = dy;
    this.dz = dz;
    builder = new TapeBuilder(new Point(dx, dy, 100 + dz), new double[] {1e4, 1e4, 1e4});
    z = 100;
  }

  Job block(double x0, double y0, double z0, double x1, double y1, double z1) {
    return stock(Stock.Shape.BLOCK, x0, y0, z0, x1, y1, z1, 0);
  }

  Job stock(
      Stock.Shape shape,
      double x0,
      double y0,
      double z0,
      double x1,
      double y1,
      double z1,
      double bore) {
    stock =
        new Stock(
            shape,
            new Extents(new Point(x0 + dx, y0 + dy, z0 + dz), new Point(x1 + dx, y1 + dy, z1 + dz)),
            bore);
    return this;
  }

  Job hole(Hole hole) {
    holes.add(hole);
    return this;
  }

  Job take(Tool one) {
    if (tools.stream().noneMatch(t -> t.number() == one.number())) {
      tools.add(one);
    }
    tool = one.number();
    return this;
  }

  Job spindle(ModalState.Spindle now) {
    spindle = now;
    return this;
  }

  Job rapid(double toX, double toY, double toZ) {
    return straight(MoveKind.RAPID, toX, toY, toZ);
  }

  Job line(double toX, double toY, double toZ) {
    return straight(MoveKind.LINE, toX, toY, toZ);
  }

  private Job straight(MoveKind kind, double toX, double toY, double toZ) {
    builder.straight(kind, toX + dx, toY + dy, toZ + dz, line, line++, state(Plane.XY));
    x = toX;
    y = toY;
    z = toZ;
    return this;
  }

  /** An arc in XY about a centre, to a height. */
  Job arc(double centreX, double centreY, double sweep, double toZ) {
    double r = Math.hypot(x - centreX, y - centreY);
    double a = Math.atan2(y - centreY, x - centreX) + sweep;
    boolean whole = Math.abs(Math.IEEEremainder(sweep, 2 * Math.PI)) < 1e-12;
    x = whole ? x : centreX + r * Math.cos(a);
    y = whole ? y : centreY + r * Math.sin(a);
    z = toZ;
    builder.arc(
        x + dx,
        y + dy,
        z + dz,
        centreX + dx,
        centreY + dy,
        r,
        r,
        sweep,
        line,
        line++,
        state(Plane.XY));
    return this;
  }

  private ModalState state(Plane plane) {
    ModalState s = ModalState.initial(LengthUnit.MILLIMETRE);
    return new ModalState(
        s.distance(),
        plane,
        s.compensation(),
        0,
        0,
        0,
        s.unit(),
        "G54",
        tool,
        100,
        spindle,
        1000,
        false);
  }

  Tape tape() {
    return builder.soFar();
  }

  SetupSheet sheet() {
    return new SetupSheet(
        "",
        "",
        LengthUnit.MILLIMETRE,
        ControlSwitches.defaults(),
        Optional.ofNullable(stock),
        List.of(),
        Map.of(),
        holes,
        tools,
        Offsets.none(),
        "",
        SetupSheet.GaugeCondition.NEW,
        List.of());
  }

  Metal metal(MetalOptions options) {
    try {
      return Metal.of(tape(), sheet(), options, MetalProgress.NONE);
    } catch (TooFineException e) {
      throw new IllegalStateException(e);
    }
  }

  Metal metal(double cell) {
    return metal(MetalOptions.usual().withCell(cell));
  }
}
