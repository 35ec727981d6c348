package flankfit.window;

import java.util.List;

/** The keys of the window, for the help of the command line and for documents. */
public final class WindowKeys {
  /** The sheets that there are. */
  static final List<SheetName> SHEETS = List.of(SheetName.values());

  private WindowKeys() {}

  /** Lines of text, a key and what it does in each. */
  public static List<String> lines() {
    return KeyTable.lines(actions());
  }

  /** A table in Markdown. */
  public static List<String> markdown() {
    return KeyTable.markdown(actions());
  }

  static Actions actions() {
    return new Actions(SHEETS);
  }
}
