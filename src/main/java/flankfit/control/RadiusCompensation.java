package flankfit.control;

import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.StartUp;
import flankfit.unit.Require;
import flankfit.unit.Tolerance;
import java.util.ArrayDeque;
import java.util.Optional;

/**
 * Cutter radius compensation: takes the programmed moves from G41 or G42 to the cancel move and
 * writes the path of the tool to the tape. An element is written when the next one is known, for
 * its end depends on it; blocks without plane motion between the two wait with it, however many.
 * Only the waiting ones are kept.
 *
 * <p>Call {@link #finish()} at the end of the program and before any other error that stops, so
 * that all moves of earlier blocks are on the tape.
 */
final class RadiusCompensation {
  private static final double NEAR = Tolerance.MODEL.value();

  /** An arc may shrink below nothing by rounding (mm). */
  private static final double VANISHED = -1e-9;

  /** Moves on the tape that take as much memory as one that waits. */
  private static final int MOVES_A_WAITING_ONE = 8;

  private enum Phase {
    OFF,
    /** Said, but no move with plane motion yet. */
    SAID,
    ON,
    /** G40 said, but no move with plane motion yet. */
    LEAVING
  }

  private final ControlSwitches.Compensation switches;
  private final CompensationFindings findings;
  private final CompensatedPath path;
  private final Corner corner;
  private final CancelMove cancelMove;

  private Phase phase = Phase.OFF;
  private boolean stopped;
  private double sigma;
  private Plane plane = Plane.XY;

  /** The element or start-up that waits for the next one. */
  private Optional<PlaneElement> waiting = Optional.empty();

  private boolean waitingIsStartUp;

  /** The element that the cancel move leaves. */
  private Optional<PlaneElement> left = Optional.empty();

  private final ArrayDeque<ProgrammedMove> between = new ArrayDeque<>();
  private int blocksBetween;
  private int lastBlockBetween;
  private Place lastPlaceBetween = Place.file("");

  /**
   * Compensation that is off.
   *
   * @param switches how the control behaves
   * @param tape takes the moves
   * @param findings takes RC02 to RC07 and RC17 to RC19
   */
  RadiusCompensation(ControlSwitches.Compensation switches, TapeBuilder tape, Findings findings) {
    this.switches = switches;
    this.findings = new CompensationFindings(findings);
    path = new CompensatedPath(tape);
    corner = new Corner(switches);
    cancelMove = new CancelMove(corner, path, this.findings);
  }

  /**
   * G41 or G42 is said; the next move with plane motion builds the compensation up.
   *
   * @param offset signed offset to the left of the direction of motion (mm)
   * @param inPlane plane of the compensation
   * @param place where it is said
   */
  void start(double offset, Plane inPlane, Place place) {
    Require.finite("offset", offset);
    if (active()) {
      throw new IllegalArgumentException("compensation is on already at " + place);
    }
    sigma = offset;
    plane = inPlane;
    phase = Phase.SAID;
    left = Optional.empty();
    path.begin(plane);
  }

  /** G40 is said; it acts on the next move with plane motion. */
  void cancel(Place place) {
    switch (phase) {
      case OFF, LEAVING -> {}
      case SAID -> {
        findings.nothingBetween(place);
        phase = Phase.OFF;
      }
      case ON -> {
        if (waiting.isPresent() && waitingIsStartUp) {
          findings.nothingBetween(place);
          endStartUpBy(true);
        }
        left = waiting;
        writeWaiting();
        phase = Phase.LEAVING;
      }
    }
  }

  /** Whether moves belong here: from {@link #start} until the cancel move is written. */
  boolean active() {
    return phase != Phase.OFF;
  }

  /** Whether an error that stops was reported; nothing is written any more. */
  boolean stopped() {
    return stopped;
  }

  /** Number of the first block of which a move is held back; the greatest number for none. */
  int heldFrom() {
    if (waiting.isPresent()) {
      return waiting.get().move.block();
    }
    return between.isEmpty() ? Integer.MAX_VALUE : between.peek().block();
  }

  /** Takes the next move of the program. */
  void move(ProgrammedMove move) {
    if (stopped) {
      return;
    }
    boolean inPlane = PlaneElement.hasPlaneMotion(move, plane);
    switch (phase) {
      case OFF -> path.uncompensated(move);
      case SAID -> {
        if (inPlane) {
          startUp(move);
        } else {
          path.uncompensated(move);
        }
      }
      case ON -> {
        if (inPlane) {
          element(move);
        } else {
          wait(move);
        }
      }
      case LEAVING -> {
        if (inPlane) {
          leave(move);
        } else {
          path.standing(move, sigma != 0);
        }
      }
    }
  }

  /**
   * Counts a block that makes no move at all, such as a coolant function, among those without plane
   * motion.
   *
   * @param block number of the executed block
   * @param place where it stands
   */
  void blockWithoutMove(int block, Place place) {
    if (phase == Phase.ON) {
      count(block, place);
    }
  }

  /** Writes what waits: no more moves come. */
  void finish() {
    if (!stopped && waiting.isPresent()) {
      if (waitingIsStartUp) {
        endStartUpBy(false);
      }
      writeWaiting();
    }
  }

  /**
   * Where the compensated tool stands, or will stand if the path ends here; empty when it is not
   * active or has not moved yet.
   */
  Optional<Point> toolAt() {
    if (!active() || !path.isKnown()) {
      return Optional.empty();
    }
    if (waiting.isEmpty()) {
      return Optional.of(path.tool());
    }
    PlaneElement last = waiting.get();
    double[] at = new double[3];
    at[plane.u()] = last.finishU();
    at[plane.v()] = last.finishV();
    at[plane.n()] = between.isEmpty() ? last.endN : between.getLast().to(plane.n());
    return Optional.of(new Point(at[0], at[1], at[2]));
  }

  private void wait(ProgrammedMove move) {
    path.checkRoom(MOVES_A_WAITING_ONE * between.size());
    between.add(move);
    count(move.block(), move.place());
  }

  private void count(int block, Place place) {
    if (blocksBetween == 0 || block != lastBlockBetween) {
      blocksBetween++;
    }
    lastBlockBetween = block;
    lastPlaceBetween = place;
  }

  private void startUp(ProgrammedMove move) {
    path.standAtStartOf(move);
    if (move.isArc()) {
      startUpOnArc(move);
      return;
    }
    PlaneElement line = new PlaneElement(move, sigma, plane);
    double radius = Math.abs(sigma);
    boolean tangentStyle = switches.startUp() == StartUp.TANGENT;
    if (line.extent < radius - NEAR) {
      findings.startUpShort(move, line.extent, radius, tangentStyle);
      stopped = tangentStyle;
    }
    if (!stopped) {
      begin(tangentStyle ? inTangentDirection(line) : line);
    }
  }

  private PlaneElement inTangentDirection(PlaneElement line) {
    if (sigma == 0) {
      return line;
    }
    double sine = Math.max(-1, Math.min(1, sigma / line.extent));
    double direction = Math.atan2(line.tangent0V, line.tangent0U) + Math.asin(sine);
    return PlaneElement.inDirection(line.move, sigma, plane, direction);
  }

  private void startUpOnArc(ProgrammedMove move) {
    if (!switches.startOnArc()) {
      findings.startsInArc(move.place());
      stopped = true;
      return;
    }
    PlaneElement arc = new PlaneElement(move, sigma, plane);
    if (fits(arc)) {
      begin(arc);
    }
  }

  private void begin(PlaneElement startUp) {
    phase = Phase.ON;
    await(startUp, true);
  }

  private void await(PlaneElement element, boolean isStartUp) {
    waiting = Optional.of(element);
    waitingIsStartUp = isStartUp;
    blocksBetween = 0;
  }

  /** Whether the tool fits into an arc; reports when not. */
  private boolean fits(PlaneElement e) {
    if (e.isArc() && e.leastRadius() < VANISHED) {
      findings.exceedsArc(e.move, e.sense * sigma);
      stopped = true;
      return false;
    }
    return true;
  }

  private void element(ProgrammedMove move) {
    PlaneElement next = new PlaneElement(move, sigma, plane);
    if (!fits(next)) {
      return;
    }
    if (waiting.isEmpty()) {
      await(next, false);
      return;
    }
    PlaneElement before = waiting.get();
    Corner.Join join =
        waitingIsStartUp ? corner.joinStartUp(before, next) : corner.join(before, next);
    switch (join) {
      case MADE -> goOn(before, next);
      case DOES_NOT_FIT -> {
        findings.doesNotFit(before.move, move, Math.abs(sigma));
        stopped = true;
      }
      case INSIDE_NOT_ALLOWED -> {
        if (waitingIsStartUp && !switches.insideCornerIsError()) {
          findings.insideCornerAfterStartUp(move.place());
        } else {
          findings.insideCorner(move.place());
        }
        writeWaiting();
        stopped = true;
      }
    }
  }

  private void goOn(PlaneElement before, PlaneElement next) {
    if (corner.turnsBack()) {
      findings.turnsBack(next.move.place());
    }
    if (blocksBetween >= 2 && !corner.isTangent()) {
      findings.blocksWithoutPlaneMotion(
          lastPlaceBetween, blocksBetween, corner.overcut(before), next.move.state().unit());
    }
    writeWaiting();
    corner.write(path, next);
    await(next, false);
  }

  /** Ends a start-up that no element follows, square to itself. */
  private void endStartUpBy(boolean cancelled) {
    PlaneElement line = waiting.orElseThrow();
    if (cancelled && !line.isArc()) {
      waiting = Optional.of(new PlaneElement(line.move, sigma, plane));
    }
  }

  private void writeWaiting() {
    waiting.ifPresent(
        element -> {
          if (waitingIsStartUp && element.isArc()) {
            path.spiralOnto(element);
          } else {
            path.element(element);
          }
        });
    while (!between.isEmpty()) {
      path.standing(between.remove(), sigma != 0);
    }
    waiting = Optional.empty();
    blocksBetween = 0;
  }

  private void leave(ProgrammedMove move) {
    if (move.isArc()) {
      findings.endsInArc(move.place());
      stopped = true;
      return;
    }
    if (switches.startUp() == StartUp.OWN_NORMAL && left.isPresent()) {
      cancelMove.goRound(left.get(), move, sigma, plane);
    }
    path.uncompensated(move);
    phase = Phase.OFF;
    left = Optional.empty();
  }
}
