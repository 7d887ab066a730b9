package rungwork.vehicle;

import java.util.List;
import java.util.OptionalDouble;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;
import rungwork.solve.InertiaBalance;

/**
 * How an obstacle pushes a vehicle straight rearwards.
 *
 * @param hit where it meets the frame
 * @param deceleration of the centre of the amplified masses [m/s²]
 * @param height of its force [m]; empty for that of the place that it meets
 */
record FrontalPush(Event.Hit hit, double deceleration, OptionalDouble height) {
  /** Rail tips farther apart along x than this do not meet a wall together [m]: 1 mm. */
  private static final double LEVEL = 1e-3;

  private static final String LEFT = "left tip";
  private static final String RIGHT = "right tip";

  /** The event's name. */
  String words() {
    String up = height.isEmpty() ? "" : ", " + Scale.MM.show(height.getAsDouble(), 3) + " up";
    return "frontal impact, " + hit.words() + up + ", " + Scale.G.show(deceleration, 2);
  }

  List<String> assumptions() {
    return List.of(
        "the force is the sum of all masses, those on springs and belts amplified, times the"
            + " deceleration of their centre",
        "the force is straight rearwards at "
            + (height.isEmpty()
                ? "the height of the rails where it meets them"
                : "the stated height")
            + "; no friction at the wall",
        "the body is free to pitch and, unless both tips are held alike, to yaw; the tyres keep"
            + " their standing loads");
  }

  /**
   * The forces of the obstacle.
   *
   * @param vehicle the vehicle with its frame's own masses
   * @param ladder its frame
   * @return one force, or one at each tip
   */
  List<AppliedWrench> on(Vehicle vehicle, Ladder ladder) {
    List<Mass> masses = vehicle.masses().stream().map(Mass::amplified).toList();
    double force = masses.stream().mapToDouble(Mass::kilograms).sum() * deceleration;
    return switch (hit) {
      case FULL_WIDTH -> bothTips(masses, ladder, force);
      case LEFT_TIP -> List.of(at(ladder, LEFT, force));
      case RIGHT_TIP -> List.of(at(ladder, RIGHT, force));
      case CENTRE -> List.of(at(ladder, ladder.crossmembers().get(0).name() + " middle", force));
    };
  }

  private AppliedWrench at(Ladder ladder, String feature, double force) {
    Point met = ladder.node(feature).at();
    Point there = new Point(met.x(), met.y(), height.orElse(met.z()));
    return new AppliedWrench(
        "obstacle at " + feature, Wrench.force(-force, 0, 0), there, List.of(feature));
  }

  /** With yaw accelerations l and r from the left and the right tip alone, s l + (1 − s) r = 0. */
  private List<AppliedWrench> bothTips(List<Mass> masses, Ladder ladder, double force) {
    refuseUneven(ladder);
    double left = yaw(masses, at(ladder, LEFT, force));
    double right = yaw(masses, at(ladder, RIGHT, force));
    double share = right / (right - left);
    if (!(share >= 0 && share <= 1)) {
      throw new ModelException(
          "the centre of mass lies beside the rail tips of ladder "
              + ladder.name()
              + ": a full-width wall cannot stop it without yaw");
    }
    return List.of(at(ladder, LEFT, share * force), at(ladder, RIGHT, (1 - share) * force));
  }

  private static double yaw(List<Mass> masses, AppliedWrench force) {
    return InertiaBalance.of(masses, List.of(force)).acceleration().alphaZ();
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
