package flankfit.gauge;

import flankfit.motion.Point;
import flankfit.setup.Tool.CutterForm;
import flankfit.setup.Tool.Section;
import java.util.List;
import java.util.Optional;

/** Threads whose path as moved takes more or less from the gauges, and their exact gauging. */
public final class MovedThreads {
  private MovedThreads() {}

  /** Kinds of paths. */
  public enum Kind {
    /** Straight from the axis onto the thread, wanted down to where the groove begins. */
    STRAIGHT_ENTRY,
    /** By a half circle, to less than what is cut. */
    ARC_ENTRY,
    /** A single row whose lead is a hundredth of a millimetre too long. */
    LEAD_ERROR,
    /** The helix off the axis of its hole. */
    OFF_AXIS,
    /** A comb of ground teeth in steel. */
    GROUND_AND_BENT,
    /** The groove ends above the depth wanted. */
    TOO_SHALLOW,
    /** A boss. */
    BOSS,
    /** So tight that the GO plug's crest decides. */
    CREST_DECIDES
  }

  /** The thread of a kind as sheet and program say, with its verdict in full and no advice. */
  public static ThreadAnswer of(Kind kind) {
    return of(kind, Deviation.none());
  }

  /** The thread made with a deviation, gauged as if the sheet said so; bending must be 1. */
  public static ThreadAnswer of(Kind kind, Deviation d) {
    return varied(kind, d).judged();
  }

  /** The same with the advice of its register, which takes several runs. */
  public static ThreadAnswer advised(Kind kind, double wear) {
    Milled job = job(kind);
    job.wear = wear;
    return job.only();
  }

  private static Milled varied(Kind kind, Deviation d) {
    Milled job = job(kind);
    // The register draws the path of a hole inwards, that of a boss outwards.
    job.wear -= d.depth();
    job.mill += 2 * d.cutter();
    job.crest += d.crest();
    job.hole += 2 * d.hole();
    return job;
  }

  private static Milled job(Kind kind) {
    Milled job = new Milled();
    job.wear = -0.04;
    job.radii = new double[] {2.7, 3, 3};
    job.threadDepth = 14;
    switch (kind) {
      case STRAIGHT_ENTRY -> job.threadDepth = 16;
      case ARC_ENTRY -> {
        job.entryRiseShare = 0.25;
        job.threadDepth = 15;
      }
      case LEAD_ERROR -> {
        job.radii = new double[] {3};
        job.rows = 1;
        job.turns = 11;
        job.lead = 1.506;
        job.wear = -0.06;
      }
      case OFF_AXIS -> {
        job.axes = List.of(new Point(0.02, 0.01, 0));
        job.holesAt = List.of(new Point(0, 0, 0));
      }
      case GROUND_AND_BENT -> {
        job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
        job.metal = "steel C45";
        job.neck = Optional.of(new Section(11, 42));
        job.shank = Optional.of(new Section(14, 6));
        job.radii = new double[] {3};
        job.threadDepth = 16;
      }
      case TOO_SHALLOW -> job.threadDepth = 17;
      case BOSS -> {
        job.thread = "M20x1.5-6g";
        job.boss = true;
        job.hole = 19.85;
        job.radii = new double[] {16.08};
        job.anticlockwise = false;
        job.rising = false;
        job.zStart = -15;
        job.wear = -0.07;
        job.inwards = total -> total;
      }
      case CREST_DECIDES -> job.wear = 0.002;
    }
    return job;
  }

  /** What GO, NO-GO and the plain plugs have to spare, exactly, by the worse of both walls. */
  public static ThreadVariation.Spare exact(ThreadVariation thread, Deviation d) {
    Formed formed = thread.formed(d).orElseThrow();
    Ways ways = thread.ways(d).orElseThrow();
    ThreadVariation.Spare endless =
        thread.spare(formed.functional(thread.spec()), formed.felt(), formed.ridge());
    double flanks = ways.flanks().upTo(ways.wanted());
    double crest = ways.crest().upTo(ways.wanted());
    double go = crest >= 0 ? flanks : Math.min(flanks, crest);
    return new ThreadVariation.Spare(
        Math.min(endless.go(), go),
        Math.min(endless.noGo(), -ways.noGoRuns()),
        Math.min(endless.plain(), ways.plainSpare()));
  }
}
