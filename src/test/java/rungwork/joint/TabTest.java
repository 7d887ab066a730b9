package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.capacity;
import static rungwork.joint.Parts.demand;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Check;
import rungwork.check.LimitState;
import rungwork.frame.Wrench;
import rungwork.quantity.Units;

class TabTest {
  private final Tab tab = Parts.tab();

  private List<Check> pulled(double fx, double fy, double fz) {
    return tab.checks(Parts.load(Wrench.force(fx, fy, fz), tab.hole()));
  }

  @Test
  void a_pull_bends_nothing_and_a_sideways_force_bends_by_its_height() {
    assertEquals(10e3 / 200e-6, demand(pulled(0, 0, 10e3), "bending at the foot"), 1e-3);
    double bending = 6 * 10e3 * 0.030 / (0.005 * 0.040 * 0.040);
    double shear = 10e3 / 200e-6;
    assertEquals(
        Math.sqrt(bending * bending + 3 * shear * shear),
        demand(pulled(10e3, 0, 0), "bending at the foot"),
        1);
  }

  @Test
  void a_force_across_the_tab_hurts_it_eight_times_as_much_as_one_in_its_plane() {
    double across = 6 * 1000 * 0.030 / (0.040 * 0.005 * 0.005);
    double measured = demand(pulled(0, 1000, 0), "bending at the foot");
    assertEquals(across, measured, 0.002 * across);
    assertEquals(8, measured / demand(pulled(1000, 0, 0), "bending at the foot"), 0.7);
  }

  @Test
  void each_of_a_pair_takes_half() {
    Tab pair = new Tab("clevis", tab.material(), tab.plate().paired(), tab.eye());
    FaceLoad load = Parts.load(Wrench.force(2000, 300, 5000), tab.hole());
    for (String what : List.of("bending at the foot", "bearing in the hole")) {
      assertEquals(demand(tab.checks(load), what) / 2, demand(pair.checks(load), what), 1e-3);
    }
  }

  @Test
  void the_same_pull_at_any_angle_meets_the_same_edge_of_a_round_end() {
    double straight = capacity(pulled(0, 0, 5000), "shearing out of the hole");
    double oblique = capacity(pulled(3000, 0, 4000), "shearing out of the hole");
    assertEquals(straight, oblique, 1e-9 * straight);
  }

  @Test
  void a_wider_foot_bends_less() {
    Tab broad = new Tab("broad", tab.material(), tab.plate().withFoot(mm(60)), tab.eye());
    FaceLoad load = Parts.load(Wrench.force(0, 900, 0), tab.hole());
    assertEquals(
        1.5,
        demand(tab.checks(load), "bending at the foot")
            / demand(broad.checks(load), "bending at the foot"),
        1e-9);
  }

  @Test
  void sideways_the_end_is_the_free_edge_beside_the_force() {
    Tab.Eye near = Tab.Eye.of(tab.eye().bolt(), mm(10.5), mm(14));
    Tab low = new Tab("low", tab.material(), tab.plate(), near);
    FaceLoad load = Parts.load(Wrench.force(3000, 0, 0), low.hole());
    double beside = 0.014 - 0.00525;
    assertEquals(
        2 * 0.005 * beside * 470e6, capacity(low.checks(load), "tearing beside the hole"), 1e-6);
    double along = 0.020 - 0.00525;
    assertEquals(
        0.6 * 470e6 * 2 * 0.005 * (along + 0.005),
        capacity(low.checks(load), "shearing out of the hole"),
        1e-6);
  }

  @Test
  void a_push_into_the_face_shears_nothing_out_but_may_buckle_the_plate() {
    List<Check> checks = pulled(0, 0, -5000);
    assertFalse(has(checks, "shearing out of the hole"));
    assertFalse(has(checks, "tearing beside the hole"));
    assertTrue(has(checks, "bearing in the hole"));
    assertTrue(has(checks, "buckling of the plate"));
    assertFalse(has(pulled(0, 0, 5000), "buckling of the plate"));
  }

  @Test
  void a_stocky_plate_squashes_and_a_slender_one_buckles_below_euler() {
    double squash = 200e-6 * 355e6;
    double stocky = capacity(pulled(0, 0, -5000), "buckling of the plate");
    assertTrue(stocky > 0.75 * squash && stocky <= squash, () -> "stocky " + stocky);
    Tab tall = new Tab("tall", tab.material(), Tab.Plate.single(mm(3), mm(40), mm(150)), tab.eye());
    FaceLoad load = Parts.load(Wrench.force(0, 0, -5000), tall.hole());
    double euler = Math.PI * Math.PI * 210e9 * 0.040 * Math.pow(0.003, 3) / 12 / (0.3 * 0.3);
    double slender = capacity(tall.checks(load), "buckling of the plate");
    assertTrue(slender < euler && slender > 0.7 * euler, () -> slender + " against " + euler);
  }

  @Test
  void a_thin_plate_round_a_wide_hole_leaves_dishing_unchecked() {
    Tab thin = new Tab("thin", tab.material(), Tab.Plate.single(mm(3), mm(40), mm(30)), tab.eye());
    FaceLoad load = Parts.load(Wrench.force(0, 0, 1000), thin.hole());
    assertEquals(
        "the hole of 10.50 mm is wider than 2.5 times the plate of 3.000 mm, beyond the"
            + " proportions of EN 1993-1-8, table 3.9; no formula with a source is at hand",
        named(thin.checks(load), "sideways buckling of the end").verdict().reason(Units.METRIC));
    assertFalse(has(pulled(0, 0, 1000), "sideways buckling of the end"));
  }

  @Test
  void beside_a_weld_aluminium_counts_with_what_the_heat_leaves() {
    Tab soft = new Tab("soft", Parts.ALUMINIUM, tab.plate(), tab.eye());
    FaceLoad load = Parts.load(Wrench.force(0, 0, 1000), soft.hole());
    assertEquals(115e6, capacity(soft.checks(load), "bending at the foot"), 1);
    Tab high = new Tab("high", Parts.ALUMINIUM, Tab.Plate.single(mm(5), mm(40), mm(80)), tab.eye());
    double near = capacity(soft.checks(load), "tearing beside the hole");
    double far = capacity(high.checks(load), "tearing beside the hole");
    assertEquals(115.0 / 240, near / far, 1e-12);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void utilisation_is_linear_in_the_load(long seed) {
    Wrench wrench = Rigid.wrench(new Random(seed));
    List<Check> once = tab.checks(Parts.load(wrench, tab.hole()));
    List<Check> twice = tab.checks(Parts.load(wrench.times(2), tab.hole()));
    for (int i = 0; i < once.size(); i++) {
      if (once.get(i).basis().limitState() != LimitState.PROPORTION) {
        double expected = 2 * once.get(i).utilisation().orElseThrow();
        assertEquals(expected, twice.get(i).utilisation().orElseThrow(), 1e-9 * expected);
      }
    }
  }

  @Test
  void road_factors_divide_yield_by_the_design_factor_and_ultimate_by_both() {
    FaceLoad road = FaceLoad.at("bump", tab.hole(), Factors.ROAD).force(kN(0), kN(0), kN(5));
    List<Check> checks = tab.checks(road);
    assertEquals(355e6 / 1.5, capacity(checks, "bending at the foot"), 1);
    double plain = capacity(pulled(0, 0, 5000), "shearing out of the hole");
    assertEquals(plain * 0.75 / 1.5, capacity(checks, "shearing out of the hole"), 1e-9 * plain);
    assertEquals(
        "φ = 0.750 and " + Factors.ROAD.design(),
        named(checks, "shearing out of the hole").basis().factors());
  }

  @Test
  void a_bad_tab_is_refused_by_name() {
    Bolt bolt = Bolt.of("M10", "8.8");
    Refused.with(
        "hole 41.00 mm leaves nothing of tab odd, which is 40.00 mm wide; it must stay below that",
        () -> new Tab("odd", Parts.S355, tab.plate(), Tab.Eye.of(bolt, mm(41), mm(30))));
    Refused.with(
        "hole 12.00 mm of tab odd reaches into the face, 5.000 mm below its centre",
        () ->
            new Tab(
                "odd",
                Parts.S355,
                Tab.Plate.single(mm(5), mm(40), mm(5)),
                Tab.Eye.of(bolt, mm(12), mm(30))));
    Refused.with(
        "hole 9.000 mm is too narrow for its bolt M10 8.8; it must be at least 10.00 mm",
        () -> Tab.Eye.of(bolt, mm(9), mm(20)));
    Refused.with(
        "end distance -4.000 mm is not above zero", () -> Tab.Eye.of(bolt, mm(11), mm(-4)));
    Refused.with(
        "end distance 5.000 mm lets the hole of 11.00 mm break through the end; it must stay above"
            + " 5.500 mm",
        () -> Tab.Eye.of(bolt, mm(11), mm(5)));
    Refused.with(
        "tab thickness 0 mm is not above zero", () -> Tab.Plate.single(mm(0), mm(40), mm(30)));
  }

  @Test
  void a_tight_fold_fails_its_proportion_and_names_the_grain() {
    Joint fold = tab.folded(mm(3), mm(12));
    assertEquals("front tab, fold", fold.name());
    List<Check> checks = fold.checks(Parts.load(Wrench.ZERO, tab.hole()));
    Check radius = named(checks, "bend radius");
    assertEquals(5.0 / 3, radius.utilisation().orElseThrow(), 1e-12);
    assertEquals(
        "Fold across the rolling direction: a fold along it cracks on its outside.",
        radius.caution());
    assertEquals(
        15.5 / 12, named(checks, "hole beside the bend").utilisation().orElseThrow(), 1e-12);
  }

  @Test
  void the_fold_of_aluminium_is_not_checked() {
    Tab soft = new Tab("soft", Parts.ALUMINIUM, tab.plate(), tab.eye());
    List<Check> checks = Fold.of(soft, mm(10), mm(25)).checks(Parts.load(Wrench.ZERO, tab.hole()));
    assertEquals(
        "the rule that a bend's inside radius is at least the thickness is for steel up to"
            + " S355; ask the maker of 6061-T6 how tightly it folds",
        named(checks, "bend radius").verdict().reason(Units.METRIC));
  }

  private static boolean has(List<Check> checks, String what) {
    return checks.stream().anyMatch(check -> check.what().equals(what));
  }
}
