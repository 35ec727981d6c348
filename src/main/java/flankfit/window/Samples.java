package flankfit.window;

import flankfit.control.Interpretation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The sample programs that come with the tool. One that is opened is first copied beside the
 * window's settings, where it can be edited; a copy that is there already is left as it is.
 */
final class Samples {
  private static final String ENDING = ".setup.toml";

  private static final List<Sample> ALL =
      List.of(
          new Sample(
              "filter-housing-m20", "M20x1.5 in a blind port: rough, finish, spring; gauges good"),
          new Sample(
              "valve-block-half-13", "1/2-13 UNC in inch: full radius in the register, no mark"),
          new Sample("hub-axle-m16-left", "left-hand M16x1.5, one row of teeth, ten turns down"),
          new Sample(
              "valve-manifold-four-m12", "four M12x1.25 ports: absolute to each, then incremental"),
          new Sample(
              "broken-wear-sign", "wear with the wrong sign: GO is refused, and what mends it"),
          new Sample("broken-rise-is-not-pitch", "the rise of another thread: no thread at all"),
          new Sample(
              "broken-incremental-left-on", "G90 forgotten: the second thread misses its port"),
          new Sample("broken-compensation-left-on", "G40 forgotten: the tool leaves displaced"));

  private final Path folder;

  /**
   * One sample.
   *
   * @param name its file without ending
   * @param words what it shows
   */
  record Sample(String name, String words) {
    Sample {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(words, "words");
    }
  }

  /** Copies will go into a folder, which need not be there yet. */
  Samples(Path folder) {
    this.folder = folder;
  }

  /** All of them, those that are right first. */
  static List<Sample> all() {
    return ALL;
  }

  /** Where the copy of a sample lies. */
  Path file(Sample sample) {
    return folder.resolve(sample.name() + ".nc");
  }

  /** A sample as a program. */
  ProgramSource source(Sample sample, Programs programs) {
    ProgramSource copied = programs.of(file(sample));
    return new ProgramSource() {
      @Override
      public String file() {
        return copied.file();
      }

      @Override
      public List<Path> files() {
        return copied.files();
      }

      @Override
      public Text read() throws UnreadableProgramException {
        copy(sample);
        return copied.read();
      }

      @Override
      public Optional<Text> beginning(int most) throws UnreadableProgramException {
        copy(sample);
        return copied.beginning(most);
      }

      @Override
      public Judgement judge(Text text, Interpretation checked) {
        return copied.judge(text, checked);
      }
    };
  }

  private void copy(Sample sample) throws UnreadableProgramException {
    try {
      Files.createDirectories(folder);
      // The sheet first: a program without its sheet would be taken for one that has none.
      copy(sample.name() + ENDING);
      copy(sample.name() + ".nc");
    } catch (IOException e) {
      throw new UnreadableProgramException("the sample cannot be copied to " + folder + ": " + e);
    }
  }

  private void copy(String name) throws IOException {
    Path target = folder.resolve(name);
    if (Files.exists(target)) {
      return;
    }
    try (InputStream in = Samples.class.getResourceAsStream("/flankfit/samples/" + name)) {
      if (in == null) {
        throw new IOException("the sample " + name + " is missing from the jar");
      }
      Files.copy(in, target);
    }
  }
}
