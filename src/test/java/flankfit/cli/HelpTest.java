package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Examples in the help can be copied as they stand. */
class HelpTest {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private static CommandLine commands() {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    return Main.commandLine(nowhere, nowhere);
  }

  static Stream<String> names() {
    return commands().getSubcommands().keySet().stream();
  }

  /** The examples of a help, parts of one joined where a line ends in a backslash. */
  private static List<String> examples(String help) {
    String joined = help.replaceAll("\\\\\\R\\s*", "");
    return joined
        .lines()
        .map(line -> line.replaceFirst("^Examples?:", "").strip())
        .filter(line -> line.startsWith("flankfit "))
        .toList();
  }

  private static String[] words(String example) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(example);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words.subList(1, words.size()).toArray(String[]::new);
  }

  @ParameterizedTest
  @MethodSource("names")
  void each_example_stands_whole_and_is_understood(String name) {
    CommandLine command = commands().getSubcommands().get(name);
    String help = command.getUsageMessage();
    for (String line : command.getCommandSpec().usageMessage().footer()) {
      assertThat(help.lines()).as("unbroken").contains(line);
    }
    for (String example : examples(help)) {
      // Throws what the user would be told.
      assertThat(commands().parseArgs(words(example)).subcommand().commandSpec().name())
          .isEqualTo(name);
    }
  }

  @Test
  void the_job_commands_have_examples() {
    for (String name : List.of("gauge", "motion", "metal", "lesson", "draft", "check", "thread")) {
      assertThat(examples(commands().getSubcommands().get(name).getUsageMessage()))
          .as(name)
          .isNotEmpty();
    }
  }
}
