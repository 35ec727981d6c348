package flankfit.setup;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * One word that a value may be, and what it means.
 *
 * @param word word in the sheet
 * @param value meaning
 */
record Choice<T>(String word, T value) {
  static <T> Choice<T> of(String word, T value) {
    return new Choice<>(word, value);
  }

  /** A choice for each value, by its word. */
  static <T> List<Choice<T>> each(T[] values, Function<T, String> word) {
    return Arrays.stream(values).map(v -> new Choice<>(word.apply(v), v)).toList();
  }

  static <T> List<String> words(List<Choice<T>> choices) {
    return choices.stream().map(Choice::word).toList();
  }
}
