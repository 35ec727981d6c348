package flankfit.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What fuzzing once found, run again. */
class FuzzReplayTest {
  private static final Path SAVED = Path.of("src/test/resources/flankfit/fuzz");

  static List<Path> saved() throws IOException {
    try (Stream<Path> files = Files.list(SAVED)) {
      return files.filter(file -> file.toString().endsWith(".nc")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("saved")
  void saved_case_is_answered_well(Path program) throws IOException {
    Oracles.check(FuzzCase.read(program));
  }

  @Test
  void a_case_is_read_as_it_was_saved(@TempDir Path folder) throws IOException {
    FuzzCase given = new FuzzCase(new byte[] {'M', '3', '0', (byte) 0xE9}, "title = \"é\"", "O1");
    FuzzCase read = FuzzCase.read(given.save(folder, "one"));
    assertThat(read.sheet()).isEqualTo(given.sheet());
    assertThat(read.size()).isEqualTo(given.size());
    assertThat(read.source().lines()).isEqualTo(given.source().lines());
    assertThat(read.subprograms()).hasSize(1);
  }
}
