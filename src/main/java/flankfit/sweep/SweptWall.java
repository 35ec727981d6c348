package flankfit.sweep;

import flankfit.sweep.Blank.Corner;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * The wall that real cutters leave on real, finite paths: entry and exit arcs, incomplete turns,
 * several passes and rows, rows pushed off, axes that do not meet.
 *
 * <p>A line parallel to the axis at distance d from a cutter's axis lies in a row of teeth between
 * the heights at which the row is as wide as d. While the line stays within the outside radius, the
 * heights it is in make one stretch, whose ends are two maxima over the path, found in closed form
 * for straight flanks on straight legs and circular arcs about any centre. All rows share them.
 * Ends are accurate to 1e-6 mm. May be used by several threads at once.
 */
public final class SweptWall implements Wall {
  private final boolean internal;
  private final double x;
  private final double y;
  private final double bottom;
  private final double top;
  private final List<Blank> blanks;
  private final List<Sweep> sweeps;
  private final Track[] tracks;
  private final SurfaceSearch search;

  /** What part of a wall is looked at. */
  public record Range(double bottom, double top) {
    public Range {
      Require.finite("bottom", bottom);
      Require.finite("top", top);
      Require.positive("top less bottom", top - bottom);
    }
  }

  /**
   * The wall after all sweeps.
   *
   * @param internal whether it is a hole's
   * @param x axis, part frame (mm)
   * @param y axis, part frame (mm)
   * @param range heights between which it is known
   * @param blanks holes, or the boss, before the thread, at least one; where any leaves no metal
   *     there is none
   * @param sweeps cutters and their paths, in any order
   */
  public SweptWall(
      boolean internal, double x, double y, Range range, List<Blank> blanks, List<Sweep> sweeps) {
    this.internal = internal;
    this.x = Require.finite("x", x);
    this.y = Require.finite("y", y);
    this.bottom = range.bottom();
    this.top = range.top();
    this.blanks = List.copyOf(blanks);
    if (blanks.isEmpty()) {
      throw new IllegalArgumentException("blanks must not be empty");
    }
    this.sweeps = List.copyOf(sweeps);
    List<Track> all = new ArrayList<>();
    for (Sweep sweep : sweeps) {
      addRows(sweep, all);
      addBody(sweep, all);
    }
    this.tracks = all.toArray(new Track[0]);
    this.search = new SurfaceSearch(this, deepest());
  }

  /** Rows that are drawn in alike share one search. */
  private void addRows(Sweep sweep, List<Track> all) {
    Map<Double, List<Integer>> byInward = new LinkedHashMap<>();
    for (int row = 0; row < sweep.cutter().rows(); row++) {
      byInward.computeIfAbsent(sweep.inward().get(row) + 0.0, k -> new ArrayList<>()).add(row);
    }
    Cutter cutter = sweep.cutter();
    FlankShape up = cutter.tooth().side(Flank.UP).endingAt(cutter.rowReach());
    FlankShape down = cutter.tooth().side(Flank.DOWN).endingAt(cutter.rowReach());
    byInward.forEach(
        (inward, rows) -> {
          double[] heights = rows.stream().mapToDouble(cutter::height).toArray();
          Swath swath = new Swath(cutter.tooth().outsideRadius(), up, down, heights);
          List<Leg> path = Legs.of(drawnIn(sweep.path(), inward), x, y);
          Track.of(swath, path, bottom, top).ifPresent(all::add);
        });
  }

  private void addBody(Sweep sweep, List<Track> all) {
    List<Leg> path = Legs.of(sweep.path(), x, y);
    for (Cutter.Section section : sweep.cutter().body()) {
      Track.of(Swath.of(section), path, bottom, top).ifPresent(all::add);
    }
  }

  /** Made smaller about the axis so that the turns lose the length on the radius. */
  private CutterPath drawnIn(CutterPath path, double inward) {
    double[] radii = path.arcRadii(x, y);
    if (inward == 0 || radii.length == 0) {
      return path;
    }
    double radius = internal ? radii[1] : radii[0];
    double factor = Require.positive("path radius less inward", radius - inward) / radius;
    return path.stretched(x, y, factor, factor);
  }

  /** The radius that no cutter reaches beyond (mm). */
  private double deepest() {
    double deepest = internal ? 0 : Double.POSITIVE_INFINITY;
    for (Track track : tracks) {
      double own = track.deepest(internal);
      deepest = internal ? Math.max(deepest, own) : Math.min(deepest, own);
    }
    return Math.max(0, deepest);
  }

  @Override
  public boolean isInternal() {
    return internal;
  }

  @Override
  public double top() {
    return top;
  }

  @Override
  public double bottom() {
    return bottom;
  }

  /** The sweeps that made it. */
  public List<Sweep> sweeps() {
    return sweeps;
  }

  @Override
  public int open(double theta, double radius, double[] stretches) {
    double px = radius * Math.cos(theta);
    double py = radius * Math.sin(theta);
    Openings out = new Openings(bottom, top);
    for (Blank blank : blanks) {
      blank.open(radius, out);
    }
    for (Track track : tracks) {
      track.open(px, py, out);
    }
    return out.joined(stretches);
  }

  @Override
  public double[] likelyRadii() {
    DoubleStream bare =
        blanks.stream().flatMap(b -> b.corners().stream()).mapToDouble(Corner::radius);
    DoubleStream cut = Arrays.stream(tracks).mapToDouble(track -> track.deepest(internal));
    return DoubleStream.concat(bare, cut).filter(r -> r > 0).sorted().distinct().toArray();
  }

  /** Radius of the blanks at a height (mm): where metal begins before the thread. */
  double blankRadius(double z) {
    double best = internal ? 0 : Double.POSITIVE_INFINITY;
    for (Blank blank : blanks) {
      best = internal ? Math.max(best, blank.radius(z)) : Math.min(best, blank.radius(z));
    }
    return best;
  }

  @Override
  public double radius(double theta, double z) {
    return search.radius(theta, Require.within("z", z, bottom, top));
  }

  /** Where cylinders of the cutters' bodies are driven into metal, deepest first. */
  public List<Rub> rubs() {
    return RubSearch.of(this, x, y);
  }
}
