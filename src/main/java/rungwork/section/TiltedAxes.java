package rungwork.section;

/**
 * Bending about y and z of a section whose principal axes are tilted (unsymmetric bending, any
 * textbook).
 *
 * @param iy ∫z² dA about the centroid [m⁴]
 * @param iz ∫y² dA [m⁴]
 * @param iyz ∫yz dA [m⁴]
 */
record TiltedAxes(double iy, double iz, double iyz) {

  /**
   * The moments that would cause the same stress by My·z/Iy − Mz·y/Iz.
   *
   * @param my moment about y [N·m]
   * @param mz moment about z [N·m]
   * @return both moments, about y and about z [N·m]
   */
  double[] about(double my, double mz) {
    double tilt = 1 - iyz * iyz / (iy * iz);
    return new double[] {(my + mz * iyz / iz) / tilt, (mz + my * iyz / iy) / tilt};
  }

  /** The stress that both moments cause at a spot from the centroid [Pa]. */
  double stress(double my, double mz, Spot at) {
    double[] moments = about(my, mz);
    return moments[0] * at.z() / iy - moments[1] * at.y() / iz;
  }
}
