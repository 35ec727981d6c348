package flankfit.window;

import java.util.List;
import java.util.Optional;

/** All panels of the window round and over the sheet that is shown. */
final class WindowPanels {
  private final ViewState state;
  private final HeaderPanel header;
  private final ListingPanel listing;
  private final StatePanel words;
  private final BlockPanel block;
  private final BandPanel band;
  private final FooterPanel footer;
  private final ChancePanel chance;
  private final SeenPanel seen;
  private final HelpPanel help;
  private final ProblemPanel problems;
  private final WelcomePanel welcome;
  private final PalettePanel paletteRows;
  private final Palette palette;

  WindowPanels(ViewState state, Actions actions, List<SheetName> sheets) {
    this.state = state;
    palette = new Palette(state, actions);
    header = new HeaderPanel(state, sheets);
    listing = new ListingPanel(state);
    words = new StatePanel(state);
    block = new BlockPanel(state);
    band = new BandPanel(state);
    footer = new FooterPanel(state);
    chance = new ChancePanel(state);
    seen = new SeenPanel(state);
    help = new HelpPanel(state, actions);
    problems = new ProblemPanel(state);
    welcome = new WelcomePanel(state);
    paletteRows = new PalettePanel(state, palette);
  }

  /** Draws a sheet's words, then the panels round and over it. */
  void draw(Paper paper, Optional<Sheet> sheet) {
    boolean atWork = !state.desk().isWelcome();
    if (atWork && sheet.isPresent()) {
      sheet.get().words(paper);
    }
    header.draw(paper.style(), paper.layout(), paper.palette());
    if (atWork) {
      listing.draw(paper);
      if (state.sheet() == SheetName.GAUGE) {
        chance.draw(paper);
      } else if (state.sheet() != SheetName.LESSON) {
        words.draw(paper.style(), paper.layout(), paper.palette());
        block.draw(paper.style(), paper.layout(), paper.palette());
      }
      band.draw(paper.style(), paper.layout(), paper.palette());
    }
    footer.draw(paper.style(), paper.layout(), paper.palette());
    welcome.draw(paper);
    problems.draw(paper);
    help.draw(paper.style(), paper.layout(), paper.palette());
    paletteRows.draw(paper);
    seen.draw(paper);
  }

  /** What the block at the position meant. */
  BlockPanel block() {
    return block;
  }

  ProblemPanel problems() {
    return problems;
  }

  Palette palette() {
    return palette;
  }

  WelcomePanel welcome() {
    return welcome;
  }
}
