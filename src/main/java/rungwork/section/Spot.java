package rungwork.section;

import rungwork.fault.Guard;

/**
 * A place in a cross-section, or a vector in its plane.
 *
 * @param y to the left [m]
 * @param z up [m]
 */
public record Spot(double y, double z) {
  /** Refuses what is not finite. */
  public Spot {
    Guard.finite("y", y);
    Guard.finite("z", z);
  }

  static final Spot ORIGIN = new Spot(0, 0);

  /** The spot at a distance from the origin [m] in a direction from y towards z [rad]. */
  static Spot polar(double radius, double angle) {
    return new Spot(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  Spot plus(Spot other) {
    return new Spot(y + other.y, z + other.z);
  }

  Spot minus(Spot other) {
    return new Spot(y - other.y, z - other.z);
  }

  Spot times(double factor) {
    return new Spot(y * factor, z * factor);
  }

  /** The same place after half a turn about another. */
  Spot halfTurned(Spot about) {
    return about.times(2).minus(this);
  }

  /** The moment that a vector at this place has about the origin, positive from y to z. */
  double cross(Spot vector) {
    return y * vector.z - z * vector.y;
  }

  double size() {
    return Math.hypot(y, z);
  }
}
