package rungwork.solve;

/**
 * The motions of all nodes, each as the sum of a double and a much smaller one. A long chain of
 * short beams moves far as a whole while each beam hardly deforms; the small part keeps the digits
 * of those deformations.
 */
final class Motions {
  private final double[] large;
  private final double[] small;

  /** Motions that are all zero. */
  Motions(int count) {
    large = new double[count];
    small = new double[count];
  }

  double get(int motion) {
    return large[motion];
  }

  /** Adds to a motion, keeping what rounding would lose (Knuth's two-sum, from memory). */
  void add(int motion, double value) {
    double sum = large[motion] + value;
    double added = sum - large[motion];
    double lost = (large[motion] - (sum - added)) + (value - added);
    small[motion] += lost;
    large[motion] = sum;
  }

  /**
   * The sum of factors times motions, as if in twice the digits and then rounded (Ogita, Rump and
   * Oishi, Accurate sum and dot product, 2005, algorithm Dot2, from memory).
   *
   * @param factors as many as places
   * @param places which motions
   * @return the sum
   */
  double dot(double[] factors, int[] places) {
    double sum = 0;
    double rest = 0;
    for (int i = 0; i < factors.length; i++) {
      double factor = factors[i];
      double motion = large[places[i]];
      double product = factor * motion;
      double next = sum + product;
      double added = next - sum;
      rest +=
          (sum - (next - added))
              + (product - added)
              + Math.fma(factor, motion, -product)
              + factor * small[places[i]];
      sum = next;
    }
    return sum + rest;
  }
}
