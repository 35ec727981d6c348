package flankfit.window;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** Finds lines of the program that hold a text, on a thread of its own, whatever the case. */
final class Search {
  private static final int BETWEEN_LOOKS = 4096;

  private final Runnable wake;
  private volatile Found found = Found.NOTHING;
  private volatile Job job = new Job("", List.of());
  private int current;
  private int wished;

  /** What was found so far. Never changes. */
  private static final class Found {
    private static final Found NOTHING = new Found(new int[0], true);

    private final int[] lines;
    private final boolean complete;

    /**
     * Takes what was found.
     *
     * @param lines line numbers, from 1, in rising order
     * @param complete whether all lines were looked at
     */
    Found(int[] lines, boolean complete) {
      this.lines = lines;
      this.complete = complete;
    }
  }

  /** What is looked for, and in what. */
  private static final class Job {
    private final String text;
    private final List<String> lines;

    Job(String text, List<String> lines) {
      this.text = text;
      this.lines = lines;
    }

    boolean is(Job other) {
      return text.equals(other.text) && lines == other.lines;
    }
  }

  /** Tells by waking whenever more was found. */
  Search(Runnable wake) {
    this.wake = wake;
  }

  /** Looks for a text from now on; an empty one finds nothing. */
  void look(String text, List<String> lines) {
    Job next = new Job(text.toLowerCase(Locale.ROOT), lines);
    if (next.is(job)) {
      return;
    }
    job = next;
    found = new Found(new int[0], next.text.isEmpty());
    if (!next.text.isEmpty()) {
      Thread thread = new Thread(() -> run(next), "search");
      thread.setDaemon(true);
      thread.start();
    }
  }

  /** Looks for the same text in other lines. */
  void again(List<String> lines) {
    look(job.text, lines);
  }

  private void run(Job mine) {
    int[] lines = new int[64];
    int count = 0;
    for (int i = 0; i < mine.lines.size() && job == mine; i++) {
      if (mine.lines.get(i).toLowerCase(Locale.ROOT).contains(mine.text)) {
        lines = count == lines.length ? Arrays.copyOf(lines, 2 * count) : lines;
        lines[count++] = i + 1;
      }
      if (i % BETWEEN_LOOKS == BETWEEN_LOOKS - 1) {
        publish(mine, Arrays.copyOf(lines, count), false);
      }
    }
    publish(mine, Arrays.copyOf(lines, count), true);
  }

  private synchronized void publish(Job mine, int[] lines, boolean complete) {
    if (job == mine) {
      found = new Found(lines, complete);
      wake.run();
    }
  }

  /** Whether a text is looked for. */
  boolean isOn() {
    return !job.text.isEmpty();
  }

  /** Whether there are lines still to be looked at. */
  boolean isGoing() {
    return !found.complete;
  }

  /** How many lines were found. */
  int count() {
    return found.lines.length;
  }

  /** Whether a line (from 1) was found. */
  boolean holds(int line) {
    return Arrays.binarySearch(found.lines, line) >= 0;
  }

  /** The line the search stands at, from 1; 0 for none. */
  int current() {
    return current;
  }

  /** Which of the found lines the search stands at, from 1; 0 for none. */
  int ordinal() {
    return Math.max(0, Arrays.binarySearch(found.lines, current) + 1);
  }

  /** Goes to the first found line at or after a line, round the end, as soon as it is found. */
  void from(int line) {
    current = 0;
    wished = line;
    settle();
  }

  /** Goes where {@link #from} wished, if that is known by now; gives whether it went. */
  boolean settle() {
    Found now = found;
    int[] lines = now.lines;
    boolean known = lines.length > 0 && (now.complete || lines[lines.length - 1] >= wished);
    if (wished == 0 || !known) {
      return false;
    }
    int at = Arrays.binarySearch(lines, wished);
    wished = 0;
    stand(lines, at >= 0 ? at : -at - 1);
    return true;
  }

  /** Goes to the next found line after the one it stands at, or the one before, round the ends. */
  OptionalInt next(boolean forward) {
    int[] lines = found.lines;
    if (lines.length == 0) {
      return OptionalInt.empty();
    }
    int at = Arrays.binarySearch(lines, current);
    int step = at >= 0 ? at + (forward ? 1 : -1) : -at - 1 - (forward ? 0 : 1);
    return stand(lines, step);
  }

  private OptionalInt stand(int[] lines, int index) {
    current = lines[Math.floorMod(index, lines.length)];
    return OptionalInt.of(current);
  }

  /** Looks for nothing. */
  void clear() {
    look("", List.of());
    current = 0;
    wished = 0;
  }
}
