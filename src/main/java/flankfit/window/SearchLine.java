package flankfit.window;

import imgui.ImDrawList;
import imgui.ImGui;

/** The line above the program in which a search is typed, and how much it found. */
final class SearchLine {
  private final ViewState state;
  private String told = "";
  private int shownCount = -1;
  private int shownOrdinal = -1;
  private boolean shownGoing;

  SearchLine(ViewState state) {
    this.state = state;
  }

  private boolean isTyped() {
    return state.desk().over() == Desk.Over.SEARCH;
  }

  /** Its height; 0 while nothing is searched. */
  float height(Paper paper) {
    return isTyped() || state.search().isOn() ? 30 * paper.scale() : 0;
  }

  void draw(Paper paper, float x, float y) {
    if (height(paper) == 0) {
      return;
    }
    float s = paper.scale();
    ImDrawList list = ImGui.getWindowDrawList();
    word();
    int soft = PaperStyle.ink(paper.palette().softInk());
    list.addText(x + 20 * s, y + 8 * s, soft, isTyped() ? "find" : "found");
    if (isTyped()) {
      EntryLine.draw(list, paper, x + 66 * s, y + 8 * s, state.desk().entry(), "text, then Enter");
    }
    list.addText(x + (isTyped() ? 230 : 66) * s, y + 8 * s, soft, told);
  }

  private void word() {
    Search search = state.search();
    int count = search.count();
    int ordinal = search.ordinal();
    boolean going = search.isGoing();
    if (count == shownCount && ordinal == shownOrdinal && going == shownGoing) {
      return;
    }
    shownCount = count;
    shownOrdinal = ordinal;
    shownGoing = going;
    if (!search.isOn()) {
      told = "";
    } else if (count == 0) {
      told = going ? "…" : "nothing";
    } else {
      told =
          (ordinal > 0 ? LoadWords.number(ordinal) + " of " : "")
              + LoadWords.count(count, "line")
              + (going ? " so far" : ", n N go on");
    }
  }
}
