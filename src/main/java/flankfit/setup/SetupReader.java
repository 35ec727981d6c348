package flankfit.setup;

import flankfit.finding.Place;
import flankfit.motion.Point;
import flankfit.standard.Designations;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlTable;

/** Reads a setup sheet: TOML text to records, or every error in it with line and column. */
public final class SetupReader {
  private final SheetLog log;
  private final DesignationCheck designations;
  private final StockFiles files;

  private SetupReader(String fileName, DesignationCheck designations, StockFiles files) {
    this.log = new SheetLog(fileName);
    this.designations = designations;
    this.files = files;
  }

  /**
   * Reads a sheet. All errors of one reading are reported, except that nothing beyond the syntax is
   * looked at while the text is no TOML.
   *
   * @param fileName name of the sheet as the user gave it, for the findings
   * @param text the whole text
   */
  public static SheetReading read(String fileName, String text) {
    return readWithFiles(fileName, text, StockFiles.NONE);
  }

  /**
   * The same with files that the sheet may name as stock.
   *
   * @param files looks at them
   */
  public static SheetReading readWithFiles(String fileName, String text, StockFiles files) {
    return new SetupReader(fileName, Designations::parse, files).read(text);
  }

  static SheetReading read(String fileName, String text, DesignationCheck designations) {
    return new SetupReader(fileName, designations, StockFiles.NONE).read(text);
  }

  private SheetReading read(String text) {
    Optional<TomlTable> toml = new TomlText(log, "a setup sheet").parse(text);
    Optional<SetupSheet> sheet =
        toml.map(t -> sheet(new SheetTable(log, t, "the sheet", Place.file(log.file()), keys())));
    return new SheetReading(sheet.filter(s -> !log.hasErrors()), log.findings());
  }

  private static Keys keys() {
    return Keys.none()
        .and("units", "\"mm\" or \"inch\"")
        .and("title", "text")
        .and("control", "the table [control]")
        .and("stock", "the table [stock]")
        .and("keep-out", "tables [[keep-out]]")
        .and("work-offsets", "the table [work-offsets]")
        .and("hole", "tables [[hole]]")
        .and("boss", "tables [[boss]]")
        .and("tool", "tables [[tool]]")
        .and("offsets", "the table [offsets]")
        .and("machine", "the table [machine]")
        .and("workpiece", "the table [workpiece]")
        .and("gauges", "the table [gauges]");
  }

  private SetupSheet sheet(SheetTable top) {
    top.item("units").flatMap(SetupReader::unit).ifPresent(log::useUnit);
    Optional<String> title = top.item("title").flatMap(SheetItem::text);
    ControlSwitches control =
        top.table("control", ControlReader.keys())
            .map(ControlReader::read)
            .orElseGet(ControlSwitches::defaults);
    Optional<Stock> stock =
        top.table("stock", BodyReader.stockKeys()).flatMap(t -> BodyReader.stock(t, files));
    List<KeepOut> keepOuts =
        top.tables("keep-out", BodyReader.keepOutKeys()).stream()
            .flatMap(t -> BodyReader.keepOut(t).stream())
            .toList();
    HoleReader holes = new HoleReader(log, designations, stock);
    top.tables("hole", HoleReader.keys()).forEach(t -> holes.read(t, false));
    top.tables("boss", HoleReader.keys()).forEach(t -> holes.read(t, true));
    ToolReader toolReader = new ToolReader(log, designations, holes.threads());
    List<Tool> tools =
        top.tables("tool", ToolReader.keys()).stream()
            .flatMap(t -> toolReader.read(t).stream())
            .toList();
    Map<String, Point> origins = named(top, "work-offsets", OffsetsReader::origins, Map.of());
    Offsets offsets = named(top, "offsets", OffsetsReader::offsets, Offsets.none());
    Optional<SheetTable> workpiece = top.table("workpiece", ScatterReader.workpieceKeys());
    Optional<String> material = workpiece.flatMap(t -> t.item("material")).flatMap(SheetItem::text);
    Scatter scatter =
        ScatterReader.read(top.table("machine", ScatterReader.machineKeys()), workpiece);
    SetupSheet.GaugeCondition gauges = gauges(top, !holes.threads().isEmpty());
    if (!top.has("units") && log.plainLengthRead()) {
      log.assume("units not stated: lengths without a unit are millimetres");
    }
    return new SetupSheet(
        log.file(),
        title.orElse(""),
        log.unit(),
        control,
        stock,
        keepOuts,
        origins,
        holes.holes(),
        tools,
        offsets,
        material.orElse(""),
        gauges,
        scatter,
        log.assumptions());
  }

  private static Optional<LengthUnit> unit(SheetItem item) {
    return item.text().flatMap(word -> Lengths.unit(word).or(() -> item.unknownUnit(word)));
  }

  /** Reads a table whose keys are names: of registers, of origins. */
  private interface NamedReader<T> {
    T read(SheetTable table, Iterable<String> names);
  }

  private static <T> T named(SheetTable top, String key, NamedReader<T> reader, T otherwise) {
    Optional<SheetItem> item = top.item(key);
    if (item.isEmpty() || !(item.get().value() instanceof TomlTable toml)) {
      item.ifPresent(i -> i.wrongType("a table"));
      return otherwise;
    }
    List<String> names = List.copyOf(toml.keySet());
    Keys keys = OffsetsReader.keysOf(names, "a register or an origin");
    return item.get()
        .table(keys, "[" + key + "]")
        .map(table -> reader.read(table, names))
        .orElse(otherwise);
  }

  private SetupSheet.GaugeCondition gauges(SheetTable top, boolean matters) {
    Optional<SheetItem> item =
        top.table("gauges", Keys.none().and("condition", "\"new\", \"middle\" or \"worn\""))
            .flatMap(t -> t.item("condition"));
    if (item.isEmpty() && matters) {
      log.assume(SetupSheet.GAUGES_NOT_STATED);
    }
    return item.flatMap(
            i ->
                i.choice(
                    List.of(
                        Choice.of("new", SetupSheet.GaugeCondition.NEW),
                        Choice.of("middle", SetupSheet.GaugeCondition.MIDDLE),
                        Choice.of("worn", SetupSheet.GaugeCondition.WORN))))
        .orElse(SetupSheet.GaugeCondition.NEW);
  }

  /**
   * The lines of a sheet as its findings count them: TOML ends them at LF or CR LF, not at a CR
   * alone.
   */
  public static List<String> lines(String toml) {
    return List.of(toml.split("\r?\n", -1));
  }
}
