package flankfit.control;

import static flankfit.control.SwitchChoices.choice;
import static flankfit.control.SwitchChoices.to;

import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.DwellP;
import flankfit.setup.ControlSwitches.NumberReading;
import flankfit.setup.ControlSwitches.Reading;
import flankfit.setup.ControlSwitches.Semicolon;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.stream.IntStream;

/** What else the switches of reading may be set to. */
final class ReadingChoices {
  private ReadingChoices() {}

  static void addTo(List<SwitchChoice> all) {
    all.add(
        choice(
            "number-reading",
            "calculator",
            ProgramWords::withoutPoint,
            to("least-increment", ReadingChoices::counting)));
    all.add(
        choice(
            "input-rounding",
            "none",
            ProgramWords::fine,
            to("least-increment", ReadingChoices::rounding)));
    all.add(
        choice(
            "power-up-units", "mm", ProgramWords::reliesOnUnit, to("inch", ReadingChoices::inch)));
    all.add(
        choice(
            "semicolon",
            "comment",
            words -> words.says(";"),
            to("end-of-block", ReadingChoices::endingBlocks)));
    all.add(
        choice(
            "block-delete", "false", ProgramWords::slashes, to("true", ReadingChoices::deleting)));
    all.add(
        choice(
            "dwell-p",
            "by-point",
            words -> words.anyOf("P") && (words.g(40) || SwitchChoices.isCycled(words)),
            to("milliseconds", s -> dwelling(s, DwellP.MILLISECONDS)),
            to("seconds", s -> dwelling(s, DwellP.SECONDS))));
  }

  private static ControlSwitches reading(
      ControlSwitches s,
      NumberReading numbers,
      boolean rounds,
      LengthUnit unit,
      Semicolon semicolon,
      List<Integer> blockDelete,
      DwellP dwellP) {
    Reading r = s.reading();
    return s.with(
        new Reading(
            numbers,
            rounds,
            r.leastIncrementMm(),
            r.leastIncrementInch(),
            unit,
            semicolon,
            blockDelete,
            r.optionalStop(),
            dwellP));
  }

  private static ControlSwitches counting(ControlSwitches s) {
    Reading r = s.reading();
    return reading(
        s,
        NumberReading.LEAST_INCREMENT,
        r.roundToLeastIncrement(),
        r.powerUpUnit(),
        r.semicolon(),
        r.blockDelete(),
        r.dwellP());
  }

  private static ControlSwitches rounding(ControlSwitches s) {
    Reading r = s.reading();
    return reading(
        s, r.numbers(), true, r.powerUpUnit(), r.semicolon(), r.blockDelete(), r.dwellP());
  }

  private static ControlSwitches inch(ControlSwitches s) {
    Reading r = s.reading();
    return reading(
        s,
        r.numbers(),
        r.roundToLeastIncrement(),
        LengthUnit.INCH,
        r.semicolon(),
        r.blockDelete(),
        r.dwellP());
  }

  private static ControlSwitches endingBlocks(ControlSwitches s) {
    Reading r = s.reading();
    return reading(
        s,
        r.numbers(),
        r.roundToLeastIncrement(),
        r.powerUpUnit(),
        Semicolon.END_OF_BLOCK,
        r.blockDelete(),
        r.dwellP());
  }

  private static ControlSwitches deleting(ControlSwitches s) {
    Reading r = s.reading();
    List<Integer> levels = IntStream.rangeClosed(1, 9).boxed().toList();
    return reading(
        s,
        r.numbers(),
        r.roundToLeastIncrement(),
        r.powerUpUnit(),
        r.semicolon(),
        levels,
        r.dwellP());
  }

  private static ControlSwitches dwelling(ControlSwitches s, DwellP dwellP) {
    Reading r = s.reading();
    return reading(
        s,
        r.numbers(),
        r.roundToLeastIncrement(),
        r.powerUpUnit(),
        r.semicolon(),
        r.blockDelete(),
        dwellP);
  }
}
