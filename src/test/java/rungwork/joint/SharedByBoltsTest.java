package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.demand;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.Step;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

class SharedByBoltsTest {
  private static Spot spot(double x, double y) {
    return Spot.at(mm(x), mm(y));
  }

  /**
   * Four bolts 60 apart: 4000 N out, 120 N·m about y, 2000 N along y and 36 N·m in the face. The
   * moment lifts the bolts at x = 0: 1000 + 120000·30/3600 = 2000 N. The torque adds to the shear
   * of those at x = 60: 500 + 36000·30/7200 = 650 along y, 150 across.
   */
  @Test
  void tension_and_shear_find_their_own_worst_bolts() {
    BoltGroup group =
        new BoltGroup(
            "bracket",
            Bolt.of("M8", "8.8"),
            Bolt.Threads.IN_PLANE,
            List.of(spot(0, 70), spot(0, 0), spot(60, 0), spot(60, 70)),
            BoltGroup.Plate.of(Parts.S235, mm(4), mm(9), mm(15)));
    FaceLoad load = Parts.load(new Wrench(0, 2000, 4000, -35, 120, 36), new Point(0.03, 0.035, 0));
    List<Check> checks = group.checks(load);
    // Along y the bolts stand 35 off the middle: Mx = −35 N·m adds 35000·35/4900 = 250 at y = 0.
    assertEquals(2250, demand(checks, "bolt tension"), 1e-9);
    assertEquals("bolt 2", named(checks, "bolt tension").where());
    assertEquals(2250, demand(checks, "head through the plate"), 1e-9);
    // J = 4·(30² + 35²) = 8500 mm²; 500 + 36000·30/J and 36000·35/J.
    double shear = Math.hypot(500 + 36000 * 30 / 8500.0, 36000 * 35 / 8500.0);
    for (String what : List.of("bolt shear", "bearing of the plate")) {
      assertEquals(shear, demand(checks, what), 1e-9);
      assertEquals("bolt 3", named(checks, what).where());
    }
    // Thread of an M8, 36.6 mm²: 0.6·800 in shear, 0.9·800 in tension, of which it may use 1.4.
    double back = Math.hypot(500 - 36000 * 30 / 8500.0, 36000 * 35 / 8500.0);
    Check both = named(checks, "bolt shear and tension");
    assertEquals(
        back / (480 * 36.6) + 2250 / (1.4 * 720 * 36.6), both.utilisation().orElseThrow(), 1e-9);
    assertEquals("bolt 2", both.where());
    List<Double> shears = group.shears(load);
    List<Double> expected = List.of(back, back, shear, shear);
    for (int i = 0; i < 4; i++) {
      assertEquals(expected.get(i), shears.get(i), 1e-9);
    }
    List<Step> lines = new BoltGroupStrength(group, load).largestTension();
    assertEquals(2250, lines.get(lines.size() - 1).result(), 1e-9);
  }

  /** Three bolts in a row, the middle one 0.8 mm off it, stand in no straight line. */
  @Test
  void a_row_that_is_hardly_crooked_holds_a_moment_about_itself() {
    Pattern crooked = Pattern.ofBolts(List.of(spot(-30, 0), spot(0, 0.8), spot(30, 0)));
    FaceLoad tipped = Parts.load(Wrench.moment(10, 0, 0), new Point(0, 0, 0));
    assertEquals(Optional.empty(), crooked.cannotTake(tipped));
  }

  /**
   * A moment about the row is none below a thousand-millionth of the whole load, in which forces
   * count by the row's radius of 30 mm.
   */
  @Test
  void a_row_ignores_a_moment_about_itself_that_is_rounding() {
    Pattern row = Pattern.ofBolts(List.of(spot(-30, 0), spot(30, 0)));
    Point middle = new Point(0, 0, 0);
    List<Wrench> large =
        List.of(
            Wrench.force(1e4, 0, 0),
            Wrench.force(0, -1e4, 0),
            Wrench.force(0, 0, 1e4),
            Wrench.moment(0, 300, 0),
            Wrench.moment(0, 0, -300));
    for (Wrench wrench : large) {
      FaceLoad rounding = Parts.load(wrench.plus(Wrench.moment(2e-7, 0, 0)), middle);
      assertEquals(Optional.empty(), row.cannotTake(rounding), wrench.toString());
      FaceLoad real = Parts.load(wrench.plus(Wrench.moment(4e-7, 0, 0)), middle);
      assertTrue(row.cannotTake(real).isPresent(), wrench.toString());
    }
    assertTrue(row.cannotTake(Parts.load(Wrench.moment(1e-8, 0, 0), middle)).isPresent());
    assertEquals(Optional.empty(), row.cannotTake(Parts.load(Wrench.ZERO, middle)));
  }
}
