package flankfit.bench;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A loop of a million passes against a bare scan of its text, as often as it is executed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 2, jvmArgs = "-Xmx6g")
public class LoopBench {
  private static final int PASSES = 1_000_000;
  private static final String LOOP =
      "WHILE [#1 LT " + PASSES + "] DO1\nX[#1*0.01] Y[#1*0.005]\n#1=#1+1\nEND1\n";
  private static final String PROGRAM =
      "G21 G17 G90 G94 G54 S9000 M3\nG0 X0. Y0. Z5.\nG1 Z0. F2500.\n#1=0\n" + LOOP + "M30\n";
  private static final String SHEET =
      "units = \"mm\"\n[control]\nloop-limit = 2000000\nblock-limit = 50000000\n";

  private final SetupSheet sheet = SetupReader.read("loop.toml", SHEET).sheet().orElseThrow();
  private byte[] executed;

  @Setup
  public void make() {
    executed = LOOP.repeat(PASSES).getBytes(StandardCharsets.US_ASCII);
    Interpretation done = interpret();
    if (!done.complete() || done.tape().size() < PASSES) {
      throw new IllegalStateException("the program was not interpreted: " + done.stoppedAt());
    }
  }

  /** The reference: the text of all passes, read once. */
  @Benchmark
  public double bareScan() {
    return BareScan.sum(executed);
  }

  /** The whole of reading and executing, to a tape. */
  @Benchmark
  public Interpretation interpret() {
    byte[] bytes = PROGRAM.getBytes(StandardCharsets.US_ASCII);
    return Interpreter.interpret(SourceText.of("loop.nc", bytes), sheet);
  }
}
