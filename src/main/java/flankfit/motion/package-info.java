/**
 * What moves exist: rapid, line, arc (helix included) and dwell. The tape of moves is columnar; a
 * row is read by index. Positions are the tool tip in the part frame (mm), angles are radians.
 */
package flankfit.motion;
