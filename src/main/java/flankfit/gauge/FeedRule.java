package flankfit.gauge;

import flankfit.cutting.EdgeFeed;
import flankfit.finding.Code;
import flankfit.finding.Findings;

/**
 * Tells a feed that was meant for the edge and is run by the centre: a tooth at the edge would get
 * more than any mill of its size takes, and the very same figure as a feed of the edge is usual.
 */
final class FeedRule {
  /**
   * Feed of the edge for one tooth, as a share of the mill's diameter, beyond which no thread mill
   * is fed (1): common practice is 0.003 to 0.008; no source.
   */
  static final double HEAVY = 0.015;

  /** Greatest feed of the edge for one tooth that is usual, as a share of the diameter (1). */
  static final double USUAL = 0.010;

  private FeedRule() {}

  static void check(Scene scene, Findings findings) {
    Text text = scene.found().text();
    boolean internal = scene.found().spec().internal();
    CutPass finish = scene.found().model().finish();
    double load = PassCuts.toothLoad(finish);
    double mill = 2 * finish.tooth().outsideRadius();
    double feed = finish.pass().state().feed();
    if (!internal || load <= 0) {
      return;
    }
    EdgeFeed edge = new EdgeFeed(true, finish.pass().radius(), finish.tooth().outsideRadius());
    double atEdge = edge.edge(load);
    if (atEdge > HEAVY * mill && load <= USUAL * mill) {
      findings.add(
          Code.TH16,
          scene.at(finish.pass()),
          "feed "
              + text.feed(feed)
              + " seems meant for the edge: run by the centre it gives a tooth "
              + text.length(atEdge)
              + " at the edge, above "
              + text.length(HEAVY * mill),
          "inside a hole the edge runs "
              + Text.number(edge.ratio(), 2)
              + " times as fast as the centre; as a feed of the edge the same figure gives a tooth "
              + text.length(load)
              + ", which is usual",
          text.feed(edge.centreFor(feed))
              + " of the centre for "
              + text.feed(feed)
              + " at the edge");
    }
  }
}
