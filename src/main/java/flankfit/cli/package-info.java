/**
 * The command line: turns requests into calls and answers into text or JSON. The only package that
 * writes to the standard streams and ends the process.
 */
package flankfit.cli;
