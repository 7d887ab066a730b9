package rungwork.vehicle;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Mass;
import rungwork.frame.Point;

/**
 * A vehicle: its masses with their places, its wheels and its seats. Immutable.
 *
 * <p>As built it holds what its builder was given; {@link #on(Ladder)} adds the frame's own masses.
 */
public final class Vehicle {
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

  private final String name;
  private final double wheelbase;
  private final double frontRollShare;
  private final List<Mass> masses;
  private final List<Mass> frameMasses;
  private final List<Wheel> wheels;
  private final List<Seat> seats;
  private final double massTotal;
  private final Point centreOfMass;

  Vehicle(VehicleBuilder from) {
    name = from.name;
    wheelbase = from.wheelbase;
    frontRollShare = from.frontRollShare;
    masses = List.copyOf(from.masses.values());
    frameMasses = List.of();
    wheels = List.copyOf(from.wheels());
    seats = List.copyOf(from.seats);
    massTotal = masses.stream().mapToDouble(Mass::kilograms).sum();
    centreOfMass = centre();
    new VehicleRules(this).check();
  }

  private Vehicle(Vehicle bare, List<Mass> ofFrame) {
    name = bare.name;
    wheelbase = bare.wheelbase;
    frontRollShare = bare.frontRollShare;
    List<Mass> all = new ArrayList<>(bare.masses);
    frameMasses = List.copyOf(ofFrame);
    all.addAll(frameMasses);
    masses = List.copyOf(all);
    wheels = bare.wheels;
    seats = bare.seats;
    massTotal = masses.stream().mapToDouble(Mass::kilograms).sum();
    centreOfMass = centre();
    new VehicleRules(this).check();
  }

  /**
   * Starts a vehicle.
   *
   * @param name its name
   * @return a builder; {@link VehicleBuilder#build()} checks all
   */
  public static VehicleBuilder named(String name) {
    return new VehicleBuilder(Guard.name("vehicle", name));
  }

  /**
   * This vehicle with the masses of a ladder's own members.
   *
   * @param ladder the frame that carries it
   * @return the complete vehicle
   * @throws ModelException when a mass or wheel is carried by what the ladder does not have
   */
  public Vehicle on(Ladder ladder) {
    new VehicleRules(this).checkCarriers(ladder);
    return carrying(ladder.masses());
  }

  /** The same with these masses of its frame, not asked whether the frame has what carries them. */
  Vehicle carrying(List<Mass> ofFrame) {
    return new Vehicle(this, ofFrame);
  }

  /**
   * The vehicle's name.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * From the front axle back to the rear axle.
   *
   * @return the wheelbase [m]
   */
  public double wheelbase() {
    return wheelbase;
  }

  /**
   * The distance between the contact points of an axle.
   *
   * @param axle the axle
   * @return its track [m]
   */
  public double track(Axle axle) {
    return wheel(axle, Side.LEFT).contact().y() - wheel(axle, Side.RIGHT).contact().y();
  }

  /**
   * The front axle's share of the load that cornering moves from the inner to the outer wheels. It
   * follows the roll stiffness of the axles and twists the frame.
   *
   * @return the share, from 0 to 1
   */
  public double frontRollShare() {
    return frontRollShare;
  }

  /**
   * The masses.
   *
   * @return the masses, in the order given
   */
  public List<Mass> masses() {
    return masses;
  }

  /**
   * Those of the masses that are pieces of the frame itself.
   *
   * @return the masses that {@link #on(Ladder)} added; none before
   */
  public List<Mass> frameMasses() {
    return frameMasses;
  }

  /**
   * The four wheels: front left, front right, rear left, rear right.
   *
   * @return the wheels
   */
  public List<Wheel> wheels() {
    return wheels;
  }

  /**
   * A wheel.
   *
   * @param axle its axle
   * @param side its side
   * @return the wheel
   */
  public Wheel wheel(Axle axle, Side side) {
    return wheels.get(2 * axle.ordinal() + side.ordinal());
  }

  /**
   * The seats.
   *
   * @return the seats, in the order given
   */
  public List<Seat> seats() {
    return seats;
  }

  /**
   * The sum of the masses.
   *
   * @return the mass [kg]
   */
  public double massTotal() {
    return massTotal;
  }

  /**
   * The centre of mass, Σ m r / Σ m.
   *
   * @return its place
   */
  public Point centreOfMass() {
    return centreOfMass;
  }

  private Point centre() {
    double x = 0;
    double y = 0;
    double z = 0;
    for (Mass mass : masses) {
      x += mass.kilograms() * mass.at().x();
      y += mass.kilograms() * mass.at().y();
      z += mass.kilograms() * mass.at().z();
    }
    return new Point(x / massTotal, y / massTotal, z / massTotal);
  }

  /**
   * The weight.
   *
   * @return m g [N]
   */
  public double weight() {
    return massTotal() * Scale.G.inSi();
  }

  /**
   * What each axle carries standing on level ground: the front W (L − b)/L with the centre of mass
   * b behind the front axle, the rear the rest.
   *
   * @return the vertical load of each axle [N]
   */
  public Map<Axle, Double> axleLoads() {
    Map<Axle, Double> loads = new EnumMap<>(Axle.class);
    for (Axle axle : Axle.values()) {
      loads.put(axle, axleLoad(axle));
    }
    return loads;
  }

  double axleLoad(Axle axle) {
    double rear = weight() * -centreOfMass().x() / wheelbase;
    return axle == Axle.REAR ? rear : weight() - rear;
  }

  /**
   * What each wheel carries standing on level ground. Four wheels are one too many for statics; the
   * rule here is that each axle's load acts at the centre of mass's distance from the middle: (axle
   * load) (1/2 ± y/track). Springs of unequal preload share it otherwise.
   *
   * @return the vertical load of each wheel [N]
   */
  public Map<Wheel, Double> wheelLoads() {
    Map<Wheel, Double> loads = new LinkedHashMap<>();
    wheels.forEach(wheel -> loads.put(wheel, wheelLoad(wheel)));
    return loads;
  }

  double wheelLoad(Wheel wheel) {
    double share = 0.5 + wheel.side().sign() * centreOfMass().y() / track(wheel.axle());
    return axleLoad(wheel.axle()) * share;
  }

  /**
   * The steady lateral acceleration at which the first inner wheel leaves the ground. When both
   * axles lift at once this is the roll-over threshold g t/(2 h).
   *
   * @return the acceleration [m/s²]
   */
  public double corneringLimit() {
    return WheelForces.corneringLimit(this);
  }

  @Override
  public String toString() {
    Point centre = centreOfMass();
    Map<Axle, Double> axles = axleLoads();
    StringBuilder card = new StringBuilder("Vehicle " + name + ": " + Scale.KG.show(massTotal()));
    card.append(", wheelbase ").append(Scale.MM.show(wheelbase));
    card.append(", track ").append(Scale.MM.show(track(Axle.FRONT)));
    card.append(" front and ").append(Scale.MM.show(track(Axle.REAR))).append(" rear\n");
    card.append("  centre of mass ").append(Scale.MM.show(-centre.x()));
    card.append(" behind the front axle, ").append(Scale.MM.show(centre.y()));
    card.append(" to the left, ").append(Scale.MM.show(centre.z())).append(" up\n");
    card.append("  axle loads ").append(Scale.KN.show(axles.get(Axle.FRONT)));
    card.append(" front, ").append(Scale.KN.show(axles.get(Axle.REAR))).append(" rear");
    wheelLoads()
        .forEach(
            (wheel, load) ->
                card.append("\n  ").append(wheel.name()).append(' ').append(Scale.KN.show(load)));
    return card.toString();
  }
}
