package flankfit.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** Each rule on a program that just trips it and on one that just does not. */
class HazardRulesTest {
  private static final String STOCK =
      "[stock]\nshape = \"block\"\nsize = [60.0, 40.0, 20.0]\nzero = [0.0, 0.0, 20.0]\n";
  private static final String H1 = "[offsets]\nH1 = { geometry = 80.0 }\n";
  private static final String HEAD = "G21 G90 G17 G54\nT1 M6\nS3000 M3\n";

  private static String tool(String kind, double diameter) {
    return "[[tool]]\nnumber = 1\nkind = \"" + kind + "\"\ndiameter = " + diameter + "\n";
  }

  private static String hole(String more) {
    return "[[hole]]\nname = \"port\"\nat = [30.0, 20.0]\ntop = 0.0\n" + more + "\n";
  }

  private static final String MILL = STOCK + tool("end mill", 10) + H1;

  /** Program with the tool over a place at Z2, then these blocks from line 6 on. */
  private static String at(int x, int y, String blocks) {
    return HEAD + "G0 X" + x + ". Y" + y + ".\nG43 H1 Z2.\n" + blocks + "\nM30\n";
  }

  private static List<String> codes(String program, String sheet) {
    return Checked.of(program, sheet).codes();
  }

  // HZ01

  @Test
  void rapid_into_uncut_stock_is_found_and_one_over_its_top_is_not() {
    assertThat(codes(at(10, 20, "G0 Z-0.01"), MILL)).containsExactly("HZ01@6");
    assertThat(codes(at(10, 20, "G1 Z-5. F100.\nG0 X40."), MILL)).containsExactly("HZ01@7");
    assertThat(codes(at(10, 20, "G1 Z-5. F100.\nG0 Z2.\nX40."), MILL)).isEmpty();
  }

  @Test
  void rapid_where_metal_has_been_cut_is_no_collision() {
    String slot = "G1 Z-5. F100.\nX40. F300.\nG0 Z-2.\nX10.\nZ2.";
    assertThat(codes(at(10, 20, slot), MILL)).isEmpty();
    String deeper = "G1 Z-5. F100.\nX40. F300.\nG0 Z2.\nX10.\nZ-4.9\nZ-5.1";
    assertThat(codes(at(10, 20, deeper), MILL)).containsExactly("HZ01@11");
  }

  @Test
  void rapid_in_a_declared_hole_is_no_collision_but_a_wider_tool_is() {
    String hole = hole("diameter = 12.0\ndepth = 15.0");
    String plunge = at(30, 20, "G0 Z-10.\nZ2.");
    assertThat(codes(plunge, hole + MILL)).isEmpty();
    assertThat(codes(plunge, hole + STOCK + tool("end mill", 14) + H1)).containsExactly("HZ01@6");
  }

  @Test
  void rapid_beside_the_stock_is_no_collision_until_it_reaches_it() {
    assertThat(codes(at(-6, 20, "G0 Z-10.\nY30.\nZ2."), MILL)).isEmpty();
    assertThat(codes(at(-4, 20, "G0 Z-10.\nZ2."), MILL)).containsExactly("HZ01@6");
  }

  @Test
  void unknown_tool_has_cut_whatever_lies_above_its_depth() {
    String program = at(10, 20, "G1 Z-5. F100.\nG0 Z-4.\nX12.\nZ-6.");
    assertThat(codes(program, STOCK + H1)).containsExactly("HZ02@8", "HZ01@9");
  }

  @Test
  void corner_of_a_round_stock_and_a_bore_are_empty() {
    String round =
        "[stock]\nshape = \"cylinder\"\ndiameter = 40.0\nheight = 20.0\nzero = [0.0, 0.0, 20.0]\n";
    String tube = round.replace("cylinder", "tube").replace("height", "bore = 16.0\nheight");
    String mill = tool("end mill", 8) + H1;
    assertThat(codes(at(1, 1, "G0 Z-10."), round + mill)).isEmpty();
    assertThat(codes(at(20, 20, "G0 Z-10."), round + mill)).containsExactly("HZ01@6");
    assertThat(codes(at(20, 20, "G0 Z-10."), tube + mill)).isEmpty();
    assertThat(codes(at(30, 20, "G0 Z-10."), tube + mill)).containsExactly("HZ01@6");
  }

  @Test
  void metal_round_a_boss_is_not_certain() {
    String boss = "[[boss]]\nname = \"stub\"\nat = [30.0, 20.0]\ndiameter = 20.0\ndepth = 15.0\n";
    assertThat(codes(at(8, 20, "G0 Z-10."), boss + MILL)).isEmpty();
    assertThat(codes(at(30, 20, "G0 Z-10."), boss + MILL)).containsExactly("HZ01@6");
    String made = boss + "made-by = \"program\"\n";
    assertThat(codes(at(8, 20, "G0 Z-10."), made + MILL)).containsExactly("HZ01@6");
  }

  @Test
  void body_to_keep_out_of_must_not_be_touched_at_any_speed() {
    String jaw = "[[keep-out]]\nname = \"jaw\"\nmin = [0, 40, -20]\nmax = [60, 60, -5]\n";
    String sheet = jaw + MILL;
    String beside = "G1 Z-6. F500.\nX70.\nG0 Z2.";
    assertThat(codes(at(-20, 35, beside), sheet)).isEmpty();
    assertThat(codes(at(-20, 36, beside), sheet)).containsExactly("HZ01@7");
    assertThat(codes(at(-20, 45, "G0 Z-5.\nX70."), sheet)).doesNotContain("HZ01@7");
    assertThat(codes(at(-20, 45, "G0 Z-5.1\nX70."), sheet)).containsExactly("HZ01@7");
  }

  // HZ02

  @Test
  void rapid_below_the_clearance_plane_is_found_and_one_at_it_is_not() {
    assertThat(codes(at(10, 20, "G0 Z1.\nX40."), MILL)).isEmpty();
    Finding low = Checked.of(at(10, 20, "G0 Z0.99\nX40."), MILL).only(Code.HZ02);
    assertThat(low.severity()).isEqualTo(Severity.WARNING);
    assertThat(low.what()).isEqualTo("rapid at Z0.99, 0.99 mm above the top");
    String wide = "[control]\nclearance = 3.0\n" + MILL;
    assertThat(codes(at(10, 20, "X40."), wide)).containsExactly("HZ02@6");
  }

  @Test
  void low_rapid_is_an_error_below_the_top_and_assumes_the_top_without_a_stock() {
    Checked checked = Checked.of(HEAD + "G0 X0 Y0\nZ-1.\nX40.\nM30\n", "");
    Finding low = checked.only(Code.HZ02);
    assertThat(low.severity()).isEqualTo(Severity.ERROR);
    assertThat(low.what()).isEqualTo("rapid at Z-1, 1 mm below the top");
    assertThat(ProgramCheck.findings(checked.done(), SetupSheet.empty()))
        .isEqualTo(checked.findings());
  }

  @Test
  void top_follows_the_work_offset_when_there_is_no_stock() {
    String offset = "[work-offsets]\nG54 = [0.0, 0.0, 30.0]\n";
    assertThat(codes("G21 G90 G17 G54\nG0 X0 Y0\nZ1.\nX40.\nM30\n", offset)).isEmpty();
    assertThat(codes("G21 G90 G17 G54\nG0 X0 Y0\nZ0.5\nX40.\nM30\n", offset))
        .containsExactly("HZ02@4");
    assertThat(codes("G21 G90 G17 G54\nG10 L12 P1 R0\nG0 X0 Y0\nZ0.5\nX40.\nM30\n", offset))
        .as("a program that sets data itself may have moved the origin")
        .isEmpty();
  }

  @Test
  void low_rapid_in_a_hole_that_is_wide_enough_is_none() {
    // Half a millimetre above the ground of the hole, a little to the side.
    String rapid = at(30, 20, "G1 Z-14.5 F500.\nG0 X30.1\nZ2.");
    assertThat(codes(rapid, hole("diameter = 11.0\ndepth = 15.0") + MILL)).isEmpty();
    assertThat(codes(rapid, hole("diameter = 10.9\ndepth = 15.0") + MILL))
        .containsExactly("HZ02@7");
  }

  @Test
  void repeats_of_a_cycle_at_a_low_level_are_found() {
    String drill = STOCK + tool("drill", 6) + H1;
    assertThat(codes(at(10, 20, "G91 G99 G81 X9. Z-3. R-1. L3 F90.\nG80\nG90"), drill)).isEmpty();
    assertThat(codes(at(10, 20, "G91 G99 G81 X9. Z-3. R-1.4 L3 F90.\nG80\nG90"), drill))
        .containsExactly("HZ02@6");
  }

  @Test
  void shift_of_a_boring_cycle_is_meant() {
    assertThat(codes(at(10, 20, "G76 Z-5. R2. Q0.3 F100.\nG80"), MILL)).isEmpty();
    assertThat(codes(at(10, 20, "G87 Z-5. R-8. Q0.3 F100.\nG80"), H1)).isEmpty();
  }

  // HZ03

  @Test
  void first_move_after_the_change_is_diagonal_from_five_down_and_one_aside_on() {
    String start = "[control]\nstart = [0.0, 0.0, 100.0]\n" + H1;
    assertThat(codes(HEAD + "G43 H1 G0 X1.01 Z94.9\nM30\n", start)).containsExactly("HZ03@4");
    assertThat(codes(HEAD + "G43 H1 G0 X1. Z94.9\nM30\n", start)).isEmpty();
    assertThat(codes(HEAD + "G43 H1 G0 X1.01 Z95.\nM30\n", start)).isEmpty();
    assertThat(codes(HEAD + "G43 H1 G0 X1.01 Z110.\nX20. Z50.\nM30\n", start)).isEmpty();
  }

  @Test
  void diagonal_is_seen_in_the_pieces_of_a_dog_leg_but_not_in_those_of_a_cycle() {
    String sheet = "[control]\nrapid-path = \"dog-leg\"\nstart = [0.0, 0.0, 100.0]\n" + H1;
    assertThat(codes(HEAD + "G43 H1 G0 X2. Z50.\nM30\n", sheet)).containsExactly("HZ03@4");
    assertThat(codes(HEAD + "G43 H1\nG99 G81 X20. Z-5. R2. F100.\nG80\nM30\n", sheet)).isEmpty();
  }

  // HZ05

  @Test
  void right_hand_tool_wants_m3_and_a_left_hand_one_m4() {
    String program = at(-20, 20, "M4\nG1 Z-1. F100.\nX80.");
    assertThat(codes(program, MILL)).containsExactly("HZ05@7");
    assertThat(codes(program, STOCK + tool("end mill", 10) + "hand = \"left\"\n" + H1)).isEmpty();
    assertThat(codes(program, STOCK + H1)).isEmpty();
    assertThat(codes(at(-20, 20, "M4\nG0 X80."), MILL)).isEmpty();
  }

  @Test
  void tap_turns_back_on_its_way_out() {
    String tap =
        STOCK + tool("tap", 10) + "pitch = 1.5\n" + H1 + hole("diameter = 8.5\ndepth = 15.0");
    assertThat(codes(at(30, 20, "G84 Z-10. R2. F4500.\nG80"), tap)).isEmpty();
    assertThat(codes(at(30, 20, "M5\nM4\nG74 Z-10. R2. F4500.\nG80"), tap))
        .containsExactly("HZ05@8");
  }

  // HZ06

  private static final String THREAD_MILL =
      """
      [[tool]]
      number = 1
      kind = "thread mill"
      diameter = 14.0
      rows = 8
      pitch = 1.5
      flank-angle = 60.0
      form = "straight"
      """;

  private static String threaded(String more) {
    return hole("diameter = 18.5\ndepth = 18.0\nthread = \"M20x1.5-6H\"\n") + more + H1;
  }

  @Test
  void straight_feed_into_the_wall_is_found_from_a_tenth_deep_and_twenty_degrees_on() {
    String sheet = threaded(STOCK + THREAD_MILL);
    // The wall is met 2.25 mm from the axis.
    String straight = "G1 Z-12. F500.\nX%s F90.\nG3 I-%s\nG1 X30.\nG0 Z5.";
    assertThat(codes(at(30, 20, straight.formatted("32.351", "2.351")), sheet))
        .containsExactly("HZ06@7");
    assertThat(codes(at(30, 20, straight.formatted("32.349", "2.349")), sheet)).isEmpty();
    String slanting = "G1 Z-12. F500.\nY%s\nX33. Y20. F90.\nG3 I-3.\nG1 X30.\nG0 Z5.";
    assertThat(codes(at(30, 20, slanting.formatted("18.95")), sheet)).containsExactly("HZ06@8");
    assertThat(codes(at(30, 20, slanting.formatted("18.85")), sheet)).isEmpty();
  }

  @Test
  void entry_on_an_arc_above_the_hole_or_without_following_the_wall_is_not_straight() {
    String sheet = threaded(STOCK + THREAD_MILL);
    String arc = "G1 Z-12. F500.\nX31.7 Y18.3\nG3 X33. Y20. R1.7 F90.\nI-3.\nG1 X30.\nG0 Z5.";
    assertThat(codes(at(30, 20, arc), sheet)).isEmpty();
    assertThat(codes(at(30, 20, "G1 X33. F90.\nG3 I-3.\nG1 X30."), sheet)).isEmpty();
    assertThat(codes(at(30, 20, "G1 Z-12. F500.\nX33.\nX30.\nG0 Z5."), sheet)).isEmpty();
  }

  @Test
  void straight_feed_against_a_boss_is_found_from_outside() {
    String boss =
        "[[boss]]\nname = \"stub\"\nat = [30.0, 20.0]\ntop = 0.0\ndiameter = 20.0\ndepth = 15.0\n"
            + "thread = \"M20x1.5-6g\"\n"
            + STOCK
            + THREAD_MILL
            + H1;
    String straight = "G1 Z-12. F500.\nX%s F90.\nG2 I-%s\nG1 X50.\nG0 Z5.";
    assertThat(codes(at(50, 20, straight.formatted("46.89", "16.89")), boss))
        .containsExactly("HZ06@7");
    assertThat(codes(at(50, 20, straight.formatted("46.91", "16.91")), boss)).isEmpty();
  }

  // HZ08

  @Test
  void plunge_into_solid_is_found_unless_the_centre_is_free_or_cuts() {
    String plunge = at(30, 20, "G1 Z-0.01 F100.");
    String face = STOCK + tool("face mill", 40) + H1;
    assertThat(codes(plunge, face)).containsExactly("HZ08@6");
    assertThat(codes(at(30, 20, "G1 Z0 F100."), face)).isEmpty();
    assertThat(codes(plunge, face + hole("diameter = 8.0\ndepth = 5.0"))).isEmpty();
    assertThat(codes(at(-30, 20, "G1 Z-1. F100.\nX90."), face)).isEmpty();
    assertThat(codes(plunge, STOCK + tool("end mill", 40) + H1)).isEmpty();
    assertThat(codes(plunge, STOCK + H1)).isEmpty();
  }

  @Test
  void reamer_may_follow_the_drill() {
    String sheet =
        STOCK
            + tool("reamer", 10)
            + "[[tool]]\nnumber = 2\nkind = \"drill\"\ndiameter = 9.8\n"
            + "[offsets]\nH1 = { geometry = 80.0 }\nH2 = { geometry = 90.0 }\n";
    String drill = "G21 G90 G17 G54\nT2 M6\nS3000 M3\nG0 X30. Y20.\nG43 H2 Z2.\nG1 Z-12. F100.\n";
    String ream = "G0 Z50.\nT1 M6\nM3\nG43 H1 Z2.\nG1 Z-%s F100.\nG0 Z50.\nM30\n";
    assertThat(codes(drill + ream.formatted("12."), sheet)).isEmpty();
    assertThat(codes(drill + ream.formatted("12.1"), sheet)).containsExactly("HZ08@11");
  }

  // HZ09

  @Test
  void dog_leg_is_looked_at_where_the_straight_rapid_is_clear() {
    String jaw = "[[keep-out]]\nname = \"jaw\"\nmin = [0, 0, -20]\nmax = [20, 40, %s]\n";
    String program = HEAD + "G0 X80. Y20.\nG43 H1 Z45.\nX-40. Z5.\nM30\n";
    assertThat(codes(program, jaw.formatted("5.01") + H1)).containsExactly("HZ09@6");
    assertThat(codes(program, jaw.formatted("4.99") + H1)).isEmpty();
    assertThat(codes(program, jaw.formatted("30.0") + H1)).containsExactly("HZ01@6");
    String known = "[control]\nrapid-path = \"dog-leg\"\n" + jaw.formatted("5.01") + H1;
    assertThat(codes(program, known)).containsExactly("HZ01@6");
  }

  @Test
  void dog_leg_goes_down_before_it_is_past_the_stock() {
    String down = "G0 Z60.\nX90. Z%s\n";
    Checked checked = Checked.of(at(-40, 20, down.formatted("-5.")), MILL);
    assertThat(checked.codes()).containsExactly("HZ09@7");
    assertThat(checked.only(Code.HZ09).what())
        .startsWith("a dog-leg rapid would touch the stock at X");
    assertThat(codes(at(-40, 20, down.formatted("0")), MILL)).isEmpty();
  }

  // HZ10

  @Test
  void tip_may_go_a_millimetre_below_the_part_and_a_point_its_length_more() {
    String beside = "G1 Z-%s F500.\nX70.\nG0 Z5.";
    assertThat(codes(at(-10, 20, beside.formatted("21.")), MILL)).isEmpty();
    Checked deep = Checked.of(at(-10, 20, beside.formatted("21.01")), MILL);
    assertThat(deep.only(Code.HZ10).what())
        .isEqualTo("the tip goes 1.01 mm below the part, 1 mm is allowed");
    String drill = STOCK + tool("drill", 10) + "point-angle = 90.0\n" + H1;
    assertThat(codes(at(30, 20, "G1 Z-26. F100.\nG0 Z5."), drill)).isEmpty();
    assertThat(codes(at(30, 20, "G1 Z-26.01 F100.\nG0 Z5."), drill)).containsExactly("HZ10@6");
  }

  @Test
  void each_run_below_the_part_is_told_once_where_it_is_deepest() {
    String twice = "G1 Z-22. F500.\nX70. Z-23.\nG0 Z5.\nG1 Z-24.\nX-10. Z-22.";
    assertThat(codes(at(-10, 20, twice), MILL)).containsExactly("HZ10@7", "HZ10@9");
  }

  // HZ11

  @Test
  void rapid_down_keeps_half_a_millimetre_from_uncut_stock() {
    assertThat(codes(at(10, 20, "G0 Z0.5"), MILL)).isEmpty();
    assertThat(codes(at(10, 20, "G0 Z0.49"), MILL)).containsExactly("HZ11@6");
    assertThat(codes(at(10, 20, "G0 Z0"), MILL)).containsExactly("HZ11@6");
    assertThat(codes(at(-10, 20, "G0 Z0.2"), MILL)).isEmpty();
    assertThat(codes(at(10, 20, "G1 Z-1. F100.\nG0 Z2.\nZ0.2"), MILL)).isEmpty();
  }

  // HZ13

  @Test
  void spindle_stops_in_the_cut_only_with_metal_before_it() {
    String slot = "G1 Z-2. F500.\nX%s F300.\nM5\nG0 Z50.";
    assertThat(codes(at(-20, 20, slot.formatted("30.")), MILL)).containsExactly("HZ13@7");
    assertThat(codes(at(-20, 20, slot.formatted("70.")), MILL)).isEmpty();
    String turned = "G1 Z-2. F500.\nX30. F300.\nM5\nM4\nG0 Z50.";
    assertThat(Checked.of(at(-20, 20, turned), MILL).only(Code.HZ13).what())
        .isEqualTo("the spindle is reversed in the cut");
    assertThat(codes(at(-20, 20, "G1 Z-2. F500.\nX30. F300.\nG0 Z50.\nM5\nX0"), MILL)).isEmpty();
  }

  @Test
  void spindle_stops_with_teeth_in_a_thread_but_not_beside_its_wall() {
    String sheet = threaded(STOCK + THREAD_MILL);
    String thread = "G1 Z-12. F500.\nX31.7 Y18.3\nG3 X33. Y20. R1.7 F90.\nI-3.\n";
    assertThat(codes(at(30, 20, thread + "M5\nG0 Z5."), sheet)).containsExactly("HZ13@9");
    assertThat(codes(at(30, 20, thread + "G1 X30.\nM5\nG0 Z5."), sheet)).isEmpty();
  }

  // HZ14

  @Test
  void tip_keeps_to_the_depth_of_a_declared_hole() {
    String hole = hole("diameter = 10.0\ndepth = 15.0");
    String mill = STOCK + tool("end mill", 8) + H1;
    assertThat(codes(at(30, 20, "G1 Z-15.01 F100."), hole + mill)).isEmpty();
    assertThat(Checked.of(at(30, 20, "G1 Z-15.5 F100."), hole + mill).only(Code.HZ14).what())
        .isEqualTo("the tip goes 0.5 mm below the drilled depth of port");
    assertThat(codes(at(30, 20, "G1 Z-15.5 F100."), hole + STOCK + tool("drill", 8) + H1))
        .isEmpty();
    assertThat(codes(at(36, 20, "G1 Z-15.5 F100."), hole + mill)).isEmpty();
  }

  @Test
  void point_of_the_hole_and_a_deeper_hole_leave_room() {
    String mill = STOCK + tool("end mill", 8) + H1;
    String pointed = hole("diameter = 10.0\ndepth = 15.0\nbottom = 90.0");
    assertThat(codes(at(30, 20, "G1 Z-16. F100."), pointed + mill)).isEmpty();
    assertThat(codes(at(30, 20, "G1 Z-16.1 F100."), pointed + mill)).containsExactly("HZ14@6");
    String sink = hole("diameter = 14.0\ndepth = 5.0");
    String deep = sink.replace("port", "bore").replace("14.0", "10.0").replace("5.0", "15.0");
    assertThat(codes(at(30, 20, "G1 Z-14. F100."), sink + deep + mill)).isEmpty();
  }

  // HZ15

  @Test
  void long_feed_is_one_of_more_than_fifty_above_the_clearance_plane() {
    assertThat(codes(at(0, 0, "G1 X50. F300."), MILL)).isEmpty();
    assertThat(codes(at(0, 0, "G1 X50.01 F300."), MILL)).containsExactly("HZ15@6");
    assertThat(codes(at(-20, 0, "G1 Z-5. F300.\nZ51."), MILL)).isEmpty();
    assertThat(codes(at(-20, 0, "G1 Z-5. F300.\nZ51.1"), MILL)).containsExactly("HZ15@7");
    assertThat(codes(at(0, 0, "G1 X200. F300."), H1)).as("no stock").isEmpty();
  }

  // all of them

  @Test
  void who_watches_is_told_how_far_they_are_and_may_stop_them() {
    String program = HEAD + "G1 X1. F100.\nX2.\n".repeat(3000) + "M30\n";
    SourceText text = SourceText.of("p.nc", program.getBytes(StandardCharsets.UTF_8));
    Interpretation done = Interpreter.interpret(text, SetupSheet.empty());
    List<Double> shares = new ArrayList<>();
    assertThat(ProgramCheck.checked(done, SetupSheet.empty(), shares::add))
        .isEqualTo(ProgramCheck.checked(done, SetupSheet.empty()));
    assertThat(shares).hasSizeBetween(5, 20).isSorted().allMatch(share -> share < 1);
    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(() -> ProgramCheck.checked(done, SetupSheet.empty(), share -> share < 0.5));
  }
}
