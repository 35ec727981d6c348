package flankfit.setup;

import flankfit.motion.Extents;
import java.util.Objects;

/**
 * A vise jaw, clamp or other body that nothing may touch.
 *
 * @param name name in the sheet
 * @param box its box, part frame (mm)
 */
public record KeepOut(String name, Extents box) {
  public KeepOut {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(box, "box");
  }
}
