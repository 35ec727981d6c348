package flankfit.window;

import flankfit.picture.View;
import java.util.List;
import java.util.Random;

/** Does at random what a hand does with the window. */
final class SoakHand {
  private static final List<View> VIEWS = List.of(View.values());

  private final Random random;

  SoakHand(Random random) {
    this.random = random;
  }

  /** Does one thing. Most of what it does is scrubbing. */
  void act(ViewState state) {
    switch (random.nextInt(24)) {
      case 0 -> sheet(state);
      case 1, 2, 3 -> state.gauge().step(random.nextInt(21) - 10);
      case 4 -> state.gauge().otherPicture();
      case 5 -> plugs(state);
      case 6 -> state.viewpoint().look(VIEWS.get(random.nextInt(VIEWS.size())));
      case 7 -> state.viewpoint().orbit(random.nextInt(80) - 40, random.nextInt(40) - 20);
      case 8 -> state.viewpoint().zoom(random.nextInt(5) - 2, 300, 200);
      case 9 -> state.viewpoint().fit(random.nextBoolean());
      case 10 -> rarely(state);
      case 11 -> lesson(state);
      case 12 -> state.course().stepForward();
      case 13 -> state.course().stepBack();
      default -> state.toShareOfTime(random.nextDouble());
    }
  }

  private void sheet(ViewState state) {
    List<SheetName> sheets = WindowKeys.SHEETS;
    state.sheet(sheets.get(random.nextInt(sheets.size())));
  }

  private void plugs(ViewState state) {
    Bench bench = state.gauge().bench();
    Plug plug = random.nextBoolean() ? bench.go() : bench.noGo();
    if (random.nextInt(4) == 0) {
      state.gauge().drive(plug);
    } else {
      state.gauge().twist(plug, random.nextDouble() - 0.4);
    }
  }

  private void rarely(ViewState state) {
    switch (random.nextInt(8)) {
      case 0 -> state.otherTheme();
      case 1 -> state.otherUnit();
      case 2 -> state.larger(random.nextBoolean() ? 1 : -1);
      case 3 -> state.toggleExplanation();
      case 4 -> state.viewpoint().unroll();
      case 5 -> state.toggleHelp();
      case 6 -> state.player().toggle();
      default -> state.gauge().home();
    }
  }

  private void lesson(ViewState state) {
    switch (random.nextInt(5)) {
      case 0 -> state.lesson().toggleAsking();
      case 1 -> state.lesson().answer();
      case 2 -> state.lesson().toggleForgetting();
      case 3 -> state.lesson().otherWord();
      default -> state.lesson().otherShown();
    }
  }

  /** Leaves the window as it was at the beginning, so that looks at it compare. */
  void tidy(ViewState state) {
    state.desk().close();
    state.player().playback().pause();
    state.plainSize();
    state.gauge().home();
    while (state.lesson().leave()) {
      // One thing at a time: the word that is left out, then asking.
      state.desk().notice("");
    }
    // How much was cut is chance, and kept for the next look at it.
    state.metal().bench().forget();
    state.viewpoint().look(View.ISO);
    state.sheet(WindowKeys.SHEETS.get(0));
    state.toShareOfTime(0);
  }
}
