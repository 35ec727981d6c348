package flankfit.gauge;

import flankfit.gauge.Travel.End;
import java.util.Optional;

/**
 * What a GO plug marked for depth reads where it stops, held against the depth wanted: the length
 * from the mouth's face to the middle of its foremost groove. The plug is taken to begin with a
 * full thread; what its front face or chamfer stands beyond has to be allowed for on the mark.
 *
 * @param reads depth read (mm)
 * @param wanted depth of full thread wanted (mm)
 */
public record DepthReading(double reads, double wanted) {
  /** Reads the depth of a plug's way from the mouth; empty for a boss, or when it goes through. */
  static Optional<DepthReading> of(WallField field, Travel go, double wantedBottom) {
    return field.spec().internal() && go.end() != End.THROUGH
        ? Optional.of(new DepthReading(field.top() - go.z(), field.top() - wantedBottom))
        : Optional.empty();
  }

  /** Whether the thread is as deep as wanted. */
  public boolean isDeepEnough() {
    return reads >= wanted;
  }
}
