package flankfit.cli;

import flankfit.draft.Draft;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A draft with what belongs to it.
 *
 * @param draft the draft
 * @param sheet text of its setup sheet
 * @param taken what was taken because the request does not say it
 * @param programFile where the program was written, if it was
 * @param sheetFile where the sheet was written, if it was
 */
record DraftAnswer(
    Draft draft,
    String sheet,
    List<String> taken,
    Optional<Path> programFile,
    Optional<Path> sheetFile) {
  DraftAnswer {
    taken = List.copyOf(taken);
  }

  /** All assumptions, each sentence once. */
  List<String> assumptions() {
    Set<String> all = new LinkedHashSet<>(taken);
    all.addAll(draft.proof().assumptions());
    return List.copyOf(all);
  }
}
