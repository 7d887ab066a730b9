package rungwork.vehicle;

import rungwork.fault.Guard;
import rungwork.frame.Point;

/**
 * A place where a person sits, whose acceleration is worth knowing.
 *
 * @param name who sits there, such as {@code driver}
 * @param at the seated person's centre of mass
 */
public record Seat(String name, Point at) {
  /** Refuses a seat without a name. */
  public Seat {
    name = Guard.name("seat", name);
  }
}
