package flankfit.cutting;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The table of specific cutting forces, by names in plain words. */
public final class WorkMaterials {
  private static final String TABLE = "/flankfit/cutting/work-materials.csv";
  private static final int FIELDS = 9;

  private final Map<String, WorkMaterial> byWord;

  private WorkMaterials(Map<String, WorkMaterial> byWord) {
    this.byWord = byWord;
  }

  /** The built-in table. */
  public static WorkMaterials builtIn() {
    Map<String, WorkMaterial> rows = new LinkedHashMap<>();
    for (String line : lines()) {
      if (!line.isBlank() && !line.startsWith("#") && !line.startsWith("key;")) {
        WorkMaterial row = row(line);
        rows.put(word(row.key()), row);
      }
    }
    return new WorkMaterials(rows);
  }

  /** The row of a name; case and outer blanks don't count. */
  public Optional<WorkMaterial> of(String name) {
    return Optional.ofNullable(byWord.get(word(name)));
  }

  /** All rows in the order of the table. */
  public List<WorkMaterial> all() {
    return List.copyOf(byWord.values());
  }

  /** Names in the order of the table. */
  public List<String> keys() {
    return byWord.values().stream().map(WorkMaterial::key).toList();
  }

  /** Names that share a word with this one, such as all steels for {@code steel X}. */
  public List<String> alike(String name) {
    Set<String> words = words(name);
    return keys().stream().filter(key -> !Collections.disjoint(words, words(key))).toList();
  }

  private static Set<String> words(String name) {
    return Pattern.compile("[ ,-]+").splitAsStream(word(name)).collect(Collectors.toSet());
  }

  private static String word(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  private static WorkMaterial row(String line) {
    String[] field = line.split(";", -1);
    if (field.length != FIELDS) {
      throw new IllegalArgumentException("row must have " + FIELDS + " fields: " + line);
    }
    return new WorkMaterial(
        field[0],
        field[1],
        Double.parseDouble(field[2]),
        Double.parseDouble(field[3]),
        Double.parseDouble(field[4]),
        Double.parseDouble(field[5]),
        field[6].equals("read"),
        field[7],
        field[8]);
  }

  private static List<String> lines() {
    try (InputStream in = WorkMaterials.class.getResourceAsStream(TABLE)) {
      if (in == null) {
        throw new IllegalStateException("the table is missing: " + TABLE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
