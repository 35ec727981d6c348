package flankfit.window;

import flankfit.gauge.OffsetAdvice;
import flankfit.picture.Figures;
import flankfit.setup.RadiusSetting;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a hand does on the Gauge sheet: turns the dial, screws gauges in, tells what they said. */
final class GaugeSide implements AutoCloseable {
  private final Bench bench;
  private final Said said;
  private final SheetFile file;
  private final Course course;
  private final Look look;
  private final Desk desk;
  private final Runnable changed;
  private Picture picture = Picture.LADDER;
  private volatile boolean closed;

  /** What the middle of the sheet shows. */
  enum Picture {
    LADDER("ladder"),
    SECTION("section");

    private final String word;

    Picture(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * Nothing lies on the bench yet.
   *
   * @param changed told of every change of what is seen
   * @param wake called on any thread when something has come
   */
  GaugeSide(Course course, Look look, Desk desk, Runnable changed, Runnable wake) {
    this.course = course;
    this.look = look;
    this.desk = desk;
    this.changed = changed;
    Runnable open =
        () -> {
          if (!closed) {
            wake.run();
          }
        };
    bench = new Bench(course, changed, open);
    said = new Said(bench, open);
    file = new SheetFile(open);
  }

  /**
   * Takes what has come since.
   *
   * @param isSeen whether the sheet is shown
   */
  boolean follow(boolean isSeen) {
    boolean came = bench.follow(isSeen);
    boolean advised = said.follow(course.loaded().input().file());
    if (advised) {
      changed.run();
    }
    boolean told = file.tell(desk);
    return told || came || advised;
  }

  Bench bench() {
    return bench;
  }

  Said said() {
    return said;
  }

  Picture picture() {
    return picture;
  }

  /** Shows the ladder, or the section through the flank. */
  void otherPicture() {
    picture = picture == Picture.LADDER ? Picture.SECTION : Picture.LADDER;
    changed.run();
  }

  boolean hasDial() {
    return bench.dial().isPresent();
  }

  /** Turns the dial by increments so that the thread's pitch diameter grows, or shrinks. */
  void step(int larger) {
    bench
        .dial()
        .ifPresent(
            d -> {
              if (!d.step(d.growsThread() ? larger : -larger)) {
                desk.notice("the dial goes no further");
              }
              bench.turned();
            });
  }

  /** Sets the dial to what is advised for the middle. */
  void toAdvised() {
    bench
        .dial()
        .ifPresent(
            d -> {
              if (d.offset().hasWindow()) {
                d.to(d.offset().keyToMiddle());
                bench.turned();
              } else {
                desk.notice("no entry suits both gauges: there is none to advise");
              }
            });
  }

  /** Sets the dial to what the gauges' answers advise. */
  void toBelieved() {
    said.advice()
        .flatMap(a -> a.key())
        .ifPresent(
            key ->
                bench
                    .dial()
                    .ifPresent(
                        d -> {
                          d.to(key.wear());
                          bench.turned();
                        }));
  }

  /** Sets the dial back to the entry of the sheet. */
  void home() {
    bench
        .dial()
        .ifPresent(
            d -> {
              d.home();
              bench.turned();
            });
  }

  void undo() {
    bench
        .dial()
        .ifPresent(
            d -> {
              desk.notice(d.undo() ? "" : "nothing to undo");
              bench.turned();
            });
  }

  void redo() {
    bench
        .dial()
        .ifPresent(
            d -> {
              desk.notice(d.redo() ? "" : "nothing to do again");
              bench.turned();
            });
  }

  /** Takes an entry that was typed, in the unit shown or with its own. */
  void typed(String text) {
    Optional<Dial> dial = bench.dial();
    if (dial.isEmpty()) {
      return;
    }
    OptionalDouble wanted = length(text, look.unit());
    if (wanted.isEmpty()) {
      desk.problems(
          List.of(
              new Problem(
                  "\"" + text + "\" is no wear entry",
                  "",
                  "a length is wanted, in " + look.unit().symbol() + " or with its unit",
                  "write, say, -0.012 or -0.0005 in")));
      return;
    }
    Dial d = dial.get();
    double value = wanted.getAsDouble();
    boolean exact = d.to(value);
    if (!exact) {
      desk.notice("the dial goes from " + length(d.least()) + " to " + length(d.most()));
    } else if (Math.abs(d.entry() - value) > 1e-9) {
      desk.notice("the control takes steps of " + length(d.offset().increment()));
    }
    bench.turned();
  }

  private static OptionalDouble length(String text, LengthUnit unit) {
    String plain = text.strip().replace('−', '-');
    if (plain.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)")) {
      return OptionalDouble.of(unit.toMillimetres(Double.parseDouble(plain)));
    }
    return Lengths.parse(plain);
  }

  private String length(double millimetres) {
    return Figures.lengthWithUnit(millimetres, look.unit());
  }

  /** Puts the entry of the dial into the setup sheet. */
  void put() {
    Optional<Dial> dial = bench.dial();
    if (dial.isEmpty()) {
      return;
    }
    OffsetAdvice offset = dial.get().offset();
    String entry = offset.register() + " wear " + length(dial.get().entry());
    String sheet = course.loaded().input().setup().file();
    if (!dial.get().isMoved()) {
      desk.notice("the dial stands at the entry of the sheet: there is nothing to put in");
    } else if (offset.setBy().isPresent()) {
      desk.problems(List.of(byProgram(offset, offset.setBy().get(), dial.get().entry())));
    } else if (sheet.isEmpty()) {
      desk.problems(
          List.of(
              new Problem(
                  entry + " has no sheet to stand in",
                  course.loaded().input().file(),
                  "there is no setup sheet beside the program",
                  "write NAME.setup.toml beside it, with [offsets]")));
    } else {
      file.put(
          Path.of(sheet),
          Integer.parseInt(offset.register().substring(1)),
          dial.get().entry(),
          entry);
    }
  }

  private Problem byProgram(OffsetAdvice offset, RadiusSetting set, double entry) {
    return new Problem(
        offset.register() + " is not put into the sheet",
        set.place().file() + ", line " + set.place().line(),
        "the program enters it itself by G10 and would overwrite the sheet",
        "write the value of " + set.word() + " there as " + length(entry));
  }

  /** Begins to type a wear entry. */
  void askForEntry() {
    desk.type(Desk.Over.WEAR);
  }

  /** Begins to tell what a gauge said. */
  void askForSeen() {
    said.forgive();
    desk.type(Desk.Over.SEEN);
  }

  /** Takes what was typed, or what was picked while nothing was typed. */
  void seen(String typed, int chosen) {
    String text =
        typed.isBlank()
            ? Said.CHOICES.get(Math.min(chosen, Said.CHOICES.size() - 1)).typed()
            : typed;
    if (said.typed(text, look.unit())) {
      desk.close();
    }
    changed.run();
  }

  void takeBack() {
    desk.notice(said.takeBack() ? "the last thing seen is taken back" : "nothing was seen yet");
    changed.run();
  }

  void nextPart() {
    said.notes().nextPart();
    desk.notice("what comes now was seen on part " + said.notes().part());
    changed.run();
  }

  /** Turns a gauge in, or out for negative turns. */
  void twist(Plug plug, double turns) {
    if (plug.travel().isEmpty()) {
      desk.notice("no gauge can be tried in this thread yet");
    }
    plug.twist(turns);
    changed.run();
  }

  /** Turns a gauge in until it goes no further. */
  void drive(Plug plug) {
    plug.toEnd();
    changed.run();
  }

  @Override
  public void close() {
    closed = true;
    bench.close();
    said.close();
  }
}
