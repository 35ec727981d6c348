package flankfit.cli;

import flankfit.standard.Drill;
import flankfit.standard.Limits;
import flankfit.standard.PlugGauges;
import flankfit.standard.ThreadSpec;
import flankfit.unit.Angles;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** The answer {@code flankfit/thread/1}. */
final class ThreadJson {
  private ThreadJson() {}

  /** Writes the answer. */
  static void write(List<ThreadSpec> threads, OutputStream out) throws IOException {
    try (Json json = new Json(out)) {
      json.object().put("schema", "flankfit/thread/1").array("threads");
      for (ThreadSpec thread : threads) {
        thread(thread, json);
      }
      json.endArray().end();
    }
  }

  private static void thread(ThreadSpec thread, Json json) throws IOException {
    json.object()
        .put("designation", thread.designation())
        .put("form", thread.form())
        .put("nominal", thread.nominal())
        .put("pitch", thread.pitch())
        .put("threadsPerInch", thread.threadsPerInch())
        .put("class", thread.threadClass())
        .put("internal", thread.internal())
        .put("leadAngle", Angles.toDegrees(thread.leadAngle()));
    limits(thread.limits(), json);
    if (thread.gauges().isPresent()) {
      gauges(thread.gauges().get(), json);
    }
    if (thread.drill().isPresent()) {
      Drill drill = thread.drill().get();
      json.object("drill")
          .put("suggested", drill.diameter())
          .put("name", drill.name())
          .put("engagementPercent", drill.engagementPercent())
          .end();
    }
    json.put("sources", thread.sources()).end();
  }

  /** Writes limits of size, those the standard sets. */
  static void limits(Limits limits, Json json) throws IOException {
    json.object("limits")
        .put("majorMin", limits.majorMin())
        .put("majorMax", limits.majorMax())
        .put("pitchMin", limits.pitchMin())
        .put("pitchMax", limits.pitchMax())
        .put("minorMin", limits.minorMin())
        .put("minorMax", limits.minorMax())
        .end();
  }

  private static void gauges(PlugGauges gauges, Json json) throws IOException {
    json.object("gauges")
        .put("goPitch", gauges.goPitch())
        .put("goMajorMin", gauges.goMajorMin())
        .put("noGoPitch", gauges.noGoPitch())
        .put("noGoMajorMax", gauges.noGoMajorMax())
        .put("turnsAllowed", gauges.turnsAllowed())
        .put("plainGo", gauges.plainGo())
        .put("plainNoGo", gauges.plainNoGo())
        .end();
  }
}
