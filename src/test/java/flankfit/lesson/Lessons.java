package flankfit.lesson;

import flankfit.control.ExampleSheet;
import flankfit.control.Interpreter;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Short programs and their steps. */
final class Lessons {
  private Lessons() {}

  static SourceText source(String text) {
    return SourceText.of("lesson.nc", text.getBytes(StandardCharsets.UTF_8));
  }

  static List<Step> steps(String text) {
    return steps(text, "");
  }

  /** The steps of a program with the short line of a sheet. */
  static List<Step> steps(String text, String sheet) {
    return steps(source(text), ExampleSheet.of(sheet));
  }

  static List<Step> steps(SourceText text, SetupSheet sheet) {
    Steps steps = new Steps(sheet, block -> true);
    Interpreter.observe(text, sheet, List.of(), steps);
    return steps.all();
  }

  /** The step of a line. */
  static Step at(List<Step> steps, int line) {
    return steps.stream().filter(s -> s.place().line() == line).findFirst().orElseThrow();
  }
}
