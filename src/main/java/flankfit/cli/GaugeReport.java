package flankfit.cli;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.paper.Pen;
import flankfit.paper.Photo;
import flankfit.paper.Table;
import flankfit.paper.Table.Cell;
import flankfit.paper.Table.Column;
import flankfit.paper.Table.Kind;
import flankfit.paper.Words;
import flankfit.picture.Diagram;
import flankfit.picture.LadderPicture;
import flankfit.picture.SectionPicture;
import flankfit.picture.Theme;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The sheet that goes to the machine with the first part. On its first page what to do and to fill
 * in: job, verdict, what to measure with room for what was measured, registers, what to verify. On
 * the second what stands behind it: pictures, findings, what was assumed.
 */
final class GaugeReport {
  private static final int LADDER_WIDE = 470;
  private static final int SECTION_WIDE = 470;
  private static final int TALL = 440;

  private final ProgramOptions.Job job;
  private final GaugeAnswer answer;
  private final List<Finding> findings;
  private final SetupSheet sheet;
  private final LengthUnit unit;
  private final Pen pen;

  private GaugeReport(ProgramOptions.Job job, GaugeAnswer answer, List<Finding> findings, Pen pen) {
    this.job = job;
    this.answer = answer;
    this.findings = findings;
    this.sheet = job.sheet();
    this.unit = sheet.unit();
    this.pen = pen;
  }

  /** Its title. */
  static String title(ProgramOptions.Job job) {
    String title = job.sheet().title();
    return "First part: " + (title.isEmpty() ? job.interpretation().file() : title);
  }

  /**
   * The file.
   *
   * @param motion pictures of the motion; none where there is no OpenGL to draw them
   */
  static byte[] of(
      ProgramOptions.Job job,
      GaugeAnswer answer,
      List<Finding> findings,
      List<Photo> motion,
      Pen pen) {
    new GaugeReport(job, answer, findings, pen).write(motion);
    return pen.finish();
  }

  private void write(List<Photo> motion) {
    pen.title(title(job));
    job();
    errors();
    List<List<ThreadAnswer>> groups = groups();
    groups.forEach(this::thread);
    if (answer.threads().isEmpty()) {
      pen.verdict("no thread is gauged", false);
    }
    registers();
    verify();
    pen.pageHeading(Words.of("Pictures"));
    groups.forEach(this::pictures);
    if (motion.isEmpty()) {
      pen.paragraph(Words.of("no picture of the motion: there was no OpenGL 3.3 to draw it with"));
    } else {
      pen.photos(motion);
    }
    findings();
    foot();
  }

  private void job() {
    List<List<Cell>> rows = new ArrayList<>();
    row(rows, "program", job.interpretation().file());
    row(rows, "setup sheet", sheet.file().isEmpty() ? "none" : sheet.file());
    row(rows, "SHA-256", ProgramHash.of(job));
    rows.add(List.of(Cell.of("date, machine, by"), Cell.blank()));
    sheet
        .stock()
        .ifPresent(
            s ->
                row(
                    rows,
                    "stock",
                    s.shape().name().toLowerCase(Locale.ROOT)
                        + ", "
                        + size(s.box().max().x() - s.box().min().x())
                        + " x "
                        + size(s.box().max().y() - s.box().min().y())
                        + " x "
                        + size(s.box().max().z() - s.box().min().z())
                        + " "
                        + unit.symbol()
                        + "; its top at Z"
                        + size(s.box().max().z())));
    if (!sheet.workpieceMaterial().isEmpty()) {
      row(rows, "material", sheet.workpieceMaterial());
    }
    row(rows, "gauges", sheet.gauges().name().toLowerCase(Locale.ROOT));
    pen.table(Table.ofPairs(rows));
  }

  private String size(double length) {
    return Figures.plain(unit.fromMillimetres(length), Figures.decimals(unit));
  }

  private static void row(List<List<Cell>> rows, String name, String words) {
    rows.add(List.of(Cell.of(name), Cell.of(words)));
  }

  private void errors() {
    List<Finding> errors = of(Severity.ERROR);
    if (!errors.isEmpty()) {
      pen.verdict("mend first: " + Figures.count(errors.size(), "error") + ", listed below", false);
    }
  }

  private List<Finding> of(Severity severity) {
    return findings.stream().filter(f -> f.severity() == severity).toList();
  }

  /** Threads that come out alike are told once. */
  private List<List<ThreadAnswer>> groups() {
    Map<String, List<ThreadAnswer>> alike = new LinkedHashMap<>();
    for (ThreadAnswer thread : answer.threads()) {
      String key =
          thread.designation()
              + thread.reason()
              + thread.finished()
              + thread.offset().map(o -> o.register() + o.keyToMiddle());
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(thread);
    }
    return List.copyOf(alike.values());
  }

  private void thread(List<ThreadAnswer> group) {
    ThreadAnswer thread = group.get(0);
    boolean good = thread.verdict() == Verdict.GAUGES_GOOD;
    String holes = group.stream().map(ThreadAnswer::hole).collect(Collectors.joining(", "));
    pen.heading(Words.of(thread.designation() + " in " + holes));
    pen.verdict((good ? "[+] " : "[x] ") + thread.verdict().words(), good);
    pen.paragraph(Words.of(thread.reason()));
    pen.table(ReportMeasures.of(thread));
    ReportMeasures.offset(thread).ifPresent(pen::paragraph);
  }

  private void pictures(List<ThreadAnswer> group) {
    ThreadAnswer thread = group.get(0);
    LengthUnit named = GaugeText.unit(thread);
    List<Diagram> drawings = new ArrayList<>();
    drawings.add(LadderPicture.of(thread, named, LADDER_WIDE, TALL, Theme.LIGHT));
    thread
        .surface()
        .ifPresent(
            surface ->
                drawings.add(
                    SectionPicture.of(thread, surface, named, SECTION_WIDE, TALL, Theme.LIGHT)));
    pen.drawings(drawings);
  }

  /** The tools that the program uses, with their registers. */
  private void registers() {
    TreeSet<Integer> used = new TreeSet<>();
    var tape = job.interpretation().tape();
    tape.states().forEach(state -> used.add(state.tool()));
    pen.heading(Words.of("Tools and registers (" + unit.symbol() + ")"));
    List<Column> columns =
        List.of(
            new Column("tool", Kind.WORDS),
            new Column("kind", Kind.WORDS),
            new Column("diameter", Kind.FIGURES),
            new Column("cuts", Kind.FIGURES),
            new Column("sticks out", Kind.FIGURES),
            new Column("H geometry, wear", Kind.WORDS),
            new Column("D geometry, wear", Kind.WORDS),
            new Column("measured", Kind.WORDS));
    List<List<Cell>> rows = new ArrayList<>();
    for (int number : used) {
      sheet.tool(number).ifPresent(tool -> rows.add(tool(tool)));
    }
    pen.table(new Table(columns, true, rows));
  }

  private List<Cell> tool(Tool tool) {
    double sticksOut =
        tool.fluteLength()
            + tool.neck().map(n -> Math.max(0, n.length() - tool.fluteLength())).orElse(0.0)
            + tool.shank().map(Tool.Section::length).orElse(0.0);
    return List.of(
        Cell.of("T" + tool.number()),
        Cell.of(tool.kind().word()),
        Cell.of(size(tool.diameter())),
        Cell.of(size(tool.fluteLength())),
        Cell.of(tool.shank().isPresent() ? size(sticksOut) : "not stated"),
        Cell.of(register("H", tool.number(), sheet.offsets().length(tool.number()))),
        Cell.of(register("D", tool.number(), sheet.offsets().radius(tool.number()))),
        Cell.blank());
  }

  private String register(String letter, int number, Optional<Offsets.Register> entry) {
    return entry
        .map(e -> letter + number + ": " + size(e.geometry()) + ", " + size(e.wear()))
        .orElse("none");
  }

  /** What only the machine can tell. */
  private void verify() {
    pen.heading(Words.of("Verify at the machine"));
    List<String> points = new ArrayList<>();
    points.add("this very program is in the control: compare its hash or its last change");
    points.add("part zero, stock and clamps lie as in the sheet; nothing stands in the rapids");
    points.add("tool lengths and registers are entered as listed; wear with its sign");
    for (ThreadAnswer thread : answer.threads()) {
      String d = thread.hole() + " before the thread: measure its diameter";
      if (!points.contains(d)) {
        points.add(d);
      }
    }
    points.add("the first run above the part, in single block, a hand on feed hold");
    points.add("chips are cleared and the gauge is clean before it is tried; do not force it");
    points.add(
        "gauges tried while the part is clamped: write down what each did, then ask flankfit gauge"
            + " --observed what to key in");
    pen.checklist(points);
  }

  private void findings() {
    List<Finding> told = new ArrayList<>(of(Severity.ERROR));
    told.addAll(of(Severity.WARNING));
    pen.heading(Words.of("Findings"));
    if (told.isEmpty()) {
      pen.paragraph(Words.of("no errors, no warnings"));
      return;
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (Finding f : told) {
      Words words =
          Words.of(
              (f.place().line() == 0 ? "" : "line " + f.place().line() + ": ")
                  + f.what()
                  + (f.why().isEmpty() ? "" : ": " + f.why()));
      rows.add(
          List.of(
              Cell.of(f.severity().word() + " " + f.code()),
              new Cell(
                  f.fix().isEmpty() ? words : words.then("; ").then(f.fix(), Words.Look.STRONG),
                  false)));
    }
    pen.table(Table.ofPairs(rows));
  }

  private void foot() {
    List<String> assumed = GaugeText.assumptions(job, answer, Optional.empty());
    pen.small(Words.of("Assumed: " + String.join("; ", assumed)));
    pen.paragraph(Words.strong(String.join(" ", Cautions.LINES)));
  }
}
