package rungwork.vehicle;

import java.util.Locale;

/** Left or right as the driver sees it. */
public enum Side {
  /** Towards +y. */
  LEFT(1),
  /** Towards −y. */
  RIGHT(-1);

  private final int sign;

  Side(int sign) {
    this.sign = sign;
  }

  /**
   * The sign of y on this side.
   *
   * @return 1 on the left, −1 on the right
   */
  public int sign() {
    return sign;
  }

  /**
   * The other side.
   *
   * @return right for left, left for right
   */
  public Side other() {
    return this == LEFT ? RIGHT : LEFT;
  }

  /**
   * The side in a sentence.
   *
   * @return {@code left} or {@code right}
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
