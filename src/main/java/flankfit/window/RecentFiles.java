package flankfit.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/** Programs opened before, the last one first, kept one a line. */
final class RecentFiles {
  /** So many are kept. */
  static final int MOST = 12;

  private final Path file;
  private List<Path> all;

  private RecentFiles(Path file, List<Path> all) {
    this.file = file;
    this.all = List.copyOf(all);
  }

  /** Reads them; a missing or broken file counts as none. */
  static RecentFiles read(Path file) {
    List<Path> found = new ArrayList<>();
    if (Files.isRegularFile(file)) {
      try {
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
          if (!line.isBlank() && found.size() < MOST) {
            found.add(Path.of(line));
          }
        }
      } catch (IOException | InvalidPathException e) {
        found.clear(); // a broken list counts as none: it holds nothing but habits
      }
    }
    return new RecentFiles(file, found);
  }

  /** The last one first. */
  synchronized List<Path> all() {
    return all;
  }

  /** A program was opened; gives whether that changes the list. */
  synchronized boolean opened(Path program) {
    Path whole = program.toAbsolutePath().normalize();
    if (!all.isEmpty() && all.get(0).equals(whole)) {
      return false;
    }
    List<Path> now = new ArrayList<>();
    now.add(whole);
    for (Path other : all) {
      if (!other.equals(whole) && now.size() < MOST) {
        now.add(other);
      }
    }
    all = List.copyOf(now);
    return true;
  }

  /**
   * Writes a file beside the old one and moves it there.
   *
   * @throws IOException if the folder cannot be written
   */
  void write() throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    Path beside = Files.createTempFile(folder, "recent", ".new");
    Files.write(beside, all().stream().map(Path::toString).toList(), StandardCharsets.UTF_8);
    Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
  }
}
