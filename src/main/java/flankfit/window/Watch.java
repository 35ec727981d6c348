package flankfit.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Looks at files sixteen times a second and tells when one has changed and stands still again.
 * Asking for times and sizes works alike on every platform and for every way in which editors save,
 * by writing in place as by moving a new file over the old one.
 */
final class Watch implements AutoCloseable {
  /** Time between two looks (ms). */
  private static final long BETWEEN = 60;

  private final Supplier<List<Path>> files;
  private final Runnable changed;
  private final Thread thread;
  private volatile boolean closed;
  private List<Path> watched = List.of();
  private Map<Path, Stamp> known = Map.of();
  private Map<Path, Stamp> last = Map.of();

  /** What tells a file from what it was. */
  private record Stamp(long time, long size) {}

  /**
   * Has not begun to look yet.
   *
   * @param files gives the files; asked at each look
   * @param changed told on a thread of the watch's own
   */
  Watch(Supplier<List<Path>> files, Runnable changed) {
    this.files = files;
    this.changed = changed;
    thread = new Thread(this::run, "watch");
    thread.setDaemon(true);
  }

  /** Begins to look. */
  void start() {
    thread.start();
  }

  private void run() {
    while (!closed) {
      try {
        Thread.sleep(BETWEEN);
      } catch (InterruptedException e) {
        return;
      }
      if (look()) {
        changed.run();
      }
    }
  }

  /**
   * Looks once; gives whether a file has changed since the last time it was told and was the same
   * at the look before. A file that vanished is still being saved, or gone: neither is a change.
   */
  boolean look() {
    List<Path> now = files.get();
    Map<Path, Stamp> stamps = stamps(now);
    if (!now.equals(watched)) {
      // Other files: what they were like when they were read is not known better than now.
      Map<Path, Stamp> kept = new HashMap<>(stamps);
      known.forEach((file, stamp) -> kept.computeIfPresent(file, (f, s) -> stamp));
      watched = List.copyOf(now);
      known = kept;
      last = stamps;
      return false;
    }
    boolean settled = stamps.equals(last);
    last = stamps;
    if (!settled) {
      return false;
    }
    boolean other = false;
    for (Map.Entry<Path, Stamp> entry : stamps.entrySet()) {
      other |= !entry.getValue().equals(known.get(entry.getKey()));
    }
    if (other) {
      Map<Path, Stamp> all = new HashMap<>(known);
      all.putAll(stamps);
      known = all;
    }
    return other;
  }

  private static Map<Path, Stamp> stamps(List<Path> files) {
    Map<Path, Stamp> found = new HashMap<>();
    for (Path file : files) {
      stamp(file).ifPresent(stamp -> found.put(file, stamp));
    }
    return found;
  }

  /** A file that is not there at this moment has no stamp. */
  private static Optional<Stamp> stamp(Path file) {
    try {
      BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
      return Optional.of(new Stamp(is.lastModifiedTime().to(TimeUnit.NANOSECONDS), is.size()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    closed = true;
    thread.interrupt();
  }
}
