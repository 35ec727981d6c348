package flankfit.window;

import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Programs in files with the sheet beside them, judged by their findings alone. */
record SheetPrograms(Path program) implements ProgramSource {
  static ProgramSource of(Path file) {
    return new SheetPrograms(file);
  }

  private Path sheet() {
    return program.resolveSibling(
        program.getFileName().toString().replaceFirst("\\.nc$", ".setup.toml"));
  }

  @Override
  public String file() {
    return program.toString();
  }

  @Override
  public List<Path> files() {
    return List.of(program, sheet());
  }

  @Override
  public Text read() throws UnreadableProgramException {
    try {
      byte[] bytes = Files.readAllBytes(program);
      SetupSheet setup = SetupSheet.empty();
      if (Files.exists(sheet())) {
        String text = Files.readString(sheet(), StandardCharsets.UTF_8);
        SheetReading reading = SetupReader.read(sheet().toString(), text);
        if (reading.sheet().isEmpty()) {
          throw new UnreadableProgramException(reading.findings());
        }
        setup = reading.sheet().get();
      }
      return new Text(SourceText.of(file(), bytes), setup, List.of(), Map.of());
    } catch (IOException e) {
      throw new UnreadableProgramException(e.toString());
    }
  }

  @Override
  public Judgement judge(Text text, Interpretation done) {
    Interpretation checked = ProgramCheck.checked(done, text.setup());
    return new Judgement(checked.findings(), "judged " + checked.blocks() + " blocks");
  }
}
