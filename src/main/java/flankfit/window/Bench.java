package flankfit.window;

import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauge;
import flankfit.gauge.Travel;
import flankfit.gauge.WearTrial;
import flankfit.odds.ThreadOdds;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What lies on the bench of the Gauge sheet: the threads of the program, one of them in hand, the
 * dial of its register, both gauges, and the answers as they come.
 */
final class Bench implements AutoCloseable {
  private final Course course;
  private final Runnable changed;
  private final Answers answers;
  private final Map<String, Dial> dials = new HashMap<>();
  private final Plug go = new Plug(ThreadGauge.Kind.GO);
  private final Plug noGo = new Plug(ThreadGauge.Kind.NO_GO);
  private Optional<Gauged> gauged = Optional.empty();
  private String file = "";
  private String hole = "";
  private Optional<ThreadAnswer> base = Optional.empty();
  private Optional<WearTrial> trial = Optional.empty();
  private boolean oddsStopped;
  private Shown shown = Shown.NOTHING;
  private Arrived arrived = Arrived.NOTHING;

  /**
   * What is shown of the thread in hand.
   *
   * @param thread the last answer; empty when the program stops with its entry, or there is none
   * @param entry the entry that it belongs to (mm)
   * @param isWhole whether gauges were screwed into the path as moved
   * @param isCurrent whether the dial stands at that entry
   */
  record Shown(Optional<ThreadAnswer> thread, double entry, boolean isWhole, boolean isCurrent) {
    static final Shown NOTHING = new Shown(Optional.empty(), 0, false, true);

    Shown {
      Objects.requireNonNull(thread, "thread");
    }
  }

  /** What comes after the answer itself, each in its own time. */
  private record Arrived(
      Optional<WallShape> shape,
      Optional<ThreadOdds> odds,
      Optional<String> failure,
      boolean reckons,
      int percent) {
    static final Arrived NOTHING =
        new Arrived(Optional.empty(), Optional.empty(), Optional.empty(), false, 0);
  }

  /**
   * Empty until a program is gauged.
   *
   * @param changed told of every change of what is seen
   * @param wake called on any thread when an answer is there
   */
  Bench(Course course, Runnable changed, Runnable wake) {
    this.course = course;
    this.changed = changed;
    answers = new Answers(wake);
  }

  /**
   * Takes what has come since.
   *
   * @param isSeen whether the sheet is shown: else nothing is asked
   * @return whether anything came
   */
  boolean follow(boolean isSeen) {
    boolean came = takeProgram();
    if (isSeen) {
      entry().ifPresent(answers::ask);
    }
    Shown now = look();
    if (!now.equals(shown)) {
      shown = now;
      came = true;
    }
    Optional<Travel> into = real().map(RealAnswer::go);
    if (!into.equals(go.travel())) {
      double lead = base.map(b -> b.spec().lead()).orElse(0.0);
      go.follow(into, lead);
      noGo.follow(real().map(r -> r.noGo().travels().get(0)), lead);
      came = true;
    }
    if (isSeen && !oddsStopped) {
      entry().filter(e -> isWhole(e)).ifPresent(this::askOdds);
    }
    Arrived lately =
        new Arrived(shape(), odds(), failure(), isReckoning(), (int) (100 * oddsShare()));
    came |= !lately.equals(arrived);
    arrived = lately;
    if (came) {
      changed.run();
    }
    return came;
  }

  private boolean takeProgram() {
    Loaded loaded = course.loaded();
    if (!loaded.input().file().equals(file)) {
      file = loaded.input().file();
      forget();
    }
    Optional<Gauged> now = loaded.input().gauged();
    boolean ended = now.isEmpty() && loaded.whole() && !loaded.stage().isGoing();
    if ((now.isEmpty() && !ended) || now.equals(gauged)) {
      return false;
    }
    gauged = now;
    pick(hole);
    return true;
  }

  private void forget() {
    gauged = Optional.empty();
    base = Optional.empty();
    trial = Optional.empty();
    dials.clear();
    hole = "";
    go.out();
    noGo.out();
  }

  /** Whether what is shown is of the program before its last change. */
  boolean isStale() {
    return gauged.isPresent() && course.loaded().stage().isGoing();
  }

  /** The threads of the program. */
  List<ThreadAnswer> threads() {
    return gauged.map(Gauged::answer).map(GaugeAnswer::threads).orElse(List.of());
  }

  /** The program as it was gauged. */
  Optional<Gauged> gauged() {
    return gauged;
  }

  /** The thread in hand, with the entry of the sheet. */
  Optional<ThreadAnswer> base() {
    return base;
  }

  /** Takes the thread of a hole in hand; the first one if there is no such hole. */
  void pick(String name) {
    List<ThreadAnswer> threads = threads();
    Optional<ThreadAnswer> before = base;
    base =
        threads.stream()
            .filter(t -> t.hole().equals(name))
            .findFirst()
            .or(() -> threads.stream().findFirst());
    if (!base.map(ThreadAnswer::hole).equals(before.map(ThreadAnswer::hole))) {
      go.out();
      noGo.out();
    }
    hole = base.map(ThreadAnswer::hole).orElse("");
    trial = base.flatMap(b -> WearTrial.of(gauged.orElseThrow().request(), b));
    trial.ifPresent(
        t -> {
          double reach = base.orElseThrow().spec().pitch() / 2;
          dials.computeIfAbsent(register(t), key -> new Dial(t.offset(), reach));
          dials.get(register(t)).follow(t.offset(), reach);
        });
    oddsStopped = false;
    changed.run();
  }

  /** Takes the next thread in hand, or the one before. */
  void next(int by) {
    List<ThreadAnswer> threads = threads();
    for (int i = 0; i < threads.size(); i++) {
      if (threads.get(i).hole().equals(hole)) {
        pick(threads.get(Math.floorMod(i + by, threads.size())).hole());
        return;
      }
    }
  }

  /** Threads of one register share its dial, unless the program enters it itself elsewhere. */
  private static String register(WearTrial trial) {
    return trial.offset().register()
        + trial.offset().setBy().map(s -> " " + s.place().line()).orElse("");
  }

  /** The dial of the thread in hand; empty when no register moves it. */
  Optional<Dial> dial() {
    return trial.map(t -> dials.get(register(t)));
  }

  /** Something with the dial: what is shown follows. */
  void turned() {
    oddsStopped = false;
    changed.run();
  }

  /** What the dial asks for. */
  Optional<Entry> entry() {
    return base.map(b -> new Entry(b, trial, dial().map(Dial::entry).orElse(0.0)));
  }

  private Shown look() {
    Optional<Entry> asked = entry();
    if (asked.isEmpty()) {
      return Shown.NOTHING;
    }
    Entry e = asked.get();
    if (e.isSheets()) {
      return new Shown(base, e.wear(), true, true);
    }
    var whole = answers.whole().filter(t -> t.question().is(e));
    if (whole.isPresent()) {
      return new Shown(whole.get().answer().thread(), e.wear(), true, true);
    }
    var quick = answers.quick().filter(t -> t.question().base().equals(e.base()));
    if (quick.isPresent()) {
      Entry of = quick.get().question();
      return new Shown(quick.get().answer(), of.wear(), false, of.is(e));
    }
    return new Shown(base, e.trial().orElseThrow().offset().now(), true, false);
  }

  /** What is shown of the thread in hand. */
  Shown shown() {
    return shown;
  }

  private boolean isWhole(Entry e) {
    return e.isSheets() || answers.whole().filter(t -> t.question().is(e)).isPresent();
  }

  /** The last whole answer of the thread in hand; empty while there is none. */
  private Optional<ThreadAnswer> whole() {
    Optional<Entry> e = entry();
    if (e.isEmpty() || e.get().isSheets()) {
      return base;
    }
    var told = answers.whole().filter(t -> t.question().base().equals(e.get().base()));
    return told.isPresent() ? told.get().answer().thread() : base;
  }

  /** What gauges do on the path as moved, by the last whole answer. */
  Optional<RealAnswer> real() {
    return whole().flatMap(ThreadAnswer::real);
  }

  /** The entry that belongs to (mm). */
  double realEntry() {
    Optional<Entry> e = entry();
    if (e.isEmpty() || e.get().isSheets()) {
      return e.map(Entry::wear).orElse(0.0);
    }
    var told = answers.whole().filter(t -> t.question().base().equals(e.get().base()));
    return told.isPresent()
        ? told.get().question().wear()
        : e.get().trial().orElseThrow().offset().now();
  }

  /** The wall of the last whole answer, if it was read. */
  Optional<WallShape> shape() {
    return answers
        .whole()
        .filter(t -> base.isPresent() && t.question().base().equals(base.get()))
        .flatMap(t -> t.answer().shape());
  }

  /** Whether gauges are screwed in for the entry of the dial, in the background. */
  boolean isGauging() {
    return isStale() || (entry().isPresent() && !isWhole(entry().get()));
  }

  Plug go() {
    return go;
  }

  Plug noGo() {
    return noGo;
  }

  private void askOdds(Entry e) {
    if (answers.oddsOf().filter(of -> of.is(e)).isEmpty()) {
      answers.askOdds(e, gauged.orElseThrow().request().setup().scatter());
    }
  }

  /** The last odds of the thread in hand. */
  Optional<ThreadOdds> odds() {
    return oddsOf().flatMap(of -> answers.odds());
  }

  /** The entry that the last odds belong to. */
  Optional<Entry> oddsOf() {
    return answers.oddsOf().filter(of -> base.isPresent() && of.base().equals(base.get()));
  }

  /** Whether the odds are those of the dial's entry. */
  boolean hasOdds() {
    return entry().isPresent() && oddsOf().filter(of -> of.is(entry().get())).isPresent();
  }

  boolean isReckoning() {
    return answers.isReckoning();
  }

  /** Share of the odds under way that is done (1). */
  double oddsShare() {
    return answers.oddsShare();
  }

  boolean oddsStopped() {
    return oddsStopped;
  }

  /** Stops the odds under way, or reckons them after all. */
  void stopOdds() {
    oddsStopped = !oddsStopped;
    if (oddsStopped) {
      answers.stopOdds();
    }
    changed.run();
  }

  /** Why the last answer did not come: the tool failed. */
  Optional<String> failure() {
    return answers.failure();
  }

  @Override
  public void close() {
    answers.close();
  }
}
