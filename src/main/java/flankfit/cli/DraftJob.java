package flankfit.cli;

import flankfit.draft.DraftChoices;
import flankfit.draft.Drafting;
import flankfit.draft.NotDraftedException;
import flankfit.draft.SheetText;
import flankfit.draft.SheetWanted;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.setup.Offsets;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import flankfit.solid.MeshBody;
import flankfit.unit.LengthUnit;
import flankfit.unit.Tolerance;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a draft is to cut, as a setup sheet.
 *
 * @param sheet the sheet as read
 * @param mesh the body of the stock's file; empty for other stock
 * @param text its text with a D register
 * @param assumed what was taken because the request does not say it, one sentence each
 */
record DraftJob(
    SetupSheet sheet,
    Optional<MeshBody> mesh,
    Function<Offsets.Register, String> text,
    List<String> assumed) {
  /** Hole depths and heights of stock are rounded up to these (mm and in). */
  private static final double STEP_MM = 0.5;

  private static final double STEP_INCH = 0.02;

  /** Metal left below a hole (mm and in). */
  private static final double FLOOR_MM = 5;

  private static final double FLOOR_INCH = 0.2;

  DraftJob {
    assumed = List.copyOf(assumed);
  }

  /** The job of a sheet's text; its D register is replaced. */
  static DraftJob ofSheet(String file, String text, int tool) throws RequestException {
    StockFolder folder = new StockFolder(Path.of(file));
    SetupSheet sheet = read(file, text, folder);
    return new DraftJob(
        sheet,
        folder.body(),
        register -> SheetText.withRegister(text, tool, register, sheet.unit()),
        List.of());
  }

  /**
   * The job of a drawing.
   *
   * @param through whether the hole goes through; its depth is not asked for then
   * @param assumed what was taken already
   */
  static DraftJob ofDrawing(
      String file, SheetWanted wanted, boolean through, DraftChoices choices, List<String> assumed)
      throws RequestException, NotDraftedException {
    List<String> taken = new ArrayList<>(assumed);
    Offsets.Register none = new Offsets.Register(0, 0);
    SheetWanted open = wanted.deep(Optional.empty(), wanted.depth());
    SetupSheet opened = read(file, SheetText.of(open, none));
    double least = Drafting.leastDepth(opened, choices, wanted.blankDepth());
    boolean inch = wanted.unit() == LengthUnit.INCH;
    double step = inch ? wanted.unit().toMillimetres(STEP_INCH) : STEP_MM;
    double floor = inch ? wanted.unit().toMillimetres(FLOOR_INCH) : FLOOR_MM;
    double rounded = Math.ceil(least / step - 1e-9) * step;
    String name = wanted.boss() ? "boss" : "hole";
    if (through) {
      SheetWanted last = wanted.deep(Optional.empty(), rounded);
      taken.add(stock(wanted, "as thick as the mill reaches, " + length(rounded, wanted.unit())));
      return drawn(file, last, taken);
    }
    if (wanted.blankDepth().isEmpty()) {
      taken.add(
          name + ": depth not stated: the least that serves, " + length(rounded, wanted.unit()));
    }
    double depth = wanted.blankDepth().orElse(rounded);
    String thicker = length(floor, wanted.unit()) + " thicker than the " + name + " is deep";
    taken.add(stock(wanted, thicker));
    return drawn(file, wanted.deep(Optional.of(depth), depth + floor), taken);
  }

  /** What the sheet states of the stock, which nobody asked for. */
  private static String stock(SheetWanted wanted, String thick) {
    return wanted.boss()
        ? "stock: the boss alone where it stands at the zero of the part, else none"
        : "stock: a block " + thick;
  }

  private static String length(double millimetres, LengthUnit unit) {
    return Figures.plain(unit.fromMillimetres(millimetres), 4) + " " + unit.symbol();
  }

  private static DraftJob drawn(String file, SheetWanted wanted, List<String> taken)
      throws RequestException {
    taken.add(
        "reference point and the length in H are placeholders: replace them by the machine's");
    SetupSheet sheet = read(file, SheetText.of(wanted, new Offsets.Register(0, 0)));
    return new DraftJob(sheet, Optional.empty(), register -> SheetText.of(wanted, register), taken);
  }

  /**
   * The sheet's text with a register, read again and found to say that and nothing else new.
   *
   * @throws RequestException if the text could not be changed so
   */
  String written(Offsets.Register register, int tool) throws RequestException {
    String changed = text.apply(register);
    SetupSheet again = read(sheet.file(), changed);
    Offsets wanted = sheet.offsets().withRadius(tool, register);
    Optional<Offsets.Register> entry = again.offsets().radius(tool);
    boolean same =
        entry.isPresent()
            && Tolerance.MODEL.near(entry.get().geometry(), register.geometry())
            && Tolerance.MODEL.near(entry.get().wear(), register.wear())
            && again.offsets().withRadius(tool, register).equals(wanted)
            && again.holes().size() == sheet.holes().size()
            && again.tools().size() == sheet.tools().size();
    if (!same) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ04,
              Place.file(sheet.file()),
              "register D" + tool + " cannot be written into the setup sheet",
              "its entry stands there in a form that is not changed safely",
              "write it as D" + tool + " = { geometry = 0.0, wear = 0.0 } on a line of its own"));
    }
    return changed;
  }

  private static SetupSheet read(String file, String text) throws RequestException {
    return read(file, text, new StockFolder(Path.of(file)));
  }

  private static SetupSheet read(String file, String text, StockFolder folder)
      throws RequestException {
    SheetReading reading = SetupReader.readWithFiles(file, text, folder);
    Findings findings = new Findings();
    findings.addAll(reading.findings());
    return reading
        .sheet()
        .orElseThrow(
            () ->
                new RequestException(
                    ExitStatus.REQUEST_WRONG, findings.sorted(), SetupReader.lines(text)));
  }
}
