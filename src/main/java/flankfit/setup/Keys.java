package flankfit.setup;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The keys that a table of the sheet knows, each with what is expected there, in order. */
final class Keys {
  private final Map<String, String> expected = new LinkedHashMap<>();

  private Keys() {}

  static Keys none() {
    return new Keys();
  }

  /** Adds a key and what is expected there, such as {@code a length above 0}. */
  Keys and(String key, String what) {
    expected.put(key, what);
    return this;
  }

  boolean knows(String key) {
    return expected.containsKey(key);
  }

  List<String> words() {
    return List.copyOf(expected.keySet());
  }

  String expected(String key) {
    String what = expected.get(key);
    if (what == null) {
      throw new IllegalArgumentException("key must be a known one: " + key);
    }
    return what;
  }
}
