package rungwork.impact;

/**
 * The level that a signal passes for a given time in all: of a chest deceleration the 3 ms value
 * (cumulative, as 49 CFR 571.208 S6 counts it; from memory).
 */
final class Clip {
  private static final int HALVINGS = 60;

  private Clip() {}

  static double level(double[] times, double[] values, double duration) {
    double low = 0;
    double high = 0;
    for (double value : values) {
      high = Math.max(high, value);
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (above(times, values, middle) >= duration) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** For how long the signal, straight between its points, is at or above a level. */
  private static double above(double[] times, double[] values, double level) {
    double sum = 0;
    for (int i = 1; i < times.length; i++) {
      sum += (times[i] - times[i - 1]) * part(values[i - 1] - level, values[i] - level);
    }
    return sum;
  }

  private static double part(double from, double to) {
    if (from >= 0 && to >= 0) {
      return 1;
    }
    if (from < 0 && to < 0) {
      return 0;
    }
    return Math.max(from, to) / Math.abs(to - from);
  }
}
