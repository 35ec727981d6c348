package flankfit.gauge;

import flankfit.setup.RadiusSetting;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to enter in the wear page of the D register. All values are what is keyed in as wear, not
 * changes, with the geometry entry left as it is; so they serve a wear-only register of a centre
 * path and a full radius kept in the geometry entry alike.
 *
 * @param register name of the register, such as {@code D4}
 * @param geometry geometry entry, which stays (mm, as entered)
 * @param now wear entry now (mm, as entered)
 * @param sensitivity change of the pitch diameter with the wear entry (1), by running the program
 *     with the entry changed both ways
 * @param toMiddle entry that puts the simple pitch diameter at the middle of its limits (mm); the
 *     middle of the entries that suit both gauges where that one does not
 * @param toGoLimit entry at which the GO gauge just enters (mm)
 * @param toNoGoLimit entry at which the NO-GO gauge just stays out (mm)
 * @param increment least increment of the register (mm)
 * @param keyToMiddle {@code toMiddle} rounded to the least increment (mm)
 * @param keyToGoLimit {@code toGoLimit} rounded so that GO enters (mm)
 * @param keyToNoGoLimit {@code toNoGoLimit} rounded so that NO-GO stays out (mm)
 * @param hasWindow whether entries exist with which both gauges are good
 * @param setBy the block in which the program enters the wear itself: the values go there, a
 *     register would be overwritten
 * @param asMoved what the path as moved makes of the entries; empty when they are those of an
 *     endless helix
 */
public record OffsetAdvice(
    String register,
    double geometry,
    double now,
    double sensitivity,
    double toMiddle,
    double toGoLimit,
    double toNoGoLimit,
    double increment,
    double keyToMiddle,
    double keyToGoLimit,
    double keyToNoGoLimit,
    boolean hasWindow,
    Optional<RadiusSetting> setBy,
    Optional<AsMoved> asMoved) {
  public OffsetAdvice {
    Objects.requireNonNull(register, "register");
    Objects.requireNonNull(setBy, "setBy");
    Objects.requireNonNull(asMoved, "asMoved");
  }

  /**
   * What the path as moved makes of the entries of an endless helix: with entry, exit and
   * incomplete turns, and with the mill bending anew at each entry, the whole program was gauged
   * with the entries told and with those next to them.
   *
   * @param goShift by how much {@code toGoLimit} lies off that of an endless helix (mm of the
   *     entry); empty when GO enters with no entry within half a pitch
   * @param noGoShift the same of {@code toNoGoLimit}
   * @param middleBetweenGauges whether {@code toMiddle} is the middle between the gauges, for one
   *     of them fails at the middle of the limits
   */
  public record AsMoved(
      OptionalDouble goShift, OptionalDouble noGoShift, boolean middleBetweenGauges) {
    public AsMoved {
      Objects.requireNonNull(goShift, "goShift");
      Objects.requireNonNull(noGoShift, "noGoShift");
    }
  }
}
