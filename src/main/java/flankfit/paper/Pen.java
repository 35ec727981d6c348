package flankfit.paper;

import flankfit.picture.Diagram;
import java.util.List;

/** What a paper is written with, from its title down. */
public interface Pen {
  /** The title, which comes first. */
  void title(String words);

  /** A heading; it stays with what follows. */
  void heading(Words words);

  /** A heading that begins a page where there are pages. */
  void pageHeading(Words words);

  /** A paragraph. */
  void paragraph(Words words);

  /** A paragraph in small letters and a softer ink. */
  void small(Words words);

  /** A verdict in a frame: a plain one where it is good, else a double one. */
  void verdict(String words, boolean good);

  /** Paragraphs in a frame, for what is wrong. */
  void warning(List<Words> paragraphs);

  /** A table. */
  void table(Table table);

  /** Points to tick off. */
  void checklist(List<String> points);

  /** Drawings beside one another, one at least. */
  void drawings(List<Diagram> drawings);

  /** Pictures beside one another, one at least. */
  void photos(List<Photo> photos);

  /** A step of a lesson. */
  void step(LessonStep step);

  /** The finished file. Nothing can be written afterwards. */
  byte[] finish();
}
