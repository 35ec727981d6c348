package flankfit.draft;

import flankfit.cutting.EdgeFeed;
import flankfit.cutting.WorkMaterial;
import flankfit.cutting.WorkMaterials;
import java.util.Optional;

/**
 * Speeds and feeds of a draft.
 *
 * @param metal row of the table of cutting forces; empty when the sheet names no metal known there
 * @param data row of the table of speeds and feeds
 * @param fromTable whether speed and feed for a tooth are those of the table
 * @param speed surface speed of the edge (m/min)
 * @param reckoned spindle speed for it, not rounded (1/min)
 * @param rpm spindle speed as programmed (1/min)
 * @param tooth feed of the edge for one tooth (mm)
 * @param edge feed of the edge (mm/min)
 */
record Feeds(
    Optional<WorkMaterial> metal,
    CuttingData data,
    boolean fromTable,
    double speed,
    double reckoned,
    double rpm,
    double tooth,
    double edge) {
  /** A metal that is not named is taken as one of this group: slower than most. */
  static final String UNNAMED = "P";

  /** Feed for one tooth (mm): less rubs, more is too much for the thin ends of teeth. */
  private static final double LEAST_TOOTH = 0.008;

  private static final double MOST_TOOTH = 0.08;
  private static final double MILLIMETRES = 1000;
  private static final double WHOLE = 10;

  /** The speeds and feeds of a job. */
  static Feeds of(ThreadJob job, DraftChoices choices) {
    Optional<WorkMaterial> metal = WorkMaterials.builtIn().of(job.sheet().workpieceMaterial());
    CuttingData data = CuttingData.of(metal.map(WorkMaterial::isoGroup).orElse(UNNAMED));
    double diameter = job.mill().diameter();
    double speed = choices.speed().orElse(data.speed(job.mill().material()));
    double tooth =
        choices
            .toothFeed()
            .orElse(Math.max(LEAST_TOOTH, Math.min(MOST_TOOTH, data.share() * diameter)));
    double reckoned = speed * MILLIMETRES / (Math.PI * diameter);
    double within = Math.min(reckoned, choices.mostRpm());
    double rpm = within >= WHOLE ? Math.floor(within / WHOLE) * WHOLE : Math.max(1, within);
    return new Feeds(
        metal,
        data,
        choices.speed().isEmpty() && choices.toothFeed().isEmpty(),
        speed,
        reckoned,
        Math.rint(rpm),
        tooth,
        tooth * job.mill().flutes() * Math.rint(rpm));
  }

  /** Feed of the centre (mm/min) on a path of a radius (mm) inside or outside, not rounded. */
  double centre(boolean internal, double path, double millRadius) {
    return new EdgeFeed(internal, path, millRadius).centreFor(edge);
  }
}
