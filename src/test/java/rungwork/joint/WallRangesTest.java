package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.named;
import static rungwork.joint.Parts.numbers;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.Verdict.Measured;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.PlateOnTube.Foot;
import rungwork.joint.PlateOnTube.Way;
import rungwork.quantity.Units;

/** Feet on a tube of 50 × 50 × 3 mm S355 at the ends of the rules' ranges, and what is asked. */
class WallRangesTest {
  private static final TubeWall TUBE = TubeWall.of(Parts.S355, mm(50), mm(50), mm(3));
  private static final String PULL = "bending of the face by the pull";
  private static final String SIDES = "side walls under the foot";

  private static PlateOnTube foot(Way way, double length, double thickness) {
    return PlateOnTube.of("rail", TUBE, Foot.central(way, mm(length), mm(thickness)));
  }

  private static List<Check> checks(PlateOnTube joint, Wrench wrench) {
    return joint.checks(Parts.load(wrench, new Point(0, 0, 0)));
  }

  private static List<String> asked(PlateOnTube joint, Wrench wrench) {
    return checks(joint, wrench).stream().map(Check::what).toList();
  }

  @Test
  void side_walls_are_asked_from_where_the_foot_reaches_their_inside() {
    // 50 less two walls of 3.
    Wrench pull = Wrench.force(0, 0, 1000);
    assertTrue(asked(foot(Way.TRANSVERSE, 44, 5), pull).contains(SIDES));
    assertFalse(asked(foot(Way.TRANSVERSE, 43.9, 5), pull).contains(SIDES));
    assertTrue(asked(foot(Way.PATCH, 40, 44), pull).contains(SIDES));
    assertFalse(asked(foot(Way.PATCH, 40, 43.9), pull).contains(SIDES));
  }

  @Test
  void the_rules_for_faces_hold_at_the_ends_of_their_ranges() {
    Wrench pull = Wrench.force(0, 0, 1000);
    for (PlateOnTube joint :
        List.of(
            foot(Way.LONGITUDINAL, 60, 10),
            foot(Way.TRANSVERSE, 20, 5),
            foot(Way.PATCH, 40, 12.5),
            foot(Way.PATCH, 40, 42.5))) {
      assertTrue(named(checks(joint, pull), PULL).made(), joint.foot().toString());
    }
    assertEquals(
        "outside EN 1993-1-8: the foot covers 0.380 of the face's width, not 0.40 to 1.0",
        named(checks(foot(Way.TRANSVERSE, 19, 5), pull), PULL).verdict().reason(Units.METRIC));
  }

  @Test
  void rocking_is_covered_from_a_quarter_of_the_faces_width() {
    Wrench rocked = Wrench.moment(20, 0, 0);
    assertTrue(named(checks(foot(Way.PATCH, 40, 12.5), rocked), "rocking of the face").made());
    assertEquals(
        "outside EN 1993-1-8: the foot covers 0.240 of the face's width, not 0.25 to 0.85; outside"
            + " EN 1993-1-8: table 7.14 is for feet that cover a quarter of the face's width",
        named(checks(foot(Way.PATCH, 40, 12), rocked), "rocking of the face")
            .verdict()
            .reason(Units.METRIC));
  }

  /**
   * A plate of 60 mm: 3000/60 + 6·30000/60² = 100 N/mm on two planes of 3·355/√3; a patch of 60 ×
   * 40 welded all round: 3000/200 + 30000/(60·40 + 60²/3) + 12000/(60·40 + 40²/3) on one.
   */
  @Test
  void a_plate_punches_on_two_planes_and_a_patch_on_one() {
    Wrench wrench = new Wrench(0, 0, 3000, 12, 30, 0);
    String punching = "punching through the wall";
    Measured plate = numbers(checks(foot(Way.LONGITUDINAL, 60, 5), wrench), punching);
    assertEquals(100e3, plate.demand(), 1e-6);
    assertEquals(2 * 3 * 355e3 / Math.sqrt(3), plate.capacity(), 1e-3);
    Measured patch = numbers(checks(foot(Way.PATCH, 60, 40), wrench), punching);
    assertEquals((15 + 30000.0 / 3600 + 12000 / (2400 + 1600.0 / 3)) * 1e3, patch.demand(), 1e-6);
    assertEquals(3 * 355e3 / Math.sqrt(3), patch.capacity(), 1e-3);
  }

  @Test
  void a_torque_on_the_face_is_not_checked() {
    PlateOnTube plate = foot(Way.LONGITUDINAL, 60, 5);
    String twisting = "twisting of the foot on the face";
    assertEquals(
        "EN 1993-1-8, 7.5 gives no resistance of a face to a foot that is twisted on it; the weld"
            + " is asked for the torque, the wall is not",
        named(checks(plate, new Wrench(0, 0, 1000, 0, 0, 5)), twisting)
            .verdict()
            .reason(Units.METRIC));
  }

  @Test
  void a_pull_alone_asks_no_sum_and_nothing_that_is_not_there() {
    assertEquals(
        List.of(
            "punching through the wall",
            "shear of the wall along the foot",
            PULL,
            PULL + ", second opinion"),
        asked(foot(Way.LONGITUDINAL, 60, 5), Wrench.force(0, 0, 1000)));
  }
}
