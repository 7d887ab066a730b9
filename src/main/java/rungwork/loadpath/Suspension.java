package rungwork.loadpath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;
import rungwork.vehicle.Wheel;

/**
 * The corners of one vehicle on its ladder: the same model gives the ladder its loads and the
 * mounts theirs.
 */
public final class Suspension {
  private static final String THROUGH_LINKS =
      "a wheel's force reaches its mounts through its links by equilibrium, half of a thrust along"
          + " two pivots on each; a wheel's own mass still counts as on equal springs";

  private final Vehicle vehicle;
  private final Ladder ladder;
  private final Map<Wheel, Corner> corners;
  private final List<BeamAxle> axles;

  private Suspension(
      Vehicle vehicle, Ladder ladder, Map<Wheel, Corner> corners, List<BeamAxle> axles) {
    this.vehicle = vehicle;
    this.ladder = ladder;
    this.corners = corners;
    this.axles = List.copyOf(axles);
  }

  /**
   * The same suspension with an axle that joins two of its wheels.
   *
   * @param axle the axle, its wheels where the vehicle has two without a corner
   * @return the suspension
   */
  public Suspension with(BeamAxle axle) {
    for (Hub hub : List.of(axle.left(), axle.right())) {
      Wheel wheel = wheelAt("axle " + axle.name(), hub.contact(), vehicle);
      if (corners.containsKey(wheel) || axleAt(wheel.contact()).isPresent()) {
        throw new ModelException(
            "axle " + axle.name() + " hangs on a wheel that has a corner or an axle already");
      }
    }
    axle.corner().mounts().forEach(mount -> refuseElsewhere(axle.corner(), mount, ladder));
    List<BeamAxle> more = new ArrayList<>(axles);
    more.add(axle);
    return new Suspension(vehicle, ladder, corners, more);
  }

  /** The axle that a wheel belongs to. */
  private Optional<BeamAxle> axleAt(Point contact) {
    return axles.stream()
        .filter(axle -> isAt(axle.left(), contact) || isAt(axle.right(), contact))
        .findFirst();
  }

  private static boolean isAt(Hub hub, Point contact) {
    return hub.contact().distance(contact) < SuspensionMember.ONE_POINT;
  }

  /**
   * Hangs corners on a ladder. Wheels without a corner keep their equal springs.
   *
   * @param vehicle the vehicle
   * @param ladder its frame
   * @param corners a corner for some or all of its wheels, each where its wheel touches the ground
   * @return the suspension
   */
  public static Suspension of(Vehicle vehicle, Ladder ladder, List<Corner> corners) {
    Map<Wheel, Corner> hung = new LinkedHashMap<>();
    for (Corner corner : corners) {
      String what = "corner " + corner.name();
      Wheel wheel = wheelAt(what, corner.hub().contact(), vehicle);
      if (hung.putIfAbsent(wheel, corner) != null) {
        throw new ModelException(
            "corner " + corner.name() + " hangs on a wheel that has one already");
      }
      corner.mounts().forEach(mount -> refuseElsewhere(corner, mount, ladder));
    }
    return new Suspension(vehicle, ladder, hung, List.of());
  }

  /**
   * The forces of a wheel's corner.
   *
   * @param axle the wheel's axle
   * @param side the wheel's side
   * @param wheelCase what the ground does
   * @return the forces
   */
  public CornerForces under(Axle axle, Side side, WheelCase wheelCase) {
    Wheel wheel = vehicle.wheel(axle, side);
    Corner corner = corners.get(wheel);
    if (corner == null) {
      throw new ModelException("the " + wheel.name() + " has no corner; give the suspension one");
    }
    return corner.under(wheelCase.name(), wheelCase.ground().on(vehicle, ladder, wheel));
  }

  /**
   * The forces of an axle that joins two wheels.
   *
   * @param axle the axle, one of this suspension's
   * @param wheelCase what the ground does to each of its wheels
   * @return the forces
   */
  public CornerForces under(BeamAxle axle, WheelCase wheelCase) {
    return axle.under(
        wheelCase.name(),
        ground(axle, axle.left(), wheelCase),
        ground(axle, axle.right(), wheelCase));
  }

  private Wrench ground(BeamAxle axle, Hub hub, WheelCase wheelCase) {
    Wheel wheel = wheelAt("axle " + axle.name(), hub.contact(), vehicle);
    return wheelCase.ground().on(vehicle, ladder, wheel);
  }

  /**
   * An event whose wheel forces reach the ladder through the links. An impact is returned as it is:
   * its force does not come through a wheel.
   *
   * @param event the event
   * @return the event for the same vehicle and ladder
   */
  public Event through(Event event) {
    return event.onWheels(
        THROUGH_LINKS, pushes -> pushes.stream().flatMap(p -> spread(event, p)).toList());
  }

  private Stream<AppliedWrench> spread(Event event, AppliedWrench push) {
    Optional<Corner> corner =
        corners.entrySet().stream()
            .filter(hung -> hung.getKey().contact().equals(push.at()))
            .map(Map.Entry::getValue)
            .findFirst();
    return corner
        .map(links -> links.under(event.name(), push.wrench()).onFrame().stream())
        .or(() -> axleAt(push.at()).map(axle -> spread(event, push, axle)))
        .orElse(Stream.of(push));
  }

  /** One wheel's push alone: statics is linear, so that both add up to what both do together. */
  private static Stream<AppliedWrench> spread(Event event, AppliedWrench push, BeamAxle axle) {
    Wrench left = isAt(axle.left(), push.at()) ? push.wrench() : Wrench.ZERO;
    Wrench right = isAt(axle.left(), push.at()) ? Wrench.ZERO : push.wrench();
    return axle.under(event.name(), left, right).onFrame().stream();
  }

  private static Wheel wheelAt(String what, Point contact, Vehicle vehicle) {
    return vehicle.wheels().stream()
        .filter(wheel -> wheel.contact().distance(contact) < SuspensionMember.ONE_POINT)
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    what
                        + " touches the ground at "
                        + show(contact)
                        + ", where vehicle "
                        + vehicle.name()
                        + " has no wheel"));
  }

  private static void refuseElsewhere(Corner corner, Mount mount, Ladder ladder) {
    if (ladder.mounts().stream().noneMatch(mount::equals)) {
      throw new ModelException(
          "mount "
              + mount.name()
              + " of corner "
              + corner.name()
              + " on "
              + mount.member()
              + " at "
              + show(mount.at())
              + " is no mount of ladder "
              + ladder.name());
    }
  }

  private static String show(Point at) {
    return "x "
        + Scale.MM.show(at.x())
        + ", y "
        + Scale.MM.show(at.y())
        + ", z "
        + Scale.MM.show(at.z());
  }
}
