package flankfit.setup;

import flankfit.standard.ThreadSpec;
import flankfit.unit.Angles;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the teeth of a thread mill or tap, which stand in its {@code [[tool]]}. */
final class TeethReader {
  private static final List<String> KEYS =
      List.of("rows", "pitch", "flank-angle", "crest-flat", "form", "ground-for", "profile", "tip");
  private static final double USUAL_FLANK_ANGLE = Angles.toRadians(60);

  /** Angles nearer than this are one (rad). */
  private static final double ANGLE = Angles.toRadians(1e-3);

  private static final Tolerance PITCH =
      new Tolerance(0.003, "mm", "13 threads an inch is written as 0.077 in: 0.002 mm off");
  private static final int MOST_ROWS = 1000;

  private final SheetLog log;
  private final DesignationCheck designations;
  private final List<ThreadSpec> wanted;

  TeethReader(SheetLog log, DesignationCheck designations, List<ThreadSpec> wanted) {
    this.log = log;
    this.designations = designations;
    this.wanted = List.copyOf(wanted);
  }

  static void addTo(Keys keys) {
    keys.and("rows", "a whole number from 1; 1 is a single-row cutter")
        .and("pitch", "a length above 0")
        .and("flank-angle", "an angle above 0, below 180 degrees")
        .and("crest-flat", "a length, not below 0, below the pitch")
        .and("form", "\"straight\"; or use ground-for or profile")
        .and("ground-for", "a thread designation, such as \"M20x1.5-6H\"")
        .and("profile", "a list of pairs [s, r] by rising s")
        .and("tip", "a length, not below 0");
  }

  Optional<Tool.Teeth> read(
      SheetTable table, Tool.Kind kind, Optional<Double> diameter, String called) {
    if (!ToolReader.cutsThreads(kind)) {
      for (String key : KEYS) {
        if (table.has(key)) {
          log.assume(ToolReader.unused(called, key, kind));
        }
      }
      return Optional.empty();
    }
    boolean mill = kind == Tool.Kind.THREAD_MILL;
    Optional<Integer> rows = rows(table, mill);
    Optional<Double> pitch = pitch(table, mill, rows);
    Optional<Double> tip =
        mill
            ? table.or(
                "tip", SheetItem::lengthFromZero, 0.0, called + ": tip not stated: " + log.shown(0))
            : tipOfTap(table);
    Optional<ThreadSpec> groundFor = groundFor(table, pitch);
    Optional<Tool.CutterForm> form = form(table, mill, pitch, groundFor, called);
    Optional<Double> flankAngle = flankAngle(table, form, groundFor, called);
    Optional<Double> crest = crestFlat(table, pitch, groundFor, diameter, called);
    if (rows.isEmpty() || form.isEmpty() || crest.isEmpty() || flankAngle.isEmpty()) {
      return Optional.empty();
    }
    return tip.map(
        t -> new Tool.Teeth(rows.get(), pitch, flankAngle.get() / 2, crest.get(), form.get(), t));
  }

  private static Optional<Integer> rows(SheetTable table, boolean mill) {
    Optional<SheetItem> item = mill ? table.needed("rows") : table.item("rows");
    return item.isEmpty() && !mill ? Optional.of(1) : item.flatMap(i -> i.whole(1, MOST_ROWS));
  }

  private static Optional<Double> pitch(SheetTable table, boolean mill, Optional<Integer> rows) {
    Optional<SheetItem> item = table.item("pitch");
    boolean needed = !mill || rows.filter(r -> r > 1).isPresent();
    if (item.isEmpty() && needed) {
      table.reportMissing(
          "pitch", mill ? "a cutter of several rows has a pitch" : "a tap has a pitch");
    }
    return item.flatMap(SheetItem::lengthAboveZero);
  }

  private static Optional<Double> tipOfTap(SheetTable table) {
    Optional<SheetItem> item = table.item("tip");
    return item.isEmpty() ? Optional.of(0.0) : item.flatMap(SheetItem::lengthFromZero);
  }

  private Optional<ThreadSpec> groundFor(SheetTable table, Optional<Double> pitch) {
    Optional<SheetItem> item = table.item("ground-for");
    Optional<ThreadSpec> spec =
        item.flatMap(i -> i.text().flatMap(text -> HoleReader.designation(designations, i, text)));
    if (spec.isPresent() && pitch.isPresent() && !same(spec.get().pitch(), pitch.get())) {
      return item.orElseThrow()
          .impossible(
              "the pitch of the rows is "
                  + log.shown(pitch.get())
                  + ", that of the thread "
                  + log.shown(spec.get().pitch()));
    }
    return spec;
  }

  private static boolean same(double a, double b) {
    return PITCH.near(a, b);
  }

  private Optional<Tool.CutterForm> form(
      SheetTable table,
      boolean mill,
      Optional<Double> pitch,
      Optional<ThreadSpec> groundFor,
      String called) {
    List<String> stated =
        List.of("form", "ground-for", "profile").stream().filter(table::has).toList();
    if (stated.size() > 1) {
      return table
          .item(stated.get(1))
          .orElseThrow()
          .impossible(
              stated.get(0) + " says the form too", "keep one of " + String.join(", ", stated));
    }
    if (table.has("ground-for")) {
      return groundFor.map(t -> new Tool.CutterForm.GroundFor(t.designation(), false));
    }
    if (table.has("profile")) {
      return table.item("profile").flatMap(TeethReader::measured);
    }
    if (table.has("form")) {
      return table
          .item("form")
          .flatMap(i -> i.choice(List.of(Choice.of("straight", new Tool.CutterForm.Straight()))));
    }
    return Optional.of(mill ? assumedForm(pitch, called) : new Tool.CutterForm.Straight());
  }

  private Tool.CutterForm assumedForm(Optional<Double> pitch, String called) {
    List<ThreadSpec> fitting =
        wanted.stream().filter(t -> pitch.filter(p -> same(p, t.pitch())).isPresent()).toList();
    if (fitting.size() == 1) {
      String designation = fitting.get(0).designation();
      log.assume(called + ": form not stated: ground for " + designation);
      return new Tool.CutterForm.GroundFor(designation, true);
    }
    log.assume(called + ": form not stated: straight");
    return new Tool.CutterForm.Straight();
  }

  private static Optional<Tool.CutterForm> measured(SheetItem item) {
    Optional<List<SheetItem>> items = item.list();
    Optional<List<List<Double>>> pairs =
        items.flatMap(l -> SheetItem.all(l.stream().map(i -> i.lengths(2)).toList()));
    if (pairs.isEmpty()) {
      return Optional.empty();
    }
    List<List<Double>> profile = pairs.get();
    if (profile.size() < 2) {
      return item.impossible("a profile has two points or more");
    }
    List<SheetItem> places = items.get();
    for (int k = 0; k < profile.size(); k++) {
      if (profile.get(k).get(1) <= 0) {
        return places.get(k).impossible("the radius r must be above 0");
      }
      if (k > 0 && profile.get(k).get(0) <= profile.get(k - 1).get(0)) {
        return places.get(k).impossible("s must rise from point to point");
      }
    }
    return profile.get(0).get(0) > 0
        ? places.get(0).impossible("a half profile begins at s = 0")
        : Optional.of(new Tool.CutterForm.Measured(new ArrayList<>(profile)));
  }

  private static Optional<Double> flankAngle(
      SheetTable table,
      Optional<Tool.CutterForm> form,
      Optional<ThreadSpec> groundFor,
      String called) {
    if (table.has("flank-angle")) {
      return table.item("flank-angle").flatMap(i -> statedAngle(i, groundFor));
    }
    boolean measured = form.filter(Tool.CutterForm.Measured.class::isInstance).isPresent();
    if (groundFor.isPresent() || measured) {
      return Optional.of(groundFor.map(t -> 2 * t.halfAngle()).orElse(USUAL_FLANK_ANGLE));
    }
    return table.or(
        "flank-angle",
        i -> i.angle(180),
        USUAL_FLANK_ANGLE,
        called + ": flank-angle not stated: 60 degrees");
  }

  private static Optional<Double> statedAngle(SheetItem item, Optional<ThreadSpec> groundFor) {
    Optional<Double> angle = item.angle(180);
    if (angle.isPresent() && angle.get() >= Math.PI) {
      return item.impossible("it must be below 180");
    }
    Optional<Double> other =
        groundFor
            .map(t -> 2 * t.halfAngle())
            .filter(t -> angle.filter(a -> sameAngle(a, t)).isEmpty());
    if (angle.isPresent() && other.isPresent()) {
      return item.impossible(
          "the mill is ground for a thread of " + Math.round(Angles.toDegrees(other.get())) + "°");
    }
    return angle;
  }

  private static boolean sameAngle(double a, double b) {
    return Math.abs(a - b) <= ANGLE;
  }

  private Optional<Double> crestFlat(
      SheetTable table,
      Optional<Double> pitch,
      Optional<ThreadSpec> groundFor,
      Optional<Double> diameter,
      String called) {
    Optional<SheetItem> item = table.item("crest-flat");
    Optional<Double> basis =
        pitch.or(() -> groundFor.map(ThreadSpec::pitch)).or(this::onlyPitchWanted);
    if (item.isPresent()) {
      Optional<Double> flat = item.flatMap(SheetItem::lengthFromZero);
      Optional<Double> limit = pitch.or(() -> diameter);
      if (flat.isPresent() && limit.isPresent() && flat.get() >= limit.get()) {
        String than = pitch.isPresent() ? "the pitch, " : "the diameter, ";
        return item.get().impossible("it must be below " + than + log.shown(limit.get()));
      }
      return flat;
    }
    double usual = basis.map(p -> p / 8).orElse(0.0);
    String how = basis.isPresent() ? "an eighth of the pitch, " : "sharp, ";
    if (groundFor.isEmpty()) {
      // A ground form brings its own crest: then nothing rests on this width.
      log.assume(called + ": crest-flat not stated: " + how + log.shown(usual));
    }
    return Optional.of(usual);
  }

  private Optional<Double> onlyPitchWanted() {
    List<Double> pitches = wanted.stream().map(ThreadSpec::pitch).distinct().toList();
    return pitches.size() == 1 ? Optional.of(pitches.get(0)) : Optional.empty();
  }
}
