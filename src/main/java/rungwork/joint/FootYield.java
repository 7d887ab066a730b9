package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.material.RatedMaterial;

/** First yield where a part meets its face, beside the weld: normal and shear stress together. */
final class FootYield {
  static final Symbol SIGMA = Letters.stress("σ", "normal stress at the foot's corner");
  static final Symbol TAU = Letters.stress("τ", "shear stress at the foot");
  static final Symbol FYW = Letters.stress("fyw", "yield strength beside a weld");

  private static final Formula COMBINED =
      new Formula(
          Letters.stress("σv", "equivalent stress"),
          "√({σ}² + 3·{τ}²)",
          List.of(SIGMA, TAU),
          "von Mises; EN 1993-1-1:2005, 6.2.1(5)",
          in -> Math.sqrt(in[0] * in[0] + 3 * in[1] * in[1]));
  private static final Formula STRENGTH =
      new Formula(
          Letters.stress("fyd", "yield strength divided by the factor"),
          "{fyw}/{γ}",
          List.of(FYW, Letters.GAMMA),
          "strength of materials; first yield of the corner, strength beside a weld",
          in -> in[0] / in[1]);

  private FootYield() {}

  /** Both stresses against the yield strength, the source that of the stresses. */
  static Finding of(Step normal, Step shear, RatedMaterial material, Factors factors) {
    Step combined = COMBINED.with(normal.result(), shear.result());
    Step strength = STRENGTH.with(material.strength().weldedYield(), factors.design().value());
    return Finding.compare(combined, strength)
        .after(normal, shear)
        .sourcedBy(normal.formula().source());
  }
}
