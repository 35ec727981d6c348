package flankfit.lesson;

import flankfit.control.BlockTrace;
import flankfit.control.WordTrace;
import flankfit.finding.Place;
import flankfit.motion.ModalState.Distance;
import flankfit.nc.Edit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A block of the text that is executed once or several times, and what is changed in it.
 *
 * @param place where the block stands
 * @param edits coordinates that are written otherwise
 * @param mode its mode word, if it has one
 * @param first its first word
 * @param second its second word, if it has one
 * @param words how many words it has
 */
record Site(
    Place place,
    List<Edit> edits,
    Optional<WordTrace> mode,
    Optional<WordTrace> first,
    Optional<WordTrace> second,
    int words) {
  Site {
    edits = List.copyOf(edits);
  }

  static Site of(BlockTrace block, List<Edit> edits) {
    List<WordTrace> words = block.words();
    return new Site(
        block.place(),
        edits,
        words.stream().filter(WordsInMode::isModeWord).findFirst(),
        words.stream().findFirst(),
        words.stream().skip(1).findFirst(),
        words.size());
  }

  /** The mode that its own word states. */
  Optional<Distance> states() {
    return mode.map(
        word -> word.value().orElse(90) == 90 ? Distance.ABSOLUTE : Distance.INCREMENTAL);
  }

  /** Puts a mode word before its first word, spaced as its own words are. */
  Edit insert(Distance wanted) {
    WordTrace before = first.orElseThrow();
    boolean spaced =
        second.isEmpty()
            || second.get().place().column() > before.place().column() + before.place().length();
    String word = WordsInMode.modeWord(wanted);
    boolean small = Character.isLowerCase(before.text().charAt(0));
    Place at = new Place(place.file(), before.place().line(), before.place().column(), 0);
    return new Edit(at, (small ? word.toLowerCase(Locale.ROOT) : word) + (spaced ? " " : ""));
  }

  /** Puts another mode word in place of its own. */
  Edit replace(Distance wanted) {
    WordTrace own = mode.orElseThrow();
    return new Edit(own.place(), own.text().charAt(0) + WordsInMode.modeWord(wanted).substring(1));
  }

  /** Takes its mode word out, with the blanks between it and the next word. */
  Edit delete(String line) {
    Place own = mode.orElseThrow().place();
    int end = own.column() - 1 + own.length();
    int next = end;
    while (next < line.length() && (line.charAt(next) == ' ' || line.charAt(next) == '\t')) {
      next++;
    }
    return new Edit(new Place(own.file(), own.line(), own.column(), next - own.column() + 1), "");
  }
}
