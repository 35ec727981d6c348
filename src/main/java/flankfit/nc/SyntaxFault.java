package flankfit.nc;

import flankfit.finding.Code;

/**
 * Why a statement or an expression cannot be read.
 *
 * @param code which finding
 * @param offset where it stands in the text
 * @param length how long that is (bytes)
 */
record SyntaxFault(Code code, int offset, int length, String what, String why, String fix) {
  /** No fault. */
  static final SyntaxFault NONE = new SyntaxFault(Code.FL01, 0, 0, "", "", "");
}
