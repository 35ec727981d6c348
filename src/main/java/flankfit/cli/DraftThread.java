package flankfit.cli;

import flankfit.cutting.WorkMaterials;
import flankfit.draft.DraftChoices;
import flankfit.draft.Drafting;
import flankfit.draft.NotDraftedException;
import flankfit.draft.SheetWanted;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import flankfit.setup.Tool;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.Limits;
import flankfit.standard.ThreadSpec;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The thread, the hole and the mill of a draft, told as options. */
final class DraftThread {
  @Option(
      names = "--thread",
      paramLabel = "DESIGNATION",
      description = "the thread wanted, such as M20x1.5-6H, 1/2-13 UNC-2B, M16x1.5-6g")
  private Optional<String> thread = Optional.empty();

  @Option(
      names = "--hand",
      paramLabel = "right|left",
      description = "hand of the thread, to be sure that the designation says the same")
  private Optional<Hand> hand = Optional.empty();

  @Option(names = "--depth", paramLabel = "LENGTH", description = "depth of full thread")
  private Optional<String> depth = Optional.empty();

  @Option(
      names = "--hole",
      paramLabel = "LENGTH",
      description = {
        "diameter before the thread, of the hole or the boss; without it the drill suggested, or"
            + " the middle of the limits"
      })
  private Optional<String> hole = Optional.empty();

  @Option(
      names = "--hole-depth",
      paramLabel = "LENGTH|through",
      description = "depth of the hole, or height of the boss; without it the least that serves")
  private Optional<String> holeDepth = Optional.empty();

  @Option(names = "--boss", description = "an external thread round a boss")
  private boolean boss;

  @Option(
      names = "--at",
      paramLabel = "X,Y",
      description = "an axis; once for each hole of a pattern (default: 0,0)")
  private List<String> at = new ArrayList<>();

  @Option(
      names = "--material",
      paramLabel = "NAME",
      description = "material of the part, such as \"aluminium, wrought\", for speeds and bending")
  private Optional<String> material = Optional.empty();

  @Option(
      names = "--mill",
      paramLabel = "LENGTH",
      description = "diameter of the mill over the teeth")
  private Optional<String> mill = Optional.empty();

  @Option(names = "--rows", paramLabel = "N", description = "rows of teeth (default: 1)")
  private int rows = 1;

  @Option(
      names = "--pitch",
      paramLabel = "LENGTH",
      description = "distance of the rows (default: the thread's pitch)")
  private Optional<String> pitch = Optional.empty();

  @Option(names = "--flutes", paramLabel = "N", description = "number of flutes")
  private Optional<Integer> flutes = Optional.empty();

  @Option(
      names = "--form",
      paramLabel = "straight|ground",
      description = "true V teeth, or teeth ground for this thread")
  private Optional<Form> form = Optional.empty();

  @Option(names = "--crest-flat", paramLabel = "LENGTH", description = "width of a tooth's tip")
  private Optional<String> crestFlat = Optional.empty();

  @Option(
      names = "--tip",
      paramLabel = "LENGTH",
      description = "from the mill's end to the middle of its first row (default: half a pitch)")
  private Optional<String> tip = Optional.empty();

  @Option(names = "--flute-length", paramLabel = "LENGTH", description = "length that cuts")
  private Optional<String> fluteLength = Optional.empty();

  @Option(
      names = "--neck",
      paramLabel = "D,REACH",
      description = "diameter of the neck above the teeth, and how far it reaches from the end")
  private Optional<String> neck = Optional.empty();

  @Option(
      names = "--mill-hand",
      paramLabel = "right|left",
      description = "a left-hand mill cuts with M4 (default: right)")
  private Optional<Hand> millHand = Optional.empty();

  @Option(
      names = "--mill-material",
      paramLabel = "NAME",
      description = "carbide (default) or high-speed steel")
  private Optional<String> millMaterial = Optional.empty();

  /** Hands. */
  enum Hand {
    RIGHT,
    LEFT
  }

  /** Forms of teeth. */
  enum Form {
    STRAIGHT,
    GROUND
  }

  /** Options that say what a setup sheet says; none may stand beside one. */
  private Stream<String> told() {
    return Stream.of(
            thread.map(t -> "--thread"),
            depth.map(t -> "--depth"),
            hole.map(t -> "--hole"),
            holeDepth.map(t -> "--hole-depth"),
            boss ? Optional.of("--boss") : Optional.<String>empty(),
            at.isEmpty() ? Optional.<String>empty() : Optional.of("--at"),
            material.map(t -> "--material"),
            mill.map(t -> "--mill"),
            rows == 1 ? Optional.<String>empty() : Optional.of("--rows"),
            pitch.map(t -> "--pitch"),
            flutes.map(t -> "--flutes"),
            form.map(t -> "--form"),
            crestFlat.map(t -> "--crest-flat"),
            tip.map(t -> "--tip"),
            fluteLength.map(t -> "--flute-length"),
            neck.map(t -> "--neck"),
            hand.map(t -> "--hand"),
            millHand.map(t -> "--mill-hand"),
            millMaterial.map(t -> "--mill-material"))
        .flatMap(Optional::stream);
  }

  /**
   * Refuses options that a setup sheet answers already.
   *
   * @throws RequestException if any was given
   */
  void requireNone() throws RequestException {
    Optional<String> first = told().findFirst();
    if (first.isPresent()) {
      throw wrong(
          first.get() + " beside --setup",
          "the sheet says thread, hole and mill",
          "leave it out, or say it in the sheet");
    }
  }

  /** The job that the options describe. */
  DraftJob job(String file, DraftChoices choices) throws RequestException, NotDraftedException {
    LengthUnit unit = choices.unit();
    if (thread.isEmpty() || depth.isEmpty() || mill.isEmpty()) {
      throw wrong(
          "--thread, --depth and --mill are wanted",
          "a draft begins with them, or with a setup sheet",
          "flankfit draft --thread M20x1.5-6H --mill 14 --rows 12 --depth 16, or --setup FILE");
    }
    ThreadSpec spec = spec(thread.get());
    List<String> assumed = new ArrayList<>();
    Optional<Double> stated =
        hole.isPresent() ? Optional.of(length(hole.get(), "--hole", unit)) : Optional.empty();
    double blank = stated.isPresent() ? stated.get() : blank(spec, unit, assumed);
    Drafting.checkBlank(spec, blank, unit);
    boolean through = holeDepth.filter("through"::equals).isPresent();
    Optional<Double> deep =
        holeDepth.isPresent() && !through
            ? Optional.of(length(holeDepth.get(), "--hole-depth", unit))
            : Optional.empty();
    SheetWanted wanted =
        new SheetWanted(
            spec.designation(),
            boss,
            places(unit),
            blank,
            length(depth.get(), "--depth", unit),
            deep,
            1,
            mill(spec, choices, assumed),
            material(),
            unit);
    if (material.isEmpty()) {
      assumed.add("material not stated: speed and feed are those of common steels; no bending");
    }
    return DraftJob.ofDrawing(file, wanted, through, choices, assumed);
  }

  private ThreadSpec spec(String designation) throws RequestException {
    ThreadSpec spec;
    try {
      spec = Designations.parse(designation);
    } catch (InvalidDesignationException e) {
      throw RequestException.wrong(
          Finding.of(Code.SH07, Place.file(""), e.getMessage(), e.why(), e.fix()));
    }
    if (spec.internal() == boss) {
      throw wrong(
          spec.designation() + " is an " + (boss ? "internal" : "external") + " thread",
          boss ? "a boss has an external one" : "a hole has an internal one",
          boss
              ? "state a class such as 6g, or leave out --boss"
              : "add --boss, or state a class such as 6H");
    }
    boolean left = hand.filter(h -> h == Hand.LEFT).isPresent();
    if (hand.isPresent() && left != spec.leftHand()) {
      throw wrong(
          "--hand "
              + (left ? "left" : "right")
              + ", and "
              + spec.designation()
              + " is "
              + (spec.leftHand() ? "left" : "right")
              + "-hand",
          "the drawing means one of them",
          left ? "write " + spec.designation() + "-LH" : "leave out --hand, or -LH");
    }
    return spec;
  }

  private double blank(ThreadSpec spec, LengthUnit unit, List<String> assumed) {
    Limits limits = spec.limits();
    OptionalDouble least = spec.internal() ? limits.minorMin() : limits.majorMin();
    OptionalDouble most = spec.internal() ? limits.minorMax() : limits.majorMax();
    String name = spec.internal() ? "hole" : "boss";
    if (spec.drill().isPresent()) {
      assumed.add(
          name + ": diameter not stated: the drill suggested, " + spec.drill().get().name());
      return spec.drill().get().diameter();
    }
    double nominal = spec.internal() ? spec.basicMinor() : spec.nominal();
    double middle = (least.orElse(nominal) + most.orElse(nominal)) / 2;
    int decimals = unit == LengthUnit.INCH ? 4 : 3;
    String text = Figures.plain(unit.fromMillimetres(middle), decimals);
    assumed.add(
        name + ": diameter not stated: the middle of its limits, " + text + " " + unit.symbol());
    return unit.toMillimetres(Double.parseDouble(text));
  }

  private SheetWanted.MillWanted mill(ThreadSpec spec, DraftChoices choices, List<String> assumed)
      throws RequestException {
    LengthUnit unit = choices.unit();
    if (tip.isEmpty()) {
      assumed.add("tool " + choices.tool() + ": tip not stated: half a pitch");
    }
    if (rows > 1 && pitch.isEmpty()) {
      assumed.add("tool " + choices.tool() + ": pitch of the rows not stated: that of the thread");
    }
    if (rows == 1 && pitch.isPresent()) {
      throw wrong("--pitch of a mill with one row", "it is the distance of rows", "add --rows N");
    }
    if (rows < 1) {
      throw wrong("--rows " + rows, "a mill has one row at least", "write 1 or more");
    }
    return new SheetWanted.MillWanted(
        choices.tool(),
        millHand.filter(h -> h == Hand.LEFT).isPresent(),
        length(mill.orElseThrow(), "--mill", unit),
        flutes,
        rows,
        pitch.isPresent() ? length(pitch.get(), "--pitch", unit) : spec.pitch(),
        form.map(f -> f == Form.STRAIGHT),
        optional(crestFlat, "--crest-flat", unit),
        tip.isPresent() ? length(tip.get(), "--tip", unit) : spec.pitch() / 2,
        optional(fluteLength, "--flute-length", unit),
        neck.isPresent() ? Optional.of(neck(neck.get(), unit)) : Optional.empty(),
        millMaterial.orElse("carbide"));
  }

  private static Optional<Double> optional(Optional<String> text, String option, LengthUnit unit)
      throws RequestException {
    return text.isPresent() ? Optional.of(length(text.get(), option, unit)) : Optional.empty();
  }

  private static Tool.Section neck(String text, LengthUnit unit) throws RequestException {
    List<Double> pair = pair(text, "--neck", unit);
    return new Tool.Section(pair.get(0), pair.get(1));
  }

  private List<List<Double>> places(LengthUnit unit) throws RequestException {
    List<List<Double>> places = new ArrayList<>();
    for (String place : at) {
      places.add(pair(place, "--at", unit));
    }
    return places.isEmpty() ? List.of(List.of(0.0, 0.0)) : places;
  }

  private static List<Double> pair(String text, String option, LengthUnit unit)
      throws RequestException {
    String[] parts = text.split(",", -1);
    if (parts.length != 2) {
      throw wrong(option + " " + text, "two lengths with a comma are wanted", "such as 20,-15");
    }
    return List.of(signed(parts[0], option, unit), signed(parts[1], option, unit));
  }

  private static double length(String text, String option, LengthUnit unit)
      throws RequestException {
    double value = signed(text, option, unit);
    if (!(value > 0)) {
      throw wrong(option + " " + text, "it must be above 0", "write a length such as 14 or 0.35in");
    }
    return value;
  }

  private static double signed(String text, String option, LengthUnit unit)
      throws RequestException {
    OptionalDouble own = Lengths.parse(text);
    if (own.isPresent()) {
      return own.getAsDouble();
    }
    try {
      double value = unit.toMillimetres(Double.parseDouble(text.strip()));
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Told below, as any text that is no length.
    }
    throw wrong(
        option + " " + text + " is no length",
        "a number is read in " + unit.symbol() + "; mm or in may stand behind it",
        "write a length such as 14 or 0.35in");
  }

  private String material() throws RequestException {
    if (material.isEmpty()) {
      return "";
    }
    WorkMaterials known = WorkMaterials.builtIn();
    String name = material.get();
    if (known.of(name).isEmpty()) {
      List<String> alike = known.alike(name);
      throw wrong(
          "material " + name + " is not in the table of cutting forces",
          "the table has " + String.join("; ", alike.isEmpty() ? known.keys() : alike),
          Nearest.of(name, known.keys())
              .map(n -> "write \"" + n + "\"")
              .orElse("name one of them"));
    }
    return known.of(name).get().key();
  }

  static RequestException wrong(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }
}
