/** Lengths, angles and numbers to and from text; the only place where inch meets millimetre. */
package flankfit.unit;
