package flankfit.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * One run of the packaged jar as a process of its own.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record FlankfitProcess(int status, String out, String err) {
  private static final long PATIENCE_SECONDS = 120;

  /** Runs the jar with arguments. */
  static FlankfitProcess run(String... arguments) throws IOException, InterruptedException {
    return run(Map.of(), arguments);
  }

  /** Runs the jar with more environment variables and arguments. */
  static FlankfitProcess run(Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    return runIn(Path.of(""), environment, arguments);
  }

  /** Runs the jar in a folder, with more environment variables and arguments. */
  static FlankfitProcess runIn(Path folder, Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // Most of a short run is start-up, which the better compiler only slows.
    command.add("-XX:TieredStopAtLevel=1");
    Archive.FILE.ifPresent(file -> command.add("-XX:SharedArchiveFile=" + file));
    command.add("-jar");
    command.add(System.getProperty("flankfit.jar"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.directory(folder.toAbsolutePath().toFile());
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    CompletableFuture<String> out = text(process.getInputStream());
    CompletableFuture<String> err = text(process.getErrorStream());
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("no end after " + PATIENCE_SECONDS + " s: " + command);
    }
    return new FlankfitProcess(process.exitValue(), out.join(), err.join());
  }

  /** Classes as the machine keeps them, dumped once by a first run: others start sooner with it. */
  private static final class Archive {
    static final Optional<Path> FILE = dumped();

    private static Optional<Path> dumped() {
      Path jar = Path.of(System.getProperty("flankfit.jar"));
      Path file =
          jar.resolveSibling("classes-" + ProcessHandle.current().pid() + ".jsa").toAbsolutePath();
      List<String> command =
          List.of(
              Path.of(System.getProperty("java.home"), "bin", "java").toString(),
              "-XX:TieredStopAtLevel=1",
              "-XX:ArchiveClassesAtExit=" + file,
              "-jar",
              jar.toString(),
              "gauge",
              Path.of("sample-programs", "filter-housing-m20.nc").toString());
      try {
        Process process =
            new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      file.toFile().deleteOnExit();
      return Files.exists(file) ? Optional.of(file) : Optional.empty();
    }
  }

  private static CompletableFuture<String> text(InputStream stream) {
    return CompletableFuture.supplyAsync(
        () -> {
          try (stream) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
  }
}
