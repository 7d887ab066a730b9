package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.capacity;
import static rungwork.joint.Parts.demand;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Check;
import rungwork.check.Verdict;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.WeldGroup.Parent;
import rungwork.joint.WeldGroup.Run;
import rungwork.joint.WeldGroup.Seam;
import rungwork.material.Material;
import rungwork.quantity.Units;

class WeldGroupTest {
  private static final Point ORIGIN = new Point(0, 0, 0);
  private static final List<Run> SIDES = Run.bothSides(mm(80), mm(6));

  private static WeldGroup fillet(double leg, List<Run> runs) {
    return new WeldGroup(
        "tab weld", runs, Seam.fillet(mm(leg), MPa(490)), Parent.of(Parts.S355, mm(8)));
  }

  private static WeldGroup box() {
    return fillet(5, List.of(Run.around(mm(80), mm(40))));
  }

  @Test
  void an_open_run_counts_less_a_throat_at_each_end_and_a_closed_one_counts_whole() {
    double throat = 0.005 / Math.sqrt(2);
    assertEquals(2 * (0.080 - 2 * throat), fillet(5, SIDES).length(), 1e-12);
    assertEquals(0.240, box().length(), 1e-12);
  }

  @Test
  void start_and_stop_may_reach_round_a_corner() {
    Run hook =
        Run.through(new Spot(0, 0), new Spot(0.002, 0), new Spot(0.002, 0.060), new Spot(0, 0.060));
    double throat = 0.005 / Math.sqrt(2);
    assertEquals(0.064 - 2 * throat, fillet(5, List.of(hook)).length(), 1e-12);
  }

  @Test
  void a_pull_is_spread_over_the_length() {
    FaceLoad pull = Parts.load(Wrench.force(0, 0, 12e3), ORIGIN);
    assertEquals(12e3 / 0.240, box().largestForce(pull), 1e-6);
  }

  @Test
  void a_transverse_pull_finds_the_directional_method_weaker_than_along_by_the_root_of_1_5() {
    // Along the weld: √3·f/a; out of the face: √2·f/a.
    WeldGroup sides = fillet(5, SIDES);
    double along =
        demand(
            sides.checks(Parts.load(Wrench.force(8e3, 0, 0), ORIGIN)), "weld throat, directional");
    double out =
        demand(
            sides.checks(Parts.load(Wrench.force(0, 0, 8e3), ORIGIN)), "weld throat, directional");
    assertEquals(Math.sqrt(1.5), along / out, 1e-9);
  }

  @Test
  void the_directional_method_never_asks_more_than_the_simplified_one() {
    for (long seed = 1; seed <= 20; seed++) {
      List<Check> checks = box().checks(Parts.load(Rigid.wrench(new Random(seed)), ORIGIN));
      double simplified = named(checks, "weld throat, simplified").utilisation().orElseThrow();
      double directional = named(checks, "weld throat, directional").utilisation().orElseThrow();
      assertTrue(directional <= simplified * (1 + 1e-12), "seed " + seed);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void stresses_depend_neither_on_the_origin_nor_on_turning(long seed) {
    Random random = new Random(seed);
    Wrench wrench = Rigid.wrench(random);
    Point place = Rigid.point(random);
    List<Spot> spots = Rigid.spots(random, 4);
    List<Spot> corners = new ArrayList<>(spots);
    Rigid motion = Rigid.of(random);
    WeldGroup here = fillet(5, List.of(new Run(corners)));
    WeldGroup there = fillet(5, List.of(new Run(corners.stream().map(motion::moved).toList())));
    List<Check> one = here.checks(Parts.load(wrench, place));
    List<Check> two = there.checks(Parts.load(motion.turned(wrench), motion.moved(place)));
    for (int i = 0; i < one.size(); i++) {
      double expected = one.get(i).utilisation().orElseThrow();
      assertEquals(
          expected, two.get(i).utilisation().orElseThrow(), 1e-9 * expected, "seed " + seed);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void shares_of_two_wrenches_add_up(long seed) {
    Random random = new Random(seed);
    Wrench first = Rigid.wrench(random);
    Wrench second = Rigid.wrench(random);
    Pattern pattern = box().pattern();
    Spot corner = new Spot(0.04, 0.02);
    for (int axis = 0; axis < 3; axis++) {
      double apart = share(pattern, corner, first, axis) + share(pattern, corner, second, axis);
      assertEquals(share(pattern, corner, first.plus(second), axis), apart, 1e-9 * 1e5);
    }
  }

  private static double share(Pattern pattern, Spot spot, Wrench wrench, int axis) {
    return pattern.share(spot, Parts.load(wrench, ORIGIN)).get(axis).result();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void utilisation_is_linear_in_the_load(long seed) {
    Wrench wrench = Rigid.wrench(new Random(seed));
    List<Check> once = box().checks(Parts.load(wrench, ORIGIN));
    List<Check> thrice = box().checks(Parts.load(wrench.times(3), ORIGIN));
    for (int i = 0; i < once.size(); i++) {
      double expected = 3 * once.get(i).utilisation().orElseThrow();
      assertEquals(expected, thrice.get(i).utilisation().orElseThrow(), 1e-9 * expected);
    }
  }

  @Test
  void cutting_a_run_at_a_middle_corner_changes_nothing() {
    Run whole = Run.through(new Spot(0, 0), new Spot(0.1, 0));
    Run cut = Run.through(new Spot(0, 0), new Spot(0.03, 0), new Spot(0.1, 0));
    Run side = Run.through(new Spot(0, 0.04), new Spot(0.1, 0.04));
    FaceLoad load = Parts.load(new Wrench(1e3, 2e3, 3e3, 40, 50, 60), ORIGIN);
    double one = fillet(4, List.of(whole, side)).largestForce(load);
    assertEquals(one, fillet(4, List.of(cut, side)).largestForce(load), 1e-9 * one);
  }

  @Test
  void a_thin_throat_and_a_short_run_are_shown_and_marked_outside() {
    WeldGroup small = fillet(3, Run.bothSides(mm(30), mm(6)));
    List<Check> checks = small.checks(Parts.load(Wrench.force(0, 0, 1000), ORIGIN));
    for (String what :
        List.of(
            "weld throat, simplified",
            "weld throat, directional",
            "weld throat, directional, normal stress")) {
      Verdict verdict = named(checks, what).verdict();
      assertEquals(
          "outside EN 1993-1-8: throat 2.121 mm is under 3.000 mm; outside EN 1993-1-8: a run of"
              + " 25.76 mm is shorter than 30.00 mm",
          verdict.reason(Units.METRIC));
      assertTrue(verdict.numbers().isPresent());
    }
    assertTrue(named(checks, "weld throat, second opinion").made());
  }

  @Test
  void a_throat_of_3_mm_on_long_runs_is_inside() {
    WeldGroup weld = fillet(3 * Math.sqrt(2), SIDES);
    List<Check> checks = weld.checks(Parts.load(Wrench.force(0, 0, 1000), ORIGIN));
    assertTrue(named(checks, "weld throat, directional").made());
  }

  @Test
  void a_single_line_cannot_hold_a_moment_about_itself() {
    WeldGroup line = fillet(5, List.of(Run.through(new Spot(-0.04, 0), new Spot(0.04, 0))));
    FaceLoad lateral = Parts.load(Wrench.force(0, 500, 0), new Point(0, 0, 0.03));
    List<Check> checks = line.checks(lateral);
    assertEquals(1, checks.size());
    assertTrue(checks.get(0).verdict() instanceof Verdict.NotChecked);
    Refused.with(
        "weld tab weld cannot take this load: it stands in one straight line and cannot hold a"
            + " moment about that line; how far the plate's edge helps is not known",
        () -> line.largestForce(lateral));
    FaceLoad along = Parts.load(Wrench.force(500, 0, 0), new Point(0, 0, 0.03));
    assertEquals(5, line.checks(along).size());
  }

  @Test
  void aluminium_leaves_the_throat_unchecked_and_counts_its_welded_zone() {
    WeldGroup soft =
        new WeldGroup(
            "tab weld", SIDES, Seam.fillet(mm(5), MPa(165)), Parent.of(Parts.ALUMINIUM, mm(8)));
    List<Check> checks = soft.checks(Parts.load(Wrench.force(0, 0, 1000), ORIGIN));
    assertEquals(
        "EN 1993-1-8 and AISC 360 cover welds of steel; those of 6061-T6 need EN 1999-1-1 and"
            + " the filler's strength",
        named(checks, "weld throat").verdict().reason(Units.METRIC));
    assertEquals(
        115e6 * 0.005 / Math.sqrt(3), capacity(checks, "base metal beside the weld"), 1e-3);
  }

  @Test
  void beside_a_weld_cold_drawn_tube_counts_as_hot_rolled() {
    WeldGroup drawn =
        new WeldGroup(
            "tab weld",
            SIDES,
            Seam.fillet(mm(3), MPa(490)),
            Parent.of(Material.rated("DOM 1020"), mm(3)));
    List<Check> checks = drawn.checks(Parts.load(Wrench.force(0, 0, 1000), ORIGIN));
    assertEquals(
        221e6 * 0.003 / Math.sqrt(3), capacity(checks, "base metal beside the weld"), 1e-3);
  }

  @Test
  void a_full_penetration_weld_is_as_strong_as_the_plate_beside_it() {
    WeldGroup full =
        new WeldGroup(
            "tab weld",
            List.of(Run.through(new Spot(-0.04, 0), new Spot(0.04, 0))),
            Seam.fullPenetration(mm(6), MPa(490)),
            Parent.of(Parts.S355, mm(6)));
    List<Check> checks = full.checks(Parts.load(Wrench.force(0, 0, 80e3), ORIGIN));
    assertEquals(80e3 / (0.08 * 0.006), demand(checks, "full-penetration weld"), 1);
    assertEquals(355e6, capacity(checks, "full-penetration weld"), 1);
  }

  @Test
  void stress_ranges_are_those_of_the_difference_of_two_loads() {
    FaceLoad braking = Parts.load(new Wrench(4e3, 0, 1e3, 0, 100, 0), ORIGIN);
    FaceLoad driving = Parts.load(new Wrench(-1e3, 0, 1e3, 0, -25, 0), ORIGIN);
    WeldGroup box = box();
    double only = box.largestForce(Parts.load(new Wrench(5e3, 0, 0, 0, 125, 0), ORIGIN));
    assertEquals(only / 0.008, box.toeRange(driving, braking), 1e-6);
    assertEquals(only / (0.005 / Math.sqrt(2)), box.rootRange(driving, braking), 1e-6);
  }

  @Test
  void the_working_ends_in_demand_and_capacity() {
    FaceLoad pull = Parts.coded(Wrench.force(0, 0, 24e3), ORIGIN);
    List<String> lines =
        named(box().checks(pull), "weld throat, simplified").working().stream()
            .map(Object::toString)
            .toList();
    assertEquals(
        List.of(
            "a = s/√2 = 5.000 mm / √2 = 3.536 mm",
            "f = √(fx² + fy² + fz²) = √((0 N/mm)² + (0 N/mm)² + (100.0 N/mm)²) = 100.0 N/mm",
            "Fw,Rd = fu·a/(√3·βw·γM2·γ) = 470.0 MPa · 3.536 mm / (√3 · 0.9000 · 1.250 · 1.000) ="
                + " 852.8 N/mm"),
        lines.subList(3, 6));
  }

  @Test
  void bad_welds_are_refused_by_name() {
    Refused.with(
        "leg 9.000 mm of weld tab weld is above the thinner wall of 8.000 mm; it must not exceed"
            + " it",
        () -> fillet(9, SIDES));
    Refused.with(
        "a run of weld tab weld is 5.000 mm long; start and stop take 7.071 mm and nothing is left",
        () -> fillet(5, List.of(Run.through(new Spot(0, 0), new Spot(0.005, 0)))));
    double all = 2 * Seam.fillet(mm(5), MPa(490)).throat();
    Refused.with(
        "a run of weld tab weld is 7.071 mm long; start and stop take 7.071 mm and nothing is left",
        () -> fillet(5, List.of(Run.through(new Spot(0, 0), new Spot(all, 0)))));
    Refused.with(
        "two lines of weld tab weld lie on one another; keep one",
        () ->
            fillet(
                5,
                List.of(
                    Run.through(new Spot(0, 0), new Spot(0.05, 0)),
                    Run.through(new Spot(0.05, 0), new Spot(0, 0)))));
    Refused.with("weld tab weld has no run; give it one at least", () -> fillet(5, List.of()));
    Refused.with(
        "a weld run has 1 corner; it needs a start and a stop", () -> Run.through(new Spot(0, 0)));
    Refused.with(
        "corner 2 of a weld run stands where the one before stands",
        () -> Run.through(new Spot(0, 0), new Spot(0, 0)));
    Refused.with("weld leg 0 mm is not above zero", () -> Seam.fillet(mm(0), MPa(490)));
  }
}
