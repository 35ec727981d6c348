package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads files that a request names, and says what is wrong where that does not go. */
final class InputFile {
  private InputFile() {}

  /**
   * A file's bytes.
   *
   * @param what what the file is, in words
   * @throws RequestException if it is not there or cannot be read
   */
  static byte[] bytes(Path file, String what) throws RequestException {
    if (!Files.exists(file)) {
      throw missing(file, what);
    }
    if (Files.isDirectory(file)) {
      throw unreadable(file, what, "it is a folder", "name a file in it");
    }
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw unreadable(file, what, e.toString(), "check the file's rights");
    } catch (OutOfMemoryError e) {
      throw unreadable(file, what, "it is too large for the memory given", "raise it: java -Xmx8g");
    }
  }

  /** The refusal of a file that is not there, with the nearest name that is. */
  static RequestException missing(Path file, String what) {
    Path folder = file.toAbsolutePath().getParent();
    String fix = "check the name and the folder";
    if (folder != null && Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        List<String> names =
            files
                .filter(Files::isRegularFile)
                .map(p -> String.valueOf(p.getFileName()))
                .sorted()
                .toList();
        fix =
            Nearest.of(String.valueOf(file.getFileName()), names)
                .map(n -> "the nearest name in that folder is " + n)
                .orElse(fix);
      } catch (IOException e) {
        fix = "check the folder's rights: " + e.getMessage();
      }
    }
    return RequestException.wrong(
        Finding.of(
            Code.RQ01,
            Place.file(file.toString()),
            what + " " + file + " does not exist",
            "there is nothing to read",
            fix));
  }

  /** The refusal of a file that is there and cannot be read. */
  static RequestException unreadable(Path file, String what, String why, String fix) {
    return RequestException.wrong(
        Finding.of(
            Code.RQ02,
            Place.file(file.toString()),
            what + " " + file + " cannot be read",
            why,
            fix));
  }

  /**
   * The text of a TOML file.
   *
   * @param what what the file is, in words
   * @throws RequestException if it cannot be read or is no UTF-8
   */
  static String utf8(Path file, String what) throws RequestException {
    byte[] bytes = bytes(file, what);
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw RequestException.wrong(
          Finding.of(
              Code.SH01,
              Place.file(file.toString()),
              "the " + what + " is not UTF-8 text",
              "TOML is UTF-8 by definition",
              "save it as UTF-8"));
    }
  }
}
