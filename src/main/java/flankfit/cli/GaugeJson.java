package flankfit.cli;

import flankfit.finding.Finding;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.Measures;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.RegisterSweep;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Travel;
import flankfit.gauge.WallMeasures;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.OddsAnswer;
import flankfit.odds.ThreadOdds;
import flankfit.setup.RadiusSetting;
import flankfit.unit.Angles;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

/**
 * The answer {@code flankfit/gauge/1}. What a thread does not have (measures of less than a turn)
 * is left out rather than given as nothing.
 */
final class GaugeJson {
  private GaugeJson() {}

  /** Writes the answer. */
  static void write(
      ProgramOptions.Job job,
      GaugeAnswer answer,
      Optional<OddsAnswer> odds,
      Optional<RegisterSweep> sweep,
      List<Finding> findings,
      OutputStream out)
      throws IOException {
    try (Json json = new Json(out)) {
      json.object()
          .put("schema", "flankfit/gauge/1")
          .object("program")
          .put("file", job.interpretation().file())
          .put("unit", job.interpretation().unit().symbol())
          .put("blocks", job.interpretation().blocks())
          .end()
          .put("assumptions", GaugeText.assumptions(job, answer, odds))
          .array("threads");
      for (ThreadAnswer thread : answer.threads()) {
        thread(thread, odds, json);
      }
      json.endArray();
      if (sweep.isPresent()) {
        sweep(sweep.get(), json);
      }
      json.findings(findings).end();
    }
  }

  private static void sweep(RegisterSweep sweep, Json json) throws IOException {
    json.object("sweep")
        .put("register", "D" + sweep.register())
        .put("now", sweep.now())
        .array("steps");
    for (RegisterSweep.Step step : sweep.steps()) {
      json.object().put("wear", step.wear()).array("threads");
      for (ThreadAnswer thread : step.threads()) {
        json.object().put("hole", thread.hole());
        if (thread.finished().isPresent()) {
          json.put("pitch", thread.finished().get().pitchSimple())
              .put("functional", thread.finished().get().functional());
        }
        rulings(thread, json);
        json.put("verdict", thread.verdict().words()).end();
      }
      json.endArray().end();
    }
    json.endArray().end();
  }

  private static void thread(ThreadAnswer thread, Optional<OddsAnswer> odds, Json json)
      throws IOException {
    json.object()
        .put("hole", thread.hole())
        .put("designation", thread.designation())
        .put("internal", thread.internal())
        .put("hand", thread.rightHand() ? "right" : "left")
        .put("lead", thread.lead())
        .put("starts", thread.starts())
        .put("cutting", thread.cutting())
        .put("depth", thread.zTop(), thread.zBottom());
    ThreadJson.limits(thread.limits(), json);
    gauges(thread, json);
    json.array("passes");
    for (ThreadAnswer.PassAnswer pass : thread.passes()) {
      pass(pass, json);
    }
    json.endArray();
    if (thread.finished().isPresent()) {
      finished(thread.finished().get(), thread.real().flatMap(RealAnswer::measures), json);
    }
    rulings(thread, json);
    json.put("verdict", thread.verdict().words()).put("reason", thread.reason());
    if (thread.real().isPresent()) {
      RealJson.write(thread.real().get(), json);
    }
    if (thread.bending().isPresent()) {
      CuttingJson.bending(thread.bending().get(), json);
    }
    if (thread.offset().isPresent()) {
      offset(thread.offset().get(), json);
    }
    Optional<ThreadOdds> reckoned = odds.flatMap(o -> o.odds(thread.hole()));
    if (reckoned.isPresent()) {
      OddsJson.odds(reckoned.get(), json);
    }
    Optional<GaugingAdvice> advice = odds.flatMap(o -> o.advice(thread.hole()));
    if (advice.isPresent()) {
      OddsJson.gauging(advice.get(), json);
    }
    json.end();
  }

  private static void gauges(ThreadAnswer thread, Json json) throws IOException {
    if (thread.go().isPresent() && thread.noGo().isPresent()) {
      json.object("gauges")
          .object("go")
          .put("pitch", thread.go().get().pitch())
          .end()
          .object("noGo")
          .put("pitch", thread.noGo().get().pitch())
          .put("turnsAllowed", thread.noGo().get().turnsAllowed())
          .end()
          .end();
    }
  }

  private static void pass(ThreadAnswer.PassAnswer pass, Json json) throws IOException {
    json.object()
        .put("line", pass.line())
        .put("radius", pass.radius())
        .put("role", pass.role().word());
    if (pass.after().isPresent()) {
      ThreadAnswer.PassMeasures after = pass.after().get();
      json.put("pitch", after.pitch())
          .put("functional", after.functional())
          .put("major", after.major());
    }
    if (pass.cut().isPresent()) {
      CuttingJson.pass(pass.cut().get(), json);
    }
    json.end();
  }

  private static void finished(Measures measures, Optional<WallMeasures> real, Json json)
      throws IOException {
    json.object("finished")
        .put("major", measures.major())
        .put("minor", measures.minor())
        .put("pitchSimple", measures.pitchSimple())
        .put("pitchOverBall", measures.pitchOverBall())
        .put("functional", measures.functional())
        .put("functionalFlank", measures.functionalFlank())
        .put("decidedBy", measures.decidedBy().word())
        .put(
            "flankAngles",
            Angles.toDegrees(measures.flankAngleUp()),
            Angles.toDegrees(measures.flankAngleDown()))
        .put("leadError", measures.leadError());
    if (real.isPresent()) {
      WallMeasures wall = real.get();
      json.put("pitchLeast", wall.pitch().least())
          .put("pitchGreatest", wall.pitch().greatest())
          .put("taper", wall.taper())
          .put("roundness", wall.roundness())
          .put("entryMark", Math.max(0, wall.deepest().depth()))
          .put("fullTurns", wall.ends().fullTurns());
    }
    json.end();
  }

  private static void rulings(ThreadAnswer thread, Json json) throws IOException {
    if (thread.go().isPresent()) {
      json.object("go")
          .put("enters", thread.go().get().enters())
          .put("clearance", thread.go().get().clearance());
      if (thread.real().isPresent()) {
        Travel way = thread.real().get().go();
        json.put("turns", way.turns()).put("reaches", way.z());
      }
      json.end();
    }
    if (thread.noGo().isPresent()) {
      json.object("noGo")
          .put("turns", thread.noGo().get().turns())
          .put("stops", thread.noGo().get().stops())
          .end();
    }
    if (thread.plain().isPresent()) {
      json.object("plain")
          .put("goEnters", thread.plain().get().goEnters())
          .put("noGoStops", thread.plain().get().noGoStops())
          .end();
    }
  }

  private static void offset(OffsetAdvice offset, Json json) throws IOException {
    json.object("offset")
        .put("register", offset.register())
        .put("geometry", offset.geometry())
        .put("now", offset.now())
        .put("sensitivity", offset.sensitivity())
        .put("toMiddle", offset.toMiddle())
        .put("toGoLimit", offset.toGoLimit())
        .put("toNoGoLimit", offset.toNoGoLimit())
        .put("keyToMiddle", offset.keyToMiddle())
        .put("keyToGoLimit", offset.keyToGoLimit())
        .put("keyToNoGoLimit", offset.keyToNoGoLimit())
        .put("hasWindow", offset.hasWindow());
    if (offset.asMoved().isPresent()) {
      OffsetAdvice.AsMoved moved = offset.asMoved().get();
      json.object("asMoved");
      if (moved.goShift().isPresent()) {
        json.put("goShift", moved.goShift().getAsDouble());
      }
      if (moved.noGoShift().isPresent()) {
        json.put("noGoShift", moved.noGoShift().getAsDouble());
      }
      json.put("middleBetweenGauges", moved.middleBetweenGauges()).end();
    }
    if (offset.setBy().isPresent()) {
      RadiusSetting setting = offset.setBy().get();
      json.object("setBy")
          .put("file", setting.place().file())
          .put("line", setting.place().line())
          .put("word", setting.word())
          .end();
    }
    json.end();
  }
}
