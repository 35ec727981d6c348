/**
 * What a block meant, in words and numbers for people: one home for the wording that the command
 * line, JSON and the window show. Knows no layout.
 */
package flankfit.trace;
