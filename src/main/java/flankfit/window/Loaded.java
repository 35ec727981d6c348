package flankfit.window;

import flankfit.picture.Scene;
import java.util.List;
import java.util.Objects;

/**
 * What there is of a program at some time of its load. Never changes.
 *
 * @param beginning grows with each load, and when moves of one turn out not to be the program's;
 *     within one beginning moves are only added
 * @param stage how far the work has come
 * @param share how much of this stage is done (1); negative where that is not known
 * @param whole whether all moves of the program are there
 * @param blocks number of blocks executed
 * @param input what can be shown
 * @param steps blocks, lines and times of its tape
 * @param scene its scene, without a cutter
 * @param told why the load ended before its end; empty otherwise
 * @param survey what is looked up in the whole program; of nothing before that is there
 * @param problems why it could not be read, in full; empty otherwise
 */
record Loaded(
    long beginning,
    Stage stage,
    double share,
    boolean whole,
    int blocks,
    WindowInput input,
    Steps steps,
    Scene scene,
    String told,
    Survey survey,
    List<Problem> problems) {
  Loaded {
    Objects.requireNonNull(stage, "stage");
    Objects.requireNonNull(input, "input");
    Objects.requireNonNull(steps, "steps");
    Objects.requireNonNull(scene, "scene");
    Objects.requireNonNull(told, "told");
    Objects.requireNonNull(survey, "survey");
    problems = List.copyOf(problems);
  }

  /** The same before the whole program is there. */
  Loaded(
      long beginning,
      Stage stage,
      double share,
      boolean whole,
      int blocks,
      WindowInput input,
      Steps steps,
      Scene scene,
      String told) {
    this(beginning, stage, share, whole, blocks, input, steps, scene, told, Survey.NONE, List.of());
  }

  /** A program of which everything is known. */
  static Loaded of(WindowInput input) {
    Scene scene =
        new Scene(input.tape(), input.setup(), input.file())
            .withMajorDiameters(input.majorDiameters());
    int size = input.tape().size();
    int blocks = size == 0 ? 0 : input.tape().block(size - 1);
    Steps steps = new Steps(input.tape());
    return new Loaded(1, Stage.DONE, 1, true, blocks, input, steps, scene, "")
        .with(Survey.of(input, steps));
  }

  /** The same at another stage. */
  Loaded at(Stage next, double nextShare) {
    return new Loaded(
        beginning, next, nextShare, whole, blocks, input, steps, scene, told, survey, problems);
  }

  /** The same, surveyed. */
  Loaded with(Survey found) {
    return new Loaded(
        beginning, stage, share, whole, blocks, input, steps, scene, told, found, problems);
  }

  /** The same, ended before its end. */
  Loaded ended(Stage how, String why) {
    return ended(how, why, List.of());
  }

  /** The same, ended before its end, with the reasons in full. */
  Loaded ended(Stage how, String why, List<Problem> reasons) {
    return new Loaded(
        beginning, how, share, whole, blocks, input, steps, scene, why, survey, reasons);
  }
}
