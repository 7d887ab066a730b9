package rungwork.solve;

import rungwork.section.Properties;

/**
 * What a normal force does to a beam whose shear centre lies yS off its centroid: bending out of
 * the plane and twist feed each other.
 *
 * <pre>
 *   energy    ½∫ EI·w″² + N·w′² − 2N·yS·w′φ′ + (GJ + N·r²)·φ′²     r² = (Iy + Iz)/A + yS²
 *           = ½∫ EI·w″² + Nw·w′² + C·ψ′²
 *   C = GJ + N·r²     lean = −N·yS/C     ψ = φ + lean·w     Nw = N·(1 − N·yS²/C)
 * </pre>
 *
 * <p>w is the deflection of the line of shear centres, φ the twist (Timoshenko and Gere, Theory of
 * Elastic Stability, 1961, 5.4, from memory; the square completed here). In w and ψ the beam bends
 * and twists apart, so that what holds for any other beam holds for it with Nw for N and C for GJ.
 * Warping stiffness is left out, which makes it weaker than it is.
 *
 * @param twisting C [N·m²]
 * @param lean [rad/m]
 * @param across Nw, which pushes or pulls across out of the plane [N]
 */
record Eccentric(double twisting, double lean, double across) {
  /** A shear centre this close to the centroid is there: rounding of lengths added up [m]. */
  private static final double CENTRED = 1e-9;

  /** Left of the torsional stiffness, of what it is without a force, when it counts as gone [1]. */
  private static final double GONE = 1e-9;

  /** The same normal force without any of this. */
  static Eccentric none(double twisting, double force) {
    return new Eccentric(twisting, 0, force);
  }

  /**
   * A section under a normal force.
   *
   * @param section of the beam
   * @param twisting GJ [N·m²]
   * @param force N, tension positive [N]
   */
  static Eccentric of(Properties section, double twisting, double force) {
    if (force == 0 || !concerns(section)) {
      return none(twisting, force);
    }
    double offset = section.shearCentreY();
    double radius = (section.iy() + section.iz()) / section.area() + offset * offset;
    double left = twisting + force * radius;
    if (left <= GONE * twisting) {
      return new Eccentric(0, 0, force);
    }
    return new Eccentric(
        left, -force * offset / left, force * (1 - force * offset * offset / left));
  }

  /** Whether a section's shear centre lies off its centroid. */
  static boolean concerns(Properties section) {
    return Math.abs(section.shearCentreY()) > CENTRED;
  }

  /** Whether the force has used up all stiffness against twist: the beam has buckled by itself. */
  boolean buckled() {
    return twisting == 0;
  }
}
