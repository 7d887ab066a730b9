package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.quantity.Units;

class SlipResistanceTest {
  private static final BoltGroup PAIR =
      new BoltGroup(
          "base plate",
          Bolt.of("M8", "8.8"),
          Bolt.Threads.IN_PLANE,
          List.of(Spot.at(mm(-30), mm(0)), Spot.at(mm(30), mm(0))),
          BoltGroup.Plate.of(Parts.S355, mm(5), mm(9), mm(20)));

  private static double use(Wrench wrench, Factors factors) {
    FaceLoad load = new FaceLoad("bump", wrench, new Point(0, 0, 0), factors);
    return named(PAIR.clamped(kN(15), 0.3).checks(load), "slip").utilisation().orElseThrow();
  }

  @Test
  void friction_under_both_bolts_holds_what_they_are_clamped_with() {
    assertEquals(4000 / (2 * 0.3 * 15e3), use(Wrench.force(4000, 0, 0), Factors.UNFACTORED), 1e-12);
    assertEquals(1.5 * 4000 / (2 * 0.3 * 15e3), use(Wrench.force(4000, 0, 0), Factors.ROAD), 1e-12);
  }

  @Test
  void a_pull_takes_off_the_clamping_force() {
    assertEquals(
        2000 / (0.3 * (15e3 - 5e3)), use(Wrench.force(4000, 0, 10e3), Factors.UNFACTORED), 1e-12);
    assertEquals(2000 / (0.3 * 15e3), use(Wrench.force(4000, 0, -10e3), Factors.UNFACTORED), 1e-12);
  }

  @Test
  void a_pull_above_the_clamping_force_lifts_the_plate_off() {
    assertEquals(20.0 / 15, use(Wrench.force(0, 0, 40e3), Factors.UNFACTORED), 1e-12);
  }

  /** A tipping of 120 N·m on bolts 60 apart: 5000 ± 2000 N; 15 − 7 kN stay, of which 30 % hold. */
  @Test
  void the_bolt_that_the_pull_leaves_least_slips_first() {
    Wrench wrench = new Wrench(4000, 0, 10e3, 0, -120, 0);
    Check slip =
        named(PAIR.clamped(kN(15), 0.3).checks(Parts.load(wrench, new Point(0, 0, 0))), "slip");
    assertEquals(2000 / (0.3 * 8000), slip.utilisation().orElseThrow(), 1e-12);
    assertEquals("bolt 2", slip.where());
  }

  @Test
  void a_pull_equal_to_the_clamping_force_just_lifts_the_plate_off() {
    assertEquals(1, use(Wrench.force(4000, 0, 30e3), Factors.UNFACTORED), 1e-12);
  }

  @Test
  void a_bolt_may_be_clamped_with_its_whole_proof_load() {
    double proof = Bolt.of("M8", "8.8").proofLoad();
    assertEquals(proof, new SlipResistance(PAIR, proof, 0.3).preload());
    Refused.with(
        "friction 1.000 under base plate is outside above 0 to below 1",
        () -> PAIR.clamped(kN(15), 1));
    Refused.with(
        "friction 0 under base plate is outside above 0 to below 1", () -> PAIR.clamped(kN(15), 0));
  }

  @Test
  void a_row_tipped_about_itself_is_not_checked() {
    Check slip =
        named(
            PAIR.clamped(kN(15), 0.3)
                .checks(Parts.load(Wrench.moment(50, 0, 0), new Point(0, 0, 0))),
            "slip");
    assertEquals(
        "it stands in one straight line and cannot hold a moment about that line; how far the"
            + " plate's edge helps is not known",
        slip.verdict().reason(Units.METRIC));
    assertEquals("base plate, slip", PAIR.clamped(kN(15), 0.3).name());
  }

  @Test
  void a_clamping_force_above_the_proof_load_and_an_odd_friction_are_refused() {
    Refused.with(
        "clamping force 25.00 kN of base plate is above the proof load of its bolt M8 8.8, 21.23"
            + " kN",
        () -> PAIR.clamped(kN(25), 0.3));
    Refused.with(
        "friction 1.200 under base plate is outside above 0 to below 1",
        () -> PAIR.clamped(kN(15), 1.2));
  }
}
