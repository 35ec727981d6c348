package flankfit.window;

import flankfit.finding.Finding;
import flankfit.gauge.ThreadAnswer;
import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.Camera;
import flankfit.setup.Hole;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;

/** What a hand does on the Metal sheet: opens the metal, drags the planes, picks places of it. */
final class MetalSide implements AutoCloseable {
  /** Steps of a plane by keys, small and large, in millimetres and in inches. */
  private static final double STEP = 0.1;

  private static final double STEP_INCH = 0.005 * 25.4;
  private static final int LARGE = 10;

  /** Room round a hole that is looked at closely, as a share of its diameter (1). */
  private static final double ROUND = 0.3;

  /** A plane that is dragged so near to where it began stays there (px). */
  private static final double HOME = 5;

  private final Course course;
  private final Look look;
  private final Desk desk;
  private final Runnable changed;
  private final MetalBench bench;
  private final Sections sections = new Sections();
  private Optional<MetalSubject> subject = Optional.empty();
  private Optional<MetalPick> picked = Optional.empty();
  private boolean seeThrough;
  private boolean byTool;
  private boolean bare;
  private int closeTo = -1;
  private int dragged = -1;
  private double dragPlace;
  private String progress = "";
  private boolean touchesKnown;
  private volatile boolean closed;

  /**
   * Nothing is cut yet.
   *
   * @param changed told of every change of what is seen
   * @param wake called on any thread when something has come
   */
  MetalSide(Course course, Look look, Desk desk, Runnable changed, Runnable wake) {
    this.course = course;
    this.look = look;
    this.desk = desk;
    this.changed = changed;
    bench =
        new MetalBench(
            () -> {
              if (!closed) {
                wake.run();
              }
            });
  }

  /**
   * Takes what has come since.
   *
   * @param isSeen whether the sheet is shown: else nothing is asked
   * @param plays whether the program plays
   */
  boolean follow(boolean isSeen, boolean plays) {
    if (!isSeen) {
      return false;
    }
    boolean came = bench.follow(course.loaded(), moves(), plays);
    if (!bench.subject().equals(subject)) {
      begin();
    }
    String now = new MetalWords(look.unit()).progress(bench);
    boolean known = bench.touching().isPresent();
    boolean told = !now.equals(progress) || known != touchesKnown;
    progress = now;
    touchesKnown = known;
    if (came) {
      changed.run();
    }
    return came || told;
  }

  private void begin() {
    boolean sameStock =
        subject.isPresent()
            && bench.subject().isPresent()
            && subject.get().stock().equals(bench.subject().get().stock());
    subject = bench.subject();
    picked = Optional.empty();
    closeTo = -1;
    if (!sameStock) {
      subject.ifPresent(s -> sections.begin(s.stock(), s.middle()));
    }
  }

  /** Number of moves that have been made at the position. */
  private int moves() {
    Position position = course.position();
    return position.share() < 1 ? Math.max(0, position.move()) : position.move() + 1;
  }

  MetalBench bench() {
    return bench;
  }

  Sections sections() {
    return sections;
  }

  /** Work under way, in words; may be empty. */
  String progress() {
    return progress;
  }

  boolean seesThrough() {
    return seeThrough;
  }

  boolean isByTool() {
    return byTool;
  }

  /** Whether the cutter is left out. */
  boolean isBare() {
    return bare;
  }

  void toggleSeeThrough() {
    seeThrough = !seeThrough;
    changed.run();
  }

  void toggleByTool() {
    byTool = !byTool;
    changed.run();
  }

  void toggleCutter() {
    bare = !bare;
    changed.run();
  }

  /** Switches the plane across an axis. */
  void toggleSection(int axis) {
    sections.toggle(axis);
    changed.run();
  }

  /** Moves the plane in hand by a step towards greater coordinates, or back. */
  void step(int way, boolean large) {
    int axis = sections.held();
    if (axis >= 0) {
      double step = (look.unit() == LengthUnit.INCH ? STEP_INCH : STEP) * (large ? LARGE : 1);
      if (!sections.to(axis, Sections.stepped(sections.at(axis), step, way))) {
        desk.notice("the plane is at the end of the stock");
      }
      changed.run();
    }
  }

  /** Puts the plane in hand back to where it began. */
  void home() {
    int axis = sections.held();
    if (axis >= 0) {
      sections.to(axis, sections.home(axis));
      changed.run();
    }
  }

  /** Takes a plane by its grip; gives whether there is one (px, rows upwards). */
  boolean grab(Camera camera, double column, double row, double reach) {
    dragged = SectionGrips.at(sections, camera, column, row, reach);
    if (dragged >= 0) {
      sections.hold(dragged);
      dragPlace = sections.at(dragged);
      changed.run();
    }
    return dragged >= 0;
  }

  /** Drags the plane that was taken (px, rows upwards). */
  void drag(Camera camera, double columns, double rows) {
    if (dragged < 0) {
      return;
    }
    dragPlace += SectionGrips.way(camera, dragged, columns, rows);
    double scale = camera.millimetresPerPixel();
    double home = sections.home(dragged);
    double perUnit = look.unit().toMillimetres(1);
    sections.to(
        dragged,
        Math.abs(dragPlace - home) < HOME * scale
            ? home
            : SectionGrips.rounded(dragPlace, scale, perUnit));
    changed.run();
  }

  /** Lets the plane go. */
  void release() {
    dragged = -1;
  }

  /** The plane that is dragged; -1 for none. */
  int dragged() {
    return dragged;
  }

  /** Looks closely at a thread, or at the next one, opened in its axis. */
  void close(Viewpoint viewpoint) {
    List<Hole> holes = holes();
    if (holes.isEmpty()) {
      desk.notice("the sheet has no hole to look at");
      return;
    }
    closeTo = (closeTo + 1) % holes.size();
    Hole hole = holes.get(closeTo);
    double half = hole.diameter() * (0.5 + ROUND);
    double bottom = subject.orElseThrow().stock().min().z();
    double deep = hole.threadDepth().or(hole::depth).orElse(hole.top() - bottom);
    viewpoint.fitBox(
        new Extents(
            new Point(
                hole.x() - half,
                hole.y() - half,
                Math.min(
                    hole.top() - deep,
                    Math.max(bottom, hole.top() - deep - ROUND * hole.diameter()))),
            new Point(hole.x() + half, hole.y() + half, hole.top())));
    sections.to(0, hole.x());
    sections.to(1, hole.y());
    if (!hole.boss() && !sections.isAny()) {
      sections.toggle(1);
    }
    desk.notice("close to " + hole.name());
    changed.run();
  }

  private List<Hole> holes() {
    if (subject.isEmpty()) {
      return List.of();
    }
    List<Hole> all = subject.get().setup().holes();
    List<Hole> threaded = all.stream().filter(h -> h.thread().isPresent()).toList();
    return threaded.isEmpty() ? all : threaded;
  }

  /** Threads that were gauged. */
  List<ThreadAnswer> threads() {
    return course.loaded().input().gauged().map(g -> g.answer().threads()).orElse(List.of());
  }

  /** What touches metal or a clamp that should not, as far as it is known. */
  List<Finding> touching() {
    return bench.touching().orElse(List.of());
  }

  /** Picks what the eye sees at a place of the scene (px, rows upwards). */
  Optional<MetalPick> pick(Camera camera, double column, double row) {
    picked = bench.shown().flatMap(p -> MetalPick.at(p, camera, sections, column, row));
    changed.run();
    return picked;
  }

  Optional<MetalPick> picked() {
    return picked;
  }

  /** One thing at a time: the pick, the work under way, the planes. */
  boolean leave() {
    boolean any = picked.isPresent();
    picked = Optional.empty();
    if (!any) {
      any = bench.stop();
    }
    if (!any && sections.isAny()) {
      sections.close();
      any = true;
    }
    if (any) {
      changed.run();
    }
    return any;
  }

  @Override
  public void close() {
    closed = true;
    bench.close();
  }
}
