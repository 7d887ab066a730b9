package rungwork.solve;

/**
 * A member's stiffness with some of its end motions released: they are eliminated one after the
 * other, each from the condition that no force is passed on there.
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
   * Eliminates the released motions.
   *
   * @param full 12 × 12 stiffness with nothing released; its entries are replaced
   * @param released the released motions, 0 to 11
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

  /** The 12 × 12 stiffness felt by the nodes; rows and columns of released motions are zero. */
  double[][] stiffness() {
    return stiffness;
  }

  /** The end forces of the clamped member, replaced by those with its releases let go. */
  void release(double[] clamped) {
    for (int step = 0; step < released.length; step++) {
      int r = released[step];
      subtract(clamped, clamped[r] / rows[step][r], rows[step]);
      clamped[r] = 0;
    }
  }

  /**
   * The motions of the member's own ends: where a motion is released the member's end moves
   * otherwise than its node.
   *
   * @param nodes the motions of its nodes, 12; the released ones are replaced
   * @param clamped the end forces of the clamped member, 12, nothing released
   */
  void follow(double[] nodes, double[] clamped) {
    double[] forces = clamped.clone();
    double[] left = new double[released.length];
    for (int step = 0; step < released.length; step++) {
      left[step] = forces[released[step]];
      subtract(forces, left[step] / rows[step][released[step]], rows[step]);
    }
    for (int step = released.length - 1; step >= 0; step--) {
      int r = released[step];
      double sum = left[step];
      for (int j = 0; j < nodes.length; j++) {
        sum += j == r ? 0 : rows[step][j] * nodes[j];
      }
      nodes[r] = -sum / rows[step][r];
    }
  }
}
