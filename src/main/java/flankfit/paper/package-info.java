/**
 * Papers for people: a report or a handout is written once, with a {@link flankfit.paper.Pen}, and
 * comes out as one HTML file or as a PDF.
 */
package flankfit.paper;
