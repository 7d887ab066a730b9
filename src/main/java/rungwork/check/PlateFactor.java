package rungwork.check;

import java.util.List;
import rungwork.quantity.Kind;

/**
 * The buckling factor kσ of a flat wall whose stress varies over its width: EN 1993-1-5:2006,
 * tables 4.1 and 4.2 (from memory; the tests hold their corner values and an energy solution).
 */
final class PlateFactor {
  static final Symbol K = new Symbol("kσ", Kind.RATIO, "buckling factor");
  static final Symbol PSI = new Symbol("ψ", Kind.RATIO, "stress ratio of both edges");

  private static final String INTERNAL = "EN 1993-1-5:2006, table 4.1";
  private static final String FREE = "EN 1993-1-5:2006, table 4.2, the free edge compressed most";
  private static final String HELD = "EN 1993-1-5:2006, table 4.2, the held edge compressed most";

  private static final Formula COMPRESSED =
      of("8.2/(1.05 + {ψ})", INTERNAL, in -> 8.2 / (1.05 + in[0]));
  private static final Formula BENT =
      of("7.81 − 6.29·{ψ} + 9.78·{ψ}²", INTERNAL, in -> square(7.81, -6.29, 9.78, in[0]));
  private static final Formula MOSTLY_TENSION =
      of("5.98·(1 − {ψ})²", INTERNAL, in -> 5.98 * (1 - in[0]) * (1 - in[0]));
  private static final Formula FREE_EDGE =
      of("0.57 − 0.21·{ψ} + 0.07·{ψ}²", FREE, in -> square(0.57, -0.21, 0.07, in[0]));
  private static final Formula HELD_EDGE =
      of("0.578/({ψ} + 0.34)", HELD, in -> 0.578 / (in[0] + 0.34));
  private static final Formula HELD_EDGE_TENSION =
      of("1.7 − 5·{ψ} + 17.1·{ψ}²", HELD, in -> square(1.7, -5, 17.1, in[0]));

  private PlateFactor() {}

  /** kσ of a wall held along both edges. */
  static Step internal(double psi) {
    return (psi >= 0 ? COMPRESSED : psi > -1 ? BENT : MOSTLY_TENSION).with(psi);
  }

  /** kσ of a wall with a free edge; beyond as much tension as compression the last value. */
  static Step outstand(double psi, Peak peak) {
    double ratio = Math.max(-1, psi);
    if (peak == Peak.FREE_EDGE) {
      return FREE_EDGE.with(ratio);
    }
    return (ratio >= 0 ? HELD_EDGE : HELD_EDGE_TENSION).with(ratio);
  }

  private static double square(double a, double b, double c, double x) {
    return a + b * x + c * x * x;
  }

  private static Formula of(String text, String source, Formula.Evaluation evaluation) {
    return new Formula(K, text, List.of(PSI), source, evaluation);
  }
}
