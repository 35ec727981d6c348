package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.Wall;
import flankfit.unit.Angles;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Reads a wall into the columns of a {@link WallField}. */
final class FieldSampler {
  final Wall wall;
  final boolean through;
  final int directions;
  final double[] ladder;
  final WallSection[] sections;
  final double phase;
  final double mouth;
  final double farMouth;
  final double[] face;
  final int size;
  final int[] direction;
  final double[] height;
  final double[] bottom;
  final double[] ridgeUp;
  final double[] ridgeDown;
  final double[] upAtRidge;
  final double[] downAtRidge;
  final double[] upAtBottom;
  final double[] downAtBottom;
  final double[] up;
  final double[] down;

  private final Winding winding;
  private final double pitchLine;

  FieldSampler(Wall wall, ThreadSpec spec, boolean through, int directions, double[] ladder) {
    this.wall = wall;
    this.through = through;
    this.directions = directions;
    this.winding = Winding.of(spec);
    this.ladder = ladder;
    this.pitchLine = winding.turned(spec.basicPitch() / 2);
    this.sections = new WallSection[directions];
    DepthMarks marks = DepthMarks.of(wall, winding, ladder);
    for (int i = 0; i < directions; i++) {
      sections[i] = new WallSection(wall, winding, through, marks, angle(i));
    }
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
    this.face = new double[directions];
    double[][] found = elements();
    this.size = found.length;
    this.direction = new int[size];
    this.height = new double[size];
    for (int e = 0; e < size; e++) {
      direction[e] = (int) found[e][0];
      height[e] = found[e][1];
    }
    this.bottom = new double[size];
    this.ridgeUp = new double[size];
    this.ridgeDown = new double[size];
    this.upAtRidge = new double[size];
    this.downAtRidge = new double[size];
    this.upAtBottom = new double[size];
    this.downAtBottom = new double[size];
    this.up = new double[size * ladder.length];
    this.down = new double[size * ladder.length];
  }

  double angle(int i) {
    return Angles.TURN * i / directions;
  }

  /** Direction and height of each element, from above downwards. */
  private double[][] elements() {
    double high = wall.top() + winding.pitch() / 2;
    double low = through ? wall.bottom() - winding.pitch() / 2 : wall.bottom();
    return IntStream.range(0, directions)
        .boxed()
        .flatMap(
            i -> {
              double base = phase + winding.rise() * angle(i);
              long first = (long) Math.ceil((low - base) / winding.pitch());
              long last = (long) Math.floor((high - base) / winding.pitch());
              return LongStream.rangeClosed(first, last)
                  .mapToObj(n -> new double[] {i, base + n * winding.pitch()});
            })
        .sorted(Comparator.comparingDouble(element -> -element[1]))
        .toArray(double[][]::new);
  }

  /** Directions are shared out among the processors; the outcome does not depend on how. */
  void readAll() {
    IntStream.range(0, directions).parallel().forEach(this::readDirection);
    Arrays.fill(sections, null);
  }

  private void readDirection(int wanted) {
    face[wanted] = sections[wanted].deepest(wall.top(), wall.top());
    GrooveReader reader = new GrooveReader(winding, ladder, Arrays.binarySearch(ladder, pitchLine));
    for (int e = 0; e < size; e++) {
      if (direction[e] == wanted) {
        reader.read(sections[wanted], height[e]);
        store(e, reader);
      }
    }
  }

  private void store(int e, GrooveReader reader) {
    bottom[e] = reader.bottom;
    ridgeUp[e] = reader.ridgeUp;
    ridgeDown[e] = reader.ridgeDown;
    upAtRidge[e] = reader.upAtRidge;
    downAtRidge[e] = reader.downAtRidge;
    upAtBottom[e] = reader.upAtBottom;
    downAtBottom[e] = reader.downAtBottom;
    System.arraycopy(reader.up, 0, up, e * ladder.length, ladder.length);
    System.arraycopy(reader.down, 0, down, e * ladder.length, ladder.length);
  }
}
