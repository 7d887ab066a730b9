package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;

/** Reduction for buckling by EN 1993-1-1:2005, 6.3.1.2, curve c (from memory). */
final class Buckling {
  static final Symbol SLENDERNESS = Letters.ratio("λ̄", "relative slenderness");
  static final Symbol REDUCTION = Letters.ratio("χ", "reduction factor for buckling");
  private static final Symbol PHI = Letters.ratio("Φ", "value to determine χ");
  private static final String CURVE = "EN 1993-1-1:2005, 6.3.1.2, curve c";

  private static final Formula VALUE =
      new Formula(
          PHI,
          "0.5·(1 + 0.49·({λ̄} − 0.2) + {λ̄}²)",
          List.of(SLENDERNESS),
          CURVE,
          in -> 0.5 * (1 + 0.49 * (in[0] - 0.2) + in[0] * in[0]));
  private static final Formula FACTOR =
      new Formula(
          REDUCTION,
          "min(1, 1/({Φ} + √({Φ}² − {λ̄}²)))",
          List.of(PHI, SLENDERNESS),
          CURVE,
          in -> Math.min(1, 1 / (in[0] + Math.sqrt(Math.max(0, in[0] * in[0] - in[1] * in[1])))));

  private Buckling() {}

  /** Two lines, the last is χ. */
  static List<Step> reduction(double slenderness) {
    Step value = VALUE.with(slenderness);
    return List.of(value, FACTOR.with(value.result(), slenderness));
  }
}
