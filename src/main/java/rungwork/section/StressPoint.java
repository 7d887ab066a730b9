package rungwork.section;

import rungwork.fault.Guard;

/**
 * A point of a cross-section where the stress is worth knowing.
 *
 * <p>Normal stress there: σ = N/A + My·z/Iy − Mz·y/Iz. Shear stress along the wall there: τ =
 * Vy·perVy + Vz·perVz + T·perT.
 *
 * @param name where it is, such as {@code top left corner}
 * @param y from the centroid [m]
 * @param z from the centroid [m]
 * @param perVy shear stress for a unit shear force along y through the shear centre [1/m²]
 * @param perVz shear stress for a unit shear force along z through the shear centre [1/m²]
 * @param perT shear stress for a unit torque, free to warp [1/m³]
 * @param sectorial sectorial coordinate ω about the shear centre: under a twist θ' per length the
 *     fibre moves by −θ'·ω along the beam; not counted in solid bars and round tubes [m²]
 */
public record StressPoint(
    String name, double y, double z, double perVy, double perVz, double perT, double sectorial) {
  /** Refuses what is not finite. */
  public StressPoint {
    Guard.finite("y of " + name, y);
    Guard.finite("z of " + name, z);
    Guard.finite("perVy of " + name, perVy);
    Guard.finite("perVz of " + name, perVz);
    Guard.finite("perT of " + name, perT);
    Guard.finite("sectorial of " + name, sectorial);
  }

  /** The same point where only a share of the forces comes. */
  StressPoint times(double share) {
    return new StressPoint(name, y, z, perVy * share, perVz * share, perT * share, sectorial);
  }

  StressPoint moved(Spot by) {
    return new StressPoint(name, y + by.y(), z + by.z(), perVy, perVz, perT, sectorial);
  }

  StressPoint turned(Turn turn) {
    Spot place = turn.of(new Spot(y, z));
    Spot shear = turn.of(new Spot(perVy, perVz));
    String part = Label.part(name);
    return new StressPoint(
        Label.sided(place, part),
        place.y(),
        place.z(),
        shear.y(),
        shear.z(),
        turn.handedness() * perT,
        turn.handedness() * sectorial);
  }
}
