package flankfit.lesson;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.lesson.Question.Kind;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Exercises from the steps of a program. Every answer is executed: the words it gives, alone after
 * the point from which the question starts, must lead where the program led. A block that does not
 * stand alone (cycles, returns, transforms) gives no question.
 */
public final class Quiz {
  private static final double SAME = 1e-6;

  /** Words of a move; others, such as D and F, do not change where it is told to go. */
  private static final Pattern WORD =
      Pattern.compile("([A-Za-z])\\s*([-+]?[0-9.]+)(?=[\\sA-Za-z]|$)");

  private static final Pattern CENTRE = Pattern.compile("\\s*[IJKijk]\\s*[-+]?[0-9.]+");

  private Quiz() {}

  /**
   * All questions that a program gives, in an order that depends on the seed: one kind after the
   * other, as long as each has any.
   */
  public static List<Question> of(List<Step> steps, long seed) {
    Map<Kind, List<Question>> all = new EnumMap<>(Kind.class);
    for (Step step : steps) {
      if (isFit(step)) {
        for (Question question : questions(step)) {
          all.computeIfAbsent(question.kind(), kind -> new ArrayList<>()).add(question);
        }
      }
    }
    Random random = new Random(seed);
    List<List<Question>> kinds = new ArrayList<>(all.values());
    kinds.forEach(questions -> Collections.shuffle(questions, random));
    Collections.shuffle(kinds, random);
    List<Question> order = new ArrayList<>();
    for (int i = 0; kinds.stream().anyMatch(k -> !k.isEmpty()); i++) {
      List<Question> kind = kinds.get(i % kinds.size());
      if (!kind.isEmpty()) {
        order.add(kind.remove(0));
      }
    }
    return order;
  }

  private static boolean isFit(Step step) {
    // A note says that numbers do not stand for themselves here.
    return step.moves()
        && step.notes().isEmpty()
        && step.unfoldedAsOne()
        && step.absolute().isPresent()
        && step.incremental().isPresent()
        && !step.absolute().equals(step.incremental())
        && leadsThere(step, step.absolute().get())
        && leadsThere(step, step.incremental().get());
  }

  /** Whether words alone lead from the step's start to its end. */
  private static boolean leadsThere(Step step, String words) {
    StringBuilder text = new StringBuilder();
    text.append(step.unit() == LengthUnit.INCH ? "G20" : "G21").append(" G90 G54 F100. ");
    text.append(step.arc().map(arc -> plane(arc.plane())).orElse("G17") + " G0");
    for (int axis = 0; axis < 3; axis++) {
      double at = step.unit().fromMillimetres(step.begin().axis(axis));
      text.append(' ').append((char) ('X' + axis)).append(point(Lengths.plain(at, 9)));
    }
    text.append('\n').append(step.motionWord()).append(' ').append(moving(words)).append('\n');
    Interpretation done =
        Interpreter.replay(
            SourceText.of("answer.nc", text.toString().getBytes(StandardCharsets.UTF_8)),
            SetupSheet.empty(),
            List.of());
    Tape tape = done.tape();
    return done.complete()
        && tape.size() > 0
        && tape.to(tape.size() - 1).distance(step.end()) < SAME
        && goesRound(step, tape);
  }

  /** Whether an arc has the centre and the sweep told, and a straight move is none. */
  private static boolean goesRound(Step step, Tape tape) {
    int last = tape.size() - 1;
    if (step.arc().isEmpty()) {
      return tape.kind(last) == MoveKind.LINE;
    }
    ArcStep arc = step.arc().get();
    return tape.kind(last) == MoveKind.ARC
        && Math.abs(tape.centreU(last) - arc.centre().axis(arc.plane().u())) < SAME
        && Math.abs(tape.centreV(last) - arc.centre().axis(arc.plane().v())) < SAME
        && Math.abs(tape.sweep(last) - arc.sweep()) < SAME;
  }

  private static String plane(Plane plane) {
    return switch (plane) {
      case XY -> "G17";
      case ZX -> "G18";
      case YZ -> "G19";
    };
  }

  private static String point(String number) {
    return number.contains(".") ? number : number + ".";
  }

  /** The mode word and the words of the move. */
  private static String moving(String words) {
    StringJoiner moving = new StringJoiner(" ");
    Matcher word = WORD.matcher(words);
    while (word.find()) {
      char letter = Character.toUpperCase(word.group(1).charAt(0));
      boolean mode = letter == 'G' && (word.group(2).equals("90") || word.group(2).equals("91"));
      if (mode || "XYZIJKR".indexOf(letter) >= 0) {
        moving.add(letter + word.group(2));
      }
    }
    return moving.toString();
  }

  private static List<Question> questions(Step step) {
    List<Question> all = new ArrayList<>();
    String at = "Line " + step.place().line() + " says " + bare(step.text());
    String before = "The tool stands at " + Numeral.plain(step.begin(), step.unit()) + ". ";
    String mode = " in " + step.mode().word() + " mode";
    all.add(
        new Question(
            Kind.WHERE,
            step.place().line(),
            before + at + mode + ". Where is it told to be after that?",
            Numeral.plain(step.end(), step.unit())));
    boolean absolute = step.mode() == Distance.ABSOLUTE;
    all.add(
        new Question(
            Kind.OTHER_MODE,
            step.place().line(),
            before
                + at
                + mode
                + ". Say the same in "
                + (absolute ? "incremental" : "absolute")
                + " words.",
            (absolute ? step.incremental() : step.absolute()).orElseThrow()));
    step.arc().ifPresent(arc -> arcs(step, arc, before, at, mode, all));
    return all;
  }

  private static void arcs(
      Step step, ArcStep arc, String before, String at, String mode, List<Question> all) {
    String text = bare(step.text());
    centre(step, arc)
        .ifPresent(
            words ->
                all.add(
                    new Question(
                        Kind.CENTRE,
                        step.place().line(),
                        before
                            + "Line "
                            + step.place().line()
                            + " goes round the centre "
                            + planePoint(arc, step.unit())
                            + mode
                            + ": "
                            + CENTRE.matcher(text).replaceAll("")
                            + ". Which centre words does it lack?",
                        words)));
    char normal = "XYZ".charAt(arc.plane().n());
    all.add(
        new Question(
            Kind.ROUND,
            step.place().line(),
            before
                + at
                + mode
                + ". Which way round does the tool go, how far, and at which "
                + normal
                + " does it end?",
            Sides.round(arc.sweep(), arc.plane())
                + ", to "
                + normal
                + Numeral.plain(step.end().axis(arc.plane().n()), step.unit())));
  }

  private static String planePoint(ArcStep arc, LengthUnit unit) {
    StringJoiner point = new StringJoiner(" ");
    for (int axis = 0; axis < 3; axis++) {
      if (axis != arc.plane().n()) {
        point.add("XYZ".charAt(axis) + Numeral.plain(arc.centre().axis(axis), unit));
      }
    }
    return point.toString();
  }

  /** The centre words of a block as distances from its start; empty if it is not written so. */
  private static Optional<String> centre(Step step, ArcStep arc) {
    StringJoiner words = new StringJoiner(" ");
    Matcher word = WORD.matcher(step.absolute().orElse(""));
    Point way = arc.toCentre();
    while (word.find()) {
      int axis = "IJK".indexOf(Character.toUpperCase(word.group(1).charAt(0)));
      if (axis >= 0) {
        double written = step.unit().toMillimetres(Double.parseDouble(word.group(2)));
        if (Math.abs(written - way.axis(axis)) > SAME) {
          return Optional.empty();
        }
        words.add("IJK".charAt(axis) + Numeral.plain(way.axis(axis), step.unit()));
      }
    }
    return words.length() == 0 ? Optional.empty() : Optional.of(words.toString());
  }

  /** A block without comments. */
  private static String bare(String text) {
    return text.replaceAll("\\([^)]*\\)", "").replaceAll(";.*", "").strip();
  }
}
