package flankfit.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** What was read of a wall, by element: from above downwards, then by direction. */
final class FieldColumns extends GrooveColumns {
  final double[] theta;
  final double[] face;
  final int size;
  final int[] direction;

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
    this(readings, places(readings), depths, around);
  }

  private FieldColumns(
      List<DirectionReading> readings, List<Place> places, int depths, int around) {
    super(places.size(), depths);
    this.theta = readings.stream().mapToDouble(reading -> reading.theta).toArray();
    this.face = readings.stream().mapToDouble(reading -> reading.face).toArray();
    this.size = places.size();
    this.direction = new int[size];
    for (int e = 0; e < size; e++) {
      Place place = places.get(e);
      direction[e] = place.direction;
      copy(e, readings.get(place.direction), place.groove);
    }
    this.behind = behind(readings, places, around);
  }

  private static List<Place> places(List<DirectionReading> readings) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      for (int groove = 0; groove < readings.get(i).grooves(); groove++) {
        places.add(new Place(i, groove, readings.get(i).height[groove]));
      }
    }
    places.sort(Comparator.comparingDouble(place -> -place.height));
    return places;
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
}
