package flankfit.cli;

import flankfit.gauge.DepthReading;
import flankfit.gauge.PlainRuling;
import flankfit.gauge.PlainTravel;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.Travel;
import flankfit.gauge.WallMeasures;
import flankfit.sweep.Rub;
import flankfit.unit.Angles;
import java.io.IOException;
import java.util.Locale;

/** What gauges do on the wall of the real path, for machines. */
final class RealJson {
  private RealJson() {}

  /** The whole of it, as {@code real}. */
  static void write(RealAnswer real, Json json) throws IOException {
    json.object("real");
    travel("go", real.go(), json);
    json.put("reachesWanted", real.reachesWanted());
    json.array("noGo");
    for (Travel travel : real.noGo().travels()) {
      json.object().put("from", travel.from() == Travel.From.MOUTH ? "mouth" : "far end");
      way(travel, json);
      json.end();
    }
    json.endArray();
    if (real.plain().isPresent()) {
      PlainRuling plain = real.plain().get();
      json.object("plain");
      plain("go", plain.go(), json);
      plain("noGo", plain.noGo(), json);
      json.end();
    }
    if (real.depth().isPresent()) {
      DepthReading depth = real.depth().get();
      json.object("depthPlug").put("reads", depth.reads()).put("wanted", depth.wanted()).end();
    }
    if (real.measures().isPresent()) {
      ends(real.measures().get(), json);
    }
    json.array("rubs");
    for (Rub rub : real.rubs()) {
      json.object()
          .put("part", rub.section().name())
          .put("depth", rub.depth())
          .put("angle", Angles.toDegrees(rub.theta()))
          .put("z", rub.z())
          .end();
    }
    json.endArray().end();
  }

  private static void travel(String name, Travel travel, Json json) throws IOException {
    json.object(name);
    way(travel, json);
    json.end();
  }

  private static void way(Travel travel, Json json) throws IOException {
    json.put("turns", travel.turns()).put("reaches", travel.z()).put("end", end(travel.end()));
    if (travel.clearance().isPresent() && Double.isFinite(travel.clearance().getAsDouble())) {
      json.put("clearance", travel.clearance().getAsDouble());
    }
    json.array("contacts");
    for (Travel.Contact contact : travel.contacts()) {
      json.object()
          .put("by", contact.by().word())
          .put("angle", Angles.toDegrees(contact.theta()))
          .put("turn", contact.turn())
          .put("z", contact.z())
          .end();
    }
    json.endArray();
  }

  private static void plain(String name, PlainTravel travel, Json json) throws IOException {
    json.object(name).put("diameter", travel.diameter()).put("reaches", travel.z());
    json.put("end", end(travel.end()));
    // Where nothing is met there is no largest plug.
    if (Double.isFinite(travel.clearance())) {
      json.put("clearance", travel.clearance());
    }
    json.end();
  }

  private static String end(Travel.End end) {
    return end.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static void ends(WallMeasures measures, Json json) throws IOException {
    WallMeasures.Ends ends = measures.ends();
    json.object("ends")
        .put("fullTurns", ends.fullTurns())
        .put("incompleteAtMouth", ends.incompleteAtMouth())
        .put("incompleteAtEnd", ends.incompleteAtEnd())
        .put("chamferDepth", ends.chamferDepth())
        .put("chamferDiameter", ends.chamferDiameter())
        .end();
    if (measures.bellMouth().isPresent()) {
      json.put("bellMouth", measures.bellMouth().getAsDouble());
    }
    json.array("levels");
    for (WallMeasures.Level level : measures.levels()) {
      json.object()
          .put("z", level.z())
          .put("pitch", level.pitch().mean())
          .put("pitchLeast", level.pitch().least())
          .put("pitchGreatest", level.pitch().greatest())
          .end();
    }
    json.endArray();
  }
}
