package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.setup.Offsets;
import flankfit.setup.RadiusSetting;
import flankfit.unit.Require;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One thread with other wear entries of the register that its finishing pass uses: the program is
 * executed again with each, and gauged as it would be had the entry stood in the sheet, or in the
 * block of the program that enters it.
 */
public final class WearTrial {
  private final GaugeRequest request;
  private final String hole;
  private final OffsetAdvice offset;
  private final HeldBending held = new HeldBending();

  private WearTrial(GaugeRequest request, String hole, OffsetAdvice offset) {
    this.request = request;
    this.hole = hole;
    this.offset = offset;
  }

  /**
   * Trials of a thread; empty when no register moves its finishing pass.
   *
   * @param request the program as it was gauged
   * @param thread the answer that it gave
   */
  public static Optional<WearTrial> of(GaugeRequest request, ThreadAnswer thread) {
    Objects.requireNonNull(request, "request");
    return thread.offset().map(offset -> new WearTrial(request, thread.hole(), offset));
  }

  /** Name of the hole. */
  public String hole() {
    return hole;
  }

  /** Where the entry stands now, and what is advised. */
  public OffsetAdvice offset() {
    return offset;
  }

  /**
   * The answer of an endless helix, without advice, the mill bending as it does with the entry of
   * the sheet; empty when the program stops with that entry, or cuts no such thread. Takes some
   * milliseconds.
   *
   * @param wear wear entry (mm, as entered)
   */
  public synchronized Optional<ThreadAnswer> endless(double wear) {
    if (!held.isKnown()) {
      endlessHeld(offset.now());
    }
    return endlessHeld(wear);
  }

  private Optional<ThreadAnswer> endlessHeld(double wear) {
    Require.finite("wear", wear);
    Offsets tried = tried(request.setup().offsets(), wear);
    return request
        .replay()
        .apply(tried)
        .flatMap(
            tape ->
                ThreadGauging.gauge(endless(tape, tried), hole, held).threads().stream()
                    .findFirst());
  }

  /**
   * The whole answer: gauges on the path as moved, the mill bending anew, advice, and what odds are
   * reckoned from; empty as above.
   *
   * @param wear wear entry (mm, as entered)
   */
  public Optional<ThreadAnswer> whole(double wear) {
    Require.finite("wear", wear);
    return request
        .replay()
        .apply(tried(request.setup().offsets(), wear))
        .flatMap(
            tape -> ThreadGauging.gauge(whole(tape, wear), hole).threads().stream().findFirst());
  }

  private GaugeRequest endless(Tape tape, Offsets tried) {
    return new GaugeRequest(
        request.program(),
        tape,
        request.setup().withOffsets(tried),
        request.radiusSettings(),
        withoutAdvice -> Optional.empty(),
        false);
  }

  /** Where the program enters the wear, further trials count from what it enters in this one. */
  private GaugeRequest whole(Tape tape, double wear) {
    Optional<RadiusSetting> setBy = offset.setBy();
    if (setBy.isEmpty()) {
      return new GaugeRequest(
          request.program(),
          tape,
          request.setup().withOffsets(tried(request.setup().offsets(), wear)),
          request.radiusSettings(),
          request.replay(),
          request.realPath());
    }
    RadiusSetting own = setBy.get();
    double more = wear - offset.now();
    List<RadiusSetting> settings =
        request.radiusSettings().stream().map(s -> s.equals(own) ? entered(s, wear) : s).toList();
    return new GaugeRequest(
        request.program(),
        tape,
        request.setup(),
        settings,
        offsets ->
            request
                .replay()
                .apply(offsets.withTrial(own.place(), offsets.trial(own.place()) + more)),
        request.realPath());
  }

  private static RadiusSetting entered(RadiusSetting s, double wear) {
    return new RadiusSetting(s.number(), s.wear(), s.adds(), wear, s.block(), s.word(), s.place());
  }

  private Offsets tried(Offsets sheet, double wear) {
    Optional<RadiusSetting> setBy = offset.setBy();
    if (setBy.isPresent()) {
      return sheet.withTrial(setBy.get().place(), wear - offset.now());
    }
    int number = number();
    Offsets.Register old = sheet.radius(number).orElse(new Offsets.Register(0, 0));
    return sheet.withRadius(number, new Offsets.Register(old.geometry(), wear));
  }

  /** Number of the register. */
  public int number() {
    return Integer.parseInt(offset.register().substring(1));
  }
}
