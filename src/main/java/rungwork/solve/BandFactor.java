package rungwork.solve;

/**
 * The factors L D Lᵀ of a symmetric band matrix, L with ones on its diagonal (Cholesky's method
 * without square roots; Golub and Van Loan, Matrix Computations, from memory).
 *
 * <p>A stiffness matrix that resists every motion has pivots above zero. A pivot is what is left of
 * a diagonal entry after all earlier unknowns have given way, so its ratio to the entry says how
 * much of the resistance is real: at {@value #UNRESISTED} of it only rounding is left.
 */
final class BandFactor {
  /**
   * A pivot below this part of its diagonal entry resists nothing: some thousand roundings of a
   * double [1].
   */
  static final double UNRESISTED = 1e-12;

  private final BandMatrix factor;
  private final int freeAt;

  /**
   * Factorises a matrix in place, up to the first motion that nothing resists.
   *
   * @param matrix the matrix; its entries are replaced
   */
  BandFactor(BandMatrix matrix) {
    factor = matrix;
    freeAt = factorise();
  }

  private int factorise() {
    for (int i = 0; i < factor.size(); i++) {
      double diagonal = factor.at(i, i);
      reduceRow(i);
      if (!(factor.at(i, i) > UNRESISTED * diagonal)) {
        return i;
      }
    }
    return factor.size();
  }

  private void reduceRow(int i) {
    int first = factor.firstColumn(i);
    for (int j = first; j < i; j++) {
      double sum = factor.at(i, j);
      for (int k = Math.max(first, factor.firstColumn(j)); k < j; k++) {
        sum -= factor.at(i, k) * factor.at(j, k);
      }
      factor.set(i, j, sum);
    }
    double pivot = factor.at(i, i);
    for (int j = first; j < i; j++) {
      double reduced = factor.at(i, j);
      double ratio = reduced / factor.at(j, j);
      pivot -= reduced * ratio;
      factor.set(i, j, ratio);
    }
    factor.set(i, i, pivot);
  }

  /** Whether some motion meets no resistance. */
  boolean isFree() {
    return freeAt < factor.size();
  }

  /** The motion that meets no resistance; its largest entry is of no particular size. */
  double[] freeMotion() {
    double[] motion = new double[factor.size()];
    motion[freeAt] = 1;
    substituteBack(motion, freeAt);
    return motion;
  }

  /** Replaces a right-hand side by its solution. */
  void solve(double[] values) {
    for (int i = 0; i < factor.size(); i++) {
      double sum = values[i];
      for (int j = factor.firstColumn(i); j < i; j++) {
        sum -= factor.at(i, j) * values[j];
      }
      values[i] = sum;
    }
    for (int i = 0; i < factor.size(); i++) {
      values[i] /= factor.at(i, i);
    }
    substituteBack(values, factor.size() - 1);
  }

  private void substituteBack(double[] values, int last) {
    for (int i = last; i > 0; i--) {
      for (int j = factor.firstColumn(i); j < i; j++) {
        values[j] -= factor.at(i, j) * values[i];
      }
    }
  }
}
