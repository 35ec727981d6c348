package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.ControlState;
import flankfit.control.Interpreter;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What blocks meant, got on a thread of its own and kept near the position only. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class ToldBlocksTest {
  private final AtomicInteger runs = new AtomicInteger();

  private Replay program(int blocks) {
    StringBuilder text = new StringBuilder("G90 F100.\n");
    for (int i = 2; i <= blocks; i++) {
      text.append("G1 X").append(i).append(".\n");
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    return observer -> {
      runs.incrementAndGet();
      Interpreter.interpret(SourceText.of("p.nc", bytes), SetupSheet.empty(), List.of(), observer);
    };
  }

  private static Optional<BlockTrace> wait(ToldBlocks told, int number)
      throws InterruptedException {
    while (told.block(number).isEmpty() && told.isComing(number)) {
      Thread.sleep(2);
    }
    return told.block(number);
  }

  @Test
  void a_block_comes_once_asked_for_and_its_neighbours_with_it() throws InterruptedException {
    ToldBlocks told = new ToldBlocks(program(50));
    assertThat(told.isComing(7)).isTrue();
    assertThat(wait(told, 7).orElseThrow().text()).isEqualTo("G1 X7.");
    assertThat(told.block(50).orElseThrow().text()).isEqualTo("G1 X50.");
    assertThat(told.block(51)).isEmpty();
    assertThat(runs).hasValue(1);
  }

  @Test
  void a_block_far_away_is_got_by_another_run() throws InterruptedException {
    int far = 3 * ToldBlocks.AROUND;
    ToldBlocks told = new ToldBlocks(program(far));
    assertThat(wait(told, 1)).isPresent();
    assertThat(told.isComing(far)).isTrue();
    assertThat(wait(told, far).orElseThrow().text()).isEqualTo("G1 X" + far + ".");
    assertThat(told.isComing(1)).isTrue();
    assertThat(runs).hasValue(2);
  }

  @Test
  void without_a_program_to_execute_nothing_is_told_and_nothing_is_waited_for()
      throws InterruptedException {
    ToldBlocks told = new ToldBlocks(Replay.NONE);
    assertThat(wait(told, 3)).isEmpty();
  }

  @Test
  void an_execution_ends_once_the_blocks_asked_for_are_there() throws InterruptedException {
    AtomicInteger told = new AtomicInteger();
    Replay all = program(40 * ToldBlocks.AROUND);
    ToldBlocks blocks =
        new ToldBlocks(
            observer ->
                all.run(
                    new BlockObserver() {
                      @Override
                      public void begins(ControlState start) {
                        observer.begins(start);
                      }

                      @Override
                      public void block(BlockTrace block) {
                        told.incrementAndGet();
                        observer.block(block);
                      }

                      @Override
                      public void ends(List<Finding> others) {
                        observer.ends(others);
                      }
                    }));
    assertThat(wait(blocks, 10)).isPresent();
    assertThat(told.get()).isLessThan(2 * ToldBlocks.AROUND);
    assertThat(blocks.reached()).isGreaterThan(ToldBlocks.AROUND);
  }

  @Test
  void asking_for_other_blocks_ends_an_execution_for_those_before() throws InterruptedException {
    int far = 60 * ToldBlocks.AROUND;
    ToldBlocks told = new ToldBlocks(program(far));
    assertThat(told.block(far)).isEmpty();
    assertThat(wait(told, 5).orElseThrow().text()).isEqualTo("G1 X5.");
    assertThat(told.isComing(far)).isTrue();
    assertThat(runs).hasValue(2);
  }
}
