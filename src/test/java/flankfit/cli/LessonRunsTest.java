package flankfit.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The command in this process: what it writes where, and what it refuses. */
class LessonRunsTest {
  private static final String HOUSING = "sample-programs/filter-housing-m20.nc";
  private static final String MANIFOLD = "sample-programs/valve-manifold-four-m12.nc";

  @TempDir private Path folder;

  private static Run lesson(String... args) {
    return Run.of("lesson", args);
  }

  private static JsonNode json(Run run) throws Exception {
    assertThat(run.err()).isEmpty();
    return new ObjectMapper().readTree(run.out());
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void steps_of_some_lines_as_text_and_as_json() throws Exception {
    Run text = lesson(HOUSING, "--from", "13", "--to", "13");
    assertThat(text.status()).isZero();
    assertThat(text.out())
        .contains(
            "from where it stands, 1.5 up while going once round anticlockwise, centre 2.6",
            "absolute     G90 G3 I-2.6 Z-15.312",
            "incremental  G91 G3 I-2.6 Z1.5",
            "1 step told");
    assertThat(text.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
    JsonNode answer = json(lesson(HOUSING, "--from", "13", "--to", "13", "--format", "json"));
    assertThat(JsonShape.faults("lesson", answer)).isEmpty();
    assertThat(answer.at("/steps/0/absoluteWords").asText()).isEqualTo("G90 G3 I-2.6 Z-15.312");
    assertThat(answer.at("/steps/0/moveIncremental/2").asDouble()).isEqualTo(1.5);
  }

  @Test
  void steps_of_every_sample_keep_the_shape_of_their_schema() throws Exception {
    try (var files = Files.list(Path.of("sample-programs"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".nc")).sorted().toList()) {
        Run run = lesson(file.toString(), "--format", "json");
        assertThat(JsonShape.faults("lesson", json(run))).as("%s", file).isEmpty();
      }
    }
  }

  @Test
  void program_with_errors_is_told_as_far_as_it_came() {
    Run run = lesson("sample-programs/broken-compensation-left-on.nc");
    assertThat(run.status()).isEqualTo(ExitStatus.ANSWER_NO);
    assertThat(run.out().indexOf("mend first")).isBetween(0, run.out().indexOf("line 2:"));
    assertThat(run.out()).contains("RC23", "stops here", "incomplete   stopped at line 33");
  }

  @Test
  void rewritten_program_is_written_and_gauges_the_same() throws Exception {
    Run run = lesson(HOUSING, "--as", "absolute", "--out", file("abs.nc"));
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("21 moves", "rounding   none");
    assertThat(Files.readString(folder.resolve("abs.nc")))
        .contains("N90 G3 I-2.6 Z-15.312", "N270 G28 Z50.");
    Run json = lesson(HOUSING, "--as", "incremental", "--out", file("inc.nc"), "--format", "json");
    assertThat(JsonShape.faults("rewrite", json(json))).isEmpty();
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(2);
    }
  }

  @Test
  void program_that_cannot_be_rewritten_leaves_no_file() {
    Run run =
        lesson(
            "sample-programs/broken-compensation-left-on.nc",
            "--as",
            "absolute",
            "--out",
            file("abs.nc"));
    assertThat(run.status()).isEqualTo(ExitStatus.ANSWER_NO);
    assertThat(run.err()).contains("broken-compensation-left-on.nc:33", "RQ08", "N270 G91 G28 Z0.");
    assertThat(folder.resolve("abs.nc")).doesNotExist();
  }

  @Test
  void forgotten_word_tells_threads_findings_and_draws() throws Exception {
    Run run = lesson(MANIFOLD, "--forget", "16", "--image", file("f.svg"));
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains(
            "the paths part at line 17",
            "M12x1.25-6H in port 2: gauges good → not cut there",
            "error GA02",
            "error GA03",
            "error HZ01");
    assertThat(Files.readString(folder.resolve("f.svg"))).startsWith("<svg").contains("as written");
    Run answer = lesson(MANIFOLD, "--forget", "16", "--format", "json");
    assertThat(JsonShape.faults("forget", json(answer))).isEmpty();
  }

  @Test
  void quiz_is_the_same_for_a_seed_and_its_answers_go_where_asked() throws Exception {
    Run first = lesson(HOUSING, "--quiz", "6", "--seed", "7");
    assertThat(first.out()).isEqualTo(lesson(HOUSING, "--quiz", "6", "--seed", "7").out());
    assertThat(first.out()).isNotEqualTo(lesson(HOUSING, "--quiz", "6", "--seed", "8").out());
    assertThat(first.out()).contains("6 questions", "answers to");
    Run apart = lesson(HOUSING, "--quiz", "6", "--seed", "7", "--answers", file("key.txt"));
    String key = Files.readString(folder.resolve("key.txt"));
    assertThat(first.out()).endsWith(key);
    assertThat(apart.out()).doesNotContain("answers to");
    JsonNode answer = json(lesson(HOUSING, "--quiz", "500", "--format", "json"));
    assertThat(JsonShape.faults("quiz", answer)).isEmpty();
    assertThat(answer.get("questions").size()).isBetween(30, 200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "filter-housing-m20",
        "valve-block-half-13",
        "valve-manifold-four-m12",
        "broken-compensation-left-on"
      })
  void handout_is_one_sound_file_that_asks_for_nothing_else(String name) throws Exception {
    lesson("sample-programs/" + name + ".nc", "--handout", file("h.html"));
    String html = Files.readString(folder.resolve("h.html"));
    assertThat(html).startsWith("<!DOCTYPE html>\n");
    // The name of the SVG language is no address that a browser asks for.
    assertThat(html.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
        .doesNotContain("http", "src=", "href=", "url(", "@import", "<script", "<link");
    // Written so that an XML parser takes it, too, which finds every tag that is not closed.
    Document page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(
                new ByteArrayInputStream(html.substring(html.indexOf('\n') + 1).getBytes(UTF_8)));
    assertThat(page.getElementsByTagName("svg").getLength()).isGreaterThanOrEqualTo(10);
    assertThat(page.getElementsByTagName("h2").getLength()).isGreaterThan(15);
    assertThat(html)
        .contains("break-inside: avoid", "@page", "SHA-256", "Accept threads with calibrated");
    if (name.equals("broken-compensation-left-on")) {
      Browser.Opened opened = Browser.open(folder.resolve("h.html"), folder);
      assertThat(opened.console()).isEmpty();
      assertThat(opened.requests()).isEmpty();
      assertThat(opened.dom()).contains("Mend first", "</svg>", "</body></html>");
    }
  }

  @Test
  void handout_as_pdf_keeps_each_step_on_its_page() throws Exception {
    Run run = lesson(HOUSING, "--handout", file("h.pdf"), "--paper", "letter");
    assertThat(run.status()).as(run.err()).isZero();
    try (PDDocument document = Loader.loadPDF(folder.resolve("h.pdf").toFile())) {
      assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains(
              "N90 G3 I-2.6 Z1.5", "G90 G3 I-2.6 Z-15.312", "Accept threads with", "page 1 of")
          .doesNotContain("\uFFFD");
    }
  }

  @Test
  void text_of_the_program_is_no_markup_in_a_handout() throws Exception {
    Path program = folder.resolve("p.nc");
    Files.writeString(program, "G21 G90 G17 G54\nG0 X0 Y0 Z5. (<script>A&B</script>)\nX1.\nM30\n");
    assertThat(lesson(program.toString(), "--handout", file("h.html")).status()).isZero();
    assertThat(Files.readString(folder.resolve("h.html")))
        .contains("&lt;script&gt;A&amp;B&lt;/script&gt;")
        .doesNotContain("<script>");
  }

  @ParameterizedTest
  @CsvSource({
    "--as absolute, belong together",
    "--out x.nc, belong together",
    "--as sideways --out x.nc, sideways",
    "--forget 5, has no such word",
    "--forget 4:G99, its mode words are",
    "--forget nine, names no line",
    "--forget 999, has no such word",
    "--quiz 0, one question at least",
    "--quiz 3 --forget 16, exclude each other",
    "--answers key.txt, belong to --quiz",
    "--image p.png, draws what --forget does",
    "--forget 30 --image p.jpg, neither ending",
    "--handout h.doc, neither ending .html nor .pdf",
    "--handout h.html --paper letter, --paper without a PDF",
    "--handout nowhere/h.html, there is no folder",
    "--quiz 2 --answers nowhere/key.txt, there is no folder",
    "--as absolute --out sample-programs/filter-housing-m20.setup.toml, it is an input",
    "--from 9 --to 3, no range",
    "--as absolute --out x.nc --from 3, limit what is told"
  })
  void wrong_requests_say_what_is_wrong(String words, String said) {
    List<String> args = new ArrayList<>(List.of(HOUSING));
    args.addAll(List.of(words.split(" ")));
    Run run = lesson(args.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.REQUEST_WRONG);
    assertThat(run.err()).contains(said);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void steps_that_move_become_a_moving_picture() throws Exception {
    Path film = Path.of(file("steps.gif"));
    Run run = lesson(HOUSING, "--from", "12", "--to", "15", "--animate", film.toString());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).isEqualTo("animation " + film + ": 4 steps\n");
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(film.toFile())) {
      reader.setInput(in);
      assertThat(reader.getNumImages(true)).isEqualTo(4);
      BufferedImage first = reader.read(0);
      assertThat(first.getWidth()).isEqualTo(640);
      int differ = 0;
      BufferedImage second = reader.read(1);
      for (int x = 0; x < 640; x++) {
        for (int y = 0; y < 480; y++) {
          differ += first.getRGB(x, y) == second.getRGB(x, y) ? 0 : 1;
        }
      }
      assertThat(differ).as("places in which two steps differ").isBetween(500, 60_000);
      assertThat(delay(reader, 1)).isEqualTo("250");
      assertThat(delay(reader, 3)).isEqualTo("750");
    } finally {
      reader.dispose();
    }
    assertThat(Files.size(film)).isLessThan(200_000);
    Run none = lesson(HOUSING, "--from", "1", "--to", "3", "--animate", film.toString());
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("no step moves");
    assertThat(lesson(HOUSING, "--animate", file("steps.mp4")).err()).contains("no ending .gif");
  }

  private static String delay(ImageReader reader, int image) throws Exception {
    Node root = reader.getImageMetadata(image).getAsTree("javax_imageio_gif_image_1.0");
    NodeList control = ((Element) root).getElementsByTagName("GraphicControlExtension");
    return ((Element) control.item(0)).getAttribute("delayTime");
  }
}
