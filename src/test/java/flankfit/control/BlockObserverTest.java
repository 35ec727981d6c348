package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.BlockTrace.Outcome;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an observer of the control is told of single blocks. */
class BlockObserverTest {
  private static final String HEAD = "G21 G90 G17 G54 G40 S1000 M3 F200.\nG0 X0 Y0 Z5.\n";

  private static ObservedRun run(String text, String sheet, SourceText... further) {
    ObservedRun seen = new ObservedRun();
    Interpreter.interpret(
        Programs.source("program.nc", HEAD + text), ExampleSheet.of(sheet), List.of(further), seen);
    return seen;
  }

  private static BlockTrace first(String text, String sheet) {
    return run(text, sheet).blocks().get(2);
  }

  @ParameterizedTest(name = "{0}: {1} means {2}, {3}")
  @CsvSource({
    "G1 X10., X10., END_POINT, 10",
    "G91 G1 X-2.5, X-2.5, DISTANCE, -2.5",
    "G20 G1 X1., X1., END_POINT, 25.4",
    "G2 X4. Y0 I2., I2., CENTRE_DISTANCE, 2",
    "G90.1 G2 X4. Y0 I2. J0, I2., CENTRE_POINT, 2",
    "G2 X4. R2., R2., ARC_RADIUS, 2",
    "G1 X1. R2., R2., NONE, 2",
    "G81 X1. Z-5. R1., X1., HOLE_POSITION, 1",
    "G81 X1. Z-5. R1., Z-5., DEPTH, -5",
    "G81 X1. Z-5. R1., R1., CLEARANCE_LEVEL, 1",
    "G91 G81 X1. Z-5. R-1., Z-5., DEPTH_FROM_CLEARANCE, -5",
    "G83 X1. Z-5. R1. Q2., Q2., PECK, 2",
    "G28 Z9., Z9., INTERMEDIATE_POINT, 9",
    "G53 X9., X9., MACHINE_POINT, 9",
    "G52 X9., X9., LOCAL_SHIFT, 9",
    "G92 X9., X9., PRESENT_POINT, 9",
    "G68 X1. Y2. R30., R30., ROTATION_ANGLE, 30",
    "G51 X1. P2., P2., SCALE_FACTOR, 2",
    "G51.1 X1., X1., MIRROR_POSITION, 1",
    "G10 L12 P3 R4., R4., REGISTER_VALUE, 4",
    "G10 L12 P3 R4., L12, DATA_KIND, 12",
    "G4 P2., P2., DWELL, 2",
    "G54.1 P7, P7, WORK_OFFSET_NUMBER, 7",
    "G95 F0.1, F0.1, FEED_PER_REVOLUTION, 0.1",
    "S900, S900, SPINDLE_SPEED, 900",
    "M98 P99, P99, CALLED_PROGRAM, 99"
  })
  void a_word_means_what_its_block_makes_of_it(
      String block, String word, WordMeaning meaning, double value) {
    BlockTrace told = first(block + "\nM30\n", "");
    assertThat(told.words())
        .filteredOn(w -> w.text().equals(word))
        .singleElement()
        .satisfies(
            w -> {
              assertThat(w.meaning()).isEqualTo(meaning);
              assertThat(w.value().orElseThrow()).isEqualTo(value);
            });
  }

  @Test
  void a_register_is_told_with_what_it_holds() {
    BlockTrace told = first("G41 D2 X9. Y9.\nM30\n", "D2 = { geometry = 3.0, wear = -0.5 }");
    WordTrace word = told.words().get(1);
    assertThat(word.register()).isEqualTo(OptionalDouble.of(2.5));
    assertThat(told.changes())
        .containsExactly(ControlSetting.COMPENSATION, ControlSetting.RADIUS_REGISTER);
  }

  @Test
  void moves_held_back_by_compensation_are_told_at_their_own_block() {
    List<BlockTrace> blocks =
        run("G1 G41 D1 X10.\nX20.\nM8\nZ4.\nG1 Y-20.\nG40 X0\nM30\n", "D1 = { geometry = 2.0 }")
            .blocks();
    assertThat(blocks).extracting(BlockTrace::number).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9);
    assertThat(blocks.get(3).moves().size()).isEqualTo(1);
    assertThat(blocks.get(4).moves().size()).isZero();
    assertThat(blocks.get(5).moves().size()).isEqualTo(1);
    assertThat(blocks.get(6).moves().inserted(0)).isTrue();
  }

  @Test
  void a_block_comes_as_soon_as_nothing_of_it_is_held_back() {
    List<String> order = new ArrayList<>();
    BlockObserver late =
        new BlockObserver() {
          @Override
          public void begins(ControlState start) {
            order.add("begins");
          }

          @Override
          public void block(BlockTrace block) {
            order.add(block.text());
          }

          @Override
          public void ends(List<Finding> others) {
            order.add("ends");
          }
        };
    Interpreter.interpret(
        Programs.source("p.nc", "G1 X1. F9.\nG41 D1 X9.\nX20.\nM30\n"),
        ExampleSheet.of("D1 = { geometry = 1.0 }"),
        List.of(),
        late);
    assertThat(order).containsExactly("begins", "G1 X1. F9.", "G41 D1 X9.", "X20.", "M30", "ends");
  }

  @Test
  void steps_tell_values_loops_and_jumps_in_order_of_execution() {
    List<BlockTrace> blocks = run("#1=1\nWHILE[#1LT2]DO1\n#1=#1+1\nEND1\nM30\n", "").blocks();
    assertThat(blocks.get(2).steps())
        .containsExactly(new FlowStep.Assigned(1, OptionalDouble.empty(), OptionalDouble.of(1)));
    var one = new FlowStep.Variable(1, OptionalDouble.of(1));
    assertThat(blocks.get(3).steps())
        .containsExactly(
            new FlowStep.Computed("[#1LT2]", List.of(one), OptionalDouble.of(1)),
            new FlowStep.Tested(true),
            new FlowStep.LoopPass(1, 1));
    assertThat(blocks.get(5).steps()).containsExactly(new FlowStep.LoopBack(1, 4));
    assertThat(blocks.get(6).steps())
        .contains(new FlowStep.Tested(false), new FlowStep.LoopLeft(1, 7));
  }

  @Test
  void a_call_into_another_file_and_the_return_name_the_places() {
    ObservedRun seen = run("M98 P8\nM30\n", "", Programs.source("other.nc", "O8\nG1 X1.\nM99\n"));
    assertThat(seen.blocks().get(2).steps())
        .containsExactly(new FlowStep.Called(8, 1, 1, false, List.of(), "other.nc", 1));
    BlockTrace last = seen.blocks().get(5);
    assertThat(last.level()).isEqualTo(1);
    assertThat(last.steps())
        .containsExactly(new FlowStep.Returned(8, OptionalInt.empty(), "program.nc", 4));
  }

  @Test
  void a_finding_of_a_line_read_ahead_waits_for_that_line() {
    List<BlockTrace> blocks = run("#1=1\nGOTO5\nN5 G1 X[#1] (ü\nM30\n", "").blocks();
    assertThat(blocks)
        .filteredOn(b -> !b.findings().isEmpty() && b.place().line() > 2)
        .allSatisfy(
            b ->
                assertThat(b.findings())
                    .allSatisfy(f -> assertThat(f.place().line()).isEqualTo(b.place().line())));
    assertThat(blocks.get(4).findings()).extracting(Finding::code).contains(Code.RD08);
  }

  @Test
  void blocks_deleted_and_blocks_after_a_stop_are_told_as_such() {
    ObservedRun seen = run("/ G1 X5.\nG1 X1. G5.1\nX2.\nM30\nO77\nM30\n", "block-delete = true");
    List<BlockTrace> rest = seen.blocks().subList(3, 6);
    assertThat(rest)
        .extracting(BlockTrace::outcome)
        .containsExactly(Outcome.STOPPED, Outcome.NOT_EXECUTED, Outcome.NOT_EXECUTED);
    assertThat(rest).extracting(b -> b.moves().size()).containsExactly(0, 0, 0);
    assertThat(seen.blocks()).hasSize(6);
  }
}
