package flankfit.bench;

import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All rules on the tape of a surfacing program, against interpreting it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 2, jvmArgs = "-Xmx6g")
public class RulesBench {
  private static final String STOCK =
      """
      [stock]
      shape = "block"
      size = [100.0, 50.0, 20.0]
      zero = [0.0, 0.0, 20.0]
      [[tool]]
      number = 1
      kind = "ball mill"
      diameter = 6.0
      [offsets]
      H1 = { geometry = 80.0 }
      """;

  @Param({"1000000"})
  int blocks;

  private byte[] bytes;
  private SetupSheet sheet;
  private Interpretation done;

  /** Ends with a rapid into the finished surface, so that every cut has to be entered. */
  @Setup
  public void make() {
    String head = "%\nG21 G17 G40 G49 G80 G90 G94\nT1 M6\nG54 G0 X0. Y0. S9000 M3\nG43 H1 Z5.\n";
    String tail = "G0 Z-4.\nZ50.\nM30\n%\n";
    bytes = Surfacing.program(head + "G1 Z0. F2500.\n", blocks, tail);
    sheet = SetupReader.read("surface.setup.toml", STOCK).sheet().orElseThrow();
    done = interpret();
    if (!done.complete() || done.tape().size() < blocks || checkAll().isEmpty()) {
      throw new IllegalStateException("the program was not checked: " + done.stoppedAt());
    }
  }

  /** The reference: reading and executing, to a tape. */
  @Benchmark
  public Interpretation interpret() {
    return Interpreter.interpret(SourceText.of("surface.nc", bytes), sheet);
  }

  /** All rules, every cut entered on the plan. */
  @Benchmark
  public List<Finding> checkAll() {
    return ProgramCheck.findings(done, sheet);
  }

  /** All rules without a stock, where no rule asks what has been cut. */
  @Benchmark
  public List<Finding> checkWithoutStock() {
    return ProgramCheck.findings(done, SetupSheet.empty());
  }
}
