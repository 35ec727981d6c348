package flankfit.window;

import flankfit.finding.Finding;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.Text;
import flankfit.odds.Contributor;
import flankfit.odds.Estimate;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.Observation;
import flankfit.odds.OddsAnswer;
import flankfit.odds.PartObserved;
import flankfit.odds.ThreadOdds;
import flankfit.picture.Figures;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Below the program, on the Gauge sheet: what to key in, how likely the gauges pass, what they said
 * of parts and what that advises.
 */
final class ChancePanel {
  private static final int MOST_TOLD = 4;

  private final ViewState state;
  private final ImVec2 size = new ImVec2();

  ChancePanel(ViewState state) {
    this.state = state;
  }

  void draw(Paper paper) {
    if (state.sheet() != SheetName.GAUGE) {
      return;
    }
    float s = paper.scale();
    Layout layout = paper.layout();
    float x = layout.sceneWidth();
    float y = layout.header() + layout.listingHeight();
    Panels.begin("chance", x, y, layout.panel(), layout.stateHeight());
    Panels.rule(
        ImGui.getWindowDrawList(), paper.palette(), x + 20 * s, y, layout.panel() - 40 * s, s);
    ImGui.setCursorPos(20 * s, 10 * s);
    ImGui.beginChild("chances", layout.panel() - 26 * s, layout.stateHeight() - 12 * s);
    if (state.gauge().bench().base().isPresent()) {
      entries(paper);
      odds(paper);
      said(paper);
    }
    ImGui.endChild();
    ImGui.end();
  }

  private void head(Paper paper, String text) {
    ImGui.pushFont(paper.style().strong());
    Panels.wrapped(text);
    ImGui.popFont();
  }

  private void soft(Paper paper, String text) {
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().softInk()));
    Panels.wrapped(text);
    ImGui.popStyleColor();
  }

  /** A name and a figure that stands right-aligned, so that digits stand below digits. */
  private void row(Paper paper, String name, String figure, String more) {
    float s = paper.scale();
    ImGui.pushFont(paper.style().small());
    float left = ImGui.getCursorPosX();
    soft(paper, name);
    ImGui.sameLine();
    ImGui.calcTextSize(size, figure);
    ImGui.setCursorPosX(left + 252 * s - size.x);
    ImGui.textUnformatted(figure);
    if (!more.isEmpty()) {
      ImGui.sameLine(0, 10 * s);
      soft(paper, more);
    }
    ImGui.popFont();
  }

  private void entries(Paper paper) {
    Optional<Dial> dial = state.gauge().bench().dial();
    if (dial.isEmpty()) {
      head(paper, "no D register moves this thread");
      soft(paper, "the finishing pass runs without G41 or G42, or no gauge starts in it");
      return;
    }
    LengthUnit unit = state.unit();
    OffsetAdvice o = dial.get().offset();
    head(paper, o.register() + " wear, " + unit.symbol());
    String where = o.setBy().map(set -> "in line " + set.place().line()).orElse("in the sheet");
    row(paper, where, Figures.length(o.now(), unit), "");
    if (dial.get().isMoved()) {
      row(paper, "on the dial", Figures.length(dial.get().entry(), unit), "Ctrl+S puts it there");
    }
    if (o.hasWindow()) {
      row(paper, "advised: the middle", Figures.length(o.keyToMiddle(), unit), "K");
      row(paper, "last at which GO enters", Figures.length(o.keyToGoLimit(), unit), "");
      row(paper, "last at which NO-GO stops", Figures.length(o.keyToNoGoLimit(), unit), "");
    } else {
      soft(paper, "▲ no entry suits both gauges: mend the motion or the mill");
    }
    double effect = o.sensitivity() * o.increment();
    ImGui.pushFont(paper.style().small());
    soft(
        paper,
        Figures.length(o.increment(), unit)
            + " more makes the pitch diameter "
            + new GaugeWords(unit).fine(Math.abs(effect))
            + (effect < 0 ? " smaller" : " larger"));
    ImGui.popFont();
    ImGui.dummy(1, 8 * paper.scale());
  }

  private void odds(Paper paper) {
    Bench bench = state.gauge().bench();
    LengthUnit unit = state.unit();
    String entry =
        bench
            .oddsOf()
            .filter(of -> of.trial().isPresent())
            .map(of -> " with wear " + Figures.length(of.wear(), unit))
            .orElse("");
    if (bench.isReckoning()) {
      int percent = (int) Math.floor(100 * bench.oddsShare());
      head(paper, "odds: computing… " + (percent > 0 ? percent + " %" : "") + "  X stops it");
    } else if (bench.oddsStopped()) {
      head(paper, "odds: stopped; X reckons them");
    } else if (bench.hasOdds()) {
      head(paper, "odds" + entry);
    } else {
      head(paper, "odds: wait for the gauges");
    }
    Optional<ThreadOdds> odds = bench.odds();
    if (odds.isEmpty()) {
      boolean none = bench.hasOdds();
      soft(paper, none ? "no gauge can be tried in this thread" : " ");
      ImGui.dummy(1, 8 * paper.scale());
      return;
    }
    ImGui.pushFont(paper.style().small());
    if (!bench.hasOdds()) {
      soft(paper, "these are the odds" + entry + ":");
    }
    ThreadOdds o = odds.get();
    row(paper, "all gauges good", Text.percent(o.good()), "");
    row(paper, "GO refused", Text.percent(1 - o.goEnters()), "");
    row(paper, "NO-GO enters", Text.percent(1 - o.noGoStops()), "");
    if (o.plainGood() < 1) {
      row(paper, "a plain plug fails", Text.percent(1 - o.plainGood()), "");
    }
    soft(paper, "what scatters most");
    o.contributors().stream()
        .limit(MOST_TOLD)
        .filter(c -> c.share() > 0)
        .forEach(c -> contributor(paper, c));
    ImGui.popFont();
    ImGui.dummy(1, 8 * paper.scale());
  }

  private void contributor(Paper paper, Contributor c) {
    float s = paper.scale();
    row(paper, "  " + c.name(), Math.round(100 * c.share()) + " %", "");
    ImDrawList list = ImGui.getWindowDrawList();
    float y = ImGui.getItemRectMinY() + 5 * s;
    float room = 90 * s;
    float x = ImGui.getWindowPosX() + 264 * s;
    list.addRectFilled(
        x, y, x + (float) (room * c.share()), y + 6 * s, PaperStyle.ink(paper.palette().softInk()));
  }

  private void said(Paper paper) {
    Said said = state.gauge().said();
    List<PartObserved> parts = said.ofThread();
    if (parts.isEmpty()) {
      head(paper, "a gauge said…");
      ImGui.pushFont(paper.style().small());
      soft(paper, "O tells what a gauge did on a part; what to key in then comes here");
      ImGui.popFont();
      if (said.advice().isEmpty()) {
        return;
      }
    } else {
      head(paper, "gauges said");
      ImGui.pushFont(paper.style().small());
      for (PartObserved part : parts) {
        soft(paper, part(part));
      }
      ImGui.popFont();
    }
    if (said.isComing()) {
      soft(paper, "advice: computing…");
    }
    said.failure().ifPresent(f -> soft(paper, "▲ " + f));
    said.advice().ifPresent(a -> advice(paper, a));
    said.answer().ifPresent(a -> findings(paper, a));
  }

  private String part(PartObserved part) {
    String register = state.gauge().bench().dial().map(d -> d.offset().register() + " ").orElse("");
    return "part "
        + part.part()
        + ", "
        + register
        + Figures.length(part.wear(), state.unit())
        + ": "
        + part.observations().stream().map(this::words).collect(Collectors.joining("; "));
  }

  private String words(Observation seen) {
    if (seen instanceof Observation.Pitch pitch) {
      return "pitch Ø " + new GaugeWords(state.unit()).length(pitch.diameter());
    }
    if (seen instanceof Observation.Go go) {
      return go.enters() ? "GO went in" : "GO stopped" + turns(go.turns());
    }
    Observation.NoGo noGo = (Observation.NoGo) seen;
    if (noGo.turns().isPresent()) {
      return "NO-GO went" + turns(noGo.turns()).replace(" after", "");
    }
    return noGo.stops() ? "NO-GO stopped in time" : "NO-GO went in";
  }

  private static String turns(OptionalDouble turns) {
    return turns.isPresent()
        ? " after "
            + Lengths.plain(turns.getAsDouble())
            + (turns.getAsDouble() == 1 ? " turn" : " turns")
        : "";
  }

  private void advice(Paper paper, GaugingAdvice advice) {
    LengthUnit unit = state.unit();
    GaugeWords words = new GaugeWords(unit);
    ImGui.pushFont(paper.style().body());
    Panels.wrapped(
        "the next part as it is: "
            + chances(advice.asItIs())
            + "; pitch Ø "
            + estimate(words, advice.pitch())
            + " "
            + unit.symbol());
    advice
        .key()
        .ifPresent(
            key -> {
              ImGui.pushFont(paper.style().strong());
              Panels.wrapped(
                  "■ "
                      + (key.wear() == key.now() ? "leave " : "key in ")
                      + key.register()
                      + " wear "
                      + words.length(key.wear())
                      + (key.limited() ? ", the control's limit" : "")
                      + ": "
                      + chances(key.chances()));
              ImGui.popFont();
              if (key.wear() != key.now()) {
                soft(paper, "Ctrl+D turns the dial there");
              }
            });
    ImGui.popFont();
  }

  private static String chances(GaugingAdvice.Chances c) {
    return "GO enters "
        + Text.percent(c.goEnters())
        + ", NO-GO stops "
        + Text.percent(c.noGoStops())
        + ", all good "
        + Text.percent(c.good());
  }

  private static String estimate(GaugeWords words, Estimate e) {
    return words.fine(e.value()) + " ± " + words.fine(2 * e.deviation());
  }

  /** Contradictions, gauges that stopped for no reason, limits of the control. */
  private void findings(Paper paper, OddsAnswer answer) {
    for (Finding finding : answer.findings()) {
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().alarm()));
      Panels.wrapped("▲ " + finding.code().name() + "  " + finding.what());
      ImGui.popStyleColor();
      ImGui.pushFont(paper.style().small());
      soft(paper, finding.why() + "; " + finding.fix());
      ImGui.popFont();
    }
  }
}
