package flankfit.draft;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.ModalState.Distance;
import flankfit.setup.Offsets;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;

/** A job for tests, changed field by field: a filter housing's port unless told otherwise. */
final class Drafts {
  String thread = "M20x1.5-6H";
  double blank = 18.5;
  Optional<Double> blankDepth = Optional.of(30.0);
  double depth = 16;
  double mill = 14;
  boolean leftHandMill;
  int rows = 12;
  double rowPitch = 1.5;
  Optional<Boolean> straight = Optional.of(false);
  Optional<Double> crest = Optional.empty();
  int flutes = 4;
  Optional<Double> fluteLength = Optional.empty();
  Optional<Tool.Section> neck = Optional.empty();
  String metal = "";
  List<List<Double>> places = List.of(List.of(0.0, 0.0));
  Distance mode = Distance.ABSOLUTE;
  DraftChoices.Entry entry = DraftChoices.Entry.HALF;
  boolean climb = true;
  int passes = 1;
  DraftChoices.Path path = DraftChoices.Path.WEAR;
  LengthUnit unit = LengthUnit.MILLIMETRE;
  boolean subprogram;
  Optional<Double> speed = Optional.empty();
  Optional<Double> toothFeed = Optional.empty();
  double mostRpm = 8000;

  DraftChoices choices() {
    return new DraftChoices(
        4, mode, entry, climb, passes, path, unit, subprogram, 1001, speed, toothFeed, mostRpm);
  }

  SheetWanted wanted() {
    return new SheetWanted(
        thread,
        !spec().internal(),
        places,
        blank,
        depth,
        blankDepth,
        blankDepth.orElse(2 * depth) + 5,
        new SheetWanted.MillWanted(
            4,
            leftHandMill,
            mill,
            Optional.of(flutes),
            rows,
            rowPitch,
            straight,
            crest,
            0.5,
            fluteLength,
            neck,
            "carbide"),
        metal,
        unit);
  }

  ThreadSpec spec() {
    try {
      return Designations.parse(thread);
    } catch (InvalidDesignationException e) {
      throw new AssertionError(thread, e);
    }
  }

  SetupSheet sheet() {
    String text = SheetText.of(wanted(), new Offsets.Register(0, 0));
    return SetupReader.read("job.setup.toml", text).sheet().orElseThrow();
  }

  Draft draft() throws NotDraftedException {
    return Drafting.draft("job.nc", sheet(), choices(), Optional.empty());
  }

  /** The path and its numbers without executing anything. */
  PathPlan plan() throws NotDraftedException {
    return new PathPlan(ThreadJob.of(sheet(), 4), choices());
  }

  /** The program before it is proved. */
  String program() throws NotDraftedException {
    return new ProgramWriter(plan(), new Offsets.Register(0, 0)).text();
  }

  /** The numbers before the wear is known. */
  List<WorksheetRow> rows() throws NotDraftedException {
    return new Worksheet(plan()).rows(0, Optional.empty(), 1);
  }

  /** Value of a number. */
  static double value(List<WorksheetRow> rows, String key) {
    return row(rows, key).value();
  }

  /** The row of a number. */
  static WorksheetRow row(List<WorksheetRow> rows, String key) {
    List<WorksheetRow> found = rows.stream().filter(row -> row.key().equals(key)).toList();
    assertThat(found).as(key).hasSize(1);
    return found.get(0);
  }

  double value(String key) throws NotDraftedException {
    return value(rows(), key);
  }

  /** The refusal that is expected. */
  NotDraftedException refused() {
    try {
      return fail(draft());
    } catch (NotDraftedException e) {
      return e;
    }
  }

  private static NotDraftedException fail(Draft draft) {
    throw new AssertionError("a refusal was expected: " + draft.program());
  }
}
