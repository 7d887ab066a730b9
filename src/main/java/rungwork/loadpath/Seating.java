package rungwork.loadpath;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.loadpath.Reaction.Ray;
import rungwork.vehicle.Mount;

/**
 * One seat with its belts: where the webbing runs from, where it meets the body, what the seat
 * weighs and stands on.
 *
 * <pre>
 *        onwards (reel)                      loop: the belt turns about it and
 *           |                                pulls it both ways, up to twice
 *           |      ____ shoulder
 *    loop   o-----/    \
 *                 | torso \
 *                 |________\ hip ---- forward
 *                          /
 *    floor  o-------------/   lap belt: its angle lifts the floor
 * </pre>
 *
 * @param name such as {@code driver}
 * @param lap the lap belt
 * @param shoulder the shoulder belt, if there is one
 * @param chair the seat itself
 */
public record Seating(String name, Belt lap, Optional<Belt> shoulder, Chair chair) {
  /** Refuses a seat without a name. */
  public Seating {
    name = Guard.name("seat", name);
  }

  /**
   * A seat with a lap belt alone.
   *
   * @param name the seat's name
   * @param lap the lap belt
   * @param chair the seat itself
   * @return the seat
   */
  public static Seating lapBelt(String name, Belt lap, Chair chair) {
    return new Seating(name, lap, Optional.empty(), chair);
  }

  /**
   * The same seat with a shoulder belt.
   *
   * @param belt the shoulder belt
   * @return the seat
   */
  public Seating withShoulder(Belt belt) {
    return new Seating(name, lap, Optional.of(belt), chair);
  }

  /**
   * Webbing from one anchorage round the body to another. Its tension is alike all along: friction
   * on the body and in a loop is left out.
   *
   * @param name such as {@code driver lap belt}
   * @param from one end
   * @param to the other end
   */
  public record Belt(String name, End from, End to) {
    /** Less of its tension than this holding the body back counts as none [1]. */
    private static final double HOLDS = 0.05;

    /** Refuses a belt that leads forward. */
    public Belt {
      name = Guard.name("belt", name);
      double back = back(from, to);
      if (back < HOLDS) {
        throw new ModelException(
            "belt "
                + name
                + " does not hold its person back: its ends take "
                + Scale.NUMBER.show(back)
                + " of its tension rearwards; put an anchorage behind the body");
      }
    }

    /**
     * The tension that holds a force on the body forwards.
     *
     * @param forward the force [N]
     * @return the tension [N]
     */
    public double tension(double forward) {
      return Guard.solved("tension of a belt", forward / back(from, to));
    }

    Stream<End> ends() {
      return Stream.of(from, to);
    }

    private static double back(End from, End to) {
      return from.towardsBody().getX() + to.towardsBody().getX();
    }
  }

  /**
   * One end of a belt.
   *
   * @param anchor what holds it
   * @param body where the webbing meets the body
   * @param onwards where it runs on to from a loop, such as a reel; empty where it ends
   */
  public record End(Mount anchor, Point body, Optional<Point> onwards) {
    /** Refuses an anchorage in the body. */
    public End {
      refuseNear("body", anchor, body);
      onwards.ifPresent(reel -> refuseNear("reel", anchor, reel));
    }

    /**
     * An end that is held fast.
     *
     * @param anchor what holds it
     * @param body where the webbing meets the body
     * @return the end
     */
    public static End fixed(Mount anchor, Point body) {
      return new End(anchor, body, Optional.empty());
    }

    /**
     * A loop that the webbing runs through.
     *
     * @param anchor what holds the loop
     * @param body where the webbing meets the body
     * @param reel where it runs on to
     * @return the end
     */
    public static End loop(Mount anchor, Point body, Point reel) {
      return new End(anchor, body, Optional.of(reel));
    }

    Vector3D towardsBody() {
      return Ray.vector(anchor.at(), body).normalize();
    }

    /** The pull on the anchorage for a tension of 1. */
    Vector3D pull() {
      return onwards
          .map(reel -> towardsBody().add(Ray.vector(anchor.at(), reel).normalize()))
          .orElseGet(this::towardsBody);
    }

    private static void refuseNear(String what, Mount anchor, Point point) {
      if (anchor.at().distance(point) < SuspensionMember.ONE_POINT) {
        throw new ModelException("anchorage " + anchor.name() + " is where its " + what + " is");
      }
    }
  }

  /** What belts are fastened to. */
  public enum Fixing {
    /** The vehicle: each anchorage is a mount of the frame. */
    ON_VEHICLE,
    /** The seat, whose mounts then carry its person too. */
    ON_CHAIR
  }

  /**
   * The seat itself.
   *
   * @param kilograms its mass [kg]
   * @param centre its centre of mass
   * @param mounts what it stands on
   * @param belts what its belts are fastened to
   */
  public record Chair(double kilograms, Point centre, List<Mount> mounts, Fixing belts) {
    /** Refuses a seat of no mass, and one that stands on nothing. */
    public Chair {
      Guard.positive("mass of a seat", kilograms, Scale.KG);
      mounts = List.copyOf(mounts);
      if (mounts.isEmpty()) {
        throw new ModelException("a seat stands on nothing; name its mounts");
      }
    }

    /**
     * A seat whose belts are fastened to the vehicle.
     *
     * @param mass its mass
     * @param centre its centre of mass
     * @param mounts what it stands on
     * @return the seat
     */
    public static Chair of(Quantity<Mass> mass, Point centre, Mount... mounts) {
      return new Chair(si("mass of a seat", mass), centre, List.of(mounts), Fixing.ON_VEHICLE);
    }

    /**
     * The same seat with its belts fastened to it.
     *
     * @return the seat
     */
    public Chair carryingBelts() {
      return new Chair(kilograms, centre, mounts, Fixing.ON_CHAIR);
    }
  }
}
