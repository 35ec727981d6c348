package flankfit.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells which of many programs changed, or their sheets, by times and sizes. */
final class CheckWatch {
  /** Time between two looks (ms). */
  static final long BETWEEN = 200;

  private final Map<Path, List<Stamp>> known = new HashMap<>();

  /** What tells a file from what it was; all 0 where there is none. */
  private record Stamp(long time, long size) {}

  /**
   * The programs that changed since they were last asked for, new ones included.
   *
   * @param setup one sheet for all; else each has its own beside it
   */
  List<Path> among(List<Path> programs, Optional<Path> setup) {
    List<Path> changed = new ArrayList<>();
    known.keySet().retainAll(programs);
    for (Path program : programs) {
      List<Stamp> now =
          ProgramOptions.of(program, setup).watched().stream().map(CheckWatch::stamp).toList();
      if (!now.equals(known.put(program, now))) {
        changed.add(program);
      }
    }
    return changed;
  }

  private static Stamp stamp(Path file) {
    try {
      BasicFileAttributes a = Files.readAttributes(file, BasicFileAttributes.class);
      return new Stamp(a.lastModifiedTime().toMillis(), a.size());
    } catch (IOException e) {
      // Not there, or not to be read: the check itself says so.
      return new Stamp(0, 0);
    }
  }
}
