package flankfit.cutting;

import flankfit.unit.Require;
import java.util.List;

/**
 * A mill as a stepped beam clamped in its holder, which itself yields: {@code δ(b) = F (h + 1/E ∫
 * (x - a)(x - b)/I dx)} from the higher of a and b to the holder, x from the tip.
 *
 * @param sections sections from the tip to the holder
 * @param modulus Young's modulus (N/mm²), above 0
 * @param holderCompliance how far holder, spindle and clamp shift the mill for one newton (mm/N),
 *     not below 0
 * @see "beam theory; S. P. Timoshenko, Strength of Materials (from memory)"
 */
public record Cantilever(List<Section> sections, double modulus, double holderCompliance) {
  /**
   * Share of a cutter's diameter that bends like its fluted part.
   *
   * @see "abstract of strain-gauge tests and finite elements on two- and four-fluted end mills"
   */
  public static final double FLUTED = 0.8;

  public Cantilever {
    sections = List.copyOf(sections);
    Require.positive("number of sections", sections.size());
    Require.positive("modulus", modulus);
    Require.notNegative("holderCompliance", holderCompliance);
  }

  /**
   * A cylinder of the mill.
   *
   * @param diameter diameter that bends (mm), above 0
   * @param end distance of its upper end from the tip (mm), above 0
   */
  public record Section(double diameter, double end) {
    public Section {
      Require.positive("diameter", diameter);
      Require.positive("end", end);
    }
  }

  /** Distance of the holder from the tip (mm). */
  public double overhang() {
    return sections.get(sections.size() - 1).end();
  }

  /** Shift at b for one newton at a (mm/N), both from the tip (mm). */
  public double compliance(double a, double b) {
    double from = Math.max(a, b);
    double sum = 0;
    double low = 0;
    for (Section section : sections) {
      double high = section.end();
      double start = Math.max(low, from);
      if (high > start) {
        double d = section.diameter();
        double inertia = Math.PI * d * d * d * d / 64;
        sum += (integral(high, a, b) - integral(start, a, b)) / inertia;
      }
      low = high;
    }
    return holderCompliance + sum / modulus;
  }

  private static double integral(double x, double a, double b) {
    return x * x * x / 3 - (a + b) * x * x / 2 + a * b * x;
  }

  /** Force at the tip that shifts the tip by a millimetre (N/mm). */
  public double tipStiffness() {
    return 1 / compliance(0, 0);
  }

  /** The same mill in a holder that yields otherwise. */
  public Cantilever inHolder(double compliance) {
    return new Cantilever(sections, modulus, compliance);
  }
}
