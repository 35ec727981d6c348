package flankfit.control;

import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import java.util.Optional;

/**
 * One text whose blocks are executed in any order. Blocks with statements and expressions are kept,
 * so that a loop compiles each of them once.
 */
final class ProgramFile {
  /** More blocks are compiled again each time: they would fill the memory. */
  private static final int MOST_KEPT = 20_000;

  private final SourceText source;
  private final BlockReader reader;
  private final Block read;
  private final OffsetMap<Kept> kept = new OffsetMap<>();
  private final OffsetMap<JumpSite> jumps = new OffsetMap<>();
  private final OffsetMap<Optional<LoopBody>> bodies = new OffsetMap<>();
  private final ProgramIndex index;
  private Block block;

  /** What was read last, if it is kept and nothing has led elsewhere since. */
  private Optional<Kept> last = Optional.empty();

  /** A block, and what was found to stand behind it when it was first asked for. */
  private static final class Kept {
    private final Block block;
    private final Spot after;
    private Optional<Kept> next = Optional.empty();

    Kept(Block block, Spot after) {
      this.block = block;
      this.after = after;
    }
  }

  ProgramFile(SourceText source, ReadingRules rules) {
    this.source = source;
    reader = BlockReader.quiet(source, rules);
    read = new Block(source);
    block = read;
    Spot begin = Spot.of(reader);
    index = new ProgramIndex(reader, read);
    begin.seek(reader);
  }

  SourceText source() {
    return source;
  }

  ProgramIndex index() {
    return index;
  }

  /** The GOTO of a block. */
  JumpSite jump(Block from) {
    Optional<JumpSite> known = jumps.get(from.offset());
    if (known.isPresent()) {
      return known.get();
    }
    JumpSite site = new JumpSite(this, from.offset());
    jumps.put(from.offset(), site);
    return site;
  }

  /** The blocks of a loop if {@link LoopRun} can run them. Goes to the loop's beginning. */
  Optional<LoopBody> body(Loop loop) {
    Optional<Optional<LoopBody>> known = bodies.get(loop.endOffset());
    if (known.isPresent()) {
      return known.get();
    }
    Optional<LoopBody> body = LoopBody.of(loop, this::blockAt);
    goTo(loop.begin());
    bodies.put(loop.endOffset(), body);
    return body;
  }

  private Optional<LoopBody.Entry> blockAt(Spot spot) {
    goTo(spot);
    if (!next()) {
      return Optional.empty();
    }
    return kept.get(spot.offset()).map(k -> new LoopBody.Entry(k.block, spot, k.after));
  }

  Spot spot() {
    return Spot.of(reader);
  }

  void goTo(Spot spot) {
    last = Optional.empty();
    spot.seek(reader);
  }

  /** Reads the next block; false at the end of the text. */
  boolean next() {
    Optional<Kept> known = known();
    last = known;
    if (known.isPresent()) {
      block = known.get().block;
      known.get().after.seek(reader);
      return true;
    }
    int entry = reader.offset();
    block = read;
    if (!reader.next(read)) {
      return false;
    }
    if (read.isFlow() && kept.size() < MOST_KEPT) {
      block = read.copy();
      kept.put(entry, new Kept(block, Spot.of(reader)));
    }
    return true;
  }

  /** The block that stands here, if it is kept; kept blocks in a row lead to each other. */
  private Optional<Kept> known() {
    if (last.isEmpty()) {
      return kept.get(reader.offset());
    }
    Kept before = last.get();
    if (before.next.isEmpty()) {
      before.next = kept.get(reader.offset());
    }
    return before.next;
  }

  /** The block last read. */
  Block block() {
    return block;
  }
}
