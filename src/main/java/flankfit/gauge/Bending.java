package flankfit.gauge;

import flankfit.cutting.Rung;
import flankfit.cutting.WorkMaterial;
import java.util.List;
import java.util.Objects;

/**
 * How far the passes of a thread are pushed off their paths, and what that makes of it. Lists hold
 * for each pass what is added to the radius of its path (mm).
 *
 * @param material the metal
 * @param rows the rows of each pass that stand in the metal, those of one more spring pass last
 * @param rungs what each pass does, one more spring pass last
 * @param mean mean over the rows in the metal
 * @param tight at the row that comes out tightest
 * @param loose at the row that comes out loosest
 * @param felt at the turn where a NO-GO gauge must have stopped
 * @param practice mean over the rows with edge force and least chip
 * @param sprung mean over the rows when one more spring pass follows
 * @param practiceSprung the same with edge force and least chip
 */
record Bending(
    WorkMaterial material,
    List<PassRows> rows,
    List<Rung> rungs,
    List<Double> mean,
    List<Double> tight,
    List<Double> loose,
    List<Double> felt,
    List<Double> practice,
    List<Double> sprung,
    List<Double> practiceSprung) {
  Bending {
    Objects.requireNonNull(material, "material");
    rows = List.copyOf(rows);
    rungs = List.copyOf(rungs);
    mean = List.copyOf(mean);
    tight = List.copyOf(tight);
    loose = List.copyOf(loose);
    felt = List.copyOf(felt);
    practice = List.copyOf(practice);
    sprung = List.copyOf(sprung);
    practiceSprung = List.copyOf(practiceSprung);
  }

  /**
   * How far a row of a pass is pushed off the wall (mm); a row outside the metal like the nearest
   * within.
   */
  double cutShort(int pass, int row) {
    PassRows inMetal = rows.get(pass);
    List<Double> values = rungs.get(pass).cutShort();
    double[] each = values.stream().mapToDouble(Double::doubleValue).toArray();
    return inMetal.at(PassRows.middle(inMetal.cut(), row), each);
  }
}
