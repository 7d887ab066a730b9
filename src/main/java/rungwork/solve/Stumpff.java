package rungwork.solve;

/**
 * What one integration after the other makes of cos and cosh. One row of functions serves
 * compression (z below zero), tension and no force at all:
 *
 * <pre>
 *   Cₙ(z) = Σ zʲ/(n + 2j)!      Cₙ = 1/n! + z·Cₙ₊₂
 *   C₀ = cosh √z = cos √−z      C₁ = sinh √z/√z = sin √−z/√−z
 * </pre>
 *
 * <p>xⁿCₙ(λx²) solves y″ = λy + xⁿ⁻²/(n − 2)!, which is why they build every beam under a normal
 * force. (Stumpff, Himmelsmechanik I, 1959; from memory. Power series of cosh for the sign of z.)
 */
final class Stumpff {
  /** The highest n that is given. */
  static final int HIGHEST = 5;

  /** Up to here the power series loses no digit, and beyond it the closed forms lose few [1]. */
  private static final double SERIES = 4;

  /** Terms after which a series for |z| up to {@link #SERIES} no longer changes. */
  private static final int TERMS = 16;

  /** Below this |z| half as many do. */
  private static final double SMALL = 0.3;

  private static final double[] FACTORIAL = {1, 1, 2, 6, 24, 120};

  /** 1/n!, what is left without a normal force. */
  private static final double[] WITHOUT_FORCE = {1, 1, 1 / 2.0, 1 / 6.0, 1 / 24.0, 1 / 120.0};

  private Stumpff() {}

  /** C₀ to C₅ at z. */
  static double[] of(double z) {
    if (z == 0) {
      return WITHOUT_FORCE.clone();
    }
    return Math.abs(z) < SERIES ? series(z) : closed(z);
  }

  private static double[] series(double z) {
    double[] c = new double[HIGHEST + 1];
    c[HIGHEST] = sum(HIGHEST, z);
    c[HIGHEST - 1] = sum(HIGHEST - 1, z);
    for (int n = HIGHEST - 2; n >= 0; n--) {
      c[n] = 1 / FACTORIAL[n] + z * c[n + 2];
    }
    return c;
  }

  private static double sum(int n, double z) {
    double sum = 0;
    for (int j = Math.abs(z) < SMALL ? TERMS / 2 : TERMS; j > 0; j--) {
      sum = (1 + sum) * z / ((n + 2 * j) * (n + 2 * j - 1));
    }
    return (1 + sum) / FACTORIAL[n];
  }

  private static double[] closed(double z) {
    double root = Math.sqrt(Math.abs(z));
    double[] c = new double[HIGHEST + 1];
    c[0] = z > 0 ? Math.cosh(root) : Math.cos(root);
    c[1] = (z > 0 ? Math.sinh(root) : Math.sin(root)) / root;
    for (int n = 2; n <= HIGHEST; n++) {
      c[n] = (c[n - 2] - 1 / FACTORIAL[n - 2]) / z;
    }
    return c;
  }
}
