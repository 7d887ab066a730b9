package rungwork.solve;

import java.util.Arrays;

/**
 * A symmetric matrix whose entries farther than the band from the diagonal are zero. Only the lower
 * half is kept, column by column, so that a column under its diagonal entry lies together.
 */
final class BandMatrix {
  private final int size;
  private final int band;
  private final double[] columns;

  /**
   * A matrix of zeros.
   *
   * @param size rows
   * @param band largest distance of a non-zero entry from the diagonal, at least 0
   */
  BandMatrix(int size, int band) {
    this.size = size;
    this.band = band;
    columns = new double[Math.multiplyExact(size, band + 1)];
  }

  int size() {
    return size;
  }

  int band() {
    return band;
  }

  /** Sets every entry to zero. */
  void clear() {
    Arrays.fill(columns, 0);
  }

  /** Adds to an entry; an entry of the upper half is its twin's and is passed over. */
  void add(int row, int column, double value) {
    if (column <= row) {
      columns[column * (band + 1) + row - column] += value;
    }
  }

  /** The diagonal entries, row by row. */
  double[] diagonal() {
    double[] diagonal = new double[size];
    for (int j = 0; j < size; j++) {
      diagonal[j] = columns[j * (band + 1)];
    }
    return diagonal;
  }

  /** The largest sum of a row's entries without their signs, once every diagonal entry is 1. */
  double scaledNorm() {
    double[] sums = new double[size];
    for (int j = 0; j < size; j++) {
      int column = j * (band + 1);
      sums[j] += 1;
      for (int i = j + 1; i <= Math.min(j + band, size - 1); i++) {
        double scale = Math.sqrt(columns[column] * columns[i * (band + 1)]);
        double entry = Math.abs(columns[column + i - j]) / scale;
        sums[i] += entry;
        sums[j] += entry;
      }
    }
    return Arrays.stream(sums).max().orElse(1);
  }

  /**
   * The entries themselves: column j starts at j·(band + 1) with its diagonal entry, the rows below
   * follow. What would lie under the last row is never used.
   */
  double[] columns() {
    return columns;
  }
}
