package flankfit.metal;

/**
 * A part of a tool on its way along one piece of a path: how deep places lie in it, and which
 * places may lie deeper than so much. Not thread-safe.
 */
abstract class BodyPath {
  final PathPiece piece;

  /** Share of the piece at which the place last asked for lies deepest. */
  double share;

  /** Direction in which the depth last asked for grows (1). */
  double alongX;

  double alongY;
  double alongZ;

  /** How far it grows in that direction, at most (mm). */
  double room;

  BodyPath(PathPiece piece) {
    this.piece = piece;
  }

  /** How deep a place lies at the deepest (mm); not above 0 where the part does not come. */
  abstract double depth(double x, double y, double z);

  /**
   * Narrows a clip's box to what may lie deeper than so much (mm); may lay a plane.
   *
   * @return false when nothing does
   */
  abstract boolean narrow(Clip clip, double deeper);
}
