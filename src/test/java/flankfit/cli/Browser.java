package flankfit.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A real browser without a screen and without a network, run by its own command line. */
final class Browser {
  /** Programs that do; a snap is none of them, for it sees no temporary files. */
  private static final List<Path> PROGRAMS =
      List.of(Path.of("/usr/bin/chromium-headless-shell"), Path.of("/usr/bin/chromium"));

  private Browser() {}

  /**
   * What opening a page came to.
   *
   * @param dom the page as the browser understood it
   * @param console what it said of scripts and of what it would not load
   * @param requests addresses it asked the network for
   */
  record Opened(String dom, List<String> console, Set<String> requests) {}

  /** Opens a file; skipped by {@code -Dbrowser=none} alone. */
  static Opened open(Path page, Path folder) throws IOException, InterruptedException {
    assumeFalse(
        System.getProperty("browser", "").equals("none"), "-Dbrowser=none: no page is opened");
    Path program =
        PROGRAMS.stream()
            .filter(Files::isExecutable)
            .findFirst()
            .orElseGet(
                () ->
                    fail(
                        "no Chromium at "
                            + PROGRAMS
                            + ": .ci/setup tests installs it; -Dbrowser=none leaves these tests out"));
    Path log = folder.resolve("requests.json");
    Path told = folder.resolve("console.txt");
    Path dom = folder.resolve("dom.html");
    Process process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--enable-logging=stderr",
                "--user-data-dir=" + folder.resolve("profile"),
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--log-net-log=" + log,
                "--virtual-time-budget=2000",
                "--dump-dom",
                page.toUri().toString())
            .redirectError(told.toFile())
            .redirectOutput(dom.toFile())
            .start();
    if (!process.waitFor(30, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      fail("the browser hangs on " + page);
    }
    List<String> console;
    try (Stream<String> lines = Files.lines(told, UTF_8)) {
      console = lines.filter(line -> line.contains("CONSOLE")).toList();
    }
    return new Opened(Files.readString(dom), console, requests(log, page));
  }

  /** Addresses of pages and their parts; what the browser does for itself names a page, too. */
  private static Set<String> requests(Path log, Path page) throws IOException {
    JsonNode all = new ObjectMapper().readTree(log.toFile());
    Set<String> found = new TreeSet<>();
    List<JsonNode> addresses = new ArrayList<>(all.findValues("url"));
    for (JsonNode address : addresses) {
      String text = address.asText();
      if (!text.startsWith("data:") && !text.equals(page.toUri().toString())) {
        found.add(text);
      }
    }
    return found;
  }
}
