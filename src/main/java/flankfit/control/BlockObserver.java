package flankfit.control;

import flankfit.finding.Finding;
import java.util.List;

/**
 * Is told block by block, in the order of execution, what the control understood and did. A block
 * comes as soon as all its moves are known: radius compensation holds back one element and the
 * blocks without plane motion behind it, so a block may come some blocks late, never out of order.
 */
public interface BlockObserver {
  /** The state in which the first block finds the control. */
  void begins(ControlState start);

  /** The next block. */
  void block(BlockTrace block);

  /** No more blocks come; takes the findings that belong to none of them. */
  void ends(List<Finding> others);
}
