package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import flankfit.setup.StockFileException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Mesh files beside a sheet, good and bad ones. */
class StockFolderTest {
  private static final String FACET =
      "facet normal 0 0 0\nouter loop\nvertex %s\nvertex %s\nvertex %s\nendloop\nendfacet\n";
  private static final String A = "0 0 0";
  private static final String B = "60 0 0";
  private static final String C = "0 40 0";
  private static final String D = "0 0 30";

  @TempDir private Path folder;

  private Path write(String name, String text) throws Exception {
    return Files.writeString(folder.resolve(name), text, StandardCharsets.US_ASCII);
  }

  private static String facets(String... corners) {
    StringBuilder text = new StringBuilder("solid wedge\n");
    for (int i = 0; i < corners.length; i += 3) {
      text.append(FACET.formatted(corners[i], corners[i + 1], corners[i + 2]));
    }
    return text.append("endsolid wedge\n").toString();
  }

  private static String wedge() {
    return facets(A, C, B, A, B, D, A, D, C, B, C, D);
  }

  private void refused(String name, String what) {
    StockFolder files = new StockFolder(folder.resolve("part.setup.toml"));
    StockFileException e = catchThrowableOfType(StockFileException.class, () -> files.size(name));
    assertThat(e.what()).contains(name, what);
    assertThat(e.why()).isNotBlank();
    assertThat(e.fix()).isNotBlank();
    assertThat(files.body()).isEmpty();
  }

  @Test
  void files_that_cannot_be_stock_are_refused_with_a_way_out() throws Exception {
    write("wedge.stl", wedge());
    refused("wedgs.stl", "does not exist");
    Files.createDirectory(folder.resolve("box.stl"));
    refused("box.stl", "is no file");
    write("empty.stl", "");
    refused("empty.stl", "holds no facet");
    write("words.stl", "this is no mesh at all, and longer than a head would be".repeat(3));
    refused("words.stl", "is no STL");
    write("open.stl", facets(A, C, B, A, B, D, A, D, C));
    refused("open.stl", "open.stl");
    write("inside-out.stl", facets(A, B, C, A, D, B, A, C, D, B, D, C));
    refused("inside-out.stl", "inside-out.stl");
  }

  @Test
  void job_holds_the_body_and_a_box_that_its_zero_places() throws Exception {
    write("wedge.stl", wedge());
    write(
        "part.setup.toml",
        "[stock]\nshape = \"mesh\"\nfile = \"wedge.stl\"\nzero = [10.0, 10.0, 30.0]\n");
    Path program = write("part.nc", "G21 G90 G17 G54\nG0 X0 Y0\nM30\n");
    ProgramOptions.Job job = ProgramOptions.of(program, Optional.empty()).run();
    assertThat(job.mesh().orElseThrow().facetCount()).isEqualTo(4);
    assertThat(job.sheet().stock().orElseThrow().top()).isEqualTo(0.0);
    assertThat(job.sheet().stock().orElseThrow().box().max().x()).isEqualTo(50.0);
    assertThat(job.sheet().assumptions()).anyMatch(s -> s.contains("box of wedge.stl"));
    assertThat(job.subprogramFiles()).containsExactly(folder.resolve("wedge.stl"));
  }

  @Test
  void sheet_whose_stock_is_open_is_refused_at_its_line() throws Exception {
    write("open.stl", facets(A, C, B, A, B, D, A, D, C));
    write(
        "part.setup.toml",
        "[stock]\nshape = \"mesh\"\nfile = \"open.stl\"\nzero = [10.0, 10.0, 30.0]\n");
    Path program = write("part.nc", "G21\nM30\n");
    RequestException e =
        catchThrowableOfType(
            RequestException.class, () -> ProgramOptions.of(program, Optional.empty()).run());
    assertThat(e.findings()).hasSize(1);
    assertThat(e.findings().get(0).code().name()).isEqualTo("SH09");
    assertThat(e.findings().get(0).place().line()).isEqualTo(3);
  }
}
