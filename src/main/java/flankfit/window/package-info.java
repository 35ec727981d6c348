/**
 * The window: the scene with a depth rule beside it, the program as lines of text, the control's
 * state in words and numbers, one sentence above everything. Draws only when something happened.
 */
package flankfit.window;
