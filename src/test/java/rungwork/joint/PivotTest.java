package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.capacity;
import static rungwork.joint.Parts.demand;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.Verdict;
import rungwork.frame.Wrench;
import rungwork.quantity.Units;

class PivotTest {
  private final Tab tab = Parts.tab();
  private final Tab pair = new Tab("clevis", tab.material(), tab.plate().paired(), tab.eye());

  private static Pivot pivot(Tab tab) {
    return new Pivot("bolt", tab, Bolt.Threads.CLEAR, Pivot.Stack.of(mm(3), mm(12)));
  }

  private List<Check> checks(Tab tab, Wrench wrench) {
    return pivot(tab).checks(Parts.load(wrench, tab.hole()));
  }

  @Test
  void double_shear_halves_the_shear_and_takes_most_of_the_bending_away() {
    Wrench wrench = Wrench.force(3000, 0, 4000);
    assertEquals(5000, demand(checks(tab, wrench), "bolt shear"), 1e-9);
    assertEquals(2500, demand(checks(pair, wrench), "bolt shear"), 1e-9);
    FaceLoad load = Parts.load(wrench, tab.hole());
    assertEquals(5000 * 0.0115, pivot(tab).bendingMoment(load), 1e-9);
    assertEquals(5000 / 8.0 * (0.012 + 0.012 + 0.010), pivot(pair).bendingMoment(load), 1e-9);
  }

  @Test
  void in_single_shear_bending_governs_over_shear() {
    List<Check> checks = checks(tab, Wrench.force(0, 0, 4000));
    double shear = named(checks, "bolt shear").utilisation().orElseThrow();
    double bending = named(checks, "bolt bending, first yield").utilisation().orElseThrow();
    assertTrue(bending > 5 * shear, () -> bending + " against " + shear);
  }

  @Test
  void the_pin_rule_is_asked_only_of_a_pair() {
    assertTrue(has(checks(pair, Wrench.force(0, 0, 4000)), "bolt as a pin"));
    assertFalse(has(checks(tab, Wrench.force(0, 0, 4000)), "bolt as a pin"));
  }

  @Test
  void a_force_along_the_bolt_adds_tension() {
    List<Check> plain = checks(tab, Wrench.force(0, 0, 4000));
    assertFalse(has(plain, "bolt tension"));
    List<Check> checks = checks(tab, Wrench.force(0, -2000, 4000));
    assertEquals(2000, demand(checks, "bolt tension"));
    assertEquals(0.9 * 800e6 * 58e-6, capacity(checks, "bolt tension"), 1e-6);
    double expected = 4000 / (0.6 * 800e6 * Math.PI * 25e-6) + 2000 / (1.4 * 0.9 * 800e6 * 58e-6);
    assertEquals(expected, demand(checks, "bolt shear and tension"), 1e-12);
  }

  @Test
  void a_thread_in_the_plane_costs_10_9_more_than_8_8() {
    assertEquals(0.6 * 800 * 58, threaded("8.8") / 1, 1e-6);
    assertEquals(0.5 * 1000 * 58, threaded("10.9") / 1, 1e-6);
  }

  private double threaded(String strength) {
    Tab.Eye eye = Tab.Eye.of(Bolt.of("M10", strength), mm(10.5), mm(20));
    Tab own = new Tab("tab", tab.material(), tab.plate(), eye);
    Pivot pivot = new Pivot("bolt", own, Bolt.Threads.IN_PLANE, Pivot.Stack.of(mm(0), mm(10)));
    return capacity(pivot.checks(Parts.load(Wrench.force(0, 0, 1), own.hole())), "bolt shear");
  }

  @Test
  void an_inch_bolt_is_marked_outside_en_1993_1_8() {
    Tab.Eye eye = Tab.Eye.of(Bolt.of("3/8-16", "grade 8"), mm(10), mm(20));
    Tab own = new Tab("tab", tab.material(), tab.plate(), eye);
    Verdict verdict = named(checks(own, Wrench.force(0, 0, 1000)), "bolt shear").verdict();
    assertEquals("outside EN 1993-1-8: bolt class grade 8", verdict.reason(Units.METRIC));
  }

  @Test
  void the_working_of_bending_can_be_followed() {
    Check bending = named(checks(tab, Wrench.force(0, 0, 2000)), "bolt bending, first yield");
    assertEquals(
        List.of(
            "W = π·ds³/32 = π · (10.00 mm)³ / 32 = 0.09817 cm³",
            "F = √(Fx² + Fz²) = √((0 kN)² + (2.000 kN)²) = 2.000 kN",
            "Fv = F/n = 2.000 kN / 1.000 = 2.000 kN",
            "Fa = |Fy| = |0 kN| = 0 kN",
            "M = F·(t/2 + c + b/2) = 2.000 kN · (5.000 mm / 2 + 3.000 mm + 12.00 mm / 2) = 0.02300"
                + " kN·m",
            "σv = √((M/W + Fa/A)² + 3·(Fv/A)²) = √((0.02300 kN·m / 0.09817 cm³ + 0 kN / 0.7854"
                + " cm²)² + 3 · (2.000 kN / 0.7854 cm²)²) = 238.4 MPa",
            "fyd = fyb/γ = 640.0 MPa / 1.000 = 640.0 MPa"),
        bending.working().stream().map(Object::toString).toList());
  }

  @Test
  void bearing_of_one_bolt_in_single_shear_stops_at_one_and_a_half() {
    // Wide edges: k1 = 2.5 and αb = 20/31.5; their product is cut to 1.5.
    Wrench wrench = Wrench.force(0, 0, 1000);
    double single = capacity(checks(tab, wrench), "bearing of the tab");
    double doubled = capacity(checks(pair, wrench), "bearing of the tab");
    assertEquals(1.5 * 470e6 * 0.010 * 0.005, single, 1e-6);
    assertEquals(2.5 * 20 / 31.5 * 470e6 * 0.010 * 0.005, doubled, 1e-6);
  }

  @Test
  void a_hole_near_the_end_leaves_bearing_unchecked() {
    Tab near =
        new Tab(
            "near", tab.material(), tab.plate(), Tab.Eye.of(tab.eye().bolt(), mm(10.5), mm(11)));
    assertEquals(
        "the edge is 11.00 mm from the hole's centre; the bearing rule needs 12.60 mm",
        named(checks(near, Wrench.force(0, 0, 1000)), "bearing of the tab")
            .verdict()
            .reason(Units.METRIC));
  }

  @Test
  void a_moment_on_the_bolt_is_not_checked_and_said_so() {
    Wrench turned = new Wrench(0, 0, 1000, 12, 0, 0);
    assertEquals(
        "the load turns the bolt with 0.01200 kN·m besides its force; only a force at the hole is"
            + " checked",
        named(checks(tab, turned), "moment on the bolt").verdict().reason(Units.METRIC));
    assertFalse(has(checks(tab, Wrench.force(100, 200, 300)), "moment on the bolt"));
  }

  @Test
  void a_negative_gap_and_a_ball_of_no_width_are_refused() {
    Refused.with(
        "gap beside the tab -1.000 mm is below zero", () -> Pivot.Stack.of(mm(-1), mm(12)));
    Refused.with(
        "width of ball or bush 0 mm is not above zero", () -> Pivot.Stack.of(mm(1), mm(0)));
  }

  private static boolean has(List<Check> checks, String what) {
    return checks.stream().anyMatch(check -> check.what().equals(what));
  }
}
