package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.metal.Contact.Part;
import flankfit.motion.Extents;
import flankfit.motion.ModalState;
import flankfit.motion.Point;
import flankfit.setup.KeepOut;
import flankfit.setup.Tool;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Touches of small jobs against depths worked out by hand from the geometry beside each. */
class ContactsTest {
  private static final double MICROMETRE = 1e-3;

  /** An end mill with a shank and a holder. */
  static Tool endMill(double diameter, double flute, double shank, double holder) {
    return new Tool(
        1,
        Tool.Kind.END_MILL,
        false,
        diameter,
        2,
        Optional.empty(),
        Math.PI,
        0,
        flute,
        Optional.empty(),
        Optional.of(new Tool.Section(shank, 30)),
        Optional.of(new Tool.Section(holder, 40)),
        0,
        0,
        "carbide",
        0);
  }

  private static List<Contact> contacts(Job job, KeepOut... keepOuts) {
    Metal metal = job.metal(1.0);
    return Contacts.of(metal, List.of(keepOuts)).all(job.tape().size());
  }

  private static Job block() {
    return new Job().block(-30, -20, -30, 30, 20, 0);
  }

  @Test
  void shank_wider_than_its_cutter_rubs_by_the_difference() {
    // slots 4 deep, then 8 deep with flutes of 5: the shank of 12 over a cutter of 10 stands 1 mm
    // into the upper half of the wall, its lower face 3 mm below the top
    Job job = block().take(endMill(10, 5, 12, 12));
    job.rapid(-40, 0, -4).line(40, 0, -4).rapid(40, 0, 10).rapid(-40, 0, 10);
    job.rapid(-40, 0, -8).line(40, 0, -8).rapid(40, 0, 10);
    List<Contact> found = contacts(job);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).part()).isEqualTo(Part.SHANK);
    assertThat(found.get(0).move()).isEqualTo(5);
    assertThat(found.get(0).depth()).isCloseTo(1, within(MICROMETRE));
    assertThat(Math.abs(found.get(0).place().y())).isCloseTo(5, within(MICROMETRE));
    Contacts contacts = Contacts.of(job.metal(1.0), List.of());
    // The disc of radius 6 - 0.02 first meets the corner of block and slot at X-30, Y5.
    double reach = Math.sqrt(5.98 * 5.98 - 5 * 5);
    assertThat(contacts.first(found.get(0)) * 80).isCloseTo(10 - reach, within(2e-3));
  }

  @Test
  void shank_as_wide_as_its_cutter_slides_in_the_slot_without_a_touch() {
    Job job = block().take(endMill(10, 5, 10, 10));
    for (int z = -5; z >= -25; z -= 5) {
      job.rapid(-40, 0, 10).rapid(-40, 0, z).line(40, 0, z).rapid(40, 0, 10);
    }
    assertThat(contacts(job)).isEmpty();
  }

  @Test
  void holder_goes_down_onto_the_top_by_what_is_missing() {
    // 40 deep with 5 + 30 below the holder: in a slot 40 deep made before, the holder is 5 into it
    Job job = new Job().block(-30, -20, -60, 30, 20, 0).take(endMill(10, 60, 10, 10));
    job.rapid(-40, 0, 10).rapid(-40, 0, -40).line(40, 0, -40).rapid(40, 0, 10).rapid(0, 0, 10);
    Tool second = endMill(8, 5, 8, 30);
    job.take(
        new Tool(
            2,
            second.kind(),
            false,
            8,
            2,
            Optional.empty(),
            Math.PI,
            0,
            5,
            Optional.empty(),
            second.shank(),
            second.holder(),
            0,
            0,
            "",
            0));
    job.rapid(0, 0, -39.9).rapid(0, 0, 10);
    List<Contact> found = contacts(job);
    assertThat(found).extracting(Contact::part).containsOnly(Part.HOLDER);
    assertThat(found.get(0).depth()).isCloseTo(4.9, within(MICROMETRE));
    assertThat(found.get(0).place().z()).isCloseTo(0, within(MICROMETRE));
    // from 10 to -39.9, touching 0.02 below the height 35 - 39.9
    Contacts contacts = Contacts.of(job.metal(1.0), List.of());
    assertThat(contacts.first(found.get(0))).isCloseTo(45.02 / 49.9, within(1e-4));
  }

  @Test
  void rapid_into_solid_and_out_of_it() {
    Job job = block().take(endMill(10, 20, 10, 10));
    job.rapid(0, 0, -3).rapid(0, 0, 10);
    List<Contact> found = contacts(job);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).move()).isZero();
    assertThat(found.get(0).part()).isEqualTo(Part.CUTTER);
    assertThat(found.get(0).depth()).isCloseTo(3, within(MICROMETRE));
  }

  @Test
  void drill_that_leaves_its_own_hole_at_rapid_touches_nothing() {
    Tool drill = SampleTools.tool(1, Tool.Kind.DRILL, 8.5, 40, 2.06, 0, Optional.empty());
    Job job = block().take(drill).rapid(3, 2, 2).line(3, 2, -20).rapid(3, 2, 2);
    assertThat(contacts(job)).isEmpty();
  }

  @Test
  void drill_whose_shank_goes_in_with_its_flutes_follows_in_its_own_hole() {
    // flutes of 8, hole of 20: the shank of the drill's width follows, a wider one does not
    Job job = block().take(endMill(8, 8, 8, 8)).rapid(0, 0, 2).line(0, 0, -20).rapid(0, 0, 9);
    assertThat(contacts(job)).isEmpty();
    Job wide = block().take(endMill(8, 8, 9, 9)).rapid(0, 0, 2).line(0, 0, -20).rapid(0, 0, 9);
    List<Contact> found = contacts(wide);
    assertThat(found).extracting(Contact::part).containsOnly(Part.SHANK);
    assertThat(found.get(0).depth()).isCloseTo(0.5, within(MICROMETRE));
  }

  @Test
  void spindle_off_in_metal_is_a_touch_and_so_is_the_wrong_way_round() {
    Job off = block().take(endMill(10, 20, 10, 10)).rapid(-40, 0, -2);
    off.spindle(ModalState.Spindle.OFF).line(0, 0, -2);
    assertThat(contacts(off).get(0).depth()).isCloseTo(2, within(MICROMETRE));
    Job back = block().take(endMill(10, 20, 10, 10)).rapid(-40, 0, -2);
    back.spindle(ModalState.Spindle.COUNTER_CLOCKWISE).line(0, 0, -2);
    assertThat(contacts(back).get(0).depth()).isCloseTo(2, within(MICROMETRE));
    Job right = block().take(endMill(10, 20, 10, 10)).rapid(-40, 0, -2).line(0, 0, -2);
    assertThat(contacts(right)).isEmpty();
  }

  @Test
  void clamp_is_touched_by_whatever_part_comes() {
    KeepOut clamp = new KeepOut("clamp", new Extents(new Point(20, -20, 0), new Point(30, 20, 15)));
    Job job = block().take(endMill(10, 12, 10, 40)).rapid(-40, 0, -30).line(3, 0, -30);
    // the holder's lower face is at 12 + 30 - 30, its side reaches to X23: 3 into 3 of height
    List<Contact> found =
        contacts(job, clamp).stream().filter(c -> c.keepOut().isPresent()).toList();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).part()).isEqualTo(Part.HOLDER);
    assertThat(found.get(0).depth()).isCloseTo(3, within(MICROMETRE));
  }

  @Test
  void shank_on_an_arc_rubs_a_boss_by_the_difference() {
    // a boss of 20 left by a cutter of 10 on a circle of 15; the shank of 11 stands 0.5 into it
    Job job = block().take(endMill(10, 5, 11, 11)).rapid(15, -40, 10);
    job.rapid(15, -40, -4).line(15, 0, -4).arc(0, 0, 2 * Math.PI, -4).line(40, 0, -4);
    job.rapid(40, 0, 10).rapid(15, -40, 10).rapid(15, -40, -8);
    job.line(15, 0, -8).arc(0, 0, 2 * Math.PI, -8);
    List<Contact> found = contacts(job);
    Contact arc = found.get(found.size() - 1);
    assertThat(arc.move()).isEqualTo(job.tape().size() - 1);
    assertThat(arc.depth()).isCloseTo(0.5, within(MICROMETRE));
  }

  @Test
  void one_thread_and_two_find_the_same() {
    Job job = block().take(endMill(10, 5, 12, 12));
    job.rapid(-40, 0, -4).line(40, 0, -4).rapid(40, 0, 10).rapid(-40, 3, 10);
    job.rapid(-40, 3, -8).line(20, 3, -8).rapid(3, 2, -9).line(1, 0, -20).rapid(0, 0, 10);
    Metal one = job.metal(MetalOptions.usual().withCell(1.0).withThreads(1));
    Metal two = job.metal(MetalOptions.usual().withCell(1.0).withThreads(2));
    List<Contact> found = Contacts.of(one, List.of()).all(job.tape().size());
    assertThat(found).isNotEmpty();
    assertThat(Contacts.of(two, List.of()).all(job.tape().size())).isEqualTo(found);
  }
}
