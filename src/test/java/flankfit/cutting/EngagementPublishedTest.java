package flankfit.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.Angles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Engagement and feed of the edge against figures computed apart from the same definitions. */
class EngagementPublishedTest {
  @ParameterizedTest(name = "D {0}, mill {1}")
  @CsvSource({
    "16, 12, 14, 3.7500, 67.976, 0.9270, 0.5268",
    "20, 14, 18.5, 2.4063, 48.986, 0.7545, 0.4021",
    "30, 20, 28, 2.9000, 44.765, 0.7042, 0.3712"
  })
  void engagement_inside_a_hole(
      double thread,
      double mill,
      double bore,
      double depth,
      double degrees,
      double most,
      double mean) {
    Engagement engagement = new Engagement(true, (thread - mill) / 2, mill / 2, bore / 2);
    assertThat(engagement.equivalentDepth()).isCloseTo(depth, within(5.1e-5));
    assertThat(Angles.toDegrees(engagement.angle())).isCloseTo(degrees, within(5.1e-4));
    assertThat(engagement.greatestChip(1)).isCloseTo(most, within(5.1e-5));
    assertThat(engagement.meanChip(1)).isCloseTo(mean, within(5.1e-5));
  }

  @ParameterizedTest(name = "D {0}, mill {1}")
  @CsvSource({"16, 12, true, 200, 50", "20, 14, true, 200, 60", "17, 20, false, 200, 435.3"})
  void feed_of_the_centre_for_a_feed_of_the_edge(
      double cut, double mill, boolean internal, double edge, double centre) {
    double path = internal ? (cut - mill) / 2 : (cut + mill) / 2;
    EdgeFeed feed = new EdgeFeed(internal, path, mill / 2);
    assertThat(feed.centreFor(edge)).isCloseTo(centre, within(0.051));
    assertThat(feed.edge(feed.centreFor(edge))).isCloseTo(edge, within(1e-9));
  }
}
