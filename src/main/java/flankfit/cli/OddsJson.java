package flankfit.cli;

import flankfit.odds.Clash;
import flankfit.odds.Contributor;
import flankfit.odds.Estimate;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.GaugingAdvice.Chances;
import flankfit.odds.GaugingAdvice.Trend;
import flankfit.odds.Midway;
import flankfit.odds.PartObserved;
import flankfit.odds.ThreadOdds;
import java.io.IOException;
import java.util.List;

/** The parts {@code odds} and {@code gauging} of a thread's answer. */
final class OddsJson {
  private OddsJson() {}

  static void odds(ThreadOdds odds, Json json) throws IOException {
    json.object("odds")
        .put("goEnters", odds.goEnters())
        .put("noGoStops", odds.noGoStops())
        .put("plainGood", odds.plainGood())
        .put("good", odds.good())
        .put("pitchLow", odds.pitchLow())
        .put("pitchHigh", odds.pitchHigh())
        .put("draws", odds.draws())
        .put("seed", odds.seed())
        .array("contributors");
    for (Contributor contributor : odds.contributors()) {
      json.object()
          .put("name", contributor.name())
          .put("share", contributor.share())
          .put("alone", contributor.alone())
          .end();
    }
    json.endArray().end();
  }

  static void gauging(GaugingAdvice advice, Json json) throws IOException {
    json.object("gauging").array("parts");
    for (PartObserved part : advice.observed()) {
      json.object()
          .put("part", part.part())
          .put("wear", part.wear())
          .put("observed", part.observations().stream().map(seen -> seen.text()).toList())
          .end();
    }
    json.endArray();
    estimate("cutter", advice.cutter(), json);
    estimate("crest", advice.crest(), json);
    if (advice.straight().isPresent()) {
      json.put("straightForm", advice.straight().get());
    }
    json.object("asItIs");
    estimate("pitch", advice.pitch(), json);
    chances(advice.asItIs(), json);
    json.end();
    if (advice.key().isPresent()) {
      key(advice.key().get(), json);
    }
    if (advice.trend().isPresent()) {
      trend(advice.trend().get(), json);
    }
    json.array("clashes");
    for (Clash clash : advice.clashes()) {
      json.object()
          .put("part", clash.part())
          .put("observed", clash.observation().text())
          .put("with", clash.with())
          .put("chance", clash.chance())
          .end();
    }
    json.endArray();
    if (!advice.midway().isEmpty()) {
      midway(advice.midway(), json);
    }
    json.end();
  }

  private static void midway(List<Midway> all, Json json) throws IOException {
    json.array("midway");
    for (Midway seen : all) {
      json.object()
          .put("part", seen.part())
          .put("observed", seen.observation().text())
          .put("turnsToPass", seen.whole())
          .put("chance", seen.chance())
          .end();
    }
    json.endArray();
  }

  private static void key(GaugingAdvice.Key key, Json json) throws IOException {
    json.object("key")
        .put("register", key.register())
        .put("now", key.now())
        .put("wear", key.wear())
        .put("limited", key.limited());
    estimate("pitch", key.pitch(), json);
    chances(key.chances(), json);
    json.end();
  }

  private static void trend(Trend trend, Json json) throws IOException {
    json.object("trend");
    estimate("pitchPerPart", trend.perPart(), json);
    json.put("level", trend.level());
    if (trend.reenterAt().isPresent()) {
      json.put("reenterAt", trend.reenterAt().getAsInt());
    }
    if (trend.keyedLasts().isPresent()) {
      json.put("reenterAtWhenKeyed", trend.keyedLasts().getAsInt());
    }
    json.end();
  }

  private static void chances(Chances chances, Json json) throws IOException {
    json.put("goEnters", chances.goEnters())
        .put("noGoStops", chances.noGoStops())
        .put("plainGood", chances.plainGood())
        .put("good", chances.good());
  }

  private static void estimate(String name, Estimate estimate, Json json) throws IOException {
    json.object(name).put("value", estimate.value()).put("deviation", estimate.deviation()).end();
  }
}
