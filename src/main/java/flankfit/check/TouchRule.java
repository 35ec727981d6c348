package flankfit.check;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.metal.Contact;
import flankfit.metal.Contacts;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tells touches: HZ01, HZ04, HZ05 and HZ07 of the cutting part, HZ16 and HZ17 of neck, shank and
 * holder. Moves one after the other on which the same part touches the same are told once, at the
 * first of them, with the depth of the deepest.
 */
final class TouchRule {
  /** A depth that is known no better is told as a least one (mm). */
  private static final double ROUGH = 2e-3;

  private final Scene scene;
  private final Tape tape;
  private final Contacts contacts;
  private int rubbed = -1;

  TouchRule(Scene scene, Contacts contacts) {
    this.scene = scene;
    this.tape = scene.tape();
    this.contacts = contacts;
  }

  /** What makes touches one. */
  private record Kind(Code code, int tool, Contact.Part part, Optional<String> keepOut) {}

  /** Touches that are one, so far. */
  private static final class Run {
    private final Contact first;
    private Contact deepest;
    private int last;

    Run(Contact first) {
      this.first = first;
      this.deepest = first;
      this.last = first.move();
    }
  }

  /**
   * Tells all touches.
   *
   * @param plunges moves that are told as plunges already
   */
  void check(List<Contact> all, Set<Integer> plunges) {
    Map<Kind, Run> open = new LinkedHashMap<>();
    for (Contact contact : all) {
      Optional<Code> code = code(contact, plunges);
      if (code.isPresent() && code.get() == Code.HZ16) {
        rubbed = contact.move();
      }
      if (code.isEmpty() || isLeft(contact)) {
        continue;
      }
      int tool = tape.state(contact.move()).tool();
      Kind kind = new Kind(code.get(), tool, contact.part(), contact.keepOut());
      Run run = open.get(kind);
      if (run != null && goesOn(run.last, contact.move())) {
        run.last = contact.move();
        run.deepest = contact.depth() > run.deepest.depth() ? contact : run.deepest;
      } else {
        if (run != null) {
          tell(kind, run);
        }
        open.put(kind, new Run(contact));
      }
    }
    new ArrayList<>(open.keySet()).forEach(kind -> tell(kind, open.get(kind)));
  }

  /**
   * Whether a cutting part meets on its way straight out what its own shank has just been through:
   * that is told of the shank.
   */
  private boolean isLeft(Contact contact) {
    int move = contact.move();
    return contact.part() == Contact.Part.CUTTER
        && contact.keepOut().isEmpty()
        && rubbed >= 0
        && scene.climb(move) > 0
        && scene.inPlane(move) <= Tolerance.MODEL.value()
        && tape.state(rubbed).tool() == tape.state(move).tool()
        && goesOn(rubbed, move);
  }

  private boolean goesOn(int last, int move) {
    int next = last + 1;
    while (next < move && tape.kind(next) == MoveKind.DWELL) {
      next++;
    }
    return next >= move;
  }

  private Optional<Code> code(Contact contact, Set<Integer> plunges) {
    int move = contact.move();
    boolean cutter = contact.part() == Contact.Part.CUTTER;
    if (contact.keepOut().isPresent()) {
      return Optional.of(cutter ? Code.HZ01 : Code.HZ17);
    }
    if (!cutter) {
      return Optional.of(Code.HZ16);
    }
    Tool tool = scene.tool(move).orElseThrow();
    Spindle spindle = tape.state(move).spindle();
    if (scene.isRapid(move)) {
      boolean oriented = tool.kind() == Tool.Kind.BORING_BAR && spindle == Spindle.OFF;
      boolean out = scene.climb(move) > 0 && contacts.startsIn(contact);
      return oriented || scene.isShift(move)
          ? Optional.empty()
          : Optional.of(out ? Code.HZ07 : Code.HZ01);
    }
    if (spindle == Spindle.OFF) {
      return Optional.of(Code.HZ04);
    }
    if (tool.kind() == Tool.Kind.THREAD_MILL) {
      return plunges.contains(move) ? Optional.empty() : Optional.of(Code.HZ07);
    }
    boolean tapGoesOut = tool.kind() == Tool.Kind.TAP && scene.climb(move) >= 0;
    return tapGoesOut ? Optional.empty() : Optional.of(Code.HZ05);
  }

  private void tell(Kind kind, Run run) {
    if (scene.findings().count(kind.code()) >= Findings.LISTED_SINGLY) {
      scene.findings().countUnlisted(kind.code());
      return;
    }
    String metal = depth(run) + " into " + kind.keepOut().orElse("metal") + place(run);
    String tool = "tool " + kind.tool();
    boolean rapid = scene.isRapid(run.first.move());
    switch (kind.code()) {
      case HZ01 -> tellCollision(kind, run, (rapid ? "rapid of " : "") + tool + " goes " + metal);
      case HZ04 ->
          tell(
              run,
              kind.code(),
              tool + " is fed " + metal + " with the spindle stopped",
              "the tool breaks",
              "M3 S… before");
      case HZ05 ->
          tell(
              run,
              kind.code(),
              tool + " goes " + metal + " with the spindle turning the wrong way",
              "its edges rub and break",
              scene.tool(run.first.move()).orElseThrow().leftHand() ? "M4" : "M3");
      case HZ07 ->
          tell(
              run,
              kind.code(),
              tool + (rapid ? " leaves at rapid " : " moves along Z ") + metal,
              "the teeth tear out what they stand in, and break",
              "leave the wall at feed first");
      case HZ16 ->
          tell(
              run,
              kind.code(),
              "the " + kind.part().word() + " of " + tool + " goes " + metal,
              "it does not cut: it rubs, and pushes the tool off or breaks it",
              fix(kind.part(), scene.tool(run.first.move()).orElseThrow()));
      default ->
          tell(
              run,
              kind.code(),
              "the " + kind.part().word() + " of " + tool + " goes " + metal,
              "nothing may touch it",
              "go round it, raise the level, or let the tool stand out farther");
    }
  }

  private void tellCollision(Kind kind, Run run, String what) {
    if (kind.keepOut().isPresent()) {
      tell(run, Code.HZ01, what, "nothing may touch it", "go round it, or raise the level");
    } else {
      tell(
          run,
          Code.HZ01,
          what,
          "nothing has removed it before: the tool breaks",
          "raise the level, or feed with G1");
    }
  }

  private void tell(Run run, Code code, String what, String why, String fix) {
    int move = run.first.move();
    double[] tip = new double[3];
    tape.pointAt(move, contacts.first(run.first), tip);
    for (int axis = 0; axis < 3; axis++) {
      tip[axis] = rounded(tip[axis]);
    }
    scene.report(code, move, what, "it begins with the tip at " + scene.at(tip) + "; " + why, fix);
  }

  private String fix(Contact.Part part, Tool tool) {
    return switch (part) {
      case NECK -> "cut less deep, or take a tool with a thinner neck";
      case SHANK ->
          "cut less deep (the flutes are "
              + scene.text().length(tool.fluteLength())
              + " long), or take a tool with a thinner or longer neck";
      case HOLDER, CUTTER -> "cut less deep, or let the tool stand out farther";
    };
  }

  private String depth(Run run) {
    boolean rough = run.deepest.within() > ROUGH;
    return (rough ? "at least " : "") + scene.text().length(rounded(run.deepest.depth()));
  }

  /** To a micrometre, which is what touches are searched to (mm). */
  private static double rounded(double length) {
    return Math.rint(length * 1000) / 1000;
  }

  private String place(Run run) {
    Contact deepest = run.deepest;
    double[] place = {
      rounded(deepest.place().x()), rounded(deepest.place().y()), rounded(deepest.place().z())
    };
    int line = tape.line(deepest.move());
    boolean elsewhere = line != tape.line(run.first.move());
    return " at " + scene.at(place) + (elsewhere ? " in line " + line : "");
  }
}
