package flankfit.draft;

import flankfit.motion.ModalState.Distance;
import flankfit.setup.Offsets;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** A thread, a hole or boss and a mill drawn by chance, and how its program is to be said. */
record SomeJob(SheetWanted wanted, DraftChoices choices) {
  private static final String[] METRIC = {
    "M3",
    "M4",
    "M5",
    "M6",
    "M8",
    "M8x1",
    "M10",
    "M10x1",
    "M12",
    "M12x1.25",
    "M14x1.5",
    "M16",
    "M16x1.5",
    "M20",
    "M20x1.5",
    "M20x2",
    "M24",
    "M24x2",
    "M30",
    "M30x1.5",
    "M36x3",
    "M42",
    "M48x2",
    "M64",
    "M64x4",
    "M12xPh3P1.5",
    "M24xPh4P2"
  };
  private static final String[] UNIFIED = {
    "#8-32 UNC",
    "#10-32 UNF",
    "1/4-20 UNC",
    "1/4-28 UNF",
    "3/8-16 UNC",
    "1/2-13 UNC",
    "1/2-20 UNF",
    "3/4-10 UNC",
    "3/4-16 UNF",
    "1-8 UNC",
    "1-12 UNF"
  };
  private static final String[] METALS = {
    "", "", "aluminium, wrought", "steel C45", "titanium Ti-6Al-4V", "cast iron EN-GJL-250"
  };

  /** A job of a seed. */
  static SomeJob of(long seed) {
    Random random = new Random(seed);
    boolean boss = random.nextInt(4) == 0;
    ThreadSpec spec = spec(random, boss);
    LengthUnit unit =
        random.nextInt(5) == 0 == spec.threadsPerInch().isEmpty()
            ? LengthUnit.INCH
            : LengthUnit.MILLIMETRE;
    DraftChoices choices = choices(random, unit);
    double share = boss ? 0.3 + random.nextDouble() : 0.35 + 0.5 * random.nextDouble();
    int rows = random.nextBoolean() ? 1 : 2 + random.nextInt(14);
    double depth = (0.4 + 1.8 * random.nextDouble()) * spec.nominal();
    double blank =
        spec.drill()
            .map(d -> d.diameter())
            .orElse(
                boss
                    ? (spec.limits().majorMin().orElse(0) + spec.limits().majorMax().orElse(0)) / 2
                    : (spec.limits().minorMin().orElse(0) + spec.limits().minorMax().orElse(0))
                        / 2);
    boolean otherRows = random.nextInt(20) == 0;
    SheetWanted.MillWanted mill =
        new SheetWanted.MillWanted(
            choices.tool(),
            random.nextInt(6) == 0,
            tenths(share * spec.nominal()),
            Optional.of(1 + random.nextInt(6)),
            rows,
            otherRows ? 1.1 * spec.pitch() : spec.pitch(),
            otherRows || random.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(random.nextInt(3) == 0),
            random.nextInt(4) == 0 ? Optional.of(spec.pitch() / 16) : Optional.empty(),
            spec.pitch() * (0.5 + random.nextDouble()),
            Optional.empty(),
            Optional.empty(),
            random.nextInt(4) == 0 ? "high-speed steel" : "carbide");
    List<List<Double>> places =
        random.nextInt(4) == 0
            ? List.of(List.of(0.0, 0.0), List.of(4 * spec.nominal() + 40, 12.5))
            : List.of(List.of(tenths(20 * random.nextDouble()), 3.0));
    SheetWanted wanted =
        new SheetWanted(
            spec.designation(),
            boss,
            places,
            blank,
            depth,
            Optional.empty(),
            depth,
            mill,
            METALS[random.nextInt(METALS.length)],
            unit);
    return new SomeJob(wanted.deep(depthOfBlank(random, depth, spec), 4 * depth + 50), choices);
  }

  private static Optional<Double> depthOfBlank(Random random, double depth, ThreadSpec spec) {
    return random.nextInt(3) == 0
        ? Optional.empty()
        : Optional.of(depth + spec.pitch() * (0.5 + 5 * random.nextDouble()) + 0.5);
  }

  private static double tenths(double length) {
    return Math.round(length * 10) / 10.0;
  }

  private static ThreadSpec spec(Random random, boolean boss) {
    boolean metric = random.nextInt(3) > 0;
    String size =
        metric ? METRIC[random.nextInt(METRIC.length)] : UNIFIED[random.nextInt(UNIFIED.length)];
    String limits = metric ? (boss ? "-6g" : "-6H") : boss ? "-2A" : "-2B";
    try {
      return Designations.parse(size + limits + (random.nextInt(4) == 0 ? "-LH" : ""));
    } catch (InvalidDesignationException e) {
      throw new AssertionError(size + limits, e);
    }
  }

  private static DraftChoices choices(Random random, LengthUnit unit) {
    DraftChoices.Entry[] entries = DraftChoices.Entry.values();
    return new DraftChoices(
        1 + random.nextInt(9),
        random.nextBoolean() ? Distance.ABSOLUTE : Distance.INCREMENTAL,
        entries[random.nextInt(3)],
        random.nextBoolean(),
        1 + random.nextInt(3),
        random.nextBoolean() ? DraftChoices.Path.WEAR : DraftChoices.Path.CONTOUR,
        unit,
        random.nextInt(4) == 0,
        1001,
        Optional.empty(),
        Optional.empty(),
        8000);
  }

  /** The job in words of a mode, without a subprogram. */
  SomeJob in(Distance mode) {
    DraftChoices c = choices;
    return new SomeJob(
        wanted,
        new DraftChoices(
            c.tool(),
            mode,
            c.entry(),
            c.climb(),
            c.passes(),
            c.path(),
            c.unit(),
            false,
            c.number(),
            c.speed(),
            c.toothFeed(),
            c.mostRpm()));
  }

  /** The sheet with a register. */
  SetupSheet sheet(Offsets.Register register) {
    SheetReading reading = SetupReader.read("job.setup.toml", SheetText.of(wanted, register));
    return reading.sheet().orElseThrow(() -> new AssertionError(reading.findings() + "\n" + this));
  }

  SetupSheet sheet() {
    return sheet(new Offsets.Register(0, 0));
  }

  Draft draft() throws NotDraftedException {
    return Drafting.draft("job.nc", sheet(), choices, Optional.empty());
  }
}
