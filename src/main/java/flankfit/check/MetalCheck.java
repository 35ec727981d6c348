package flankfit.check;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.metal.Contact;
import flankfit.metal.Contacts;
import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.MetalProgress;
import flankfit.metal.TooFineException;
import flankfit.motion.Extents;
import flankfit.setup.SetupSheet;
import flankfit.solid.MeshBody;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the metal itself says of a program: what touches it or a clamp that should not, what is left
 * too shallow, what of stock and holes does not fit together.
 *
 * @param findings findings of the metal alone, by place
 * @param assumptions what was assumed, a sentence each
 * @param rubbed lines of the program in which neck, shank or holder touch metal
 * @param unknown lines of the program with moves that were not looked at, or with a tool whose form
 *     is not known
 */
public record MetalCheck(
    List<Finding> findings, List<String> assumptions, Set<Integer> rubbed, Set<Integer> unknown) {
  /** Cells along the stock's diagonal where only touches are asked. */
  private static final double CELLS = 100;

  /** Codes of rules without metal that stand back wherever the metal knows the tool. */
  private static final Set<Code> ASKED = EnumSet.of(Code.HZ01, Code.HZ08);

  /** Codes that stand back where the metal tells of the same. */
  private static final Set<Code> SAME = EnumSet.of(Code.HZ01, Code.HZ04, Code.HZ05, Code.HZ07);

  /** Codes that are about touching metal or a clamp. */
  private static final Set<Code> TOUCHING =
      EnumSet.of(
          Code.HZ01, Code.HZ04, Code.HZ05, Code.HZ07, Code.HZ08, Code.HZ09, Code.HZ10, Code.HZ16,
          Code.HZ17, Code.HZ18, Code.HZ21);

  public MetalCheck {
    findings = List.copyOf(findings);
    assumptions = List.copyOf(assumptions);
    rubbed = Set.copyOf(rubbed);
    unknown = Set.copyOf(unknown);
  }

  /**
   * Asks the metal.
   *
   * @param done the interpreted program
   * @param sheet the sheet with which metal and program were made
   * @param moves number of moves looked at, from the first; what is left too shallow is asked after
   *     all of them only
   * @throws java.util.concurrent.CancellationException if the progress of the metal ends the work
   */
  public static MetalCheck of(Interpretation done, SetupSheet sheet, Metal metal, int moves) {
    Scene scene = new Scene(done, sheet);
    Contacts contacts = Contacts.of(metal, sheet.keepOuts());
    PlungeRule plunges = new PlungeRule(scene, metal);
    plunges.check(moves);
    List<Contact> touches = contacts.all(moves);
    new TouchRule(scene, contacts).check(touches, plunges.told());
    StockRules.check(scene);
    if (moves == done.tape().size() && done.complete()) {
      if (contacts.cutsAnything()) {
        new ShallowRule(scene, metal).check();
      } else {
        StockRules.nothingCut(scene, metal);
      }
    }
    Set<Integer> rubbed = new HashSet<>();
    for (Contact touch : touches) {
      if (touch.part() != Contact.Part.CUTTER && touch.keepOut().isEmpty()) {
        rubbed.add(done.tape().line(touch.move()));
      }
    }
    return new MetalCheck(
        scene.findings().sorted(), assumptions(contacts), rubbed, unknown(metal, moves));
  }

  /**
   * Asks metal that is made for this alone, without volumes: its cells are coarse, which costs
   * nothing of the touches.
   *
   * @param mesh the body of the stock's file; empty for other stock
   * @param progress told how far it has come
   * @throws java.util.NoSuchElementException if the sheet states no stock
   */
  public static MetalCheck ofTouches(
      Interpretation done, SetupSheet sheet, Optional<MeshBody> mesh, MetalProgress progress) {
    Extents box = sheet.stock().orElseThrow().box();
    MetalOptions options = MetalOptions.usual().withCell(box.diagonal() / CELLS);
    try {
      Metal metal = Metal.of(done.tape(), sheet, mesh, options, progress);
      return of(done, sheet, metal, done.tape().size());
    } catch (TooFineException e) {
      throw new IllegalStateException("so few cells always fit", e);
    }
  }

  private static Set<Integer> unknown(Metal metal, int moves) {
    Set<Integer> lines = new HashSet<>();
    for (int move = 0; move < metal.cuts().tape().size(); move++) {
      if (move >= moves || metal.cuts().body(move).isEmpty()) {
        lines.add(metal.cuts().tape().line(move));
      }
    }
    return lines;
  }

  private static List<String> assumptions(Contacts contacts) {
    List<String> told = new ArrayList<>();
    told.add(
        "touches below "
            + Contacts.LEAST
            + " mm are not told; tools turn without runout, and stock and clamps have their sizes");
    if (contacts.isOrderAssumed()) {
      told.add("on arcs in other planes than XY the cutting part has passed before neck and shank");
    }
    if (!contacts.unsure().isEmpty()) {
      told.add(
          contacts.unsure().size()
              + " moves were looked at for touches to a few hundredths of a millimetre only");
    }
    return told;
  }

  /** The findings of a program with those of the metal, each fault once. */
  public List<Finding> with(List<Finding> others) {
    Findings all = new Findings();
    for (Finding other : others) {
      if (!isToldByMetal(other)) {
        all.add(other);
      }
    }
    findings.forEach(finding -> all.add(placed(finding, others)));
    return all.sorted();
  }

  /** A finding at the words that another one with its code and line points to, if there is one. */
  private static Finding placed(Finding finding, List<Finding> others) {
    return others.stream()
        .filter(other -> other.code() == finding.code() && other.place().column() > 0)
        .filter(other -> isHere(other, finding))
        .findFirst()
        .map(
            other ->
                new Finding(
                    finding.code(),
                    finding.severity(),
                    other.place(),
                    finding.what(),
                    finding.why(),
                    finding.fix()))
        .orElse(finding);
  }

  private static boolean isHere(Finding one, Finding other) {
    return one.place().file().equals(other.place().file())
        && one.place().line() == other.place().line();
  }

  private boolean isToldByMetal(Finding other) {
    int line = other.place().line();
    if (ASKED.contains(other.code()) && !unknown.contains(line)) {
      return true;
    }
    if (other.code() == Code.TH17 && rubbed.contains(line)) {
      return true;
    }
    boolean here = findings.stream().anyMatch(f -> isHere(f, other) && isSame(f, other));
    return here
        || (other.code() == Code.HZ05 && findings.stream().anyMatch(f -> f.code() == Code.HZ05));
  }

  private static boolean isSame(Finding metal, Finding other) {
    boolean low = other.code() == Code.HZ02 && metal.code() == Code.HZ01;
    return low || (SAME.contains(other.code()) && metal.code() == other.code());
  }

  /** Those of some findings that are about touching metal or a clamp. */
  public static List<Finding> touching(List<Finding> findings) {
    return findings.stream().filter(f -> TOUCHING.contains(f.code())).toList();
  }
}
