package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Sections of analytic bodies against plane geometry. */
class SectionTest {
  private static final Meshing PLAIN = new Meshing(2, 0, Halt.NEVER);

  private static final Shape BUSH =
      Shape.minus(
          Shape.block(-1.53, -0.91, -1.02, 1.51, 0.93, 0.61),
          Shape.both(Shape.cylinder(2, 0.313, 0.021, 0, 0.41), Shape.plane(0, 0, -1, 0.5))
              .madeBy(3),
          Shape.both(Shape.cylinder(2, 0.313, 0.021, 0, 0.62), Shape.plane(0, 0, -1, -0.3))
              .madeBy(4));

  private static Section cut(Shape shape, int cells, SectionPlane plane) {
    ShapeSolid solid = ShapeSolid.uniform(shape, -2.1, 4.2, cells);
    Section section = Section.of(PLAIN.mesh(solid), solid, plane);
    double filled = 0;
    for (int t = 0; t < section.triangleCount(); t++) {
      int a = section.corner(t, 0);
      int b = section.corner(t, 1);
      int c = section.corner(t, 2);
      double twice =
          (section.right(b) - section.right(a)) * (section.up(c) - section.up(a))
              - (section.right(c) - section.right(a)) * (section.up(b) - section.up(a));
      assertThat(twice).isGreaterThanOrEqualTo(0);
      filled += twice / 2;
    }
    assertThat(filled).isCloseTo(section.area(), within(1e-9 * section.area()));
    assertThat(section.unfilled()).isZero();
    return section;
  }

  @Test
  void along_the_axis_a_stepped_bore_shows_straight_lines_and_is_exact() {
    SectionPlane plane = SectionPlane.through(0, 0.021, 0, 0, -1, 0);
    Section section = cut(BUSH, 32, plane);
    assertThat(section.loopCount()).isEqualTo(1);
    double area = 3.04 * 1.63 - 0.82 * (0.61 + 0.5) - (1.24 - 0.82) * (0.61 - 0.3);
    assertThat(section.area()).isCloseTo(area, within(1e-8));
    // along each piece: which of the three made it
    double[] lengths = new double[3];
    for (int p = 0; p < section.pointCount(); p++) {
      int next = p + 1 < section.pointCount() ? p + 1 : 0;
      double length =
          Math.hypot(section.right(next) - section.right(p), section.up(next) - section.up(p));
      lengths[section.maker(p) < 0 ? 0 : section.maker(p) - 2] += length;
    }
    // the bore's walls and ground; the counterbore's walls and ring; the rest of the skin
    assertThat(lengths[1]).isCloseTo(2 * 0.8 + 0.82, within(1e-8));
    assertThat(lengths[2]).isCloseTo(2 * 0.31 + 0.42, within(1e-8));
    assertThat(lengths[0]).isCloseTo(2 * 1.63 + 3.04 + 3.04 - 1.24, within(1e-8));
  }

  @Test
  void across_the_axis_the_bore_is_a_hole_whose_points_lie_on_its_circle() {
    Section section = cut(BUSH, 64, SectionPlane.through(0, 0, 0.1, 0, 0, 1));
    assertThat(section.loopCount()).isEqualTo(2);
    double exact = 3.04 * 1.84 - Math.PI * 0.41 * 0.41;
    // chords of up to a cell's diagonal leave a twelfth of their square along the circle
    double diagonal = 2 * Math.pow(4.2 / 64, 2);
    assertThat(section.area()).isBetween(exact, exact + 2 * Math.PI * 0.41 * diagonal / 12);
    int onCircle = 0;
    for (int p = 0; p < section.pointCount(); p++) {
      double r = Math.hypot(section.right(p) - 0.313, section.up(p) - 0.021);
      if (r < 0.6) {
        assertThat(r).isCloseTo(0.41, within(1e-9));
        onCircle++;
      }
    }
    assertThat(onCircle).isGreaterThan(30);
  }

  @Test
  void area_of_an_ellipse_falls_with_the_square_of_the_cell() {
    double c = Math.cos(0.5);
    Shape bar =
        Shape.both(
            Shape.cylinder(2, 0, 0, 0, 0.7),
            Shape.plane(0, 0, 1, 1.51),
            Shape.plane(0, 0, -1, 1.47));
    SectionPlane plane = SectionPlane.through(0.01, 0.02, 0.03, Math.sin(0.5), 0, c);
    double exact = Math.PI * 0.7 * 0.7 / c;
    double[] errors = new double[3];
    for (int i = 0; i < 3; i++) {
      errors[i] = Math.abs(cut(bar, 16 << i, plane).area() - exact);
    }
    assertThat(Math.log(errors[0] / errors[2]) / Math.log(4)).isGreaterThan(1.8);
  }

  @Test
  void ring_in_a_ring_is_filled_as_two_pieces() {
    Shape body =
        Shape.either(
            Shape.both(Shape.torus(0.01, 1.3, 0.3), Shape.plane(0, 0, 1, 2)),
            Shape.torus(0.01, 0.5, 0.2));
    Section section = cut(body, 64, SectionPlane.through(0, 0, 0.02, 0, 0, 1));
    assertThat(section.loopCount()).isEqualTo(4);
    double half1 = Math.sqrt(0.09 - 1e-4);
    double half2 = Math.sqrt(0.04 - 1e-4);
    double exact = 4 * Math.PI * (1.3 * half1 + 0.5 * half2);
    assertThat(section.area()).isCloseTo(exact, within(2e-3 * exact));
  }

  @Test
  void plane_beside_the_body_gives_nothing() {
    Section section = cut(BUSH, 32, SectionPlane.through(0, 0, 1.5, 0, 0, 1));
    assertThat(section.loopCount()).isZero();
    assertThat(section.area()).isZero();
  }

  @Test
  void plane_in_a_face_of_the_body_closes() {
    Section below = cut(BUSH, 32, SectionPlane.through(0, 0, -1.02, 0, 0, 1));
    Section above = cut(BUSH, 32, SectionPlane.through(0, 0, -1.02, 0, 0, -1));
    assertThat(below.area() + above.area()).isLessThanOrEqualTo(3.04 * 1.84 + 1e-6);
  }

  @Test
  void section_of_a_thread_has_its_corners() {
    double pitch = 0.8;
    double tangent = Math.tan(Math.toRadians(30));
    double root = 1.5;
    double minor = 0.9;
    Shape groove =
        Shape.both(
            Shape.flank(1, pitch, root, tangent, minor / 2),
            Shape.flank(-1, pitch, root, tangent, minor / 2),
            Shape.not(Shape.cylinder(2, 0, 0, 0, minor / 2)));
    Shape body =
        Shape.minus(
            Shape.block(-2, -2, -1.31, 2, 2, 1.23), Shape.cylinder(2, 0, 0, 0, minor), groove);
    ShapeSolid solid =
        new ShapeSolid(
            body,
            ShapeCells.of(
                body,
                -3.007,
                -3.011,
                -3.013,
                6.05,
                64,
                (x, y, z) -> Math.hypot(x, y) < 1.7 ? 1 : 4));
    Section section = Section.of(PLAIN.mesh(solid), solid, SectionPlane.through(0, 0, 0, 0, -1, 0));
    assertThat(section.loopCount()).isEqualTo(2);
    // on the side of +X grooves stand at whole pitches, crests' ends by flank angle from there
    for (int turn = -1; turn <= 1; turn++) {
      double z = turn * pitch;
      double half = (root - minor) * tangent;
      assertThat(nearest(section, root, z)).as("root").isLessThan(1e-9);
      assertThat(nearest(section, minor, z - half)).as("crest").isLessThan(1e-9);
      // the last crest leaves a land below the top that is narrower than a cell
      if (turn < 1) {
        assertThat(nearest(section, minor, z + half)).as("crest").isLessThan(1e-9);
      }
    }
  }

  private static double nearest(Section section, double x, double z) {
    double least = 9;
    for (int p = 0; p < section.pointCount(); p++) {
      double r = section.right(p);
      double u = section.up(p);
      double px = section.plane().x(r, u);
      double pz = section.plane().z(r, u);
      least = Math.min(least, Math.hypot(px - x, pz - z));
    }
    return least;
  }
}
