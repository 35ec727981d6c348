package flankfit.trace;

import flankfit.control.BlockTrace;
import flankfit.control.WordMeaning;
import flankfit.control.WordTrace;
import java.util.ArrayList;
import java.util.List;

/** Words of a block: what each means there, and its value. */
final class WordRows {
  private final Numbers numbers;

  WordRows(Numbers numbers) {
    this.numbers = numbers;
  }

  List<TraceRow> of(BlockTrace block) {
    List<TraceRow> rows = new ArrayList<>();
    for (WordTrace word : block.words()) {
      String value = word.value().isPresent() ? value(word, word.value().getAsDouble()) : "";
      rows.add(new TraceRow(TraceRow.Kind.WORD, word.text(), meaning(word), value));
    }
    return rows;
  }

  private String value(WordTrace word, double value) {
    if (word.meaning() == WordMeaning.NONE || word.meaning() == WordMeaning.NOT_EXECUTED) {
      return "";
    }
    return switch (word.meaning().quantity()) {
      case FUNCTION -> "";
      case LENGTH ->
          numbers.length(value)
              + (word.meaning() == WordMeaning.FEED_PER_REVOLUTION ? " a revolution" : "");
      case ANGLE -> Numbers.plain(value) + "°";
      case TIME -> Numbers.plain(value) + " s";
      case FEED_PER_MINUTE -> numbers.feed(value);
      case PER_MINUTE ->
          word.meaning() == WordMeaning.SPINDLE_SPEED
              ? Numbers.speed(value)
              : Numbers.plain(value) + "/min";
      case NUMBER -> number(word, value);
    };
  }

  private String number(WordTrace word, double value) {
    return switch (word.meaning()) {
      case RADIUS_REGISTER, LENGTH_REGISTER ->
          ""
              + word.letter()
              + Numbers.plain(value)
              + (word.register().isPresent()
                  ? " = " + numbers.length(word.register().getAsDouble())
                  : " has no value");
      case MIRROR_END -> "";
      case TOOL -> "T" + Numbers.plain(value);
      case CALLED_PROGRAM -> "O" + Numbers.plain(value);
      case RETURN_BLOCK -> "N" + Numbers.plain(value);
      default -> Numbers.plain(value);
    };
  }

  /** What a word is to its block, in a few words. */
  static String meaning(WordTrace word) {
    return switch (word.meaning()) {
      case PREPARATORY -> known(FunctionWords.preparatory(word.value().orElse(-1)));
      case MISCELLANEOUS -> known(FunctionWords.miscellaneous(word.value().orElse(-1)));
      case END_POINT -> word.letter() + " end point";
      case DISTANCE -> word.letter() + " distance";
      case MACHINE_POINT -> word.letter() + " machine coordinate";
      case INTERMEDIATE_POINT -> word.letter() + " intermediate point";
      case INTERMEDIATE_DISTANCE -> word.letter() + " distance to the intermediate point";
      case HOLE_POSITION -> word.letter() + " of the hole";
      case HOLE_DISTANCE -> word.letter() + " distance to the hole";
      case DEPTH -> "depth of the hole";
      case DEPTH_FROM_CLEARANCE -> "depth from the R level";
      case CLEARANCE_LEVEL -> "R level";
      case CLEARANCE_DISTANCE -> "distance to the R level";
      case PECK -> "peck";
      case BORE_SHIFT -> "shift out of the bore";
      case BACK_BORE_TOP -> "top of the back bore";
      case HOLES -> "number of holes";
      case CENTRE_DISTANCE -> word.letter() + " distance to the centre";
      case CENTRE_POINT -> word.letter() + " centre";
      case ARC_RADIUS -> "radius of the arc";
      case TURNS -> "turns of the arc";
      case LOCAL_SHIFT -> word.letter() + " local shift";
      case PRESENT_POINT -> word.letter() + " of the present point";
      case MIRROR_POSITION -> word.letter() + " where it is mirrored";
      case MIRROR_END -> word.letter() + " no longer mirrored";
      case SCALE_CENTRE -> word.letter() + " centre of the scaling";
      case SCALE_FACTOR -> "scale factor";
      case ROTATION_CENTRE -> word.letter() + " centre of the rotation";
      case ROTATION_ANGLE -> "angle of the rotation";
      case OFFSET_VALUE -> word.letter() + " of the work offset";
      case REGISTER_VALUE -> "value of the register";
      case DATA_KIND -> "what is set";
      case DATA_NUMBER -> "which one is set";
      case WORK_OFFSET_NUMBER -> "number of the work offset";
      case REFERENCE_NUMBER -> "number of the reference point";
      case DWELL -> "dwell";
      case FEED_PER_MINUTE, FEED_PER_REVOLUTION -> "feed";
      case FEED_INVERSE_TIME -> "feed, inverse time";
      case SPINDLE_SPEED -> "spindle speed";
      case TOOL -> "tool";
      case RADIUS_REGISTER -> "radius register";
      case LENGTH_REGISTER -> "length register";
      case CALLED_PROGRAM -> "program called";
      case CALL_COUNT -> "times";
      case RETURN_BLOCK -> "goes on in the caller at";
      case ARGUMENT -> "argument #" + word.variable().orElse(0);
      case LEFT_OUT -> "vacant: the word is left out";
      case NOT_EXECUTED -> word.value().isPresent() ? "not executed" : "not computed";
      case NONE -> "not used";
    };
  }

  private static String known(String words) {
    return words.isEmpty() ? "not modelled" : words;
  }
}
