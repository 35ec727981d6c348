package flankfit.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.Interpreter;
import flankfit.draft.DraftChoices.Entry;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Laws of drafts over jobs drawn by chance. */
class DraftingProperties {
  /** Jobs that are gauged take a third of a second each; {@code -Ddraft.jobs} asks for more. */
  private static final int JOBS = Integer.getInteger("draft.jobs", 6);

  /** Seeds far apart, for near ones begin alike: none of them draws a boss. */
  private static final long FIRST = 16_999_999;

  private static final long APART = 9_999_999;

  private static final int PATHS = 40;
  private static final double SAME = 1e-9;

  @Test
  void a_draft_gauges_good_and_raises_nothing_above_a_note_or_is_refused_with_a_reason() {
    int good = 0;
    for (int i = 0; i < JOBS; i++) {
      SomeJob job = SomeJob.of(FIRST + i * APART);
      try {
        check(job, job.draft());
        good++;
      } catch (NotDraftedException e) {
        assertThat(e.what()).as("%s", job).isNotBlank();
        assertThat(e.why() + e.fix()).as("%s", job).isNotBlank();
      }
    }
    assertThat(good).as("drafts among %s jobs", JOBS).isGreaterThan(JOBS / 3);
  }

  /** The sheet that is written out is read anew, and gives the very motion that was gauged. */
  private static void check(SomeJob job, Draft draft) {
    SetupSheet sheet = job.sheet(draft.register());
    Tape gauged = draft.proof().done().tape();
    Tape again = tape(draft.program(), sheet);
    assertThat(again.size()).as("%s", job).isEqualTo(gauged.size());
    for (int move = 0; move < gauged.size(); move++) {
      assertThat(again.toX(move)).isCloseTo(gauged.toX(move), within(SAME));
      assertThat(again.toY(move)).isCloseTo(gauged.toY(move), within(SAME));
      assertThat(again.toZ(move)).isCloseTo(gauged.toZ(move), within(SAME));
    }
    assertThat(draft.proof().gauged().threads())
        .as("%s", job)
        .hasSize(job.wanted().places().size())
        .extracting(ThreadAnswer::verdict)
        .containsOnly(Verdict.GAUGES_GOOD);
    for (Finding finding : draft.proof().findings()) {
      boolean asked = job.choices().entry() == Entry.STRAIGHT && finding.code() == Code.HZ06;
      assertThat(asked || finding.severity() == Severity.NOTE)
          .as("%s in %s\n%s", finding, job, draft.program())
          .isTrue();
    }
  }

  @Test
  void absolute_and_incremental_words_make_the_same_motion() throws NotDraftedException {
    int compared = 0;
    for (long seed = 1000; seed < 1000 + PATHS; seed++) {
      SomeJob job = SomeJob.of(seed);
      SetupSheet sheet = job.sheet();
      Tape absolute = tape(job.in(Distance.ABSOLUTE), sheet);
      Tape incremental = tape(job.in(Distance.INCREMENTAL), sheet);
      assertThat(incremental.size()).as("%s", job).isEqualTo(absolute.size());
      for (int move = 0; move < absolute.size(); move++) {
        assertThat(incremental.kind(move)).isEqualTo(absolute.kind(move));
        assertThat(incremental.toX(move)).isCloseTo(absolute.toX(move), within(SAME));
        assertThat(incremental.toY(move)).isCloseTo(absolute.toY(move), within(SAME));
        assertThat(incremental.toZ(move)).isCloseTo(absolute.toZ(move), within(SAME));
        if (absolute.kind(move) == MoveKind.ARC) {
          assertThat(incremental.sweep(move)).isCloseTo(absolute.sweep(move), within(SAME));
          assertThat(incremental.radius(move)).isCloseTo(absolute.radius(move), within(SAME));
        }
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(10 * PATHS);
  }

  private static Tape tape(SomeJob job, SetupSheet sheet) throws NotDraftedException {
    PathPlan plan = new PathPlan(ThreadJob.of(sheet, job.choices().tool()), job.choices());
    return tape(new ProgramWriter(plan, new Offsets.Register(0, 0)).text(), sheet);
  }

  private static Tape tape(String program, SetupSheet sheet) {
    byte[] text = program.getBytes(StandardCharsets.US_ASCII);
    return Interpreter.replay(SourceText.of("job.nc", text), sheet, List.of()).tape();
  }
}
