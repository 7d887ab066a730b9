package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Check;
import rungwork.frame.Wrench;

class ObliqueLugTest {
  private static final String OBLIQUE = "force at an angle, second opinion";

  private final Tab tab = Parts.tab();

  private double use(Tab asked, double fx, double fz) {
    List<Check> checks = asked.checks(Parts.load(Wrench.force(fx, 0, fz), asked.hole()));
    return named(checks, OBLIQUE).utilisation().orElseThrow();
  }

  /** Straight out: 40 mm wide, hole 10.5, end 20, 5 thick, fu 470 MPa. */
  @Test
  void along_the_plate_the_shorter_of_shear_planes_and_net_section_counts() {
    double half = 5.25;
    double aside = half * Math.sin(Math.toRadians(40));
    double onArc = Math.sqrt(20 * 20 - aside * aside);
    double plane = onArc - half * Math.cos(Math.toRadians(40));
    double out = 2 * 0.6 * 470 * plane * 5;
    double beside = 0.6 * 14.75 * 470 / 355 * Math.sqrt(10.5 / 14.75);
    double net = 0.9 * 470 * 2 * beside * 5;
    assertEquals(1000 / Math.min(out, net), use(tab, 0, 1000), 1e-12);
    Tab narrow =
        new Tab("narrow", tab.material(), Tab.Plate.single(mm(5), mm(16), mm(30)), tab.eye());
    assertEquals(1000 / (0.9 * 470 * 2 * 2.75 * 5), use(narrow, 0, 1000), 1e-12);
  }

  @Test
  void across_the_plate_the_strut_beside_the_hole_counts() {
    double strut = 355 * 14.75 * 5;
    assertEquals(1000 / strut, use(tab, 1000, 0), 1e-12);
    assertEquals(use(tab, 1000, 0), use(tab, -1000, -500), 1e-12);
  }

  /** Forces at the hole of the strut and of the loop hold the pin, and the plate below them. */
  @Test
  void strut_and_loop_hold_the_force_across_with_its_moment() {
    double force = 1000;
    double strut = force * Math.sqrt(2);
    double loop = force;
    assertEquals(force, strut * Math.cos(Math.PI / 4), 1e-9);
    assertEquals(0, loop - strut * Math.sin(Math.PI / 4), 1e-9);
    double below = 0.020;
    assertEquals(force * below, strut * Math.sin(Math.PI / 4) * below, 1e-9);
  }

  /** Half a turn in steps: the interaction lies between the larger ratio and the sum of both. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 15, 30, 45, 60, 75, 85})
  void at_an_angle_both_ratios_act_together(double degrees) {
    double fx = 2000 * Math.sin(Math.toRadians(degrees));
    double fz = 2000 * Math.cos(Math.toRadians(degrees));
    double along = use(tab, 0, fz);
    double across = use(tab, fx, 0);
    double both = use(tab, fx, fz);
    assertEquals(Math.pow(Math.pow(along, 1.6) + Math.pow(across, 1.6), 0.625), both, 1e-12);
    assertTrue(both > Math.max(along, across) && both < along + across);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void utilisation_is_linear_in_the_load_and_a_pair_halves_it(long seed) {
    Random random = new Random(seed);
    double fx = 4000 * random.nextGaussian();
    double fz = 4000 * random.nextDouble();
    double once = use(tab, fx, fz);
    Tab pair = new Tab("pair", tab.material(), tab.plate().paired(), tab.eye());
    assertEquals(3 * once, use(tab, 3 * fx, 3 * fz), 1e-12 * once, () -> "seed " + seed);
    assertEquals(once / 2, use(pair, fx, fz), 1e-12 * once, () -> "seed " + seed);
  }

  /** Along the plate it must not say much else than AISC and, less its 1.2, BTH-1: both read. */
  @ParameterizedTest
  @CsvSource({"40, 20", "30, 16", "60, 30", "25, 14"})
  void along_the_plate_it_agrees_with_the_rules_that_were_read(double width, double end) {
    Tab other =
        new Tab(
            "tab",
            Parts.S355,
            Tab.Plate.single(mm(5), mm(width), mm(60)),
            Tab.Eye.of(Bolt.of("M10", "8.8"), mm(10.5), mm(end)));
    List<Check> checks = other.checks(Parts.load(Wrench.force(0, 0, 1000), other.hole()));
    double read =
        checks.stream()
            .filter(c -> c.what().contains("tearing") || c.what().contains("shearing"))
            .mapToDouble(
                c -> c.utilisation().orElseThrow() / (c.what().contains("second") ? 1.2 : 1))
            .max()
            .orElseThrow();
    double ratio = use(other, 0, 1000) / read;
    assertTrue(ratio > 0.9 && ratio < 1.25, () -> "ratio " + ratio);
  }

  @Test
  void a_push_straight_towards_the_face_only_bears() {
    List<Check> checks = tab.checks(Parts.load(Wrench.force(0, 0, -1000), tab.hole()));
    assertTrue(checks.stream().noneMatch(check -> check.what().equals(OBLIQUE)));
  }

  @Test
  void it_says_that_closed_forms_stand_in_for_the_charts() {
    List<Check> checks = tab.checks(Parts.load(Wrench.force(500, 0, 1000), tab.hole()));
    Check check = named(checks, OBLIQUE);
    assertEquals(
        "Closed forms on the safe side stand in for the handbooks' charts, which may allow a"
            + " quarter more along the plate and twice as much across it (from memory).",
        check.caution());
    assertTrue(check.source().contains("(from memory)"));
  }
}
