package rungwork.solve;

import rungwork.fault.Guard;

/**
 * The six internal forces at a cut of a beam, in the beam's axes; signs as in {@link
 * rungwork.frame}. T is about the line of shear centres, the moments about the centroid.
 *
 * @param n normal force, tension positive [N]
 * @param vy shear force along y [N]
 * @param vz shear force along z [N]
 * @param t torque [N·m]
 * @param my moment about y (out of plane) [N·m]
 * @param mz moment about z (in plane) [N·m]
 */
public record InternalForces(double n, double vy, double vz, double t, double my, double mz) {
  /** Refuses what is not finite. */
  public InternalForces {
    Guard.solved("internal force", n + vy + vz + t + my + mz);
  }

  /**
   * The sum of two states.
   *
   * @param other the other one, at the same cut
   * @return the sum
   */
  public InternalForces plus(InternalForces other) {
    return new InternalForces(
        n + other.n, vy + other.vy, vz + other.vz, t + other.t, my + other.my, mz + other.mz);
  }
}
