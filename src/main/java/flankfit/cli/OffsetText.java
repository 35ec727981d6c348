package flankfit.cli;

import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.OffsetAdvice.AsMoved;
import flankfit.setup.RadiusSetting;
import flankfit.unit.LengthUnit;
import flankfit.unit.Tolerance;
import java.util.Optional;
import java.util.OptionalDouble;

/** What to key in, for a person. */
final class OffsetText {
  private final OffsetAdvice offset;
  private final Optional<Double> wearLimit;
  private final String program;
  private final LengthUnit unit;
  private final Style style;
  private final StringBuilder out;

  private OffsetText(
      OffsetAdvice offset,
      Optional<Double> wearLimit,
      String program,
      LengthUnit unit,
      Style style,
      StringBuilder out) {
    this.offset = offset;
    this.wearLimit = wearLimit;
    this.program = program;
    this.unit = unit;
    this.style = style;
    this.out = out;
  }

  /**
   * Appends the lines.
   *
   * @param wearLimit greatest wear that the control takes (mm); empty when the sheet does not say
   * @param program file of the main program, which is not named anew
   */
  static void write(
      OffsetAdvice offset,
      Optional<Double> wearLimit,
      String program,
      LengthUnit unit,
      Style style,
      StringBuilder out) {
    new OffsetText(offset, wearLimit, program, unit, style, out).write();
  }

  private void write() {
    double step = unit == LengthUnit.INCH ? unit.toMillimetres(0.001) : 0.01;
    double effect = offset.sensitivity() * step;
    out.append("    ").append(style.strong(offset.register() + " wear"));
    out.append(" is ").append(Figures.lengthWithUnit(offset.now(), unit));
    out.append("; ").append(Figures.lengthWithUnit(step, unit));
    out.append(" more makes the pitch diameter ").append(GaugeText.fine(Math.abs(effect), unit));
    out.append(' ').append(unit.symbol()).append(effect < 0 ? " smaller\n" : " larger\n");
    offset.setBy().ifPresent(this::setBy);
    if (!offset.hasWindow()) {
      out.append("      ").append(noValue()).append('\n');
      return;
    }
    Optional<AsMoved> moved = offset.asMoved();
    String enter = offset.setBy().isPresent() ? "value" : "key in";
    boolean between = moved.map(AsMoved::middleBetweenGauges).orElse(false);
    String middle =
        between ? " for the middle between the gauges" : " for the middle of the limits";
    key(enter + middle, offset.keyToMiddle(), "");
    key(
        "the last value at which GO enters",
        offset.keyToGoLimit(),
        ofPath(moved.map(AsMoved::goShift)));
    key(
        "the last value at which NO-GO stops",
        offset.keyToNoGoLimit(),
        ofPath(moved.map(AsMoved::noGoShift)));
  }

  private String noValue() {
    if (offset.asMoved().map(m -> m.goShift().isEmpty()).orElse(false)) {
      return "no value lets GO in as far as thread is wanted: mend depth, entry or exit";
    }
    if (offset.asMoved().map(m -> m.noGoShift().isEmpty()).orElse(false)) {
      return "no value stops NO-GO on the path as moved: mend entry or exit";
    }
    return "no value suits both gauges: mend the motion or the mill";
  }

  /** How much of an entry is owed to the path as moved; nothing below the register's increment. */
  private String ofPath(Optional<OptionalDouble> shift) {
    double off = shift.orElse(OptionalDouble.empty()).orElse(0);
    return Math.abs(off) < offset.increment()
        ? ""
        : "  " + Figures.length(Math.abs(off), unit) + " of it for entry, exit and ends";
  }

  /** The program overwrites the register: its own block is to be changed. */
  private void setBy(RadiusSetting setting) {
    String file = setting.place().file();
    out.append("      ").append(setting.word()).append(" of G10 in line ");
    out.append(setting.place().line()).append(file.equals(program) ? "" : " of " + file);
    out.append(" overwrites what is keyed in: write the value there\n");
  }

  private void key(String name, double value, String beside) {
    out.append("      ").append(Figures.left(name, 38));
    out.append(Figures.right(Figures.length(value, unit), 9)).append(' ');
    boolean beyond =
        offset.setBy().isEmpty()
            && wearLimit.map(l -> Math.abs(value) > l + Tolerance.MODEL.value()).orElse(false);
    out.append(unit.symbol()).append(beyond ? "  beyond the control's limit" : beside).append('\n');
  }
}
