package rungwork.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;

/** What the ground does to the four wheels, starting from standing. Immutable. */
final class WheelForces {
  private final Vehicle vehicle;

  /** In the order of the vehicle's wheels. */
  private final List<Wrench> forces;

  /** Standing on level ground. */
  WheelForces(Vehicle vehicle) {
    this.vehicle = vehicle;
    forces = new ArrayList<>();
    for (Wheel wheel : vehicle.wheels()) {
      forces.add(Wrench.force(0, 0, vehicle.wheelLoad(wheel)));
    }
  }

  /** What becomes of each wheel's force. */
  private interface Change {
    Wrench of(Wheel wheel, Wrench force);
  }

  private WheelForces(WheelForces from, Change change) {
    vehicle = from.vehicle;
    forces = new ArrayList<>();
    for (int i = 0; i < from.forces.size(); i++) {
      forces.add(change.of(vehicle.wheels().get(i), from.forces.get(i)));
    }
  }

  /**
   * The couple that just lifts a wheel when one is raised: of the wheels that it unloads, the least
   * load times track. On a vehicle that stands level this is half the lighter axle's load times the
   * track (Brown, Robertson and Serpento 2002, sections 2.4 and 2.5) [N·m].
   */
  static double twistCouple(Vehicle vehicle, Axle axle, Side side) {
    double least = Double.POSITIVE_INFINITY;
    for (Axle each : Axle.values()) {
      Wheel unloaded = vehicle.wheel(each, each == axle ? side.other() : side);
      least = Math.min(least, vehicle.wheelLoad(unloaded) * vehicle.track(each));
    }
    return least;
  }

  WheelForces times(double factor) {
    return new WheelForces(this, (wheel, force) -> force.times(factor));
  }

  WheelForces axleTimes(Axle axle, double factor) {
    return new WheelForces(this, (wheel, force) -> force.times(wheel.axle() == axle ? factor : 1));
  }

  /** Adds equal and opposite couples at the axles that push the named wheel up. */
  WheelForces twisted(Axle axle, Side side, double couple) {
    return new WheelForces(
        this,
        (wheel, force) -> {
          boolean up = (wheel.axle() == axle) == (wheel.side() == side);
          double change = couple / vehicle.track(wheel.axle());
          return force.plus(Wrench.force(0, 0, up ? change : -change));
        });
  }

  /** Braking at a [m/s²]: m a h / L moves from the rear axle to the front, each wheel its part. */
  WheelForces braked(double a) {
    double rear = vehicle.axleLoad(Axle.REAR);
    double moved = vehicle.massTotal() * a * vehicle.centreOfMass().z() / vehicle.wheelbase();
    if (moved > rear) {
      double limit = a * rear / moved;
      throw lifted("braking at " + Scale.G.show(a), "the rear axle", limit);
    }
    return new WheelForces(
        this,
        (wheel, force) -> {
          double axle = vehicle.axleLoad(wheel.axle());
          double now = axle + (wheel.axle() == Axle.FRONT ? moved : -moved);
          double load = force.fz() * now / axle;
          return Wrench.force(-load * a / Scale.G.inSi(), 0, load);
        });
  }

  /** Cornering at a [m/s²] towards a side. */
  WheelForces cornered(Side towards, double a) {
    return new WheelForces(
        this,
        (wheel, force) -> {
          double load = loadInTurn(wheel, force.fz(), towards, a);
          double lateral = towards.sign() * load * a / Scale.G.inSi();
          return Wrench.force(0, lateral, load);
        });
  }

  /** One wheel's standing load [N] turned into another force; the others keep theirs. */
  WheelForces pushed(Wheel pushed, DoubleFunction<Wrench> turned) {
    return new WheelForces(
        this, (wheel, force) -> wheel.equals(pushed) ? turned.apply(force.fz()) : force);
  }

  /** A wheel that carries its axle alone and is pushed inwards by a factor of roll-over. */
  WheelForces againstKerb(Axle axle, Side side, double factor) {
    double load = vehicle.axleLoad(axle);
    double rollOver = vehicle.track(axle) / (2 * vehicle.centreOfMass().z());
    Wrench push = Wrench.force(0, -side.sign() * factor * rollOver * load, load);
    return new WheelForces(
        this,
        (wheel, force) -> {
          if (wheel.axle() != axle) {
            return force;
          }
          return wheel.side() == side ? push : Wrench.ZERO;
        });
  }

  /** Cornering and braking [m/s²] at once: both transfers, each wheel its part of both forces. */
  WheelForces brakedInTurn(Side towards, double lateral, double a) {
    return new WheelForces(
        braked(a).cornered(towards, lateral),
        (wheel, force) -> force.plus(Wrench.force(-force.fz() * a / Scale.G.inSi(), 0, 0)));
  }

  /** The forces at the contact points. */
  List<AppliedWrench> pushes() {
    List<AppliedWrench> pushes = new ArrayList<>();
    for (int i = 0; i < forces.size(); i++) {
      Wheel wheel = vehicle.wheels().get(i);
      pushes.add(
          new AppliedWrench(
              "ground under " + wheel.name(), forces.get(i), wheel.contact(), wheel.carriers()));
    }
    return pushes;
  }

  private double loadInTurn(Wheel wheel, double standing, Side towards, double a) {
    double moved = a * movedPerAcceleration(vehicle, wheel);
    if (wheel.side() != towards) {
      return standing + moved;
    }
    if (moved > standing) {
      double limit = a * standing / moved;
      throw lifted("cornering at " + Scale.G.show(a), "the " + wheel.name(), limit);
    }
    return standing - moved;
  }

  /** Load that cornering moves off or onto a wheel: share m h / track [N for each m/s²]. */
  private static double movedPerAcceleration(Vehicle vehicle, Wheel wheel) {
    double front = vehicle.frontRollShare();
    double share = wheel.axle() == Axle.FRONT ? front : 1 - front;
    double rolling = vehicle.massTotal() * vehicle.centreOfMass().z();
    return share * rolling / vehicle.track(wheel.axle());
  }

  /** The least lateral acceleration that takes all load off a wheel [m/s²]. */
  static double corneringLimit(Vehicle vehicle) {
    return vehicle.wheels().stream()
        .mapToDouble(wheel -> vehicle.wheelLoad(wheel) / movedPerAcceleration(vehicle, wheel))
        .min()
        .orElseThrow();
  }

  private ModelException lifted(String doing, String what, double limit) {
    return new ModelException(
        doing
            + " lifts "
            + what
            + " of vehicle "
            + vehicle.name()
            + " off the ground; it stays down to "
            + Scale.G.show(limit));
  }
}
