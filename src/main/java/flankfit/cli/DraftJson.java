package flankfit.cli;

import flankfit.draft.Draft;
import flankfit.draft.DraftChoices;
import flankfit.draft.WorksheetRow;
import flankfit.gauge.ThreadAnswer;
import flankfit.standard.ThreadSpec;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** The answer {@code flankfit/draft/1}. */
final class DraftJson {
  private DraftJson() {}

  /** Writes the answer. */
  static void write(DraftAnswer answer, OutputStream target) throws IOException {
    OutputStream out = new BufferedOutputStream(target);
    Draft draft = answer.draft();
    try (Json json = new Json(out)) {
      json.object().put("schema", "flankfit/draft/1");
      thread(draft.spec(), json);
      choices(draft.choices(), json);
      json.object("register")
          .put("name", "D" + draft.choices().tool())
          .put("geometry", draft.register().geometry())
          .put("wear", draft.register().wear())
          .put("keyToMiddle", draft.offset().keyToMiddle())
          .put("keyToGoLimit", draft.offset().keyToGoLimit())
          .put("keyToNoGoLimit", draft.offset().keyToNoGoLimit())
          .end()
          .put("metalAsked", draft.proof().metal().isPresent())
          .array("worksheet");
      for (WorksheetRow row : draft.worksheet()) {
        row(row, json);
      }
      json.endArray()
          .put("program", draft.program().lines().toList())
          .put("setup", answer.sheet().lines().toList());
      if (answer.programFile().isPresent()) {
        json.object("files")
            .put("program", answer.programFile().get().toString())
            .put("setup", answer.sheetFile().orElseThrow().toString())
            .end();
      }
      json.array("threads");
      for (ThreadAnswer thread : draft.proof().gauged().threads()) {
        gauged(thread, json);
      }
      json.endArray()
          .put("seconds", draft.proof().seconds())
          .put("assumptions", answer.assumptions())
          .put("cautions", Cautions.LINES)
          .findings(draft.proof().findings())
          .end();
    }
    out.flush();
  }

  private static void thread(ThreadSpec spec, Json json) throws IOException {
    json.object("thread")
        .put("designation", spec.designation())
        .put("internal", spec.internal())
        .put("hand", spec.leftHand() ? "left" : "right")
        .put("pitch", spec.pitch())
        .put("lead", spec.lead())
        .put("starts", spec.starts())
        .end();
  }

  private static void choices(DraftChoices choices, Json json) throws IOException {
    json.put("tool", choices.tool())
        .put("mode", choices.mode().word())
        .put("entry", choices.entry().name().toLowerCase(Locale.ROOT))
        .put("cut", choices.climb() ? "climb" : "conventional")
        .put("passes", choices.passes())
        .put("by", choices.path().name().toLowerCase(Locale.ROOT))
        .put("unit", choices.unit().symbol())
        .put("subprogram", choices.subprogram());
  }

  private static void row(WorksheetRow row, Json json) throws IOException {
    json.object()
        .put("key", row.key())
        .put("name", row.name())
        .put("formula", row.formula())
        .put("inserted", row.inserted())
        .put("value", row.value())
        .put("unit", row.unit())
        .put("result", row.result())
        .put("note", row.note())
        .end();
  }

  private static void gauged(ThreadAnswer thread, Json json) throws IOException {
    json.object()
        .put("hole", thread.hole())
        .put("verdict", thread.verdict().words())
        .put("reason", thread.reason());
    if (thread.finished().isPresent()) {
      json.put("pitch", thread.finished().get().pitchSimple())
          .put("functional", thread.finished().get().functional());
    }
    if (thread.go().isPresent()) {
      json.object("go")
          .put("enters", thread.go().get().enters())
          .put("clearance", thread.go().get().clearance())
          .end();
    }
    if (thread.noGo().isPresent()) {
      json.object("noGo")
          .put("turns", thread.noGo().get().turns())
          .put("stops", thread.noGo().get().stops())
          .end();
    }
    if (thread.real().isPresent()) {
      RealJson.write(thread.real().get(), json);
    }
    json.end();
  }
}
