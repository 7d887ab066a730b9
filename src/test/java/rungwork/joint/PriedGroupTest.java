package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.capacity;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Units;

class PriedGroupTest {
  private static final String PRYING = "bending of the plate with prying";
  private static final List<Spot> FOUR =
      List.of(spot(-30, -30), spot(30, -30), spot(30, 30), spot(-30, 30));

  private static Spot spot(double x, double y) {
    return Spot.at(mm(x), mm(y));
  }

  private static BoltGroup group(RatedMaterial material, double thickness) {
    return new BoltGroup(
        "base plate",
        Bolt.of("M8", "8.8"),
        Bolt.Threads.IN_PLANE,
        FOUR,
        BoltGroup.Plate.of(material, mm(thickness), mm(9), mm(20)));
  }

  private static FaceLoad pull(double force) {
    return Parts.load(Wrench.force(0, 0, force), new Point(0, 0, 0));
  }

  private static double strength(double thickness) {
    return capacity(group(Parts.S355, thickness).pried(mm(25)).checks(pull(4000)), PRYING);
  }

  /** 0.75 of 800 MPa on the shank of an M8. */
  private static final double BOLT = 0.75 * 800e6 * Math.PI * 0.008 * 0.008 / 4;

  @Test
  void a_thick_plate_leaves_the_bolt_its_whole_strength() {
    assertEquals(BOLT, strength(30), 1e-6 * BOLT);
  }

  @Test
  void a_thin_plate_hinges_at_the_upstand_and_at_the_holes() {
    // 40 mm of plate a bolt, of which the hole takes 9; arm 25 less half a bolt.
    double plastic = 0.9 * 470e6 * 0.040 * 0.003 * 0.003 / 4;
    assertEquals(plastic * (1 + 31.0 / 40) / 0.021, strength(3), 1e-6 * plastic / 0.021);
  }

  /** The equivalent T-stub of EN 1993-1-8, 6.2.4: three ways to fail, the least counts. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void the_least_of_three_mechanisms_gives_the_same_strength(long seed) {
    double t = 0.002 + 0.018 * new Random(seed).nextDouble();
    double inner = 0.021;
    double outer = 0.020 + 0.004;
    double hinge = 0.9 * 470e6 * 0.040 * t * t / 4;
    double both = hinge * (1 + 31.0 / 40) / inner;
    double upstand = (hinge + outer * BOLT) / (inner + outer);
    double least = Math.min(Math.min(both, upstand), BOLT);
    assertEquals(least, strength(1e3 * t), 1e-9 * least, () -> "seed " + seed);
  }

  @Test
  void without_the_distance_to_the_upstand_prying_is_not_checked() {
    BoltGroup group = group(Parts.S355, 5);
    assertEquals(
        "how far the bolts are from what pulls the plate is not told; with that distance, prying is"
            + " checked",
        named(group.checks(pull(4000)), PRYING).verdict().reason(Units.METRIC));
    assertTrue(group.checks(pull(-4000)).stream().noneMatch(c -> c.what().equals(PRYING)));
    assertTrue(
        group.pried(mm(25)).checks(pull(-4000)).stream().noneMatch(c -> c.what().equals(PRYING)));
    assertEquals("base plate", group.pried(mm(25)).name());
  }

  @Test
  void the_rest_of_the_group_is_asked_as_before() {
    BoltGroup group = group(Parts.S355, 5);
    List<String> before = group.checks(pull(4000)).stream().map(check -> check.what()).toList();
    List<String> after =
        group.pried(mm(25)).checks(pull(4000)).stream().map(check -> check.what()).toList();
    assertEquals(before, after);
  }

  @Test
  void a_plate_of_aluminium_is_not_checked_for_prying() {
    assertEquals(
        "prying by the AISC Manual is for plates of steel",
        named(group(Parts.ALUMINIUM, 5).pried(mm(25)).checks(pull(4000)), PRYING)
            .verdict()
            .reason(Units.METRIC));
  }

  @Test
  void impossible_distances_are_refused_by_name() {
    BoltGroup group = group(Parts.S355, 5);
    Refused.with(
        "bolts of group base plate stand 4.000 mm from the upstand; they need more than half their"
            + " diameter, 4.000 mm",
        () -> group.pried(mm(4)));
    Refused.with(
        "holes of 9.000 mm leave nothing of the 8.000 mm of plate that each bolt of group base"
            + " plate holds",
        () -> group.pried(mm(25), mm(8)));
    Refused.with(
        "holes of 9.000 mm leave nothing of the 9.000 mm of plate that each bolt of group base"
            + " plate holds",
        () -> group.pried(mm(4.5), mm(40)));
    Refused.with(
        "holes of 9.000 mm leave nothing of the 8.600 mm of plate that each bolt of group base"
            + " plate holds",
        () -> group.pried(mm(4.3), mm(40)));
  }
}
