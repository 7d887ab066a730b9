package rungwork.solve;

/**
 * The factors L D Lᵀ of a symmetric band matrix, L with ones on its diagonal (Cholesky's method
 * without square roots; Golub and Van Loan, Matrix Computations, from memory).
 *
 * <p>A stiffness matrix that resists every motion has pivots above zero. A pivot is what is left of
 * a diagonal entry after all earlier unknowns have given way, so its ratio to the entry says how
 * much of the resistance is real: at {@value #UNRESISTED} of it only rounding is left.
 *
 * <p>The room's inner loops are here. Each column is taken from all later ones at once, so no sum
 * waits for another; {@link #CASES} right-hand sides are solved side by side for the same reason.
 */
final class BandFactor {
  /**
   * A pivot below this part of its diagonal entry resists nothing: some thousand roundings of a
   * double [1].
   */
  static final double UNRESISTED = 1e-12;

  /** A pivot below this part of its column would leave nothing of the other columns' digits [1]. */
  private static final double VANISHED = 1e-10;

  /** Right-hand sides that {@link #solveCases} solves side by side. */
  static final int CASES = 8;

  private final BandMatrix matrix;
  private final int size;
  private final int band;
  private final double[] columns;
  private double[] diagonal;
  private int freeAt;

  /**
   * Takes a matrix over; its entries are replaced when it is factorised.
   *
   * @param matrix the matrix
   */
  BandFactor(BandMatrix matrix) {
    this.matrix = matrix;
    size = matrix.size();
    band = matrix.band();
    columns = matrix.columns();
    diagonal = matrix.diagonal();
  }

  /** The matrix, to be filled anew before each factorisation. */
  BandMatrix matrix() {
    return matrix;
  }

  /**
   * Factorises the matrix in place, up to the first motion that nothing resists.
   *
   * @return whether every motion is resisted
   */
  boolean factorise() {
    diagonal = matrix.diagonal();
    return factorise(diagonal, UNRESISTED);
  }

  /**
   * Factorises the matrix in place, up to the first motion that hardly anything resists.
   *
   * @param reference what each motion is resisted by when all others are held
   * @param unresisted part of it below which a motion counts as free [1]
   * @return whether every motion is resisted
   */
  boolean factorise(double[] reference, double unresisted) {
    for (freeAt = 0; freeAt < size; freeAt++) {
      if (!(columns[freeAt * (band + 1)] > unresisted * reference[freeAt])) {
        return false;
      }
      eliminate(freeAt);
    }
    return true;
  }

  /**
   * Factorises the matrix in place, whatever the sign of its pivots. By Sylvester's law of inertia
   * as many pivots are below zero as the matrix has values below zero. A pivot that vanishes beside
   * its column is moved off zero, which changes the matrix by {@value #VANISHED} of that column.
   *
   * @return how many are below zero
   */
  int factoriseThrough() {
    int below = 0;
    for (int j = 0; j < size; j++) {
      int column = j * (band + 1);
      double under = largestUnder(column, Math.min(band, size - 1 - j));
      double least = Math.max(VANISHED * under, Double.MIN_NORMAL);
      if (Math.abs(columns[column]) < least) {
        columns[column] = Math.copySign(least, columns[column]);
      }
      below += columns[column] < 0 ? 1 : 0;
      eliminate(j);
    }
    return below;
  }

  /** The logarithm of the size of the determinant, once it is factorised. */
  double logDeterminant() {
    double sum = 0;
    for (int j = 0; j < size; j++) {
      sum += Math.log(Math.abs(columns[j * (band + 1)]));
    }
    return sum;
  }

  private double largestUnder(int column, int reach) {
    double largest = 0;
    for (int i = 1; i <= reach; i++) {
      largest = Math.max(largest, Math.abs(columns[column + i]));
    }
    return largest;
  }

  private void eliminate(int j) {
    int column = j * (band + 1);
    int reach = Math.min(band, size - 1 - j);
    double pivot = columns[column];
    for (int i = 1; i <= reach; i++) {
      double ratio = columns[column + i] / pivot;
      if (ratio != 0) {
        subtract((j + i) * (band + 1), ratio, column + i, reach - i);
      }
    }
    for (int i = 1; i <= reach; i++) {
      columns[column + i] /= pivot;
    }
  }

  private void subtract(int to, double ratio, int from, int last) {
    for (int k = 0; k <= last; k++) {
      columns[to + k] -= ratio * columns[from + k];
    }
  }

  /** The entry of the matrix on its diagonal, before it was factorised. */
  double diagonal(int row) {
    return diagonal[row];
  }

  /** The motion that meets no resistance; its largest entry is of no particular size. */
  double[] freeMotion() {
    double[] motion = new double[size];
    motion[freeAt] = 1;
    for (int i = freeAt - 1; i >= 0; i--) {
      motion[i] = remainder(motion, i, freeAt);
    }
    return motion;
  }

  /** Replaces a right-hand side by its solution. */
  void solve(double[] values) {
    for (int j = 0; j < size; j++) {
      int column = j * (band + 1) - j;
      double value = values[j];
      for (int i = j + 1; i <= Math.min(j + band, size - 1); i++) {
        values[i] -= columns[column + i] * value;
      }
    }
    for (int i = size - 1; i >= 0; i--) {
      values[i] /= columns[i * (band + 1)];
      values[i] = remainder(values, i, size - 1);
    }
  }

  private double remainder(double[] values, int i, int last) {
    int column = i * (band + 1) - i;
    double sum = values[i];
    for (int k = i + 1; k <= Math.min(i + band, last); k++) {
      sum -= columns[column + k] * values[k];
    }
    return sum;
  }

  /**
   * Replaces {@link #CASES} right-hand sides by their solutions.
   *
   * @param values of length size · {@link #CASES}, an unknown's values in all cases lying together
   */
  void solveCases(double[] values) {
    for (int i = 1; i < size; i++) {
      int first = Math.max(0, i - band);
      takeAway(values, i, first, i - first, first * band + i, band);
    }
    for (int i = size - 1; i >= 0; i--) {
      divide(values, i, columns[i * (band + 1)]);
      takeAway(values, i, i + 1, Math.min(band, size - 1 - i), i * (band + 1) + 1, 1);
    }
  }

  private static void divide(double[] values, int row, double pivot) {
    for (int at = row * CASES; at < (row + 1) * CASES; at++) {
      values[at] /= pivot;
    }
  }

  /**
   * Subtracts, in all cases, some unknowns times their factors from another. The sums are eight
   * locals so that they stay in registers: a loop over them takes twice the time.
   *
   * @param row the unknown that is left with the rest
   * @param first the first of the unknowns, which follow each other
   * @param count how many
   * @param place where the first factor stands
   * @param step from one factor to the next
   */
  private void takeAway(double[] values, int row, int first, int count, int place, int step) {
    int at = row * CASES;
    double s0 = values[at];
    double s1 = values[at + 1];
    double s2 = values[at + 2];
    double s3 = values[at + 3];
    double s4 = values[at + 4];
    double s5 = values[at + 5];
    double s6 = values[at + 6];
    double s7 = values[at + 7];
    int from = first * CASES;
    for (int k = 0; k < count; k++) {
      double factor = columns[place + k * step];
      s0 -= factor * values[from];
      s1 -= factor * values[from + 1];
      s2 -= factor * values[from + 2];
      s3 -= factor * values[from + 3];
      s4 -= factor * values[from + 4];
      s5 -= factor * values[from + 5];
      s6 -= factor * values[from + 6];
      s7 -= factor * values[from + 7];
      from += CASES;
    }
    values[at] = s0;
    values[at + 1] = s1;
    values[at + 2] = s2;
    values[at + 3] = s3;
    values[at + 4] = s4;
    values[at + 5] = s5;
    values[at + 6] = s6;
    values[at + 7] = s7;
  }
}
