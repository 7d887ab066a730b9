package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.capacity;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

class ThroughBoltTest {
  private static final TubeWall BOX = TubeWall.of(Parts.S355, mm(50), mm(50), mm(3));

  private static ThroughBolt bolt(double force, ThroughBolt.Seat seat) {
    return ThroughBolt.tightened("arm bolt", kN(force), BOX, seat);
  }

  @Test
  void a_tight_m10_crushes_a_bare_box_and_a_loose_one_does_not() {
    assertTrue(bolt(27, ThroughBolt.Washer.of(mm(20))).needsSleeve());
    assertFalse(bolt(8, ThroughBolt.Washer.of(mm(20))).needsSleeve());
  }

  @Test
  void a_washer_too_small_for_the_rule_needs_a_sleeve_too() {
    assertTrue(bolt(1, ThroughBolt.Washer.of(mm(10))).needsSleeve());
  }

  @Test
  void a_sleeve_takes_the_clamping_force_as_a_short_tube() {
    ThroughBolt.Sleeve sleeve = ThroughBolt.Sleeve.of(mm(16), mm(2.5), Parts.S235);
    List<Check> checks = bolt(27, sleeve).checks(Parts.load(Wrench.ZERO, new Point(0, 0, 0)));
    assertEquals(Math.PI * 0.0135 * 0.0025 * 235e6, capacity(checks, "crush sleeve"), 1e-6);
    assertEquals(1, checks.size());
  }

  /**
   * A washer of 30 as a square of 26.587, β = 0.53174 of the face of 50 × 3 mm: table 7.11 gives
   * 355·9/(1 − β)·(2·β + 4·√(1 − β)) = 25.93 kN.
   */
  @Test
  void a_bare_wall_is_asked_as_under_a_square_patch_of_the_washers_area() {
    List<Check> checks =
        bolt(20, ThroughBolt.Washer.of(mm(30))).checks(Parts.load(Wrench.ZERO, new Point(0, 0, 0)));
    assertEquals(25.93e3, capacity(checks, "bare wall under the clamping force"), 5);
    assertEquals(20e3, Parts.demand(checks, "bare wall under the clamping force"), 1e-9);
    assertEquals(1, checks.size());
  }

  @Test
  void bad_seats_are_refused_by_name() {
    Refused.with(
        "the seat of arm bolt, 60.00 mm wide, does not fit on the face of 50.00 mm",
        () -> bolt(27, ThroughBolt.Washer.of(mm(60))));
    Refused.with(
        "the seat of arm bolt, 50.00 mm wide, does not fit on the face of 50.00 mm",
        () -> bolt(27, ThroughBolt.Washer.of(mm(50))));
    Refused.with(
        "wall 8.000 mm leaves no bore in a sleeve of 16.00 mm; the wall must stay below 8.000 mm",
        () -> ThroughBolt.Sleeve.of(mm(16), mm(8), Parts.S235));
    Refused.with(
        "clamping force of arm bolt 0 kN is not above zero",
        () -> bolt(0, ThroughBolt.Washer.of(mm(20))));
  }
}
