package flankfit.window;

import flankfit.finding.Finding;
import flankfit.lesson.Question;
import flankfit.lesson.Step;
import flankfit.lesson.Told;
import flankfit.lesson.Wording;
import flankfit.motion.ModalState.Distance;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImFont;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;
import java.util.List;
import java.util.Optional;

/**
 * Both tellings of the block at the position, side by side below scene and program: the plain
 * sentence large, the words of each mode, what they come to in figures.
 */
final class TellingPanel {
  private static final int EDGE = 28;
  private static final int MOST_FINDINGS = 3;

  /** Width of a telling below which not all of its heading fits (logical px). */
  private static final int NARROW = 340;

  /** Height of the panel from which on words are written large (logical px). */
  private static final int LARGE = 200;

  private final ViewState state;
  private final ImVec2 size = new ImVec2();
  private long shownChange = -1;
  private LengthUnit shownUnit = LengthUnit.MILLIMETRE;
  private List<String> absolute = List.of();
  private List<String> incremental = List.of();
  private List<String> notes = List.of();
  private String where = "";
  private String tale = "";
  private Paper paper;
  private float s;
  private float y;

  TellingPanel(ViewState state) {
    this.state = state;
  }

  private LessonSide lesson() {
    return state.lesson();
  }

  private void word() {
    if (shownChange == lesson().changes() && shownUnit == state.unit()) {
      return;
    }
    shownChange = lesson().changes();
    shownUnit = state.unit();
    LessonWords words = new LessonWords(shownUnit);
    tale = lesson().accident().map(a -> a.tale(shownUnit)).orElse("");
    if (lesson().told().isEmpty()) {
      return;
    }
    Told told = lesson().told().get();
    Step step = told.step();
    absolute = words.absolute(step);
    incremental = words.incremental(step);
    notes = words.notes(step);
    String since =
        told.modeSince()
            .filter(place -> place.line() != step.place().line())
            .map(place -> ", in force since line " + LoadWords.number(place.line()))
            .orElse("");
    where =
        "line "
            + LoadWords.number(step.place().line())
            + ", block "
            + LoadWords.number(step.block())
            + "  ·  "
            + (step.mode() == Distance.ABSOLUTE ? "absolute, G90" : "incremental, G91")
            + since;
  }

  void draw(Paper now) {
    paper = now;
    s = paper.scale();
    word();
    Layout layout = paper.layout();
    float top = layout.height() - layout.footer() - layout.tellings();
    Panels.begin("tellings", 0, top, layout.width(), layout.tellings());
    Panels.rule(ImGui.getWindowDrawList(), paper.palette(), 0, top, layout.width(), s);
    ImGui.setCursorPos(0, 2 * s);
    ImGui.beginChild("telling", layout.width() - 4 * s, layout.tellings() - 4 * s);
    y = 7 * s;
    if (lesson().told().isEmpty()) {
      text(paper.style().body(), EDGE * s, width(), lesson().missing(), soft());
    } else {
      tell(lesson().told().get());
    }
    ImGui.endChild();
    ImGui.end();
  }

  private float width() {
    return paper.layout().width() - 2 * EDGE * s - 12 * s;
  }

  private int soft() {
    return PaperStyle.ink(paper.palette().softInk());
  }

  private int ink() {
    return PaperStyle.ink(paper.palette().ink());
  }

  private int hue(Distance mode) {
    return PaperStyle.ink(
        mode == Distance.ABSOLUTE
            ? paper.palette().absoluteText()
            : paper.palette().incrementalText());
  }

  private void tell(Told told) {
    text(paper.style().small(), EDGE * s, width(), where, soft());
    for (Told before : lesson().before()) {
      String sentence =
          "before it, line "
              + before.step().place().line()
              + "  "
              + before.step().text().strip()
              + "  ·  "
              + before.step().plain();
      text(paper.style().small(), EDGE * s, width(), sentence, soft());
    }
    y += 3 * s;
    if (lesson().asks()) {
      ask();
    }
    if (!lesson().isHiding()) {
      text(paper.style().title(), EDGE * s, width(), told.step().plain(), ink());
    }
    y += 4 * s;
    forgotten();
    columns(told);
    y += 4 * s;
    if (!lesson().isHiding()) {
      for (String note : notes) {
        text(paper.style().small(), EDGE * s, width(), note, soft());
      }
    }
  }

  private void ask() {
    Optional<Question> question = lesson().question();
    if (question.isEmpty()) {
      text(
          paper.style().strong(),
          EDGE * s,
          width(),
          lesson().isThinking()
              ? "looking for a question …"
              : "Say it before you look: where does this block lead?  Enter tells",
          ink());
      return;
    }
    text(paper.style().strong(), EDGE * s, width(), question.get().question(), ink());
    if (lesson().isHiding()) {
      text(
          paper.style().small(),
          EDGE * s,
          width(),
          "question " + lesson().questionOf() + "  ·  Enter shows the answer  ·  Tab asks another",
          soft());
    } else {
      text(paper.style().title(), EDGE * s, width(), "■  " + question.get().answer(), ink());
    }
    y += 2 * s;
  }

  /** What the forgotten word does. */
  private void forgotten() {
    if (!lesson().isForgetting()) {
      return;
    }
    int alarm = PaperStyle.ink(paper.palette().alarm());
    Optional<Accident> accident = lesson().accident();
    if (accident.isEmpty()) {
      text(paper.style().body(), EDGE * s, width(), lesson().accidentMissing(), soft());
      return;
    }
    Accident now = accident.get();
    text(paper.style().strong(), EDGE * s, width(), "▲  " + now.headline() + ": " + tale, alarm);
    if (now.raised().isEmpty()) {
      text(paper.style().small(), EDGE * s, width(), "no finding tells of it", soft());
    }
    for (int i = 0; i < Math.min(MOST_FINDINGS, now.raised().size()); i++) {
      Finding finding = now.raised().get(i);
      String more =
          i == MOST_FINDINGS - 1 && now.raised().size() > MOST_FINDINGS
              ? "  (and " + (now.raised().size() - MOST_FINDINGS) + " more)"
              : "";
      text(
          paper.style().small(),
          EDGE * s,
          width(),
          FindingMarks.sign(finding.severity())
              + " "
              + finding.code().name()
              + (finding.place().line() > 0 ? "  line " + finding.place().line() : "")
              + "  "
              + finding.what()
              + more,
          PaperStyle.ink(FindingMarks.ink(finding.severity(), paper.palette())));
    }
    y += 4 * s;
  }

  private void columns(Told told) {
    boolean both = lesson().shown() == LessonSide.Shown.BOTH;
    float gap = 36 * s;
    float wide = both ? (width() - gap) / 2 : width();
    float top = y;
    float lowest = y;
    float x = EDGE * s;
    if (lesson().shown().has(Distance.ABSOLUTE)) {
      column(told, Distance.ABSOLUTE, x, wide);
      lowest = y;
      x += wide + gap;
    }
    if (lesson().shown().has(Distance.INCREMENTAL)) {
      y = top;
      column(told, Distance.INCREMENTAL, x, wide);
      lowest = Math.max(lowest, y);
    }
    y = lowest;
  }

  private void column(Told told, Distance mode, float x, float wide) {
    boolean written = told.step().mode() == mode;
    boolean isAbsolute = mode == Distance.ABSOLUTE;
    int hue = hue(mode);
    ImGui.setCursorPos(x, y);
    ImDrawList list = ImGui.getWindowDrawList();
    float left = ImGui.getCursorScreenPosX();
    float top = ImGui.getCursorScreenPosY();
    // The telling that is written has the heavy line: not told by the hue alone.
    list.addRectFilled(left, top, left + wide, top + (written ? 4 : 1) * s, hue);
    y += 8 * s;
    String counts =
        isAbsolute ? "from the zero of " + told.step().zero() : "from where the tool stands";
    float head = y;
    text(paper.style().strong(), x, wide, isAbsolute ? "absolute" : "incremental", hue);
    ImGui.setCursorPos(x + 98 * s, head + s);
    String mark = written ? "■ as written" : "";
    boolean narrow = wide < NARROW * s;
    row(paper.style().small(), narrow && written ? mark : counts + "   " + mark, soft());
    y += 2 * s;
    Wording wording = told.in(mode);
    if (lesson().isHiding() && !written) {
      text(paper.style().title(), x, wide, "?", hue);
      return;
    }
    if (!wording.isSaid()) {
      text(paper.style().strong(), x, wide, "cannot be said so", ink());
      text(paper.style().body(), x, wide, wording.whyNot(), soft());
    } else if (wording.words().isEmpty()) {
      text(paper.style().body(), x, wide, "no words", soft());
    } else {
      words(wording, x, wide, hue);
    }
    if (!lesson().isHiding() && wording.isSaid()) {
      for (String figures : isAbsolute ? absolute : incremental) {
        text(paper.style().body(), x, wide, figures, hue);
      }
    }
  }

  /** The words one after the other; those that read otherwise in the other mode stand out. */
  private void words(Wording wording, float x, float wide, int hue) {
    boolean large = paper.layout().tellings() >= LARGE * s;
    ImFont font = large ? paper.style().words() : paper.style().listing();
    ImGui.pushFont(font);
    float high = (large ? 31 : 20) * s;
    float at = x;
    for (Wording.Word word : wording.words()) {
      String text = word.inForce() ? "(" + word.text() + ")" : word.text();
      ImGui.calcTextSize(size, text);
      if (at > x && at + size.x > x + wide) {
        at = x;
        y += high + 4 * s;
      }
      ImGui.setCursorPos(at, y);
      if (word.differs()) {
        ImDrawList list = ImGui.getWindowDrawList();
        float left = ImGui.getCursorScreenPosX();
        float top = ImGui.getCursorScreenPosY();
        list.addRectFilled(
            left - 3 * s,
            top,
            left + size.x + 3 * s,
            top + high,
            PaperStyle.ink(paper.palette().shade()));
        list.addRectFilled(
            left - 3 * s, top + high - 2 * s, left + size.x + 3 * s, top + high, hue);
      }
      int colour = word.differs() && !word.inForce() ? hue : word.differs() ? soft() : ink();
      ImGui.pushStyleColor(ImGuiCol.Text, colour);
      ImGui.textUnformatted(text);
      ImGui.popStyleColor();
      at += size.x + 14 * s;
    }
    ImGui.popFont();
    y += high + 7 * s;
  }

  private static void row(ImFont font, String text, int colour) {
    ImGui.pushFont(font);
    ImGui.pushStyleColor(ImGuiCol.Text, colour);
    ImGui.textUnformatted(text);
    ImGui.popStyleColor();
    ImGui.popFont();
  }

  /** A text in rows as wide as there is room; goes on below it. */
  private void text(ImFont font, float x, float wide, String text, int colour) {
    ImGui.pushFont(font);
    ImGui.pushStyleColor(ImGuiCol.Text, colour);
    ImGui.setCursorPos(x, y);
    Panels.wrapped(text, wide);
    y = ImGui.getCursorPosY() - 2 * s;
    ImGui.popStyleColor();
    ImGui.popFont();
  }
}
