package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Which points a tool passes over, and how far others are, against a tool set down many times. */
class SweptCutProperties {
  /** Points asked for each kind of move. */
  private static final int POINTS = 1500;

  /** Places at which the witness sets the tool down. */
  private static final int PLACES = 1000;

  @ParameterizedTest
  @EnumSource(MoveForm.class)
  void points_are_inside_just_where_a_placed_tool_holds_them(MoveForm form) {
    Random random = new Random(form.name().hashCode());
    SweptCut cut = new SweptCut();
    Near near = new Near();
    int inside = 0;
    int close = 0;
    for (int i = 0; i < POINTS; i += 25) {
      Profile profile = SampleTools.any(random).cutting();
      Tape tape = form.move(random);
      cut.load(tape, 0, profile);
      PlacedTool witness = new PlacedTool(tape, profile, PLACES);
      for (int k = 0; k < 25; k++) {
        double[] p = point(random, tape, profile, k % 5 < 3);
        double least = witness.least(p[0], p[1], p[2], near);
        boolean holds = cut.holds(p[0], p[1], p[2]);
        double distance = cut.distance(p[0], p[1], p[2]);
        String what = form + " " + i + " " + k + " least " + least + " distance " + distance;
        assertThat(distance < 0).as(what).isEqualTo(holds);
        if (least <= 0) {
          assertThat(holds).as(what).isTrue();
          assertThat(-distance).as(what).isLessThanOrEqualTo(-least + witness.error());
          inside++;
        } else if (least > witness.error()) {
          assertThat(holds).as(what).isFalse();
        }
        if (!holds) {
          assertThat(distance).as(what).isLessThanOrEqualTo(least + 1e-9);
          assertThat(distance).as(what).isGreaterThanOrEqualTo(least - witness.error());
        }
        close += Math.abs(least) < 0.05 ? 1 : 0;
      }
    }
    assertThat(inside).isGreaterThan(POINTS / 20);
    assertThat(close).isGreaterThan(POINTS / 20);
  }

  /** A point anywhere around the path, or near the surface of the tool somewhere on it. */
  private static double[] point(Random random, Tape tape, Profile profile, boolean near) {
    double[] p = new double[3];
    tape.pointAt(0, random.nextDouble(), p);
    double h = profile.bottom() + (profile.top() - profile.bottom()) * random.nextDouble();
    double r = Math.max(0, profile.radiusAt(h));
    double a = 2 * Math.PI * random.nextDouble();
    double off = near ? 0.02 * random.nextGaussian() : 2 * random.nextGaussian();
    if (near && random.nextInt(4) == 0) {
      h = random.nextBoolean() ? profile.bottom() : profile.top();
      r *= random.nextDouble();
    }
    return new double[] {
      p[0] + (r + off) * Math.cos(a),
      p[1] + (r + off) * Math.sin(a),
      p[2] + h + (near ? 0.02 : 1) * random.nextGaussian()
    };
  }

  /**
   * Where a flank, a corner of the profile or an end of the path is nearest: differences of the
   * measure, where it has no kink.
   */
  @ParameterizedTest
  @EnumSource(
      value = MoveForm.class,
      names = {"HELIX", "STEEP_HELIX"})
  void the_direction_of_a_helixs_surface_is_that_in_which_the_measure_grows(MoveForm form) {
    Random random = new Random(form.name().hashCode());
    SweptCut cut = new SweptCut();
    double[] found = new double[3];
    double step = 1e-5;
    int compared = 0;
    for (int i = 0; i < POINTS; i++) {
      Profile profile =
          ToolBody.of(SampleTools.threadMill(1, 6 + 10 * random.nextDouble(), 1, 1.5)).cutting();
      Tape tape = form.move(random);
      cut.load(tape, 0, profile);
      double[] p = point(random, tape, profile, true);
      double[] gradient = new double[3];
      double here = cut.excess(p[0], p[1], p[2]);
      double bend = 0;
      double length = 0;
      for (int axis = 0; axis < 3; axis++) {
        double at = p[axis];
        p[axis] = at + step;
        double above = cut.excess(p[0], p[1], p[2]);
        p[axis] = at - step;
        double below = cut.excess(p[0], p[1], p[2]);
        p[axis] = at;
        gradient[axis] = (above - below) / (2 * step);
        bend = Math.max(bend, Math.abs(above - 2 * here + below) / step);
        length += gradient[axis] * gradient[axis];
      }
      if (Math.abs(here) < 0.1 && bend < 1e-3) {
        cut.excess(p[0], p[1], p[2]);
        cut.round().direction(p[0], p[1], found);
        for (int axis = 0; axis < 3; axis++) {
          assertThat(found[axis])
              .as("%s %s axis %s", form, i, axis)
              .isCloseTo(gradient[axis] / Math.sqrt(length), within(1e-3));
        }
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(POINTS / 12);
  }

  /** Every kind of move that a tape knows. */
  enum MoveForm {
    LEVEL,
    PLUNGE,
    RAMP,
    STEEP_RAMP,
    FLAT_ARC,
    HELIX,
    STEEP_HELIX,
    SPIRAL,
    NEARLY_ROUND,
    ZX_ARC,
    YZ_HELIX;

    Tape move(Random random) {
      double l = 1 + 8 * random.nextDouble();
      double a = 2 * Math.PI * random.nextDouble();
      double dx = l * Math.cos(a);
      double dy = l * Math.sin(a);
      return switch (this) {
        case LEVEL -> line(dx, dy, 0);
        case PLUNGE -> line(0, 0, random.nextBoolean() ? l : -l);
        case RAMP -> line(dx, dy, random.nextGaussian());
        case STEEP_RAMP -> line(dx / 10, dy / 10, l);
        case FLAT_ARC -> arc(random, Plane.XY, 0, 1, 0);
        case HELIX -> arc(random, Plane.XY, 1.5, 1, 0);
        case STEEP_HELIX -> arc(random, Plane.XY, 6, 0.2, 0);
        case SPIRAL -> arc(random, Plane.XY, 1, 1, 0.5);
        case NEARLY_ROUND -> arc(random, Plane.XY, 1, 1, 3e-4);
        case ZX_ARC -> arc(random, Plane.ZX, 0, 1, 0);
        case YZ_HELIX -> arc(random, Plane.YZ, 1, 1, 0);
      };
    }
  }

  private static TapeBuilder builder() {
    return new TapeBuilder(new Point(1, -2, 3), new double[] {1e4, 1e4, 1e4});
  }

  private static Tape line(double dx, double dy, double dz) {
    TapeBuilder builder = builder();
    builder.straight(flankfit.motion.MoveKind.LINE, 1 + dx, -2 + dy, 3 + dz, 1, 1, state(Plane.XY));
    return builder.build();
  }

  private static ModalState state(Plane plane) {
    ModalState s = ModalState.initial(LengthUnit.MILLIMETRE);
    return new ModalState(
        s.distance(),
        plane,
        s.compensation(),
        0,
        0,
        0,
        s.unit(),
        "G54",
        1,
        100,
        ModalState.Spindle.CLOCKWISE,
        1000,
        false);
  }

  @Test
  void a_dwell_at_a_place_is_the_tool_itself() {
    Tape tape = line(0, 0, 0);
    SweptCut cut = new SweptCut();
    cut.load(tape, 0, Profile.cylinder(2, 0, 5));
    assertThat(cut.holds(1, -0.1, 3.5)).isTrue();
    assertThat(cut.holds(1, 0.1, 3.5)).isFalse();
    assertThat(cut.distance(1, 1, 3.5)).isEqualTo(1);
    assertThat(List.of(cut.distance(1, -2, 2))).containsExactly(1.0);
  }

  private static Tape arc(Random random, Plane plane, double rise, double scale, double spiral) {
    double r0 = scale * (0.5 + 4 * random.nextDouble());
    double r1 = r0 + spiral * random.nextGaussian() * r0 / 4;
    double a0 = 2 * Math.PI * random.nextDouble() - Math.PI;
    double sweep = (random.nextBoolean() ? 1 : -1) * (0.3 + 9 * random.nextDouble());
    double up = rise * random.nextGaussian() * Math.abs(sweep) / 6;
    double[] start = {1, -2, 3};
    double cu = start[plane.u()] - r0 * Math.cos(a0);
    double cv = start[plane.v()] - r0 * Math.sin(a0);
    double[] end = new double[3];
    end[plane.u()] = cu + r1 * Math.cos(a0 + sweep);
    end[plane.v()] = cv + r1 * Math.sin(a0 + sweep);
    end[plane.n()] = start[plane.n()] + up;
    TapeBuilder builder = builder();
    builder.arc(end[0], end[1], end[2], cu, cv, r0, r1, sweep, 1, 1, state(plane));
    return builder.build();
  }
}
