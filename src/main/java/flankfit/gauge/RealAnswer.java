package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.sweep.GroovePhase;
import flankfit.sweep.Rub;
import flankfit.sweep.SweptWall;
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
 * @param measures measures over the turn and along the axis; empty below one turn of full form
 * @param rubs where what does not cut is driven into metal, deepest first
 * @param words the ways of both gauges in words
 * @param wall the wall
 * @param phase where the grooves of the endless helix lie, to compare with
 */
public record RealAnswer(
    Travel go,
    boolean reachesWanted,
    TurnsRuling noGo,
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

  /** Screws the gauges into the real thread. */
  static RealAnswer of(FoundThread found, Tape tape) {
    RealPath path = new RealPath(found, tape);
    SweptWall wall = path.wall();
    WallField field = WallField.sample(wall, found.spec(), path.isThrough());
    Travel go = Travel.of(field, ThreadGauge.go(found.spec()));
    TurnsRuling noGo = TurnsRuling.of(field, ThreadGauge.noGo(found.spec()));
    boolean inside = found.spec().internal();
    StringBuilder words = new StringBuilder(TravelText.of(go, inside, found.text()));
    for (Travel travel : noGo.travels()) {
      words.append("; ").append(TravelText.of(travel, inside, found.text()));
    }
    return new RealAnswer(
        go,
        go.reaches(Math.max(found.wantedBottom(), wall.bottom())),
        noGo,
        WallMeasures.of(field, found.wantedBottom()),
        wall.rubs(),
        words.toString(),
        wall,
        path.phase());
  }
}
