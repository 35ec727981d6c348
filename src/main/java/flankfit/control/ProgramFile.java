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
  private final ProgramIndex index;
  private Block block;

  private record Kept(Block block, Spot after) {}

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

  Spot spot() {
    return Spot.of(reader);
  }

  void goTo(Spot spot) {
    spot.seek(reader);
  }

  /** Reads the next block; false at the end of the text. */
  boolean next() {
    int entry = reader.offset();
    Optional<Kept> known = kept.get(entry);
    if (known.isPresent()) {
      block = known.get().block();
      known.get().after().seek(reader);
      return true;
    }
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

  /** The block last read. */
  Block block() {
    return block;
  }
}
