package flankfit.cli;

import flankfit.control.Interpretation;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;

/** The answer {@code flankfit/metal/1}. */
final class MetalJson {
  private MetalJson() {}

  /** Writes the answer. */
  static void write(ProgramOptions.Job job, MetalAnswer answer, OutputStream target)
      throws IOException {
    OutputStream out = new BufferedOutputStream(target, 1 << 16);
    Interpretation done = job.interpretation();
    try (Json json = new Json(out)) {
      json.object().put("schema", "flankfit/metal/1");
      json.object("program")
          .put("file", done.file())
          .put("unit", done.unit().symbol())
          .put("blocks", done.blocks())
          .end();
      json.put("assumptions", answer.assumptions())
          .put("moves", answer.moves())
          .put("cell", answer.metal().cell())
          .put("stockVolume", answer.stockVolume())
          .put("removedVolume", answer.removedVolume())
          .put("remainingVolume", answer.remainingVolume());
      json.array("byTool");
      for (Map.Entry<Integer, Double> tool : answer.byTool().entrySet()) {
        json.object()
            .put("tool", tool.getKey())
            .put("name", ToolNames.of(job.sheet(), tool.getKey()))
            .put("removed", tool.getValue())
            .end();
      }
      json.endArray();
      json.findings("collisions", answer.collisions());
      json.findings(answer.findings()).end();
    }
    out.flush();
  }
}
