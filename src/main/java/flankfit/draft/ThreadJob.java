package flankfit.draft;

import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.unit.Lengths;
import java.util.List;
import java.util.Objects;

/**
 * What is to be cut: holes or bosses that are alike but for their place, one thread, one mill.
 *
 * @param sheet the setup sheet
 * @param holes at least one; all with the same thread, diameter, depth and top
 * @param spec their thread
 * @param mill the thread mill
 * @param teeth its teeth
 * @param depth depth of full thread below the top (mm)
 */
record ThreadJob(
    SetupSheet sheet,
    List<Hole> holes,
    ThreadSpec spec,
    Tool mill,
    Tool.Teeth teeth,
    double depth) {
  ThreadJob {
    Objects.requireNonNull(sheet, "sheet");
    holes = List.copyOf(holes);
    Objects.requireNonNull(spec, "spec");
    Objects.requireNonNull(mill, "mill");
    Objects.requireNonNull(teeth, "teeth");
  }

  /**
   * The job of a sheet.
   *
   * @param tool number of the mill
   * @throws NotDraftedException if the sheet does not say one job
   */
  static ThreadJob of(SetupSheet sheet, int tool) throws NotDraftedException {
    List<Hole> holes = sheet.holes().stream().filter(h -> h.thread().isPresent()).toList();
    if (holes.isEmpty()) {
      throw new NotDraftedException(
          "the setup sheet wants no thread",
          "no hole and no boss in it has one",
          "state thread and thread-depth of a hole");
    }
    Hole first = holes.get(0);
    for (Hole hole : holes) {
      if (!isAlike(first, hole)) {
        throw new NotDraftedException(
            "the setup sheet wants different threads in " + first.name() + " and " + hole.name(),
            "one draft cuts holes that are alike but for their place",
            "give each kind a setup sheet of its own");
      }
    }
    ThreadSpec spec = spec(first);
    Tool mill = mill(sheet, tool);
    Tool.Teeth teeth =
        mill.teeth()
            .orElseThrow(
                () ->
                    new NotDraftedException(
                        "tool " + tool + " has no teeth in the setup sheet",
                        "what it would cut is not known",
                        "state rows, pitch and flank-angle"));
    double depth =
        first
            .threadDepth()
            .or(first::depth)
            .or(() -> sheet.stock().map(stock -> first.top() - stock.bottom()))
            .orElseThrow(
                () ->
                    new NotDraftedException(
                        "the depth of the thread in " + first.name() + " is not stated",
                        "the hole goes through, and without a stock its end is not known",
                        "state thread-depth"));
    return new ThreadJob(sheet, holes, spec, mill, teeth, depth);
  }

  private static boolean isAlike(Hole a, Hole b) {
    return a.thread().equals(b.thread())
        && a.boss() == b.boss()
        && a.diameter() == b.diameter()
        && a.top() == b.top()
        && a.depth().equals(b.depth())
        && a.threadDepth().equals(b.threadDepth());
  }

  private static ThreadSpec spec(Hole hole) throws NotDraftedException {
    try {
      return Designations.parse(hole.thread().orElseThrow());
    } catch (InvalidDesignationException e) {
      throw new NotDraftedException(e.getMessage(), e.why(), e.fix());
    }
  }

  private static Tool mill(SetupSheet sheet, int tool) throws NotDraftedException {
    Tool found =
        sheet
            .tool(tool)
            .orElseThrow(
                () ->
                    new NotDraftedException(
                        "tool " + tool + " is not in the setup sheet",
                        "",
                        "name one of "
                            + String.join(
                                ", ",
                                sheet.tools().stream()
                                    .map(t -> Integer.toString(t.number()))
                                    .toList())));
    if (found.kind() != Tool.Kind.THREAD_MILL) {
      throw new NotDraftedException(
          "tool " + tool + " is a " + found.kind().word(),
          "threads are milled with a thread mill",
          "name the thread mill");
    }
    return found;
  }

  /** Whether the thread is in a hole. */
  boolean internal() {
    return spec.internal();
  }

  /** The hole or boss as drawn: one for all. */
  Hole hole() {
    return holes.get(0);
  }

  /** Diameter that the teeth's tips are laid on: basic major inside, basic minor outside (mm). */
  double bottomDiameter() {
    return spec.internal() ? spec.nominal() : spec.basicMinor();
  }

  /** Distance from the lowest row's middle to the highest one's (mm); 0 for a single row. */
  double comb() {
    return (teeth.rows() - 1) * spec.pitch();
  }

  /** The same job with a mill of another diameter (mm). */
  ThreadJob withMill(double diameter) {
    Tool other =
        new Tool(
            mill.number(),
            mill.kind(),
            mill.leftHand(),
            diameter,
            mill.flutes(),
            mill.teeth(),
            mill.pointAngle(),
            mill.cornerRadius(),
            mill.fluteLength(),
            mill.neck(),
            mill.shank(),
            mill.holder(),
            mill.diameterTolerance(),
            mill.runout(),
            mill.material(),
            mill.holderCompliance(),
            mill.stated(),
            mill.line());
    List<Tool> tools =
        sheet.tools().stream().map(t -> t.number() == mill.number() ? other : t).toList();
    SetupSheet changed =
        new SetupSheet(
            sheet.file(),
            sheet.title(),
            sheet.unit(),
            sheet.control(),
            sheet.stock(),
            sheet.keepOuts(),
            sheet.workOffsets(),
            sheet.holes(),
            tools,
            sheet.offsets(),
            sheet.workpieceMaterial(),
            sheet.gauges(),
            sheet.scatter(),
            sheet.assumptions());
    return new ThreadJob(changed, holes, spec, other, teeth, depth);
  }

  /** The same job with a thread of another depth (mm). */
  ThreadJob withDepth(double other) {
    return new ThreadJob(sheet, holes, spec, mill, teeth, other);
  }

  /** The same job with other registers. */
  ThreadJob withOffsets(Offsets offsets) {
    return new ThreadJob(sheet.withOffsets(offsets), holes, spec, mill, teeth, depth);
  }

  /** Diameter of the mill for people, such as {@code 14 mm}. */
  String millText(Grid grid) {
    return Lengths.brief(mill.diameter(), grid.unit(), 4);
  }
}
