package flankfit.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import flankfit.gauge.GaugeAnswer;
import flankfit.paper.HtmlPen;
import flankfit.paper.PdfPen;
import flankfit.paper.Photo;
import flankfit.paper.Sheet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

/**
 * The sheet for the first part: one file that needs nothing else, and says what the answer says.
 */
class GaugeReportTest {
  private static final Path HOUSING = Path.of("sample-programs/filter-housing-m20.nc");

  @TempDir private Path folder;

  private static int gauge(ByteArrayOutputStream told, String... args) {
    PrintStream stream = new PrintStream(told, true, UTF_8);
    return Main.commandLine(stream, stream).execute(args);
  }

  private static Document parsed(String html) throws Exception {
    String xml = html.replaceFirst("<!DOCTYPE html>", "");
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(xml.getBytes(UTF_8)));
  }

  @Test
  void report_is_one_file_with_verdict_pictures_registers_and_hash() throws Exception {
    Path file = folder.resolve("first.html");
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    int status = gauge(told, "gauge", HOUSING.toString(), "--report", file.toString());
    assertThat(status).isZero();
    assertThat(told.toString(UTF_8)).contains(file.toString());
    String html = Files.readString(file);
    Document page = parsed(html);
    assertThat(page.getElementsByTagName("svg").getLength()).isEqualTo(2);
    assertThat(page.getElementsByTagName("img").getLength()).isEqualTo(2);
    assertThat(page.getElementsByTagName("script").getLength()).isZero();
    assertThat(page.getElementsByTagName("link").getLength()).isZero();
    assertThat(html.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http");
    byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(HOUSING));
    assertThat(html)
        .contains(HexFormat.of().formatHex(hash))
        .contains("[+] gauges good", "<b>D4 wear</b> is -0.045 mm; -0.048 mm brings the middle")
        .contains("H4: 120, 0", "D4: 0, -0.045", "Verify at the machine", "no errors")
        .contains("A prediction is no inspection");
    long blanks = html.lines().filter(line -> line.contains("class=\"fill\"")).count();
    assertThat(blanks).as("room for what is measured").isGreaterThan(5);
    Browser.Opened opened = Browser.open(file, folder);
    assertThat(opened.console()).isEmpty();
    assertThat(opened.requests()).isEmpty();
    assertThat(opened.dom()).contains("gauges good", "</svg>", "</body></html>");
  }

  @Test
  void a_program_in_error_says_so_and_words_of_the_sheet_are_no_tags() throws Exception {
    Path program = folder.resolve("job.nc");
    String text = Files.readString(Path.of("sample-programs/broken-rise-is-not-pitch.nc"));
    Files.writeString(program, text);
    String sheet =
        Files.readString(Path.of("sample-programs/broken-rise-is-not-pitch.setup.toml"))
            .replaceAll("title *=.*", "title = \"a<b>&\\\\\"c\"");
    Files.writeString(folder.resolve("job.setup.toml"), sheet);
    ProgramOptions.Job job = ProgramOptions.of(program, Optional.empty()).run();
    var answer = job.gauge();
    String html =
        new String(
            GaugeReport.of(
                job,
                answer,
                GaugeCommand.findings(job.interpretation(), answer),
                List.of(),
                new HtmlPen(GaugeReport.title(job), ProgramHash.footer(job))),
            UTF_8);
    Document page = parsed(html);
    assertThat(page.getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo("First part: a<b>&\"c");
    assertThat(html)
        .contains("mend first: 1 error", "[x] GO refused", "error TH01")
        .contains("no picture of the motion: there was no OpenGL");
    for (Sheet paper : Sheet.values()) {
      byte[] pdf = pdf(job, answer, paper);
      assertThat(pdf(job, answer, paper)).as("the same again").isEqualTo(pdf);
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertThat(document.getNumberOfPages()).as("pages on %s", paper).isEqualTo(2);
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setEndPage(1);
        assertThat(stripper.getText(document))
            .contains("First part: a<b>&\"c", "[x] GO refused", "Verify at the machine")
            .contains("SHA-256 " + ProgramHash.of(job), "page 1 of 2");
        stripper.setEndPage(2);
        assertThat(stripper.getText(document))
            .contains("error TH01", "D4 wear, mm", "basic pitch line", "page 2 of 2");
      }
    }
  }

  private static Photo picture() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(new BufferedImage(640, 500, BufferedImage.TYPE_INT_RGB), "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Photo(out.toByteArray(), "black");
  }

  private static byte[] pdf(ProgramOptions.Job job, GaugeAnswer answer, Sheet paper) {
    return GaugeReport.of(
        job,
        answer,
        GaugeCommand.findings(job.interpretation(), answer),
        List.of(picture(), picture()),
        new PdfPen(GaugeReport.title(job), ProgramHash.footer(job), paper));
  }

  @Test
  void another_ending_or_an_input_as_the_report_is_refused() {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    int status = gauge(told, "gauge", HOUSING.toString(), "--report", "first.doc");
    assertThat(status).isEqualTo(2);
    assertThat(told.toString(UTF_8)).contains("RQ04", "neither ending .html nor .pdf");
    assertThat(Path.of("first.doc")).doesNotExist();
  }
}
