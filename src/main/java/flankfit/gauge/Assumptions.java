package flankfit.gauge;

import flankfit.setup.SetupSheet.GaugeCondition;
import flankfit.setup.Tool;
import flankfit.setup.Tool.CutterForm;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.Flank;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what the answers rest on, each sentence once. */
final class Assumptions {
  private final Set<String> sentences = new LinkedHashSet<>();
  private final Text text;
  private final GaugeCondition condition;

  Assumptions(GaugeCondition condition, Text text, boolean realPath) {
    this.text = text;
    this.condition = condition;
    if (realPath) {
      sentences.add(
          "run-out is not part of the profile; diameters are those of an endless helix; verdict, sweeps"
              + " and entries count the path as moved too, where gauges turn and shift but do not tilt");
    } else {
      sentences.add("entry and exit arcs and run-out are not part of the measured profile");
      sentences.add("gauges are held central in the thread and free to turn");
      sentences.add(
          "on an endless regular thread a NO-GO gauge stops at once or runs through; incomplete end"
              + " threads, which let it enter a little, are not modelled");
    }
  }

  List<String> list() {
    return new ArrayList<>(sentences);
  }

  void add(String sentence) {
    sentences.add(sentence);
  }

  /** Adds what one thread rests on. */
  void of(FoundThread found) {
    ThreadSpec spec = found.spec();
    if (spec.internal()) {
      sentences.add(GaugesInUse.assumed(spec, condition));
    } else {
      sentences.add("ring gauges of " + spec.designation() + " are taken at its limits of size");
    }
    for (CutPass cut : found.model().passes()) {
      CutterForm form = cut.teeth().form();
      if (form instanceof CutterForm.GroundFor ground) {
        ofGround(found, cut, ground);
      } else if (form instanceof CutterForm.Measured) {
        ofMeasured(found, cut);
      }
    }
    otherLeads(found.model());
  }

  private void otherLeads(ThreadModel model) {
    int last = model.finishing();
    for (int i = 0; i < model.passes().size(); i++) {
      if (!model.hasLeadOf(last, i)) {
        sentences.add(
            "the pass at line "
                + model.passes().get(i).pass().line()
                + " winds otherwise than the finishing pass and is left out of the profile");
      }
    }
  }

  private void ofGround(FoundThread found, CutPass cut, CutterForm.GroundFor ground) {
    ThreadSpec spec = found.spec();
    String mill = "tool " + cut.tool().number();
    double asGiven = simple(spec, cut, cut.tooth());
    if (ground.assumed()) {
      double straight = simple(spec, cut, TeethForms.straight(cut.tool(), cut.teeth()));
      sentences.add(
          mill
              + " is taken as ground for "
              + ground.designation()
              + ", since the sheet says no form; straight flanks would make the pitch diameter "
              + difference(straight - asGiven));
    } else if (!ground.designation().equals(spec.designation())) {
      Tooth own = ownGround(spec, cut.tool());
      sentences.add(
          mill
              + " is ground for "
              + ground.designation()
              + "; on "
              + spec.designation()
              + " that makes the pitch diameter "
              + difference(asGiven - simple(spec, cut, own))
              + " than a mill ground for this thread would");
    }
  }

  private static Tooth ownGround(ThreadSpec spec, Tool tool) {
    return TeethForms.groundFor(spec, tool.radius());
  }

  private String difference(double d) {
    return text.length(Math.abs(d)) + (d >= 0 ? " larger" : " smaller");
  }

  private static double simple(ThreadSpec spec, CutPass cut, Tooth tooth) {
    HelicalGroove groove =
        new HelicalGroove(tooth, spec.internal(), cut.pass().radius(), cut.pass().lead());
    double blank = spec.internal() ? spec.basicMinor() / 2 : spec.nominal() / 2;
    return new Measurer(spec).simple(new RegularThread(groove, spec.pitch(), blank));
  }

  private void ofMeasured(FoundThread found, CutPass cut) {
    double needed = found.model().thread().crest();
    double reached = Math.abs(needed - cut.pass().radius());
    if (cut.tooth().rootRadius() > reached) {
      sentences.add(
          "the measured profile of tool "
              + cut.tool().number()
              + " ends at radius "
              + text.length(cut.tooth().rootRadius())
              + ", short of the thread's crest; beyond it "
              + text.length(cut.tooth().halfWidth(cut.tooth().rootRadius(), Flank.UP))
              + " from the middle the tooth is taken not to cut");
    }
  }
}
