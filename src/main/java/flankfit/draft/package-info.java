/**
 * Writes a thread-milling program from a thread on a drawing: every number a person works out by
 * hand, the program in words of either mode, and the proof by executing and gauging it as any other
 * program. What would not gauge is refused with what would. Tapered threads are not written.
 */
package flankfit.draft;
