package rungwork.joint;

import java.util.List;
import java.util.Optional;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;

/**
 * What one bolt can take: EN 1993-1-8:2005, table 3.4 (from memory, checked against worked
 * examples), and AISC 360-16, table J3.2 as a second opinion.
 *
 * @param bolt the bolt
 * @param threads where its thread ends
 * @param factors what its capacities are divided by
 */
record BoltStrength(Bolt bolt, Bolt.Threads threads, Factors factors) {
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

  private static final Formula SHANK =
      new Formula(A, "π·{d}²/4", List.of(Letters.D), "geometry", in -> Math.PI * in[0] * in[0] / 4);
  private static final Formula SHEAR =
      new Formula(
          FV_RD,
          "{αv}·{fub}·{A}/({γM2}·{γ})",
          List.of(AV, FUB, A, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE,
          in -> in[0] * in[1] * in[2] / (in[3] * in[4]));
  private static final Formula AMERICAN_SHEAR =
      new Formula(
          Letters.force("φRn", "shear strength of one plane"),
          "{φ}·{c}·{fub}·{A}/{γ}",
          List.of(Letters.PHI, Letters.ratio("c", "shear coefficient"), FUB, A, Letters.GAMMA),
          "AISC 360-16, J3.6 and table J3.2 (0.450 with, 0.563 without thread in the plane)",
          in -> in[0] * in[1] * in[2] * in[3] / in[4]);
  private static final Formula TENSION =
      new Formula(
          FT_RD,
          "0.9·{fub}·{As}/({γM2}·{γ})",
          List.of(FUB, AS, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE,
          in -> 0.9 * in[0] * in[1] / (in[2] * in[3]));
  private static final Formula AMERICAN_TENSION =
      new Formula(
          Letters.force("φrn", "tension strength"),
          "{φ}·0.75·{fub}·{A}/{γ}",
          List.of(Letters.PHI, FUB, A, Letters.GAMMA),
          "AISC 360-16, J3.6 and table J3.2",
          in -> in[0] * 0.75 * in[1] * in[2] / in[3]);
  private static final Formula COMBINED =
      new Formula(
          Letters.UTILISATION,
          "{Fv}/{Fv,Rd} + {Ft}/(1.4·{Ft,Rd})",
          List.of(FV, FV_RD, FT, FT_RD),
          TABLE + ", combined shear and tension",
          in -> in[0] / in[1] + in[2] / (1.4 * in[3]));
  private static final Formula ALONG_END =
      new Formula(
          AB,
          "min({e}/(3·{d₀}), {fub}/{fu}, 1)",
          List.of(E, Letters.D0, FUB, Letters.FU),
          TABLE,
          in -> Math.min(Math.min(in[0] / (3 * in[1]), in[2] / in[3]), 1));
  private static final Formula ALONG_ROW =
      new Formula(
          AB,
          "min({e}/(3·{d₀}), {p}/(3·{d₀}) − 1/4, {fub}/{fu}, 1)",
          List.of(E, Letters.D0, P, FUB, Letters.FU),
          TABLE,
          in ->
              Math.min(
                  Math.min(in[0] / (3 * in[1]), in[2] / (3 * in[1]) - 0.25),
                  Math.min(in[3] / in[4], 1)));
  private static final Formula ACROSS_EDGE =
      new Formula(
          K1,
          "min(2.8·{e}/{d₀} − 1.7, 2.5)",
          List.of(E, Letters.D0),
          TABLE,
          in -> Math.min(2.8 * in[0] / in[1] - 1.7, 2.5));
  private static final Formula ACROSS_ROW =
      new Formula(
          K1,
          "min(2.8·{e}/{d₀} − 1.7, 1.4·{p}/{d₀} − 1.7, 2.5)",
          List.of(E, Letters.D0, P),
          TABLE,
          in -> Math.min(Math.min(2.8 * in[0], 1.4 * in[2]) / in[1] - 1.7, 2.5));
  private static final Formula BEARING =
      new Formula(
          FB_RD,
          "{k1}·{αb}·{fu}·{d}·{t}/({γM2}·{γ})",
          List.of(K1, AB, Letters.FU, Letters.D, Letters.T, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE,
          in -> in[0] * in[1] * in[2] * in[3] * in[4] / (in[5] * in[6]));
  private static final Formula SINGLE_LAP =
      new Formula(
          FB_RD,
          "min({k1}·{αb}, 1.5)·{fu}·{d}·{t}/({γM2}·{γ})",
          List.of(K1, AB, Letters.FU, Letters.D, Letters.T, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE + " and 3.6.1(10), one bolt in single shear between washers",
          in -> Math.min(in[0] * in[1], 1.5) * in[2] * in[3] * in[4] / (in[5] * in[6]));
  private static final Formula PUNCHING =
      new Formula(
          Letters.force("Bp,Rd", "resistance to pulling the head through"),
          "0.6·π·{dm}·{t}·{fu}/({γM2}·{γ})",
          List.of(DM, Letters.T, Letters.FU, Letters.GAMMA_M2, Letters.GAMMA),
          TABLE + "; dm taken as the width across flats, on the safe side",
          in -> 0.6 * Math.PI * in[0] * in[1] * in[2] / (in[3] * in[4]));
  private static final Formula YIELD =
      new Formula(
          Letters.stress("fyd", "yield strength divided by the factor"),
          "{fyb}/{γ}",
          List.of(FYB, Letters.GAMMA),
          "strength of materials: first yield",
          in -> in[0] / in[1]);

  /** Area of the shank. */
  Step shank() {
    return SHANK.with(bolt.size().diameter());
  }

  /** Area that counts in the shear plane [m²]. */
  double area() {
    return threaded() ? bolt.size().stressArea() : shank().result();
  }

  /** Diameter of the round bar that has this area [m]. */
  double barDiameter() {
    return Math.sqrt(4 * area() / Math.PI);
  }

  /** Shear resistance of one plane. */
  Step shear() {
    double coefficient = threaded() ? bolt.strength().shear().threaded() : 0.6;
    return SHEAR.with(coefficient, ultimate(), area(), factors.gammaM2(), design());
  }

  /** Shear strength of one plane by the second opinion, on the shank's area. */
  Step americanShear() {
    double coefficient = threaded() ? 0.450 : 0.563;
    double minimum = bolt.strength().minimum().ultimate();
    return AMERICAN_SHEAR.with(factors.phi(), coefficient, minimum, shank().result(), design());
  }

  /** Tension resistance. */
  Step tension() {
    return TENSION.with(ultimate(), bolt.size().stressArea(), factors.gammaM2(), design());
  }

  /** Tension strength by the second opinion, on the shank's area. */
  Step americanTension() {
    double minimum = bolt.strength().minimum().ultimate();
    return AMERICAN_TENSION.with(factors.phi(), minimum, shank().result(), design());
  }

  /** Shear and tension together. */
  Step combined(double shear, double tension) {
    return COMBINED.with(shear, shear().result(), tension, tension().result());
  }

  /** Bearing of the hole of a single bolt in single shear: two coefficients and the resistance. */
  List<Step> bearingOfSingleLap(Hole hole) {
    return bearing(SINGLE_LAP, hole);
  }

  /** Bearing of a single bolt's hole: two coefficients and the resistance. */
  List<Step> bearing(Hole hole) {
    return bearing(BEARING, hole);
  }

  private List<Step> bearing(Formula rule, Hole hole) {
    Step along = ALONG_END.with(hole.edge(), hole.diameter(), ultimate(), hole.ultimate());
    Step across = ACROSS_EDGE.with(hole.edge(), hole.diameter());
    return List.of(along, across, bearing(rule, List.of(along, across), hole));
  }

  /** Bearing of a hole among others: two coefficients and the resistance. */
  List<Step> bearing(Hole hole, double pitch) {
    Step along = ALONG_ROW.with(hole.edge(), hole.diameter(), pitch, ultimate(), hole.ultimate());
    Step across = ACROSS_ROW.with(hole.edge(), hole.diameter(), pitch);
    return List.of(along, across, bearing(BEARING, List.of(along, across), hole));
  }

  /** Resistance to pulling the head through a plate. */
  Step punching(double thickness, double plateUltimate) {
    double flats = bolt.size().acrossFlats();
    return PUNCHING.with(flats, thickness, plateUltimate, factors.gammaM2(), design());
  }

  /** The bolt's yield strength divided by the design factor. */
  Step yield() {
    return YIELD.with(bolt.strength().nominalYield(), design());
  }

  /** Why EN 1993-1-8 does not cover this bolt; empty when it does. */
  List<Reason> outside() {
    return bolt.strength().shear().covered()
        ? List.of()
        : List.of(Reason.of("outside EN 1993-1-8: bolt class " + bolt.strength().name()));
  }

  private Step bearing(Formula rule, List<Step> coefficients, Hole hole) {
    return rule.with(
        coefficients.get(1).result(),
        coefficients.get(0).result(),
        hole.ultimate(),
        bolt.size().diameter(),
        hole.thickness(),
        factors.gammaM2(),
        design());
  }

  private boolean threaded() {
    return threads == Bolt.Threads.IN_PLANE;
  }

  private double ultimate() {
    return bolt.strength().nominalUltimate();
  }

  private double design() {
    return factors.design().value();
  }

  /**
   * A hole in a plate.
   *
   * @param diameter d₀ [m]
   * @param edge from its centre to the nearest edge [m]
   * @param thickness of the plate [m]
   * @param ultimate strength of the plate [Pa]
   */
  record Hole(double diameter, double edge, double thickness, double ultimate) {
    /** Why the bearing rule cannot be used, or nothing. */
    Optional<Reason> tooNear() {
      double least = HoleRules.EDGE * diameter;
      return edge >= least * (1 - Rounding.TOLERANCE)
          ? Optional.empty()
          : Optional.of(
              Reason.of(
                  "the edge is {} from the hole's centre; the bearing rule needs {}",
                  Amount.length(edge),
                  Amount.length(least)));
    }
  }
}
