package flankfit.lesson;

import flankfit.motion.ModalState.Distance;
import flankfit.nc.Edit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * Where G90 and G91 have to stand so that every executed block finds the mode it needs. Blocks that
 * need none keep a mode word only as far as it serves the next one that does. A block that is
 * executed several times gets one text for all of them, or the program is refused.
 */
final class ModeWordPlan {
  private final List<Site> sites;
  private final int[] at;
  private final Distance[] need;
  private final Distance[] stated;
  private final boolean[] own;

  /**
   * @param sites the blocks of the text
   * @param executed the executed blocks in order
   */
  ModeWordPlan(List<Site> sites, List<Executed> executed) {
    this.sites = sites;
    at = executed.stream().mapToInt(Executed::site).toArray();
    need = executed.stream().map(e -> e.need().orElse(null)).toArray(Distance[]::new);
    stated = new Distance[sites.size()];
    own = new boolean[sites.size()];
  }

  /**
   * One execution of a block.
   *
   * @param site index of the block
   * @param need mode in which its words are written; empty when it minds none
   */
  record Executed(int site, Optional<Distance> need) {}

  /** The edits of mode words. */
  List<Edit> edits(IntFunction<String> line) {
    ownWords();
    boolean more = true;
    while (more) {
      more = walk();
    }
    boolean[] needless = needless();
    List<Edit> edits = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      Site site = sites.get(i);
      if (site.states().isPresent()) {
        if (site.states().get() != stated[i]) {
          edits.add(
              needless[i] && site.words() > 1
                  ? site.delete(line.apply(site.place().line()))
                  : site.replace(stated[i]));
        }
      } else if (stated[i] != null) {
        edits.add(site.insert(stated[i]));
      }
    }
    return edits;
  }

  /** What each mode word of the program becomes: what its block needs, or the next one does. */
  private void ownWords() {
    Distance next = null;
    for (int i = at.length - 1; i >= 0; i--) {
      int site = at[i];
      Optional<Distance> written = sites.get(site).states();
      if (written.isPresent()) {
        Distance wanted = need[i] != null ? need[i] : next != null ? next : written.get();
        state(site, wanted, own[site]);
        own[site] = true;
        next = need[i];
      } else if (need[i] != null) {
        next = need[i];
      }
    }
  }

  private void state(int site, Distance wanted, boolean before) {
    if (before && stated[site] != wanted) {
      throw new RefusedException(
          sites.get(site).place(),
          "this block is executed for words of both modes",
          "one text cannot serve both",
          "write the calls or passes apart");
    }
    stated[site] = wanted;
  }

  /**
   * Executes the mode words as planned, and puts in those that lack.
   *
   * @return whether one was put in, so that other executions of the block have to be looked at
   */
  private boolean walk() {
    Distance now = Distance.ABSOLUTE;
    boolean more = false;
    for (int i = 0; i < at.length; i++) {
      int site = at[i];
      now = stated[site] != null ? stated[site] : now;
      if (need[i] != null && now != need[i]) {
        state(site, need[i], stated[site] != null);
        now = need[i];
        more = true;
      }
    }
    return more;
  }

  /** Whether the mode that a block states has been stated before, each time it is executed. */
  private boolean[] needless() {
    boolean[] needless = new boolean[sites.size()];
    Arrays.fill(needless, true);
    Distance now = null;
    for (int site : at) {
      needless[site] &= now != null && now == stated[site];
      now = stated[site] != null ? stated[site] : now;
    }
    return needless;
  }
}
