package flankfit.odds;

import flankfit.gauge.Deviation;
import flankfit.gauge.Formed;
import flankfit.gauge.ThreadVariation;
import flankfit.gauge.ThreadVariation.Spare;
import flankfit.odds.MovedResponse.GoLoss;
import flankfit.odds.MovedResponse.Loss;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What gauges have to spare in a thread with deviations, by the rules of the verdict: the worse of
 * the endless helix and the path as moved counts.
 */
final class Gauges {
  private final ThreadVariation thread;
  private final Response response;
  private final Optional<MovedResponse> moved;
  private final Optional<GoLoss> whole;
  private final Optional<Loss> noGo;
  private final double plain;
  private final Map<Double, Optional<GoLoss>> goTo = new HashMap<>();
  private final Map<Double, Optional<Loss>> noGoTo = new HashMap<>();

  Gauges(Response response, Optional<MovedResponse> moved) {
    this.thread = response.variation();
    this.response = response;
    this.moved = moved;
    this.whole = moved.map(m -> m.go(m.wanted()));
    this.noGo = moved.map(MovedResponse::noGo);
    this.plain = moved.map(MovedResponse::plain).orElse(0.0);
  }

  /** The same with the path as moved read at other depths (mm), too. */
  Gauges withDepths(List<Double> depths) {
    return new Gauges(response, moved.map(m -> m.and(depths)));
  }

  Response response() {
    return response;
  }

  /** Whether the path as moved counts. */
  boolean isMoved() {
    return moved.isPresent();
  }

  /** Way that the GO gauge has to go from the first metal (mm). */
  double wanted() {
    return moved.map(MovedResponse::wanted).orElse(thread.engagedTurns() * thread.spec().lead());
  }

  /**
   * What all gauges have to spare (mm on the diameter).
   *
   * @param oval greatest less least radius of the circles (mm): GO feels the least diameter
   */
  Spare spare(Deviation d, double oval) {
    Formed formed = response.at(d);
    Spare endless = endless(formed);
    double go = Math.min(endless.go(), whole.map(w -> go(formed, d, w)).orElse(endless.go()));
    double stops = Math.min(endless.noGo(), noGo(endless, d, noGo));
    return new Spare(go - oval, stops, endless.plain() + plain);
  }

  private Spare endless(Formed formed) {
    return thread.spare(formed.functional(thread.spec()), formed.felt(), formed.ridge());
  }

  private double go(Formed formed, Deviation d, GoLoss loss) {
    double crest = 2 * formed.play() + loss.crest().at(d.depth(), d.bending());
    double flanks =
        thread.spare(formed.flanks(), formed.felt(), formed.ridge()).go()
            + loss.flanks().at(d.depth(), d.bending());
    return crest >= 0 ? flanks : Math.min(flanks, crest);
  }

  private static double noGo(Spare endless, Deviation d, Optional<Loss> loss) {
    return endless.noGo() + loss.map(l -> l.at(d.depth(), d.bending())).orElse(0.0);
  }

  /**
   * What the GO gauge has to spare on a part of its way (mm on the diameter).
   *
   * @param length way from the first metal (mm)
   */
  double goTo(double length, Deviation d, double oval) {
    Formed formed = response.at(d);
    double whole = spare(d, oval).go();
    return goTo.computeIfAbsent(length, to -> moved.map(m -> m.go(to)))
        .map(loss -> Math.max(whole, go(formed, d, loss) - oval))
        .orElse(whole);
  }

  /**
   * By how much the NO-GO gauge stops on a part of its way from the mouth (mm on the diameter).
   *
   * @param length way from the first metal (mm)
   */
  double noGoTo(double length, Deviation d) {
    double allowed = spare(d, 0).noGo();
    Optional<Loss> loss = noGoTo.computeIfAbsent(length, to -> moved.map(m -> m.noGo(to)));
    return loss.isEmpty() ? allowed : Math.min(allowed, noGo(endless(response.at(d)), d, loss));
  }
}
