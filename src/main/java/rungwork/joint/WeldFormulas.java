package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;

/**
 * The formulas for welds: EN 1993-1-8:2005, 4.5.3.3 (simplified), 4.5.3.2 (directional) and 4.7.1
 * (full penetration), AISC 360-16, J2.4; from memory, checked against worked examples. Letters: fx,
 * fy, fz the force on a length of weld along the face's axes, a the throat, s the leg.
 */
final class WeldFormulas {
  /** Where most of them come from. */
  static final String EN = "EN 1993-1-8:2005, ";

  private static final Symbol FX = line("fx", "share along x");
  private static final Symbol FY = line("fy", "share along y");
  private static final Symbol FZ = line("fz", "share out of the face");
  private static final Symbol FS = line("fs", "share along the weld");
  private static final Symbol FN = line("fn", "share across the weld, in the face");
  private static final Symbol CX = Letters.ratio("cx", "direction of the weld along x");
  private static final Symbol CY = Letters.ratio("cy", "direction of the weld along y");
  private static final Symbol S = Letters.length("s", "leg");
  private static final Symbol A = Letters.length("a", "throat");
  private static final Symbol BETA = Letters.ratio("βw", "correlation factor");
  private static final Symbol FEXX = Letters.stress("FEXX", "strength of the weld metal");
  private static final Symbol FYW = Letters.stress("fyw", "yield strength beside a weld");

  static final Formula THROAT =
      new Formula(A, "{s}/√2", List.of(S), "geometry", in -> in[0] / Math.sqrt(2));
  static final Formula FORCE =
      new Formula(
          line("f", "force on a length of weld"),
          "√({fx}² + {fy}² + {fz}²)",
          List.of(FX, FY, FZ),
          "elastic line method",
          in -> Math.sqrt(in[0] * in[0] + in[1] * in[1] + in[2] * in[2]));
  static final Formula ALONG =
      new Formula(
          FS,
          "{fx}·{cx} + {fy}·{cy}",
          List.of(FX, CX, FY, CY),
          "statics",
          in -> in[0] * in[1] + in[2] * in[3]);
  static final Formula ACROSS =
      new Formula(
          FN,
          "{fy}·{cx} − {fx}·{cy}",
          List.of(FY, CX, FX, CY),
          "statics",
          in -> in[0] * in[1] - in[2] * in[3]);
  static final Formula SIMPLIFIED =
      new Formula(
          line("Fw,Rd", "resistance of a length of weld"),
          "{fu}·{a}/(√3·{βw}·{γM2}·{γ})",
          List.of(Letters.FU, A, BETA, Letters.GAMMA_M2, Letters.GAMMA),
          EN + "4.5.3.3",
          in -> in[0] * in[1] / (Math.sqrt(3) * in[2] * in[3] * in[4]));
  static final Formula DIRECTIONAL =
      new Formula(
          Letters.stress("σw", "equivalent stress on the throat"),
          "√(2·({fn}² + {fz}² + |{fn}·{fz}|) + 3·{fs}²)/{a}",
          List.of(FN, FZ, FS, A),
          EN + "4.5.3.2, σ⊥² + 3·(τ⊥² + τ∥²) on a throat at 45°, on the worse side of the plate",
          in ->
              Math.sqrt(
                      2 * (in[0] * in[0] + in[1] * in[1] + Math.abs(in[0] * in[1]))
                          + 3 * in[2] * in[2])
                  / in[3]);
  static final Formula DIRECTIONAL_LIMIT =
      new Formula(
          Letters.stress("σw,Rd", "resistance of the throat"),
          "{fu}/({βw}·{γM2}·{γ})",
          List.of(Letters.FU, BETA, Letters.GAMMA_M2, Letters.GAMMA),
          EN + "4.5.3.2(6), eq. 4.1",
          in -> in[0] / (in[1] * in[2] * in[3]));
  static final Formula NORMAL =
      new Formula(
          Letters.stress("σ⊥", "normal stress on the throat"),
          "(|{fn}| + |{fz}|)/(√2·{a})",
          List.of(FN, FZ, A),
          EN + "4.5.3.2, on the worse side of the plate",
          in -> (Math.abs(in[0]) + Math.abs(in[1])) / (Math.sqrt(2) * in[2]));
  static final Formula NORMAL_LIMIT =
      new Formula(
          Letters.stress("σ⊥,Rd", "resistance to normal stress"),
          "0.9·{fu}/({γM2}·{γ})",
          List.of(Letters.FU, Letters.GAMMA_M2, Letters.GAMMA),
          EN + "4.5.3.2(6), eq. 4.1",
          in -> 0.9 * in[0] / (in[1] * in[2]));
  static final Formula AMERICAN =
      new Formula(
          line("φrn", "strength of a length of weld"),
          "{φ}·0.6·{FEXX}·{a}/{γ}",
          List.of(Letters.PHI, FEXX, A, Letters.GAMMA),
          "AISC 360-16, J2.4 and table J2.5, without its increase for direction",
          in -> in[0] * 0.6 * in[1] * in[2] / in[3]);
  static final Formula FUSION =
      new Formula(
          line("fyd", "yield of the base metal on a length"),
          "{fyw}·{s}/(√3·{γ})",
          List.of(FYW, S, Letters.GAMMA),
          "strength of materials: shear yield of the fusion face, strength beside a weld",
          in -> in[0] * in[1] / (Math.sqrt(3) * in[2]));
  static final Formula THROUGH =
      new Formula(
          Letters.stress("σv", "equivalent stress in the plate"),
          "√({fz}² + 3·({fn}² + {fs}²))/{t}",
          List.of(FZ, FN, FS, Letters.T),
          "von Mises",
          in -> Math.sqrt(in[0] * in[0] + 3 * (in[1] * in[1] + in[2] * in[2])) / in[3]);
  static final Formula PLATE =
      new Formula(
          Letters.stress("fyd", "yield strength divided by the factor"),
          "{fyw}/{γ}",
          List.of(FYW, Letters.GAMMA),
          EN
              + "4.7.1: a full-penetration weld is as strong as the weaker part; strength beside a"
              + " weld",
          in -> in[0] / in[1]);

  private WeldFormulas() {}

  private static Symbol line(String letter, String meaning) {
    return Letters.lineForce(letter, meaning);
  }
}
