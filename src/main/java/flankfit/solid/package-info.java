/**
 * The surface of a body that is known by its inside: what it must answer, and what is made of it.
 */
package flankfit.solid;
