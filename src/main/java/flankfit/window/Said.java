package flankfit.window;

import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.Observation;
import flankfit.odds.OddsAnswer;
import flankfit.odds.OddsAnswers;
import flankfit.odds.OddsRequest;
import flankfit.odds.PartObserved;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What gauges said of parts, and what that makes believe of the next one. */
final class Said implements AutoCloseable {
  /** What is offered to be picked; the rest is typed. */
  static final List<Choice> CHOICES =
      List.of(
          new Choice("GO went in the whole way", "go=enters"),
          new Choice("GO stopped", "go=stops"),
          new Choice("NO-GO stopped in time", "no-go=stops"),
          new Choice("NO-GO went in", "no-go=enters"));

  private final Bench bench;
  private final PartNotes notes = new PartNotes();
  private final Latest<Question, OddsAnswer> advice;
  private Optional<Latest.Told<Question, OddsAnswer>> seen = Optional.empty();
  private Problem complaint = NOTHING;
  private String file = "";

  /** No complaint. */
  static final Problem NOTHING = new Problem("", "", "", "");

  /** Something that can be picked: for people, and as it is typed. */
  record Choice(String words, String typed) {
    Choice {
      Objects.requireNonNull(words, "words");
      Objects.requireNonNull(typed, "typed");
    }
  }

  private record Question(Gauged gauged, Map<String, List<PartObserved>> parts) {}

  Said(Bench bench, Runnable wake) {
    this.bench = bench;
    advice = new Latest<>("advice", 0, (asked, watch) -> advised(asked), wake);
  }

  private static OddsAnswer advised(Question asked) {
    return OddsAnswers.of(
        asked.gauged().request().program(),
        asked.gauged().answer(),
        asked.gauged().request().setup(),
        OddsRequest.of(asked.parts()));
  }

  /** Takes what has come since; gives whether anything came. */
  boolean follow(String nowFile) {
    if (!nowFile.equals(file)) {
      file = nowFile;
      notes.clear();
    }
    Optional<Latest.Told<Question, OddsAnswer>> now = advice.told();
    boolean came = !now.equals(seen);
    seen = now;
    question().ifPresent(advice::ask);
    return came;
  }

  private Optional<Question> question() {
    Map<String, List<PartObserved>> parts = notes.all();
    return parts.isEmpty() ? Optional.empty() : bench.gauged().map(g -> new Question(g, parts));
  }

  /**
   * Keeps what was typed; gives whether it was understood, else there is a complaint.
   *
   * @param unit unit of plain lengths
   */
  boolean typed(String text, LengthUnit unit) {
    Optional<ThreadAnswer> thread = bench.base();
    if (thread.isEmpty()) {
      complaint = new Problem("there is no thread that a gauge could be tried in", "", "", "");
      return false;
    }
    try {
      Observation observation = Observation.of(text, unit);
      double wear = thread.get().offset().map(OffsetAdvice::now).orElse(0.0);
      notes.add(thread.get().hole(), wear, observation);
      complaint = NOTHING;
      return true;
    } catch (IllegalArgumentException e) {
      complaint =
          new Problem(
              "\"" + text + "\" is not understood",
              "",
              String.valueOf(e.getMessage()),
              "write one of: " + Observation.FORMS);
      return false;
    }
  }

  /** Why the last text was not understood; {@link #NOTHING} when it was. */
  Problem complaint() {
    return complaint;
  }

  void forgive() {
    complaint = NOTHING;
  }

  /** Takes back the last thing that was seen in the thread in hand. */
  boolean takeBack() {
    return bench.base().map(b -> notes.takeBack(b.hole())).orElse(false);
  }

  PartNotes notes() {
    return notes;
  }

  /** What was seen of the thread in hand. */
  List<PartObserved> ofThread() {
    return bench.base().map(b -> notes.of(b.hole())).orElse(List.of());
  }

  /** The advice that the last thing seen gives for the thread in hand; empty while it comes. */
  Optional<GaugingAdvice> advice() {
    return answer().flatMap(a -> bench.base().flatMap(b -> a.advice(b.hole())));
  }

  /** The whole answer to all that was seen; empty while it comes. */
  Optional<OddsAnswer> answer() {
    Optional<Question> now = question();
    return now.flatMap(advice::told);
  }

  /** Whether the advice is on its way. */
  boolean isComing() {
    return question().isPresent() && answer().isEmpty() && advice.failure().isEmpty();
  }

  /** Why there is no advice: the tool failed. */
  Optional<String> failure() {
    return advice.failure();
  }

  @Override
  public void close() {
    advice.close();
  }
}
