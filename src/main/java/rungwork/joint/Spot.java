package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;

/**
 * A place in a joint's face.
 *
 * @param x along the tab's foot [m]
 * @param y across the tab [m]
 */
public record Spot(double x, double y) {
  /** Refuses a coordinate that is not finite. */
  public Spot {
    Guard.finite("x", x);
    Guard.finite("y", y);
  }

  /**
   * A place from typed lengths.
   *
   * @param x along the tab's foot
   * @param y across the tab
   * @return the place
   */
  public static Spot at(Quantity<Length> x, Quantity<Length> y) {
    return new Spot(si("x", x), si("y", y));
  }

  /**
   * The straight distance to another place.
   *
   * @param other the other place
   * @return the distance [m]
   */
  public double distance(Spot other) {
    return Math.hypot(other.x - x, other.y - y);
  }
}
