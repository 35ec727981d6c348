package flankfit.trace;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.check.ProgramCheck;
import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.ControlState;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BlockNotesTest {
  private static final SetupSheet SHEET =
      SetupReader.read(
              "s.setup.toml",
              """
              units = "mm"
              [stock]
              shape = "block"
              size  = [80.0, 60.0, 30.0]
              zero  = [40.0, 30.0, 30.0]
              """)
          .sheet()
          .orElseThrow();

  private static List<BlockTrace> trace(SourceText text) {
    List<BlockTrace> blocks = new ArrayList<>();
    Interpreter.observe(
        text,
        SHEET,
        List.of(),
        new BlockObserver() {
          @Override
          public void begins(ControlState start) {
            // Only blocks are looked at here.
          }

          @Override
          public void block(BlockTrace block) {
            blocks.add(block);
          }

          @Override
          public void ends(List<Finding> others) {
            // Only blocks are looked at here.
          }
        });
    return blocks;
  }

  private static Map<Integer, List<String>> messages(String program) {
    SourceText text = SourceText.of("p.nc", program.getBytes(StandardCharsets.UTF_8));
    BlockNotes notes = new BlockNotes(List.of(), file -> text.lines());
    Map<Integer, List<String>> all = new LinkedHashMap<>();
    Optional<BlockTrace> before = Optional.empty();
    for (BlockTrace block : trace(text)) {
      List<String> its = notes.messages(block, before);
      if (!its.isEmpty()) {
        all.merge(block.place().line(), its, (a, b) -> b);
      }
      before = Optional.of(block);
    }
    return all;
  }

  @Test
  void a_finding_of_a_rule_stands_with_the_block_of_its_line() {
    String program = "%\nG21 G90 G54 G0 X0. Y0.\nZ5.\nG1 Z-1. F100.\nG0 X30. Y20.\nM30\n%\n";
    SourceText text = SourceText.of("p.nc", program.getBytes(StandardCharsets.UTF_8));
    var done = ProgramCheck.checked(Interpreter.interpret(text, SHEET), SHEET);
    assertThat(done.findings()).extracting(Finding::code).contains(Code.HZ02);
    BlockNotes notes = new BlockNotes(done.findings(), file -> text.lines());
    for (BlockTrace block : trace(text)) {
      List<Finding> further = notes.further(block);
      assertThat(further).filteredOn(block.findings()::contains).isEmpty();
      assertThat(further.stream().anyMatch(f -> f.code() == Code.HZ02))
          .isEqualTo(block.place().line() == 5);
    }
  }

  /** The form of messages is that of the NIST RS274/NGC interpreter, 3.3.4. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G90 (MSG,TOOL 4) | TOOL 4",
        "G90 ( msg , tool 4, please ) | tool 4, please",
        "(M S G,AS BLANKS ARE ALLOWED) G90 | AS BLANKS ARE ALLOWED"
      })
  void a_comment_that_begins_with_the_mark_is_a_message(String block, String message) {
    assertThat(messages(block + "\nM30\n")).containsEntry(1, List.of(message));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"G90 (TOOL 4)", "G90 (NO MSG,TOOL)", "G90 (MSG TOOL)", "G90 ; (MSG,TOOL)"})
  void any_other_comment_is_none(String block) {
    assertThat(messages(block + "\nM30\n")).isEmpty();
  }

  @Test
  void messages_on_lines_of_their_own_come_with_the_next_block() {
    assertThat(messages("%\n(MSG,FIRST)\nG90\n(REMARK)\n\n(MSG,SECOND)\nG21 (MSG,THIRD)\nM30\n%\n"))
        .containsExactly(Map.entry(3, List.of("FIRST")), Map.entry(7, List.of("SECOND", "THIRD")));
  }

  @Test
  void what_a_jump_leaves_out_is_not_displayed() {
    assertThat(messages("G90\nGOTO 10\n(MSG,LEFT OUT)\nN10 G21\nM30\n")).isEmpty();
    assertThat(messages("G90\nGOTO 10\nG91\n(MSG,LEFT OUT)\nN10 G21\nM30\n")).isEmpty();
  }
}
