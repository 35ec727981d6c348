package flankfit.check;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.MetalProgress;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the metal says of small programs; depths worked out by hand from the places beside. */
class MetalCheckTest {
  private static final Path FOLDER = Path.of("sample-programs");
  private static final String STOCK =
      "[stock]\nshape = \"block\"\nsize = [60.0, 40.0, 20.0]\nzero = [0.0, 0.0, 20.0]\n";
  private static final String H1 = "[offsets]\nH1 = { geometry = 80.0 }\n";
  private static final String HEAD = "G21 G90 G17 G54\nT1 M6\nS3000 M3\n";

  private static String tool(String kind, double diameter, String more) {
    return "[[tool]]\nnumber = 1\nkind = \""
        + kind
        + "\"\ndiameter = "
        + diameter
        + "\n"
        + more
        + "\n";
  }

  private static String at(int x, int y, String blocks) {
    return HEAD + "G0 X" + x + ". Y" + y + ".\nG43 H1 Z2.\n" + blocks + "\nM30\n";
  }

  /** All findings of rules and metal together. */
  private static List<Finding> findings(String program, String sheet) throws Exception {
    Checked checked = Checked.of(program, sheet);
    SetupSheet setup = SetupReader.read("sheet.toml", sheet).sheet().orElseThrow();
    Interpretation done = ProgramCheck.checked(checked.done(), setup);
    Metal metal =
        Metal.of(done.tape(), setup, MetalOptions.usual().withCell(2), MetalProgress.NONE);
    return MetalCheck.of(done, setup, metal, done.tape().size()).with(done.findings());
  }

  private static Finding only(List<Finding> all, Code code) {
    List<Finding> found = all.stream().filter(f -> f.code() == code).toList();
    assertThat(found).as("%s", all).hasSize(1);
    return found.get(0);
  }

  private static final String MILL = STOCK + tool("end mill", 10, "") + H1;

  @Test
  void rapid_into_metal_is_told_once_by_the_metal_with_its_depth() throws Exception {
    Finding one = only(findings(at(10, 20, "G1 Z-5. F100.\nG0 X40.\nZ50."), MILL), Code.HZ01);
    assertThat(one.place().line()).isEqualTo(7);
    assertThat(one.what()).contains("rapid of tool 1", "5 mm into metal");
    assertThat(one.why()).contains("tip at X10.02");
  }

  @Test
  void shank_in_the_wall_is_told_at_the_first_block_with_the_deepest_place() throws Exception {
    String sheet =
        STOCK
            + tool("end mill", 10, "flute-length = 6.0\nshank = { diameter = 12.0, length = 40.0 }")
            + H1;
    String deep = "G1 Z-5. F100.\nX40. F300.\nG1 Z-10.\nX20.\nG0 Z50.";
    Finding one = only(findings(at(20, 20, deep), sheet), Code.HZ16);
    assertThat(one.place().line()).isEqualTo(8);
    assertThat(one.severity()).isEqualTo(Severity.ERROR);
    assertThat(one.what()).contains("shank of tool 1 goes 1 mm into metal", "X");
    assertThat(one.fix()).contains("6 mm");
    String shallow = "G1 Z-5. F100.\nX40. F300.\nG0 Z50.";
    assertThat(findings(at(20, 20, shallow), sheet))
        .extracting(Finding::code)
        .doesNotContain(Code.HZ16);
  }

  @Test
  void holder_over_a_clamp_is_told_with_its_name() throws Exception {
    String sheet =
        STOCK
            + "[[keep-out]]\nname = \"clamp\"\nmin = [0.0, 0.0, 0.0]\nmax = [15.0, 40.0, 25.0]\n"
            + tool(
                "end mill", 10, "flute-length = 20.0\nholder = { diameter = 40.0, length = 50.0 }")
            + H1;
    Finding one = only(findings(at(30, 20, "G1 Z-2. F100.\nG0 Z50."), sheet), Code.HZ17);
    // the holder's side is at X10, its face at Z18: 5 into the side, 7 from the face
    assertThat(one.what()).contains("holder of tool 1 goes 5 mm into clamp");
  }

  @Test
  void spindle_off_or_the_wrong_way_round_in_metal_is_told_with_its_depth() throws Exception {
    Finding off =
        only(findings(at(-10, 20, "G1 Z-2. F100. M5\nM5\nX20.\nG0 Z50."), MILL), Code.HZ04);
    assertThat(off.what()).contains("2 mm into metal");
    Finding back = only(findings(at(-10, 20, "M4\nG1 Z-2. F100.\nX20.\nG0 Z50."), MILL), Code.HZ05);
    assertThat(back.what()).contains("2 mm into metal");
    assertThat(back.place().line()).isEqualTo(8);
  }

  @Test
  void reamer_over_a_drilled_hole_is_no_plunge_into_solid() throws Exception {
    String reamer = STOCK + tool("reamer", 10, "") + H1;
    Finding one = only(findings(at(30, 20, "G1 Z-5. F100.\nG0 Z50."), reamer), Code.HZ08);
    assertThat(one.what()).contains("5 mm into solid metal at X30 Y20 Z0");
    String drilled =
        """
        [[hole]]
        name = "port"
        at = [30.0, 20.0]
        top = 0.0
        diameter = 9.6
        depth = 15.0
        made-by = "stock"
        """;
    assertThat(findings(at(30, 20, "G1 Z-5. F100.\nG0 Z50."), reamer + drilled))
        .extracting(Finding::code)
        .doesNotContain(Code.HZ08, Code.HZ16);
  }

  @Test
  void drilled_hole_is_as_deep_as_its_wall() throws Exception {
    String sheet =
        STOCK
            + tool("drill", 8.0, "point-angle = 118.0\nflute-length = 40.0")
            + "[[hole]]\nname = \"port\"\nat = [30.0, 20.0]\ntop = 0.0\ndiameter = 8.0\n"
            + "depth = 12.0\nbottom = 118.0\nmade-by = \"program\"\n"
            + H1;
    // the point is 4 / tan 59° = 2.4034 long
    assertThat(findings(at(30, 20, "G1 Z-14.404 F100.\nG0 Z50."), sheet))
        .extracting(Finding::code)
        .doesNotContain(Code.HZ18, Code.HZ01, Code.HZ07);
    Finding one = only(findings(at(30, 20, "G1 Z-12. F100.\nG0 Z50."), sheet), Code.HZ18);
    // asked at 0.98 of the radius, where the cone is 3.92 / tan 59° high
    assertThat(one.what()).contains("9.64", "12 mm is wanted");
    assertThat(one.place().file()).isEqualTo("sheet.toml");
  }

  @Test
  void through_hole_with_a_drill_point_below_is_as_deep_as_wanted() throws Exception {
    String sheet =
        STOCK
            + tool("drill", 8.0, "point-angle = 118.0\nflute-length = 40.0")
            + "[[hole]]\nname = \"port\"\nat = [30.0, 20.0]\ntop = 0.0\ndiameter = 8.0\n"
            + "depth = \"through\"\nmade-by = \"program\"\n"
            + H1;
    assertThat(findings(at(30, 20, "G1 Z-23. F100.\nG0 Z50."), sheet))
        .extracting(Finding::code)
        .doesNotContain(Code.HZ18, Code.HZ10);
  }

  @Test
  void stock_that_does_not_hold_a_hole_or_the_zero_is_told() throws Exception {
    String beside = "[[hole]]\nname = \"port\"\nat = [70.0, 20.0]\ntop = 0.0\ndiameter = 8.0\n";
    Finding out =
        only(
            findings(at(10, 20, "G1 Z-5. F100.\nG0 Z50."), MILL + beside + "depth = 5.0\n"),
            Code.HZ19);
    assertThat(out.what()).contains("10 mm beside the stock");
    String low = beside.replace("70.0", "30.0") + "depth = 25.0\n";
    Finding deep = only(findings(at(10, 20, "G1 Z-5. F100.\nG0 Z50."), MILL + low), Code.HZ19);
    assertThat(deep.what()).contains("5 mm below the stock");
    String zero = MILL.replace("[0.0, 0.0, 20.0]", "[0.0, 0.0, 25.0]");
    Finding shifted = only(findings(at(10, 20, "G1 Z-6. F100.\nG0 Z50."), zero), Code.HZ20);
    assertThat(shifted.what()).contains("5 mm outside the stock");
  }

  @Test
  void program_that_cuts_nothing_is_told() throws Exception {
    Finding air = only(findings(at(10, 20, "G1 Z0.5 F100.\nX40.\nG0 Z50."), MILL), Code.HZ21);
    assertThat(air.why()).contains("no spinning tool");
    Finding unknown = only(findings(at(10, 20, "G1 Z-5. F100.\nG0 Z50."), STOCK + H1), Code.HZ21);
    assertThat(unknown.fix()).contains("describe the tools");
  }

  @ParameterizedTest
  @ValueSource(strings = {"filter-housing-m20", "hub-axle-m16-left"})
  void metal_is_silent_where_the_motion_is_safe(String name) throws Exception {
    List<Finding> all =
        findings(
            Files.readString(FOLDER.resolve(name + ".nc")),
            Files.readString(FOLDER.resolve(name + ".setup.toml")));
    assertThat(all).extracting(f -> f.code().name()).noneMatch(code -> code.startsWith("HZ"));
  }

  @Test
  void thread_cut_less_deep_than_wanted_is_told() throws Exception {
    String sheet = Files.readString(FOLDER.resolve("filter-housing-m20.setup.toml"));
    String program =
        Files.readString(FOLDER.resolve("filter-housing-m20.nc")).replace("Z-17.", "Z-12.");
    Finding one = only(findings(program, sheet), Code.HZ18);
    assertThat(one.what()).contains("the thread of port A is 1", "16 mm is wanted");
  }

  @Test
  void thread_mill_that_leaves_at_rapid_with_its_teeth_in_the_thread_tears() throws Exception {
    String sheet = Files.readString(FOLDER.resolve("filter-housing-m20.setup.toml"));
    String program =
        HEAD.replace("T1", "T4")
            + "G0 X0 Y0\nG43 H4 Z5.\nG1 Z-17. F1000.\nG1 X3. F90.\nG3 I-3. Z-15.5\nG0 Z50.\nM30\n";
    Finding one = only(findings(program, sheet), Code.HZ07);
    // radius 7 + 3 in a bore of 9.25, less what is told not to be sure
    assertThat(one.what())
        .containsPattern("leaves at rapid (at least )?0\\.7[0-5][0-9]* mm into metal");
  }

  @Test
  void what_rules_without_metal_tell_of_the_same_stands_back() throws Exception {
    String sheet =
        STOCK
            + tool("end mill", 10, "flute-length = 6.0\nshank = { diameter = 12.0, length = 40.0 }")
            + H1;
    Checked checked = Checked.of(at(20, 20, "G1 Z-10. F100.\nX40.\nG0 Z50."), sheet);
    SetupSheet setup = SetupReader.read("sheet.toml", sheet).sheet().orElseThrow();
    Metal metal =
        Metal.of(
            checked.done().tape(), setup, MetalOptions.usual().withCell(2), MetalProgress.NONE);
    MetalCheck check = MetalCheck.of(checked.done(), setup, metal, checked.done().tape().size());
    assertThat(check.rubbed()).contains(6, 7);
    Finding neck = Finding.of(Code.TH17, new Place("p.nc", 7, 0, 0), "the mill's shank", "", "");
    Finding other = Finding.of(Code.TH17, new Place("p.nc", 9, 0, 0), "the mill's shank", "", "");
    List<Finding> all = check.with(List.of(neck, other));
    assertThat(all).contains(other).doesNotContain(neck);
    // What its own shank went through is no second fault of the way out.
    assertThat(all).extracting(Finding::code).containsExactlyInAnyOrder(Code.HZ16, Code.TH17);
  }
}
