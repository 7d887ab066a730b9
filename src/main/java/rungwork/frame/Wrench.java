package rungwork.frame;

import java.util.List;
import rungwork.fault.Guard;

/**
 * A force and a moment together at a point, in vehicle axes.
 *
 * @param fx force forward [N]
 * @param fy force to the left [N]
 * @param fz force up [N]
 * @param mx moment about x, right-handed [N·m]
 * @param my moment about y, right-handed (positive: nose down) [N·m]
 * @param mz moment about z, right-handed (positive: nose to the left) [N·m]
 */
public record Wrench(double fx, double fy, double fz, double mx, double my, double mz) {
  /** Refuses what is not finite. */
  public Wrench {
    Guard.finite("force fx", fx);
    Guard.finite("force fy", fy);
    Guard.finite("force fz", fz);
    Guard.finite("moment mx", mx);
    Guard.finite("moment my", my);
    Guard.finite("moment mz", mz);
  }

  /** Nothing. */
  public static final Wrench ZERO = new Wrench(0, 0, 0, 0, 0, 0);

  /** A force of 1 along each axis, then a moment of 1 about each. */
  public static final List<Wrench> UNITS =
      List.of(
          force(1, 0, 0),
          force(0, 1, 0),
          force(0, 0, 1),
          moment(1, 0, 0),
          moment(0, 1, 0),
          moment(0, 0, 1));

  /**
   * A force without a moment.
   *
   * @param fx forward [N]
   * @param fy to the left [N]
   * @param fz up [N]
   * @return the wrench
   */
  public static Wrench force(double fx, double fy, double fz) {
    return new Wrench(fx, fy, fz, 0, 0, 0);
  }

  /**
   * A moment without a force.
   *
   * @param mx about x [N·m]
   * @param my about y [N·m]
   * @param mz about z [N·m]
   * @return the wrench
   */
  public static Wrench moment(double mx, double my, double mz) {
    return new Wrench(0, 0, 0, mx, my, mz);
  }

  /**
   * The sum of two wrenches at the same point.
   *
   * @param other the other one
   * @return the sum
   */
  public Wrench plus(Wrench other) {
    return new Wrench(
        fx + other.fx, fy + other.fy, fz + other.fz, mx + other.mx, my + other.my, mz + other.mz);
  }

  /**
   * This wrench scaled.
   *
   * @param factor the factor [1]
   * @return the scaled wrench
   */
  public Wrench times(double factor) {
    return new Wrench(fx * factor, fy * factor, fz * factor, mx * factor, my * factor, mz * factor);
  }

  /**
   * The wrench at another point that does the same to a rigid body: the force stays, the moment
   * becomes M + (from − to) × F.
   *
   * @param from where this wrench acts
   * @param to where the equal wrench shall act
   * @return the equal wrench there
   */
  public Wrench moved(Point from, Point to) {
    double dx = from.x() - to.x();
    double dy = from.y() - to.y();
    double dz = from.z() - to.z();
    return new Wrench(
        fx, fy, fz, mx + dy * fz - dz * fy, my + dz * fx - dx * fz, mz + dx * fy - dy * fx);
  }
}
