package flankfit.bench;

import flankfit.picture.DrawBench;
import flankfit.picture.NoOpenGlException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs every benchmark and prints the table of goals: each figure beside its reference. */
public final class Benchmarks {
  private static final double FRAME_MILLISECONDS = 16;

  private static final double WALL_MILLISECONDS = 250;

  private Benchmarks() {}

  /** Runs all, or those whose name holds the first argument. */
  public static void main(String[] args) throws RunnerException, NoOpenGlException {
    String which = args.length > 0 ? args[0] : "flankfit";
    if (which.equals("flankfit") || which.equals("DrawBench")) {
      DrawBench.main(new String[0]);
    }
    if (which.equals("DrawBench")) {
      return;
    }
    Collection<RunResult> results =
        new Runner(new OptionsBuilder().include(which).shouldFailOnError(true).build()).run();
    Map<String, Double> scores = new TreeMap<>();
    for (RunResult result : results) {
      String name = result.getParams().getBenchmark();
      String blocks = result.getParams().getParam("blocks");
      String key = name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1);
      scores.put(blocks == null ? key : key + " " + blocks, result.getPrimaryResult().getScore());
    }
    System.out.println();
    System.out.println(
        LocalDate.now()
            + ", "
            + Runtime.getRuntime().availableProcessors()
            + " cores, Java "
            + Runtime.version());
    interpretation(scores);
    threads(scores);
    Double travels = scores.get("TravelBench.travels");
    if (travels != null) {
      row("GO and NO-GO through 15 turns", travels, "ms, goal 10");
    }
    Double real = scores.get("RealAnswerBench.answer");
    if (real != null) {
      row("real answer of one thread", real, "ms, goal 150");
    }
    odds(scores);
    walls(scores);
    Double metal = scores.get("MetalBench.balance");
    if (metal != null) {
      row("cut a whole part at 0.05 mm, volumes", metal, "ms, goal 2000");
    }
    Double cells = scores.get("MetalBench.cut");
    if (cells != null) {
      row("the same, to the cells that hold surface", cells, "ms, goal 2000");
    }
    Double chord = scores.get("ChordsBench.turn");
    if (chord != null) {
      row("chords of a helix within 1 µm", 1e3 / chord, "million chords/s, goal 100");
    }
  }

  private static void interpretation(Map<String, Double> scores) {
    scores.forEach(
        (key, score) -> {
          if (key.startsWith("InterpretBench.interpret ")) {
            String blocks = key.substring(key.indexOf(' ') + 1);
            double scan = scores.get("InterpretBench.bareScan " + blocks);
            row("interpret " + blocks + " blocks", score / scan, "x the bare scan, goal 2");
          }
        });
    Double loop = scores.get("LoopBench.interpret");
    if (loop != null) {
      double scan = scores.get("LoopBench.bareScan");
      row("a loop of 1 million passes", loop / scan, "x the bare scan of all passes, goal 2");
    }
  }

  private static void threads(Map<String, Double> scores) {
    for (String form : new String[] {"straightForm", "groundForm"}) {
      Double score = scores.get("ProfileBench." + form);
      if (score != null) {
        row(
            "profile and measures, " + form,
            score / FRAME_MILLISECONDS,
            "of a 60 Hz frame, goal below 1");
      }
    }
  }

  private static void odds(Map<String, Double> scores) {
    Double draws = scores.get("OddsBench.draws");
    if (draws != null) {
      row("odds, 10 000 draws", draws, "ms, goal 2000");
    }
    Double advice = scores.get("OddsBench.advice");
    if (advice != null) {
      row("advice after gauging", advice, "ms");
    }
  }

  private static void walls(Map<String, Double> scores) {
    for (String form : new String[] {"straightTeeth", "groundTeeth"}) {
      Double score = scores.get("WallBench." + form);
      if (score != null) {
        row(
            "flanks of a real thread, " + form,
            score / WALL_MILLISECONDS,
            "of 250 ms, goal below 1");
      }
    }
  }

  private static void row(String what, double value, String unit) {
    System.out.println(String.format(Locale.ROOT, "  %-42s %10.4f %s", what, value, unit));
  }
}
