package rungwork.solve;

/**
 * How a prismatic beam resists turning of its ends in one plane while a normal force acts along it:
 * exact for a force that is the same everywhere.
 *
 * <pre>
 *   M₁ = near·θ₁ + far·θ₂      z = NL²/EI      D = C₃ − 2C₄
 *   near = EI/L·(C₂ − C₃)/D    far = EI/L·C₃/D
 * </pre>
 *
 * <p>Without a force 4EI/L and 2EI/L; at N = −π²EI/L² near and far are both π²/4·EI/L (Livesley and
 * Chandler, Stability functions for structural frameworks, 1956, from memory). With shear strain
 * (Engesser, from memory) the shear force across the bent axis counts: β = 1/(1 + N/GA), z =
 * βNL²/EI, φ = EI/(βGA·L²), D = C₃ − 2C₄ + φC₁, near = (C₂ − C₃ + φC₀)/D and far = (C₃ − φ)/D.
 *
 * @param near moment at an end that turns by 1 against the chord [N·m]
 * @param far moment at the other end, held [N·m]
 * @param clampedModes critical loads of the beam with both ends held that lie below the force
 */
record StabilityFunctions(double near, double far, int clampedModes) {
  /**
   * The functions of a beam.
   *
   * @param bending EI and GA
   * @param length L [m]
   * @param normalForce N, tension positive [N]
   */
  static StabilityFunctions of(Bending bending, double length, double normalForce) {
    double z = bending.growth(normalForce) * length * length;
    double shear =
        bending.rigidity() * bending.give() / (bending.slope(normalForce) * length * length);
    double[] c = Stumpff.of(z);
    double perLength = bending.rigidity() / (length * (c[3] - 2 * c[4] + shear * c[1]));
    double near = perLength * (c[2] - c[3] + shear * c[0]);
    double far = perLength * (c[3] - shear);
    return new StabilityFunctions(near, far, clampedModes(z, bending.slope(normalForce)));
  }

  /**
   * With u = ½√−z and both ends held, critical are u = nπ, where the shape is even, and tan u =
   * u/β, where it is odd: one in each half wave beyond the first, before its quarter.
   */
  private static int clampedModes(double z, double slope) {
    if (z >= 0) {
      return 0;
    }
    double u = Math.sqrt(-z) / 2;
    int halfWaves = (int) (u / Math.PI);
    double rest = u - halfWaves * Math.PI;
    boolean odd = rest >= Math.PI / 2 || slope * Math.tan(rest) > u;
    return halfWaves == 0 ? 0 : 2 * halfWaves - 1 + (odd ? 1 : 0);
  }

  /**
   * Resistance to bending in one plane.
   *
   * @param rigidity EI [N·m²]
   * @param give 1/GA, zero where shear strain is left out [1/N]
   */
  record Bending(double rigidity, double give) {
    /** Slope of the axis for a unit turn of the cross-section: β [1]. */
    double slope(double normalForce) {
      return 1 / (1 + normalForce * give);
    }

    /** λ of y″ = λy for the turn of the cross-section: βN/EI [1/m²]. */
    double growth(double normalForce) {
      return slope(normalForce) * normalForce / rigidity;
    }
  }
}
