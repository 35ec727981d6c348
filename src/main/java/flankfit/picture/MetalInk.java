package flankfit.picture;

import flankfit.motion.Tape;
import flankfit.picture.BodyScene.KeyRow;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.solid.Crossing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Mirror colours of a body of metal (0xRRGGBB): what it is of, and which tool made its faces. */
public final class MetalInk {
  /** Aluminium, steel and what else there is, brass. */
  private static final int ALUMINIUM = 0xF4F5F5;

  private static final int STEEL = 0xC8C9CB;
  private static final int BRASS = 0xE3CF92;

  /** Colours of tools, of a published colour-blind-safe set (Okabe and Ito, 2008), lightened. */
  private static final int[] TOOLS = {
    0x7FB8DA, 0xF1CB7C, 0x7FCDB6, 0xE6B6CF, 0xF2EC9A, 0xEBA27F, 0xB7DCF5, 0xC0C0C0
  };

  private final Tape tape;
  private final SetupSheet sheet;

  /** Colours of a program's metal with the tools of a sheet. */
  public MetalInk(Tape tape, SetupSheet sheet) {
    this.tape = tape;
    this.sheet = sheet;
  }

  /** Of the metal itself. */
  public int metal() {
    String material = sheet.workpieceMaterial();
    if (material.startsWith("aluminium")) {
      return ALUMINIUM;
    }
    return material.startsWith("brass") || material.startsWith("bronze") ? BRASS : STEEL;
  }

  /** Of what a move made, by its tool, or of the stock's skin. */
  public int mirror(int maker) {
    return maker == Crossing.STOCK ? metal() : ofTool(tape.state(maker).tool());
  }

  /** Of a tool. */
  int ofTool(int number) {
    int place = 0;
    for (Tool tool : sheet.tools()) {
      if (tool.number() == number) {
        break;
      }
      place++;
    }
    return TOOLS[place % TOOLS.length];
  }

  /**
   * What the colours mean.
   *
   * @param numbers tools that made faces
   * @param byTool whether they have colours of their own
   */
  public List<KeyRow> key(Collection<Integer> numbers, boolean byTool) {
    List<KeyRow> rows = new ArrayList<>();
    String material = sheet.workpieceMaterial().isEmpty() ? "metal" : sheet.workpieceMaterial();
    if (!byTool) {
      rows.add(new KeyRow(metal(), material));
      return rows;
    }
    rows.add(new KeyRow(metal(), "skin of the stock"));
    for (int number : numbers) {
      String kind = sheet.tool(number).map(t -> " " + t.kind().word()).orElse("");
      rows.add(new KeyRow(ofTool(number), "T" + number + kind));
    }
    return rows;
  }
}
