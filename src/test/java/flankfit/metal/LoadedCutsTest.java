package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.setup.Tool;
import org.junit.jupiter.api.Test;

/** Cuts held ready. */
class LoadedCutsTest {
  @Test
  void no_more_are_held_than_the_bound_and_each_stays_its_own() {
    int moves = LoadedCuts.MOST + 100;
    Job job = new Job().block(-10, -10, -10, 10, 10, 0);
    job.take(SampleTools.tool(1, Tool.Kind.END_MILL, 4, 20));
    for (int i = 0; i < moves; i++) {
      job.line(i, 0, -1);
    }
    Cuts cuts = Cuts.of(job.tape(), job.sheet()::tool);
    LoadedCuts loaded = new LoadedCuts(cuts);
    SweptCut first = loaded.cut(1);
    for (int i = 0; i < moves; i++) {
      assertThat(loaded.cut(i).holds(i, 1.9, -0.5)).isTrue();
      assertThat(loaded.held()).isBetween(1, LoadedCuts.MOST);
    }
    // Move 1 goes from 0 to 1.
    assertThat(first.holds(0, 1.9, -0.5)).isTrue();
    assertThat(first.holds(moves, 1.9, -0.5)).isFalse();
    assertThat(loaded.cut(1).holds(0, 1.9, -0.5)).isTrue();
  }
}
