package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.motion.Point;
import flankfit.standard.Designations;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** Reads a setup sheet: TOML text to records, or every error in it with line and column. */
public final class SetupReader {
  private static final int DEEPEST = 32;
  private static final Pattern TEXT_OR_COMMENT =
      Pattern.compile("\"[^\"\\n]*+\"|'[^'\\n]*+'|#[^\\n]*+");
  private static final String SYNTAX = "a setup sheet is TOML 1.0";

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
    Optional<TomlTable> toml = parse(text.startsWith("\uFEFF") ? text.substring(1) : text);
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

  private Optional<TomlTable> parse(String text) {
    if (depth(text) > DEEPEST) {
      log.report(
          Code.SH01,
          Place.file(log.file()),
          "lists or tables are nested more than " + DEEPEST + " deep",
          "no value of a setup sheet is nested so deep",
          "close the brackets");
      return Optional.empty();
    }
    TomlParseResult result = Toml.parse(text);
    result.errors().forEach(this::reportSyntax);
    return result.hasErrors() ? Optional.empty() : Optional.of(result);
  }

  /** How deep brackets nest outside text and comments; the parser recurses once for each. */
  private static int depth(String text) {
    int depth = 0;
    int deepest = 0;
    for (char c : TEXT_OR_COMMENT.matcher(text).replaceAll("").toCharArray()) {
      if (c == '[' || c == '{') {
        deepest = Math.max(deepest, ++depth);
      } else if ((c == ']' || c == '}') && depth > 0) {
        depth--;
      }
    }
    return deepest;
  }

  private void reportSyntax(TomlParseError error) {
    String message = String.valueOf(error.getMessage());
    String what = message.isEmpty() ? "the text is no TOML" : lowerFirst(message);
    log.report(Code.SH01, log.place(error.position()), what, SYNTAX, syntaxFix(message));
  }

  private static String lowerFirst(String message) {
    if (message.endsWith(" .")) {
      return lowerFirst(message.substring(0, message.length() - 1) + "'.'");
    }
    boolean sentence = message.length() > 1 && Character.isLowerCase(message.charAt(1));
    return sentence ? Character.toLowerCase(message.charAt(0)) + message.substring(1) : message;
  }

  private static String syntaxFix(String message) {
    if (message.contains("Unexpected ','")) {
      return "write a decimal point, not a comma";
    }
    if (message.contains("Unexpected '.'")) {
      return "write a digit before and after the decimal point";
    }
    if (message.contains("previously defined")) {
      return "keep one of the two, or head a list of tables with [[ ]]";
    }
    return message.contains("a number, a boolean") ? "write a value; text stands in quotes" : "";
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
