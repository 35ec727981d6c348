package flankfit.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command above all others; alone it asks for one of them. */
@Command(
    name = "flankfit",
    description = {
      "Reads a hand-written milling program as a control would, shows its motion, and predicts"
          + " how a milled thread will gauge."
    },
    versionProvider = Version.class,
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      CheckCommand.class,
      DraftCommand.class,
      GaugeCommand.class,
      LessonCommand.class,
      MetalCommand.class,
      MotionCommand.class,
      ThreadCommand.class,
      WindowCommand.class,
      SchemaCommand.class
    },
    exitCodeListHeading = "Exit status:%n",
    exitCodeList = {
      "0:nothing wrong",
      "1:the answer is no: a finding of severity error, or a thread that will not gauge",
      "2:the request itself is wrong: usage, file, setup sheet",
      "3:the tool failed"
    },
    footer = {
      "",
      "A prediction is no inspection. Prove a program out above the part, in single block,",
      "with a hand on feed hold, and accept threads with calibrated gauges."
    })
final class FlankfitCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }
}
