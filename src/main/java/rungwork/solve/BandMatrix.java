package rungwork.solve;

/**
 * A symmetric matrix whose entries farther than the band from the diagonal are zero. Only the lower
 * half is kept, row by row.
 */
final class BandMatrix {
  private final int size;
  private final int band;
  private final double[] lower;

  /**
   * A matrix of zeros.
   *
   * @param size rows
   * @param band largest distance of a non-zero entry from the diagonal, at least 0
   */
  BandMatrix(int size, int band) {
    this.size = size;
    this.band = band;
    lower = new double[size * (band + 1)];
  }

  int size() {
    return size;
  }

  int band() {
    return band;
  }

  /** The entry of row {@code i} and column {@code j}, where i − band ≤ j ≤ i. */
  double at(int i, int j) {
    return lower[place(i, j)];
  }

  /** Replaces an entry of the lower half. */
  void set(int i, int j, double value) {
    lower[place(i, j)] = value;
  }

  /** Adds to an entry; an entry of the upper half is its twin's and is passed over. */
  void add(int i, int j, double value) {
    if (j <= i) {
      lower[place(i, j)] += value;
    }
  }

  /** The first column of a row that can be non-zero. */
  int firstColumn(int i) {
    return Math.max(0, i - band);
  }

  private int place(int i, int j) {
    return i * (band + 1) + band + j - i;
  }
}
