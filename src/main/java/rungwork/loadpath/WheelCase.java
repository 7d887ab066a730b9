package rungwork.loadpath;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Wrench;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;
import rungwork.vehicle.Wheel;

/**
 * What the ground does to one wheel in a load case.
 *
 * @param name such as {@code pothole braking}
 * @param source where its factors come from
 * @param assumptions what was assumed to make it
 * @param ground the ground's force and moment on a tyre
 */
public record WheelCase(String name, String source, List<String> assumptions, Ground ground) {
  private static final double POTHOLE_VERTICAL = 2;
  private static final double POTHOLE_BRAKING = 1.1;
  private static final double LEAST_KERB = 1.4;
  private static final double MOST_KERB = 1.75;

  /** Copies its assumptions. */
  public WheelCase {
    name = Guard.name("wheel case", name);
    assumptions = List.copyOf(assumptions);
  }

  /** The ground's force and moment on a tyre, at the contact. */
  @FunctionalInterface
  public interface Ground {
    /**
     * The force and moment in vehicle axes.
     *
     * @param vehicle the vehicle
     * @param ladder its frame
     * @param wheel the wheel
     * @return the ground's wrench at the contact
     */
    Wrench on(Vehicle vehicle, Ladder ladder, Wheel wheel);
  }

  /**
   * A wheel's part in a driving event.
   *
   * @param event the event
   * @return the case
   */
  public static WheelCase of(Event event) {
    if (event.kind() != Event.Kind.DRIVING) {
      throw new ModelException(
          event.name() + " does not say what the ground does to a wheel; state its force");
    }
    return new WheelCase(
        event.name(),
        event.source(),
        event.assumptions().subList(0, 1),
        (vehicle, ladder, wheel) ->
            event.scene().on(vehicle, ladder).stream()
                .filter(push -> push.at().equals(wheel.contact()))
                .findFirst()
                .orElseThrow(() -> untouched(event, wheel))
                .wrench());
  }

  /**
   * Braking through a pothole: 2 times the standing load up and 1.1 times the standing load
   * rearwards.
   *
   * @return the case
   */
  public static WheelCase potholeBraking() {
    return new WheelCase(
        "pothole braking",
        "2 g with 1 to 1.1 g: common practice, no source",
        List.of("each force is taken of the wheel's standing load; no load moves between axles"),
        (vehicle, ladder, wheel) -> {
          double standing = vehicle.wheelLoads().get(wheel);
          return Wrench.force(-POTHOLE_BRAKING * standing, 0, POTHOLE_VERTICAL * standing);
        });
  }

  /**
   * Sliding sideways against a kerb: the wheel carries its axle alone and is pushed inwards with
   * the force that rolls the vehicle over, factor t/(2 h), times a factor.
   *
   * @param factor of the roll-over acceleration, from 1.4 to 1.75
   * @return the case
   */
  public static WheelCase kerb(double factor) {
    if (!(factor >= LEAST_KERB && factor <= MOST_KERB)) {
      throw new ModelException(
          "kerb factor " + Scale.NUMBER.show(factor) + " is outside 1.4 to 1.75 of roll-over");
    }
    return new WheelCase(
        "kerb, × " + Scale.NUMBER.show(factor, 3),
        "1.4 to 1.75 times the roll-over acceleration: lecture notes on vehicle loads",
        List.of(
            "the other wheel of the axle is just off the ground",
            "the force acts at the contact; a kerb strikes higher"),
        (vehicle, ladder, wheel) -> {
          double axle = vehicle.axleLoads().get(wheel.axle());
          double rollOver = vehicle.track(wheel.axle()) / (2 * vehicle.centreOfMass().z());
          return Wrench.force(0, -wheel.side().sign() * factor * rollOver * axle, axle);
        });
  }

  /**
   * Steering to the left while standing: the tyre's patch is turned on the ground, M = μ/3·√(F³/p)
   * (after Gough, as handbooks of steering restate it; from memory).
   *
   * @param friction between tyre and ground, about 0.7 to 1
   * @param inflation the tyre's pressure
   * @return the case
   */
  public static WheelCase parking(double friction, Quantity<Pressure> inflation) {
    Guard.positive("friction of a parking tyre", friction, Scale.NUMBER);
    double p = Guard.positive("tyre pressure", si("tyre pressure", inflation), Scale.MPA);
    return new WheelCase(
        "parking",
        "M = μ/3·√(F³/p), after Gough; from memory",
        List.of("the wheel stands under its standing load and is turned without rolling"),
        (vehicle, ladder, wheel) -> {
          double load = vehicle.wheelLoads().get(wheel);
          return new Wrench(0, 0, load, 0, 0, -friction / 3 * Math.sqrt(Math.pow(load, 3) / p));
        });
  }

  /**
   * A force that the user states, such as that of a hit on the wheel.
   *
   * @param name of the case
   * @param wrench force and moment of the ground on the tyre
   * @return the case
   */
  public static WheelCase stated(String name, Wrench wrench) {
    return new WheelCase(name, "stated by the user", List.of(), (vehicle, ladder, wheel) -> wrench);
  }

  private static ModelException untouched(Event event, Wheel wheel) {
    return new ModelException(event.name() + " does not push on the " + wheel.name());
  }

  @Override
  public String toString() {
    return name + " (" + source + ")";
  }
}
