package rungwork.vehicle;

import java.util.Locale;

/** One of the two axles. */
public enum Axle {
  /** At x = 0. */
  FRONT,
  /** One wheelbase behind. */
  REAR;

  /**
   * The axle in a sentence.
   *
   * @return {@code front} or {@code rear}
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
