package rungwork.check;

import java.util.List;

/**
 * How much more a moment may be that is not the same all along: the factor C₁ on the critical
 * moment. Between end moments M and ψ·M the tabulated values; for any other diagram 1, as if its
 * largest moment acted all along, which is on the safe side.
 *
 * @param factor C₁ [1]
 */
record MomentShape(double factor) {
  /** Any diagram. */
  static final MomentShape ANY = new MomentShape(1);

  /**
   * C₁ for ψ = −1, −0.75 … 1, ends free to turn and to warp (ECCS No. 119 and the published
   * guidance to EN 1993-1-1 on critical moments; from memory).
   */
  private static final double[] TABLE = {2.55, 2.57, 2.33, 2.05, 1.77, 1.52, 1.31, 1.14, 1};

  private static final double STEP = 0.25;

  /** Moments within this part of the largest lie on a straight line: rounding. */
  private static final double STRAIGHT = 1e-6;

  /** For end moments M and ψ·M, |ψ| at most 1. */
  static MomentShape between(double ratio) {
    double place = (Math.max(-1, Math.min(1, ratio)) + 1) / STEP;
    int below = Math.min((int) place, TABLE.length - 2);
    double part = place - below;
    return new MomentShape((1 - part) * TABLE[below] + part * TABLE[below + 1]);
  }

  /** Of a member's own diagram, if that is straight and as long as what may buckle. */
  static MomentShape of(LoadedMember member, BendingAxis axis, double length) {
    List<Cut> cuts = member.cuts();
    Cut first = cuts.get(0);
    Cut last = cuts.get(cuts.size() - 1);
    double from = axis.moment(first.forces());
    double to = axis.moment(last.forces());
    double largest = Math.max(Math.abs(from), Math.abs(to));
    boolean whole = Math.abs(last.along() - first.along() - length) < STRAIGHT * length;
    if (!whole || largest == 0 || !straight(cuts, axis, STRAIGHT * largest)) {
      return ANY;
    }
    return between(Math.abs(from) < Math.abs(to) ? from / to : to / from);
  }

  private static boolean straight(List<Cut> cuts, BendingAxis axis, double tolerance) {
    Cut first = cuts.get(0);
    Cut last = cuts.get(cuts.size() - 1);
    double from = axis.moment(first.forces());
    double slope = (axis.moment(last.forces()) - from) / (last.along() - first.along());
    return cuts.stream()
        .allMatch(
            cut ->
                Math.abs(axis.moment(cut.forces()) - from - slope * (cut.along() - first.along()))
                    <= tolerance);
  }
}
