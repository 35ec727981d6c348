package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.nc.Block;
import java.util.Optional;

/** Collects the findings of execution; remembers the first one that stops. */
final class Report {
  private final Findings findings;
  private Block block;
  private Optional<Stop> stop = Optional.empty();
  private int mainLine = -1;

  Report(Findings findings, Block block) {
    this.findings = findings;
    this.block = block;
  }

  Findings findings() {
    return findings;
  }

  void begin(Block next) {
    block = next;
  }

  /** Where a word of the present block stands; the block itself for a negative index. */
  Place place(int word) {
    return word < 0 ? block.place() : block.place(word);
  }

  Place place() {
    return block.place();
  }

  /** Line of the main file: that of the block, or of the call that led to another file. */
  int line() {
    return mainLine >= 0 ? mainLine : block.line();
  }

  /**
   * Blocks of another file follow, called from this line of the main file; -1 for the main file.
   */
  void mainLine(int line) {
    mainLine = line;
  }

  void add(Code code, Place place, String what, String why, String fix) {
    findings.add(code, place, what, why, fix);
    if (code.stops()) {
      stop(code);
    }
  }

  /**
   * Counts a finding whose code has been listed often enough; false when it is to be worded and
   * added.
   */
  boolean counted(Code code) {
    boolean counted = findings.countUnlisted(code);
    if (counted && code.stops()) {
      stop(code);
    }
    return counted;
  }

  /** Counts findings whose code has been listed often enough and does not stop. */
  void counted(Code code, int times) {
    if (times > 0) {
      findings.countUnlisted(code, times);
    }
  }

  /** Whether findings of a code are only counted from now on. */
  boolean onlyCounts(Code code) {
    return findings.onlyCounts(code);
  }

  /** At a word of the present block. */
  void add(Code code, int word, String what, String why, String fix) {
    add(code, place(word), what, why, fix);
  }

  /** With another severity than usual; does not stop. */
  void add(Code code, Severity severity, Place place, String what, String why, String fix) {
    findings.add(new Finding(code, severity, place, what, why, fix));
  }

  /** An error that stops although its code does not always. */
  void addAndStop(Code code, int word, String what, String why, String fix) {
    findings.add(new Finding(code, Severity.ERROR, place(word), what, why, fix));
    stop(code);
  }

  void stop(Code code) {
    stop(line(), code);
  }

  void stop(int line, Code code) {
    if (stop.isEmpty()) {
      stop = Optional.of(new Stop(line, code));
    }
  }

  boolean stopped() {
    return stop.isPresent();
  }

  Optional<Stop> stop() {
    return stop;
  }
}
