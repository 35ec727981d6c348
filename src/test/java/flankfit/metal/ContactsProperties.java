package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Touches of small random programs of one end mill with neck, shank and holder on a block: each is
 * witnessed by its place, and random places of the tool find nothing deeper.
 */
class ContactsProperties {
  /** Depth by which a touch must exceed what is told at all (mm). */
  private static final double CLEAR = 0.005;

  /** Rounding of an independent witness at surfaces (mm). */
  private static final double SURE = 1e-5;

  private static final double[] LOW = {-12, -10, -14};
  private static final double[] HIGH = {13, 11, 0};

  /** A random program, with the witness of each move. */
  private static final class Program {
    private final Tool tool;
    private final List<SweptCylinder> moves = new ArrayList<>();
    private final Job job;

    /** The same program, turned by a quarter turn or mirrored in X. */
    Program(int seed, boolean turned, boolean mirrored) {
      Random random = new Random(seed);
      tool = tool(random);
      job = new Job();
      double[] a = place(LOW[0], LOW[1], turned, mirrored);
      double[] b = place(HIGH[0], HIGH[1], turned, mirrored);
      job.block(
          Math.min(a[0], b[0]),
          Math.min(a[1], b[1]),
          LOW[2],
          Math.max(a[0], b[0]),
          Math.max(a[1], b[1]),
          HIGH[2]);
      job.take(tool);
      double[] at = {0, 0, 100};
      for (int i = 0; i < 8; i++) {
        double[] to = {
          30 * random.nextDouble() - 15, 26 * random.nextDouble() - 13, -9 * random.nextDouble()
        };
        int kind = i == 0 ? 3 : random.nextInt(5);
        if (kind == 0) {
          double cx = at[0] + to[0] / 4;
          double cy = at[1] + to[1] / 4;
          double sweep = 9 * random.nextDouble() - 4.5;
          double z = random.nextBoolean() ? at[2] : at[2] + to[2] / 6 + 0.7;
          double[] c = place(cx, cy, turned, mirrored);
          job.arc(c[0], c[1], mirrored ? -sweep : sweep, z);
          double r = Math.hypot(at[0] - cx, at[1] - cy);
          double end = Math.atan2(at[1] - cy, at[0] - cx) + sweep;
          to = new double[] {cx + r * Math.cos(end), cy + r * Math.sin(end), z};
          moves.add(SweptCylinder.arc(at, to, cx, cy, sweep));
        } else {
          if (kind == 1) {
            to[0] = at[0];
            to[1] = at[1];
          } else if (kind == 2) {
            to[2] = at[2];
          }
          double[] p = place(to[0], to[1], turned, mirrored);
          job.line(p[0], p[1], to[2]);
          moves.add(SweptCylinder.line(at, to));
        }
        at = to;
      }
    }

    private static double[] place(double x, double y, boolean turned, boolean mirrored) {
      double mx = mirrored ? -x : x;
      return turned ? new double[] {-y, mx} : new double[] {mx, y};
    }

    private static Tool tool(Random random) {
      double d = 3 + 3 * random.nextDouble();
      double flute = 2 + 5 * random.nextDouble();
      double neck = d - 1 + 1.2 * random.nextDouble();
      double shank = d - 0.4 + 2 * random.nextDouble();
      return new Tool(
          1,
          Tool.Kind.END_MILL,
          false,
          d,
          2,
          Optional.empty(),
          Math.PI,
          0,
          flute,
          Optional.of(new Tool.Section(neck, flute + 1 + random.nextDouble())),
          Optional.of(new Tool.Section(shank, 1 + 2 * random.nextDouble())),
          Optional.of(new Tool.Section(d + 4, 20)),
          0,
          0,
          "carbide",
          0);
    }

    /** Whether a point is metal just before a share of a move, as far as it is certain. */
    private boolean isMetal(double[] p, int move, double share, double doubt) {
      for (int axis = 0; axis < 3; axis++) {
        if (p[axis] < LOW[axis] + doubt || p[axis] > HIGH[axis] - doubt) {
          return false;
        }
      }
      double r = tool.radius() + doubt;
      for (int i = 0; i <= move; i++) {
        if (moves.get(i).passes(p, r, -doubt, tool.fluteLength() + doubt, i < move ? 1 : share)) {
          return false;
        }
      }
      return true;
    }

    List<Contact> contacts() {
      return Contacts.of(job.metal(1.0), List.of()).all(job.tape().size());
    }
  }

  /** A part as plain numbers: radius, heights, radius of what is below. */
  private record Part(Contact.Part name, double radius, double low, double high, boolean stands) {
    static List<Part> of(Tool tool) {
      List<Part> parts = new ArrayList<>();
      Tool.Section neck = tool.neck().orElseThrow();
      Tool.Section shank = tool.shank().orElseThrow();
      double top = neck.length();
      double below = tool.radius();
      parts.add(of(Contact.Part.NECK, neck.diameter(), tool.fluteLength(), top, below));
      below = neck.diameter() / 2;
      parts.add(of(Contact.Part.SHANK, shank.diameter(), top, top + shank.length(), below));
      top += shank.length();
      below = shank.diameter() / 2;
      double wide = tool.holder().orElseThrow().diameter();
      parts.add(of(Contact.Part.HOLDER, wide, top, top + 20, below));
      return parts;
    }

    private static Part of(Contact.Part name, double wide, double low, double high, double below) {
      boolean stands = wide / 2 > below;
      return new Part(name, wide / 2, stands ? low : low + Contacts.LEAST, high, stands);
    }

    /** How deep a point lies in it with the tip at a place (mm); below 0 outside. */
    double depth(double[] p, double[] tip) {
      double up = p[2] - tip[2] - low;
      if (up < -SURE || up > high - low + SURE) {
        return -1;
      }
      double side = radius - Math.hypot(p[0] - tip[0], p[1] - tip[1]);
      return stands ? Math.min(side, up) : side;
    }
  }

  @Test
  void touches_are_witnessed_and_none_is_missed() {
    int touches = 0;
    int samples = 0;
    for (int seed = 0; seed < 12; seed++) {
      Program program = new Program(seed, false, false);
      Cuts cuts = program.job.metal(4).cuts();
      List<Contact> found = program.contacts();
      for (Contact contact : found) {
        touches++;
        check(program, contact, seed);
      }
      Random random = new Random(1000 + seed);
      for (int move = 1; move < program.moves.size(); move++) {
        if (Revisits.isBack(cuts, move)) {
          // What touches on the way back was told on the way there.
          continue;
        }
        for (Part part : Part.of(program.tool)) {
          samples += sample(program, found, move, part, random, seed);
        }
      }
    }
    assertThat(touches).isGreaterThan(80);
    assertThat(samples).isGreaterThan(500);
  }

  private static void check(Program program, Contact contact, int seed) {
    Part part =
        Part.of(program.tool).stream()
            .filter(p -> p.name() == contact.part())
            .findFirst()
            .orElseThrow();
    double[] p = {contact.place().x(), contact.place().y(), contact.place().z()};
    double[] tip = program.moves.get(contact.move()).at(contact.deepestAt());
    String told = "seed " + seed + ": " + contact;
    assertThat(part.depth(p, tip)).as(told).isCloseTo(contact.depth(), within(SURE));
    assertThat(contact.depth()).as(told).isGreaterThan(Contacts.LEAST);
    assertThat(program.isMetal(p, contact.move(), contact.deepestAt(), -SURE)).as(told).isTrue();
  }

  /** Tries places of one part in one move; gives how many were deep in metal. */
  private static int sample(
      Program program, List<Contact> found, int move, Part part, Random random, int seed) {
    Optional<Contact> told =
        found.stream().filter(c -> c.move() == move && c.part() == part.name()).findFirst();
    double most = told.map(c -> c.depth() + c.within()).orElse(Contacts.LEAST) + CLEAR;
    int deep = 0;
    for (int i = 0; i < 400; i++) {
      double t = random.nextDouble();
      double[] tip = program.moves.get(move).at(t);
      double a = 2 * Math.PI * random.nextDouble();
      double r = part.radius() * Math.sqrt(random.nextDouble());
      double h = part.low() + Math.min(part.high() - part.low(), 4) * random.nextDouble();
      double[] p = {tip[0] + r * Math.cos(a), tip[1] + r * Math.sin(a), tip[2] + h};
      double depth = part.depth(p, tip);
      if (depth > Contacts.LEAST + CLEAR && program.isMetal(p, move, t, SURE)) {
        deep++;
        assertThat(depth)
            .as("seed %d move %d %s at %s %s %s, told %s", seed, move, part, p[0], p[1], p[2], told)
            .isLessThan(most);
      }
    }
    return deep;
  }

  @Test
  void turning_and_mirroring_leave_depths_alike() {
    for (int seed = 0; seed < 4; seed++) {
      List<Contact> plain = new Program(seed, false, false).contacts();
      List<Contact> other = new Program(seed, seed % 2 == 0, seed % 3 > 0).contacts();
      assertThat(other).hasSameSizeAs(plain);
      for (int i = 0; i < plain.size(); i++) {
        assertThat(other.get(i).part()).isEqualTo(plain.get(i).part());
        assertThat(other.get(i).move()).isEqualTo(plain.get(i).move());
        double doubt = Math.max(plain.get(i).within(), other.get(i).within());
        assertThat(other.get(i).depth()).isCloseTo(plain.get(i).depth(), within(doubt));
      }
    }
  }
}
