package flankfit.draft;

import flankfit.draft.DraftChoices.Path;
import flankfit.motion.ModalState.Distance;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Locale;

/** Writes the whole program. */
final class ProgramWriter {
  /** Height of the last retract (mm and in). */
  private static final double RETRACT_MM = 50;

  private static final double RETRACT_INCH = 2;

  private final PathPlan plan;
  private final DraftChoices choices;
  private final ThreadJob job;
  private final Grid grid;
  private final Offsets.Register register;
  private final Blocks blocks = new Blocks();

  /**
   * Makes a writer.
   *
   * @param register what D is to hold (mm, as entered); told in a comment
   */
  ProgramWriter(PathPlan plan, Offsets.Register register) {
    this.plan = plan;
    this.register = register;
    this.choices = plan.choices();
    this.job = plan.job();
    this.grid = plan.grid();
  }

  /** The text. */
  String text() {
    blocks.plain("%");
    blocks.plain("O" + program(choices.number()) + " (" + title() + ")");
    blocks.comment(style());
    blocks.comment(sense());
    blocks.comment(mill());
    blocks.comment(entries());
    begin();
    for (int k = 0; k < job.holes().size(); k++) {
      hole(k);
    }
    end();
    if (choices.subprogram()) {
      subprogram();
    }
    blocks.plain("%");
    return blocks.text();
  }

  private static String program(int number) {
    return String.format(Locale.ROOT, "%04d", number);
  }

  private String title() {
    int many = job.holes().size();
    String places = many == 1 ? "" : ", " + many + (job.internal() ? " HOLES" : " BOSSES");
    // The case tells a screw's class from a hole's: 6g is not 6G.
    return job.spec().designation() + places;
  }

  private String style() {
    String mode = choices.mode() == Distance.ABSOLUTE ? "absolute" : "incremental";
    String register = "D" + choices.tool();
    return choices.path() == Path.WEAR
        ? "path of the tool's centre in " + mode + " words, " + register + " holds wear only"
        : "wall of the thread in " + mode + " words, " + register + " holds the radius of the mill";
  }

  private String sense() {
    return (choices.climb() ? "climb" : "conventional")
        + " milling, "
        + (job.spec().leftHand() ? "left" : "right")
        + " hand thread, "
        + (plan.rising() ? "from the bottom up" : "from the top down");
  }

  private String mill() {
    int rows = job.teeth().rows();
    return "T"
        + choices.tool()
        + " thread mill "
        + grid.number(job.mill().diameter())
        + (rows == 1
            ? ", one row, "
            : ", " + rows + " rows " + grid.number(plan.pitch()) + " apart, ")
        + job.mill().flutes()
        + (job.mill().flutes() == 1 ? " flute" : " flutes");
  }

  private String entries() {
    return "D"
        + choices.tool()
        + " before the first part: geometry "
        + grid.number(register.geometry())
        + ", wear "
        + grid.number(register.wear());
  }

  private void begin() {
    String unit = grid.unit() == LengthUnit.INCH ? "G20" : "G21";
    blocks.block(unit + " G17 G40 G49 G80 G90 G94");
    blocks.block("T" + choices.tool() + " M6");
    long[] at = start(0);
    String spindle = job.mill().leftHand() ? "M4" : "M3";
    blocks.block(
        "G54 G0 X"
            + grid.word(at[0])
            + " Y"
            + grid.word(at[1])
            + " S"
            + Math.round(plan.feeds().rpm())
            + " "
            + spindle);
    blocks.block("G43 H" + choices.tool() + " Z" + grid.word(plan.clear()) + " M8");
  }

  /** Where the motion round a hole begins, program frame (increments). */
  private long[] start(int hole) {
    long[] axis = plan.axis(hole);
    long[] start = new PathLegs(plan).start();
    return new long[] {axis[0] + start[0], axis[1] + start[1]};
  }

  private void hole(int k) {
    Hole hole = job.holes().get(k);
    long[] at = start(k);
    if (job.holes().size() > 1) {
      blocks.comment(hole.name());
    }
    if (k > 0) {
      blocks.block("G0 X" + grid.word(at[0]) + " Y" + grid.word(at[1]));
    }
    if (choices.subprogram()) {
      blocks.block("M98 P" + (choices.number() + 1));
    } else {
      motion(at, plan.axis(k));
    }
  }

  private void motion(long[] at, long[] axis) {
    boolean incremental = choices.mode() == Distance.INCREMENTAL;
    if (incremental) {
      blocks.block("G91");
    }
    List<Leg> legs = new PathLegs(plan).all();
    new LegWords(grid, choices.mode(), at[0], at[1], plan.clear()).write(legs, axis, blocks);
    if (incremental) {
      blocks.block("G90");
    }
  }

  private void end() {
    double above =
        grid.unit() == LengthUnit.INCH ? grid.unit().toMillimetres(RETRACT_INCH) : RETRACT_MM;
    blocks.block("G0 Z" + grid.word(plan.clear() + grid.steps(above)) + " M9");
    blocks.block("M5");
    blocks.block("G91 G28 Z0.");
    blocks.block("G90");
    blocks.block("M30");
  }

  /** Absolute words fit one hole only; more were refused before. */
  private void subprogram() {
    blocks.plain(
        "O"
            + program(choices.number() + 1)
            + " ("
            + (job.internal() ? "ROUND ONE HOLE" : "ROUND ONE BOSS")
            + ", BEGINS AND ENDS OVER IT)");
    motion(start(0), plan.axis(0));
    blocks.block("M99");
  }
}
