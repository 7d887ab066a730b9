package rungwork.section;

/**
 * A way to lay a section differently: turned, or its mirror image. The new axes' components are y'
 * = yy·y + yz·z and z' = zy·y + zz·z.
 *
 * @param yy from y to the new y
 * @param yz from z to the new y
 * @param zy from y to the new z
 * @param zz from z to the new z
 */
record Turn(double yy, double yz, double zy, double zz) {
  /** What pointed left now points up. */
  static final Turn QUARTER = new Turn(0, -1, 1, 0);

  /** Left becomes right. */
  static final Turn MIRROR = new Turn(-1, 0, 0, 1);

  /** Turns minus zero into zero. */
  private static final double PLAIN_ZERO = 0.0;

  /** Turned from y towards z by any angle [rad]. */
  static Turn by(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Turn(c, -s, s, c);
  }

  Spot of(Spot spot) {
    return new Spot(
        yy * spot.y() + yz * spot.z() + PLAIN_ZERO, zy * spot.y() + zz * spot.z() + PLAIN_ZERO);
  }

  /** 1 for a turn, −1 for a mirror image, in which torques change their sign. */
  double handedness() {
    return yy * zz - yz * zy;
  }

  /** Whether what was level is upright now; for quarter turns and mirror images only. */
  boolean swapsAxes() {
    return yy == 0;
  }
}
