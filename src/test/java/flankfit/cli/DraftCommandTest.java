package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged jar drafts a program. Its refusal runs as the request of its page. */
class DraftCommandTest {
  @TempDir private Path folder;

  @Test
  void left_hand_pattern_in_a_subprogram_is_written_and_told() throws Exception {
    Path program = folder.resolve("hub.nc");
    FlankfitProcess run =
        FlankfitProcess.run(
            "draft",
            "--thread",
            "M10x1-6H-LH",
            "--mill",
            "7",
            "--depth",
            "10",
            "--at",
            "0,0",
            "--at",
            "40,0",
            "--mode",
            "incremental",
            "--subprogram",
            "--material",
            "steel C45",
            "--out",
            program.toString());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("[+] M10x1-6H-LH in hole 1: gauges good", "[+] M10x1-6H-LH in hole 2");
    assertThat(Files.readString(program)).contains("M98 P1002", "O1002", "M99");
    assertThat(folder.resolve("hub.setup.toml")).exists();
    FlankfitProcess gauged = FlankfitProcess.run("gauge", program.toString());
    assertThat(gauged.status()).as(gauged.err()).isZero();
    assertThat(gauged.out())
        .contains("[+] M10x1-6H-LH in hole 1, hole 2: gauges good")
        .containsPattern("finish pass .* \\(line \\d+\\)");
  }
}
