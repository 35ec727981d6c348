package flankfit.gauge;

import flankfit.setup.RadiusSetting;
import java.util.Optional;

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
 * @param toMiddle entry that puts the simple pitch diameter at the middle of its limits (mm)
 * @param toGoLimit entry at which the GO gauge just enters (mm)
 * @param toNoGoLimit entry at which the NO-GO gauge just stays out (mm)
 * @param increment least increment of the register (mm)
 * @param keyToMiddle {@code toMiddle} rounded to the least increment (mm)
 * @param keyToGoLimit {@code toGoLimit} rounded so that GO enters (mm)
 * @param keyToNoGoLimit {@code toNoGoLimit} rounded so that NO-GO stays out (mm)
 * @param hasWindow whether entries exist with which both gauges are good
 * @param setBy the block in which the program enters the wear itself: the values go there, a
 *     register would be overwritten
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
    Optional<RadiusSetting> setBy) {}
