package flankfit.window;

import flankfit.setup.WearEdit;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Puts wear entries into a setup sheet, on a thread of its own: the new text is written beside the
 * old one, brought safely to the disk and moved into its place.
 */
final class SheetFile {
  private final Runnable wake;
  private final AtomicReference<Optional<Outcome>> outcome =
      new AtomicReference<>(Optional.empty());

  /** How it came out: what was done, or what went wrong. */
  record Outcome(String notice, Optional<Problem> problem) {}

  SheetFile(Runnable wake) {
    this.wake = wake;
  }

  /**
   * Begins to write.
   *
   * @param sheet the sheet
   * @param register number of the D register
   * @param wear the entry (mm, as entered)
   * @param words entry and register, for the notice
   */
  void put(Path sheet, int register, double wear, String words) {
    Thread thread =
        new Thread(
            () -> {
              outcome.set(Optional.of(outcome(sheet, register, wear, words)));
              wake.run();
            },
            "sheet");
    thread.setDaemon(true);
    thread.start();
  }

  private static Outcome outcome(Path sheet, int register, double wear, String words) {
    try {
      Optional<Problem> problem = write(sheet, register, wear);
      return new Outcome(problem.isPresent() ? "" : words + " stands in " + sheet, problem);
    } catch (IOException e) {
      return new Outcome(
          "",
          Optional.of(
              new Problem(
                  words + " was not put into the sheet",
                  sheet.toString(),
                  e.toString(),
                  "check the rights of file and folder and the space left; the old sheet stands")));
    }
  }

  /** Writes; gives why not, if it is not certain what is to be written. */
  static Optional<Problem> write(Path sheet, int register, double wear) throws IOException {
    Path real = sheet.toRealPath();
    byte[] before = Files.readAllBytes(real);
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(before)).toString();
    } catch (CharacterCodingException e) {
      return Optional.of(refused(sheet, register, "it is no UTF-8 text", "save it as UTF-8"));
    }
    WearEdit.Outcome edit = WearEdit.of(sheet.toString(), text, register, wear);
    if (edit instanceof WearEdit.Refused why) {
      return Optional.of(refused(sheet, register, why.why(), why.fix()));
    }
    String after = ((WearEdit.Edited) edit).text();
    if (!after.equals(text)) {
      replace(real, after.getBytes(StandardCharsets.UTF_8));
    }
    return Optional.empty();
  }

  private static Problem refused(Path sheet, int register, String why, String fix) {
    return new Problem("D" + register + " is not put into the sheet", sheet.toString(), why, fix);
  }

  private static void replace(Path file, byte[] bytes) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Path beside = Files.createTempFile(folder, "." + file.getFileName(), ".new");
    try {
      try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
        ByteBuffer left = ByteBuffer.wrap(bytes);
        while (left.hasRemaining()) {
          channel.write(left);
        }
        channel.force(true);
      }
      if (Files.getFileAttributeView(file, PosixFileAttributeView.class) != null) {
        Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(file));
      }
      move(beside, file);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static void move(Path beside, Path file) throws IOException {
    try {
      Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      // A disk that cannot swap names at once: the new file is whole already.
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Tells how the last one came out, once; gives whether there was something to tell. */
  boolean tell(Desk desk) {
    Optional<Outcome> now = outcome.getAndSet(Optional.empty());
    now.ifPresent(
        o -> {
          if (o.problem().isPresent()) {
            desk.problems(java.util.List.of(o.problem().get()));
          } else {
            desk.notice(o.notice());
          }
        });
    return now.isPresent();
  }
}
