package flankfit.lesson;

import flankfit.finding.Place;
import flankfit.lesson.Trail.Stand;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where two runs part, block by block of what both executed.
 *
 * @param first the first block after which the tool stands elsewhere or has gone another way; empty
 *     if there is none
 * @param greatest greatest distance between both tools after one block (mm)
 * @param at the block where it is
 * @param last distance after the last block that both executed (mm)
 * @param lastAt that block
 * @param otherOrder the first block that one executed where the other executed another one
 * @param seconds by how much the other run takes longer over these blocks (s)
 */
public record Parting(
    Optional<Place> first,
    double greatest,
    Place at,
    double last,
    Place lastAt,
    Optional<Place> otherOrder,
    double seconds) {
  /** Points and ways nearer than this are the same (mm). */
  static final double SAME = 1e-6;

  public Parting {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(lastAt, "lastAt");
    Objects.requireNonNull(otherOrder, "otherOrder");
  }

  /** Compares a program with the same one without a word. */
  public static Parting of(
      SourceText right, LeftOut wrong, SetupSheet setup, List<SourceText> subprograms) {
    Place but = wrong.alone() ? wrong.place() : Place.file("");
    List<Stand> a = Trail.of(right, setup, subprograms, but);
    List<Stand> b = Trail.of(wrong.text(), setup, subprograms, but);
    return of(a, b);
  }

  private static Parting of(List<Stand> a, List<Stand> b) {
    Place none = Place.file("");
    Optional<Place> first = Optional.empty();
    Optional<Place> order = Optional.empty();
    Place at = none;
    Place lastAt = none;
    double greatest = 0;
    double last = 0;
    double seconds = 0;
    for (int i = 0; i < Math.min(a.size(), b.size()) && order.isEmpty(); i++) {
      Stand here = a.get(i);
      Stand there = b.get(i);
      if (here.place().line() != there.place().line()) {
        order = Optional.of(here.place());
        continue;
      }
      if (first.isEmpty() && !here.isLike(there)) {
        first = Optional.of(here.place());
      }
      last = here.tip().distance(there.tip());
      lastAt = here.place();
      seconds += there.seconds() - here.seconds();
      if (last > greatest) {
        greatest = last;
        at = here.place();
      }
    }
    return new Parting(first, greatest, at, last, lastAt, order, seconds);
  }
}
