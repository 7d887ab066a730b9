package rungwork.solve;

/**
 * A member's stiffness against deformation with some deformations released: they are eliminated one
 * after the other, each from the condition that its force is zero.
 *
 * <pre>
 *   k_ij ← k_ij − k_ir k_rj / k_rr,   f_i ← f_i − k_ir f_r / k_rr,   d_r = −(f_r + Σ k_rj d_j) / k_rr
 * </pre>
 */
final class Condensation {
  private final int[] released;
  private final double[][] rows;
  private final double[][] stiffness;

  /**
   * Eliminates the released deformations.
   *
   * @param full stiffness with nothing released; its entries are replaced
   * @param released the released deformations, none twice
   */
  Condensation(double[][] full, int[] released) {
    this.released = released;
    rows = new double[released.length][];
    stiffness = full;
    for (int step = 0; step < released.length; step++) {
      int r = released[step];
      rows[step] = stiffness[r].clone();
      for (double[] row : stiffness) {
        subtract(row, row[r] / rows[step][r], rows[step]);
        row[r] = 0;
      }
    }
  }

  private static void subtract(double[] row, double factor, double[] other) {
    if (factor != 0) {
      for (int j = 0; j < row.length; j++) {
        row[j] -= factor * other[j];
      }
    }
  }

  /** The stiffness that is left; rows and columns of released deformations are zero. */
  double[][] stiffness() {
    return stiffness;
  }

  /** Forces that hold all deformations at zero, replaced by those with the releases let go. */
  void release(double[] clamped) {
    for (int step = 0; step < released.length; step++) {
      int r = released[step];
      subtract(clamped, clamped[r] / rows[step][r], rows[step]);
      clamped[r] = 0;
    }
  }

  /**
   * How the member really deforms: where a deformation is released, its end turns otherwise than
   * its node.
   *
   * @param deformations as the nodes move; the released ones are replaced
   * @param clamped the forces that hold all deformations at zero, nothing released
   */
  void follow(double[] deformations, double[] clamped) {
    double[] forces = clamped.clone();
    double[] left = new double[released.length];
    for (int step = 0; step < released.length; step++) {
      left[step] = forces[released[step]];
      subtract(forces, left[step] / rows[step][released[step]], rows[step]);
    }
    for (int step = released.length - 1; step >= 0; step--) {
      int r = released[step];
      double sum = left[step];
      for (int j = 0; j < deformations.length; j++) {
        sum += j == r ? 0 : rows[step][j] * deformations[j];
      }
      deformations[r] = -sum / rows[step][r];
    }
  }
}
