package flankfit.control;

import flankfit.nc.Block;
import flankfit.setup.ControlSwitches.ScaleReading;
import flankfit.setup.ControlSwitches.TurnsWord;
import flankfit.setup.Offsets.Register;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Tells after a block was executed what each of its words was to it. Reports nothing. */
final class WordReading {
  private static final double THOUSAND = 1000;

  private final Machine machine;
  private final BlockWords words;
  private final Modes modes;
  private final Dwell dwell;
  private final CompensationWords sides;

  WordReading(Machine machine, Dwell dwell, CompensationWords sides) {
    this.machine = machine;
    this.words = machine.words;
    this.modes = machine.modes;
    this.dwell = dwell;
    this.sides = sides;
  }

  /** The words of the block that was executed last. */
  List<WordTrace> of(Block block) {
    Optional<Block> plain = understood(block);
    List<WordTrace> all = new ArrayList<>(block.size());
    int next = 0;
    for (int word = 0; word < block.size(); word++) {
      if (plain.isEmpty()) {
        OptionalDouble written =
            block.isFormula(word) ? OptionalDouble.empty() : OptionalDouble.of(block.value(word));
        all.add(trace(block, word, WordMeaning.NOT_EXECUTED, written, OptionalDouble.empty()));
      } else if (next < plain.get().size() && plain.get().place(next).equals(block.place(word))) {
        all.add(word(block, word, plain.get(), next));
        next++;
      } else {
        all.add(
            trace(
                block, word, WordMeaning.LEFT_OUT, OptionalDouble.empty(), OptionalDouble.empty()));
      }
    }
    return all;
  }

  /** The block with its values computed; empty when the run ended before it was understood. */
  private Optional<Block> understood(Block block) {
    boolean tooMany = machine.blockNumber > machine.switches.flow().blockLimit();
    if (block.fault().isPresent() || tooMany) {
      return Optional.empty();
    }
    return block.isFlow() ? machine.log.words() : Optional.of(block);
  }

  private static WordTrace trace(
      Block block, int word, WordMeaning meaning, OptionalDouble value, OptionalDouble register) {
    char letter = block.letter(word);
    OptionalInt variable =
        meaning == WordMeaning.ARGUMENT
            ? OptionalInt.of(Calls.variableOf(letter))
            : OptionalInt.empty();
    return new WordTrace(
        block.text(word), block.place(word), letter, meaning, value, variable, register);
  }

  private WordTrace word(Block block, int word, Block plain, int index) {
    char letter = plain.letter(index);
    WordMeaning meaning = plain.isMacroCall() && letter != 'G' ? argument(letter) : meaning(letter);
    OptionalDouble register =
        switch (meaning) {
          case RADIUS_REGISTER -> radius(whole(plain, index));
          case LENGTH_REGISTER -> length(whole(plain, index));
          default -> OptionalDouble.empty();
        };
    double value = value(meaning, plain, index);
    return trace(block, word, meaning, OptionalDouble.of(value), register);
  }

  private OptionalDouble radius(int register) {
    return machine.offsets.radius(register).isPresent()
        ? OptionalDouble.of(sides.radius(register))
        : OptionalDouble.empty();
  }

  private OptionalDouble length(int register) {
    Optional<Register> entry = machine.offsets.length(register);
    return entry.isPresent()
        ? OptionalDouble.of(entry.get().geometry() + entry.get().wear())
        : OptionalDouble.empty();
  }

  private static int whole(Block block, int word) {
    return (int) Math.rint(block.value(word));
  }

  private static WordMeaning argument(char letter) {
    return switch (letter) {
      case 'P' -> WordMeaning.CALLED_PROGRAM;
      case 'L' -> WordMeaning.CALL_COUNT;
      default -> Calls.variableOf(letter) > 0 ? WordMeaning.ARGUMENT : WordMeaning.NONE;
    };
  }

  private double value(WordMeaning meaning, Block block, int word) {
    double written = block.value(word);
    return switch (meaning.quantity()) {
      case LENGTH ->
          meaning == WordMeaning.FEED_PER_REVOLUTION
              ? modes.unit().toMillimetres(written)
              : machine.dimensions.understood(block, word);
      case FEED_PER_MINUTE -> modes.unit().toMillimetres(written);
      case TIME -> dwell.understood(block, word);
      case NUMBER ->
          meaning == WordMeaning.SCALE_FACTOR
                  && machine.switches.scaleReading() == ScaleReading.THOUSANDTHS
              ? written / THOUSAND
              : written;
      case FUNCTION, ANGLE, PER_MINUTE -> written;
    };
  }

  private WordMeaning meaning(char letter) {
    return switch (letter) {
      case 'G' -> WordMeaning.PREPARATORY;
      case 'M' -> WordMeaning.MISCELLANEOUS;
      case 'F' -> feed();
      case 'S' -> WordMeaning.SPINDLE_SPEED;
      case 'T' -> WordMeaning.TOOL;
      case 'D' -> WordMeaning.RADIUS_REGISTER;
      case 'H' -> WordMeaning.LENGTH_REGISTER;
      case 'X', 'Y', 'Z' -> axis(letter);
      case 'I', 'J', 'K' -> centre(letter);
      case 'R' -> radiusWord();
      case 'P' -> p();
      case 'Q' -> q();
      case 'L' -> l();
      default -> WordMeaning.NONE;
    };
  }

  private WordMeaning feed() {
    return switch (modes.feedMode()) {
      case 930 -> WordMeaning.FEED_INVERSE_TIME;
      case 950 -> WordMeaning.FEED_PER_REVOLUTION;
      default -> WordMeaning.FEED_PER_MINUTE;
    };
  }

  private boolean isCycle() {
    boolean named = words.g(GCode.MOTION) >= CycleKind.FIRST_CODE;
    boolean other = words.g(GCode.ONE_BLOCK) == 530;
    return words.axisTaker() < 0
        && (named || (machine.cycle.isOn() && !words.endsCycle() && !other));
  }

  private Optional<CycleKind> cycle() {
    return isCycle() ? machine.cycle.kind() : Optional.empty();
  }

  private boolean isArc() {
    int written = words.g(GCode.MOTION);
    int motion = written >= 0 ? written / 10 : modes.motion();
    return motion >= 2 && words.axisTaker() < 0 && !isCycle();
  }

  private WordMeaning axis(char letter) {
    return switch (words.axisTaker()) {
      case 40 -> letter == 'X' ? WordMeaning.DWELL : WordMeaning.NONE;
      case 100 -> WordMeaning.OFFSET_VALUE;
      case 280, 300 ->
          modes.absolute() ? WordMeaning.INTERMEDIATE_POINT : WordMeaning.INTERMEDIATE_DISTANCE;
      case 520 -> WordMeaning.LOCAL_SHIFT;
      case 920 -> WordMeaning.PRESENT_POINT;
      case 510 -> WordMeaning.SCALE_CENTRE;
      case 680 -> WordMeaning.ROTATION_CENTRE;
      case 511 -> WordMeaning.MIRROR_POSITION;
      case 501 -> WordMeaning.MIRROR_END;
      default -> target(letter);
    };
  }

  private WordMeaning target(char letter) {
    if (words.g(GCode.ONE_BLOCK) == 530) {
      return WordMeaning.MACHINE_POINT;
    }
    if (!isCycle()) {
      return modes.absolute() ? WordMeaning.END_POINT : WordMeaning.DISTANCE;
    }
    if (letter - 'X' == modes.plane().n()) {
      return modes.absolute() ? WordMeaning.DEPTH : WordMeaning.DEPTH_FROM_CLEARANCE;
    }
    return modes.absolute() ? WordMeaning.HOLE_POSITION : WordMeaning.HOLE_DISTANCE;
  }

  private WordMeaning centre(char letter) {
    if (words.axisTaker() == 510) {
      return WordMeaning.SCALE_FACTOR;
    }
    Optional<CycleKind> cycle = cycle();
    if (cycle.isPresent()) {
      boolean byK = machine.switches.cycles().backBoreFromDepth() && cycle.get() == CycleKind.G87;
      if (letter == 'K') {
        return byK ? WordMeaning.BACK_BORE_TOP : counts('K') ? WordMeaning.HOLES : WordMeaning.NONE;
      }
      return cycle.get().isShifting() ? WordMeaning.BORE_SHIFT : WordMeaning.NONE;
    }
    if (!isArc()) {
      return WordMeaning.NONE;
    }
    return modes.absoluteCentre() ? WordMeaning.CENTRE_POINT : WordMeaning.CENTRE_DISTANCE;
  }

  private boolean counts(char letter) {
    return machine.switches.cycles().repeat().reads(letter);
  }

  private WordMeaning radiusWord() {
    if (words.axisTaker() == 680) {
      return WordMeaning.ROTATION_ANGLE;
    }
    if (words.axisTaker() == 100) {
      return WordMeaning.REGISTER_VALUE;
    }
    if (isCycle()) {
      return modes.absolute() ? WordMeaning.CLEARANCE_LEVEL : WordMeaning.CLEARANCE_DISTANCE;
    }
    return isArc() ? WordMeaning.ARC_RADIUS : WordMeaning.NONE;
  }

  private WordMeaning p() {
    int code = words.g(GCode.ONE_BLOCK);
    int stop = words.m(MCode.STOP);
    if (code == 40) {
      return WordMeaning.DWELL;
    }
    if (words.g(GCode.WORK_OFFSET) == 541) {
      return WordMeaning.WORK_OFFSET_NUMBER;
    }
    if (stop == 98) {
      return WordMeaning.CALLED_PROGRAM;
    }
    if (stop == 99) {
      return WordMeaning.RETURN_BLOCK;
    }
    if (code == 300) {
      return WordMeaning.REFERENCE_NUMBER;
    }
    if (code == 100) {
      return WordMeaning.DATA_NUMBER;
    }
    if (words.axisTaker() == 510) {
      return WordMeaning.SCALE_FACTOR;
    }
    if (cycle().filter(kind -> kind.reads('P')).isPresent()) {
      return WordMeaning.DWELL;
    }
    return turns(TurnsWord.P);
  }

  private WordMeaning turns(TurnsWord word) {
    boolean read = isArc() && machine.switches.arcs().turns() == word;
    return read ? WordMeaning.TURNS : WordMeaning.NONE;
  }

  private WordMeaning q() {
    Optional<CycleKind> cycle = cycle().filter(kind -> kind.reads('Q'));
    if (cycle.isEmpty()) {
      return WordMeaning.NONE;
    }
    return cycle.get().isPecking() ? WordMeaning.PECK : WordMeaning.BORE_SHIFT;
  }

  private WordMeaning l() {
    if (words.m(MCode.STOP) == 98) {
      return WordMeaning.CALL_COUNT;
    }
    if (words.g(GCode.ONE_BLOCK) == 100) {
      return WordMeaning.DATA_KIND;
    }
    if (isCycle()) {
      return counts('L') ? WordMeaning.HOLES : WordMeaning.NONE;
    }
    return turns(TurnsWord.L);
  }
}
