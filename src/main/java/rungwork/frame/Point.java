package rungwork.frame;

import static rungwork.quantity.Quantities.si;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;

/**
 * A place in vehicle axes (ISO 8855): x forward, y to the left, z up, origin on the ground under
 * the middle of the front axle.
 *
 * @param x forward [m]
 * @param y to the left [m]
 * @param z up [m]
 */
public record Point(double x, double y, double z) {
  /** Refuses a coordinate that is not finite. */
  public Point {
    Guard.finite("x", x);
    Guard.finite("y", y);
    Guard.finite("z", z);
  }

  /**
   * A place from typed lengths.
   *
   * @param x forward
   * @param y to the left
   * @param z up
   * @return the place
   */
  public static Point at(Quantity<Length> x, Quantity<Length> y, Quantity<Length> z) {
    return new Point(si("x", x), si("y", y), si("z", z));
  }

  /**
   * This place moved.
   *
   * @param dx forward [m]
   * @param dy to the left [m]
   * @param dz up [m]
   * @return the moved place
   */
  public Point plus(double dx, double dy, double dz) {
    return new Point(x + dx, y + dy, z + dz);
  }

  /**
   * The straight distance to another place.
   *
   * @param other the other place
   * @return the distance [m]
   */
  public double distance(Point other) {
    return Math.sqrt(
        (x - other.x) * (x - other.x)
            + (y - other.y) * (y - other.y)
            + (z - other.z) * (z - other.z));
  }
}
