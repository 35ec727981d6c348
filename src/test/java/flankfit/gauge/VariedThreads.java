package flankfit.gauge;

import flankfit.motion.Point;
import flankfit.setup.Tool;
import flankfit.setup.Tool.CutterForm;
import flankfit.setup.Tool.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Threads of a few kinds for tests of the odds: endless helices, where nothing else is said. */
public final class VariedThreads {
  private VariedThreads() {}

  /** M20 x 1.5 in a hole by a straight 14 mm comb, two passes at the finish radius. */
  public static ThreadAnswer straight(double wear) {
    return job(wear).endless();
  }

  /** The same in three holes: two cut alike, the third to another class. */
  public static GaugeAnswer pattern(double wear, String third) {
    Milled job = job(wear);
    job.axes = List.of(new Point(0, 0, 0), new Point(40, 0, 0));
    GaugeAnswer alike = job.gauge();
    job.axes = List.of(new Point(80, 0, 0));
    job.thread = third;
    ThreadAnswer other = named(job.only(), "port 3");
    List<ThreadAnswer> all = new ArrayList<>(alike.threads());
    all.add(other);
    return new GaugeAnswer(all, alike.assumptions(), alike.findings());
  }

  private static ThreadAnswer named(ThreadAnswer t, String hole) {
    return new ThreadAnswer(
        hole,
        t.spec(),
        t.line(),
        t.x(),
        t.y(),
        t.rightHand(),
        t.lead(),
        t.cutting(),
        t.zTop(),
        t.zBottom(),
        t.passes(),
        t.finished(),
        t.surface(),
        t.go(),
        t.noGo(),
        t.plain(),
        t.verdict(),
        t.reason(),
        t.offset(),
        t.bending(),
        t.real(),
        t.variation());
  }

  /** The same by a mill ground for the thread, in steel, bending. */
  public static ThreadAnswer groundAndBent(double wear) {
    Milled job = job(wear);
    job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
    bend(job);
    return job.endless();
  }

  /** The same on the path as moved, with its entry and exit. */
  public static ThreadAnswer realGroundAndBent(double wear) {
    Milled job = job(wear);
    job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
    bend(job);
    return job.only();
  }

  /** The same with straight flanks, bending. */
  public static ThreadAnswer straightAndBent(double wear) {
    Milled job = job(wear);
    bend(job);
    return job.endless();
  }

  /** A mill whose form the sheet leaves out. */
  public static ThreadAnswer formAssumed(double wear) {
    Milled job = job(wear);
    job.form = new CutterForm.GroundFor("M20x1.5-6H", true);
    return job.endless();
  }

  /** With the register moving the path outwards instead of inwards. */
  public static ThreadAnswer outwards(double wear) {
    Milled job = job(wear);
    job.inwards = total -> total;
    return job.endless();
  }

  /** M20 x 1.5 on a boss. */
  public static ThreadAnswer boss(double wear) {
    Milled job = job(wear);
    job.thread = "M20x1.5-6g";
    job.boss = true;
    job.hole = 19.85;
    job.radii = new double[] {16.08};
    job.anticlockwise = false;
    job.rising = false;
    job.zStart = 0;
    job.inwards = total -> total;
    return job.endless();
  }

  /** Of a mill whose diameter, run-out and crest are known exactly, in a hole that is, too. */
  public static ThreadAnswer exact(double wear) {
    Milled job = job(wear);
    job.stated = new Tool.Stated(Optional.of(0.0), Optional.of(0.0), Optional.of(0.0));
    job.holeTolerance = Optional.of(0.0);
    return job.endless();
  }

  /** Of a mill of which the diameter alone is not known exactly. */
  public static ThreadAnswer diameterOpen(double wear, double tolerance) {
    Milled job = job(wear);
    job.stated = new Tool.Stated(Optional.of(tolerance), Optional.of(0.0), Optional.of(0.0));
    job.holeTolerance = Optional.of(0.0);
    return job.endless();
  }

  /** The same mill with its diameter off, where the sheet goes on saying 14 mm. */
  public static ThreadAnswer ofMill(double diameter, double wear) {
    Milled job = job(wear);
    job.mill = diameter;
    return job.endless();
  }

  /** In a hole of another size. */
  public static ThreadAnswer holeOf(double diameter, double tolerance) {
    Milled job = job(-0.03);
    job.hole = diameter;
    job.holeTolerance = Optional.of(tolerance);
    return job.endless();
  }

  /** A left-hand helix where a right-hand thread is wanted. */
  public static ThreadAnswer wrongHand() {
    Milled job = job(0);
    job.rising = false;
    job.zStart = 0;
    return job.endless();
  }

  /** Where the control takes only so much wear. */
  public static ThreadAnswer limited(double wear, double limit) {
    Milled job = job(wear);
    job.wearLimit = Optional.of(limit);
    return job.endless();
  }

  /** Without a register. */
  public static ThreadAnswer noRegister() {
    Milled job = job(0);
    job.register = 0;
    return job.endless();
  }

  private static Milled job(double wear) {
    Milled job = new Milled();
    job.radii = new double[] {2.7, 3, 3};
    job.wear = wear;
    return job;
  }

  private static void bend(Milled job) {
    job.metal = "steel C45";
    job.neck = Optional.of(new Section(11, 42));
    job.shank = Optional.of(new Section(14, 6));
  }
}
