package flankfit.picture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import flankfit.gauge.DrawnThreads;
import flankfit.gauge.ThreadAnswer;
import flankfit.unit.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each picture of a gauge answer against a kept one: as SVG letter by letter, as PNG within the
 * tolerance of {@link KeptPicture}. Rewritten with {@code -Dgolden=write}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GoldenDiagramTest {
  private static final int WIDTH = 900;
  private static final int HEIGHT = 600;

  private final ThreadAnswer marked = DrawnThreads.marked();
  private final ThreadAnswer refused = DrawnThreads.refused();

  private enum Kind {
    LADDER,
    SECTION,
    WALL,
    CHART;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private Diagram draw(Kind kind, Theme theme) {
    // By day the thread that is refused, by night the one that is good but for its entry mark.
    ThreadAnswer thread = theme == Theme.LIGHT && kind != Kind.WALL ? refused : marked;
    LengthUnit unit = theme == Theme.LIGHT ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    return switch (kind) {
      case LADDER -> LadderPicture.of(thread, unit, WIDTH, HEIGHT, theme);
      case SECTION ->
          SectionPicture.of(thread, thread.surface().orElseThrow(), unit, WIDTH, HEIGHT, theme);
      case WALL ->
          WallPicture.of(
              thread,
              thread.real().orElseThrow(),
              thread.surface().orElseThrow(),
              unit,
              WIDTH,
              HEIGHT,
              theme);
      case CHART ->
          SweepPicture.of(DrawnThreads.sweep(thread, 21, 0.01), thread, unit, WIDTH, HEIGHT, theme);
    };
  }

  @ParameterizedTest
  @CsvSource({
    "LADDER,LIGHT", "LADDER,DARK", "SECTION,LIGHT", "SECTION,DARK",
    "WALL,LIGHT", "WALL,DARK", "CHART,LIGHT", "CHART,DARK"
  })
  void an_svg_is_as_kept_and_tells_its_verdict_to_those_who_cannot_see_it(Kind kind, Theme theme)
      throws Exception {
    Diagram diagram = draw(kind, theme);
    // The cells of the wall are compared as a picture: their last bit is no letter.
    String svg = new String(DiagramFile.svg(diagram), UTF_8);
    String text = svg.replaceAll("base64,[A-Za-z0-9+/=]*", "base64,");
    Path kept = KeptPicture.FOLDER.resolve(kind.word() + "-" + theme.word() + ".svg");
    if (KeptPicture.isWriting()) {
      Files.writeString(kept, text);
    }
    assertThat(text).isEqualTo(Files.readString(kept));
    assertThat(text)
        .contains("<title>", "</title>", "<desc>" + diagram.description() + "</desc>")
        .contains(
            kind == Kind.CHART
                ? "gauges good"
                : (theme == Theme.LIGHT && kind != Kind.WALL)
                    ? refused.verdict().words()
                    : marked.verdict().words());
    assertThat(new String(DiagramFile.svg(draw(kind, theme)), UTF_8))
        .as("drawn anew")
        .isEqualTo(svg);
  }

  @ParameterizedTest
  @CsvSource({"LADDER,LIGHT", "SECTION,DARK", "WALL,LIGHT", "CHART,DARK"})
  void a_png_is_as_kept_and_drawn_anew_the_same(Kind kind, Theme theme) throws Exception {
    Diagram diagram = draw(kind, theme);
    byte[] rgb;
    try (Drawing drawing = new Drawing()) {
      String renderer = drawing.renderer();
      assumeTrue(
          renderer.contains("llvmpipe"), "pictures are kept for llvmpipe, this is " + renderer);
      rgb = DiagramFile.draw(diagram);
      assertThat(DiagramFile.draw(draw(kind, theme))).isEqualTo(rgb);
    }
    KeptPicture.compare(kind.word() + "-" + theme.word() + ".png", rgb, WIDTH, HEIGHT);
  }

  @Test
  void an_enlarged_svg_keeps_its_drawing_and_asks_for_more_pixels() {
    Diagram diagram = draw(Kind.LADDER, Theme.LIGHT);
    String svg = new String(DiagramFile.svg(diagram, 1800, 1200), UTF_8);
    assertThat(svg).contains("width=\"1800\" height=\"1200\" viewBox=\"0 0 900 600\"");
  }

  @Test
  void an_enlarged_png_has_the_pixels_asked_for_and_letters_as_large_as_its_lines()
      throws Exception {
    Diagram diagram = draw(Kind.LADDER, Theme.LIGHT);
    BufferedImage once = ImageIO.read(new ByteArrayInputStream(DiagramFile.png(diagram)));
    BufferedImage twice =
        ImageIO.read(new ByteArrayInputStream(DiagramFile.png(diagram, 1801, 1201)));
    assertThat(twice.getWidth()).isEqualTo(1801);
    assertThat(twice.getHeight()).isEqualTo(1201);
    // The heading, all letters: twice as wide and high, four times the ink.
    assertThat(ink(twice, 2) / ink(once, 1)).isBetween(3.8, 4.2);
  }

  /** How much darker than paper the rows of the heading are, all pixels together. */
  private static double ink(BufferedImage image, int scale) {
    int paper = Theme.LIGHT.palette().ground() >> 8 & 0xFF;
    long sum = 0;
    for (int y = 0; y < 50 * scale; y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        sum += paper - (image.getRGB(x, y) >> 8 & 0xFF);
      }
    }
    return sum;
  }
}
