package rungwork.loadpath;

import java.util.List;
import rungwork.frame.Wrench;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Side;

/**
 * What a suspension, a belt or a crossmember pushes on one mount.
 *
 * @param mount the mount
 * @param loadCase the load case's name, with what was assumed where two pivots share a thrust
 * @param wrench force on the mount in vehicle axes, at its point
 */
public record MountForce(Mount mount, String loadCase, Wrench wrench) {
  /**
   * What a crossmember does to the rail at its joint: all six forces at its end, at the node where
   * their lines meet. The chain of such a joint is a weld group and the rail's wall; its face's
   * origin lies where the crossmember meets the rail.
   *
   * @param assessment the frame under its events
   * @param event one of them
   * @param crossmember the crossmember's name
   * @param side the rail's side
   * @return a force on mount {@code front crossmember at left rail} for each of the ladder's
   *     assumptions on how stiff its joints are
   */
  public static List<MountForce> ofCrossmember(
      Assessment assessment, Event event, String crossmember, Side side) {
    return CrossmemberJoint.of(assessment.ladder(), crossmember, side).under(assessment, event);
  }
}
