package flankfit.check;

import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

/** Runs all rules on a whole program. A new rule is added to the list in {@link #rules}. */
public final class ProgramCheck {
  /** Moves between two looks at the watch. */
  private static final int STRETCH = 1024;

  private ProgramCheck() {}

  /**
   * What the rules find.
   *
   * @param done the interpreted program; one that stopped is checked as far as it came
   * @param sheet the setup sheet it was interpreted with
   * @return findings of the rules alone, by file, line, column and code
   */
  public static List<Finding> findings(Interpretation done, SetupSheet sheet) {
    return findings(done, sheet, Watch.NONE);
  }

  private static List<Finding> findings(Interpretation done, SetupSheet sheet, Watch watch) {
    Scene scene = new Scene(done, sheet);
    List<Rule> rules = rules(scene);
    int size = done.tape().size();
    for (int move = 0; move < size; move++) {
      if (move % STRETCH == 0 && !watch.goesOn((double) move / size)) {
        throw new CancellationException("nobody waits for the rules any more");
      }
      for (Rule rule : rules) {
        rule.look(move);
      }
    }
    rules.forEach(Rule::end);
    return scene.findings().sorted();
  }

  /** The same interpretation with the findings of the rules, and what they assumed, added. */
  public static Interpretation checked(Interpretation done, SetupSheet sheet) {
    return checked(done, sheet, Watch.NONE);
  }

  /**
   * The same before the eyes of somebody who waits for it.
   *
   * @param watch is told how far it has come, and may stop it
   * @throws CancellationException if the watch stopped it
   */
  public static Interpretation checked(Interpretation done, SetupSheet sheet, Watch watch) {
    List<Finding> found = findings(done, sheet, watch);
    Findings all = new Findings();
    all.addAll(done.findings());
    all.addAll(found);
    List<String> assumptions = new ArrayList<>(done.assumptions());
    found.stream()
        .filter(finding -> finding.code() == Surfaces.ASSUMED)
        .map(Finding::what)
        .forEach(assumptions::add);
    return done.with(all.sorted(), assumptions);
  }

  /** The rules in the order in which they see a move: collisions first, others keep silent then. */
  private static List<Rule> rules(Scene scene) {
    return List.of(
        new KeepOutTouch(scene),
        new RapidIntoStock(scene),
        new LowRapid(scene),
        new DogLegTouch(scene),
        new DiagonalApproach(scene),
        new BackwardSpindle(scene),
        new StraightEntry(scene),
        new BluntPlunge(scene),
        new BelowPart(scene),
        new CloseApproach(scene),
        new StopInCut(scene),
        new BelowHole(scene),
        new FeedInAir(scene));
  }
}
