package rungwork.joint;

import java.util.List;
import java.util.Optional;
import rungwork.check.Formula;
import rungwork.check.Step;
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
  /** Area of the shank. */
  Step shank() {
    return BoltFormulas.SHANK.with(bolt.size().diameter());
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
    return BoltFormulas.SHEAR.with(coefficient, ultimate(), area(), factors.gammaM2(), design());
  }

  /** Shear strength of one plane by the second opinion, on the shank's area. */
  Step americanShear() {
    double coefficient = threaded() ? 0.450 : 0.563;
    double minimum = bolt.strength().minimum().ultimate();
    return BoltFormulas.AMERICAN_SHEAR.with(
        factors.phi(), coefficient, minimum, shank().result(), design());
  }

  /** Tension resistance. */
  Step tension() {
    return BoltFormulas.TENSION.with(
        ultimate(), bolt.size().stressArea(), factors.gammaM2(), design());
  }

  /** Tension strength by the second opinion, on the shank's area. */
  Step americanTension() {
    double minimum = bolt.strength().minimum().ultimate();
    return BoltFormulas.AMERICAN_TENSION.with(factors.phi(), minimum, shank().result(), design());
  }

  /** Shear and tension together. */
  Step combined(double shear, double tension) {
    return BoltFormulas.COMBINED.with(shear, shear().result(), tension, tension().result());
  }

  /** Bearing of the hole of a single bolt in single shear: two coefficients and the resistance. */
  List<Step> bearingOfSingleLap(Hole hole) {
    return bearing(BoltFormulas.SINGLE_LAP, hole);
  }

  /** Bearing of a single bolt's hole: two coefficients and the resistance. */
  List<Step> bearing(Hole hole) {
    return bearing(BoltFormulas.BEARING, hole);
  }

  private List<Step> bearing(Formula rule, Hole hole) {
    Step along =
        BoltFormulas.ALONG_END.with(hole.edge(), hole.diameter(), ultimate(), hole.ultimate());
    Step across = BoltFormulas.ACROSS_EDGE.with(hole.edge(), hole.diameter());
    return List.of(along, across, bearing(rule, List.of(along, across), hole));
  }

  /** Bearing of a hole among others: two coefficients and the resistance. */
  List<Step> bearing(Hole hole, double pitch) {
    Step along =
        BoltFormulas.ALONG_ROW.with(
            hole.edge(), hole.diameter(), pitch, ultimate(), hole.ultimate());
    Step across = BoltFormulas.ACROSS_ROW.with(hole.edge(), hole.diameter(), pitch);
    return List.of(along, across, bearing(BoltFormulas.BEARING, List.of(along, across), hole));
  }

  /** Resistance to pulling the head through a plate. */
  Step punching(double thickness, double plateUltimate) {
    double flats = bolt.size().acrossFlats();
    return BoltFormulas.PUNCHING.with(flats, thickness, plateUltimate, factors.gammaM2(), design());
  }

  /** The bolt's yield strength divided by the design factor. */
  Step yield() {
    return BoltFormulas.YIELD.with(bolt.strength().nominalYield(), design());
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
