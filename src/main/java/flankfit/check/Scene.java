package flankfit.check;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.gauge.Text;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;
import java.util.List;
import java.util.Optional;

/** What the rules look at, and where they report. */
final class Scene {
  private final String file;
  private final Tape tape;
  private final SetupSheet sheet;
  private final Text text;
  private final Findings findings = new Findings();
  private final Surfaces surfaces;
  private final List<Optional<Tool>> tools;
  private final CutPlan plan;
  private int collision = -1;

  Scene(Interpretation done, SetupSheet sheet) {
    this.file = done.file();
    this.tape = done.tape();
    this.sheet = sheet;
    this.text = new Text(done.unit());
    findings.onceEach();
    surfaces = new Surfaces(done, sheet, findings);
    tools = tape.states().stream().map(ModalState::tool).map(sheet::tool).toList();
    plan = new CutPlan(tape, sheet, tools);
  }

  Tape tape() {
    return tape;
  }

  SetupSheet sheet() {
    return sheet;
  }

  Optional<Stock> stock() {
    return sheet.stock();
  }

  Text text() {
    return text;
  }

  Surfaces surfaces() {
    return surfaces;
  }

  Findings findings() {
    return findings;
  }

  /** What has been cut before a move. */
  CutPlan planBefore(int move) {
    plan.advance(move);
    return plan;
  }

  /** The tool in the spindle during a move; empty when the sheet does not know it. */
  Optional<Tool> tool(int move) {
    return tools.get(tape.stateIndex(move));
  }

  /** Radius of the tool (mm); 0 when the sheet does not know it. */
  double radius(int move) {
    Optional<Tool> tool = tool(move);
    return tool.isPresent() ? tool.get().radius() : 0;
  }

  /**
   * Radius of the tool that stands in the way of metal wherever it goes (mm). A boring bar reaches
   * its diameter on one side only: its axis alone counts, as with an unknown tool.
   */
  double body(int move) {
    Optional<Tool> tool = tool(move);
    boolean round = tool.isPresent() && tool.get().kind() != Tool.Kind.BORING_BAR;
    return round ? tool.get().radius() : 0;
  }

  /**
   * Whether a rapid is the shift of a boring cycle: level, after a move straight along Z of the
   * same block, with the spindle held. The tip points away from the wall then.
   */
  boolean isShift(int move) {
    int before = move - 1;
    while (before >= 0 && tape.kind(before) == MoveKind.DWELL) {
      before--;
    }
    return before >= 0
        && tape.block(before) == tape.block(move)
        && tape.state(move).spindle() == ModalState.Spindle.OFF
        && Tolerance.MODEL.zero(climb(move))
        && Tolerance.MODEL.zero(inPlane(before));
  }

  /** Whether a move is a straight one at feed. */
  boolean isLine(int move) {
    return tape.kind(move) == MoveKind.LINE;
  }

  boolean isRapid(int move) {
    return tape.kind(move) == MoveKind.RAPID;
  }

  /** Whether a move cuts where there is metal: a line or an arc at feed. */
  boolean isFeed(int move) {
    return tape.kind(move) == MoveKind.LINE || tape.kind(move) == MoveKind.ARC;
  }

  /** Distance in X and Y from start to end of a move (mm). */
  double inPlane(int move) {
    return Math.hypot(tape.toX(move) - tape.fromX(move), tape.toY(move) - tape.fromY(move));
  }

  /** Signed travel in Z (mm). */
  double climb(int move) {
    return tape.toZ(move) - tape.fromZ(move);
  }

  /** The lower end of a straight move (mm). */
  double low(int move) {
    return Math.min(tape.fromZ(move), tape.toZ(move));
  }

  /** Notes that a move runs into something, so that weaker rules say no more of it. */
  void collides(int move) {
    collision = move;
  }

  boolean isCollision(int move) {
    return collision == move;
  }

  String file() {
    return file;
  }

  void report(Code code, Place place, String what, String why, String fix) {
    findings.add(code, place, what, why, fix);
  }

  void report(Code code, int move, String what, String why, String fix) {
    report(code, code.severity(), move, what, why, fix);
  }

  void report(Code code, Severity severity, int move, String what, String why, String fix) {
    findings.add(
        new Finding(code, severity, new Place(file, tape.line(move), 0, 0), what, why, fix));
  }

  /** A point as the program would write it. */
  String at(double[] point) {
    return "X"
        + text.coordinate(point[0])
        + " Y"
        + text.coordinate(point[1])
        + " Z"
        + text.coordinate(point[2]);
  }
}
