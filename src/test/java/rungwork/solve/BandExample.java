package rungwork.solve;

/**
 * The equations of a ladder of 24 nodes in one action by size: 72 unknowns, half-bandwidth 8, 8
 * right-hand sides, for comparison with LAPACK's {@code dpbsv} in {@code src/bench/c/band.c}.
 */
public final class BandExample {
  private static final int SIZE = 72;
  private static final int BAND = 8;
  private static final int CASES = BandFactor.CASES;

  private final double[] matrix = new double[SIZE * (BAND + 1)];
  private final double[] sides = new double[SIZE * CASES];
  private final BandFactor factor = new BandFactor(new BandMatrix(SIZE, BAND));
  private final double[] values = new double[SIZE * CASES];

  /** Fills matrix and right-hand sides; the same numbers as in C. */
  public BandExample() {
    for (int j = 0; j < SIZE; j++) {
      for (int i = 0; i <= BAND; i++) {
        matrix[j * (BAND + 1) + i] = i == 0 ? 20.0 + j % 5 : 1.0 / (i + j % 3 + 1);
      }
    }
    for (int c = 0; c < CASES; c++) {
      for (int i = 0; i < SIZE; i++) {
        sides[i * CASES + c] = (c * SIZE + i) * 7 % 11 - 5;
      }
    }
  }

  /** Copies, factorises and solves, as the program in C does. */
  public void solve() {
    System.arraycopy(matrix, 0, factor.matrix().columns(), 0, matrix.length);
    System.arraycopy(sides, 0, values, 0, sides.length);
    if (!factor.factorise()) {
      throw new IllegalStateException("the matrix is positive definite");
    }
    factor.solveCases(values);
  }

  /**
   * What shows that both programs solve the same.
   *
   * @return all values without their signs, added
   */
  public double sum() {
    double sum = 0;
    for (double value : values) {
      sum += Math.abs(value);
    }
    return sum;
  }
}
