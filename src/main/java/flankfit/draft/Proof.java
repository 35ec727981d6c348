package flankfit.draft;

import flankfit.check.MetalCheck;
import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import flankfit.gauge.Verdict;
import flankfit.metal.MetalProgress;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.solid.MeshBody;
import flankfit.unit.Tolerance;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A draft executed, checked and gauged by the same code as any other program.
 *
 * @param done what the control made of it, with the findings of the rules
 * @param gauged what the gauges will say
 * @param metal what the metal says; empty where the sheet states no stock, or before it was asked
 * @param findings all findings together
 */
public record Proof(
    Interpretation done, GaugeAnswer gauged, Optional<MetalCheck> metal, List<Finding> findings) {
  public Proof {
    Objects.requireNonNull(done, "done");
    Objects.requireNonNull(gauged, "gauged");
    Objects.requireNonNull(metal, "metal");
    findings = List.copyOf(findings);
  }

  /**
   * Executes, checks and gauges.
   *
   * @param name name of the program for findings
   * @param realPath whether gauges are screwed into the wall of the path as moved
   * @param advised whether register entries are looked for, which takes many runs
   */
  static Proof of(
      String name, String program, SetupSheet sheet, boolean realPath, boolean advised) {
    SourceText text = SourceText.of(name, program.getBytes(StandardCharsets.US_ASCII));
    Interpretation done =
        ProgramCheck.checked(Interpreter.interpret(text, sheet, List.of()), sheet);
    GaugeRequest request =
        new GaugeRequest(
            name,
            done.tape(),
            sheet,
            done.radiusSettings(),
            offsets -> advised ? replay(text, sheet, offsets) : Optional.empty(),
            realPath);
    GaugeAnswer gauged = ThreadGauging.gauge(request);
    Findings all = new Findings();
    all.addAll(done.findings());
    all.addAll(gauged.findings());
    return new Proof(done, gauged, Optional.empty(), all.sorted());
  }

  /** The same held against the metal of its sheet, where that states the stock. */
  Proof againstMetal(SetupSheet sheet, Optional<MeshBody> mesh) {
    if (sheet.stock().isEmpty() || isBuried(sheet)) {
      return this;
    }
    MetalCheck check = MetalCheck.ofTouches(done, sheet, mesh, MetalProgress.NONE);
    return new Proof(done, gauged, Optional.of(check), check.with(findings));
  }

  /**
   * Whether a boss that is there before the program stands within stock that is wider: the sheet
   * does not say then where it stands free, and metal round it would be told that is not there.
   */
  private static boolean isBuried(SetupSheet sheet) {
    Stock stock = sheet.stock().orElseThrow();
    if (stock.shape() == Stock.Shape.MESH) {
      return false;
    }
    double wide = stock.box().max().x() - stock.box().min().x();
    return sheet.holes().stream()
        .filter(
            hole -> hole.boss() && hole.madeBy().filter(m -> m == Hole.MadeBy.PROGRAM).isEmpty())
        .anyMatch(
            hole ->
                stock.shape() == Stock.Shape.BLOCK
                    || wide > hole.diameter() + Tolerance.MODEL.value());
  }

  /** What touches metal or a clamp that should not; not what cuts too little, and no notes. */
  List<Finding> touches() {
    return metal.isEmpty()
        ? List.of()
        : MetalCheck.touching(findings).stream()
            .filter(f -> f.severity() != Severity.NOTE)
            .filter(f -> f.code() != Code.HZ18 && f.code() != Code.HZ21)
            .toList();
  }

  private static Optional<Tape> replay(SourceText text, SetupSheet sheet, Offsets offsets) {
    Interpretation again = Interpreter.replay(text, sheet.withOffsets(offsets), List.of());
    return again.complete() ? Optional.of(again.tape()) : Optional.empty();
  }

  /** Findings of severity error. */
  public List<Finding> errors() {
    return findings.stream().filter(f -> f.severity() == Severity.ERROR).toList();
  }

  /** What control, rules and gauging assumed, each sentence once. */
  public List<String> assumptions() {
    Set<String> all = new LinkedHashSet<>(done.assumptions());
    all.addAll(gauged.assumptions());
    all.addAll(
        metal
            .map(MetalCheck::assumptions)
            .orElse(
                List.of(
                    "what would touch metal is not known: the sheet states no stock, or not where a boss"
                        + " stands free")));
    return List.copyOf(all);
  }

  /** Whether every one of so many threads gauges good and nothing is an error. */
  boolean isGood(int threads) {
    return done.complete()
        && errors().isEmpty()
        && gauged.threads().size() == threads
        && gauged.threads().stream().allMatch(t -> t.verdict() == Verdict.GAUGES_GOOD);
  }

  /** Time of the motion, without acceleration and tool change (s). */
  public double seconds() {
    double seconds = 0;
    for (int move = 0; move < done.tape().size(); move++) {
      seconds += done.tape().seconds(move);
    }
    return seconds;
  }
}
