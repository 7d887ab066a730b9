package rungwork.check;

import java.util.List;
import rungwork.material.Elasticity;

/** Numbers behind the check of lateral-torsional buckling, for comparison with published ones. */
public final class SidewaysExample {
  private SidewaysExample() {}

  /** The critical moment under an even moment [N·m]. */
  public static double critical(
      Elasticity elasticity, double weak, double it, double iw, double length) {
    return new CriticalMoment(elasticity, weak, it, iw, length).step(1).result();
  }

  /** χLT of the general case, curve d. */
  public static double reduction(double slenderness) {
    List<Step> steps = SidewaysStrength.reduction(slenderness);
    return steps.get(steps.size() - 1).result();
  }

  /** C₁ for end moments M and ψ·M. */
  public static double shape(double ratio) {
    return MomentShape.between(ratio).factor();
  }
}
