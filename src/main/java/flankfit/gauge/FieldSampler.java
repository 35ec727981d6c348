package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.Wall;
import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Reads a wall for a thread, direction by direction. Directions are shared out among the
 * processors; the outcome does not depend on how.
 */
final class FieldSampler {
  final Wall wall;
  final ThreadSpec spec;
  final boolean through;
  final double[] ladder;
  final Winding winding;
  final double pitchLine;
  final double phase;
  final double mouth;
  final double farMouth;

  private final DepthMarks marks;
  private final List<DirectionReading> even;

  /**
   * Reads a number of directions spread evenly.
   *
   * @param ladder depths in rising order (mm)
   */
  FieldSampler(Wall wall, ThreadSpec spec, boolean through, int directions, double[] ladder) {
    this.wall = wall;
    this.spec = spec;
    this.through = through;
    this.winding = Winding.of(spec);
    this.ladder = ladder;
    this.pitchLine = winding.turned(spec.basicPitch() / 2);
    this.marks = DepthMarks.of(wall, winding, ladder);
    WallSection[] sections = new WallSection[directions];
    Arrays.setAll(sections, i -> section(Angles.TURN * i / directions));
    IntStream.range(0, directions).parallel().forEach(i -> sections[i].at(pitchLine));
    this.phase = HelixPhase.of(sections, winding, pitchLine);
    double highest = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    for (WallSection section : sections) {
      WallLine line = section.at(pitchLine);
      highest = Math.max(highest, line.low(line.count() - 1));
      lowest = Math.min(lowest, Double.isFinite(line.low(0)) ? wall.bottom() : line.high(0));
    }
    this.mouth = Double.isFinite(highest) ? highest : wall.bottom();
    this.farMouth = Double.isFinite(lowest) ? lowest : wall.top();
    this.even = IntStream.range(0, directions).parallel().mapToObj(i -> read(sections[i])).toList();
  }

  private WallSection section(double theta) {
    return new WallSection(wall, winding, through, marks, theta);
  }

  private DirectionReading read(WallSection section) {
    double high = wall.top() + winding.pitch() / 2;
    double low = through ? wall.bottom() - winding.pitch() / 2 : wall.bottom();
    return DirectionReading.of(section, reader(), phase, low, high, section.deepestAtFace());
  }

  private GrooveReader reader() {
    return new GrooveReader(winding, ladder, Arrays.binarySearch(ladder, pitchLine));
  }

  /** The even directions, by rising angle. */
  List<DirectionReading> even() {
    return even;
  }

  /** Reads more directions (rad), in their order. */
  List<DirectionReading> read(double[] thetas) {
    return IntStream.range(0, thetas.length)
        .parallel()
        .mapToObj(i -> read(section(thetas[i])))
        .toList();
  }

  /** Reads the places where the grooves of all starts pass a height (mm). */
  FieldColumns at(double z) {
    List<DirectionReading> found = new ArrayList<>();
    double near = winding.pitch() / 4;
    for (int start = 0; start < spec.starts(); start++) {
      double theta = Angles.normalised((z - phase - start * winding.pitch()) / winding.rise());
      found.add(
          DirectionReading.of(section(theta), reader(), phase, z - near, z + near, Double.NaN));
    }
    return new FieldColumns(found, ladder.length, 0);
  }
}
