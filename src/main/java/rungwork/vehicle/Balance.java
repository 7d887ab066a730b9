package rungwork.vehicle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rungwork.fault.ModelException;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;
import rungwork.solve.Carriers;
import rungwork.solve.InertiaBalance;
import rungwork.solve.RigidAcceleration;

/**
 * An event on one vehicle: the forces from outside and the acceleration with which the masses
 * answer them.
 *
 * <p>Gravity needs no term: a uniform field loads the frame just as an acceleration upwards does.
 * So accelerations here are what the masses feel, as an accelerometer reads: standing is 1 g up.
 *
 * @param event the event
 * @param vehicle the vehicle with its frame's own masses
 * @param ladder its frame
 * @param forces the event's forces from outside; of an impact, what comes on top of standing
 * @param acceleration the answer to them
 */
public record Balance(
    Event event,
    Vehicle vehicle,
    Ladder ladder,
    List<AppliedWrench> forces,
    RigidAcceleration acceleration) {
  /** Copies the forces. */
  public Balance {
    forces = List.copyOf(forces);
  }

  /**
   * Balances an event.
   *
   * @param event the event
   * @param vehicle the vehicle with its frame's own masses, see {@link Vehicle#on}
   * @param ladder its frame
   * @return the balance
   * @throws ModelException when the event has no force
   */
  public static Balance of(Event event, Vehicle vehicle, Ladder ladder) {
    return of(event, vehicle, ladder, InertiaBalance.Body.of(felt(event, vehicle)));
  }

  /** Balances an event where its masses are put together already. */
  static Balance of(Event event, Vehicle vehicle, Ladder ladder, InertiaBalance.Body body) {
    List<AppliedWrench> forces = event.scene().on(vehicle, ladder);
    if (forces.isEmpty()) {
      throw new ModelException(
          "event " + event.name() + " has no reaction: nothing pushes on the vehicle");
    }
    return new Balance(event, vehicle, ladder, forces, body.answer(forces));
  }

  /**
   * The deceleration that an impact gives the centre of the amplified masses: the obstacle's force
   * over their sum.
   *
   * @return positive rearwards [m/s²]
   */
  public double deceleration() {
    double force = forces.stream().mapToDouble(one -> -one.wrench().fx()).sum();
    return force / felt(event, vehicle).stream().mapToDouble(Mass::kilograms).sum();
  }

  /**
   * The vehicle's deceleration at each seat.
   *
   * @return one figure a seat, in the vehicle's order
   */
  public List<SeatDeceleration> atSeats() {
    return vehicle.seats().stream().map(seat -> SeatDeceleration.of(seat, acceleration)).toList();
  }

  /**
   * The loads on the frame, in balance by themselves: forces from outside and what every mass
   * answers, each at its own place.
   *
   * @param sharing which of its carriers take a mass
   * @return the load case
   */
  LoadCase loadCase(Sharing sharing) {
    List<Load> loads = new ArrayList<>();
    if (event.kind() == Event.Kind.IMPACT) {
      loads.addAll(standing().loads());
    }
    loads.addAll(ofEvent(sharing));
    return new LoadCase(
        event.name() + sharing.suffix(), event.source(), event.assumptions(), loads);
  }

  /**
   * Holds that take the free motion out without any force: the crossmember nearest to the centre of
   * mass stands still, and so does the middle of another one up and down, so that nothing pitches.
   * Left and right are alike.
   *
   * @return six held motions
   */
  public List<Support> anchors() {
    double x = vehicle.centreOfMass().x();
    List<Crossmember> byNearness =
        ladder.crossmembers().stream()
            .sorted(Comparator.comparingDouble(one -> Math.abs(one.x() - x)))
            .toList();
    String near = byNearness.get(0).name();
    String far = byNearness.get(byNearness.size() - 1).name();
    String middle = ladder.node(far + " middle").name();
    return List.of(
        Support.holding(ladder.node(near + " left").name(), Freedom.UX, Freedom.UZ),
        Support.holding(ladder.node(near + " right").name(), Freedom.UX, Freedom.UZ),
        Support.holding(ladder.node(near + " middle").name(), Freedom.UY),
        Support.holding(middle, near.equals(far) ? Freedom.RY : Freedom.UZ));
  }

  /**
   * An impact as what stands from the beginning and what grows with the deceleration.
   *
   * @param standing the loads of the vehicle at rest, in balance
   * @param impact what the event adds, in balance by itself and in proportion to its deceleration
   */
  public record Growth(LoadCase standing, LoadCase impact) {}

  /**
   * An impact taken apart, once for each way in which masses may be shared by their mounts.
   *
   * @return shared by all mounts, then all on the foremost and all on the rearmost
   * @throws ModelException when the event is not an impact
   */
  public List<Growth> growing() {
    if (event.kind() != Event.Kind.IMPACT) {
      throw new ModelException(
          "event " + event.name() + " is no impact; only an impact grows on top of standing");
    }
    LoadCase standing = standing();
    return Sharing.of(event).stream()
        .map(sharing -> new Growth(standing, impact(sharing)))
        .toList();
  }

  private LoadCase standing() {
    return of(Event.standing(), vehicle, ladder).loadCase(Sharing.ALL);
  }

  private LoadCase impact(Sharing sharing) {
    return new LoadCase(
        event.name() + sharing.suffix(), event.source(), event.assumptions(), ofEvent(sharing));
  }

  private List<Load> ofEvent(Sharing sharing) {
    List<Load> loads = new ArrayList<>();
    for (AppliedWrench force : forces) {
      loads.addAll(share(force.wrench(), force.at(), force.carriers()));
    }
    List<Mass> carried = new ArrayList<>(felt(event, vehicle));
    carried.removeAll(ladder.masses());
    for (Mass mass : carried) {
      loads.addAll(share(acceleration.inertia(mass), mass.at(), sharing.carriers(mass, ladder)));
    }
    loads.addAll(ladder.inertia(acceleration));
    return loads;
  }

  /** The masses as an event has them: amplified in an impact. */
  static List<Mass> felt(Event event, Vehicle vehicle) {
    return event.kind() == Event.Kind.IMPACT
        ? vehicle.masses().stream().map(Mass::amplified).toList()
        : vehicle.masses();
  }

  private List<Load> share(Wrench wrench, Point at, List<String> features) {
    return share(ladder, wrench, at, features);
  }

  /** Shares a wrench among fastening points and takes each share along its arm to the node. */
  static List<Load> share(Ladder ladder, Wrench wrench, Point at, List<String> features) {
    List<Node> points =
        features.stream().map(feature -> new Node(feature, ladder.at(feature))).toList();
    List<Load> loads = new ArrayList<>();
    for (Load.AtNode part : new Carriers(points).share(wrench, at)) {
      Node node = ladder.node(part.node());
      Wrench there = part.wrench().moved(ladder.at(part.node()), node.at());
      loads.add(new Load.AtNode(node.name(), there));
    }
    return loads;
  }
}
