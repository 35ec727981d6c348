package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.lesson.Question;
import flankfit.lesson.Quiz;
import flankfit.lesson.Step;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Exercises and their answer sheet. */
final class LessonQuiz {
  private final String program;
  private final long seed;
  private final List<Question> questions;
  private final int wanted;

  private LessonQuiz(String program, long seed, List<Question> questions, int wanted) {
    this.program = program;
    this.seed = seed;
    this.questions = questions;
    this.wanted = wanted;
  }

  /**
   * Makes questions.
   *
   * @param number how many
   * @throws RequestException if the number is below 1, or the program gives none
   */
  static LessonQuiz of(String program, List<Step> steps, int number, long seed)
      throws RequestException {
    if (number < 1) {
      throw wrong("--quiz " + number, "a quiz has one question at least", "write --quiz 10");
    }
    List<Question> all = Quiz.of(steps, seed);
    if (all.isEmpty()) {
      throw wrong(
          "no question can be made from these lines",
          "none of them leads from a point that the program states to another one",
          "take a program, or lines, with moves");
    }
    return new LessonQuiz(
        program, seed, List.copyOf(all.subList(0, Math.min(number, all.size()))), number);
  }

  private static RequestException wrong(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }

  /** Writes the questions, and the answers to a file or below them. */
  void write(Optional<Path> answers, PrintWriter out) throws RequestException {
    StringBuilder text = new StringBuilder();
    text.append(program).append(": ").append(Figures.count(questions.size(), "question"));
    text.append(", seed ").append(seed).append('\n');
    if (questions.size() < wanted) {
      text.append("more than these cannot be made from it\n");
    }
    text.append('\n');
    for (int i = 0; i < questions.size(); i++) {
      numbered(i, questions.get(i).question(), text);
      text.append('\n');
    }
    String sheet = answers();
    if (answers.isPresent()) {
      OutputFile.write(answers.get(), sheet.getBytes(StandardCharsets.UTF_8));
      text.append("answers: ").append(answers.get()).append('\n');
    } else {
      text.append(sheet);
    }
    out.print(text);
    out.flush();
  }

  private String answers() {
    StringBuilder text = new StringBuilder();
    text.append("answers to ").append(program).append(", seed ").append(seed).append('\n');
    for (int i = 0; i < questions.size(); i++) {
      numbered(i, questions.get(i).answer(), text);
    }
    return text.toString();
  }

  private static void numbered(int i, String words, StringBuilder text) {
    text.append(Figures.right(Integer.toString(i + 1), 3)).append("  ");
    FindingText.wrap(words, " ".repeat(5), text);
  }

  /** The answer {@code flankfit/quiz/1}. */
  void writeJson(OutputStream target) throws IOException {
    OutputStream out = new BufferedOutputStream(target);
    try (Json json = new Json(out)) {
      json.object()
          .put("schema", "flankfit/quiz/1")
          .put("program", program)
          .put("seed", seed)
          .array("questions");
      for (Question question : questions) {
        json.object()
            .put("line", question.line())
            .put("kind", question.kind().word())
            .put("question", question.question())
            .put("answer", question.answer())
            .end();
      }
      json.endArray().findings(List.of()).end();
    }
    out.flush();
  }
}
