package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.Groove;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.JoinedGroove;
import flankfit.sweep.RegularThread;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The endless regular thread that the passes about one axis leave.
 *
 * @param spec thread wanted
 * @param blankRadius radius of the hole or boss before the thread (mm)
 * @param passes the passes in order, at least one
 * @param bend added to the radius of each pass's path by bending (mm); depth and order of the
 *     passes are those of the motion
 */
record ThreadModel(ThreadSpec spec, double blankRadius, List<CutPass> passes, List<Double> bend) {
  /** Radii nearer than this are one radius: a spring pass repeats the finishing one. */
  static final double SAME_RADIUS = 0.001;

  /** Share of the pitch by which leads may differ and still leave one axial section. */
  private static final double SAME_LEAD = 1e-3;

  /** Share of a turn that counts as none. */
  private static final double TURN_SLACK = 1e-3;

  private static final int MOST_REPEATS = 20;

  ThreadModel {
    passes = List.copyOf(passes);
    bend = List.copyOf(bend);
  }

  /** The thread of stiff passes. */
  ThreadModel(ThreadSpec spec, double blankRadius, List<CutPass> passes) {
    this(spec, blankRadius, passes, Collections.nCopies(passes.size(), 0.0));
  }

  /** The same passes bent. */
  ThreadModel bent(List<Double> other) {
    return new ThreadModel(spec, blankRadius, passes, other);
  }

  /** Index of the first pass at full depth. */
  int finishing() {
    boolean internal = spec.internal();
    int deepest = 0;
    for (int i = 1; i < passes.size(); i++) {
      double gain = passes.get(i).reach(internal) - passes.get(deepest).reach(internal);
      if ((internal ? gain : -gain) > SAME_RADIUS) {
        deepest = i;
      }
    }
    return deepest;
  }

  CutPass finish() {
    return passes.get(finishing());
  }

  /** Axial distance from groove to groove as cut (mm). */
  double spacing() {
    CutPass finish = finish();
    if (finish.rowPitch() > 0) {
      return finish.rowPitch();
    }
    double byLead = finish.pass().lead() / spec.starts();
    return byLead > 0 ? byLead : spec.pitch();
  }

  /** The thread after all passes. */
  RegularThread thread() {
    return thread(new double[passes.size()], passes.size());
  }

  /** The thread after the first so many passes. */
  RegularThread threadAfter(int count) {
    return thread(new double[passes.size()], count);
  }

  /**
   * The thread with changed path radii.
   *
   * @param change added to the radius of each pass's path (mm)
   * @param count number of passes, from the first, that have been run
   */
  RegularThread thread(double[] change, int count) {
    int deepest = deepestOf(change, count);
    List<JoinedGroove.Member> members = new ArrayList<>();
    addTurns(members, deepest, change, 0);
    for (int i = 0; i < count; i++) {
      if (i != deepest && hasLeadOf(deepest, i)) {
        addTurns(members, i, change, shift(deepest, i));
      }
    }
    Groove groove = members.size() == 1 ? members.get(0).groove() : joined(members);
    return new RegularThread(groove, spacing(), blankRadius);
  }

  /** The first of so many passes that reaches deepest: the groove's middle is its own. */
  int deepestOf(int count) {
    return deepestOf(new double[passes.size()], count);
  }

  private int deepestOf(double[] change, int count) {
    int deepest = 0;
    for (int i = 1; i < count; i++) {
      double gain = reach(i, change) - reach(deepest, change);
      if (spec.internal() ? gain > SAME_RADIUS : gain < -SAME_RADIUS) {
        deepest = i;
      }
    }
    return deepest;
  }

  private static Groove joined(List<JoinedGroove.Member> members) {
    return new JoinedGroove(members);
  }

  private double reach(int i, double[] change) {
    return passes.get(i).reach(spec.internal()) + change[i] + bend.get(i);
  }

  /** Whether two passes wind alike, so that one axial section tells of both. */
  boolean hasLeadOf(int a, int b) {
    Pass one = passes.get(a).pass();
    Pass other = passes.get(b).pass();
    return one.isRightHanded() == other.isRightHanded()
        && Math.abs(one.lead() - other.lead()) <= SAME_LEAD * spec.pitch();
  }

  /**
   * A comb that goes round more than once meets its own grooves again, shifted by its lead error.
   */
  private void addTurns(List<JoinedGroove.Member> members, int i, double[] change, double shift) {
    CutPass cut = passes.get(i);
    double radius = cut.pass().radius() + change[i] + bend.get(i);
    Groove groove = new HelicalGroove(cut.tooth(), spec.internal(), radius, cut.pass().lead());
    members.add(new JoinedGroove.Member(groove, shift));
    if (cut.rowPitch() > 0) {
      double slip = wrapped(cut.pass().lead(), cut.rowPitch());
      int repeats = (int) Math.min(MOST_REPEATS, Math.ceil(cut.pass().turns() - 1 - TURN_SLACK));
      for (int k = 1; k <= repeats && !Tolerance.MODEL.zero(slip); k++) {
        members.add(new JoinedGroove.Member(groove, shift + k * slip));
      }
    }
  }

  /** Height by which the grooves of a pass lie off those of another (mm), to the nearest groove. */
  double shift(int from, int to) {
    double off = wrapped(apart(from, to), spacing());
    return Tolerance.MODEL.zero(off) ? 0 : off;
  }

  /** Height by which the helix of a pass lies above that of another at one angle (mm). */
  double apart(int from, int to) {
    CutPass a = passes.get(from);
    CutPass b = passes.get(to);
    return b.lowestRow(b.pass().phase()) - a.lowestRow(a.pass().phase());
  }

  private static double wrapped(double length, double period) {
    return length - period * Math.rint(length / period);
  }

  /** Height of the highest groove at full depth (mm). */
  double zTop() {
    double top = Double.NEGATIVE_INFINITY;
    for (CutPass cut : passes) {
      if (isAtFullDepth(cut)) {
        top = Math.max(top, cut.zTop());
      }
    }
    return top;
  }

  /** Height of the lowest groove at full depth (mm). */
  double zBottom() {
    double bottom = Double.POSITIVE_INFINITY;
    for (CutPass cut : passes) {
      if (isAtFullDepth(cut)) {
        bottom = Math.min(bottom, cut.zBottom());
      }
    }
    return bottom;
  }

  boolean isAtFullDepth(CutPass cut) {
    double apart = cut.reach(spec.internal()) - finish().reach(spec.internal());
    return Math.abs(apart) <= SAME_RADIUS;
  }

  /** Error of the lead as moved (mm), signed: positive when the motion rises too much in a turn. */
  double leadError() {
    return finish().pass().lead() - spec.lead();
  }

  /**
   * Greatest error of position along the axis between two grooves that a gauge engages (mm). A
   * single row carries the lead error over the whole length; a comb starts afresh with each row, so
   * over one turn only, and adds the error of its own pitch over the length.
   *
   * @param engaged engaged length (mm)
   */
  double accumulatedError(double engaged) {
    CutPass finish = finish();
    double inTurn = Math.abs(leadError());
    if (finish.rowPitch() > 0) {
      double rows = Math.abs(wrapped(finish.rowPitch(), spec.pitch()));
      return inTurn + rows * engaged / spec.pitch();
    }
    return inTurn * engaged / spec.lead();
  }
}
