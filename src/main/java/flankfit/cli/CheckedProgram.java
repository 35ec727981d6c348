package flankfit.cli;

import flankfit.check.MetalCheck;
import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauging;
import flankfit.gauge.Verdict;
import flankfit.metal.MetalProgress;
import flankfit.motion.ModalState;
import flankfit.setup.Tool;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What checking one program gave.
 *
 * @param file the program's file as asked for
 * @param complete whether it was executed to its end
 * @param verdicts what the gauges will say, in order of cutting
 * @param findings findings of the control and of gauging; those of the request when it cannot be
 *     read
 * @param accepted findings that the policy accepts, with its reason; they do not count
 * @param metal whether its metal was cut
 * @param failure in words when the tool failed on it, so that nothing else is known
 * @param status exit status that this program alone gives
 */
record CheckedProgram(
    String file,
    boolean complete,
    List<Gauged> verdicts,
    List<Finding> findings,
    List<AcceptedFinding> accepted,
    MetalCut metal,
    Optional<String> failure,
    int status) {
  CheckedProgram {
    verdicts = List.copyOf(verdicts);
    findings = List.copyOf(findings);
    accepted = List.copyOf(accepted);
  }

  /** Before any policy. */
  CheckedProgram(
      String file, boolean complete, List<Gauged> verdicts, List<Finding> findings, int status) {
    this(
        file,
        complete,
        verdicts,
        findings,
        List.of(),
        MetalCut.NOT_WANTED,
        Optional.empty(),
        status);
  }

  /** Whether the metal of a program was cut. */
  enum MetalCut {
    /** Nobody asked for it, or the program could not be read. */
    NOT_WANTED(""),
    CUT("cut"),
    NO_STOCK("no stock");

    private final String word;

    MetalCut(String word) {
      this.word = word;
    }

    /** The word of it; empty where it was not wanted. */
    String word() {
      return word;
    }
  }

  /** One on which the tool failed. */
  static CheckedProgram failed(Path file, Throwable failure) {
    return new CheckedProgram(
        file.toString(),
        false,
        List.of(),
        List.of(),
        List.of(),
        MetalCut.NOT_WANTED,
        Optional.of(failure.toString()),
        ExitStatus.FAILED);
  }

  /**
   * A finding that was accepted.
   *
   * @param finding the finding
   * @param reason why
   */
  record AcceptedFinding(Finding finding, String reason) {}

  /**
   * One thread and its verdict.
   *
   * @param hole name of the hole or boss
   * @param designation thread wanted
   * @param verdict what the gauges say together
   */
  record Gauged(String hole, String designation, Verdict verdict) {}

  /**
   * Reads, executes and gauges a program. Advice on registers is not asked for: it would double the
   * time.
   *
   * @param file the program
   * @param setup setup sheet; when empty, the one beside the program if there is one
   * @param metal whether the metal is asked, too, where the sheet states the stock
   * @param progress told how far the metal has come
   */
  static CheckedProgram of(Path file, Optional<Path> setup, boolean metal, MetalProgress progress) {
    try {
      ProgramOptions.Job job = ProgramOptions.of(file, setup).runUntried();
      CheckedProgram checked = of(job);
      if (!metal) {
        return checked;
      }
      if (job.sheet().stock().isEmpty()) {
        return checked.with(MetalCut.NO_STOCK);
      }
      MetalCheck touches =
          MetalCheck.ofTouches(job.interpretation(), job.sheet(), job.mesh(), progress);
      return of(job.interpretation(), checked.verdicts(), touches.with(checked.findings()))
          .with(MetalCut.CUT);
    } catch (RequestException wrong) {
      Findings all = new Findings();
      all.addAll(wrong.findings());
      return new CheckedProgram(file.toString(), false, List.of(), all.sorted(), wrong.status());
    }
  }

  /** Gauges a program that was executed. */
  static CheckedProgram of(ProgramOptions.Job job) {
    Interpretation done = job.interpretation();
    if (!isAboutThreads(job)) {
      return of(done, List.of(), done.findings());
    }
    GaugeAnswer answer =
        ThreadGauging.gauge(
            new GaugeRequest(
                done.file(), done.tape(), job.sheet(), withoutAdvice -> Optional.empty()));
    List<Gauged> verdicts = answer.threads().stream().map(CheckedProgram::gauged).toList();
    return of(done, verdicts, GaugeCommand.findings(done, answer));
  }

  private static CheckedProgram of(
      Interpretation done, List<Gauged> verdicts, List<Finding> findings) {
    return new CheckedProgram(
        done.file(), done.complete(), verdicts, findings, answer(verdicts, findings));
  }

  private static int answer(List<Gauged> verdicts, List<Finding> findings) {
    boolean good =
        !MotionCommand.hasErrors(findings)
            && verdicts.stream().allMatch(v -> v.verdict() == Verdict.GAUGES_GOOD);
    return good ? ExitStatus.OK : ExitStatus.ANSWER_NO;
  }

  private CheckedProgram with(MetalCut cut) {
    return new CheckedProgram(file, complete, verdicts, findings, accepted, cut, failure, status);
  }

  /** The same with other findings left, where the program itself could be checked. */
  CheckedProgram with(List<Finding> left, List<AcceptedFinding> taken) {
    boolean checked = status == ExitStatus.OK || status == ExitStatus.ANSWER_NO;
    return new CheckedProgram(
        file,
        complete,
        verdicts,
        left,
        taken,
        metal,
        failure,
        checked ? answer(verdicts, left) : status);
  }

  private static Gauged gauged(ThreadAnswer thread) {
    return new Gauged(thread.hole(), thread.designation(), thread.verdict());
  }

  /** Whether a thread is milled or wanted; that neither is so is no fault of gauging. */
  static boolean isAboutThreads(ProgramOptions.Job job) {
    return job.sheet().holes().stream().anyMatch(hole -> hole.thread().isPresent())
        || job.interpretation().tape().states().stream()
            .map(ModalState::tool)
            .distinct()
            .flatMap(number -> job.sheet().tool(number).stream())
            .anyMatch(tool -> tool.kind() == Tool.Kind.THREAD_MILL);
  }

  /** Number of findings of a severity. */
  int count(Severity severity) {
    return (int) findings.stream().filter(f -> f.severity() == severity).count();
  }
}
