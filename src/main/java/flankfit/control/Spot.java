package flankfit.control;

import flankfit.nc.Block;
import flankfit.nc.BlockReader;

/**
 * Where in a text a block begins.
 *
 * @param offset offset of the block
 * @param line its line, from 1
 * @param lineStart offset of that line
 */
record Spot(int offset, int line, int lineStart) {
  /** Where a reader stands. */
  static Spot of(BlockReader reader) {
    return new Spot(reader.offset(), reader.line(), reader.lineStart());
  }

  void seek(BlockReader reader) {
    reader.seek(offset, line, lineStart);
  }

  /** Whether a block begins here. */
  boolean is(Block block) {
    return offset == block.offset();
  }
}
