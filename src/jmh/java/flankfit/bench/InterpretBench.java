package flankfit.bench;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
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

/** Interpreting a surfacing program against a bare scan that only sums the same numbers. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 2, jvmArgs = "-Xmx6g")
public class InterpretBench {
  /** Memory that a straight move may take (bytes). */
  private static final long MOST_BYTES = 40;

  @Param({"1000000", "5000000"})
  int blocks;

  private byte[] bytes;
  private final SetupSheet sheet = SetupSheet.empty();

  @Setup
  public void make() {
    bytes = Surfacing.program(blocks);
    Interpretation done = interpret();
    if (!done.complete() || done.tape().size() < blocks) {
      throw new IllegalStateException("the program was not interpreted: " + done.stoppedAt());
    }
    if (done.tape().columnBytes() > MOST_BYTES * done.tape().size()) {
      throw new IllegalStateException("the tape takes " + done.tape().columnBytes() + " bytes");
    }
  }

  /** The reference: reads every byte and sums every number. */
  @Benchmark
  public double bareScan() {
    return BareScan.sum(bytes);
  }

  /** The whole of reading and executing, to a tape. */
  @Benchmark
  public Interpretation interpret() {
    return Interpreter.interpret(SourceText.of("surface.nc", bytes), sheet);
  }
}
