package flankfit.fuzz;

import flankfit.nc.SourceText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program, its setup sheet and a second file of programs, any of them nonsense. */
final class FuzzCase {
  /** Name of the second file, as a sheet may give it under {@code subprograms}. */
  static final String MORE = "more.nc";

  private final byte[] program;
  private final String sheet;
  private final String more;

  /**
   * @param program bytes of the program
   * @param sheet text of the sheet; empty for none
   * @param more text of a second file; empty for none
   */
  FuzzCase(byte[] program, String sheet, String more) {
    this.program = program.clone();
    this.sheet = sheet;
    this.more = more;
  }

  /** A case of one program as text. */
  static FuzzCase of(String program, String sheet) {
    return new FuzzCase(program.getBytes(StandardCharsets.UTF_8), sheet, "");
  }

  /** Reads a saved case: {@code NAME.nc}, and {@code NAME.setup.toml}, {@code NAME.more} if any. */
  static FuzzCase read(Path program) throws IOException {
    String name = program.toString().replaceFirst("\\.nc$", "");
    return new FuzzCase(
        Files.readAllBytes(program), text(name + ".setup.toml"), text(name + ".more"));
  }

  private static String text(String file) throws IOException {
    Path path = Path.of(file);
    return Files.exists(path) ? Files.readString(path) : "";
  }

  /** Saves the case so that {@link #read} finds it. */
  Path save(Path folder, String name) throws IOException {
    Files.createDirectories(folder);
    Path file = folder.resolve(name + ".nc");
    Files.write(file, program);
    if (!sheet.isEmpty()) {
      Files.writeString(folder.resolve(name + ".setup.toml"), sheet);
    }
    if (!more.isEmpty()) {
      Files.writeString(folder.resolve(name + ".more"), more);
    }
    return file;
  }

  String sheet() {
    return sheet;
  }

  /** The program. */
  SourceText source() {
    return SourceText.of("case.nc", program);
  }

  /** The second file, if there is one. */
  List<SourceText> subprograms() {
    List<SourceText> texts = new ArrayList<>();
    if (!more.isEmpty()) {
      texts.add(SourceText.of(MORE, more.getBytes(StandardCharsets.UTF_8)));
    }
    return texts;
  }

  /** Bytes of all texts. */
  int size() {
    return program.length + sheet.length() + more.length();
  }
}
