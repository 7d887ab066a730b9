package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;

/** What a rod end's ball and its shank carry. */
final class RodEndFormulas {
  private static final Symbol RADIAL = Letters.force("Fr", "force across the ball's axis");
  private static final Symbol AXIAL = Letters.force("Fa", "force along the ball's axis");
  private static final Symbol RATED = Letters.force("C", "rating");
  private static final Symbol ALLOWED = Letters.force("C,d", "rating divided by the factor");
  private static final Symbol CX = Letters.ratio("cx", "direction of the shank along x");
  private static final Symbol CZ = Letters.ratio("cz", "direction of the shank along z");
  private static final Symbol ARM = Letters.length("l", "from the ball to the shank's support");
  private static final Symbol ROOT = Letters.length("d3", "diameter at the thread's root");
  private static final Symbol N = Letters.force("N", "force along the shank");
  private static final Symbol Q = Letters.force("Q", "force across the shank");
  private static final Symbol FYB = Letters.stress("fy", "yield strength of the shank");

  static final Formula ACROSS =
      new Formula(
          RADIAL,
          "√({Fx}² + {Fz}²)",
          List.of(Letters.FX, Letters.FZ),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  static final Formula ALONG =
      new Formula(AXIAL, "|{Fy}|", List.of(Letters.FY_LATERAL), "statics", in -> Math.abs(in[0]));
  static final Formula ALLOWANCE =
      new Formula(ALLOWED, "{C}/{γ}", List.of(RATED, Letters.GAMMA), "rating", in -> in[0] / in[1]);
  static final Formula BOTH =
      new Formula(
          Letters.UTILISATION,
          "{γ}·({Fr}/{Cr} + {Fa}/{Ca})",
          List.of(
              Letters.GAMMA,
              RADIAL,
              Letters.force("Cr", "radial rating"),
              AXIAL,
              Letters.force("Ca", "axial rating")),
          "linear interaction; common practice, no source",
          in -> in[0] * (in[1] / in[2] + in[3] / in[4]));
  static final Formula ON_LINE =
      new Formula(
          N,
          "|{Fx}·{cx} + {Fz}·{cz}|",
          List.of(Letters.FX, CX, Letters.FZ, CZ),
          "statics",
          in -> Math.abs(in[0] * in[1] + in[2] * in[3]));
  static final Formula OFF_LINE =
      new Formula(
          Q,
          "√(({Fx}·{cz} − {Fz}·{cx})² + {Fy}²)",
          List.of(Letters.FX, CZ, Letters.FZ, CX, Letters.FY_LATERAL),
          "statics",
          in -> Math.hypot(in[0] * in[1] - in[2] * in[3], in[4]));
  static final Formula STRESS =
      new Formula(
          Letters.stress("σ", "normal stress in the shank"),
          "4·{N}/(π·{d3}²) + 32·{Q}·{l}/(π·{d3}³)",
          List.of(N, ROOT, Q, ARM),
          "strength of materials, round bar of the thread's root",
          in ->
              4 * in[0] / (Math.PI * in[1] * in[1])
                  + 32 * in[2] * in[3] / (Math.PI * in[1] * in[1] * in[1]));
  static final Formula YIELD =
      new Formula(
          Letters.stress("fyd", "yield strength divided by the factor"),
          "{fy}/{γ}",
          List.of(FYB, Letters.GAMMA),
          "strength of materials: first yield at the thread's root",
          in -> in[0] / in[1]);

  private RodEndFormulas() {}
}
