package flankfit.window;

import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.List;

/** Why a program has no metal to show, and what to write so that it has. */
final class MissingStock {
  private MissingStock() {}

  static String heading(Loaded loaded) {
    if (loaded.stage().isGoing()) {
      return "the metal comes when the program is read to its end…";
    }
    return switch (loaded.stage()) {
      case NOTHING -> "no program is open";
      case STOPPED, FAILED -> "no metal: " + loaded.told();
      default -> "there is no metal to show yet";
    };
  }

  /** What is lacking, the first thing to give first. */
  static List<MissingThread.Lack> of(Loaded loaded) {
    List<MissingThread.Lack> lacks = new ArrayList<>();
    if (loaded.stage() != Stage.DONE) {
      return lacks;
    }
    SetupSheet sheet = loaded.input().setup();
    if (sheet.file().isEmpty()) {
      lacks.add(
          new MissingThread.Lack(
              "the setup sheet",
              "write a text file beside the program, named like it with the ending .setup.toml;"
                  + " it tells stock, holes, tools and registers",
              ""));
    }
    if (sheet.stock().isEmpty()) {
      lacks.add(
          new MissingThread.Lack(
              "the stock",
              "say in the sheet how large it is, and where its program zero lies: so far from its"
                  + " lower corner",
              """
              [stock]
              shape = "block"
              size  = [80.0, 60.0, 40.0]
              zero  = [40.0, 30.0, 40.0]"""));
    }
    if (sheet.tools().isEmpty()) {
      lacks.add(
          new MissingThread.Lack(
              "the tools",
              "a tool that the sheet does not know takes no metal away",
              """
              [[tool]]
              number       = 1
              kind         = "end mill"
              diameter     = 10.0
              flutes       = 4
              flute-length = 22.0"""));
    }
    if (loaded.input().tape().size() == 0) {
      lacks.add(new MissingThread.Lack("moves", "the program moves nothing", ""));
    }
    return lacks;
  }
}
