package flankfit.control;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** One worked example of the language: a program, its sheet, its moves, its findings. */
public record Example(
    String name,
    String title,
    String sheet,
    List<String> must,
    List<String> mustNot,
    boolean stops,
    String program,
    List<String> moves) {

  public static Example load(String name) {
    List<String> moves = new ArrayList<>();
    StringBuilder program = new StringBuilder();
    String[] head = {"", "", "", "", ""};
    List<String> keys = List.of("title: ", "sheet: ", "must: ", "must-not: ", "stops: ");
    int part = 0;
    for (String line : text("examples/" + name + ".txt").lines().toList()) {
      if (line.startsWith("--- ")) {
        part++;
      } else if (part == 1) {
        program.append(line).append('\n');
      } else if (part == 2) {
        moves.add(line);
      } else {
        for (int i = 0; i < head.length; i++) {
          if (line.startsWith(keys.get(i))) {
            head[i] = line.substring(keys.get(i).length()).strip();
          }
        }
      }
    }
    return new Example(
        name,
        head[0],
        head[1],
        words(head[2]),
        words(head[3]),
        head[4].equals("yes"),
        program.toString(),
        moves);
  }

  static List<String> words(String text) {
    return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+", -1));
  }

  public static String text(String resource) {
    try (InputStream in = Example.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("no such resource: " + resource);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
