package flankfit.setup;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.motion.Extents;
import flankfit.motion.Point;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every error of a sheet has its code, its place, what was expected, and what to write. */
class SetupErrorsTest {
  private static final List<String> FULL =
      SheetText.resource("filter-housing.setup.toml").lines().toList();

  /** Puts a line of the full sheet in place of the one that begins so, and reads the sheet. */
  private static SheetReading readWith(String beginning, String replacement) {
    assertThat(FULL.stream().filter(l -> l.startsWith(beginning)).count()).isEqualTo(1);
    return SheetText.read(
        String.join(
            "\n", FULL.stream().map(l -> l.startsWith(beginning) ? replacement : l).toList()));
  }

  @ParameterizedTest(name = "{1}")
  @CsvFileSource(resources = "errors.csv", useHeadersInDisplayName = true, delimiter = ';')
  void one_wrong_line_gives_one_error_at_its_place(
      String beginning, String replacement, String code, int column, String what, String fix) {
    SheetReading reading = readWith(beginning, replacement == null ? "" : replacement);
    assertThat(reading.sheet()).isEmpty();
    assertThat(reading.findings()).as("%s", reading.findings()).hasSize(1);
    Finding finding = reading.findings().get(0);
    assertThat(finding.code()).isEqualTo(Code.valueOf(code));
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.what()).isEqualTo(what);
    assertThat(finding.fix()).isEqualTo(fix == null ? "" : fix);
    assertThat(finding.why()).isNotEmpty();
    assertThat(finding.place().file()).isEqualTo("part.setup.toml");
    assertThat(finding.place().column()).isEqualTo(column);
    if (finding.code() != Code.SH03) {
      int line = FULL.indexOf(FULL.stream().filter(l -> l.startsWith(beginning)).findFirst().get());
      assertThat(finding.place().line()).isEqualTo(line + 1);
    }
  }

  @Test
  void a_missing_key_points_at_the_head_of_its_table() {
    Finding finding = readWith("number   =", "").findings().get(0);
    assertThat(finding.place().line()).isEqualTo(38);
    assertThat(finding.why()).isEqualTo("expected a whole number from 1");
  }

  @Test
  void a_measured_holder_is_read_in_micrometres_for_one_newton() {
    SheetReading reading = readWith("runout", "holder-compliance = 0.05");
    assertThat(reading.sheet().orElseThrow().tools().get(0).holderCompliance()).contains(5e-5);
  }

  @Test
  void subprograms_lie_beside_the_sheet() {
    for (String name : List.of("../hole-pattern.nc", "sub\\\\a.nc", "..", "")) {
      Finding finding =
          readWith("subprograms", "subprograms = [\"" + name + "\"]").findings().get(0);
      assertThat(finding.code()).isEqualTo(Code.SH05);
      assertThat(finding.place().line()).isEqualTo(10);
      assertThat(finding.what()).contains("it must be the name of a file beside the sheet");
    }
  }

  @Test
  void limits_of_loops_are_whole_numbers_from_one() {
    assertThat(SheetText.read("[control]\nloop-limit = 0\nblock-limit = 1.5\n").findings())
        .extracting(Finding::code)
        .containsExactly(Code.SH05, Code.SH04);
  }

  @Test
  void all_errors_of_one_reading_are_reported_in_order() {
    SheetReading reading =
        SheetText.read(
            """
            unit = "mm"
            [[tool]]
            number = 0
            kind = "endmill"
            diameter = -3
            [[hole]]
            name = "a"
            at = [0, "x"]
            diameter = "3 cm"
            depth = "trough"
            thread = "G1/2"
            """);
    assertThat(reading.sheet()).isEmpty();
    assertThat(reading.findings())
        .extracting(f -> f.place().line() + " " + f.code())
        .containsExactly(
            "1 SH02", "3 SH05", "4 SH05", "5 SH05", "8 SH04", "9 SH06", "10 SH05", "11 SH07");
  }

  @Test
  void a_tool_number_used_twice_names_the_first_line() {
    String tool = "[[tool]]\nnumber = 7\nkind = \"drill\"\ndiameter = 5\n";
    List<Finding> findings = SheetText.read(tool + tool).findings();
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).place().line()).isEqualTo(6);
    assertThat(findings.get(0).what()).isEqualTo("tool 7 is in the sheet twice, first at line 1");
  }

  @Test
  void a_hole_name_used_twice_is_an_error() {
    String hole = "[[hole]]\nname = \"a\"\nat = [0, 0]\ndiameter = 5\ndepth = \"through\"\n";
    List<Finding> findings = SheetText.read(hole + hole).findings();
    assertThat(findings).extracting(Finding::code).containsExactly(Code.SH05);
    assertThat(findings.get(0).place().line()).isEqualTo(7);
  }

  @Test
  void two_forms_of_one_mill_exclude_each_other() {
    Finding finding =
        readWith("tip         =", "tip = 0.5\nground-for = \"M20x1.5-6H\"").findings().get(0);
    assertThat(finding.code()).isEqualTo(Code.SH05);
    assertThat(finding.what())
        .isEqualTo("\"ground-for\" in [[tool]] is \"M20x1.5-6H\", but form says the form too");
    assertThat(finding.fix()).isEqualTo("keep one of form, ground-for");
  }

  @Test
  void a_flank_angle_that_is_not_of_the_thread_a_mill_is_ground_for_is_an_error() {
    String ground = "ground-for = \"M20x1.5-6H\"\nflank-angle = ";
    Finding finding = formed(ground + "55").get(0);
    assertThat(finding.code()).isEqualTo(Code.SH05);
    assertThat(finding.what())
        .isEqualTo("\"flank-angle\" in [[tool]] is 55, but the mill is ground for a thread of 60°");
    assertThat(formed(ground + "60")).isEmpty();
  }

  private static List<Finding> formed(String lines) {
    return SheetText.read(
            "[[tool]]\nnumber = 4\nkind = \"thread mill\"\ndiameter = 14\nrows = 1\npitch = 1.5\n"
                + "tip = 0.5\nflute-length = 18\nflutes = 4\n"
                + lines
                + "\n")
        .findings();
  }

  @Test
  void one_origin_in_two_spellings_is_an_error() {
    List<Finding> findings =
        SheetText.read("[work-offsets]\nG54 = [0, 0, 0]\ng54 = [0, 0, 1]\n").findings();
    assertThat(findings).extracting(Finding::code).containsExactly(Code.SH05);
  }

  @Test
  void another_word_for_what_the_end_resets_is_an_error() {
    SheetReading reading =
        SheetText.read(
            """
            [control]
            end-reset = "kept"
            """);
    assertThat(reading.findings()).extracting(Finding::code).containsExactly(Code.SH05);
    assertThat(reading.findings().get(0).fix()).contains("keep");
  }

  @Test
  void words_and_lengths_of_cycle_switches_are_checked() {
    List<Finding> findings =
        SheetText.read(
                """
                [control]
                scale-reading = "thousandth"
                cycle-repeat = "P"
                after-g80 = true
                peck-clearance = -1.0
                bore-shift = "-Z"
                back-bore = "Q-bottom"
                """)
            .findings();
    assertThat(findings)
        .extracting(Finding::code)
        .containsExactly(Code.SH05, Code.SH05, Code.SH04, Code.SH05, Code.SH05, Code.SH05);
    assertThat(findings.get(0).fix()).contains("thousandths");
  }

  @Test
  void stock_from_a_mesh_is_read_from_stl_alone() {
    List<Finding> findings =
        SheetText.read("[stock]\nshape = \"mesh\"\nfile = \"a.obj\"\nzero = [0, 0, 0]\n")
            .findings();
    assertThat(findings).extracting(Finding::code).containsExactly(Code.SH08);
    assertThat(findings.get(0).fix()).isEqualTo("export the stock as STL");
  }

  @Test
  void stock_file_lies_beside_the_sheet_and_its_size_makes_the_box() {
    String sheet = "[stock]\nshape = \"mesh\"\nfile = \"a.stl\"\nzero = [10, 20, 30]\n";
    List<Finding> missing = SheetText.read(sheet).findings();
    assertThat(missing).extracting(Finding::code).containsExactly(Code.SH09);
    List<Finding> elsewhere = SheetText.read(sheet.replace("a.stl", "../a.stl")).findings();
    assertThat(elsewhere).extracting(Finding::code).containsExactly(Code.SH05);
    List<Finding> both = SheetText.read(sheet + "size = [1, 1, 1]\n").findings();
    assertThat(both).extracting(Finding::code).contains(Code.SH05);
    StockFiles files = name -> new Point(60, 40, 30);
    Stock stock =
        SetupReader.readWithFiles("s.toml", sheet, files)
            .sheet()
            .orElseThrow()
            .stock()
            .orElseThrow();
    assertThat(stock.box()).isEqualTo(new Extents(new Point(-10, -20, -30), new Point(50, 20, 0)));
    assertThat(stock.file()).contains("a.stl");
  }

  @Test
  void brackets_without_end_are_an_error_and_no_crash() {
    List<Finding> findings = SheetText.read("title = " + "[".repeat(5000)).findings();
    assertThat(findings).extracting(Finding::code).containsExactly(Code.SH01);
  }

  @Test
  void one_table_where_a_list_of_tables_belongs_says_how_to_head_it() {
    Finding finding = SheetText.read("[hole]\nname = \"a\"\n").findings().get(0);
    assertThat(finding.code()).isEqualTo(Code.SH04);
    assertThat(finding.what())
        .isEqualTo(
            "\"hole\" in the sheet: expected a list of tables, each headed [[hole]], found a"
                + " table");
  }
}
