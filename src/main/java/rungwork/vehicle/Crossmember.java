package rungwork.vehicle;

import rungwork.fault.Guard;
import rungwork.frame.Stock;

/**
 * A rung between the rails, square across the vehicle.
 *
 * @param name unique in its ladder, such as {@code front}
 * @param x its station [m]
 * @param stock what it is cut from
 */
public record Crossmember(String name, double x, Stock stock) {
  /** Refuses a crossmember without a name. */
  public Crossmember {
    name = Guard.name("crossmember", name);
    Guard.finite("station of crossmember " + name, x);
  }

  /**
   * Its name as a part.
   *
   * @return for example {@code front crossmember}
   */
  public String part() {
    return name + " crossmember";
  }
}
