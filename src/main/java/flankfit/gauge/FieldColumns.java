package flankfit.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** What was read of a wall, by element: from above downwards, then by direction. */
final class FieldColumns {
  final double[] theta;
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

  /** Element of the same groove in the next direction; below 0 where it was not read. */
  final int[] behind;

  /** One groove of one direction. */
  private record Place(int direction, int groove, double height) {}

  /**
   * Lays readings out.
   *
   * @param readings one for each direction, by rising angle
   * @param depths number of depths on which flanks are read
   * @param around numbers that a groove gains in a turn anticlockwise; 0 when the readings do not
   *     go all round
   */
  FieldColumns(List<DirectionReading> readings, int depths, int around) {
    this.theta = readings.stream().mapToDouble(reading -> reading.theta).toArray();
    this.face = readings.stream().mapToDouble(reading -> reading.face).toArray();
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      for (int groove = 0; groove < readings.get(i).grooves(); groove++) {
        places.add(new Place(i, groove, readings.get(i).height[groove]));
      }
    }
    places.sort(Comparator.comparingDouble(place -> -place.height));
    this.size = places.size();
    this.direction = new int[size];
    this.height = new double[size];
    this.bottom = new double[size];
    this.ridgeUp = new double[size];
    this.ridgeDown = new double[size];
    this.upAtRidge = new double[size];
    this.downAtRidge = new double[size];
    this.upAtBottom = new double[size];
    this.downAtBottom = new double[size];
    this.up = new double[size * depths];
    this.down = new double[size * depths];
    for (int e = 0; e < size; e++) {
      Place place = places.get(e);
      store(e, place, readings.get(place.direction), depths);
    }
    this.behind = behind(readings, places, around);
  }

  private int[] behind(List<DirectionReading> readings, List<Place> places, int around) {
    int[] found = new int[size];
    Arrays.fill(found, -1);
    int n = readings.size();
    int[][] elements = new int[n][];
    for (int i = 0; i < n; i++) {
      elements[i] = new int[readings.get(i).grooves()];
    }
    for (int e = 0; e < size; e++) {
      elements[places.get(e).direction][places.get(e).groove] = e;
    }
    for (int e = 0; e < size && around != 0; e++) {
      Place place = places.get(e);
      int next = (place.direction + 1) % n;
      long number = readings.get(place.direction).first + place.groove;
      long there = number + (next == 0 ? around : 0) - readings.get(next).first;
      if (there >= 0 && there < elements[next].length) {
        found[e] = elements[next][(int) there];
      }
    }
    return found;
  }

  private void store(int e, Place place, DirectionReading from, int depths) {
    int i = place.groove;
    direction[e] = place.direction;
    height[e] = place.height;
    bottom[e] = from.bottom[i];
    ridgeUp[e] = from.ridgeUp[i];
    ridgeDown[e] = from.ridgeDown[i];
    upAtRidge[e] = from.upAtRidge[i];
    downAtRidge[e] = from.downAtRidge[i];
    upAtBottom[e] = from.upAtBottom[i];
    downAtBottom[e] = from.downAtBottom[i];
    System.arraycopy(from.up, i * depths, up, e * depths, depths);
    System.arraycopy(from.down, i * depths, down, e * depths, depths);
  }
}
