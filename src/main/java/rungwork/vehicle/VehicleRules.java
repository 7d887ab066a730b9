package rungwork.vehicle;

import java.util.List;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Mass;

/**
 * What must be true of a vehicle.
 *
 * @param vehicle the vehicle
 */
record VehicleRules(Vehicle vehicle) {

  /** Refuses one that does not stand on all its wheels. */
  void check() {
    refuseLiftedAxle();
    refuseLiftedSide();
  }

  /** Refuses masses and wheels that a ladder cannot carry, and masses named like its pieces. */
  void checkCarriers(Ladder ladder) {
    vehicle.masses().forEach(mass -> refuseUnknown("mass " + mass.name(), mass.carriers(), ladder));
    vehicle.wheels().forEach(wheel -> refuseUnknown(wheel.name(), wheel.carriers(), ladder));
    vehicle.masses().forEach(mass -> refuseTwin(mass, ladder));
  }

  private void refuseLiftedAxle() {
    double x = vehicle.centreOfMass().x();
    if (x >= 0 || x <= -vehicle.wheelbase()) {
      throw new ModelException(
          "the centre of mass of vehicle "
              + vehicle.name()
              + " is at x "
              + Scale.MM.show(x)
              + ", outside the axles at 0 and "
              + Scale.MM.show(-vehicle.wheelbase())
              + ": a wheel would lift");
    }
  }

  private void refuseLiftedSide() {
    double y = vehicle.centreOfMass().y();
    for (Axle axle : Axle.values()) {
      if (Math.abs(y) >= vehicle.track(axle) / 2) {
        throw new ModelException(
            "the centre of mass of vehicle "
                + vehicle.name()
                + " is at y "
                + Scale.MM.show(y)
                + ", outside the "
                + axle.word()
                + " track of "
                + Scale.MM.show(vehicle.track(axle))
                + ": a wheel would lift");
      }
    }
  }

  private static void refuseTwin(Mass mass, Ladder ladder) {
    if (ladder.masses().stream().anyMatch(own -> own.name().equals(mass.name()))) {
      throw new ModelException(
          "mass "
              + mass.name()
              + " has the name of a piece of ladder "
              + ladder.name()
              + ", which counts by itself; rename or remove it");
    }
  }

  private static void refuseUnknown(String what, List<String> carriers, Ladder ladder) {
    for (String carrier : carriers) {
      if (ladder.layout().node(carrier).isEmpty()) {
        throw new ModelException(
            what
                + " is carried by "
                + carrier
                + ", which ladder "
                + ladder.name()
                + " does not have; it has "
                + String.join(", ", ladder.layout().features()));
      }
    }
  }
}
