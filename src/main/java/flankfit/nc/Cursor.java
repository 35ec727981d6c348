package flankfit.nc;

import flankfit.finding.Place;

/** Where reading stands in a text; shared by all that read it. */
final class Cursor {
  private final SourceText source;

  /** Offset of the next byte. */
  int pos;

  /** Line of that byte, from 1. */
  int line;

  /** Offset where that line begins. */
  int lineStart;

  /** Whether the rest of the line is not to be read. */
  boolean stopLine;

  Cursor(SourceText source) {
    this.source = source;
  }

  /** Where a stretch of the block being read stands. */
  Place place(Block block, int offset, int length) {
    return source.place(block.line(), lineStart, offset, length);
  }
}
