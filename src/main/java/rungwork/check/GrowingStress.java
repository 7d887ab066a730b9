package rungwork.check;

import java.util.List;
import rungwork.quantity.Kind;

/**
 * Normal and shear stress at a point, of what stands and of what grows.
 *
 * @param standing σ₀ [Pa]
 * @param growing σ₁ of the growing loads, once [Pa]
 * @param shearStanding τ₀ [Pa]
 * @param shearGrowing τ₁ [Pa]
 */
record GrowingStress(double standing, double growing, double shearStanding, double shearGrowing) {
  /** What stands is rounding below this [Pa]; of what grows, below this part of the other. */
  private static final double NOTHING = 1e-3;

  private static final double BESIDE = 1e-9;

  /** Takes rounding out, so that the working shows none. */
  GrowingStress {
    standing = Math.abs(standing) < NOTHING ? 0 : standing;
    shearStanding = Math.abs(shearStanding) < NOTHING ? 0 : shearStanding;
    double both = Math.hypot(growing, shearGrowing);
    growing = Math.abs(growing) < BESIDE * both ? 0 : growing;
    shearGrowing = Math.abs(shearGrowing) < BESIDE * both ? 0 : shearGrowing;
  }

  private static final Symbol MULTIPLE =
      new Symbol("k", Kind.RATIO, "times the growing loads at first yield");

  /**
   * (σ₀ + k·σ₁)² + 3·(τ₀ + k·τ₁)² = fy² is quadratic in k; below yield while standing, it has one
   * root above zero.
   */
  static final Formula FIRST_YIELD =
      new Formula(
          MULTIPLE,
          "(√(({σ₀}·{σ₁} + 3·{τ₀}·{τ₁})² + ({σ₁}² + 3·{τ₁}²)·({fy}² − {σ₀}² − 3·{τ₀}²))"
              + " − {σ₀}·{σ₁} − 3·{τ₀}·{τ₁})/({σ₁}² + 3·{τ₁}²)",
          List.of(
              new Symbol("σ₀", Kind.STRESS, "normal stress of what stands"),
              new Symbol("τ₀", Kind.STRESS, "shear stress of what stands"),
              new Symbol("σ₁", Kind.STRESS, "normal stress of the growing loads"),
              new Symbol("τ₁", Kind.STRESS, "shear stress of the growing loads"),
              Letters.FY),
          "von Mises, linear elastic: the stress that stands and k times the growing one meet fy",
          GrowingStress::root);

  private static double root(double[] in) {
    double a = in[2] * in[2] + 3 * in[3] * in[3];
    double b = in[0] * in[2] + 3 * in[1] * in[3];
    double c = in[4] * in[4] - in[0] * in[0] - 3 * in[1] * in[1];
    return (Math.sqrt(b * b + a * c) - b) / a;
  }

  /** Whether it yields before anything grows. */
  boolean yieldsStanding(double yield) {
    return standing * standing + 3 * shearStanding * shearStanding >= yield * yield;
  }

  /** How many times the growing loads make it yield; infinite where they do nothing here [1]. */
  double firstYield(double yield) {
    if (yieldsStanding(yield)) {
      return 0;
    }
    if (growing == 0 && shearGrowing == 0) {
      return Double.POSITIVE_INFINITY;
    }
    return FIRST_YIELD.value(standing, shearStanding, growing, shearGrowing, yield);
  }

  Step working(double yield) {
    return FIRST_YIELD.with(standing, shearStanding, growing, shearGrowing, yield);
  }
}
