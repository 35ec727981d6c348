package flankfit.gauge;

import flankfit.sweep.GroovePhase;
import flankfit.sweep.Rub;
import flankfit.sweep.Wall;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What gauges do on the wall that the motion leaves as it is, entry, exit and incomplete turns
 * included.
 *
 * @param go the GO gauge's way from the mouth
 * @param reachesWanted whether it passes the whole length wanted
 * @param noGo the NO-GO gauge's turns by the rule of the thread's system
 * @param plain plain plugs between the ridges' crests, inside a hole
 * @param depth what a GO plug marked for depth reads; empty where it goes through
 * @param measures measures over the turn and along the axis; empty below one turn of full form
 * @param rubs where what does not cut is driven into metal, deepest first
 * @param words the ways of both gauges in words
 * @param wall the wall, about its hole's axis
 * @param phase where the grooves of the endless helix lie, to compare with
 */
public record RealAnswer(
    Travel go,
    boolean reachesWanted,
    TurnsRuling noGo,
    Optional<PlainRuling> plain,
    Optional<DepthReading> depth,
    Optional<WallMeasures> measures,
    List<Rub> rubs,
    String words,
    Wall wall,
    GroovePhase phase) {
  public RealAnswer {
    Objects.requireNonNull(go, "go");
    Objects.requireNonNull(noGo, "noGo");
    rubs = List.copyOf(rubs);
  }

  /** The same wall elsewhere on the tape. */
  RealAnswer with(List<Rub> otherRubs, GroovePhase otherPhase) {
    return new RealAnswer(
        go, reachesWanted, noGo, plain, depth, measures, otherRubs, words, wall, otherPhase);
  }
}
