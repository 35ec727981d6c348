package flankfit.sweep;

import java.util.List;
import java.util.Objects;

/**
 * The groove that several passes leave together: each takes away what reaches beyond the others.
 * Its middle is that of the first member.
 *
 * @param members the passes' grooves, each shifted along the axis, at least one
 */
public record JoinedGroove(List<Member> members) implements Groove {
  public JoinedGroove {
    members = List.copyOf(members);
    if (members.isEmpty()) {
      throw new IllegalArgumentException("members must not be empty");
    }
  }

  /**
   * One pass's groove.
   *
   * @param groove the groove
   * @param shift height of its middle above that of the first member (mm)
   */
  public record Member(Groove groove, double shift) {
    public Member {
      Objects.requireNonNull(groove, "groove");
    }
  }

  @Override
  public boolean isInternal() {
    return members.get(0).groove().isInternal();
  }

  @Override
  public double bottom() {
    double deepest = members.get(0).groove().bottom();
    for (Member member : members) {
      double bottom = member.groove().bottom();
      deepest = isInternal() ? Math.max(deepest, bottom) : Math.min(deepest, bottom);
    }
    return deepest;
  }

  @Override
  public boolean isSymmetric() {
    return members.stream().allMatch(m -> m.shift() == 0 && m.groove().isSymmetric());
  }

  @Override
  public double halfWidth(double radius, Flank flank) {
    double best = Double.NaN;
    for (Member member : members) {
      double shift = flank == Flank.UP ? member.shift() : -member.shift();
      double width = member.groove().halfWidth(radius, flank) + shift;
      if (!Double.isNaN(width) && !(width <= best)) {
        best = width;
      }
    }
    return best;
  }
}
