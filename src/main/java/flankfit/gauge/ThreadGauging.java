package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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
  private final Findings findings = new Findings();
  private final Assumptions assumptions;
  private final WorkpieceMetal metal;
  private final RealAnswers realAnswers;
  private final VariedWalls variedWalls;
  private final List<ThreadAnswer> answers = new ArrayList<>();
  private final Set<String> met = new HashSet<>();
  private final Cutters cutters;
  private final GroupedPasses grouped;
  private final Replays replays;
  private final Trials trials;
  private final Optional<String> only;
  private final Optional<HeldBending> held;

  private ThreadGauging(
      GaugeRequest request,
      ThreadLookup threads,
      Optional<String> only,
      Optional<HeldBending> held) {
    this.request = request;
    this.only = only;
    this.held = held;
    this.setup = request.setup();
    this.threads = threads;
    this.text = new Text(unit(request));
    this.assumptions = new Assumptions(setup.gauges(), text, request.realPath());
    this.realAnswers = new RealAnswers(request.tape());
    this.variedWalls = new VariedWalls(request.tape());
    this.metal = new WorkpieceMetal(setup, findings, assumptions);
    this.cutters = new Cutters(request.program(), setup, threads, findings);
    this.grouped = new GroupedPasses(setup, new HoleMatcher(setup.holes()));
    this.replays = new Replays(request.replay(), grouped);
    this.trials = new Trials(replays, metal);
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
    return new ThreadGauging(request, threads, Optional.empty(), Optional.empty()).run();
  }

  /** Gauges the thread of one hole alone; what is found of others is not told. */
  static GaugeAnswer gauge(GaugeRequest request, String hole) {
    return new ThreadGauging(request, Designations::parse, Optional.of(hole), Optional.empty())
        .run();
  }

  /** The same with the bending held. */
  static GaugeAnswer gauge(GaugeRequest request, String hole, HeldBending held) {
    return new ThreadGauging(request, Designations::parse, Optional.of(hole), Optional.of(held))
        .run();
  }

  private GaugeAnswer run() {
    PassFinder.Result found = grouped.find(request.tape());
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
    StrayThreads strays =
        new StrayThreads(
            request, new HoleMatcher(setup.holes()), text, cutters, findings, assumptions);
    for (List<Pass> group : grouped.groups(found.passes())) {
      gauge(group, strays);
    }
    strays.missing(found.passes().isEmpty(), met);
    return new GaugeAnswer(answers, assumptions.list(), findings.sorted());
  }

  private void gauge(List<Pass> group, StrayThreads strays) {
    Pass last = group.get(group.size() - 1);
    Optional<Hole> hole = grouped.holeOf(last);
    if (only.isPresent() && !hole.map(Hole::name).equals(only)) {
      return;
    }
    if (hole.isEmpty() || hole.get().thread().isEmpty()) {
      strays.withoutThread(last, hole);
      return;
    }
    met.add(hole.get().name());
    Optional<ThreadSpec> spec = spec(hole.get());
    Optional<List<CutPass>> cuts = cutters.of(group);
    if (spec.isPresent() && cuts.isPresent()) {
      answer(hole.get(), spec.get(), cuts.get());
    }
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
    FoundThread bent =
        found.bent(held.map(h -> h.of(found, metal)).orElseGet(() -> metal.bending(found)));
    ThreadAnswer answer =
        new Answering(
                bent,
                solver(found),
                new HeldAdvice(found, register(found), setup.offsets(), trials),
                request.tape(),
                this::onRealPath,
                (slopes, moved) -> variation(found, bent, slopes, moved))
            .answer();
    answers.add(answer);
    answer.offset().ifPresent(offset -> WearRule.check(scene, offset, setup, findings));
  }

  private ThreadVariation variation(
      FoundThread found, FoundThread bent, Optional<double[]> slopes, boolean moved) {
    LengthUnit unit = found.model().finish().pass().state().unit();
    ThreadVariation.Entries entries =
        new ThreadVariation.Entries(
            setup.control().reading().leastIncrement(unit), setup.control().tools().wearLimit());
    return new ThreadVariation(
        bent,
        slopes,
        entries,
        threads,
        times -> metal.bending(found, times),
        moved ? Optional.of(variedWalls) : Optional.empty());
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
    return new OffsetSolver(setup, register(found), offsets -> replays.passes(offsets, pass));
  }

  private RegisterInForce register(FoundThread found) {
    return RegisterInForce.of(request, found.model().finish().pass());
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

  private Place line(int line) {
    return new Place(request.program(), line, 0, 0);
  }
}
