package flankfit.cutting;

import java.util.Locale;
import java.util.Optional;

/**
 * Materials that mills are made of.
 *
 * @see "usual figures of textbooks (from memory)"
 */
public enum ToolMaterial {
  CARBIDE("carbide", 600_000),
  HIGH_SPEED_STEEL("high-speed steel", 220_000),
  STEEL("steel", 210_000);

  private final String word;
  private final double modulus;

  ToolMaterial(String word, double modulus) {
    this.word = word;
    this.modulus = modulus;
  }

  /** The word in the sheet. */
  public String word() {
    return word;
  }

  /** Young's modulus (N/mm²). */
  public double modulus() {
    return modulus;
  }

  /** The material of a word; empty when it is none of them. */
  public static Optional<ToolMaterial> of(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    for (ToolMaterial material : values()) {
      if (material.word.equals(word)) {
        return Optional.of(material);
      }
    }
    return switch (word) {
      case "cemented carbide", "solid carbide", "tungsten carbide" -> Optional.of(CARBIDE);
      case "hss" -> Optional.of(HIGH_SPEED_STEEL);
      default -> Optional.empty();
    };
  }
}
