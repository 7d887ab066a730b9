package rungwork.frame;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.Guard;

/**
 * The plane that a flat frame lies in, with the frame's own axes p, q (in the plane) and n (its
 * normal), right-handed. This is the one place where vehicle axes and frame axes meet.
 *
 * <p>Mind the handedness: in side elevation the normal is −y, so a positive in-plane rotation there
 * is nose up, while pitch by ISO 8855 is positive nose down.
 */
public enum Plane {
  /** Seen from above: p = x, q = y, n = z. */
  PLAN(new int[] {0, 1, 2}, 1),
  /** Seen from the right side: p = x, q = z, n = −y. */
  SIDE(new int[] {0, 2, 1}, -1),
  /** Seen from in front: p = y, q = z, n = x. */
  FRONT(new int[] {1, 2, 0}, 1);

  private final int[] vehicleAxis;
  private final int normalSign;

  Plane(int[] vehicleAxis, int normalSign) {
    this.vehicleAxis = vehicleAxis;
    this.normalSign = normalSign;
  }

  /**
   * A place in the frame's axes.
   *
   * @param place in vehicle axes
   * @return p, q, n [m]
   */
  public double[] toFrame(Point place) {
    return toFrame(place.x(), place.y(), place.z());
  }

  /**
   * A wrench in the frame's axes.
   *
   * @param wrench in vehicle axes
   * @return Fp, Fq, Fn [N], Mp, Mq, Mn [N·m]
   */
  public double[] toFrame(Wrench wrench) {
    double[] force = toFrame(wrench.fx(), wrench.fy(), wrench.fz());
    double[] moment = toFrame(wrench.mx(), wrench.my(), wrench.mz());
    return new double[] {force[0], force[1], force[2], moment[0], moment[1], moment[2]};
  }

  /**
   * A vector (force, moment, displacement or rotation) in the frame's axes.
   *
   * @param x vehicle component
   * @param y vehicle component
   * @param z vehicle component
   * @return its components along p, q, n
   */
  public double[] toFrame(double x, double y, double z) {
    double[] vehicle = {x, y, z};
    return new double[] {
      vehicle[vehicleAxis[0]], vehicle[vehicleAxis[1]], normalSign * vehicle[vehicleAxis[2]]
    };
  }

  /**
   * A vector in vehicle axes.
   *
   * @param p its component along p
   * @param q its component along q
   * @param n its component along n
   * @return its components along x, y, z
   */
  public double[] toVehicle(double p, double q, double n) {
    Guard.solved("a direction in the frame", p + q + n);
    double[] vehicle = new double[3];
    vehicle[vehicleAxis[0]] = p;
    vehicle[vehicleAxis[1]] = q;
    vehicle[vehicleAxis[2]] = normalSign * n;
    return vehicle;
  }

  /**
   * Which motion of the vehicle each motion of the frame is, apart from its sign.
   *
   * @return six motions: along p, q, n, then turning about p, q, n
   */
  public List<Freedom> motions() {
    List<Freedom> motions = new ArrayList<>();
    for (int axis : vehicleAxis) {
      motions.add(Freedom.values()[axis]);
    }
    for (int axis : vehicleAxis) {
      motions.add(Freedom.values()[3 + axis]);
    }
    return List.copyOf(motions);
  }
}
