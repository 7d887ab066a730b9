package rungwork.vehicle;

import java.util.Comparator;
import java.util.List;
import rungwork.fault.ModelException;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Point;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.solve.Response;
import rungwork.solve.Solver;

/**
 * The workshop test of torsional stiffness: the bare frame rests on two stands at the rear, and a
 * couple T, force times spacing, twists it at the front.
 *
 * <pre>
 *   K = T / (θ_front − θ_rear),     θ = (δ_left + δ_right) / spacing
 * </pre>
 *
 * <p>The angle is the workshop's atan((δL + δR)/spacing), small as first order asks. The stands
 * hold no more than they must, so the rails may turn on them.
 *
 * @param ladder the frame
 * @param frontLeft feature that is pushed up
 * @param frontRight feature that is pushed down
 * @param rearLeft feature on a stand
 * @param rearRight feature on a stand
 */
record TwistRig(
    Ladder ladder, String frontLeft, String frontRight, String rearLeft, String rearRight) {
  /** A couple small enough for any frame [N·m]; the answer does not depend on it. */
  static final double COUPLE = 1;

  /** Refuses a rig without spacing. */
  TwistRig {
    refuseNarrow(ladder, frontLeft, frontRight);
    refuseNarrow(ladder, rearLeft, rearRight);
  }

  /**
   * The rig at a vehicle's axles: at each wheel, the mount nearest to the axle's station.
   *
   * @param vehicle the vehicle
   * @param ladder its frame
   * @return the rig
   */
  static TwistRig of(Vehicle vehicle, Ladder ladder) {
    return new TwistRig(
        ladder,
        nearest(vehicle.wheel(Axle.FRONT, Side.LEFT), ladder),
        nearest(vehicle.wheel(Axle.FRONT, Side.RIGHT), ladder),
        nearest(vehicle.wheel(Axle.REAR, Side.LEFT), ladder),
        nearest(vehicle.wheel(Axle.REAR, Side.RIGHT), ladder));
  }

  /**
   * The torsional stiffness.
   *
   * @param joints what is assumed of the joints
   * @return K [N·m/rad]
   */
  double stiffness(Joints joints) {
    Response response = Solver.of(frame(joints)).solve(twist());
    double front = turn(response, frontLeft, frontRight);
    double rear = turn(response, rearLeft, rearRight);
    return COUPLE / (front - rear);
  }

  /** The frame on its stands. */
  Frame frame(Joints joints) {
    return ladder.frame(joints).on(stands());
  }

  /** The couple. */
  LoadCase twist() {
    double force = COUPLE / spacing(frontLeft, frontRight);
    return LoadCase.of("twist test", push(frontLeft, force), push(frontRight, -force));
  }

  private List<Support> stands() {
    return List.of(
        Support.holding(
            ladder.node(rearLeft).name(),
            Freedom.UX,
            Freedom.UY,
            Freedom.UZ,
            Freedom.RY,
            Freedom.RZ),
        Support.holding(ladder.node(rearRight).name(), Freedom.UZ));
  }

  private Load push(String feature, double force) {
    return new Load.AtNode(ladder.node(feature).name(), Wrench.force(0, 0, force));
  }

  private double turn(Response response, String left, String right) {
    double up = response.displacement(ladder.node(left).name()).uz();
    double down = -response.displacement(ladder.node(right).name()).uz();
    return (up + down) / spacing(left, right);
  }

  private double spacing(String left, String right) {
    return ladder.node(left).at().y() - ladder.node(right).at().y();
  }

  private static String nearest(Wheel wheel, Ladder ladder) {
    double station = wheel.contact().x();
    return wheel.carriers().stream()
        .min(
            Comparator.comparingDouble(
                feature -> Math.abs(ladder.node(feature).at().x() - station)))
        .orElseThrow();
  }

  private static void refuseNarrow(Ladder ladder, String left, String right) {
    Point there = ladder.node(left).at();
    if (there.y() - ladder.node(right).at().y() < Layout.SAME_PLACE) {
      throw new ModelException(
          "the twist test needs a left and a right place at each end; "
              + left
              + " is not to the left of "
              + right);
    }
  }
}
