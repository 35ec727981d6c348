package flankfit.fuzz;

import com.code_intelligence.jazzer.Jazzer;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Starts a fuzz target: {@code FuzzMain TARGET SECONDS [options of the fuzzer]}, TARGET one of
 * bytes, words, programs, sheet, or several at once with commas between. Ends the process with a
 * status other than 0 when something was found; the failing input then lies as text in {@code
 * target/fuzz/found}.
 */
public final class FuzzMain {
  private static final Path WORK = Path.of("target", "fuzz");
  private static final Path RESOURCES = Path.of("src", "test", "resources", "flankfit");
  private static final Path SAMPLES = Path.of("sample-programs");
  private static final int SEEDS = 60;

  private FuzzMain() {}

  /** Runs a target until its time is over or something is found. */
  public static void main(String[] args) throws IOException, InterruptedException {
    if (args[0].contains(",")) {
      System.exit(together(args));
    }
    String target = args[0];
    Path corpus = Files.createDirectories(WORK.resolve("corpus").resolve(target));
    List<String> given = new ArrayList<>();
    given.add("--target_class=" + FuzzMain.class.getPackageName() + "." + className(target));
    given.add("--instrumentation_includes=flankfit.**");
    given.add("--custom_hook_includes=flankfit.**");
    given.add("--instrumentation_excludes=flankfit.fuzz.**");
    given.add("--reproducer_path=" + WORK);
    given.add("-artifact_prefix=" + WORK.resolve(target) + "-");
    given.add("-max_total_time=" + args[1]);
    given.add("-max_len=6000");
    given.add("-len_control=0");
    given.add("-timeout=60");
    given.add("-rss_limit_mb=0");
    given.add("-print_final_stats=1");
    given.add("-dict=" + RESOURCES.resolve("fuzz").resolve("words.dict"));
    given.addAll(Arrays.asList(args).subList(2, args.length));
    if (Arrays.stream(args, 2, args.length).allMatch(arg -> arg.startsWith("-"))) {
      given.add(corpus.toString());
      given.addAll(seeds(target));
    }
    Jazzer.main(given.toArray(new String[0]));
  }

  /** Each target in a process of its own, started like this one; gives the worst status. */
  private static int together(String[] args) throws IOException, InterruptedException {
    List<Process> processes = new ArrayList<>();
    for (String target : args[0].split(",", -1)) {
      List<String> command = new ArrayList<>();
      command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
      command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
      command.addAll(List.of("-classpath", System.getProperty("java.class.path")));
      command.add(FuzzMain.class.getName());
      command.add(target);
      command.addAll(Arrays.asList(args).subList(1, args.length));
      processes.add(new ProcessBuilder(command).inheritIO().start());
    }
    int worst = 0;
    for (Process process : processes) {
      worst = Math.max(worst, process.waitFor());
    }
    return worst;
  }

  private static String className(String target) {
    return switch (target) {
      case "bytes" -> "BytesFuzz";
      case "words" -> "WordsFuzz";
      case "programs" -> "ProgramsFuzz";
      case "sheet" -> "SheetFuzz";
      default -> throw new IllegalArgumentException("no such target: " + target);
    };
  }

  /** Folders to begin with: texts for what is text, else bytes of a fixed seed. */
  private static List<String> seeds(String target) throws IOException {
    return switch (target) {
      case "bytes" ->
          List.of(
              SAMPLES.toString(),
              RESOURCES.resolve("control").resolve("programs").toString(),
              RESOURCES.resolve("fuzz").toString());
      case "sheet" -> List.of(SAMPLES.toString(), RESOURCES.resolve("setup").toString());
      default -> List.of(randomSeeds(target).toString());
    };
  }

  private static Path randomSeeds(String target) throws IOException {
    Path folder = Files.createDirectories(WORK.resolve("seeds").resolve(target));
    Random random = new Random(20261125);
    for (int i = 0; i < SEEDS; i++) {
      byte[] bytes = new byte[8 << random.nextInt(8)];
      random.nextBytes(bytes);
      Files.write(folder.resolve("seed-" + i), bytes);
    }
    return folder;
  }
}
