package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** One diagram on both papers: SVG and OpenGL. */
class DiagramTest {
  private static Diagram diagram() {
    Diagram diagram = new Diagram(240, 200, Theme.LIGHT, "a <test> & more");
    diagram.bar(20, 30, 40, 50, 0xFF0000, 1);
    diagram.line(100, 20, 100, 180, 6, 0x0000FF);
    diagram.dashed(120, 100, 220, 100, 4, 10, 0x00AA00);
    diagram.raster(140, 20, 40, 20, 2, new int[] {0x102030, 0xFFFF00, 0x00FFFF, 0xFF00FF});
    diagram.text(Face.BODY, 20, 150, "9.5 µm < 10 & more", Align.LEFT, 0x000000);
    return diagram;
  }

  private static int pixel(byte[] rgb, int x, int y) {
    return Drawing.pixel(rgb, 240, 200, x, 199 - y);
  }

  @Test
  void opengl_puts_shapes_where_the_diagram_says_from_the_upper_left() throws Exception {
    byte[] rgb;
    try (Drawing context = new Drawing()) {
      assertThat(context.renderer()).isNotEmpty();
      rgb = DiagramFile.draw(diagram());
    }
    int paper = Theme.LIGHT.palette().ground();
    assertThat(pixel(rgb, 40, 55)).isEqualTo(0xFF0000);
    assertThat(pixel(rgb, 40, 25)).isEqualTo(paper);
    assertThat(pixel(rgb, 40, 84)).isEqualTo(paper);
    assertThat(pixel(rgb, 100, 100)).isEqualTo(0x0000FF);
    assertThat(pixel(rgb, 125, 100)).isEqualTo(0x00AA00);
    assertThat(pixel(rgb, 135, 100)).as("gap of the dashes").isEqualTo(paper);
    assertThat(pixel(rgb, 150, 25)).isEqualTo(0x102030);
    assertThat(pixel(rgb, 170, 25)).isEqualTo(0xFFFF00);
    assertThat(pixel(rgb, 150, 35)).isEqualTo(0x00FFFF);
    assertThat(pixel(rgb, 170, 35)).isEqualTo(0xFF00FF);
  }

  @Test
  void svg_is_well_formed_says_what_it_shows_and_is_always_the_same() throws Exception {
    byte[] svg = DiagramFile.svg(diagram());
    assertThat(svg).isEqualTo(DiagramFile.svg(diagram()));
    Document document =
        DocumentBuilderFactory.newDefaultInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg));
    assertThat(document.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 240 200");
    assertThat(document.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("a <test> & more");
    assertThat(document.getElementsByTagName("text").item(0).getTextContent())
        .isEqualTo("9.5 µm < 10 & more");
    assertThat(document.getElementsByTagName("polyline").getLength()).isEqualTo(2);
    assertThat(document.getElementsByTagName("polygon").getLength()).isEqualTo(1);
    assertThat(new String(svg, StandardCharsets.UTF_8)).contains("data:image/png;base64,");
  }

  @Test
  void letters_are_as_wide_without_opengl_as_with_it() throws Exception {
    String text = "pitch diameter 19.115 mm −µ";
    try (Drawing context = new Drawing();
        TextAtlas atlas = new TextAtlas(1)) {
      assertThat(context.renderer()).isNotEmpty();
      for (Face face : Face.values()) {
        assertThat(new Letters().width(face, text)).isCloseTo(atlas.width(face, text), within(0.5));
      }
    }
  }

  @Test
  void a_scale_maps_both_ways_and_writes_round_figures() {
    DiagramRule rule = new DiagramRule(19, 19.3, 400, 100);
    assertThat(rule.at(19.15)).isCloseTo(250, within(1e-9));
    assertThat(rule.length(250)).isCloseTo(19.15, within(1e-12));
    assertThat(rule.within(20)).isEqualTo(100);
    assertThat(rule.holds(19.31)).isFalse();
    StringBuilder figures = new StringBuilder();
    rule.ticks(LengthUnit.MILLIMETRE, (y, figure) -> figures.append(figure).append(' '));
    assertThat(figures.toString()).isEqualTo("19.00 19.05 19.10 19.15 19.20 19.25 19.30 ");
  }
}
