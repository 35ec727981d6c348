package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.RegisterSweep;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.odds.OddsAnswer;
import flankfit.paper.Pen;
import flankfit.paper.Photo;
import flankfit.picture.MotionPicture;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.Scene;
import flankfit.picture.Theme;
import flankfit.picture.View;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How it will fit: the threads a program cuts, and what the gauges will say. */
@Command(
    name = "gauge",
    description = {
      "Finds the threads a program cuts and predicts pitch diameter, GO and NO-GO,",
      "and the register value to key in."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  flankfit gauge sample-programs/filter-housing-m20.nc",
      "  flankfit gauge sample-programs/filter-housing-m20.nc --odds",
      "  flankfit gauge sample-programs/filter-housing-m20.nc --observed go=stops",
      "  flankfit gauge sample-programs/filter-housing-m20.nc --report first.pdf"
    })
final class GaugeCommand implements Callable<Integer> {
  private static final int PHOTO_WIDTH = 1280;
  private static final int PHOTO_HEIGHT = 1000;

  /** Half a page wide, and sharp on paper. */
  private static final double PHOTO_SCALE = 2;

  private final Terminal terminal;

  @Mixin private ProgramOptions program = new ProgramOptions();
  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private GaugeDrawings drawings = new GaugeDrawings();
  @Mixin private OddsOptions chance = new OddsOptions();

  @Mixin private PlugsOption plugs = new PlugsOption();

  @Option(
      names = "--sweep",
      paramLabel = "D4=FROM:TO:STEP",
      description = {
        "runs and gauges the program for each wear entry of a D register,",
        "in the sheet's unit, such as D4=-0.05:0.05:0.005"
      })
  private Optional<String> sweep = Optional.empty();

  @Option(
      names = "--report",
      paramLabel = "FILE.html|pdf",
      description = {
        "writes a sheet for the first part: verdict, what to measure, registers, pictures, findings,"
            + " what to verify at the machine"
      })
  private Optional<Path> report = Optional.empty();

  @Mixin private PaperOption paper = new PaperOption();

  GaugeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    drawings.check(sweep.isPresent(), program.inputs());
    checkReport(program.inputs());
    ProgramOptions.Job job = program.run(plugs.change());
    drawings.check(sweep.isPresent(), job.subprogramFiles());
    GaugeAnswer answer = job.gauge();
    Optional<OddsOptions.Told> told = chance.answer(job, answer);
    Optional<OddsAnswer> odds = told.map(OddsOptions.Told::answer);
    List<Finding> findings = findings(job.interpretation(), answer, odds);
    Optional<RegisterSweep> swept = sweep(job);
    List<Path> written = drawings.draw(answer.threads(), odds, swept, job.sheet().unit());
    if (report.isPresent()) {
      checkReport(job.subprogramFiles());
      Pen pen = paper.pen(report.get(), GaugeReport.title(job), ProgramHash.footer(job));
      OutputFile.write(report.get(), GaugeReport.of(job, answer, findings, motion(job), pen));
      written.add(report.get());
    }
    if (told.isPresent()) {
      told.get().keep();
    }
    if (output.json()) {
      GaugeJson.write(job, answer, odds, swept, findings, terminal.outBytes());
    } else {
      terminal.result(GaugeText.of(job, answer, odds, swept, written, findings, output.style()));
    }
    return isYes(answer, findings) ? ExitStatus.OK : ExitStatus.ANSWER_NO;
  }

  private void checkReport(Path... inputs) throws RequestException {
    paper.check("report", report);
    if (report.isPresent()) {
      OutputFile.check(report.get(), inputs);
    }
  }

  /** The motion on the part and closely; a machine without OpenGL has no pictures. */
  private static List<Photo> motion(ProgramOptions.Job job) throws RequestException {
    try {
      return List.of(
          photo(job, View.ISO, "The path on the part"),
          photo(job, View.PLAN, "The path from above, closely"));
    } catch (NoOpenGlException e) {
      // Told in the report itself: the rest of it is worth having.
      return List.of();
    }
  }

  private static Photo photo(ProgramOptions.Job job, View view, String title)
      throws NoOpenGlException, RequestException {
    Scene scene =
        new Scene(job.interpretation().tape(), job.sheet(), title)
            .withMajorDiameters(job.majorDiameters());
    return new Photo(
        MotionPicture.png(scene, view, PHOTO_WIDTH, PHOTO_HEIGHT, PHOTO_SCALE, Theme.LIGHT),
        title + ", with stock and holes");
  }

  private Optional<RegisterSweep> sweep(ProgramOptions.Job job) throws RequestException {
    if (sweep.isEmpty()) {
      return Optional.empty();
    }
    SweepOption asked = SweepOption.of(sweep.get(), job.sheet().unit());
    return Optional.of(RegisterSweep.of(job.gaugeRequest(), asked.register(), asked.entries()));
  }

  private static boolean isYes(GaugeAnswer answer, List<Finding> findings) {
    return !MotionCommand.hasErrors(findings)
        && answer.threads().stream()
            .map(ThreadAnswer::verdict)
            .allMatch(verdict -> verdict == Verdict.GAUGES_GOOD);
  }

  private static List<Finding> findings(
      Interpretation done, GaugeAnswer answer, Optional<OddsAnswer> odds) {
    Findings all = new Findings();
    all.addAll(findings(done, answer));
    odds.ifPresent(o -> all.addAll(o.findings()));
    return all.sorted();
  }

  /** Findings of the control and of gauging together. */
  static List<Finding> findings(Interpretation done, GaugeAnswer answer) {
    Findings all = new Findings();
    all.addAll(done.findings());
    all.addAll(answer.findings());
    done.stoppedAt()
        .ifPresent(
            stop ->
                all.add(
                    Code.GA06,
                    new Place(done.file(), stop.line(), 0, 0),
                    "the program is gauged as far as line " + stop.line() + " only",
                    stop.code().name() + " stops it there; a thread cut later is not seen",
                    "mend that line first"));
    return all.sorted();
  }
}
