package rungwork.solve;

import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.frame.Freedom;

/**
 * How far a place moves and turns, in vehicle axes.
 *
 * @param ux forward [m]
 * @param uy to the left [m]
 * @param uz up [m]
 * @param rx turn about x, right-handed [rad]
 * @param ry turn about y, right-handed (positive: nose down) [rad]
 * @param rz turn about z, right-handed (positive: nose to the left) [rad]
 */
public record Displacement(double ux, double uy, double uz, double rx, double ry, double rz) {
  /** Refuses what is not finite. */
  public Displacement {
    Guard.solved("displacement", ux + uy + uz + rx + ry + rz);
  }

  private static final Scale TURN = new Scale("mrad", 1e-3);

  /**
   * Both motions together; small turns add.
   *
   * @param other the other motion
   * @return the sum
   */
  public Displacement plus(Displacement other) {
    return new Displacement(
        ux + other.ux, uy + other.uy, uz + other.uz, rx + other.rx, ry + other.ry, rz + other.rz);
  }

  /**
   * The same motion, larger or smaller.
   *
   * @param factor on all six [1]
   * @return the motion
   */
  public Displacement times(double factor) {
    return new Displacement(
        ux * factor, uy * factor, uz * factor, rx * factor, ry * factor, rz * factor);
  }

  /**
   * One of its motions.
   *
   * @param motion which
   * @return how far [m] or [rad]
   */
  public double along(Freedom motion) {
    return switch (motion) {
      case UX -> ux;
      case UY -> uy;
      case UZ -> uz;
      case RX -> rx;
      case RY -> ry;
      case RZ -> rz;
    };
  }

  @Override
  public String toString() {
    return "moves ("
        + String.join(", ", Scale.MM.show(ux), Scale.MM.show(uy), Scale.MM.show(uz))
        + "), turns ("
        + String.join(", ", TURN.show(rx), TURN.show(ry), TURN.show(rz))
        + ")";
  }
}
