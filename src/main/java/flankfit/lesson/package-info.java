/**
 * The same motion in absolute and in incremental words: told block by block, rewritten from one
 * into the other, tried with a word forgotten, and asked about in exercises.
 *
 * <p>Method: the control tells what each block meant and where it led; words of the other mode
 * follow from the point where the program had told the tool to be. Nothing is read a second time
 * here, so what the control does not model cannot be said. A rewritten program is executed and
 * compared with the first one before it is handed out.
 *
 * <p>Limits: one file at a time; coordinates that are computed are told with their value, but not
 * rewritten.
 */
package flankfit.lesson;
