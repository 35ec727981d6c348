package flankfit.setup;

import java.util.Optional;

/** Reads what {@code [machine]} and {@code [workpiece]} say of how things scatter. */
final class ScatterReader {
  private static final String FROM_ZERO = "a length, not below 0";

  private ScatterReader() {}

  static Keys machineKeys() {
    return Keys.none().and("circle-radius-tolerance", FROM_ZERO).and("circle-roundness", FROM_ZERO);
  }

  static Keys workpieceKeys() {
    return Keys.none()
        .and("material", "text")
        .and("force-uncertainty", "a share, from 0 to below 1, such as 0.3");
  }

  static Scatter read(Optional<SheetTable> machine, Optional<SheetTable> workpiece) {
    return new Scatter(
        machine.flatMap(t -> length(t, "circle-radius-tolerance")),
        machine.flatMap(t -> length(t, "circle-roundness")),
        workpiece.flatMap(t -> t.item("force-uncertainty")).flatMap(ScatterReader::share));
  }

  private static Optional<Double> length(SheetTable table, String key) {
    return table.item(key).flatMap(SheetItem::lengthFromZero);
  }

  private static Optional<Double> share(SheetItem item) {
    return item.number()
        .flatMap(
            share ->
                share >= 0 && share < 1
                    ? Optional.of(share)
                    : item.impossible("it must lie from 0 to below 1"));
  }
}
