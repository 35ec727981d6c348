package flankfit.metal;

import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.solid.MeshBody;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Stock and cuts of one program.
 *
 * @param stock what is there before the first move
 * @param cuts the moves that take metal away
 * @param tree the same by place
 * @param assumptions what was assumed, a sentence each
 */
record Workpiece(StockBody stock, Cuts cuts, MoveTree tree, List<String> assumptions) {
  Workpiece {
    assumptions = List.copyOf(assumptions);
  }

  /** Stock and cuts of a sheet. */
  static Workpiece of(Tape tape, SetupSheet sheet, Stock stock, Optional<MeshBody> mesh) {
    Cuts cuts = Cuts.of(tape, sheet::tool);
    MoveTree tree = MoveTree.of(cuts);
    List<String> assumptions = new ArrayList<>();
    cuts.unknown()
        .forEach(
            (number, why) -> assumptions.add("tool " + number + " takes no metal away: " + why));
    for (Tool tool : sheet.tools()) {
      tell(tool, assumptions);
    }
    List<Hole> there = new ArrayList<>();
    List<Hole> bosses = new ArrayList<>();
    for (Hole hole : sheet.holes()) {
      if (hole.boss()) {
        boss(hole, bosses, assumptions);
      } else if (isThere(hole, stock, cuts, tree, assumptions)) {
        there.add(hole);
      }
    }
    StockBody body = SheetStock.of(stock, mesh, there);
    return new Workpiece(
        bosses.isEmpty() ? body : ShoulderedStock.of(body, bosses), cuts, tree, assumptions);
  }

  private static void boss(Hole boss, List<Hole> bosses, List<String> assumptions) {
    String name = "boss \"" + boss.name() + "\": ";
    boolean there = boss.madeBy().filter(by -> by == Hole.MadeBy.STOCK).isPresent();
    if (there && boss.depth().isPresent()) {
      bosses.add(boss);
      assumptions.add(name + "the stock stands free round it as deep as it is stated");
    } else if (there) {
      assumptions.add(
          name + "its depth is not stated, so the stock stands as if it were not there");
    } else {
      assumptions.add(name + "only moves of the program shape it");
    }
  }

  private static void tell(Tool tool, List<String> assumptions) {
    if (tool.kind() == Tool.Kind.TAP) {
      boolean pitch = tool.teeth().flatMap(Tool.Teeth::pitch).isPresent();
      assumptions.add(
          "tool "
              + tool.number()
              + (pitch
                  ? ": the tap leaves a smooth hole on its pitch diameter"
                  : ": the pitch of the tap is not stated, so it leaves a smooth hole of its whole"
                      + " diameter")
              + ", its thread is not modelled");
    }
    if (tool.kind() == Tool.Kind.BORING_BAR) {
      assumptions.add("tool " + tool.number() + ": the boring bar is the circle of its tip");
    }
  }

  private static boolean isThere(
      Hole hole, Stock stock, Cuts cuts, MoveTree tree, List<String> assumptions) {
    if (hole.madeBy().isPresent()) {
      return hole.madeBy().get() == Hole.MadeBy.STOCK;
    }
    boolean made = isMade(hole, stock, cuts, tree);
    assumptions.add(
        "hole \""
            + hole.name()
            + "\": made-by not stated: "
            + (made ? "a move of the program makes it" : "no move makes it, so the stock has it"));
    return !made;
  }

  /** Whether a tool that does not cut threads passes over the middle of a hole. */
  private static boolean isMade(Hole hole, Stock stock, Cuts cuts, MoveTree tree) {
    double bottom = hole.top() - hole.depth().orElse(hole.top() - stock.bottom());
    double middle = (hole.top() + bottom) / 2;
    MoveList near = new MoveList();
    tree.collect(hole.x(), hole.y(), middle, 0, Integer.MAX_VALUE, near);
    SweptCut cut = new SweptCut();
    for (int i = 0; i < near.size(); i++) {
      Tool tool = cuts.body(near.get(i)).orElseThrow().tool();
      boolean threads = tool.kind() == Tool.Kind.THREAD_MILL || tool.kind() == Tool.Kind.TAP;
      cuts.load(near.get(i), cut);
      if (!threads && cut.holds(hole.x(), hole.y(), middle)) {
        return true;
      }
    }
    return false;
  }

  /** Side of the cells that tools and stock want at the finest (mm). */
  double finest() {
    double finest = stock.cell();
    for (int move : tree.moves()) {
      finest = Math.min(finest, cuts.cell(move));
    }
    return finest;
  }
}
