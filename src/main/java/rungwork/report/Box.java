package rungwork.report;

/**
 * An upright rectangle on a drawing.
 *
 * @param left [px]
 * @param top [px]
 * @param right [px]
 * @param bottom [px]
 */
record Box(double left, double top, double right, double bottom) {
  /** Nothing yet: grows with the first place put in. */
  static final Box EMPTY =
      new Box(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  /** The smallest box around both. */
  Box and(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** This box grown to hold a place. */
  Box and(Spot spot) {
    return and(new Box(spot.x(), spot.y(), spot.x(), spot.y()));
  }

  /** This box grown on all sides. */
  Box grown(double margin) {
    return new Box(left - margin, top - margin, right + margin, bottom + margin);
  }

  /** Whether both share some room. */
  boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }
}
