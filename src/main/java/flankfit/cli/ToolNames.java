package flankfit.cli;

import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;

/** What a tool is called in text and keys. */
final class ToolNames {
  private ToolNames() {}

  /** Number, kind and diameter, such as {@code T4 thread mill 14 mm}. */
  static String of(SetupSheet sheet, int number) {
    LengthUnit unit = sheet.unit();
    return sheet
        .tool(number)
        .map(
            tool ->
                "T"
                    + number
                    + " "
                    + tool.kind().word()
                    + " "
                    + Figures.plain(tool.diameter() / unit.toMillimetres(1), 4)
                    + " "
                    + unit.symbol())
        .orElse("T" + number);
  }
}
