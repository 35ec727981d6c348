package flankfit.gauge;

import flankfit.sweep.Flank;
import flankfit.sweep.Groove;
import flankfit.sweep.Maximum;
import flankfit.sweep.RegularThread;

/**
 * The functional diameter: pitch diameter of the largest perfect plug that enters, or of the
 * smallest ring. The gauge is held central and is free along the axis, that is, to turn. On each
 * cylinder its ridge must not be wider than the groove: {@code P/4 ± (d/2 - ρ) tan α}.
 *
 * @param functional with the GO gauge's full crest (mm)
 * @param flanks with the crest relieved, so that flanks alone decide (mm)
 * @param decidedBy what touches first with the full crest
 */
record Fit(double functional, double flanks, DecidedBy decidedBy) {
  /** Places tried along a flank before the least is refined. */
  private static final int STEPS = 24;

  /**
   * Loss of functional diameter from which the crest is said to decide (mm): a tenth of a
   * micrometre, the last figure told. Below it crest and flanks touch as one.
   */
  private static final double CREST_FIRST = 1e-4;

  /** What touches first. */
  public enum DecidedBy {
    CREST("crest"),
    FLANK_UP("flank-up"),
    FLANK_DOWN("flank-down");

    private final String word;

    DecidedBy(String word) {
      this.word = word;
    }

    /** The word people and JSON see. */
    public String word() {
      return word;
    }
  }

  /**
   * Tries the gauge on a thread.
   *
   * @param error greatest axial error between engaged grooves (mm), not below 0
   */
  static Fit of(RegularThread thread, Mate mate, double error) {
    Groove groove = thread.groove();
    double root = flankEnd(thread, mate);
    double crest = groove.isBeyondBottom(mate.crestRadius()) ? groove.bottom() : mate.crestRadius();
    double relieved =
        groove.isBeyondBottom(mate.relievedRadius()) ? groove.bottom() : mate.relievedRadius();
    double upFlank = room(groove, mate, root, relieved, Flank.UP);
    double downFlank =
        groove.isSymmetric() ? upFlank : room(groove, mate, root, relieved, Flank.DOWN);
    double upFull = Math.min(upFlank, room(groove, mate, relieved, crest, Flank.UP));
    double downFull =
        groove.isSymmetric()
            ? upFull
            : Math.min(downFlank, room(groove, mate, relieved, crest, Flank.DOWN));
    double flanks = diameter(mate, upFlank + downFlank - error);
    double full = diameter(mate, upFull + downFull - error);
    return decided(mate, groove, flanks, full, upFlank <= downFlank);
  }

  /**
   * What flanks and corners of the groove leave for the full gauge (mm): its functional diameter
   * unless its crest cylinder is larger than the groove's bottom.
   *
   * @param error greatest axial error between engaged grooves (mm), not below 0
   */
  static double ofFlanks(RegularThread thread, Mate mate, double error) {
    Groove groove = thread.groove();
    double root = flankEnd(thread, mate);
    double up = roomToCrest(groove, mate, root, Flank.UP);
    double down = groove.isSymmetric() ? up : roomToCrest(groove, mate, root, Flank.DOWN);
    return diameter(mate, up + down - error);
  }

  private static double roomToCrest(Groove groove, Mate mate, double root, Flank flank) {
    double crest = groove.isBeyondBottom(mate.crestRadius()) ? groove.bottom() : mate.crestRadius();
    double relieved =
        groove.isBeyondBottom(mate.relievedRadius()) ? groove.bottom() : mate.relievedRadius();
    return Math.min(
        room(groove, mate, root, relieved, flank), room(groove, mate, relieved, crest, flank));
  }

  /**
   * Play of the gauge's crest in the groove's bottom (mm on the radius); negative: it is kept out.
   */
  static double play(RegularThread thread, Mate mate) {
    double play = thread.groove().bottom() - mate.crestRadius();
    return mate.internal() ? play : -play;
  }

  private static Fit decided(Mate mate, Groove groove, double flanks, double full, boolean up) {
    double sign = mate.internal() ? 1 : -1;
    double beyond = sign * (mate.crestRadius() - groove.bottom());
    double functional = full;
    if (beyond > 0) {
      // The crest cylinder alone keeps the gauge out: it is too large by this on the diameter.
      double byCrest = mate.pitchDiameter() - sign * 2 * beyond;
      functional = mate.internal() ? Math.min(full, byCrest) : Math.max(full, byCrest);
    }
    boolean crest = beyond > 0 || sign * (flanks - functional) > CREST_FIRST;
    DecidedBy by = crest ? DecidedBy.CREST : up ? DecidedBy.FLANK_UP : DecidedBy.FLANK_DOWN;
    return new Fit(functional, flanks, by);
  }

  /** The radius where the engaged flank ends at the ridge's crest. */
  private static double flankEnd(RegularThread thread, Mate mate) {
    double ridge = thread.crest();
    double end =
        mate.internal() ? Math.max(mate.rootRadius(), ridge) : Math.min(mate.rootRadius(), ridge);
    // So shallow a groove meets the gauge with its crest only.
    return thread.groove().isBeyondBottom(end) ? ridge : end;
  }

  private static double diameter(Mate mate, double room) {
    double d = room / Math.tan(mate.halfAngle());
    return mate.internal() ? d : -d;
  }

  /** The least of groove half width less that of the gauge at pitch radius 0 (mm). */
  private static double room(Groove groove, Mate mate, double from, double to, Flank flank) {
    double slope = Math.tan(mate.halfAngle()) * (mate.internal() ? 1 : -1);
    double low = Math.min(from, to);
    double high = Math.max(from, to);
    double step = (high - low) / STEPS;
    double least = Double.POSITIVE_INFINITY;
    double at = low;
    for (int i = 0; i <= STEPS; i++) {
      double rho = Math.min(high, low + i * step);
      double here = groove.halfWidth(rho, flank) + slope * rho;
      if (here < least) {
        least = here;
        at = rho;
      }
    }
    double left = Math.max(low, at - step);
    double right = Math.min(high, at + step);
    double refined =
        step > 0
            ? -Maximum.of(rho -> -groove.halfWidth(rho, flank) - slope * rho, left, right)
            : least;
    return Math.min(least, refined) - mate.pitch() / 4;
  }
}
