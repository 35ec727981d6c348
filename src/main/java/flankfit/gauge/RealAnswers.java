package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.sweep.Rub;
import flankfit.sweep.SweptWall;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Screws the gauges into the threads of a program, those that the same moves cut once for all: what
 * is read of such walls is the same to the last bit.
 */
final class RealAnswers {
  private final Tape tape;
  private final Map<RealPath.Key, RealAnswer> told = new HashMap<>();

  RealAnswers(Tape tape) {
    this.tape = tape;
  }

  /**
   * The answer for one thread.
   *
   * @throws NoRealWallException if the wall cannot be had
   */
  RealAnswer of(FoundThread found) throws NoRealWallException {
    RealPath path = new RealPath(found, tape);
    if (path.impossible().isPresent()) {
      throw new NoRealWallException(path.impossible().get());
    }
    RealPath.Key key = path.key();
    RealAnswer answer = told.get(key);
    if (answer == null) {
      answer = screwed(found, path);
      told.put(key, answer);
    }
    List<Rub> rubs = new ArrayList<>();
    for (Rub rub : answer.rubs()) {
      rubs.add(rub.inMove(path.move(rub.sweep(), rub.move())));
    }
    return answer.with(rubs, path.phase());
  }

  private static RealAnswer screwed(FoundThread found, RealPath path) throws NoRealWallException {
    SweptWall wall = path.wall();
    WallField field = path.read(wall);
    try {
      Travel go = Travel.of(field, ThreadGauge.go(found.spec()));
      TurnsRuling noGo = TurnsRuling.of(field, ThreadGauge.noGo(found.spec()));
      double wanted = Math.max(path.wanted(), wall.bottom());
      return new RealAnswer(
          go,
          go.reaches(wanted),
          noGo,
          PlainRuling.of(field, wanted),
          DepthReading.of(field, go, wanted),
          WallMeasures.of(field, path.wanted()),
          wall.rubs(),
          words(found, go, noGo),
          wall,
          path.phase());
    } catch (UnsettledGaugeException e) {
      throw new NoRealWallException(e.getMessage(), e);
    }
  }

  private static String words(FoundThread found, Travel go, TurnsRuling noGo) {
    boolean inside = found.spec().internal();
    StringBuilder words = new StringBuilder(TravelText.of(go, inside, found.text()));
    for (Travel travel : noGo.travels()) {
      words.append("; ").append(TravelText.of(travel, inside, found.text()));
    }
    return words.toString();
  }
}
