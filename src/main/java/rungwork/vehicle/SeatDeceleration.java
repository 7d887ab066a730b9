package rungwork.vehicle;

import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.solve.RigidAcceleration;

/**
 * What the vehicle does at a seat. A person on a belt sees more: up to twice it, by the stated
 * amplification or by a simulation of the crash.
 *
 * @param seat the seat's name
 * @param rearwards the deceleration along x [m/s²]
 * @param magnitude of the whole acceleration there [m/s²]; of an impact without the 1 g of standing
 */
public record SeatDeceleration(String seat, double rearwards, double magnitude) {
  /** Refuses what is not finite. */
  public SeatDeceleration {
    Guard.solved("deceleration of " + seat, rearwards + magnitude);
  }

  /** Less than this is rounding of a steady motion [m/s²]. */
  private static final double NOTHING = 1e-9;

  static SeatDeceleration of(Vehicle.Seat seat, RigidAcceleration vehicle) {
    RigidAcceleration there = vehicle.at(seat.at());
    double magnitude = Math.sqrt(square(there.ax()) + square(there.ay()) + square(there.az()));
    return new SeatDeceleration(seat.name(), -there.ax(), magnitude);
  }

  private static double square(double value) {
    return value * value;
  }

  @Override
  public String toString() {
    return seat + ": " + show(rearwards) + " rearwards, " + show(magnitude) + " in all";
  }

  private static String show(double value) {
    return Scale.G.show(Math.abs(value) < NOTHING ? 0 : value, 3);
  }
}
