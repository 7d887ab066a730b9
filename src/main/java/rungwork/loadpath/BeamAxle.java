package rungwork.loadpath;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * An axle that joins two wheels and is located by bars, such as two lower and one upper trailing
 * link, a rod across, and two springs. It is one body with six equations, so that six bars hold it;
 * a fourth trailing link has to bend its bushes, and how it shares statics cannot say.
 *
 * @param name such as {@code rear axle}
 * @param left the left wheel on it
 * @param right the right wheel on it
 * @param members what locates it; its bars hold {@value SuspensionMember#UPRIGHT}, which here is
 *     the axle
 */
public record BeamAxle(String name, Hub left, Hub right, List<SuspensionMember> members) {
  /** Refuses an axle braked inboard at one wheel only, and one that moves. */
  public BeamAxle {
    name = Guard.name("axle", name);
    members = List.copyOf(members);
    if (left.brakeCarriers().isEmpty() != right.brakeCarriers().isEmpty()) {
      throw new ModelException(
          "axle " + name + " is braked inboard at one wheel only; brake both alike");
    }
    corner(name, left, right, members);
  }

  /**
   * Forces of all members that hold both wheels against the ground.
   *
   * @param loadCase the load case's name
   * @param leftTyre force and moment of the ground on the left tyre, at its contact
   * @param rightTyre the same on the right tyre
   * @return the forces; their tyre is the sum of both at the middle between the contacts
   */
  public CornerForces under(String loadCase, Wrench leftTyre, Wrench rightTyre) {
    Corner axle = corner(name, left, right, members);
    Point middle = axle.hub().contact();
    return axle.under(
        loadCase,
        leftTyre.moved(left.contact(), middle).plus(rightTyre.moved(right.contact(), middle)));
  }

  /** The axle as one wheel in the middle: the same six equations. */
  Corner corner() {
    return corner(name, left, right, members);
  }

  private static Corner corner(String name, Hub left, Hub right, List<SuspensionMember> members) {
    Set<String> carriers = new LinkedHashSet<>(left.brakeCarriers());
    carriers.addAll(right.brakeCarriers());
    Hub middle =
        new Hub(
            middle(left.centre(), right.centre()),
            middle(left.contact(), right.contact()),
            List.copyOf(carriers),
            Hub.Carrier.BEAM);
    return new Corner(name, middle, members);
  }

  private static Point middle(Point one, Point other) {
    return new Point(
        (one.x() + other.x()) / 2, (one.y() + other.y()) / 2, (one.z() + other.z()) / 2);
  }
}
