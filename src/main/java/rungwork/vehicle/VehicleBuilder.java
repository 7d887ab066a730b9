package rungwork.vehicle;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Mass;
import rungwork.frame.Point;

/** Collects the parts of a vehicle in any order; {@link #build()} checks all. */
public final class VehicleBuilder {
  final String name;
  final Map<String, Mass> masses = new LinkedHashMap<>();
  final List<Vehicle.Seat> seats = new ArrayList<>();
  double wheelbase = Double.NaN;
  double frontRollShare = Double.NaN;
  private final Map<Axle, Double> tracks = new EnumMap<>(Axle.class);
  private final Map<Axle, Map<Side, List<String>>> holders = new EnumMap<>(Axle.class);

  VehicleBuilder(String name) {
    this.name = name;
  }

  /**
   * Says how far the rear axle is behind the front axle.
   *
   * @param length the wheelbase, above zero
   * @return this builder
   */
  public VehicleBuilder wheelbase(Quantity<Length> length) {
    wheelbase = Guard.positive("wheelbase", si("wheelbase", length), Scale.MM);
    return this;
  }

  /**
   * Says how far the wheels of each axle are apart.
   *
   * @param front front track, above zero
   * @param rear rear track, above zero
   * @return this builder
   */
  public VehicleBuilder track(Quantity<Length> front, Quantity<Length> rear) {
    tracks.put(Axle.FRONT, Guard.positive("front track", si("front track", front), Scale.MM));
    tracks.put(Axle.REAR, Guard.positive("rear track", si("rear track", rear), Scale.MM));
    return this;
  }

  /**
   * Says which part of the load that cornering moves across is moved by the front axle: its share
   * of the roll stiffness.
   *
   * @param share from 0 to 1
   * @return this builder
   */
  public VehicleBuilder frontRollShare(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new ModelException(
          "front roll share " + Scale.NUMBER.show(share) + " is outside 0 to 1");
    }
    frontRollShare = share;
    return this;
  }

  /**
   * Says which mounts hold a wheel.
   *
   * @param axle its axle
   * @param side its side
   * @param mounts names of the ladder's features, at least one
   * @return this builder
   */
  public VehicleBuilder wheel(Axle axle, Side side, String... mounts) {
    Map<Side, List<String>> sides =
        holders.computeIfAbsent(axle, none -> new EnumMap<>(Side.class));
    sides.put(side, List.of(mounts));
    return this;
  }

  /**
   * Adds a point mass that moves with the frame.
   *
   * @param mass its name
   * @param size how heavy
   * @param at where its centre of mass is
   * @param carriers names of the ladder's features that carry it, at least one
   * @return this builder
   */
  public VehicleBuilder mass(
      String mass, Quantity<javax.measure.quantity.Mass> size, Point at, String... carriers) {
    return mass(Mass.point(mass, si("mass " + mass, size), at, List.of(carriers)));
  }

  /**
   * Adds a mass of any kind.
   *
   * @param mass the mass, its carriers named by the ladder's features
   * @return this builder
   */
  public VehicleBuilder mass(Mass mass) {
    if (masses.putIfAbsent(mass.name(), mass) != null) {
      throw new ModelException(
          "vehicle " + name + " has two masses named " + mass.name() + "; rename one");
    }
    return this;
  }

  /**
   * Says that a mass sits on springs, rubber or a belt, so that a sudden deceleration gives it more
   * than the vehicle's.
   *
   * @param mass name of a mass already given
   * @param amplification how much more, from 1 to 2
   * @return this builder
   */
  public VehicleBuilder sprung(String mass, double amplification) {
    Mass rigid = masses.get(mass);
    if (rigid == null) {
      throw new ModelException(
          "vehicle "
              + name
              + " has no mass named "
              + mass
              + "; it has "
              + String.join(", ", masses.keySet()));
    }
    masses.put(
        mass,
        new Mass(
            rigid.name(),
            rigid.kilograms(),
            rigid.at(),
            rigid.own(),
            rigid.carriers(),
            amplification));
    return this;
  }

  /**
   * Adds a seated person: a mass, and a place whose acceleration is shown.
   *
   * @param who such as {@code driver}
   * @param size how heavy
   * @param at the seated person's centre of mass
   * @param carriers names of the ladder's features that carry seat and belts, at least one
   * @return this builder
   */
  public VehicleBuilder seat(
      String who, Quantity<javax.measure.quantity.Mass> size, Point at, String... carriers) {
    mass(who, size, at, carriers);
    seats.add(new Vehicle.Seat(who, at));
    return this;
  }

  /**
   * Checks everything and makes the vehicle.
   *
   * @return the vehicle
   * @throws ModelException naming the part that is wrong
   */
  public Vehicle build() {
    if (masses.isEmpty()) {
      throw new ModelException("vehicle " + name + " has no masses; its load is nothing");
    }
    refuseMissing("wheelbase", wheelbase);
    refuseMissing("track", tracks.getOrDefault(Axle.FRONT, Double.NaN));
    refuseMissing("front roll share", frontRollShare);
    return new Vehicle(this);
  }

  /**
   * The four wheels: front left, front right, rear left, rear right.
   *
   * @return the wheels
   */
  List<Wheel> wheels() {
    List<Wheel> wheels = new ArrayList<>();
    for (Axle axle : Axle.values()) {
      for (Side side : Side.values()) {
        double x = axle == Axle.FRONT ? 0 : -wheelbase;
        Point contact = new Point(x, side.sign() * tracks.get(axle) / 2, 0);
        List<String> mounts = holders.getOrDefault(axle, Map.of()).getOrDefault(side, List.of());
        wheels.add(new Wheel(axle, side, contact, mounts));
      }
    }
    return wheels;
  }

  private void refuseMissing(String what, double value) {
    if (Double.isNaN(value)) {
      throw new ModelException("vehicle " + name + " has no " + what + "; give it one");
    }
  }
}
