package rungwork.solve;

/**
 * The lowest critical load between two bounds, by the count below a trial load. Where one critical
 * load alone is left between the bounds, the determinant changes its sign there and nowhere else,
 * and the next trial is where a chord through its values crosses zero; the value of a bound that
 * stays is halved (the Illinois method), and every fourth trial halves the bounds. The count alone
 * decides which bound a trial replaces.
 */
final class NearSearch {
  /** A trial keeps this part of the closeness asked for from the bounds, so that both move [1]. */
  private static final double MARGIN = 0.4;

  private final CriticalCount count;
  private double low;
  private double high;
  private CriticalCount.Trial above;

  /** Values of the determinant at the bounds over that without load. */
  private double atLow = 1;

  private double atHigh;

  /**
   * Begins between no load and a bound.
   *
   * @param count counts critical loads
   * @param above a factor that some lie below
   * @param there what a factorisation told there
   */
  NearSearch(CriticalCount count, double above, CriticalCount.Trial there) {
    this.count = count;
    high = above;
    this.above = there;
  }

  /** Narrows the bounds and gives the upper one; the equations are left at the lower one. */
  double upper(double close) {
    double unloaded = count.trial(0).logDeterminant();
    atHigh = -Math.exp(above.logDeterminant() - unloaded);
    boolean lowMoved = false;
    for (int step = 1; high - low > close * high; step++) {
      double place = step % 4 != 0 && above.isSimple() ? chord(close) : (low + high) / 2;
      CriticalCount.Trial trial = count.trial(place);
      double value = Math.exp(trial.logDeterminant() - unloaded);
      boolean moves = trial.count() == 0;
      boolean again = step > 1 && moves == lowMoved;
      if (moves) {
        low = place;
        atLow = value;
        atHigh = again ? atHigh / 2 : atHigh;
      } else {
        high = place;
        above = trial;
        atHigh = -value;
        atLow = again ? atLow / 2 : atLow;
      }
      lowMoved = moves;
    }
    count.trial(low);
    return high;
  }

  private double chord(double close) {
    double crossing = low + (high - low) * atLow / (atLow - atHigh);
    double margin = MARGIN * close * high;
    return Math.max(low + margin, Math.min(high - margin, crossing));
  }
}
