package flankfit.window;

import flankfit.lesson.NearSteps;
import flankfit.lesson.Question;
import flankfit.lesson.Quiz;
import flankfit.lesson.Step;
import flankfit.lesson.Told;
import flankfit.motion.ModalState.Distance;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the Lesson sheet tells: the block at the position in both modes, questions about it, and
 * what a forgotten word would do. All of it is worked out on threads of its own.
 */
final class LessonSide implements AutoCloseable {
  /** Blocks that are told at once; a long program is told near the position only. */
  private static final int CHUNK = 2000;

  /** Blocks told before those, so that what leads to the first one is known. */
  private static final int BEFORE = 12;

  /** Blocks without moves that are told before the one at the position. */
  private static final int MOST_BEFORE = 2;

  private static final long SEED = 1;

  private final Course course;
  private final Desk desk;
  private final Runnable changed;
  private final Latest<Near, NearSteps> near;
  private final Latest<Asked, List<Question>> quiz;
  private final Latest<What, Optional<Accident>> accidents;
  private Shown shown = Shown.BOTH;
  private boolean asks;
  private boolean answered;
  private int question;
  private int block;
  private Optional<What> what = Optional.empty();
  private Optional<Told> told = Optional.empty();
  private List<Told> before = List.of();
  private List<Question> questions = List.of();
  private Optional<Accident> accident = Optional.empty();
  private long changes;
  private volatile boolean closed;

  /** Which tellings are shown. */
  enum Shown {
    BOTH,
    ABSOLUTE,
    INCREMENTAL;

    Shown next() {
      return switch (this) {
        case BOTH -> ABSOLUTE;
        case ABSOLUTE -> INCREMENTAL;
        case INCREMENTAL -> BOTH;
      };
    }

    boolean has(Distance mode) {
      return this == BOTH || (this == ABSOLUTE) == (mode == Distance.ABSOLUTE);
    }
  }

  /** Which blocks are told: a stretch of a program as it was read once. */
  private record Near(Reading reading, int chunk) {
    Near {
      Objects.requireNonNull(reading, "reading");
    }
  }

  /** A program as it was read once; what was found in it meanwhile makes no other one of it. */
  private record Reading(long beginning, boolean whole, WindowInput input) {
    Reading {
      Objects.requireNonNull(input, "input");
    }

    static Reading of(Loaded loaded) {
      return new Reading(loaded.beginning(), loaded.whole(), loaded.input());
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Reading o && beginning == o.beginning && whole == o.whole;
    }

    @Override
    public int hashCode() {
      return Long.hashCode(beginning) * 2 + (whole ? 1 : 0);
    }
  }

  /** A step that is asked about. */
  private record Asked(Step step) {
    Asked {
      Objects.requireNonNull(step, "step");
    }
  }

  /** A word that is left out. */
  private record What(Reading reading, int line, int since, int choice) {
    What {
      Objects.requireNonNull(reading, "reading");
    }
  }

  /**
   * Tells nothing yet.
   *
   * @param changed told of every change of what is seen
   * @param wake called on any thread when something has come
   */
  LessonSide(Course course, Desk desk, Runnable changed, Runnable wake) {
    this.course = course;
    this.desk = desk;
    this.changed = changed;
    Runnable open =
        () -> {
          if (!closed) {
            wake.run();
          }
        };
    near = new Latest<>("lesson", 0, LessonSide::tell, open);
    quiz = new Latest<>("quiz", 0, (q, watch) -> asked(q.step()), open);
    accidents = new Latest<>("accident", 0, (w, watch) -> leaveOut(w), open);
  }

  private static NearSteps tell(Near wanted, Latest.Watch watch) {
    WindowInput input = wanted.reading().input();
    int from = wanted.chunk() * CHUNK - BEFORE;
    int to = (wanted.chunk() + 1) * CHUNK;
    return NearSteps.of(
        input.replay()::run,
        input.setup(),
        from,
        to,
        number -> watch.goesOn(Math.min(1, number / (double) to)));
  }

  /** Centre words are not asked for: the block stands in the listing with them. */
  private static List<Question> asked(Step step) {
    return Quiz.of(List.of(step), SEED).stream()
        .filter(question -> question.kind() != Question.Kind.CENTRE)
        .toList();
  }

  private static Optional<Accident> leaveOut(What wanted) {
    WindowInput input = wanted.reading().input();
    return input
        .replay()
        .text()
        .flatMap(
            text ->
                Accident.of(
                    text, input.findings(), wanted.line(), wanted.since(), wanted.choice()));
  }

  /**
   * Takes what has come since.
   *
   * @param isSeen whether the sheet is shown
   */
  boolean follow(boolean isSeen) {
    if (!isSeen) {
      return false;
    }
    int number = course.move() < 0 ? 0 : course.tape().block(course.move());
    if (number != block) {
      block = number;
      answered = false;
      question = 0;
    }
    Reading reading = Reading.of(course.loaded());
    Optional<Told> now = Optional.empty();
    Near wanted = new Near(reading, number / CHUNK);
    if (number > 0) {
      near.ask(wanted);
      now = near.told(wanted).flatMap(n -> n.at(number));
    }
    boolean came = take(now, wanted);
    came |= takeQuestions();
    came |= takeAccident(reading);
    if (came) {
      changes++;
      changed.run();
    }
    return came;
  }

  private boolean take(Optional<Told> now, Near wanted) {
    if (now.equals(told)) {
      return false;
    }
    told = now;
    List<Told> all = new ArrayList<>();
    Optional<NearSteps> steps = near.told(wanted);
    for (int n = block - 1; n > 0 && steps.isPresent() && all.size() < MOST_BEFORE; n--) {
      Optional<Told> one = steps.get().at(n);
      if (one.isEmpty() || one.get().step().moves()) {
        break;
      }
      all.add(0, one.get());
    }
    before = List.copyOf(all);
    return true;
  }

  private boolean takeQuestions() {
    List<Question> now = List.of();
    if (asks && told.isPresent()) {
      Asked wanted = new Asked(told.get().step());
      quiz.ask(wanted);
      now = quiz.told(wanted).orElse(List.of());
    }
    boolean other = !now.equals(questions);
    questions = now;
    return other;
  }

  private boolean takeAccident(Reading reading) {
    Optional<Accident> now = Optional.empty();
    if (what.isPresent() && !what.get().reading().equals(reading)) {
      what = Optional.empty();
      accidents.stop();
    }
    if (what.isPresent()) {
      accidents.ask(what.get());
      Optional<Optional<Accident>> answer = accidents.told(what.get());
      if (answer.isPresent() && answer.get().isEmpty()) {
        desk.notice("no mode word stands in this line, and none before it is in force");
        what = Optional.empty();
      }
      now = answer.flatMap(a -> a);
    }
    boolean other = !now.equals(accident);
    accident = now;
    return other;
  }

  /** The block at the position; empty while it is being told. */
  Optional<Told> told() {
    return told;
  }

  /** The blocks without moves just before it, in order. */
  List<Told> before() {
    return before;
  }

  /** Grows with everything that is told otherwise. */
  long changes() {
    return changes;
  }

  /** Why nothing is told. */
  String missing() {
    if (course.move() < 0) {
      return course.loaded().stage().isGoing()
          ? "no move yet"
          : "the program makes no move, so there is nothing to tell";
    }
    return near.failure()
        .orElseGet(
            () ->
                near.isGoing()
                    ? "executing the program once more … " + Math.round(100 * near.share()) + " %"
                    : "nothing is told of this block");
  }

  Shown shown() {
    return shown;
  }

  /** Shows both tellings, then each alone. */
  void otherShown() {
    shown = shown.next();
    touch();
  }

  /** Whether it asks before it tells. */
  boolean asks() {
    return asks;
  }

  /** Asks first, or tells at once. */
  void toggleAsking() {
    asks = !asks;
    answered = false;
    question = 0;
    touch();
  }

  /** Whether an answer is kept back now. */
  boolean isHiding() {
    return asks && !answered && told.isPresent();
  }

  /** Shows the answer. */
  void answer() {
    answered = true;
    touch();
  }

  /** The question about the block; empty if there is none. */
  Optional<Question> question() {
    return questions.isEmpty()
        ? Optional.empty()
        : Optional.of(questions.get(question % questions.size()));
  }

  /** Whether questions are still being looked for. */
  boolean isThinking() {
    return quiz.isGoing();
  }

  /** Which question it is, from 1, and of how many. */
  String questionOf() {
    return questions.isEmpty() ? "" : question % questions.size() + 1 + " of " + questions.size();
  }

  /** Asks another question about the same block. */
  void otherQuestion() {
    question++;
    answered = false;
    touch();
  }

  /** Whether a word is left out. */
  boolean isForgetting() {
    return what.isPresent();
  }

  /** What comes of it; empty while that is worked out. */
  Optional<Accident> accident() {
    return accident;
  }

  /** Why what comes of it is not known. */
  String accidentMissing() {
    return accidents.failure().orElse("executing the program without it …");
  }

  /** Leaves out the mode word that governs the block, or puts it back. */
  void toggleForgetting() {
    if (what.isPresent()) {
      what = Optional.empty();
      accidents.stop();
    } else if (told.isPresent()) {
      String file = course.loaded().input().file();
      int since =
          told.get()
              .modeSince()
              .filter(place -> place.file().equals(file))
              .map(place -> place.line())
              .orElse(0);
      what = Optional.of(new What(Reading.of(course.loaded()), course.line(), since, 0));
    }
    touch();
  }

  /** Leaves out another of the words that could be meant. */
  void otherWord() {
    if (what.isEmpty()) {
      toggleForgetting();
    } else {
      What now = what.get();
      int next = accident.map(a -> a.which() % a.choices()).orElse(now.choice());
      what = Optional.of(new What(now.reading(), now.line(), now.since(), next));
      touch();
    }
  }

  /** Puts back what is left out, else ends asking; gives whether there was anything. */
  boolean leave() {
    if (what.isPresent()) {
      toggleForgetting();
      return true;
    }
    if (asks) {
      toggleAsking();
      return true;
    }
    return false;
  }

  private void touch() {
    changes++;
    changed.run();
  }

  @Override
  public void close() {
    closed = true;
    near.close();
    quiz.close();
    accidents.close();
  }
}
