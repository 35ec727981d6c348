package flankfit.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.setup.ControlSwitches.Entry;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whole sheets: what stands in them arrives, and what does not is said. */
class SetupReaderTest {
  private static SetupSheet sheet(String text) {
    SheetReading reading = SheetText.read(text);
    assertThat(reading.findings()).isEmpty();
    return reading.sheet().orElseThrow();
  }

  @Test
  void the_full_metric_sheet_is_read_completely() {
    SetupSheet sheet = sheet(SheetText.resource("filter-housing.setup.toml"));
    assertThat(sheet.file()).isEqualTo("part.setup.toml");
    assertThat(sheet.title()).isEqualTo("Filter housing, port A");
    assertThat(sheet.unit()).isEqualTo(LengthUnit.MILLIMETRE);
    assertThat(sheet.control().places().reference()).contains(new Point(0, 0, 300));
    assertThat(sheet.control().with(ControlSwitches.defaults().places()))
        .isEqualTo(ControlSwitches.defaults());
    assertThat(sheet.stock())
        .contains(
            new Stock(
                Stock.Shape.BLOCK, new Extents(new Point(-40, -30, -30), new Point(40, 30, 0)), 0));
    assertThat(sheet.keepOuts())
        .containsExactly(
            new KeepOut("fixed jaw", new Extents(new Point(-40, 30, -30), new Point(40, 60, -8))));
    assertThat(sheet.workOffsets())
        .isEqualTo(
            Map.of(
                "G54", Point.ZERO,
                "G54.1 P7", new Point(1, 2, -3),
                "common", new Point(0, 0, 0.5)));
    assertThat(sheet.offsets().length(4)).contains(new Offsets.Register(120, 0));
    assertThat(sheet.offsets().radius(4)).contains(new Offsets.Register(0, -0.010));
    assertThat(sheet.workpieceMaterial()).isEqualTo("aluminium, wrought");
    assertThat(sheet.gauges()).isEqualTo(SetupSheet.GaugeCondition.NEW);
  }

  @Test
  void the_hole_of_the_full_sheet_is_read_completely() {
    SetupSheet sheet = sheet(SheetText.resource("filter-housing.setup.toml"));
    assertThat(sheet.holes())
        .containsExactly(
            new Hole(
                "port A",
                false,
                0,
                0,
                0,
                18.5,
                Optional.empty(),
                Math.PI,
                Optional.of(new Hole.Countersink(21, Math.PI / 2)),
                Optional.of("M20x1.5-6H"),
                Optional.of(16.0),
                Optional.of(Hole.MadeBy.PROGRAM),
                27));
  }

  @Test
  void the_tool_of_the_full_sheet_is_read_completely() {
    Tool tool = sheet(SheetText.resource("filter-housing.setup.toml")).tool(4).orElseThrow();
    assertThat(tool.kind()).isEqualTo(Tool.Kind.THREAD_MILL);
    assertThat(tool.leftHand()).isFalse();
    assertThat(tool.diameter()).isEqualTo(14);
    assertThat(tool.flutes()).isEqualTo(4);
    Tool.Teeth teeth = tool.teeth().orElseThrow();
    assertThat(teeth.halfAngle()).isCloseTo(Math.PI / 6, within(1e-15));
    assertThat(teeth.rows()).isEqualTo(12);
    assertThat(teeth.pitch()).contains(1.5);
    assertThat(teeth.crestFlat()).isEqualTo(0.1875);
    assertThat(teeth.form()).isEqualTo(new Tool.CutterForm.Straight());
    assertThat(teeth.tip()).isEqualTo(0.5);
    assertThat(tool.fluteLength()).isEqualTo(18);
    assertThat(tool.neck()).contains(new Tool.Section(11, 42));
    assertThat(tool.shank()).contains(new Tool.Section(14, 60));
    assertThat(tool.holder()).contains(new Tool.Section(32, 50));
    assertThat(tool.diameterTolerance()).isEqualTo(0.010);
    assertThat(tool.runout()).isEqualTo(0.005);
    assertThat(tool.material()).isEqualTo("carbide");
    assertThat(tool.line()).isEqualTo(38);
  }

  @Test
  void a_full_sheet_assumes_only_what_it_sets_or_cannot_use() {
    assertThat(sheet(SheetText.resource("filter-housing.setup.toml")).assumptions())
        .containsExactly(
            "reference-point = [0, 0, 300]", "tool 4: point-angle is not used for a thread mill");
  }

  @Test
  void an_inch_sheet_becomes_millimetres() {
    SetupSheet sheet = sheet(SheetText.resource("valve-block-inch.setup.toml"));
    assertThat(sheet.unit()).isEqualTo(LengthUnit.INCH);
    Stock stock = sheet.stock().orElseThrow();
    assertThat(stock.shape()).isEqualTo(Stock.Shape.CYLINDER);
    assertThat(stock.top()).isCloseTo(0, within(1e-12));
    assertThat(stock.bottom()).isEqualTo(-38.1);
    assertThat(stock.box().max().x()).isCloseTo(50.8, within(1e-12));
    assertThat(sheet.holes()).extracting(Hole::name).containsExactly("pilot 1", "pilot 2", "stub");
    assertThat(sheet.holes()).extracting(Hole::x).containsExactly(12.7, -12.7, 0.0);
    Hole pilot = sheet.holes().get(0);
    assertThat(pilot.diameter()).isEqualTo(8.5);
    assertThat(pilot.depth().orElseThrow()).isCloseTo(19.05, within(1e-12));
    assertThat(pilot.bottomAngle()).isCloseTo(Math.toRadians(118), within(1e-15));
    assertThat(sheet.holes().get(2).boss()).isTrue();
    assertThat(sheet.tool(2).orElseThrow().diameter()).isEqualTo(6.35);
    assertThat(sheet.offsets().radius(2)).contains(new Offsets.Register(6.35, 0));
  }

  @Test
  void the_switches_of_an_inch_sheet_are_read_in_inches() {
    ControlSwitches control = sheet(SheetText.resource("valve-block-inch.setup.toml")).control();
    assertThat(control.reading().powerUpUnit()).isEqualTo(LengthUnit.INCH);
    assertThat(control.reading().leastIncrementInch()).isEqualTo(0.00254);
    assertThat(control.reading().leastIncrementMm()).isEqualTo(0.001);
    assertThat(control.reading().blockDelete()).containsExactly(1, 3);
    assertThat(control.arcs().closureLimit()).isEqualTo(0.02032);
    assertThat(control.rapids().maxFeed()).isCloseTo(20320, within(1e-9));
    assertThat(control.rapids().rates().get(1)).isEqualTo(20000);
    assertThat(control.rapids().rates().get(2)).isCloseTo(15240, within(1e-9));
    assertThat(control.tools().geometryEntry()).isEqualTo(Entry.DIAMETER);
    assertThat(control.tools().wearEntry()).isEqualTo(Entry.RADIUS);
  }

  @Test
  void what_an_inch_sheet_leaves_out_is_said() {
    assertThat(sheet(SheetText.resource("valve-block-inch.setup.toml")).assumptions())
        .containsExactly(
            "power-up-units = \"inch\"",
            "block-delete = [3, 1]",
            "arc-closure-limit = 0.0008",
            "rapid-rates = [800, \"20000 mm/min\", 600]",
            "max-feed = 800",
            "geometry-entry = \"diameter\"",
            "boss \"stub\": top not stated: the top of the stock, Z0 in",
            "boss \"stub\": made-by not stated: the program when one of its moves makes the boss,"
                + " else the stock",
            "tool 2: hand not stated: right",
            "tool 2: tip not stated: 0 in",
            "tool 2: form not stated: straight",
            "tool 2: flank-angle not stated: 60 degrees",
            "tool 2: flute-length not stated: three diameters, 0.75 in",
            "gauges: condition not stated: new");
  }

  private static final String HOLE =
      """
      [[hole]]
      name = "port"
      at = [0, 0]
      top = 0
      diameter = 18.5
      depth = "through"
      made-by = "program"
      thread = "M20x1.5-6H"
      thread-depth = 16
      """;

  private static final String MILL =
      """
      [[tool]]
      number = 4
      kind = "thread mill"
      diameter = 14
      rows = 8
      pitch = 1.5
      """;

  @Test
  void a_mill_of_the_threads_pitch_is_taken_as_ground_for_it() {
    SetupSheet sheet = sheet("units = \"mm\"\n" + MILL + HOLE);
    assertThat(sheet.tools().get(0).teeth().orElseThrow().form())
        .isEqualTo(new Tool.CutterForm.GroundFor("M20x1.5-6H", true));
    assertThat(sheet.tools().get(0).teeth().orElseThrow().crestFlat()).isEqualTo(0.1875);
    assertThat(sheet.assumptions())
        .contains(
            "tool 4: form not stated: ground for M20x1.5-6H",
            "tool 4: crest-flat not stated: an eighth of the pitch, 0.1875 mm");
  }

  @Test
  void a_pattern_wants_its_thread_once() {
    SetupSheet sheet = sheet(MILL + HOLE.replace("[0, 0]", "[[0, 0], [40, 0]]"));
    assertThat(sheet.holes()).extracting(Hole::name).containsExactly("port 1", "port 2");
    assertThat(sheet.tools().get(0).teeth().orElseThrow().form())
        .isEqualTo(new Tool.CutterForm.GroundFor("M20x1.5-6H", true));
  }

  @Test
  void two_threads_of_one_pitch_leave_a_mill_straight() {
    String other = HOLE.replace("port", "drain").replace("M20", "M24").replace("18.5", "22.5");
    SetupSheet sheet = sheet(MILL + HOLE + other);
    assertThat(sheet.tools().get(0).teeth().orElseThrow().form())
        .isEqualTo(new Tool.CutterForm.Straight());
    assertThat(sheet.assumptions()).contains("tool 4: form not stated: straight");
  }

  @Test
  void a_mill_ground_for_a_thread_has_that_threads_flanks_without_an_assumption() {
    SetupSheet sheet = sheet(MILL + "ground-for = \"M24x1.5-6H\"\n");
    Tool.Teeth teeth = sheet.tools().get(0).teeth().orElseThrow();
    assertThat(teeth.form()).isEqualTo(new Tool.CutterForm.GroundFor("M24x1.5-6H", false));
    assertThat(teeth.halfAngle()).isCloseTo(Math.PI / 6, within(1e-15));
    assertThat(sheet.assumptions()).noneMatch(a -> a.contains("flank") || a.contains("form"));
  }

  @Test
  void a_measured_profile_is_kept_point_by_point() {
    SetupSheet sheet = sheet(MILL + "profile = [[0, 7], [0.1, 7], [0.6, 6.1]]\n");
    assertThat(sheet.tools().get(0).teeth().orElseThrow().form())
        .isEqualTo(
            new Tool.CutterForm.Measured(
                List.of(List.of(0.0, 7.0), List.of(0.1, 7.0), List.of(0.6, 6.1))));
  }

  @Test
  void a_switch_that_differs_from_its_default_is_said() {
    assertThat(sheet("[control]\nwear-entry = \"diameter\"\n").assumptions())
        .containsExactly("wear-entry = \"diameter\"");
  }

  @Test
  void switches_of_cycles_and_scaling_are_read() {
    ControlSwitches control =
        sheet(
                """
                [control]
                scale-reading = "thousandths"
                cycle-repeat = "K"
                after-g80 = "error"
                peck-clearance = "2 mm"
                chip-break-retract = "0.01 in"
                bore-shift = "+Y"
                back-bore = "Z-bottom"
                """)
            .control();
    assertThat(control.cycles())
        .isEqualTo(
            new ControlSwitches.Cycles(
                ControlSwitches.RepeatWord.K,
                true,
                2,
                LengthUnit.INCH.toMillimetres(0.01),
                ControlSwitches.BoreShift.PLUS_Y,
                true));
    assertThat(control.scaleReading()).isEqualTo(ControlSwitches.ScaleReading.THOUSANDTHS);
  }

  @Test
  void rapids_as_dog_legs_are_read_and_told() {
    SetupSheet sheet = sheet("[control]\nrapid-path = \"dog-leg\"\n");
    assertThat(sheet.control().rapids().dogLeg()).isTrue();
    assertThat(sheet.assumptions()).contains("rapid-path = \"dog-leg\"");
  }

  @Test
  void switches_of_subprograms_and_loops_are_read() {
    SetupSheet sheet =
        sheet(
            """
            [control]
            m98-form = "4+4"
            subprograms = ["holes.nc", "slots.nc"]
            fix-rounding = "down"
            loop-limit = 5
            block-limit = 70
            move-limit = 800
            end-reset = "keep"
            """);
    assertThat(sheet.control().flow())
        .isEqualTo(
            new ControlSwitches.Flow(
                ControlSwitches.CallForm.SPLIT,
                List.of("holes.nc", "slots.nc"),
                true,
                5,
                70,
                800,
                true));
    assertThat(sheet.assumptions()).contains("m98-form = \"4+4\"", "loop-limit = 5");
  }

  @Test
  void switches_may_be_set_to_their_defaults() {
    SetupSheet sheet =
        sheet(
            """
            [control]
            rapid-path = "straight"
            scale-reading = "factor"
            cycle-repeat = "either"
            after-g80 = "previous-motion"
            peck-clearance = 1.0
            chip-break-retract = "0.5 mm"
            bore-shift = "-X"
            back-bore = "R-bottom"
            end-reset = "power-up"
            m98-form = "auto"
            subprograms = []
            fix-rounding = "toward-zero"
            loop-limit = 100000
            block-limit = 50000000
            move-limit = 10000000
            """);
    assertThat(sheet.control()).isEqualTo(ControlSwitches.defaults());
  }

  @Test
  void an_empty_text_is_a_sheet_that_says_nothing() {
    SetupSheet sheet = sheet("");
    assertThat(sheet.control()).isEqualTo(ControlSwitches.defaults());
    assertThat(sheet.tools()).isEmpty();
    assertThat(sheet.assumptions()).isEmpty();
  }

  @Test
  void plain_lengths_without_stated_units_are_said_to_be_millimetres() {
    assertThat(sheet("[offsets]\nH1 = { geometry = 100 }\n").assumptions())
        .containsExactly("units not stated: lengths without a unit are millimetres");
  }

  @Test
  void a_mark_at_the_head_of_the_file_is_no_error() {
    assertThat(sheet("\uFEFFtitle = \"hub\"\n").title()).isEqualTo("hub");
  }

  @Test
  void tools_without_points_or_corners_get_flat_ends_and_others_their_usual_ones() {
    SetupSheet sheet =
        sheet(
            """
            units = "mm"
            [[tool]]
            number = 1
            kind = "drill"
            diameter = 8
            [[tool]]
            number = 2
            kind = "ball mill"
            diameter = 6
            flutes = 2
            flute-length = 10
            [[tool]]
            number = 3
            kind = "tap"
            diameter = 10
            pitch = 1.5
            """);
    assertThat(sheet.tools()).extracting(Tool::cornerRadius).containsExactly(0.0, 3.0, 0.0);
    assertThat(sheet.tools().get(0).pointAngle()).isCloseTo(Math.toRadians(118), within(1e-15));
    assertThat(sheet.tools().get(1).pointAngle()).isEqualTo(Math.PI);
    assertThat(sheet.tools().get(2).teeth().orElseThrow().pitch()).contains(1.5);
    assertThat(sheet.assumptions())
        .contains(
            "tool 1: point-angle not stated: 118 degrees",
            "tool 1: flute-length not stated: three diameters, 24 mm");
  }

  @Test
  void threads_are_looked_up_in_the_standards() {
    String hole = HOLE.replace("M20x1.5-6H", "1/2-13 UNC-2B").replace("18.5", "10.8");
    String mill = MILL.replace("14", "9").replace("1.5", "\"0.0769 in\"");
    SheetReading reading = SetupReader.read("hub.setup.toml", "units = \"mm\"\n" + hole + mill);
    assertThat(reading.findings()).isEmpty();
    SetupSheet sheet = reading.sheet().orElseThrow();
    assertThat(sheet.holes().get(0).thread()).contains("1/2-13 UNC-2B");
    assertThat(sheet.tools().get(0).teeth().orElseThrow().form())
        .isEqualTo(new Tool.CutterForm.GroundFor("1/2-13 UNC-2B", true));
  }

  @Test
  void a_class_left_out_is_said() {
    String hole = HOLE.replace("M20x1.5-6H", "M20x1.5");
    SetupSheet sheet = SetupReader.read("hub.setup.toml", hole).sheet().orElseThrow();
    assertThat(sheet.holes().get(0).thread()).contains("M20x1.5-6H");
    assertThat(sheet.assumptions())
        .contains("hole \"port\": class of the thread not stated: M20x1.5-6H");
  }
}
