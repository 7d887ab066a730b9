package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;

/** What a bolt through a tab carries, and what it can carry as a bar and as a pin. */
final class PivotFormulas {
  private static final Symbol N = Letters.number("n", "number of shear planes");
  private static final Symbol F = Letters.force("F", "force across the bolt");
  private static final Symbol FV = Letters.force("Fv", "shear force on one plane");
  private static final Symbol FA = Letters.force("Fa", "force along the bolt");
  private static final Symbol GAP = Letters.length("c", "gap beside the tab");
  private static final Symbol CENTRE = Letters.length("b", "width of ball or bush");
  private static final Symbol M = Letters.moment("M", "bending moment of the bolt");
  private static final Symbol W = Letters.modulus("W", "section modulus of the bolt");
  private static final Symbol A = Letters.area("A", "area of the bolt in the plane");
  private static final Symbol BAR = Letters.length("ds", "diameter that counts");
  private static final Symbol MRD = Letters.moment("MRd", "bending resistance of the pin");
  private static final Symbol FVRD = Letters.force("Fv,Rd", "shear resistance of one plane");
  private static final Symbol FYB = Letters.stress("fyb", "yield strength of the bolt");

  static final Formula ACROSS =
      new Formula(
          F,
          "√({Fx}² + {Fz}²)",
          List.of(Letters.FX, Letters.FZ),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  static final Formula SHEAR =
      new Formula(FV, "{F}/{n}", List.of(F, N), "statics", in -> in[0] / in[1]);
  static final Formula ALONG =
      new Formula(FA, "|{Fy}|", List.of(Letters.FY_LATERAL), "statics", in -> Math.abs(in[0]));
  static final Formula SINGLE_BENDING =
      new Formula(
          M,
          "{F}·({t}/2 + {c} + {b}/2)",
          List.of(F, Letters.T, GAP, CENTRE),
          "statics, from the tab's middle to the ball's middle; common practice, no source",
          in -> in[0] * (in[1] / 2 + in[2] + in[3] / 2));
  static final Formula DOUBLE_BENDING =
      new Formula(
          M,
          "{F}/8·({b} + 4·{c} + 2·{t})",
          List.of(F, CENTRE, GAP, Letters.T),
          "EN 1993-1-8:2005, figure 3.11",
          in -> in[0] / 8 * (in[1] + 4 * in[2] + 2 * in[3]));
  static final Formula MODULUS =
      new Formula(
          W,
          "π·{ds}³/32",
          List.of(BAR),
          "geometry; a thread counts as the round bar of its stress area",
          in -> Math.PI * in[0] * in[0] * in[0] / 32);
  static final Formula STRESS =
      new Formula(
          Letters.stress("σv", "equivalent stress"),
          "√(({M}/{W} + {Fa}/{A})² + 3·({Fv}/{A})²)",
          List.of(M, W, FA, A, FV),
          "von Mises, the mean shear taken where bending is greatest; common practice, no source",
          in -> Math.sqrt(square(in[0] / in[1] + in[2] / in[3]) + 3 * square(in[4] / in[3])));
  static final Formula PIN_BENDING =
      new Formula(
          MRD,
          "1.5·{W}·{fyb}/{γ}",
          List.of(W, FYB, Letters.GAMMA),
          "EN 1993-1-8:2005, table 3.10",
          in -> 1.5 * in[0] * in[1] / in[2]);
  static final Formula PIN =
      new Formula(
          Letters.UTILISATION,
          "√(({M}/{MRd})² + ({Fv}/{Fv,Rd})²)",
          List.of(M, MRD, FV, FVRD),
          "EN 1993-1-8:2005, table 3.10, combined shear and bending of a pin; the root of its sum,"
              + " which grows with the load",
          in -> Math.hypot(in[0] / in[1], in[2] / in[3]));

  private static double square(double value) {
    return value * value;
  }

  private PivotFormulas() {}
}
