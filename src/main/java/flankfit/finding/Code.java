package flankfit.finding;

/**
 * Every kind of finding. A code is stable for ever and never used again for something else; {@link
 * #inWords()} is its name for people, {@link #stops()} whether it ends interpretation.
 */
public enum Code {
  // RD: reading
  RD01(Severity.ERROR, true, "not-a-program"),
  RD02(Severity.NOTE, false, "text-outside-percent-marks"),
  RD03(Severity.WARNING, false, "percent-mark-missing"),
  RD04(Severity.NOTE, false, "control-characters-skipped"),
  RD05(Severity.ERROR, true, "unknown-character"),
  RD06(Severity.ERROR, true, "word-without-number"),
  RD07(Severity.ERROR, true, "decimal-comma"),
  RD08(Severity.ERROR, true, "comment-not-closed"),
  RD09(Severity.ERROR, true, "parentheses-do-not-match"),
  RD10(Severity.WARNING, false, "blank-inside-number"),
  RD11(Severity.NOTE, false, "lower-case-letters"),
  RD12(Severity.ERROR, true, "not-a-number"),
  RD13(Severity.WARNING, false, "finer-than-least-increment"),
  RD14(Severity.ERROR, true, "letter-o-for-zero"),
  RD15(Severity.WARNING, false, "number-without-point"),
  RD16(Severity.WARNING, false, "counted-in-least-increments"),
  RD17(Severity.NOTE, false, "block-after-semicolon"),
  RD18(Severity.WARNING, false, "long-line"),
  RD19(Severity.NOTE, false, "block-delete"),
  RD20(Severity.ERROR, true, "slash-inside-block"),
  RD21(Severity.WARNING, false, "sequence-number-repeated"),
  RD22(Severity.NOTE, false, "program-number-unusual"),
  RD23(Severity.WARNING, false, "text-after-program-end"),
  RD24(Severity.NOTE, false, "comment-encoding"),
  // WD: words and blocks
  WD01(Severity.ERROR, true, "g-function-not-modelled"),
  WD02(Severity.ERROR, true, "letter-twice"),
  WD03(Severity.ERROR, true, "g-functions-exclude-each-other"),
  WD04(Severity.ERROR, true, "axis-words-wanted-twice"),
  WD05(Severity.ERROR, true, "word-not-modelled"),
  WD06(Severity.WARNING, false, "rotary-zero-ignored"),
  WD07(Severity.ERROR, false, "m-function-not-modelled"),
  WD08(Severity.ERROR, true, "m-functions-exclude-each-other"),
  WD09(Severity.WARNING, false, "word-without-use"),
  WD10(Severity.ERROR, true, "whole-number-needed"),
  WD11(Severity.ERROR, true, "out-of-range"),
  WD12(Severity.WARNING, false, "motion-without-function"),
  WD13(Severity.NOTE, false, "many-m-functions"),
  WD14(Severity.WARNING, false, "tool-change-with-motion"),
  WD15(Severity.WARNING, false, "motion-function-with-return"),
  // MD: modes, feed, speed
  MD01(Severity.ERROR, true, "no-feed"),
  MD02(Severity.ERROR, true, "feed-not-positive"),
  MD03(Severity.ERROR, true, "inverse-time-without-feed"),
  MD04(Severity.ERROR, true, "feed-per-revolution-at-rest"),
  MD05(Severity.ERROR, true, "unit-or-plane-changed-within-mode"),
  MD06(Severity.NOTE, false, "relies-on-power-up"),
  MD07(Severity.WARNING, false, "incremental-left-on"),
  MD08(Severity.WARNING, false, "incremental-after-tool-change"),
  MD09(Severity.WARNING, false, "feed-unusual"),
  MD10(Severity.WARNING, false, "feed-mode-left-on"),
  MD11(Severity.WARNING, false, "plane-left-on"),
  MD12(Severity.NOTE, false, "stop-acts-after-motion"),
  MD13(Severity.WARNING, false, "spindle-without-speed"),
  MD14(Severity.WARNING, false, "unit-changed"),
  MD15(Severity.NOTE, false, "standard-unit-code"),
  MD16(Severity.NOTE, false, "spindle-reversed"),
  MD17(Severity.WARNING, false, "dwell-without-time"),
  // AR: arcs
  AR01(Severity.ERROR, true, "arc-end-off-circle"),
  AR02(Severity.ERROR, true, "arc-without-centre"),
  AR03(Severity.ERROR, true, "radius-and-centre"),
  AR04(Severity.ERROR, true, "full-circle-by-radius"),
  AR05(Severity.ERROR, true, "radius-too-small"),
  AR06(Severity.ERROR, true, "centre-word-of-normal"),
  AR07(Severity.ERROR, true, "absolute-centre-incomplete"),
  AR08(Severity.ERROR, true, "turns-word-in-arc"),
  AR09(Severity.WARNING, false, "radius-form-ill-conditioned"),
  AR10(Severity.WARNING, false, "end-nearly-start"),
  AR11(Severity.WARNING, false, "radii-differ"),
  AR12(Severity.WARNING, false, "radius-stretched"),
  AR13(Severity.NOTE, false, "other-centre-mode-closes"),
  AR14(Severity.ERROR, true, "negative-radius"),
  // OF: offsets, reference, frames
  OF01(Severity.WARNING, false, "no-work-offset-stated"),
  OF02(Severity.NOTE, false, "offset-without-value"),
  OF03(Severity.WARNING, false, "coordinate-shift"),
  OF04(Severity.WARNING, false, "shift-left-on"),
  OF09(Severity.NOTE, false, "reference-point-assumed"),
  OF10(Severity.ERROR, true, "machine-coordinates-mode"),
  OF11(Severity.ERROR, false, "return-by-way-of-the-part"),
  OF12(Severity.ERROR, true, "return-without-axis"),
  OF13(Severity.WARNING, false, "distance-from-assumed-point"),
  // TL: tool and length
  TL01(Severity.ERROR, true, "tool-change-without-tool"),
  TL02(Severity.NOTE, false, "tool-not-in-sheet"),
  TL03(Severity.WARNING, false, "tool-never-changed"),
  TL04(Severity.ERROR, false, "no-length-offset"),
  TL05(Severity.WARNING, false, "length-of-another-tool"),
  TL06(Severity.WARNING, false, "length-without-value"),
  TL07(Severity.WARNING, false, "length-without-motion"),
  TL08(Severity.WARNING, false, "length-subtracted"),
  TL09(Severity.ERROR, false, "tip-off-by-length"),
  TL10(Severity.ERROR, false, "tool-change-too-low"),
  TL11(Severity.WARNING, false, "length-cancelled-going-down"),
  TL12(Severity.WARNING, false, "length-register-zero"),
  TL13(Severity.ERROR, true, "length-without-register"),
  // RC: radius compensation
  RC01(Severity.ERROR, true, "compensation-without-register"),
  RC02(Severity.ERROR, true, "compensation-starts-in-arc"),
  RC03(Severity.ERROR, true, "compensation-ends-in-arc"),
  RC04(Severity.WARNING, false, "start-up-short"),
  RC05(Severity.ERROR, true, "offset-exceeds-arc"),
  RC06(Severity.ERROR, true, "tool-does-not-fit"),
  RC07(Severity.ERROR, true, "inside-corner"),
  RC08(Severity.ERROR, true, "side-changed"),
  RC09(Severity.ERROR, true, "register-changed"),
  RC10(Severity.ERROR, true, "restart-before-cancel"),
  RC11(Severity.WARNING, false, "radius-of-another-tool"),
  RC12(Severity.WARNING, false, "radius-without-value"),
  RC13(Severity.ERROR, false, "diameter-entered-as-radius"),
  RC14(Severity.WARNING, false, "radius-fits-nothing"),
  RC15(Severity.WARNING, false, "radius-negative"),
  RC16(Severity.NOTE, false, "style-of-path"),
  RC17(Severity.WARNING, false, "blocks-without-plane-motion"),
  RC18(Severity.WARNING, false, "compensation-without-wall"),
  RC19(Severity.WARNING, false, "path-turns-back"),
  RC20(Severity.WARNING, false, "rapid-compensated"),
  RC21(Severity.ERROR, false, "compensation-at-tool-change"),
  RC22(Severity.ERROR, false, "compensation-at-end"),
  RC23(Severity.ERROR, true, "return-while-compensated"),
  RC24(Severity.ERROR, true, "frame-changed-while-compensated"),
  RC26(Severity.WARNING, false, "compensation-at-retract"),
  RC27(Severity.ERROR, false, "compensated-twice"),
  RC28(Severity.ERROR, false, "not-compensated"),
  RC29(Severity.WARNING, false, "wear-large"),
  // FL: flow, variables
  FL01(Severity.ERROR, true, "statement-not-understood"),
  FL02(Severity.ERROR, true, "brackets-do-not-balance"),
  FL03(Severity.WARNING, false, "variable-without-value"),
  FL04(Severity.ERROR, true, "division-by-zero"),
  FL05(Severity.ERROR, true, "function-not-defined"),
  FL06(Severity.ERROR, true, "unknown-variable"),
  FL07(Severity.ERROR, true, "words-and-statement"),
  FL08(Severity.ERROR, true, "loop-without-partner"),
  FL10(Severity.ERROR, true, "jump-into-loop"),
  FL12(Severity.ERROR, true, "jump-target-missing"),
  FL13(Severity.ERROR, true, "jump-target-twice"),
  FL20(Severity.ERROR, true, "program-not-found"),
  FL21(Severity.ERROR, true, "program-number-twice"),
  FL22(Severity.ERROR, true, "called-program-unclear"),
  FL23(Severity.ERROR, true, "calls-too-deep"),
  FL24(Severity.ERROR, true, "loop-without-end"),
  FL25(Severity.ERROR, true, "too-many-blocks"),
  FL26(Severity.WARNING, false, "program-without-end"),
  FL27(Severity.NOTE, false, "main-program-returns"),
  FL28(Severity.ERROR, true, "alarm"),
  FL29(Severity.WARNING, false, "returns-in-another-mode"),
  FL30(Severity.WARNING, false, "called-no-times"),
  FL31(Severity.ERROR, true, "subprogram-without-return"),
  // HZ: hazards of practice
  HZ04(Severity.ERROR, false, "spindle-off-in-cut"),
  HZ07(Severity.ERROR, false, "retract-while-engaged"),
  HZ12(Severity.WARNING, false, "increments-do-not-close"),
  // TH: threads
  TH01(Severity.ERROR, false, "lead-is-not-pitch"),
  TH02(Severity.ERROR, false, "wrong-hand"),
  TH03(Severity.NOTE, false, "climb-or-conventional"),
  TH04(Severity.WARNING, false, "less-than-a-turn"),
  TH05(Severity.WARNING, false, "entry-mark"),
  TH06(Severity.ERROR, false, "radius-does-not-fit-thread"),
  TH07(Severity.WARNING, false, "axis-off-hole"),
  TH08(Severity.ERROR, false, "tool-too-wide"),
  TH09(Severity.WARNING, false, "depth-not-covered"),
  TH10(Severity.WARNING, false, "turns-and-rows"),
  TH11(Severity.WARNING, false, "spindle-sense"),
  TH12(Severity.NOTE, false, "edge-feed"),
  TH13(Severity.WARNING, false, "rows-do-not-match-lead"),
  TH14(Severity.WARNING, false, "passes-out-of-phase"),
  // GA: gauging
  GA01(Severity.ERROR, false, "no-thread-in-motion"),
  GA02(Severity.ERROR, false, "hole-without-thread"),
  GA03(Severity.ERROR, false, "thread-not-cut"),
  GA04(Severity.ERROR, false, "cutter-unknown"),
  GA05(Severity.NOTE, false, "gauge-limits-from-memory"),
  GA06(Severity.ERROR, false, "not-gauged"),
  // AS: assumptions
  AS01(Severity.NOTE, false, "rapids-straight"),
  AS02(Severity.NOTE, false, "corners-exact"),
  AS03(Severity.NOTE, false, "numbers-without-point"),
  AS04(Severity.NOTE, false, "length-from-register"),
  AS05(Severity.NOTE, false, "top-assumed"),
  AS07(Severity.NOTE, false, "switch-set"),
  // SH: setup sheet
  SH01(Severity.ERROR, true, "not-toml"),
  SH02(Severity.ERROR, true, "unknown-key"),
  SH03(Severity.ERROR, true, "missing-key"),
  SH04(Severity.ERROR, true, "wrong-type"),
  SH05(Severity.ERROR, true, "impossible-value"),
  SH06(Severity.ERROR, true, "unknown-unit"),
  SH07(Severity.ERROR, true, "invalid-designation"),
  SH08(Severity.ERROR, true, "not-available"),
  // RQ: the request itself
  RQ01(Severity.ERROR, true, "file-not-found"),
  RQ02(Severity.ERROR, true, "file-not-readable"),
  RQ03(Severity.ERROR, true, "output-not-writable"),
  RQ04(Severity.ERROR, true, "request-incomplete"),
  RQ05(Severity.ERROR, true, "no-opengl"),
  RQ06(Severity.ERROR, true, "no-display");

  private final Severity severity;
  private final boolean stops;
  private final String inWords;

  Code(Severity severity, boolean stops, String inWords) {
    this.severity = severity;
    this.stops = stops;
    this.inWords = inWords;
  }

  /** The usual severity; a single finding may weigh more or less. */
  public Severity severity() {
    return severity;
  }

  /** Whether interpretation ends here, as with an alarm. */
  public boolean stops() {
    return stops;
  }

  /** The name in words, lower case with hyphens. */
  public String inWords() {
    return inWords;
  }
}
