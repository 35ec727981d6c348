package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes an output file beside its place and moves it there, so that no half file is ever seen. */
final class OutputFile {
  private OutputFile() {}

  /**
   * Refuses a place that cannot take a file, before any work is done.
   *
   * @throws RequestException if the folder is missing or the file is one of the inputs
   */
  static void check(Path file, Path... inputs) throws RequestException {
    Path folder = folder(file);
    if (!Files.isDirectory(folder)) {
      throw failure(file, "there is no folder " + folder, "make the folder, or name another");
    }
    if (Files.isDirectory(file)) {
      throw failure(file, "it is a folder", "name a file in it");
    }
    for (Path input : inputs) {
      if (same(file, input)) {
        throw failure(file, "it is an input of this command", "name another file");
      }
    }
  }

  private static boolean same(Path a, Path b) throws RequestException {
    try {
      return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
    } catch (IOException e) {
      throw failure(a, e.getMessage(), "name another file");
    }
  }

  /** Writes the bytes. */
  static void write(Path file, byte[] bytes) throws RequestException {
    try {
      // Not createTempFile: its files are readable by their owner alone.
      String name = "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part";
      Path beside = folder(file).resolve(name);
      try {
        Files.write(beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        move(beside, file);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw failure(file, e.toString(), "check the folder's rights and the space left");
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      // A network folder, say: the plain move still never shows a half file under the name.
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path folder(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }

  private static RequestException failure(Path file, String why, String fix) {
    return RequestException.wrong(
        Finding.of(
            Code.RQ03,
            Place.file(file.toString()),
            "output file " + file + " cannot be written",
            why,
            fix));
  }
}
