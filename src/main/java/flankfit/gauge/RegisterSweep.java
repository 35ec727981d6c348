package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.setup.Offsets;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What each wear entry of a D register would give: the program is run again and gauged for every
 * one of them.
 *
 * @param register number of the D register
 * @param now wear entry in the sheet (mm, as entered)
 * @param steps one for each entry, in order
 */
public record RegisterSweep(int register, double now, List<Step> steps) {
  /** Entries of one sweep at most: each runs the whole program. */
  public static final int MOST_STEPS = 2000;

  public RegisterSweep {
    steps = List.copyOf(steps);
  }

  /**
   * One entry.
   *
   * @param wear the entry (mm, as entered)
   * @param threads the threads it gives; none when the program stops at an error with it
   */
  public record Step(double wear, List<ThreadAnswer> threads) {
    public Step {
      threads = List.copyOf(threads);
    }

    /** The thread of a hole. */
    public Optional<ThreadAnswer> thread(String hole) {
      return threads.stream().filter(t -> t.hole().equals(hole)).findFirst();
    }
  }

  /**
   * Entries from a first to a last.
   *
   * @param from first entry (mm)
   * @param to last entry (mm), not below the first
   * @param by distance of entries (mm), above 0
   * @throws IllegalArgumentException if there would be more than {@link #MOST_STEPS}
   */
  public static double[] entries(double from, double to, double by) {
    Require.positive("by", by);
    Require.notNegative("to less from", to - from);
    double count = Math.floor((to - from) / by + 1e-6) + 1;
    Require.within("number of entries", count, 1, MOST_STEPS);
    double[] entries = new double[(int) count];
    for (int i = 0; i < entries.length; i++) {
      entries[i] = from + i * by;
    }
    return entries;
  }

  /**
   * Runs a program with each entry. Advice is not asked for. The verdict of each step is that of
   * gauging the program with that entry; where an endless helix already fails, the answer is that
   * of the endless helix.
   *
   * @param request the program, its sheet, and how it is run with other registers
   * @param register number of the D register
   * @param entries wear entries (mm, as entered)
   */
  public static RegisterSweep of(GaugeRequest request, int register, double[] entries) {
    Objects.requireNonNull(request, "request");
    Offsets offsets = request.setup().offsets();
    Offsets.Register old = offsets.radius(register).orElse(new Offsets.Register(0, 0));
    List<Step> steps = new ArrayList<>();
    for (double wear : entries) {
      Offsets changed = offsets.withRadius(register, new Offsets.Register(old.geometry(), wear));
      List<ThreadAnswer> threads =
          request
              .replay()
              .apply(changed)
              .map(tape -> gauged(request, changed, tape))
              .orElse(List.of());
      steps.add(new Step(wear, threads));
    }
    return new RegisterSweep(register, old.wear(), steps);
  }

  /** The path as moved can only make a verdict worse, so it is asked where one is good. */
  private static List<ThreadAnswer> gauged(GaugeRequest request, Offsets offsets, Tape tape) {
    GaugeRequest full =
        new GaugeRequest(
            request.program(),
            tape,
            request.setup().withOffsets(offsets),
            withoutAdvice -> Optional.empty());
    List<ThreadAnswer> endless = ThreadGauging.gauge(full.withoutRealPath()).threads();
    boolean asked =
        request.realPath() && endless.stream().anyMatch(t -> t.verdict() == Verdict.GAUGES_GOOD);
    return asked ? ThreadGauging.gauge(full).threads() : endless;
  }
}
