package flankfit.cli;

import static flankfit.cli.HtmlText.escaped;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.nc.SourceText;
import flankfit.picture.DiagramFile;
import flankfit.picture.LadderPicture;
import flankfit.picture.SectionPicture;
import flankfit.picture.Theme;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The sheet that goes to the machine with the first part: job, verdict, what to measure with room
 * for what was measured, registers, pictures, findings. One HTML file, no script, nothing from
 * elsewhere; it prints in grey.
 */
final class GaugeReport {
  private static final int LADDER_WIDE = 760;
  private static final int LADDER_TALL = 520;
  private static final int SECTION_WIDE = 900;
  private static final int SECTION_TALL = 600;

  private static final String STYLE =
      """
      @page { margin: 13mm 13mm; }
      body { font: 10pt/1.32 "DejaVu Sans Condensed", "DejaVu Sans", Verdana, "Segoe UI",
        Helvetica, Arial, sans-serif; color: #23272b; background: #fff; max-width: 184mm;
        margin: 0 auto; padding: 4mm; font-variant-numeric: tabular-nums; }
      h1 { font-size: 15pt; margin: 0 0 1mm; }
      h2 { font-size: 11.5pt; margin: 4mm 0 1.5mm; border-top: 0.3mm solid #999; padding-top: 2mm; }
      h3 { font-size: 10pt; margin: 2.5mm 0 1mm; }
      p, ul { margin: 0 0 1.5mm; }
      ul { padding-left: 6mm; }
      table { border-collapse: collapse; width: 100%; margin: 0 0 2mm; break-inside: avoid; }
      th, td { text-align: left; padding: 0.6mm 2mm 0.6mm 0; border-bottom: 0.2mm solid #ccc;
        vertical-align: top; }
      th { font-weight: normal; color: #5c6064; }
      td.n { text-align: right; white-space: nowrap; }
      td.fill { border-bottom: 0.3mm dotted #23272b; min-width: 26mm; }
      .verdict { font-size: 12pt; font-weight: bold; border: 0.5mm solid #23272b; padding: 1.5mm 3mm;
        margin: 2mm 0; }
      .verdict.no { border: 1.1mm double #a63a00; }
      figure { margin: 0 0 2mm; break-inside: avoid; }
      figure svg, figure img { width: 100%; height: auto; }
      .two { display: grid; grid-template-columns: 1fr 1.15fr; gap: 4mm; }
      .soft { color: #5c6064; font-size: 8.5pt; overflow-wrap: anywhere; }
      .box { display: inline-block; width: 3.2mm; height: 3.2mm; border: 0.3mm solid #23272b;
        margin-right: 2mm; }
      ul.boxes { list-style: none; padding-left: 0; }
      @media print { body { padding: 0; max-width: none; } }
      """;

  private final ProgramOptions.Job job;
  private final GaugeAnswer answer;
  private final List<Finding> findings;
  private final SetupSheet sheet;
  private final LengthUnit unit;
  private final StringBuilder out = new StringBuilder();

  private GaugeReport(ProgramOptions.Job job, GaugeAnswer answer, List<Finding> findings) {
    this.job = job;
    this.answer = answer;
    this.findings = findings;
    this.sheet = job.sheet();
    this.unit = sheet.unit();
  }

  /**
   * The file.
   *
   * @param motion picture of the motion, a PNG file; empty where there is no OpenGL to draw it
   */
  static byte[] of(
      ProgramOptions.Job job, GaugeAnswer answer, List<Finding> findings, Optional<byte[]> motion) {
    GaugeReport report = new GaugeReport(job, answer, findings);
    report.write(motion);
    return report.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void write(Optional<byte[]> motion) {
    String name = job.interpretation().file();
    String title = sheet.title().isEmpty() ? name : sheet.title();
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>");
    out.append(escaped("First part: " + title)).append("</title>\n<style>\n").append(STYLE);
    out.append("</style>\n</head>\n<body>\n<h1>").append(escaped("First part: " + title));
    out.append("</h1>\n");
    job();
    errors();
    groups().forEach(this::thread);
    if (answer.threads().isEmpty()) {
      out.append("<p class=\"verdict no\">no thread is gauged</p>\n");
    }
    registers();
    verify();
    out.append("<h2>Motion</h2>\n<figure>");
    if (motion.isPresent()) {
      out.append("<img alt=\"path, stock and holes\" src=\"data:image/png;base64,");
      out.append(Base64.getEncoder().encodeToString(motion.get())).append("\"/>");
    } else {
      out.append("no picture of the motion: there was no OpenGL 3.3 to draw it with");
    }
    out.append("</figure>\n");
    findings();
    foot();
    out.append("</body>\n</html>\n");
  }

  private void job() {
    out.append("<table>\n");
    row("program", job.interpretation().file());
    row("setup sheet", sheet.file().isEmpty() ? "none" : sheet.file());
    row("SHA-256", hash());
    row("date, machine, by", "");
    sheet
        .stock()
        .ifPresent(
            s ->
                row(
                    "stock",
                    s.shape().name().toLowerCase(java.util.Locale.ROOT)
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
      row("material", sheet.workpieceMaterial());
    }
    row("gauges", sheet.gauges().name().toLowerCase(java.util.Locale.ROOT));
    out.append("</table>\n");
  }

  private String size(double length) {
    return Figures.plain(unit.fromMillimetres(length), Figures.decimals(unit));
  }

  private void row(String name, String words) {
    out.append("<tr><th>").append(escaped(name)).append("</th><td>");
    out.append(escaped(words)).append("</td></tr>\n");
  }

  /** Of the program, its sheet and the files with subprograms, one after the other. */
  private String hash() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      List<SourceText> texts = new ArrayList<>(List.of(job.text()));
      texts.addAll(job.subprograms());
      texts.forEach(text -> digest.update(text.toBytes()));
      String of = texts.size() == 1 ? "" : " (program and " + (texts.size() - 1) + " more)";
      return HexFormat.of().formatHex(digest.digest()) + of;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private void errors() {
    List<Finding> errors = of(Severity.ERROR);
    if (!errors.isEmpty()) {
      out.append("<p class=\"verdict no\">mend first: ");
      out.append(Figures.count(errors.size(), "error")).append(", listed below</p>\n");
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
    out.append("<h2>").append(escaped(thread.designation() + " in " + holes)).append("</h2>\n");
    out.append("<p class=\"verdict").append(good ? "" : " no").append("\">");
    out.append(good ? "[+] " : "[x] ").append(escaped(thread.verdict().words()));
    out.append("</p>\n<p>").append(escaped(thread.reason())).append("</p>\n");
    out.append(ReportMeasures.of(thread));
    ReportMeasures.offset(thread).ifPresent(out::append);
    LengthUnit named = GaugeText.unit(thread);
    out.append("<div class=\"two\">\n<figure>");
    svg(DiagramFile.svg(LadderPicture.of(thread, named, LADDER_WIDE, LADDER_TALL, Theme.LIGHT)));
    out.append("</figure>\n<figure>");
    thread
        .surface()
        .ifPresent(
            surface ->
                svg(
                    DiagramFile.svg(
                        SectionPicture.of(
                            thread, surface, named, SECTION_WIDE, SECTION_TALL, Theme.LIGHT))));
    out.append("</figure>\n</div>\n");
  }

  private void svg(byte[] file) {
    out.append(new String(file, StandardCharsets.UTF_8));
  }

  /** The tools that the program uses, with their registers. */
  private void registers() {
    TreeSet<Integer> used = new TreeSet<>();
    var tape = job.interpretation().tape();
    tape.states().forEach(state -> used.add(state.tool()));
    out.append("<h2>Tools and registers (").append(unit.symbol()).append(")</h2>\n<table>\n<tr>");
    out.append("<th>tool</th><th>kind</th><th>diameter</th><th>cuts</th><th>sticks out</th>");
    out.append("<th>H geometry, wear</th><th>D geometry, wear</th><th>measured</th></tr>\n");
    for (int number : used) {
      sheet.tool(number).ifPresent(this::tool);
    }
    out.append("</table>\n");
  }

  private void tool(Tool tool) {
    double out1 =
        tool.fluteLength()
            + tool.neck().map(n -> Math.max(0, n.length() - tool.fluteLength())).orElse(0.0)
            + tool.shank().map(Tool.Section::length).orElse(0.0);
    out.append("<tr><td>T").append(tool.number()).append("</td><td>");
    out.append(escaped(tool.kind().word())).append("</td><td class=\"n\">");
    out.append(size(tool.diameter())).append("</td><td class=\"n\">");
    out.append(size(tool.fluteLength())).append("</td><td class=\"n\">");
    out.append(tool.shank().isPresent() ? size(out1) : "not stated").append("</td><td>");
    out.append(register("H", tool.number(), sheet.offsets().length(tool.number())));
    out.append("</td><td>");
    out.append(register("D", tool.number(), sheet.offsets().radius(tool.number())));
    out.append("</td><td class=\"fill\"></td></tr>\n");
  }

  private String register(String letter, int number, Optional<Offsets.Register> entry) {
    return entry
        .map(e -> letter + number + ": " + size(e.geometry()) + ", " + size(e.wear()))
        .orElse("none");
  }

  /** What only the machine can tell. */
  private void verify() {
    out.append("<h2>Verify at the machine</h2>\n<ul class=\"boxes\">\n");
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
    for (String point : points) {
      out.append("<li><span class=\"box\"></span>").append(escaped(point)).append("</li>\n");
    }
    out.append("</ul>\n");
  }

  private void findings() {
    List<Finding> told = new ArrayList<>(of(Severity.ERROR));
    told.addAll(of(Severity.WARNING));
    out.append("<h2>Findings</h2>\n");
    if (told.isEmpty()) {
      out.append("<p>no errors, no warnings</p>\n");
      return;
    }
    out.append("<table>\n");
    for (Finding f : told) {
      out.append("<tr><th>").append(f.severity().word()).append(' ').append(f.code());
      out.append("</th><td>");
      out.append(f.place().line() == 0 ? "" : "line " + f.place().line() + ": ");
      out.append(escaped(f.what())).append(f.why().isEmpty() ? "" : ": " + escaped(f.why()));
      out.append(f.fix().isEmpty() ? "" : "; <b>" + escaped(f.fix()) + "</b>");
      out.append("</td></tr>\n");
    }
    out.append("</table>\n");
  }

  private void foot() {
    out.append("<p class=\"soft\">Assumed: ");
    out.append(escaped(String.join("; ", GaugeText.assumptions(job, answer, Optional.empty()))));
    out.append("</p>\n<p><b>").append(escaped(String.join(" ", Cautions.LINES)));
    out.append("</b></p>\n<p class=\"soft\">Flankfit ");
    out.append(escaped(Version.packaged().orElse("(not packaged)"))).append("</p>\n");
  }
}
