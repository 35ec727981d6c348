package flankfit.gauge;

/**
 * What bending makes of a thread; the verdict and the measures include it.
 *
 * @param material key of the cutting-force table
 * @param source where its specific cutting force comes from
 * @param uncertainty share by which any force may be off (1)
 * @param rigidPitch simple pitch diameter that a stiff mill would leave (mm)
 * @param rigidVerdict what the gauges would say of that
 * @param practicePitch simple pitch diameter with edge force and least chip, nearer to practice
 *     (mm)
 * @param pitchTight simple pitch diameter at the tightest row (mm)
 * @param pitchLoose simple pitch diameter at the loosest row (mm)
 * @param springGain change of the pitch diameter by one more spring pass (mm)
 * @param springGainPractice the same with edge force and least chip (mm)
 */
public record BendingAnswer(
    String material,
    String source,
    double uncertainty,
    double rigidPitch,
    Verdict rigidVerdict,
    double practicePitch,
    double pitchTight,
    double pitchLoose,
    double springGain,
    double springGainPractice) {
  /** Share by which forces may be off (1): no coefficient measured in thread milling was read. */
  static final double UNCERTAINTY = 0.3;
}
