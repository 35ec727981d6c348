package flankfit.cli;

import flankfit.check.ProgramCheck;
import flankfit.control.BlockObserver;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import flankfit.setup.Stock;
import flankfit.solid.MeshBody;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which program to read, and with which setup sheet. */
final class ProgramOptions {
  private static final String SHEET_ENDING = ".setup.toml";

  @Parameters(paramLabel = "PROGRAM", description = "the milling program")
  private Path program = Path.of("");

  @Option(
      names = "--setup",
      paramLabel = "FILE",
      description = {
        "the setup sheet; without it, PROGRAM with its ending replaced by .setup.toml is used"
            + " when it exists"
      })
  private Optional<Path> setup = Optional.empty();

  /**
   * The same for one program of many.
   *
   * @param program the program's file
   * @param setup the setup sheet; when empty, the one beside the program if there is one
   */
  static ProgramOptions of(Path program, Optional<Path> setup) {
    ProgramOptions options = new ProgramOptions();
    options.program = program;
    options.setup = setup;
    return options;
  }

  /** The program file. */
  Path file() {
    return program;
  }

  /** The files that are read. */
  Path[] inputs() {
    return sheetFile().map(s -> new Path[] {program, s}).orElse(new Path[] {program});
  }

  /** The files whose change is one of the program: the sheet's also where there is none yet. */
  List<Path> watched() {
    Optional<Path> sheet = setup.isPresent() ? setup : sheetBeside();
    return sheet.map(s -> List.of(program, s)).orElse(List.of(program));
  }

  /**
   * Reads and executes the program.
   *
   * @throws RequestException if a file cannot be read or the sheet has errors
   */
  Job run() throws RequestException {
    return run(UnaryOperator.identity());
  }

  /** The same with a sheet that is changed first. */
  Job run(UnaryOperator<SetupSheet> change) throws RequestException {
    Texts texts = read();
    SetupSheet sheet = change.apply(texts.sheet());
    Interpretation done = Interpreter.interpret(texts.text(), sheet, texts.subprograms());
    return new Job(
        texts.text(), sheet, texts.subprograms(), ProgramCheck.checked(done, sheet), texts.mesh());
  }

  /**
   * The same without trying other switches, of which nothing is told then.
   *
   * @throws RequestException if a file cannot be read or the sheet has errors
   */
  Job runUntried() throws RequestException {
    Texts texts = read();
    SetupSheet sheet = texts.sheet();
    Interpretation done = Interpreter.interpretUntried(texts.text(), sheet, texts.subprograms());
    return new Job(
        texts.text(), sheet, texts.subprograms(), ProgramCheck.checked(done, sheet), texts.mesh());
  }

  /**
   * Reads the program without executing it.
   *
   * @throws RequestException if a file cannot be read or the sheet has errors
   */
  Texts read() throws RequestException {
    SourceText text = SourceText.of(program.toString(), InputFile.bytes(program, "program"));
    Read read = sheet();
    return new Texts(text, read.sheet(), subprograms(read.sheet()), read.mesh());
  }

  /** Whether the program's file has more bytes than so many. */
  boolean isLongerThan(int bytes) {
    return program.toFile().length() > bytes;
  }

  /**
   * Reads the beginning of the program without executing it.
   *
   * @param most number of bytes at most
   * @throws RequestException if a file cannot be read or the sheet has errors
   */
  Texts readBeginning(int most) throws RequestException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(program)) {
      bytes = in.readNBytes(most);
    } catch (IOException e) {
      throw InputFile.unreadable(program, "program", e.toString(), "check the file's rights");
    }
    SourceText text = SourceText.of(program.toString(), bytes);
    Read read = sheet();
    return new Texts(
        text.beginning(most - 1), read.sheet(), subprograms(read.sheet()), read.mesh());
  }

  /**
   * A program as read.
   *
   * @param text the program
   * @param sheet the setup sheet
   * @param subprograms the files with further programs
   * @param mesh the body of the stock's file
   */
  record Texts(
      SourceText text, SetupSheet sheet, List<SourceText> subprograms, Optional<MeshBody> mesh) {
    Texts {
      subprograms = List.copyOf(subprograms);
    }
  }

  /**
   * Major diameter of the threads wanted, by name of the hole (mm), for drawing.
   *
   * @throws RequestException if the sheet names a thread that no standard knows
   */
  static Map<String, Double> majorDiameters(SetupSheet sheet) throws RequestException {
    Map<String, Double> diameters = new TreeMap<>();
    for (Hole hole : sheet.holes()) {
      if (hole.thread().isPresent()) {
        try {
          diameters.put(hole.name(), Designations.parse(hole.thread().get()).nominal());
        } catch (InvalidDesignationException e) {
          throw RequestException.wrong(
              Finding.of(
                  Code.SH07,
                  new Place(sheet.file(), hole.line(), 0, 0),
                  e.getMessage(),
                  e.why(),
                  e.fix()));
        }
      }
    }
    return diameters;
  }

  /** The files that the sheet names; they lie beside it. */
  private List<SourceText> subprograms(SetupSheet sheet) throws RequestException {
    List<SourceText> texts = new ArrayList<>();
    for (String name : sheet.control().flow().subprograms()) {
      Path file = Path.of(sheet.file()).resolveSibling(name);
      texts.add(SourceText.of(file.toString(), InputFile.bytes(file, "subprogram file")));
    }
    return texts;
  }

  /**
   * The text of a setup sheet.
   *
   * @throws RequestException if it cannot be read
   */
  static String sheetText(Path file) throws RequestException {
    return InputFile.utf8(file, "setup sheet");
  }

  /** Where the sheet of a program is looked for: its ending replaced. */
  static Path sheetBeside(Path program) {
    String name = String.valueOf(program.getFileName());
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    return program.resolveSibling(stem + SHEET_ENDING);
  }

  /** A sheet and the body of the file that it names as stock. */
  private record Read(SetupSheet sheet, Optional<MeshBody> mesh) {}

  private Read sheet() throws RequestException {
    Optional<Path> file = sheetFile();
    if (file.isEmpty()) {
      return new Read(
          SetupSheet.empty()
              .withAssumptions(
                  List.of("no setup sheet: no stock, holes, tools or offsets are known")),
          Optional.empty());
    }
    String name = file.get().toString();
    String text = sheetText(file.get());
    StockFolder folder = new StockFolder(file.get());
    SheetReading reading = SetupReader.readWithFiles(name, text, folder);
    Findings findings = new Findings();
    findings.addAll(reading.findings());
    return reading
        .sheet()
        .map(sheet -> new Read(sheet, folder.body()))
        .orElseThrow(
            () ->
                new RequestException(
                    ExitStatus.REQUEST_WRONG, findings.sorted(), SetupReader.lines(text)));
  }

  private Optional<Path> sheetFile() {
    return setup.isPresent() ? setup : sheetBeside().filter(Files::exists);
  }

  /** Where the sheet of the program is looked for. */
  private Optional<Path> sheetBeside() {
    return program.getFileName() == null ? Optional.empty() : Optional.of(sheetBeside(program));
  }

  /**
   * A program read and executed.
   *
   * @param text the program
   * @param sheet the setup sheet
   * @param subprograms the files with further programs
   * @param interpretation what the control made of it, with the findings of the rules
   * @param mesh the body of the stock's file; empty for other stock
   */
  record Job(
      SourceText text,
      SetupSheet sheet,
      List<SourceText> subprograms,
      Interpretation interpretation,
      Optional<MeshBody> mesh) {
    /** A job whose stock is no mesh. */
    Job(
        SourceText text,
        SetupSheet sheet,
        List<SourceText> subprograms,
        Interpretation interpretation) {
      this(text, sheet, subprograms, interpretation, Optional.empty());
    }

    /** Lines of one of its files by name; empty for a file that is not its own. */
    List<String> lines(String file) {
      return Stream.concat(Stream.of(text), subprograms.stream())
          .filter(t -> t.file().equals(file))
          .findFirst()
          .map(SourceText::lines)
          .orElse(List.of());
    }

    /** The files that the sheet names. */
    Path[] subprogramFiles() {
      Stream<Path> stock =
          sheet.stock().flatMap(Stock::file).stream()
              .map(name -> Path.of(sheet.file()).resolveSibling(name));
      return Stream.concat(subprograms.stream().map(t -> Path.of(t.file())), stock)
          .toArray(Path[]::new);
    }

    /** What the gauges will say. */
    GaugeAnswer gauge() {
      return ThreadGauging.gauge(gaugeRequest());
    }

    /** What is to be gauged. */
    GaugeRequest gaugeRequest() {
      return new GaugeRequest(
          interpretation.file(),
          interpretation.tape(),
          sheet,
          interpretation.radiusSettings(),
          this::replay);
    }

    /**
     * Major diameter of the threads wanted, by name of the hole (mm), for drawing.
     *
     * @throws RequestException if the sheet names a thread that no standard knows
     */
    Map<String, Double> majorDiameters() throws RequestException {
      return ProgramOptions.majorDiameters(sheet);
    }

    /** Executes the program once more before the eyes of an observer. */
    void execute(BlockObserver observer) {
      Interpreter.observe(text, sheet, subprograms, observer);
    }

    private Optional<Tape> replay(Offsets offsets) {
      Interpretation again = Interpreter.replay(text, sheet.withOffsets(offsets), subprograms);
      // A program that stops where it stopped before has cut the same threads until then.
      boolean asFar = again.stoppedAt().equals(interpretation.stoppedAt());
      return asFar ? Optional.of(again.tape()) : Optional.empty();
    }
  }
}
