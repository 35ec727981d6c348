package flankfit.paper;

import flankfit.picture.Diagram;
import flankfit.picture.DiagramFile;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/**
 * Writes a paper as one HTML file: no script, nothing from elsewhere, drawings within. It is well
 * formed as XML, too, fits narrow screens, and prints in grey on A4 and on letter.
 */
public final class HtmlPen implements Pen {
  private static final String STYLE =
      """
      @page { margin: 13mm 14mm; }
      body { font: 10pt/1.34 "DejaVu Sans Condensed", "DejaVu Sans", Verdana, "Segoe UI",
        Helvetica, Arial, sans-serif; color: #23272b; background: #fff; max-width: 182mm;
        margin: 0 auto; padding: 4mm; font-variant-numeric: tabular-nums;
        overflow-wrap: break-word; }
      h1 { font-size: 15pt; line-height: 1.2; margin: 0 0 2mm; }
      h2 { font-size: 11pt; margin: 4mm 0 1.5mm; border-top: 0.3mm solid #999; padding-top: 2mm;
        break-after: avoid; }
      p, ul { margin: 0 0 1.5mm; }
      code { font-family: "DejaVu Sans Mono", Consolas, Menlo, monospace; font-size: 9pt; }
      .wide { overflow-x: auto; }
      table { border-collapse: collapse; width: 100%; margin: 0 0 2mm; }
      tr { break-inside: avoid; }
      th, td { text-align: left; padding: 0.6mm 2.5mm 0.6mm 0; border-bottom: 0.2mm solid #ccc;
        vertical-align: top; }
      th { font-weight: normal; color: #5c6064; }
      table.pairs td { overflow-wrap: anywhere; width: 100%; }
      table.pairs th { white-space: nowrap; }
      td.n { text-align: right; white-space: nowrap; }
      th.n { text-align: right; }
      td.fill { border-bottom: 0.3mm dotted #23272b; min-width: 24mm; }
      .verdict { font-size: 12pt; font-weight: bold; border: 0.5mm solid #23272b;
        padding: 1.5mm 3mm; margin: 2mm 0; }
      .verdict.no { border: 1.1mm double #a63a00; }
      .wrong { border: 0.5mm solid #a63a00; padding: 2mm; margin: 0 0 2mm; }
      figure { margin: 0 0 2mm; break-inside: avoid; }
      figure svg, figure img { width: 100%; height: auto; }
      .two { display: grid; grid-template-columns: 1fr 1fr; gap: 4mm; }
      ul.boxes { list-style: none; padding-left: 0; }
      ul.boxes li { padding-left: 5.5mm; text-indent: -5.5mm; }
      .box { display: inline-block; width: 3.2mm; height: 3.2mm; border: 0.3mm solid #23272b;
        margin-right: 2mm; }
      .soft { color: #5c6064; font-size: 8.5pt; }
      section { break-inside: avoid; border-top: 0.3mm solid #999; padding: 2.5mm 0 3mm;
        overflow: hidden; }
      section h2 { border: 0; padding: 0; margin: 0 0 1mm; }
      section.absolute { border-left: 1mm solid #0072b2; padding-left: 3mm; }
      section.incremental { border-left: 1.4mm double #b36b00; padding-left: 3mm; }
      section svg { float: right; width: 78mm; height: auto; margin: 0 0 0 4mm; }
      dl { display: grid; grid-template-columns: 24mm 1fr; margin: 0; }
      dt { color: #5c6064; }
      dd { margin: 0; overflow-wrap: anywhere; }
      dd.own { font-weight: bold; }
      @media screen and (max-width: 640px) {
        .two { grid-template-columns: 1fr; }
        section svg { float: none; width: 100%; margin: 0 0 2mm; }
      }
      @media print { body { font-size: 9.4pt; padding: 0; max-width: none; } .page { break-before: page; } }
      """;

  private final String footer;
  private final StringBuilder out = new StringBuilder();

  /**
   * Begins a paper.
   *
   * @param title the document's title
   * @param footer words at its end
   */
  public HtmlPen(String title, String footer) {
    this.footer = footer;
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    out.append("<title>");
    text(title).append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n");
  }

  @Override
  public void title(String words) {
    out.append("<h1>");
    text(words).append("</h1>\n");
  }

  @Override
  public void heading(Words words) {
    out.append("<h2>");
    words(words).append("</h2>\n");
  }

  @Override
  public void pageHeading(Words words) {
    out.append("<h2 class=\"page\">");
    words(words).append("</h2>\n");
  }

  @Override
  public void paragraph(Words words) {
    out.append("<p>");
    words(words).append("</p>\n");
  }

  @Override
  public void small(Words words) {
    out.append("<p class=\"soft\">");
    words(words).append("</p>\n");
  }

  @Override
  public void verdict(String words, boolean good) {
    out.append("<p class=\"verdict").append(good ? "" : " no").append("\">");
    text(words).append("</p>\n");
  }

  @Override
  public void warning(List<Words> paragraphs) {
    out.append("<div class=\"wrong\">\n");
    paragraphs.forEach(this::paragraph);
    out.append("</div>\n");
  }

  @Override
  public void table(Table table) {
    out.append("<div class=\"wide\"><table").append(table.headed() ? ">\n" : " class=\"pairs\">\n");
    if (table.headed()) {
      out.append("<thead><tr>");
      for (Table.Column column : table.columns()) {
        out.append(column.kind() == Table.Kind.FIGURES ? "<th class=\"n\">" : "<th>");
        text(column.name()).append("</th>");
      }
      out.append("</tr></thead>\n");
    }
    out.append("<tbody>\n");
    for (List<Table.Cell> row : table.rows()) {
      out.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        cell(row.get(i), table.columns().get(i).kind());
      }
      out.append("</tr>\n");
    }
    out.append("</tbody>\n</table></div>\n");
  }

  private void cell(Table.Cell cell, Table.Kind kind) {
    if (cell.toFill()) {
      out.append("<td class=\"fill\"></td>");
      return;
    }
    String end = kind == Table.Kind.NAME ? "</th>" : "</td>";
    out.append(
        switch (kind) {
          case WORDS -> "<td>";
          case NAME -> "<th>";
          case FIGURES -> "<td class=\"n\">";
          case CODE -> "<td><code>";
        });
    words(cell.words()).append(kind == Table.Kind.CODE ? "</code>" : "").append(end);
  }

  @Override
  public void checklist(List<String> points) {
    out.append("<ul class=\"boxes\">\n");
    for (String point : points) {
      out.append("<li><span class=\"box\"></span>");
      text(point).append("</li>\n");
    }
    out.append("</ul>\n");
  }

  @Override
  public void drawings(List<Diagram> drawings) {
    beside(drawings.size());
    for (Diagram drawing : drawings) {
      out.append("<figure>");
      svg(drawing);
      out.append("</figure>\n");
    }
    out.append("</div>\n");
  }

  @Override
  public void photos(List<Photo> photos) {
    beside(photos.size());
    for (Photo photo : photos) {
      out.append("<figure><img alt=\"");
      text(photo.shows()).append("\" src=\"data:image/png;base64,");
      out.append(Base64.getEncoder().encodeToString(photo.png())).append("\"/></figure>\n");
    }
    out.append("</div>\n");
  }

  private void beside(int count) {
    out.append(count > 1 ? "<div class=\"two\">\n" : "<div>\n");
  }

  @Override
  public void step(LessonStep step) {
    String bar = step.bar().word();
    out.append("<section").append(bar.isEmpty() ? "" : " class=\"" + bar + "\"").append(">\n");
    step.drawing().ifPresent(this::svg);
    out.append("<h2>");
    words(step.heading()).append("</h2>\n<p>");
    text(step.plain()).append("</p>\n");
    if (!step.rows().isEmpty()) {
      out.append("<dl>\n");
      for (LessonStep.Row row : step.rows()) {
        out.append("<dt>");
        text(row.name()).append("</dt><dd").append(row.own() ? " class=\"own\">" : ">");
        text(row.words()).append("</dd>\n");
      }
      out.append("</dl>\n");
    }
    out.append("</section>\n");
  }

  @Override
  public byte[] finish() {
    small(Words.of(footer));
    out.append("</body>\n</html>\n");
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void svg(Diagram drawing) {
    out.append(new String(DiagramFile.svg(drawing), StandardCharsets.UTF_8));
  }

  private StringBuilder words(Words words) {
    for (Words.Span span : words.spans()) {
      String tag =
          switch (span.look()) {
            case PLAIN -> "";
            case STRONG -> "b";
            case CODE -> "code";
          };
      out.append(tag.isEmpty() ? "" : "<" + tag + ">");
      text(span.text()).append(tag.isEmpty() ? "" : "</" + tag + ">");
    }
    return out;
  }

  /** Text with what means something in HTML spelt out. */
  private StringBuilder text(String words) {
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      switch (c) {
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '&' -> out.append("&amp;");
        case '"' -> out.append("&quot;");
        default -> out.append(isControl(c) ? ' ' : c);
      }
    }
    return out;
  }

  /** What XML takes in no way. */
  private static boolean isControl(char c) {
    return c < ' ' || c == 0x7F || c == 0xFFFE || c == 0xFFFF;
  }
}
