package rungwork.report;

/**
 * A place on a drawing.
 *
 * @param x to the right [px]
 * @param y down [px]
 */
record Spot(double x, double y) {
  /** This place moved. */
  Spot plus(double dx, double dy) {
    return new Spot(x + dx, y + dy);
  }

  /** The place that lies a part of the way towards another. */
  Spot towards(Spot other, double part) {
    return new Spot(x + part * (other.x - x), y + part * (other.y - y));
  }

  /** The distance to another place [px]. */
  double distance(Spot other) {
    return Math.hypot(other.x - x, other.y - y);
  }
}
