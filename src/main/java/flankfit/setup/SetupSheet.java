package flankfit.setup;

import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Everything the program does not say.
 *
 * @param file name of the sheet as the user gave it; empty text when there is none
 * @param title title; empty text when there is none
 * @param unit unit that plain numbers of the sheet have, used to show lengths again
 * @param control how the control reads
 * @param stock the stock
 * @param keepOuts bodies nothing may touch
 * @param workOffsets origins in the part frame by name: {@code G54}, {@code G54.1 P7}, {@code
 *     common}
 * @param holes holes and bosses, patterns unrolled
 * @param tools tools
 * @param offsets registers
 * @param workpieceMaterial material of the part; empty text when not said
 * @param gauges condition of the gauges
 * @param scatter how machine and forces scatter, for the odds
 * @param assumptions defaults that were used and switches that were set, one sentence each
 */
public record SetupSheet(
    String file,
    String title,
    LengthUnit unit,
    ControlSwitches control,
    Optional<Stock> stock,
    List<KeepOut> keepOuts,
    Map<String, Point> workOffsets,
    List<Hole> holes,
    List<Tool> tools,
    Offsets offsets,
    String workpieceMaterial,
    GaugeCondition gauges,
    Scatter scatter,
    List<String> assumptions) {
  public SetupSheet {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(control, "control");
    Objects.requireNonNull(scatter, "scatter");
    keepOuts = List.copyOf(keepOuts);
    workOffsets = Collections.unmodifiableMap(new TreeMap<>(workOffsets));
    holes = List.copyOf(holes);
    tools = List.copyOf(tools);
    assumptions = List.copyOf(assumptions);
  }

  /** A sheet that says nothing of how machine and forces scatter. */
  public SetupSheet(
      String file,
      String title,
      LengthUnit unit,
      ControlSwitches control,
      Optional<Stock> stock,
      List<KeepOut> keepOuts,
      Map<String, Point> workOffsets,
      List<Hole> holes,
      List<Tool> tools,
      Offsets offsets,
      String workpieceMaterial,
      GaugeCondition gauges,
      List<String> assumptions) {
    this(
        file,
        title,
        unit,
        control,
        stock,
        keepOuts,
        workOffsets,
        holes,
        tools,
        offsets,
        workpieceMaterial,
        gauges,
        Scatter.unknown(),
        assumptions);
  }

  /** A sheet that says nothing: metric, all switches at their defaults. */
  public static SetupSheet empty() {
    return new SetupSheet(
        "",
        "",
        LengthUnit.MILLIMETRE,
        ControlSwitches.defaults(),
        Optional.empty(),
        List.of(),
        Map.of(),
        List.of(),
        List.of(),
        Offsets.none(),
        "",
        GaugeCondition.NEW,
        List.of());
  }

  /** The tool of a number. */
  public Optional<Tool> tool(int number) {
    return tools.stream().filter(t -> t.number() == number).findFirst();
  }

  /** The same sheet with other switches. */
  public SetupSheet withControl(ControlSwitches other) {
    return new SetupSheet(
        file,
        title,
        unit,
        other,
        stock,
        keepOuts,
        workOffsets,
        holes,
        tools,
        offsets,
        workpieceMaterial,
        gauges,
        scatter,
        assumptions);
  }

  /** The same sheet with other registers. */
  public SetupSheet withOffsets(Offsets other) {
    return new SetupSheet(
        file,
        title,
        unit,
        control,
        stock,
        keepOuts,
        workOffsets,
        holes,
        tools,
        other,
        workpieceMaterial,
        gauges,
        scatter,
        assumptions);
  }

  /** The same sheet with gauges in another condition, whatever was assumed of them. */
  public SetupSheet withGauges(GaugeCondition other) {
    return new SetupSheet(
        file,
        title,
        unit,
        control,
        stock,
        keepOuts,
        workOffsets,
        holes,
        tools,
        offsets,
        workpieceMaterial,
        other,
        assumptions.stream().filter(sentence -> !sentence.equals(GAUGES_NOT_STATED)).toList());
  }

  /** The same sheet with other assumptions. */
  public SetupSheet withAssumptions(List<String> other) {
    return new SetupSheet(
        file,
        title,
        unit,
        control,
        stock,
        keepOuts,
        workOffsets,
        holes,
        tools,
        offsets,
        workpieceMaterial,
        gauges,
        scatter,
        other);
  }

  /** What is assumed of gauges of which nothing is said. */
  static final String GAUGES_NOT_STATED = "gauges: condition not stated: new";

  /** Condition of the gauges. */
  public enum GaugeCondition {
    NEW,
    MIDDLE,
    WORN
  }
}
