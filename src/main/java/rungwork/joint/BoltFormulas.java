package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;

/**
 * The formulas for one bolt: EN 1993-1-8:2005, table 3.4 (from memory, checked against worked
 * examples), and AISC 360-16, table J3.2.
 */
final class BoltFormulas {
  private static final String TABLE = "EN 1993-1-8:2005, table 3.4";
  private static final Symbol FUB = Letters.stress("fub", "ultimate strength of the bolt");
  private static final Symbol FYB = Letters.stress("fyb", "yield strength of the bolt");
  private static final Symbol A = Letters.area("A", "area of the bolt in the plane");
  private static final Symbol AS = Letters.area("As", "stress area of the thread");
  private static final Symbol AV = Letters.ratio("αv", "shear coefficient");
  private static final Symbol AB = Letters.ratio("αb", "bearing coefficient along the load");
  private static final Symbol K1 = Letters.ratio("k1", "bearing coefficient across the load");
  private static final Symbol E = Letters.length("e", "hole's centre to the nearest edge");
  private static final Symbol P = Letters.length("p", "smallest distance of two holes");
  private static final Symbol DM = Letters.length("dm", "width of head or nut across flats");
  private static final Symbol FV = Letters.force("Fv", "shear force on one plane");
  private static final Symbol FT = Letters.force("Ft", "tension");
  private static final Symbol FV_RD = Letters.force("Fv,Rd", "shear resistance of one plane");
  private static final Symbol FT_RD = Letters.force("Ft,Rd", "tension resistance");
  private static final Symbol FB_RD = Letters.force("Fb,Rd", "bearing resistance");

  static final Formula SHANK =
      new Formula(A, "π·{d}²/4", List.of(Letters.D), "geometry", in -> Math.PI * in[0] * in[0] / 4);
  static final Formula SHEAR =
      new Formula(
          FV_RD,
          "{αv}·{fub}·{A}/({γM2}·{γ})",
          List.of(AV, FUB, A, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE,
          in -> in[0] * in[1] * in[2] / (in[3] * in[4]));
  static final Formula AMERICAN_SHEAR =
      new Formula(
          Letters.force("φRn", "shear strength of one plane"),
          "{φ}·{c}·{fub}·{A}/{γ}",
          List.of(Letters.PHI, Letters.ratio("c", "shear coefficient"), FUB, A, Letters.GAMMA),
          "AISC 360-16, J3.6 and table J3.2 (0.450 with, 0.563 without thread in the plane)",
          in -> in[0] * in[1] * in[2] * in[3] / in[4]);
  static final Formula TENSION =
      new Formula(
          FT_RD,
          "0.9·{fub}·{As}/({γM2}·{γ})",
          List.of(FUB, AS, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE,
          in -> 0.9 * in[0] * in[1] / (in[2] * in[3]));
  static final Formula AMERICAN_TENSION =
      new Formula(
          Letters.force("φrn", "tension strength"),
          "{φ}·0.75·{fub}·{A}/{γ}",
          List.of(Letters.PHI, FUB, A, Letters.GAMMA),
          "AISC 360-16, J3.6 and table J3.2",
          in -> in[0] * 0.75 * in[1] * in[2] / in[3]);
  static final Formula COMBINED =
      new Formula(
          Letters.UTILISATION,
          "{Fv}/{Fv,Rd} + {Ft}/(1.4·{Ft,Rd})",
          List.of(FV, FV_RD, FT, FT_RD),
          TABLE + ", combined shear and tension",
          in -> in[0] / in[1] + in[2] / (1.4 * in[3]));
  static final Formula ALONG_END =
      new Formula(
          AB,
          "min({e}/(3·{d₀}), {fub}/{fu}, 1)",
          List.of(E, Letters.D0, FUB, Letters.FU),
          TABLE,
          in -> Math.min(Math.min(in[0] / (3 * in[1]), in[2] / in[3]), 1));
  static final Formula ALONG_ROW =
      new Formula(
          AB,
          "min({e}/(3·{d₀}), {p}/(3·{d₀}) − 1/4, {fub}/{fu}, 1)",
          List.of(E, Letters.D0, P, FUB, Letters.FU),
          TABLE,
          in ->
              Math.min(
                  Math.min(in[0] / (3 * in[1]), in[2] / (3 * in[1]) - 0.25),
                  Math.min(in[3] / in[4], 1)));
  static final Formula ACROSS_EDGE =
      new Formula(
          K1,
          "min(2.8·{e}/{d₀} − 1.7, 2.5)",
          List.of(E, Letters.D0),
          TABLE,
          in -> Math.min(2.8 * in[0] / in[1] - 1.7, 2.5));
  static final Formula ACROSS_ROW =
      new Formula(
          K1,
          "min(2.8·{e}/{d₀} − 1.7, 1.4·{p}/{d₀} − 1.7, 2.5)",
          List.of(E, Letters.D0, P),
          TABLE,
          in -> Math.min(Math.min(2.8 * in[0], 1.4 * in[2]) / in[1] - 1.7, 2.5));
  static final Formula BEARING =
      new Formula(
          FB_RD,
          "{k1}·{αb}·{fu}·{d}·{t}/({γM2}·{γ})",
          List.of(K1, AB, Letters.FU, Letters.D, Letters.T, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE,
          in -> in[0] * in[1] * in[2] * in[3] * in[4] / (in[5] * in[6]));
  static final Formula SINGLE_LAP =
      new Formula(
          FB_RD,
          "min({k1}·{αb}, 1.5)·{fu}·{d}·{t}/({γM2}·{γ})",
          List.of(K1, AB, Letters.FU, Letters.D, Letters.T, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE + " and 3.6.1(10), one bolt in single shear between washers",
          in -> Math.min(in[0] * in[1], 1.5) * in[2] * in[3] * in[4] / (in[5] * in[6]));
  static final Formula PUNCHING =
      new Formula(
          Letters.force("Bp,Rd", "resistance to pulling the head through"),
          "0.6·π·{dm}·{t}·{fu}/({γM2}·{γ})",
          List.of(DM, Letters.T, Letters.FU, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE + "; dm taken as the width across flats, on the safe side",
          in -> 0.6 * Math.PI * in[0] * in[1] * in[2] / (in[3] * in[4]));
  static final Formula YIELD =
      new Formula(
          Letters.stress("fyd", "yield strength divided by the factor"),
          "{fyb}/{γ}",
          List.of(FYB, Letters.GAMMA),
          "strength of materials: first yield",
          in -> in[0] / in[1]);

  private BoltFormulas() {}
}
