package rungwork.loadpath;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.frame.Wrench;
import rungwork.loadpath.Reaction.Ray;
import rungwork.vehicle.Mount;

/**
 * A steering gear on two mounts: what its tie rods push reaches them by the rule of the lever.
 * Force along the line of the two is shared in a way that statics cannot say: each mount is asked
 * with none and with all of it. A turning about that line goes to both in halves.
 *
 * @param name such as {@code rack}
 * @param first one mount
 * @param second the other mount
 */
public record SteeringGear(String name, Mount first, Mount second) {
  /** A force along the line below this part of the whole is rounding. */
  private static final double NOTHING = 1e-9;

  /** Refuses two mounts in one place. */
  public SteeringGear {
    name = Guard.name("steering gear", name);
    if (first.at().distance(second.at()) < SuspensionMember.ONE_POINT) {
      throw new ModelException("both mounts of steering gear " + name + " are in one place");
    }
  }

  /**
   * What the gear pushes on one of its mounts.
   *
   * @param mount the mount's name
   * @param ends what the tie rods push on the gear, at its two ends, in one load case
   * @return one force, or both ends of what is possible
   */
  public List<MountForce> on(String mount, List<MountForce> ends) {
    Mount held = mount(mount);
    Vector3D line = Ray.vector(first.at(), second.at());
    Vector3D u = line.normalize();
    Vector3D across = Vector3D.ZERO;
    Vector3D all = Vector3D.ZERO;
    double turning = 0;
    for (MountForce end : ends) {
      Vector3D f = vector(end.wrench());
      Vector3D arm = Ray.vector(first.at(), end.mount().at());
      double along = f.dotProduct(u);
      Vector3D side = f.subtract(along, u);
      Vector3D off = arm.subtract(arm.dotProduct(u), u);
      Vector3D onSecond = side.scalarMultiply(arm.dotProduct(u)).subtract(along, off);
      onSecond = onSecond.scalarMultiply(1 / line.getNorm());
      across = across.add(held.equals(second) ? onSecond : side.subtract(onSecond));
      turning += off.crossProduct(side).dotProduct(u);
      all = all.add(f);
    }
    return forces(held, ends, new Parts(across, u.scalarMultiply(all.dotProduct(u)), u, turning));
  }

  private static List<MountForce> forces(Mount held, List<MountForce> ends, Parts parts) {
    String loadCase = ends.get(0).loadCase();
    MountForce without = new MountForce(held, loadCase, parts.wrench(0));
    if (parts.along().getNorm() <= NOTHING * (parts.across().getNorm() + parts.along().getNorm())) {
      return List.of(without);
    }
    return List.of(
        new MountForce(held, loadCase + ", thrust on the other mount", parts.wrench(0)),
        new MountForce(held, loadCase + ", thrust on this mount", parts.wrench(1)));
  }

  private Mount mount(String mount) {
    if (mount.equals(first.name())) {
      return first;
    }
    if (mount.equals(second.name())) {
      return second;
    }
    throw new ModelException(
        "steering gear "
            + name
            + " does not stand on mount "
            + mount
            + "; it stands on "
            + first.name()
            + " and "
            + second.name());
  }

  private static Vector3D vector(Wrench w) {
    return new Vector3D(w.fx(), w.fy(), w.fz());
  }

  /** What one mount takes across the line, what both take along it, and half a turning. */
  private record Parts(Vector3D across, Vector3D along, Vector3D u, double turning) {
    Wrench wrench(double share) {
      Vector3D f = across.add(share, along);
      Vector3D m = u.scalarMultiply(turning / 2);
      return new Wrench(f.getX(), f.getY(), f.getZ(), m.getX(), m.getY(), m.getZ());
    }
  }
}
