/**
 * Images without a window: a scene of path, stock, holes and cutter, drawn by OpenGL 3.3 core into
 * a framebuffer in memory, with rules, scale bar, legend and title. Positions are double on this
 * side and relative to the scene's origin; they become float in the upload. Nothing here interprets
 * a program: a drawing asks the tape.
 */
package flankfit.picture;
