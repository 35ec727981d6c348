package flankfit.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The wear entry put into a sheet: the number changes, and nothing else. */
class WearEditTest {
  private static String edited(String text, double wear) {
    WearEdit.Outcome outcome = WearEdit.of("job.setup.toml", text, 4, wear);
    assertThat(outcome).isInstanceOf(WearEdit.Edited.class);
    return ((WearEdit.Edited) outcome).text();
  }

  private static void keeps(String before, String after, double wear) {
    assertThat(edited(before, wear)).isEqualTo(after);
    assertThat(SetupReader.read("", after).sheet().orElseThrow().offsets().radius(4).orElseThrow())
        .satisfies(r -> assertThat(r.wear()).isCloseTo(wear, within(1e-9)));
  }

  @Test
  void a_sheet_of_the_samples_changes_in_that_number_alone() throws Exception {
    String text = Files.readString(Path.of("sample-programs/filter-housing-m20.setup.toml"));
    keeps(text, text.replace("wear = -0.045", "wear = -0.048"), -0.048);
    assertThat(edited(text, -0.045)).isEqualTo(text);
  }

  @Test
  void comments_layout_and_line_ends_stay_as_they_are() {
    keeps(
        "units = \"mm\"  # ours\r\n[offsets]\r\n  D04   = {wear=0.010 , geometry = 7.0 } # \"ü\" D4\r\n",
        "units = \"mm\"  # ours\r\n[offsets]\r\n  D04   = {wear=-0.002 , geometry = 7.0 } # \"ü\" D4\r\n",
        -0.002);
    keeps("\uFEFF[offsets]\nD4.wear = 1e-2\n", "\uFEFF[offsets]\nD4.wear = 0.02\n", 0.02);
    keeps("[offsets.D4]\nwear = 0.0\n# end", "[offsets.D4]\nwear = 0.1\n# end", 0.1);
    keeps("offsets = { D4 = { wear = 0 } }", "offsets = { D4 = { wear = 1.0 } }", 1);
  }

  @Test
  void a_length_keeps_its_unit() {
    keeps(
        "units = \"mm\"\n[offsets]\nD4 = { wear = \"0.001 in\" }\n",
        "units = \"mm\"\n[offsets]\nD4 = { wear = \"-0.0012 in\" }\n",
        -0.03048);
    keeps(
        "units = \"inch\"\n[offsets]\nD4 = { wear = 0.0010 }\n",
        "units = \"inch\"\n[offsets]\nD4 = { wear = -0.0012 }\n",
        -0.03048);
  }

  @Test
  void what_is_not_there_yet_is_added() {
    keeps(
        "[offsets]\nD4 = { geometry = 7.0 }\n",
        "[offsets]\nD4 = { geometry = 7.0, wear = 0.01 }\n",
        0.01);
    keeps(
        "[offsets.D4]\ngeometry = 7.0 # half\n[gauges]\n",
        "[offsets.D4]\ngeometry = 7.0 # half\nwear = 0.01\n[gauges]\n",
        0.01);
    keeps(
        "[offsets] # all\nH4 = { geometry = 1.0 }",
        "[offsets] # all\nD4 = { wear = 0.01 }\nH4 = { geometry = 1.0 }",
        0.01);
    keeps("title = \"a\"", "title = \"a\"\n\n[offsets]\nD4 = { wear = 0.01 }\n", 0.01);
  }

  @Test
  void what_cannot_be_changed_with_certainty_is_refused_with_a_reason() {
    assertThat(WearEdit.of("", "units = 7", 4, 0.01)).isInstanceOf(WearEdit.Refused.class);
    WearEdit.Outcome inline = WearEdit.of("", "offsets = { H4 = { wear = 0.0 } }", 4, 0.01);
    assertThat(inline).isInstanceOf(WearEdit.Refused.class);
    assertThat(((WearEdit.Refused) inline).fix()).contains("D4").contains("0.01");
  }
}
