package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tomlj.TomlPosition;

/** What one reading of a sheet found and assumed, and the unit of its plain numbers. */
final class SheetLog {
  private static final int SHOWN_DECIMALS = 6;

  private final String file;
  private final Findings findings = new Findings();
  private final Set<String> assumptions = new LinkedHashSet<>();
  private LengthUnit unit = LengthUnit.MILLIMETRE;
  private boolean plainLengthRead;

  SheetLog(String file) {
    this.file = file;
  }

  String file() {
    return file;
  }

  void report(Code code, Place place, String what, String why, String fix) {
    findings.add(code, place, what, why, fix);
  }

  boolean hasErrors() {
    return findings.hasErrors();
  }

  List<Finding> findings() {
    return findings.sorted();
  }

  /** Keeps one sentence on a default that was used or a switch that was set. */
  void assume(String sentence) {
    assumptions.add(sentence);
  }

  List<String> assumptions() {
    return new ArrayList<>(assumptions);
  }

  /** Unit of lengths without a unit of their own. */
  LengthUnit unit() {
    return unit;
  }

  void useUnit(LengthUnit other) {
    unit = other;
  }

  /** A plain number of the sheet as a length (mm); remembers that the sheet's unit mattered. */
  double plainLength(double number) {
    plainLengthRead = true;
    return unit.toMillimetres(number);
  }

  /** A length (mm) for people: in the sheet's unit, a nanometre's digits and no more. */
  String shown(double millimetres) {
    return Lengths.brief(millimetres, unit, SHOWN_DECIMALS);
  }

  boolean plainLengthRead() {
    return plainLengthRead;
  }

  /** A place in the sheet; the whole file when the parser knows none. */
  Place place(TomlPosition position) {
    return position == null
        ? Place.file(file)
        : new Place(file, position.line(), position.column(), 0);
  }
}
