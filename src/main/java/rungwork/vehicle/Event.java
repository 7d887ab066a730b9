package rungwork.vehicle;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Length;
import rungwork.check.DesignFactor;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;

/**
 * Something that happens to a vehicle, with the source of its factors. What it does to the frame
 * depends on the vehicle and the ladder.
 *
 * <p>The usual events and factors are from Barton and Fieldhouse, Automotive Chassis Engineering,
 * Springer 2018, section 4.3.2.1, and Brown, Robertson and Serpento, Motor Vehicle Structures,
 * Butterworth-Heinemann 2002, sections 2.4 and 2.5 and table 2.4.
 *
 * @param name such as {@code bump, both front wheels, 3.0 g}
 * @param source where its factors come from
 * @param assumptions what was assumed to make it
 * @param kind driving or impact
 * @param scene its forces from outside on a given vehicle
 */
public record Event(String name, String source, List<String> assumptions, Kind kind, Scene scene) {
  /** Usual factor of a bump under both wheels of an axle, on the road [1]. */
  static final double BUMP_FACTOR = 3;

  /** Usual factor of a bump under one wheel, on the road [1] (Pawlowski 1969, from memory). */
  static final double ONE_WHEEL_FACTOR = 1.3;

  private static final double POTHOLE_VERTICAL = 2;
  private static final double POTHOLE_BRAKING = 1.1;
  private static final double LEAST_KERB = 1.4;
  private static final double MOST_KERB = 1.75;
  private static final double G = Scale.G.inSi();
  private static final String AXLES_SHARE =
      "each axle's load acts at the centre of mass's distance from the middle";
  private static final String WHEELS_ON_MOUNTS =
      "a wheel's force is shared by its mounts like a rigid body on equal springs; the links"
          + " between are not modelled";

  /** Copies its assumptions. */
  public Event {
    name = Guard.name("event", name);
    assumptions = List.copyOf(assumptions);
  }

  /** What sort of event it is. */
  public enum Kind {
    /** Driving: the scene gives all forces of the ground. */
    DRIVING(DesignFactor.ROAD),
    /**
     * A crash: the scene gives what comes on top of standing; masses on springs and belts count
     * amplified in it, and no design factor is taken.
     */
    IMPACT(DesignFactor.NONE);

    private final DesignFactor designFactor;

    Kind(DesignFactor designFactor) {
      this.designFactor = designFactor;
    }
  }

  /** Where a frontal impact meets the frame. */
  public enum Hit {
    /**
     * A wall across the whole width: both rail tips decelerate alike, so the vehicle does not yaw,
     * which says how the force splits between them.
     */
    FULL_WIDTH,
    /** The left rail's tip alone takes it: the vehicle yaws its nose to the left. */
    LEFT_TIP,
    /** The right rail's tip alone takes it: the vehicle yaws its nose to the right. */
    RIGHT_TIP,
    /** A narrow obstacle meets the middle of the foremost crossmember. */
    CENTRE;

    /**
     * Where it hits in a sentence.
     *
     * @return for example {@code left tip}
     */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** The forces from outside that make an event. */
  @FunctionalInterface
  public interface Scene {
    /**
     * The forces on a vehicle. Weights do not count: a body that stands is pushed up by the ground.
     *
     * @param vehicle the vehicle with its frame's own masses
     * @param ladder its frame
     * @return the forces, their carriers named by the ladder's features
     */
    List<AppliedWrench> on(Vehicle vehicle, Ladder ladder);
  }

  /**
   * Standing on level ground.
   *
   * @return the event
   */
  public static Event standing() {
    return driving(
        "standing, 1 g",
        "statics",
        "the vehicle stands on level ground",
        (vehicle, ladder) -> new WheelForces(vehicle).pushes());
  }

  /**
   * Both wheels of an axle over a bump: 3 times their standing load.
   *
   * @param axle the axle
   * @return the event
   */
  public static Event bumpBothWheels(Axle axle) {
    return bumpBothWheels(axle, BUMP_FACTOR);
  }

  /**
   * Both wheels of an axle over a bump. The other axle keeps its standing load; the body is free to
   * rise and to pitch, so its inertia takes up what the weights do not.
   *
   * @param axle the axle
   * @param factor of its standing wheel loads: 2 to 3 on the road, 4 on rough ground
   * @return the event
   */
  public static Event bumpBothWheels(Axle axle, double factor) {
    Guard.positive("bump factor", factor, Scale.NUMBER);
    return driving(
        "bump, both " + axle.word() + " wheels, " + Scale.G.show(factor * G, 2),
        "2 to 3 on the road, 4 on rough ground: Barton and Fieldhouse 2018, section 4.3.2.1",
        "the body is free to rise and pitch; the other axle keeps its standing load",
        (vehicle, ladder) -> new WheelForces(vehicle).axleTimes(axle, factor).pushes());
  }

  /**
   * One wheel over a bump: 1.3 times standing and twist together.
   *
   * @param axle the axle of the raised wheel
   * @param side the side of the raised wheel
   * @return the event
   */
  public static Event bumpOneWheel(Axle axle, Side side) {
    return bumpOneWheel(axle, side, ONE_WHEEL_FACTOR);
  }

  /**
   * One wheel over a bump: standing loads and the couples that just lift a wheel, together times a
   * factor.
   *
   * @param axle the axle of the raised wheel
   * @param side the side of the raised wheel
   * @param factor 1.3 on the road, 1.8 on rough ground
   * @return the event
   */
  public static Event bumpOneWheel(Axle axle, Side side, double factor) {
    Guard.positive("one-wheel bump factor", factor, Scale.NUMBER);
    return driving(
        "bump, " + axle.word() + " " + side.word() + " wheel, × " + Scale.NUMBER.show(factor, 2),
        "1.3 on the road, 1.8 on rough ground: Pawlowski 1969, from memory",
        "standing and the twist that just lifts a wheel, together times the factor; the body is"
            + " free to rise and pitch",
        (vehicle, ladder) ->
            new WheelForces(vehicle)
                .twisted(axle, side, WheelForces.twistCouple(vehicle, axle, side))
                .times(factor)
                .pushes());
  }

  /**
   * Pure twist: equal and opposite couples at the axles, the largest that leave all wheels on the
   * ground, without the weights.
   *
   * @return the event, the front left wheel pushed up
   */
  public static Event pureTwist() {
    return driving(
        "pure twist",
        "couple = lighter axle load / 2 × track: Brown, Robertson and Serpento 2002, sections 2.4"
            + " and 2.5",
        "twist alone: the weights act in the bump under one wheel",
        (vehicle, ladder) ->
            new WheelForces(vehicle)
                .times(0)
                .twisted(
                    Axle.FRONT, Side.LEFT, WheelForces.twistCouple(vehicle, Axle.FRONT, Side.LEFT))
                .pushes());
  }

  /**
   * Steady braking: the load moves forward by m a h / L; each wheel brakes in proportion to its
   * load.
   *
   * @param deceleration above zero; 1.1 g by measurements on cars
   * @return the event
   */
  public static Event braking(Quantity<Acceleration> deceleration) {
    double a = Guard.positive("braking", si("braking", deceleration), Scale.G);
    return driving(
        "braking, " + Scale.G.show(a, 2),
        "1.1 g: Cranfield tests in Brown, Robertson and Serpento 2002, table 2.4",
        "steady: no pitching; each wheel brakes in proportion to its load; brakes sit in the"
            + " wheels",
        (vehicle, ladder) -> new WheelForces(vehicle).braked(a).pushes());
  }

  /**
   * Steady cornering: m a h moves load from the inner to the outer wheels, the front axle's share
   * by its roll stiffness; the lateral force of an axle follows from yaw balance, that of a wheel
   * in proportion to its load.
   *
   * @param towards the side of the turn's centre
   * @param acceleration towards that side, above zero; about 1 g, limited by the tyres
   * @return the event
   */
  public static Event cornering(Side towards, Quantity<Acceleration> acceleration) {
    double a = Guard.positive("cornering", si("cornering", acceleration), Scale.G);
    return driving(
        "cornering to the " + towards.word() + ", " + Scale.G.show(a, 2),
        "limited by the tyres, about 1 g: lecture notes on vehicle loads",
        "steady: no rolling; the front axle moves the stated share of the load across",
        (vehicle, ladder) -> new WheelForces(vehicle).cornered(towards, a).pushes());
  }

  /**
   * Braking through a pothole with one wheel: it gets twice its standing load and is held back with
   * 1.1 times it; the others keep their standing loads.
   *
   * @param axle the wheel's axle
   * @param side the wheel's side
   * @return the event
   */
  public static Event potholeBraking(Axle axle, Side side) {
    return driving(
        "pothole braking, " + axle.word() + " " + side.word() + " wheel",
        "2 g with 1 to 1.1 g: common practice, no source",
        "of the wheel's standing load; the body is free to rise, pitch, roll and yaw",
        (vehicle, ladder) ->
            new WheelForces(vehicle)
                .pushed(
                    vehicle.wheel(axle, side),
                    load -> Wrench.force(-POTHOLE_BRAKING * load, 0, POTHOLE_VERTICAL * load))
                .pushes());
  }

  /**
   * Sliding sideways against a kerb with one wheel: it carries its axle alone and is pushed inwards
   * with the force that rolls the vehicle over, factor t/(2 h), times a factor.
   *
   * @param axle the wheel's axle
   * @param side the wheel's side
   * @param factor of the roll-over acceleration, from 1.4 to 1.75
   * @return the event
   */
  public static Event kerb(Axle axle, Side side, double factor) {
    if (!(factor >= LEAST_KERB && factor <= MOST_KERB)) {
      throw new ModelException(
          "kerb factor " + Scale.NUMBER.show(factor) + " is outside 1.4 to 1.75 of roll-over");
    }
    return driving(
        "kerb, " + axle.word() + " " + side.word() + " wheel, × " + Scale.NUMBER.show(factor, 3),
        "1.4 to 1.75 times the roll-over acceleration: lecture notes on vehicle loads",
        "the axle's other wheel is just off the ground; the force acts at the contact, a kerb"
            + " strikes higher; the body is free to slide, roll and yaw",
        (vehicle, ladder) -> new WheelForces(vehicle).againstKerb(axle, side, factor).pushes());
  }

  /**
   * Braking in a turn: both load transfers at once; each wheel holds in proportion to its load.
   *
   * @param towards the side of the turn's centre
   * @param acceleration towards that side, above zero; common practice 0.75 g
   * @param braking deceleration, above zero; common practice 0.75 g
   * @return the event
   */
  public static Event brakingInTurn(
      Side towards, Quantity<Acceleration> acceleration, Quantity<Acceleration> braking) {
    double lateral = Guard.positive("cornering", si("cornering", acceleration), Scale.G);
    double a = Guard.positive("braking", si("braking", braking), Scale.G);
    return driving(
        "braking "
            + Scale.G.show(a, 2)
            + " in a turn to the "
            + towards.word()
            + " "
            + Scale.G.show(lateral, 2),
        "0.75 g and 0.75 g: common practice, no source",
        "steady: no rolling and pitching; brakes in proportion to each wheel's load turn the"
            + " vehicle a little, which its inertia takes",
        (vehicle, ladder) -> new WheelForces(vehicle).brakedInTurn(towards, lateral, a).pushes());
  }

  /**
   * A frontal impact that gives the vehicle's centre of mass a stated deceleration.
   *
   * @param deceleration above zero
   * @param hit where it hits
   * @return the event
   */
  public static Event frontalImpact(Quantity<Acceleration> deceleration, Hit hit) {
    return frontalImpact(deceleration, hit, OptionalDouble.empty());
  }

  /**
   * The same where the obstacle's force acts at a height of its own. Above or below the rail tips
   * it also bends them; above or below the centre of mass it pitches the vehicle.
   *
   * @param deceleration above zero
   * @param hit where it hits
   * @param height of the force above the ground, above zero
   * @return the event
   */
  public static Event frontalImpact(
      Quantity<Acceleration> deceleration, Hit hit, Quantity<Length> height) {
    double z = Guard.positive("height of the impact", si("height", height), Scale.MM);
    return frontalImpact(deceleration, hit, OptionalDouble.of(z));
  }

  private static Event frontalImpact(
      Quantity<Acceleration> deceleration, Hit hit, OptionalDouble height) {
    double a = Guard.positive("frontal impact", si("frontal impact", deceleration), Scale.G);
    FrontalPush push = new FrontalPush(hit, a, height);
    List<String> assumptions = new ArrayList<>(push.assumptions());
    assumptions.add(WHEELS_ON_MOUNTS);
    return new Event(
        push.words(), "deceleration stated by the user", assumptions, Kind.IMPACT, push::on);
  }

  private static Event driving(String name, String source, String assumption, Scene scene) {
    List<String> assumptions = List.of(assumption, AXLES_SHARE, WHEELS_ON_MOUNTS);
    return new Event(name, source, assumptions, Kind.DRIVING, scene);
  }

  /**
   * The same event, its wheel forces taken to the frame by another path than equal springs. An
   * impact is returned as it is: its force does not come through a wheel.
   *
   * @param assumption what takes the place of the assumption of equal springs
   * @param path from the forces on the wheels to forces on the frame that do the same
   * @return the event
   */
  public Event onWheels(String assumption, UnaryOperator<List<AppliedWrench>> path) {
    if (kind == Kind.IMPACT) {
      return this;
    }
    List<String> assumed =
        assumptions.stream().map(a -> a.equals(WHEELS_ON_MOUNTS) ? assumption : a).toList();
    Scene moved = (vehicle, ladder) -> path.apply(scene.on(vehicle, ladder));
    return new Event(name, source, assumed, kind, moved);
  }

  /**
   * What strengths are divided by.
   *
   * @return the design factor
   */
  public DesignFactor designFactor() {
    return kind.designFactor;
  }

  @Override
  public String toString() {
    return name + " (" + source + ")";
  }
}
