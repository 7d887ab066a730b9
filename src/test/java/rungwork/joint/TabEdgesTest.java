package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.capacity;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;

/** A tab's edges, its weld and the limits of its shape: 5 mm thick, 40 wide, an M10 in 10.5 mm. */
class TabEdgesTest {
  private static final Bolt M10 = Bolt.of("M10", "8.8");

  private static Tab tab(RatedMaterial material, double height, double end) {
    Tab.Eye eye = Tab.Eye.of(M10, mm(10.5), mm(end));
    return new Tab("tab", material, Tab.Plate.single(mm(5), mm(40), mm(height)), eye);
  }

  private static List<Check> pulled(Tab tab, double force) {
    return tab.checks(Parts.load(Wrench.force(0, 0, force), tab.hole()));
  }

  /** The hole's lower edge lies 23.75 mm above the face at 29 mm, 26.75 mm at 32 mm. */
  @Test
  void the_hole_counts_as_beside_the_weld_up_to_25_mm_from_its_edge() {
    List<Check> soft = pulled(tab(Parts.ALUMINIUM, 29, 20), 1000);
    List<Check> hard = pulled(tab(Parts.ALUMINIUM, 32, 20), 1000);
    // 1.8·fy·d·t of AISC 360, J7, with 115 MPa beside a weld and 240 MPa elsewhere.
    assertEquals(1.8 * 115 * 10 * 5, capacity(soft, "bearing in the hole"), 1e-6);
    assertEquals(1.8 * 240 * 10 * 5, capacity(hard, "bearing in the hole"), 1e-6);
    // 0.6·fu·2·t·(a + d/2), a = 20 − 5.25; fu falls beside a weld as fy does.
    double area = 2 * 5 * (20 - 5.25 + 5);
    assertEquals(0.6 * 290 * 115 / 240 * area, capacity(soft, "shearing out of the hole"), 1e-6);
    assertEquals(0.6 * 290 * area, capacity(hard, "shearing out of the hole"), 1e-6);
  }

  @Test
  void the_nearest_edge_is_the_end_or_half_the_width() {
    assertEquals(0.014, tab(Parts.S355, 30, 14).edge(), 1e-15);
    assertEquals(0.020, tab(Parts.S355, 30, 35).edge(), 1e-15);
  }

  @Test
  void its_proportions_are_those_of_table_3_3_and_of_iso_273() {
    List<Check> checks = pulled(tab(Parts.S355, 30, 20), 0);
    assertEquals(
        1.2 * 10.5 / 20, named(checks, "edge distance").utilisation().orElseThrow(), 1e-12);
    // ISO 273, coarse series: 12 mm for an M10.
    assertEquals(10.5 / 12, named(checks, "hole width").utilisation().orElseThrow(), 1e-12);
    assertEquals(
        List.of("edge distance", "hole width", "bending at the foot"),
        checks.stream().map(Check::what).toList());
  }

  /** The ellipse has half axes of 20 mm across and of the end distance upwards. */
  @Test
  void distances_to_the_edges_are_measured_along_and_across_the_force() {
    EdgeDistances low = new EdgeDistances(tab(Parts.S355, 30, 14), 3000, 4000);
    // Along (0.6, 0.8): 1/√((0.6/20)² + (0.8/14)²) = 15.4944.
    assertEquals(15.4944e-3 - 5.25e-3, low.along(), 1e-7);
    // Beside it, up along (−0.8, 0.6): 1/√((0.8/20)² + (0.6/14)²) = 17.0579; down it is 25.
    assertEquals(17.0579e-3 - 5.25e-3, low.across(), 1e-7);
    // With the end at 40: 1/√(0.04² + 0.015²) = 23.4082, the nearer of the two still.
    EdgeDistances high = new EdgeDistances(tab(Parts.S355, 30, 40), 3000, 4000);
    assertEquals(23.4082e-3 - 5.25e-3, high.across(), 1e-7);
    EdgeDistances up = new EdgeDistances(tab(Parts.S355, 30, 40), 0, 5000);
    assertEquals(0.040 - 0.00525, up.along(), 1e-12);
    assertTrue(up.meetsFreeEdge());
  }

  /** Along (0.6, −0.8) the side is reached at 20/0.6 = 33.3 mm, 26.7 mm below the hole. */
  @Test
  void a_force_downwards_meets_the_side_before_the_face_or_the_face_before_the_side() {
    EdgeDistances high = new EdgeDistances(tab(Parts.S355, 30, 20), 3000, -4000);
    assertTrue(high.meetsFreeEdge());
    assertEquals(0.02 / 0.6 - 0.00525, high.along(), 1e-12);
    assertFalse(new EdgeDistances(tab(Parts.S355, 25, 20), 3000, -4000).meetsFreeEdge());
    assertFalse(new EdgeDistances(tab(Parts.S355, 30, 20), 0, -5000).meetsFreeEdge());
  }

  @Test
  void what_just_fits_is_taken_and_what_just_does_not_is_refused() {
    assertEquals(0.010, Tab.Eye.of(M10, mm(10), mm(20)).hole(), 1e-15);
    Tab.Plate low = Tab.Plate.single(mm(5), mm(40), mm(10));
    assertEquals("low", new Tab("low", Parts.S355, low, Tab.Eye.of(M10, mm(12), mm(30))).name());
    Refused.with(
        "hole 40.00 mm leaves nothing of tab odd, which is 40.00 mm wide; it must stay below that",
        () -> new Tab("odd", Parts.S355, low, Tab.Eye.of(M10, mm(40), mm(30))));
    Refused.with(
        "hole 20.00 mm of tab odd reaches into the face, 10.00 mm below its centre",
        () -> new Tab("odd", Parts.S355, low, Tab.Eye.of(M10, mm(20), mm(30))));
    Refused.with(
        "end distance 5.500 mm lets the hole of 11.00 mm break through the end; it must stay above"
            + " 5.500 mm",
        () -> Tab.Eye.of(M10, mm(11), mm(5.5)));
  }

  @Test
  void the_rule_for_folds_ends_above_360_mpa_and_for_what_is_no_steel() {
    assertTrue(foldChecked(Parts.steel("limit", 360e6, 510e6)));
    assertFalse(foldChecked(Parts.steel("strong", 361e6, 510e6)));
    assertTrue(foldChecked(stiff(180e9)));
    assertFalse(foldChecked(stiff(179e9)));
  }

  private static RatedMaterial stiff(double modulus) {
    return new RatedMaterial(
        "metal", new Elasticity(modulus, 0.3, 7850), Parts.S235.strength(), Parts.S235.source());
  }

  private static boolean foldChecked(RatedMaterial material) {
    Tab folded = tab(material, 30, 20);
    FaceLoad none = Parts.load(Wrench.ZERO, folded.hole());
    return named(folded.folded(mm(6), mm(30)).checks(none), "bend radius").made();
  }
}
