package flankfit.cli;

import flankfit.cli.CheckedProgram.Gauged;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.Verdict;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Checked programs as JUnit's XML, which servers that build and test read: a suite for each
 * program, in it a case that it runs to its end, one for each thread and one for each finding of
 * severity error. Warnings stand in the suite's output.
 */
final class JunitReport {
  /** What XML 1.0 has no way to write. */
  private static final String NOT_XML = "[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD]";

  private final XMLStreamWriter xml;

  private JunitReport(XMLStreamWriter xml) {
    this.xml = xml;
  }

  /** Writes the report. */
  static void write(List<CheckedProgram> checked, OutputStream out) throws XMLStreamException {
    String encoding = StandardCharsets.UTF_8.name();
    XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(out, encoding);
    JunitReport report = new JunitReport(xml);
    xml.writeStartDocument(encoding, "1.0");
    report.line(0);
    xml.writeStartElement("testsuites");
    report.attribute("name", "flankfit check");
    report.counts(checked);
    for (CheckedProgram program : checked) {
      report.suite(program);
    }
    report.end(0);
    report.line(0);
    xml.writeEndDocument();
    xml.close();
  }

  private void suite(CheckedProgram program) throws XMLStreamException {
    begin(1, "testsuite", program.file());
    counts(List.of(program));
    begin(2, "testcase", "runs to its end");
    attribute("classname", program.file());
    if (program.failure().isPresent()) {
      fault("error", "failure of the tool", program.failure().get(), "");
    } else if (!program.complete()) {
      fault("failure", "stopped", "it is not executed to its end", "");
    }
    end(2);
    for (Gauged thread : program.verdicts()) {
      begin(2, "testcase", thread.hole() + " " + thread.designation() + " gauges good");
      attribute("classname", program.file());
      if (thread.verdict() != Verdict.GAUGES_GOOD) {
        fault("failure", "verdict", CheckText.words(thread), "");
      }
      end(2);
    }
    StringBuilder told = new StringBuilder();
    for (Finding finding : program.findings()) {
      if (finding.severity() == Severity.ERROR) {
        begin(2, "testcase", finding.code() + where(finding));
        attribute("classname", program.file());
        fault("failure", finding.code().inWords(), finding.what(), rest(finding));
        end(2);
      } else if (finding.severity() == Severity.WARNING) {
        told.append(finding.severity().word()).append(' ').append(finding.code());
        told.append(where(finding)).append(": ").append(finding.what()).append('\n');
      }
    }
    program
        .accepted()
        .forEach(
            a ->
                told.append("accepted ")
                    .append(a.finding().code())
                    .append(where(a.finding()))
                    .append(": ")
                    .append(a.reason())
                    .append('\n'));
    if (told.length() > 0) {
      line(2);
      xml.writeStartElement("system-out");
      xml.writeCharacters(clean(told.toString()));
      xml.writeEndElement();
    }
    end(1);
  }

  private static String where(Finding finding) {
    return finding.place().line() == 0 ? "" : " in line " + finding.place().line();
  }

  private static String rest(Finding finding) {
    return finding.why() + (finding.fix().isEmpty() ? "" : "\n" + finding.fix());
  }

  private void counts(List<CheckedProgram> checked) throws XMLStreamException {
    int tests = 0;
    int failures = 0;
    int errors = 0;
    for (CheckedProgram program : checked) {
      int found = program.count(Severity.ERROR);
      boolean failed = program.failure().isPresent();
      tests += 1 + program.verdicts().size() + found;
      errors += failed ? 1 : 0;
      failures += found + (!failed && !program.complete() ? 1 : 0);
      failures +=
          (int)
              program.verdicts().stream()
                  .filter(thread -> thread.verdict() != Verdict.GAUGES_GOOD)
                  .count();
    }
    attribute("tests", String.valueOf(tests));
    attribute("failures", String.valueOf(failures));
    attribute("errors", String.valueOf(errors));
  }

  private void fault(String kind, String type, String message, String more)
      throws XMLStreamException {
    line(3);
    xml.writeStartElement(kind);
    attribute("type", type);
    attribute("message", message);
    xml.writeCharacters(clean(more));
    xml.writeEndElement();
  }

  private void begin(int depth, String element, String name) throws XMLStreamException {
    line(depth);
    xml.writeStartElement(element);
    attribute("name", name);
  }

  private void end(int depth) throws XMLStreamException {
    line(depth);
    xml.writeEndElement();
  }

  private void line(int depth) throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, clean(value));
  }

  private static String clean(String text) {
    return text.replaceAll(NOT_XML, "\uFFFD");
  }
}
