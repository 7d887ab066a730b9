package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.demand;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.Verdict;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.joint.WeldGroup.Parent;
import rungwork.joint.WeldGroup.Run;
import rungwork.joint.WeldGroup.Seam;
import rungwork.quantity.Units;

/** Welds in one face, worked by hand with a line's own l³/12 about its middle. */
class WeldWorkedTest {
  private static final Point ORIGIN = new Point(0, 0, 0);
  private static final Seam FILLET = Seam.fillet(mm(5), MPa(490));

  private static WeldGroup weld(Seam seam, List<Run> runs) {
    return new WeldGroup("tab weld", runs, seam, Parent.of(Parts.S355, mm(8)));
  }

  @Test
  void a_first_side_as_long_as_the_throat_is_used_up_and_leaves_no_line_of_no_length() {
    double throat = FILLET.throat();
    Run hook = Run.through(new Spot(0, 0), new Spot(throat, 0), new Spot(throat, 0.060));
    List<Pattern.Line> left = hook.effective(throat);
    assertEquals(1, left.size());
    assertEquals(0.060 - throat, left.get(0).length(), 1e-12);
  }

  /** Forty chords of a circle: 40·d·sin(π/40), by 0.1 % short of π·d. */
  @Test
  void a_run_round_a_tube_is_as_long_as_its_circumference_and_stands_on_its_circle() {
    Run round = Run.round(mm(38));
    assertEquals(40 * 0.038 * Math.sin(Math.PI / 40), round.length(), 1e-12);
    assertEquals(41, round.corners().size());
    assertTrue(round.closed());
    for (Spot corner : round.corners()) {
      assertEquals(0.019, Math.hypot(corner.x(), corner.y()), 1e-15);
    }
    // A torque on it: J = 40·l·(apothem² + l²/12), largest at the corners.
    double side = 0.038 * Math.sin(Math.PI / 40);
    double apothem = 0.019 * Math.cos(Math.PI / 40);
    double polar = 40 * side * (apothem * apothem + side * side / 12);
    FaceLoad torque = Parts.load(Wrench.moment(0, 0, 100), ORIGIN);
    assertEquals(100 * 0.019 / polar, weld(FILLET, List.of(round)).largestForce(torque), 1e-6);
  }

  /**
   * Two runs of 80 mm, 6 mm apart: twisted by 2400 N·mm with 1600 N across. J = 2·80³/12 + 160·3² =
   * 86773.3 mm³; at x = 40: fy = 10 + 2400·40/86773.3 = 11.10633, fx = 2400·3/86773.3 = 0.08298
   * N/mm.
   */
  @Test
  void runs_on_both_sides_of_a_plate_stand_half_its_thickness_off_its_middle() {
    Seam full = Seam.fullPenetration(mm(6), MPa(490));
    WeldGroup sides = weld(full, Run.bothSides(mm(80), mm(6)));
    FaceLoad load = Parts.load(new Wrench(0, 1600, 0, 0, 0, 2.4), ORIGIN);
    double worst = Math.hypot(11.106330, 0.082975);
    assertEquals(1e3 * worst, sides.largestForce(load), 0.05);
    Check check = named(sides.checks(load), "full-penetration weld");
    // √3·f/6 in the plate, where both are in its plane.
    assertEquals(
        1e6 * Math.sqrt(3) * worst / 6, check.verdict().numbers().orElseThrow().demand(), 50);
    assertEquals("run 1, line 1, end", check.where());
    List<Run> runs = sides.runs();
    assertEquals(0.003, runs.get(0).corners().get(0).y(), 1e-15);
    assertEquals(-0.003, runs.get(1).corners().get(0).y(), 1e-15);
  }

  /**
   * A box of 80 × 40 mm: L = 240, J = 2·(80·20² + 80³/12) + 2·(40·40² + 40³/12) = 288000 mm³, about
   * y alone 2·80³/12 + 2·40·40² = 213333.3 mm³. 2400 N across, 4800 N out, 9600 N·mm about −y and
   * 28800 N·mm in the face: at (40, ∓20) fz = 20 + 9600·40/213333.3 = 21.8, fy = 10 + 28800·40/J =
   * 14, fx = ±28800·20/J = ±2 N/mm. Seen from the line along x, fs = 2 and fn = 14; from that along
   * y, fs = 14 and fn = 2.
   */
  @Test
  void every_question_finds_its_own_worst_place() {
    WeldGroup box = weld(FILLET, List.of(Run.around(mm(80), mm(40))));
    List<Check> checks = box.checks(Parts.load(new Wrench(0, 2400, 4800, 0, -9.6, 28.8), ORIGIN));
    for (String what :
        List.of(
            "base metal beside the weld",
            "weld throat, simplified",
            "weld throat, second opinion")) {
      assertEquals(1e3 * Math.sqrt(14 * 14 + 2 * 2 + 21.8 * 21.8), demand(checks, what), 1e-3);
    }
    double throat = 5 / Math.sqrt(2);
    // On the throat of the line along x; 14 along y would give √(2·(2² + 21.8² + 2·21.8) + 3·14²).
    double across = Math.sqrt(2 * (14 * 14 + 21.8 * 21.8 + 14 * 21.8) + 3 * 2 * 2) / throat;
    assertEquals(1e6 * across, demand(checks, "weld throat, directional"), 1);
    assertEquals(
        1e6 * (14 + 21.8) / (Math.sqrt(2) * throat),
        demand(checks, "weld throat, directional, normal stress"),
        1);
    assertEquals("run 1, line 1, end", named(checks, "weld throat, directional").where());
  }

  /** Three runs and a pull with a moment that the last one's end takes most of. */
  @Test
  void a_place_is_named_by_its_run_and_line() {
    List<Run> runs =
        List.of(
            Run.through(new Spot(-0.05, 0), new Spot(-0.05, 0.04)),
            Run.through(new Spot(0, 0), new Spot(0, 0.04)),
            Run.through(new Spot(0.03, 0.05), new Spot(0.05, 0.05), new Spot(0.05, 0)));
    FaceLoad load = Parts.load(new Wrench(0, 0, 9000, -60, -100, 0), new Point(0, 0.03, 0));
    Check check = named(weld(FILLET, runs).checks(load), "base metal beside the weld");
    assertEquals("run 3, line 2, end", check.where());
  }

  /** Table 4.1: 0.8 for S235 (360 MPa), 0.85 for S275 (430), 0.9 for S355 (510), 1.0 above. */
  @Test
  void the_correlation_factor_follows_the_ultimate_strength_of_the_grades() {
    double[][] table = {{360, 0.8}, {361, 0.85}, {430, 0.85}, {431, 0.9}, {510, 0.9}, {511, 1}};
    for (double[] row : table) {
      assertEquals(row[1], SeamRules.correlation(Parts.steel("steel", 200e6, row[0] * 1e6)));
    }
  }

  @Test
  void welds_are_covered_up_to_the_strength_of_s460() {
    assertEquals(List.of(), SeamRules.outside(FILLET, Parts.steel("S460", 460e6, 550e6)));
    List<Verdict.Reason> above = SeamRules.outside(FILLET, Parts.steel("stronger", 460e6, 600e6));
    assertEquals(
        "outside EN 1993-1-8: fu 600.0 MPa is above that of S460",
        Verdict.Reason.joined(above).text(Units.METRIC));
  }
}
