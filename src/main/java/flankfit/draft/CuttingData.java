package flankfit.draft;

import flankfit.cutting.ToolMaterial;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * A row of the table of speeds and feeds to start with.
 *
 * @param group ISO group: P, M, K, N, S or H
 * @param carbide surface speed of a carbide edge (m/min)
 * @param highSpeedSteel surface speed of an edge of high-speed steel (m/min)
 * @param share feed of the edge for one tooth, as a share of the mill's diameter (1)
 * @param metals what belongs to the group
 * @see "common practice, no source"
 */
record CuttingData(
    String group, double carbide, double highSpeedSteel, double share, String metals) {
  private static final String TABLE = "/flankfit/draft/cutting-data.csv";
  private static final int FIELDS = 5;

  /** What stands beside every figure of the table. */
  static final String SOURCE = "common practice, no source; a starting point only";

  /**
   * The row of a group.
   *
   * @throws IllegalArgumentException if there is none
   */
  static CuttingData of(String group) {
    try (InputStream in = CuttingData.class.getResourceAsStream(TABLE)) {
      if (in == null) {
        throw new IllegalStateException("the table is missing: " + TABLE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> line.startsWith(group + ";"))
          .findFirst()
          .map(CuttingData::row)
          .orElseThrow(() -> new IllegalArgumentException("group has no row: " + group));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CuttingData row(String line) {
    String[] field = line.split(";", -1);
    if (field.length != FIELDS) {
      throw new IllegalStateException("row must have " + FIELDS + " fields: " + line);
    }
    return new CuttingData(
        field[0],
        Double.parseDouble(field[1]),
        Double.parseDouble(field[2]),
        Double.parseDouble(field[3]),
        field[4]);
  }

  /** Surface speed (m/min) for a mill of a material as the sheet words it. */
  double speed(String millMaterial) {
    return isHighSpeedSteel(millMaterial) ? highSpeedSteel : carbide;
  }

  private static boolean isHighSpeedSteel(String millMaterial) {
    return ToolMaterial.of(millMaterial)
        .filter(m -> m == ToolMaterial.HIGH_SPEED_STEEL)
        .isPresent();
  }
}
