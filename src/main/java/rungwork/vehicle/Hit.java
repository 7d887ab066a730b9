package rungwork.vehicle;

import java.util.List;
import java.util.Locale;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Mass;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;
import rungwork.solve.InertiaBalance;

/** Where a frontal impact meets the frame. */
public enum Hit {
  /**
   * A wall across the whole width: both rail tips decelerate alike, so the vehicle does not yaw,
   * which says how the force splits between them.
   */
  FULL_WIDTH,
  /** The left rail's tip alone takes it: the vehicle yaws its nose to the left. */
  LEFT_TIP,
  /** The right rail's tip alone takes it: the vehicle yaws its nose to the right. */
  RIGHT_TIP,
  /** A narrow obstacle meets the middle of the foremost crossmember. */
  CENTRE;

  /** Rail tips farther apart along x than this do not meet a wall together [m]: 1 mm. */
  private static final double LEVEL = 1e-3;

  /**
   * Where it hits in a sentence.
   *
   * @return for example {@code left tip}
   */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The forces of the obstacle when it decelerates a vehicle.
   *
   * @param vehicle the vehicle with its frame's own masses
   * @param ladder its frame
   * @param deceleration of the centre of the amplified masses [m/s²]
   * @return one force, or one at each tip
   */
  List<AppliedWrench> forces(Vehicle vehicle, Ladder ladder, double deceleration) {
    List<Mass> masses = vehicle.masses().stream().map(Mass::amplified).toList();
    double force = masses.stream().mapToDouble(Mass::kilograms).sum() * deceleration;
    return switch (this) {
      case FULL_WIDTH -> bothTips(masses, ladder, force);
      case LEFT_TIP -> List.of(at("left tip", ladder, force));
      case RIGHT_TIP -> List.of(at("right tip", ladder, force));
      case CENTRE -> List.of(at(ladder.crossmembers().get(0).name() + " middle", ladder, force));
    };
  }

  /** With yaw accelerations l and r from the left and the right tip alone, s l + (1 − s) r = 0. */
  private static List<AppliedWrench> bothTips(List<Mass> masses, Ladder ladder, double force) {
    refuseUneven(ladder);
    double left = yaw(masses, at("left tip", ladder, force));
    double right = yaw(masses, at("right tip", ladder, force));
    double share = right / (right - left);
    if (!(share >= 0 && share <= 1)) {
      throw new ModelException(
          "the centre of mass lies beside the rail tips of ladder "
              + ladder.name()
              + ": a full-width wall cannot stop it without yaw");
    }
    return List.of(
        at("left tip", ladder, share * force), at("right tip", ladder, (1 - share) * force));
  }

  private static double yaw(List<Mass> masses, AppliedWrench force) {
    return InertiaBalance.of(masses, List.of(force)).acceleration().alphaZ();
  }

  private static AppliedWrench at(String feature, Ladder ladder, double force) {
    return new AppliedWrench(
        "obstacle at " + feature,
        Wrench.force(-force, 0, 0),
        ladder.node(feature).at(),
        List.of(feature));
  }

  private static void refuseUneven(Ladder ladder) {
    double left = ladder.rail(Side.LEFT).x();
    double right = ladder.rail(Side.RIGHT).x();
    if (Math.abs(left - right) > LEVEL) {
      throw new ModelException(
          "the rail tips of ladder "
              + ladder.name()
              + " are at x "
              + Scale.MM.show(left)
              + " and "
              + Scale.MM.show(right)
              + ": a full-width wall meets one of them alone; ask for that tip");
    }
  }
}
