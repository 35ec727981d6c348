package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;

/** What the commands answer, without files and without a process; for tests of other packages. */
public final class Answers {
  private Answers() {}

  /**
   * What {@code gauge} answers.
   *
   * @param json as JSON
   * @param text for people
   * @param findings of control and gauging
   */
  @SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
  public record Gauged(byte[] json, String text, List<Finding> findings) {}

  /** What {@code motion --format json} writes. */
  public static byte[] motionJson(Interpretation done) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MotionJson.write(done, out);
    return out.toByteArray();
  }

  /** What {@code motion} writes. */
  public static String motionText(
      SourceText program, SetupSheet sheet, List<SourceText> more, Interpretation done) {
    StringWriter text = new StringWriter();
    ProgramOptions.Job job = new ProgramOptions.Job(program, sheet, more, done);
    MotionText.write(job, Style.plain(), Optional.empty(), new PrintWriter(text));
    return text.toString();
  }

  /**
   * What {@code gauge} writes in both forms.
   *
   * @param asMoved whether the path as moved counts, which takes much longer
   */
  public static Gauged gauge(
      SourceText program,
      SetupSheet sheet,
      List<SourceText> more,
      Interpretation done,
      boolean asMoved)
      throws IOException {
    ProgramOptions.Job job = new ProgramOptions.Job(program, sheet, more, done);
    GaugeRequest request = job.gaugeRequest();
    GaugeAnswer answer = ThreadGauging.gauge(asMoved ? request : request.withoutRealPath());
    List<Finding> findings = GaugeCommand.findings(done, answer);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    GaugeJson.write(job, answer, Optional.empty(), Optional.empty(), findings, out);
    String text =
        GaugeText.of(
            job, answer, Optional.empty(), Optional.empty(), List.of(), findings, Style.plain());
    return new Gauged(out.toByteArray(), text, findings);
  }
}
