package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.paper.HtmlPen;
import flankfit.paper.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** That the browser of these tests tells what it is there to tell. */
class BrowserTest {
  @TempDir private Path folder;

  @Test
  void failing_script_and_outside_requests_are_told() throws Exception {
    Path page = folder.resolve("bad.html");
    Files.writeString(
        page,
        """
        <!DOCTYPE html>
        <html lang="en"><head><meta charset="utf-8"/><title>bad</title>
        <link rel="stylesheet" href="https://example.org/style.css"/></head>
        <body><img src="http://example.org/picture.png"/>
        <script>document.body.append("it ran"); thereIsNoSuchThing();</script></body></html>
        """);
    Browser.Opened opened = Browser.open(page, folder);
    assertThat(opened.dom()).contains("it ran");
    assertThat(opened.console()).anyMatch(line -> line.contains("thereIsNoSuchThing"));
    assertThat(opened.requests())
        .contains("http://example.org/picture.png", "https://example.org/style.css");
  }

  @Test
  void words_of_a_paper_are_no_markup() throws Exception {
    HtmlPen pen = new HtmlPen("a<b>&\"c", "<!-- end");
    pen.title("</h1><script>thereIsNoSuchThing()</script>");
    pen.paragraph(Words.of("<img src='http://example.org/x.png' onerror='y()'>\u0001 &amp;"));
    Path page = folder.resolve("paper.html");
    Files.write(page, pen.finish());
    Browser.Opened opened = Browser.open(page, folder);
    assertThat(opened.console()).isEmpty();
    assertThat(opened.requests()).isEmpty();
    assertThat(opened.dom())
        .contains("&lt;/h1&gt;&lt;script&gt;", "&lt;img src='http", "&amp;amp;", "&lt;!-- end")
        .contains("</body></html>");
  }
}
