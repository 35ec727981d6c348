package flankfit.metal;

import flankfit.motion.Extents;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.KeepOut;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * Where parts of tools go into metal that is there at that moment, or into bodies that nothing may
 * touch. Neck, shank and holder are tried in every move; the cutting part against metal only where
 * it has no business there: at rapid, with the spindle off or turning the wrong way, and a thread
 * mill that is fed along its axis.
 *
 * <p>What the cutting part takes away in the very move is gone for what comes after it: when the
 * tool goes down, before the parts above come; when it goes up or level, not. Along arcs in other
 * planes than XY all of it counts as gone.
 *
 * <p>The same for any number of threads. Depths along lines and arcs in XY are good to 1 µm, or to
 * what a contact says.
 */
public final class Contacts {
  /**
   * Depth from which a touch is told (mm): stock, drilled holes and ground shanks differ by as much
   * from the sizes in a sheet. Common practice, no source.
   */
  public static final double LEAST = 0.02;

  /** Distance to which the first touch along a move is found (mm). */
  private static final double FIRST = 1e-3;

  private final Metal metal;
  private final Tape tape;
  private final Map<String, StockBody> keepOuts = new LinkedHashMap<>();
  private final ThreadLocal<ContactSearch> searches;
  private final Set<Integer> unsure = new ConcurrentSkipListSet<>();

  private Contacts(Metal metal, List<KeepOut> bodies) {
    this.metal = metal;
    this.tape = metal.cuts().tape();
    for (KeepOut body : bodies) {
      Stock block = new Stock(Stock.Shape.BLOCK, body.box(), 0);
      keepOuts.put(body.name(), SheetStock.of(block, Optional.empty(), List.of()));
    }
    searches = ThreadLocal.withInitial(() -> new ContactSearch(metal));
  }

  /** The touches of a program. Nothing is searched yet. */
  public static Contacts of(Metal metal, List<KeepOut> keepOuts) {
    return new Contacts(metal, keepOuts);
  }

  /** Whether the height of some move rises and falls within it, so that the order is not known. */
  public boolean isOrderAssumed() {
    for (int move = 0; move < tape.size(); move++) {
      if (PathPiece.isTilted(tape, move)) {
        return true;
      }
    }
    return false;
  }

  /** Moves of which the search could not say for certain that nothing touches. */
  public List<Integer> unsure() {
    return List.copyOf(unsure);
  }

  /**
   * All touches, by move and from the tip upwards, the metal before other bodies.
   *
   * @param moves number of moves that are looked at, from the first
   * @throws java.util.concurrent.CancellationException if the progress of the metal ends the work
   */
  public List<Contact> all(int moves) {
    List<Integer> wanted = new ArrayList<>();
    for (int move = 0; move < moves; move++) {
      if (tape.kind(move) != MoveKind.DWELL
          && metal.cuts().body(move).isPresent()
          && mayTouch(move)) {
        wanted.add(move);
      }
    }
    List<List<Contact>> found = new ArrayList<>();
    wanted.forEach(move -> found.add(List.of()));
    metal.each(wanted.size(), i -> found.set(i, ofMove(wanted.get(i))));
    return found.stream().flatMap(List::stream).toList();
  }

  /** Whether the box of a whole tool on its way meets that of the stock or of a body. */
  private boolean mayTouch(int move) {
    ToolBody body = metal.cuts().body(move).orElseThrow();
    double wide = body.cutting().widest();
    double top = body.cutting().top();
    for (ToolBody.Part part : body.above()) {
      wide = Math.max(wide, part.profile().widest());
      top = Math.max(top, part.profile().top());
    }
    SweptCut whole = new SweptCut();
    whole.load(tape, move, Profile.cylinder(wide, body.cutting().bottom(), top));
    double[] box = new double[6];
    for (int axis = 0; axis < 3; axis++) {
      box[axis] = Double.POSITIVE_INFINITY;
      box[axis + 3] = Double.NEGATIVE_INFINITY;
    }
    whole.include(box, 0);
    boolean meets = meets(box, metal.stock().box());
    for (StockBody one : keepOuts.values()) {
      meets |= meets(box, one.box());
    }
    return meets;
  }

  private static boolean meets(double[] box, Extents other) {
    for (int axis = 0; axis < 3; axis++) {
      if (box[axis] >= other.max().axis(axis) || box[axis + 3] <= other.min().axis(axis)) {
        return false;
      }
    }
    return true;
  }

  private List<Contact> ofMove(int move) {
    List<Contact> found = new ArrayList<>();
    if (Revisits.isBack(metal.cuts(), move)) {
      return found;
    }
    List<PathPiece> pieces = PathPiece.of(tape, move);
    ToolBody body = metal.cuts().body(move).orElseThrow();
    for (int part = 0; part <= body.above().size(); part++) {
      List<BodyPath> paths = paths(body, part, pieces);
      if (part > 0 || isCutterTried(move)) {
        ContactSearch search = searches.get();
        double depth = search.inMetal(paths, moment(move, part), LEAST, false);
        keep(move, name(body, part), Optional.empty(), depth, search, found);
        if (search.isUnsure()) {
          unsure.add(move);
        }
      }
      for (Map.Entry<String, StockBody> one : keepOuts.entrySet()) {
        ContactSearch search = searches.get();
        double depth = search.inBody(paths, one.getValue(), LEAST, false);
        keep(move, name(body, part), Optional.of(one.getKey()), depth, search, found);
      }
    }
    return found;
  }

  private static void keep(
      int move,
      Contact.Part part,
      Optional<String> keepOut,
      double depth,
      ContactSearch search,
      List<Contact> found) {
    if (depth > LEAST) {
      Point place = new Point(search.x, search.y, search.z);
      found.add(new Contact(move, part, keepOut, depth, place, search.share, search.within()));
    }
  }

  private static Contact.Part name(ToolBody body, int part) {
    return part == 0 ? Contact.Part.CUTTER : Contact.Part.named(body.above().get(part - 1).name());
  }

  /** The number of moves whose cuts count for a part. */
  private int moment(int move, int part) {
    boolean down = tape.toZ(move) < tape.fromZ(move);
    return part > 0 && (down || PathPiece.isTilted(tape, move)) ? move + 1 : move;
  }

  private boolean isCutterTried(int move) {
    Tool tool = metal.cuts().body(move).orElseThrow().tool();
    ModalState.Spindle spindle = tape.state(move).spindle();
    if (tape.kind(move) == MoveKind.RAPID || spindle == ModalState.Spindle.OFF) {
      return true;
    }
    boolean thread = tool.kind() == Tool.Kind.THREAD_MILL;
    boolean alongAxis = tape.toX(move) == tape.fromX(move) && tape.toY(move) == tape.fromY(move);
    return thread
        ? alongAxis && tape.kind(move) == MoveKind.LINE
        : spindle == ModalState.Spindle.COUNTER_CLOCKWISE != tool.leftHand();
  }

  static List<BodyPath> paths(ToolBody body, int part, List<PathPiece> pieces) {
    List<BodyPath> paths = new ArrayList<>();
    for (PathPiece piece : pieces) {
      if (part == 0 && RowsAlong.isFull(body, piece)) {
        paths.addAll(RowsAlong.paths(body, piece));
      } else {
        paths.add(path(body, part, piece));
      }
    }
    return paths;
  }

  private static BodyPath path(ToolBody body, int part, PathPiece piece) {
    Profile profile = part == 0 ? body.cutting() : body.above().get(part - 1).profile();
    double low = profile.bottom();
    double radius = profile.widest();
    if (part == 0 && !body.isCylinder()) {
      return new CutterPath(piece, profile, body.isConvex());
    }
    double below = part == 0 ? 0 : below(body, part);
    boolean stands = radius > below + 1e-9;
    // Where a flush part ends below is known no better than anything else in a sheet.
    return new CylinderPath(piece, radius, stands ? low : low + LEAST, profile.top(), stands);
  }

  /** Radius of what stands below a part (mm). */
  private static double below(ToolBody body, int part) {
    Profile lower = part == 1 ? body.cutting() : body.above().get(part - 2).profile();
    return Math.max(0, lower.radiusAt(lower.top()));
  }

  /** Whether a contact is there where its move begins. */
  public boolean startsIn(Contact contact) {
    return first(contact) == 0;
  }

  /** Whether any move takes metal away that can be seen: deeper than 1 µm. */
  public boolean cutsAnything() {
    ContactSearch search = searches.get();
    for (int move = 0; move < tape.size(); move++) {
      if (metal.cuts().removes(move) && mayTouch(move)) {
        ToolBody body = metal.cuts().body(move).orElseThrow();
        List<PathPiece> pieces = PathPiece.of(tape, move);
        boolean cuts =
            body.isConvex()
                ? search.inMetal(paths(body, 0, pieces), move, FIRST, true) > FIRST
                : RowsAlong.cut(metal, move, body, pieces);
        if (cuts) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Where along its move a contact begins: the share at which the part is first deeper than {@link
   * #LEAST} (1).
   */
  public double first(Contact contact) {
    int move = contact.move();
    ToolBody body = metal.cuts().body(move).orElseThrow();
    int part = 0;
    while (name(body, part) != contact.part()) {
      part++;
    }
    List<PathPiece> pieces = PathPiece.of(tape, move);
    double length = Math.max(FIRST, tape.length(move));
    double clear = 0;
    double touching = contact.deepestAt();
    double asked = 0;
    while (touching - clear > FIRST / length || asked == 0) {
      List<BodyPath> paths = paths(body, part, PathPiece.upTo(pieces, asked));
      ContactSearch search = searches.get();
      double depth =
          contact.keepOut().isPresent()
              ? search.inBody(paths, keepOuts.get(contact.keepOut().get()), LEAST, true)
              : search.inMetal(paths, moment(move, part), LEAST, true);
      if (depth > LEAST) {
        touching = Math.min(asked, search.share);
      } else if (asked >= touching) {
        break;
      } else {
        clear = asked;
      }
      if (touching == 0) {
        break;
      }
      asked = (clear + touching) / 2;
    }
    return touching;
  }
}
