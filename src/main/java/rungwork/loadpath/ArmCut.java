package rungwork.loadpath;

import static rungwork.loadpath.Reaction.Ray.vector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.frame.Point;
import rungwork.loadpath.SuspensionMember.Arm;
import rungwork.loadpath.SuspensionMember.Bar;
import rungwork.loadpath.SuspensionMember.RollBarLink;

/**
 * An arm cut where a bar stands on it, seen from its ball joint.
 *
 * @param moment at the cut [N·m]
 * @param along force along the arm [N]
 */
record ArmCut(double moment, double along) {
  /** Places nearer to each other are one [m]. */
  private static final double ONE_PLACE = 1e-6;

  /** A cut beside each bar and each roll bar's link that stands on the arm. */
  static List<ArmCut> of(Arm arm, CornerForces forces) {
    Vector3D ball =
        forces.sum(r -> r.body().equals(SuspensionMember.UPRIGHT) && r.heldBy(arm.name()) ? -1 : 0);
    List<ArmCut> cuts = new ArrayList<>();
    for (SuspensionMember member : forces.corner().members()) {
      standing(member, arm).ifPresent(at -> cuts.add(at(at, arm, ball, forces)));
    }
    return cuts;
  }

  /** The ball joint's force and what stands farther out. */
  private static ArmCut at(Point at, Arm arm, Vector3D ball, CornerForces forces) {
    Vector3D moment = vector(at, arm.ball()).crossProduct(ball);
    Vector3D force = ball;
    for (SuspensionMember member : forces.corner().members()) {
      Optional<Point> other = standing(member, arm);
      if (other.isPresent() && arm.fromAxis(other.get()) > arm.fromAxis(at) + ONE_PLACE) {
        Vector3D push = forces.sum(r -> r.member().equals(member.name()) ? 1 : 0);
        moment = moment.add(vector(at, other.get()).crossProduct(push));
        force = force.add(push);
      }
    }
    Vector3D line = vector(at, arm.ball());
    double length = line.getNorm();
    return new ArmCut(moment.getNorm(), length < ONE_PLACE ? 0 : force.dotProduct(line) / length);
  }

  /** Where a bar or a roll bar's link stands on an arm. */
  private static Optional<Point> standing(SuspensionMember member, Arm arm) {
    if (member instanceof Bar bar && bar.body().equals(arm.name())) {
      return Optional.of(bar.end());
    }
    return member instanceof RollBarLink link && link.body().equals(arm.name())
        ? Optional.of(link.end())
        : Optional.empty();
  }
}
