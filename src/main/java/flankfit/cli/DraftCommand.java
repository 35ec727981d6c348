package flankfit.cli;

import flankfit.draft.Draft;
import flankfit.draft.DraftChoices;
import flankfit.draft.Drafting;
import flankfit.draft.NotDraftedException;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** From a thread on a drawing to a program that gauges good. */
@Command(
    name = "draft",
    description = {
      "Writes a thread-milling program from a thread, a hole and a mill, or from a setup sheet:"
          + " every number with its formula, the program, and what the gauges will say. What would"
          + " not gauge, or would touch, is refused with the nearest that would do."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  flankfit draft --thread M20x1.5-6H --mill 14 --rows 12 --flutes 4 \\",
      "    --depth 16 --material \"aluminium, wrought\" --passes 2 --out port.nc",
      "  flankfit draft --setup sample-programs/hub-axle-m16-left.setup.toml \\",
      "    --program-only"
    })
final class DraftCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private DraftThread thread = new DraftThread();
  @Mixin private DraftWords words = new DraftWords();
  @Mixin private OutputOptions output = new OutputOptions();

  @Option(
      names = "--setup",
      paramLabel = "FILE",
      description = "a setup sheet that says thread, hole and mill; --tool names the mill")
  private Optional<Path> setup = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE.nc",
      description = "writes the program there, and its setup sheet beside it")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--force", description = "lets --out replace files that are there")
  private boolean force;

  @Option(names = "--program-only", description = "prints the program alone")
  private boolean programOnly;

  DraftCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    Optional<Path> sheetFile = out.map(file -> ProgramOptions.sheetBeside(file));
    check(sheetFile);
    String name = out.map(Path::toString).orElse("draft.nc");
    String sheetName = sheetFile.map(Path::toString).orElse("draft.setup.toml");
    DraftJob job;
    Draft draft;
    try {
      if (setup.isPresent()) {
        thread.requireNone();
        String text = ProgramOptions.sheetText(setup.get());
        int tool = toolOf(text);
        job = DraftJob.ofSheet(setup.get().toString(), text, tool);
        draft =
            Drafting.draft(
                name,
                job.sheet(),
                words.choices(tool, job.sheet().unit(), path(job.sheet(), tool)),
                job.mesh());
      } else {
        DraftChoices choices =
            words.choices(words.tool().orElse(1), LengthUnit.MILLIMETRE, DraftChoices.Path.WEAR);
        job = thread.job(sheetName, choices);
        draft = Drafting.draft(name, job.sheet(), choices, job.mesh());
      }
    } catch (NotDraftedException e) {
      throw new RequestException(
          ExitStatus.ANSWER_NO,
          List.of(Finding.of(Code.RQ09, Place.file(""), e.what(), e.why(), e.fix())),
          List.of());
    }
    String sheet = job.written(draft.register(), draft.choices().tool());
    if (out.isPresent()) {
      OutputFile.write(sheetFile.orElseThrow(), sheet.getBytes(StandardCharsets.UTF_8));
      OutputFile.write(out.get(), draft.program().getBytes(StandardCharsets.US_ASCII));
    }
    DraftAnswer answer = new DraftAnswer(draft, sheet, job.assumed(), out, sheetFile);
    if (programOnly) {
      terminal.result(draft.program());
    } else if (output.json()) {
      DraftJson.write(answer, terminal.outBytes());
    } else {
      terminal.result(DraftText.of(answer, output.style()));
    }
    return ExitStatus.OK;
  }

  private void check(Optional<Path> sheetFile) throws RequestException {
    if (programOnly && (output.json() || out.isPresent())) {
      throw DraftThread.wrong(
          "--program-only with " + (out.isPresent() ? "--out" : "--format json"),
          "it prints the program and nothing else",
          "leave one of them out");
    }
    if (force && out.isEmpty()) {
      throw DraftThread.wrong("--force without --out", "nothing is written", "add --out FILE.nc");
    }
    if (out.isEmpty()) {
      return;
    }
    for (Path file : List.of(out.get(), sheetFile.orElseThrow())) {
      OutputFile.check(file, setup.map(s -> new Path[] {s}).orElse(new Path[0]));
      if (!force && Files.exists(file)) {
        throw RequestException.wrong(
            Finding.of(
                Code.RQ03,
                Place.file(file.toString()),
                "output file " + file + " is there already",
                "a draft does not replace a program unless it is told to",
                "name another file, or add --force"));
      }
    }
  }

  /** A register that holds more than a quarter of the mill's diameter holds its radius. */
  private static DraftChoices.Path path(SetupSheet sheet, int tool) {
    double divisor = sheet.control().tools().geometryEntry().divisor();
    boolean holdsRadius =
        sheet.offsets().radius(tool).isPresent()
            && sheet
                .tool(tool)
                .filter(
                    mill ->
                        sheet.offsets().radius(tool).orElseThrow().geometry() / divisor
                            > mill.radius() / 2)
                .isPresent();
    return holdsRadius ? DraftChoices.Path.CONTOUR : DraftChoices.Path.WEAR;
  }

  /** The mill that --tool names, or the only thread mill of the sheet. */
  private int toolOf(String text) throws RequestException {
    if (words.tool().isPresent()) {
      return words.tool().get();
    }
    List<Integer> mills =
        SetupReader.readWithFiles(
                setup.orElseThrow().toString(), text, new StockFolder(setup.orElseThrow()))
            .sheet()
            .stream()
            .map(SetupSheet::tools)
            .flatMap(List::stream)
            .filter(tool -> tool.kind() == Tool.Kind.THREAD_MILL)
            .map(Tool::number)
            .toList();
    if (mills.size() > 1) {
      throw DraftThread.wrong(
          "the setup sheet has several thread mills",
          "tools " + mills.stream().map(n -> Integer.toString(n)).toList(),
          "name one by --tool");
    }
    return mills.isEmpty() ? 1 : mills.get(0);
  }
}
