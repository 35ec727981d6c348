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
    rungs = List.copyOf(rungs);
    mean = List.copyOf(mean);
    tight = List.copyOf(tight);
    loose = List.copyOf(loose);
    felt = List.copyOf(felt);
    practice = List.copyOf(practice);
    sprung = List.copyOf(sprung);
    practiceSprung = List.copyOf(practiceSprung);
  }
}
