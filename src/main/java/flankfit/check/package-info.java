/**
 * Findings about a whole interpreted program: rules that look at the finished tape with the setup
 * sheet, not at single blocks. All rules run together in one pass over the moves.
 *
 * <p>The rules of {@link flankfit.check.ProgramCheck} have no model of the metal; {@link
 * flankfit.check.MetalCheck} asks the metal itself, which takes longer, and its word wins. For the
 * rules what has been cut is kept as a {@link flankfit.check.CutPlan}: the least height reached
 * over each cell of the stock's plan, with the full width of the tool from its tip upwards, cells
 * that are only touched included. So it holds too much as cut, never too little, and a rule that
 * needs metal is silent where it is not certain.
 */
package flankfit.check;
