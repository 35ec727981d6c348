package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.motion.Extents;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.unit.Angles;
import flankfit.unit.Tolerance;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** The answer {@code flankfit/motion/1}. */
final class MotionJson {
  private MotionJson() {}

  /** Writes the answer. */
  static void write(Interpretation done, OutputStream target) throws IOException {
    OutputStream out = new BufferedOutputStream(target, 1 << 16);
    try (Json json = new Json(out)) {
      json.object().put("schema", "flankfit/motion/1");
      json.object("program")
          .put("file", done.file())
          .put("unit", done.unit().symbol())
          .put("blocks", done.blocks())
          .end();
      json.put("assumptions", done.assumptions());
      json.array("moves");
      for (int i = 0; i < done.tape().size(); i++) {
        move(done.tape(), i, json);
      }
      json.endArray();
      Extents extents = done.tape().extents();
      json.object("extents").put("min", extents.min()).put("max", extents.max()).end();
      Totals totals = Totals.of(done.tape());
      json.object("totals")
          .put("feedLength", totals.feedLength())
          .put("rapidLength", totals.rapidLength())
          .put("seconds", totals.seconds())
          .end();
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

  /** Writes one move as an object. */
  static void move(Tape tape, int i, Json json) throws IOException {
    ModalState state = tape.state(i);
    MoveKind kind = tape.kind(i);
    json.object()
        .put("line", tape.line(i))
        .put("block", tape.block(i))
        .put("kind", kind.word())
        .put("tool", state.tool())
        .put("from", tape.from(i))
        .put("to", tape.to(i))
        .put("programmedTo", tape.programmedTo(i));
    if (tape.inserted(i)) {
      json.put("inserted", true);
    }
    if (kind == MoveKind.ARC) {
      arc(tape, i, json);
    }
    json.put("length", tape.length(i));
    if (kind == MoveKind.LINE || kind == MoveKind.ARC) {
      json.put("feed", state.feed());
    }
    json.put("seconds", tape.seconds(i))
        .put("distanceMode", state.distance().word())
        .put("compensation", state.compensation().word())
        .object("spindle")
        .put("direction", state.spindle().word())
        .put("rpm", state.rpm())
        .end()
        .end();
  }

  private static void arc(Tape tape, int i, Json json) throws IOException {
    Plane plane = tape.state(i).plane();
    double[] centre = new double[3];
    centre[plane.u()] = tape.centreU(i);
    centre[plane.v()] = tape.centreV(i);
    centre[plane.n()] = tape.from(i).axis(plane.n());
    json.object("arc")
        .put("plane", plane.name())
        .put("centre", centre[0], centre[1], centre[2])
        .put("radius", tape.radius(i));
    if (!Tolerance.MODEL.near(tape.radius(i), tape.endRadius(i))) {
      json.put("endRadius", tape.endRadius(i));
    }
    json.put("sweep", Angles.toDegrees(tape.sweep(i)))
        .put("rise", tape.rise(i))
        .put("turns", Math.abs(tape.sweep(i)) / Angles.TURN)
        .end();
  }
}
