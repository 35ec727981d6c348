package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.setup.Offsets;
import flankfit.setup.RadiusSetting;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is to be gauged.
 *
 * @param program name of the program as the user gave it
 * @param tape its motion
 * @param setup holes, tools and registers
 * @param radiusSettings the D registers that the program sets itself, in order
 * @param replay runs the same program with other registers; empty when that run stops at an error
 * @param realPath whether gauges are also screwed into the wall of the real path; without it every
 *     answer is that of an endless helix, for comparing many of them
 */
public record GaugeRequest(
    String program,
    Tape tape,
    SetupSheet setup,
    List<RadiusSetting> radiusSettings,
    Function<Offsets, Optional<Tape>> replay,
    boolean realPath) {
  public GaugeRequest {
    Objects.requireNonNull(program, "program");
    Objects.requireNonNull(tape, "tape");
    Objects.requireNonNull(setup, "setup");
    radiusSettings = List.copyOf(radiusSettings);
    Objects.requireNonNull(replay, "replay");
  }

  /** A program gauged on its real path. */
  public GaugeRequest(
      String program,
      Tape tape,
      SetupSheet setup,
      List<RadiusSetting> radiusSettings,
      Function<Offsets, Optional<Tape>> replay) {
    this(program, tape, setup, radiusSettings, replay, true);
  }

  /** A program that sets no register itself. */
  public GaugeRequest(
      String program, Tape tape, SetupSheet setup, Function<Offsets, Optional<Tape>> replay) {
    this(program, tape, setup, List.of(), replay, true);
  }

  /** The same, as endless helices only. */
  public GaugeRequest withoutRealPath() {
    return new GaugeRequest(program, tape, setup, radiusSettings, replay, false);
  }
}
