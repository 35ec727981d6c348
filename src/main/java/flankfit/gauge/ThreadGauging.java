package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Gauges the threads of a program: finds them in the motion, measures the surface of the endless
 * regular helix, and says what GO, NO-GO and plain gauges will do and which register entry mends
 * it.
 */
public final class ThreadGauging {
  private final GaugeRequest request;
  private final SetupSheet setup;
  private final Text text;
  private final ThreadLookup threads;
  private final HoleMatcher holes;
  private final Findings findings = new Findings();
  private final Assumptions assumptions;
  private final WorkpieceMetal metal;
  private final RealAnswers realAnswers;
  private final List<ThreadAnswer> answers = new ArrayList<>();
  private final Set<String> met = new HashSet<>();
  private final Set<Integer> unknownTools = new HashSet<>();

  /** Runs with other registers: all holes of a pattern ask for the same ones. */
  private final Map<Offsets, Optional<List<List<Pass>>>> replays = new HashMap<>();

  private ThreadGauging(GaugeRequest request, ThreadLookup threads) {
    this.request = request;
    this.setup = request.setup();
    this.threads = threads;
    this.holes = new HoleMatcher(setup.holes());
    this.text = new Text(unit(request));
    this.assumptions = new Assumptions(setup.gauges(), text, request.realPath());
    this.realAnswers = new RealAnswers(request.tape());
    this.metal = new WorkpieceMetal(setup, findings, assumptions);
  }

  /** Unit the program speaks in, at its end; that of the sheet when nothing moves. */
  private static LengthUnit unit(GaugeRequest request) {
    Tape tape = request.tape();
    return tape.size() == 0 ? request.setup().unit() : tape.state(tape.size() - 1).unit();
  }

  /** Gauges the threads of a program. */
  public static GaugeAnswer gauge(GaugeRequest request) {
    return gauge(request, Designations::parse);
  }

  static GaugeAnswer gauge(GaugeRequest request, ThreadLookup threads) {
    return new ThreadGauging(request, threads).run();
  }

  private GaugeAnswer run() {
    PassFinder.Result found = PassFinder.find(request.tape(), this::mayCutThreads);
    for (int move : found.otherPlanes()) {
      if (setup.tool(request.tape().state(move).tool()).isEmpty()) {
        continue;
      }
      findings.add(
          Code.GA06,
          line(request.tape().line(move)),
          "a helix about another axis than Z is not gauged",
          "threads are measured along Z only",
          "");
    }
    for (List<Pass> group : groups(found.passes())) {
      gauge(group);
    }
    missing(found.passes().isEmpty());
    return new GaugeAnswer(answers, assumptions.list(), findings.sorted());
  }

  /** A mill the sheet does not know may be a thread mill: that is told when it cuts a thread. */
  private boolean mayCutThreads(int number) {
    return setup.tool(number).map(tool -> tool.kind() == Tool.Kind.THREAD_MILL).orElse(true);
  }

  /** Passes about one axis in one hole; an outside and an inside thread may share an axis. */
  private List<List<Pass>> groups(List<Pass> passes) {
    List<List<Pass>> groups = new ArrayList<>();
    for (List<Pass> axis : PassFinder.byAxis(passes)) {
      Map<String, List<Pass>> byHole = new LinkedHashMap<>();
      for (Pass pass : axis) {
        String name = holeOf(pass).map(Hole::name).orElse("");
        byHole.computeIfAbsent(name, key -> new ArrayList<>()).add(pass);
      }
      byHole.values().forEach(group -> groups.add(ofKnownTools(group)));
    }
    return groups;
  }

  /** A mill the sheet does not know may have bored the hole; it counts only when alone. */
  private List<Pass> ofKnownTools(List<Pass> group) {
    List<Pass> known =
        group.stream().filter(pass -> setup.tool(pass.state().tool()).isPresent()).toList();
    return known.isEmpty() ? group : known;
  }

  private Optional<Hole> holeOf(Pass pass) {
    double outside = setup.tool(pass.state().tool()).map(Tool::radius).orElse(0.0);
    return holes.match(pass, outside);
  }

  private void gauge(List<Pass> group) {
    Pass last = group.get(group.size() - 1);
    Optional<Hole> hole = holeOf(last);
    if (hole.isEmpty() || hole.get().thread().isEmpty()) {
      withoutThread(last, hole);
      return;
    }
    met.add(hole.get().name());
    Optional<ThreadSpec> spec = spec(hole.get());
    Optional<List<CutPass>> cuts = cutPasses(group);
    if (spec.isPresent() && cuts.isPresent()) {
      answer(hole.get(), spec.get(), cuts.get());
    }
  }

  private void withoutThread(Pass pass, Optional<Hole> hole) {
    int number = pass.state().tool();
    if (setup.tool(number).isEmpty()) {
      if (setup.holes().isEmpty() || (hole.isEmpty() && isThreadWanted())) {
        unknownTool(pass);
      }
      return;
    }
    String where = "X" + text.coordinate(pass.x()) + " Y" + text.coordinate(pass.y());
    String what =
        hole.map(h -> "a thread is cut in " + h.name() + ", which wants none")
            .orElse("a thread is cut at " + where + ", where the sheet has no hole");
    String why =
        hole.isPresent()
            ? "no thread is named for it in the sheet"
            : holes
                .nearest(pass)
                .map(
                    h ->
                        "the nearest, "
                            + h.name()
                            + ", is "
                            + text.length(HoleMatcher.distance(h, pass))
                            + " away")
                .orElse("the sheet has no holes at all");
    findings.add(
        Code.GA02,
        line(pass.line()),
        what,
        why + reachedByDistance(pass),
        "name the hole and its thread in the sheet, or correct where the program goes");
  }

  /** Says so when the rapid that led here was read as a distance: G90 is easily forgotten. */
  private String reachedByDistance(Pass pass) {
    Tape tape = request.tape();
    for (int move = pass.first() - 1; move >= 0; move--) {
      double travel =
          Math.hypot(tape.toX(move) - tape.fromX(move), tape.toY(move) - tape.fromY(move));
      if (tape.kind(move) == MoveKind.RAPID && travel > HoleMatcher.NEAR) {
        boolean distance = tape.state(move).distance() == ModalState.Distance.INCREMENTAL;
        return distance
            ? "; line " + tape.line(move) + " moved here by a distance, for G91 was on"
            : "";
      }
    }
    return "";
  }

  private boolean isThreadWanted() {
    return setup.holes().stream().anyMatch(hole -> hole.thread().isPresent());
  }

  private Optional<ThreadSpec> spec(Hole hole) {
    String designation = hole.thread().orElseThrow();
    try {
      return Optional.of(GaugesInUse.of(threads.of(designation), setup.gauges()));
    } catch (InvalidDesignationException e) {
      findings.add(
          Code.GA06,
          new Place(setup.file(), hole.line(), 0, 0),
          hole.name() + " is not gauged: " + e.getMessage(),
          e.why(),
          e.fix());
      return Optional.empty();
    }
  }

  private Optional<List<CutPass>> cutPasses(List<Pass> group) {
    List<CutPass> cuts = new ArrayList<>();
    for (Pass pass : group) {
      Optional<CutPass> cut = cutPass(pass);
      if (cut.isEmpty()) {
        return Optional.empty();
      }
      cuts.add(cut.get());
    }
    return Optional.of(cuts);
  }

  private Optional<CutPass> cutPass(Pass pass) {
    Optional<Tool> tool = setup.tool(pass.state().tool());
    if (tool.isEmpty() || tool.get().teeth().isEmpty()) {
      unknownTool(pass);
      return Optional.empty();
    }
    Tool.Teeth teeth = tool.get().teeth().get();
    try {
      return Optional.of(
          new CutPass(pass, tool.get(), teeth, new TeethForms(threads).tooth(tool.get(), teeth)));
    } catch (InvalidDesignationException e) {
      badCutter(pass, e.getMessage(), e.fix());
    } catch (IllegalArgumentException e) {
      badCutter(pass, e.getMessage(), "");
    }
    return Optional.empty();
  }

  private void unknownTool(Pass pass) {
    if (unknownTools.add(pass.state().tool())) {
      badCutter(
          pass,
          "its teeth are not in the sheet",
          "state it in the sheet as a thread mill with diameter, rows, pitch, flank-angle,"
              + " crest-flat");
    }
  }

  private void badCutter(Pass pass, String why, String fix) {
    findings.add(
        Code.GA04,
        line(pass.line()),
        "the cutter of tool " + pass.state().tool() + " is not known",
        why,
        fix);
  }

  private void answer(Hole hole, ThreadSpec spec, List<CutPass> cuts) {
    ThreadModel model = new ThreadModel(spec, hole.diameter() / 2, cuts);
    FoundThread found = new FoundThread(hole, spec, model, setup.stock().map(Stock::bottom), text);
    Optional<String> impossible = impossiblePath(found);
    if (impossible.isPresent()) {
      findings.add(
          Code.GA06,
          line(model.finish().pass().line()),
          hole.name() + " is not gauged: " + impossible.get(),
          "the cutter would cut on both sides of the axis",
          "");
      return;
    }
    Scene scene = new Scene(request.program(), request.tape(), found);
    new HelixRules(scene, findings).check();
    new ToolRules(scene, findings).check();
    FeedRule.check(scene, findings);
    EntryRule.check(scene, findings);
    new RetractRule(scene, findings).check();
    fromMemory(scene);
    assumptions.of(found);
    FoundThread bent = found.bent(metal.bending(found));
    ThreadAnswer answer =
        new Answering(
                bent,
                solver(found),
                request.tape(),
                this::onRealPath,
                slopes -> variation(found, bent, slopes))
            .answer();
    answers.add(answer);
    answer.offset().ifPresent(offset -> WearRule.check(scene, offset, setup, findings));
  }

  private ThreadVariation variation(
      FoundThread found, FoundThread bent, Optional<double[]> slopes) {
    LengthUnit unit = found.model().finish().pass().state().unit();
    ThreadVariation.Entries entries =
        new ThreadVariation.Entries(
            setup.control().reading().leastIncrement(unit), setup.control().tools().wearLimit());
    return new ThreadVariation(
        bent, slopes, entries, threads, times -> metal.bending(found, times));
  }

  private Optional<RealAnswer> onRealPath(FoundThread found) {
    if (!request.realPath()) {
      return Optional.empty();
    }
    Scene scene = new Scene(request.program(), request.tape(), found);
    try {
      RealAnswer answer = realAnswers.of(found);
      RubRule.check(scene, answer, findings);
      return Optional.of(answer);
    } catch (NoRealWallException e) {
      findings.add(
          Code.GA12,
          scene.at(found.model().finish().pass()),
          "no gauge is screwed into " + found.hole().name() + " as moved: " + e.getMessage(),
          "its verdict is that of an endless helix: entry, exit and incomplete turns do not count",
          "try the gauges on the first part");
      return Optional.empty();
    }
  }

  private static Optional<String> impossiblePath(FoundThread found) {
    if (!found.spec().internal()) {
      for (CutPass cut : found.model().passes()) {
        if (cut.reach(false) <= 0) {
          return Optional.of("the path runs nearer to the axis than the cutter's radius");
        }
      }
    }
    return Optional.empty();
  }

  private OffsetSolver solver(FoundThread found) {
    Pass pass = found.model().finish().pass();
    RegisterInForce register = RegisterInForce.of(request, pass);
    return new OffsetSolver(setup, register, offsets -> passesAgain(offsets, pass));
  }

  private Optional<List<Pass>> passesAgain(Offsets offsets, Pass like) {
    Optional<Hole> hole = holeOf(like);
    return replays
        .computeIfAbsent(offsets, this::groupsAgain)
        .flatMap(
            groups ->
                groups.stream()
                    .filter(group -> holeOf(group.get(0)).equals(hole))
                    .filter(group -> apart(group.get(0), like) <= PassFinder.ONE_AXIS.value())
                    .findFirst());
  }

  private Optional<List<List<Pass>>> groupsAgain(Offsets offsets) {
    return request
        .replay()
        .apply(offsets)
        .map(tape -> groups(PassFinder.find(tape, this::mayCutThreads).passes()));
  }

  private static double apart(Pass a, Pass b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  private void fromMemory(Scene scene) {
    ThreadSpec spec = scene.found().spec();
    boolean memory =
        spec.sources().stream().anyMatch(s -> s.contains("from memory"))
            || spec.gauges().map(g -> g.rule().contains("from memory")).orElse(false);
    if (memory) {
      assumptions.add(
          "gauge limits: check against the standard; those of "
              + spec.designation()
              + " rest on a table written from memory");
      findings.add(
          Code.GA05,
          scene.at(scene.found().model().finish().pass()),
          "gauge limits of " + spec.designation() + " rest on a table written from memory",
          "the plug sizes may be a few micrometres off",
          "compare them with the gauges' own certificate");
    }
  }

  private void missing(boolean noneAtAll) {
    if (noneAtAll) {
      findings.add(
          Code.GA01,
          Place.file(request.program()),
          "no thread is found in the motion",
          "no thread mill runs more than half a turn about an axis along Z",
          "check tool, plane and centre of the turns");
      return;
    }
    for (Hole hole : setup.holes()) {
      if (hole.thread().isPresent() && !met.contains(hole.name()) && !isTapped(hole)) {
        findings.add(
            Code.GA03,
            Place.file(request.program()),
            "the thread of " + hole.name() + " is not cut",
            hole.thread().get()
                + " is wanted at X"
                + text.coordinate(hole.x())
                + " Y"
                + text.coordinate(hole.y())
                + "; no helix runs about that axis",
            "correct the program's place, or take the thread out of the sheet");
      }
    }
  }

  private boolean isTapped(Hole hole) {
    Tape tape = request.tape();
    for (int move = 0; move < tape.size(); move++) {
      boolean tap =
          setup
              .tool(tape.state(move).tool())
              .map(tool -> tool.kind() == Tool.Kind.TAP)
              .orElse(false);
      double apart = Math.hypot(tape.toX(move) - hole.x(), tape.toY(move) - hole.y());
      if (tap && apart <= HoleMatcher.NEAR && tape.toZ(move) < hole.top()) {
        assumptions.add("the tapped thread of " + hole.name() + " is not gauged");
        return true;
      }
    }
    return false;
  }

  private Place line(int line) {
    return new Place(request.program(), line, 0, 0);
  }
}
