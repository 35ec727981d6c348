package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.lesson.ArcStep;
import flankfit.lesson.Step;
import flankfit.lesson.Steps;
import flankfit.unit.Angles;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** The answer {@code flankfit/lesson/1}. */
final class LessonJson {
  private LessonJson() {}

  /** Writes the steps; lengths in mm, words in the unit of the program. */
  static void write(Steps steps, Interpretation done, OutputStream target) throws IOException {
    OutputStream out = new BufferedOutputStream(target, 1 << 16);
    try (Json json = new Json(out)) {
      json.object().put("schema", "flankfit/lesson/1");
      json.object("program")
          .put("file", done.file())
          .put("unit", done.unit().symbol())
          .put("blocks", done.blocks())
          .end();
      json.put("assumptions", done.assumptions()).array("steps");
      for (Step step : steps.all()) {
        step(step, json);
      }
      json.endArray();
      if (steps.left() > 0) {
        json.put("stepsLeftOut", steps.left());
      }
      json.put("complete", done.complete());
      if (done.stoppedAt().isPresent()) {
        json.object("stoppedAt")
            .put("line", done.stoppedAt().get().line())
            .put("code", done.stoppedAt().get().code().name())
            .end();
      }
      json.findings(done.findings()).end();
    }
    out.flush();
  }

  private static void step(Step step, Json json) throws IOException {
    json.object()
        .put("file", step.place().file())
        .put("line", step.place().line())
        .put("block", step.block())
        .put("outcome", step.outcome().word())
        .put("text", step.text())
        .put("level", step.level())
        .put("mode", step.mode().word())
        .put("zero", step.zero())
        .put("moves", step.moves())
        .put("endpointAbsolute", step.end())
        .put("moveIncremental", step.move());
    if (step.arc().isPresent()) {
      arc(step.arc().get(), json);
    }
    if (step.absolute().isPresent()) {
      json.put("absoluteWords", step.absolute().get());
    }
    if (step.incremental().isPresent()) {
      json.put("incrementalWords", step.incremental().get());
    }
    if (step.unsayable().isPresent()) {
      json.put("cannotSay", step.unsayable().get());
    }
    json.put("plain", step.plain());
    if (step.compensatedEnd().isPresent()) {
      json.put("compensatedEnd", step.compensatedEnd().get());
    }
    if (!step.unfolds().isEmpty()) {
      json.put("unfolds", step.unfolds());
    }
    if (!step.notes().isEmpty()) {
      json.put("notes", step.notes());
    }
    if (step.again().isPresent()) {
      json.object("again")
          .put("times", step.again().get().times())
          .put("alike", step.again().get().alike())
          .put("lastEndpointAbsolute", step.again().get().lastEnd())
          .end();
    }
    json.end();
  }

  private static void arc(ArcStep arc, Json json) throws IOException {
    json.object("arc")
        .put("plane", arc.plane().name())
        .put("centre", arc.centre())
        .put("toCentre", arc.toCentre())
        .put("radius", arc.radius())
        .put("sweep", Angles.toDegrees(arc.sweep()))
        .put("rise", arc.rise())
        .end();
  }
}
