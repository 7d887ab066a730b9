package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Check;
import rungwork.check.LimitState;
import rungwork.check.Verdict;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.quantity.Units;

class BoltGroupTest {
  private static final List<Spot> SQUARE =
      List.of(spot(0, 0), spot(60, 0), spot(60, 60), spot(0, 60));
  private static final Point MIDDLE = new Point(0.03, 0.03, 0);

  private static Spot spot(double x, double y) {
    return Spot.at(mm(x), mm(y));
  }

  private static BoltGroup group(String strength, List<Spot> spots) {
    return new BoltGroup(
        "bracket",
        Bolt.of("M8", strength),
        Bolt.Threads.IN_PLANE,
        spots,
        BoltGroup.Plate.of(Parts.S235, mm(4), mm(9), mm(15)));
  }

  @Test
  void a_central_pull_is_shared_alike() {
    FaceLoad load = Parts.load(Wrench.force(0, 0, 8000), MIDDLE);
    group("8.8", SQUARE).tensions(load).forEach(tension -> assertEquals(2000, tension, 1e-9));
  }

  @Test
  void a_moment_out_of_the_face_pulls_two_bolts_and_presses_on_the_others() {
    FaceLoad load = Parts.load(Wrench.moment(120, 0, 0), MIDDLE);
    List<Double> tensions = group("8.8", SQUARE).tensions(load);
    assertEquals(List.of(0.0, 0.0), tensions.subList(0, 2));
    assertEquals(1000, tensions.get(2), 1e-9);
    assertEquals(1000, tensions.get(3), 1e-9);
  }

  @Test
  void two_bolts_cannot_hold_a_moment_about_their_own_line() {
    BoltGroup pair = group("8.8", SQUARE.subList(0, 2));
    FaceLoad load = Parts.load(Wrench.moment(120, 0, 0), new Point(0, 0, 0));
    Check tension = named(pair.checks(load), "bolt tension");
    assertEquals(
        "it stands in one straight line and cannot hold a moment about that line; how far the"
            + " plate's edge helps is not known",
        tension.verdict().reason(Units.METRIC));
    assertEquals(List.of(), pair.tensions(load));
  }

  @Test
  void two_bolts_hold_a_moment_across_their_line() {
    FaceLoad load = Parts.load(Wrench.moment(0, 120, 0), new Point(0.03, 0, 0));
    List<Double> tensions = group("8.8", SQUARE.subList(0, 2)).tensions(load);
    assertEquals(2000, tensions.get(0), 1e-9);
    assertEquals(0, tensions.get(1));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void forces_on_bolts_depend_neither_on_the_origin_nor_on_turning(long seed) {
    Random random = new Random(seed);
    Wrench wrench = Rigid.wrench(random);
    Point place = Rigid.point(random);
    List<Spot> spots = Rigid.spots(random, 5);
    Rigid motion = Rigid.of(random);
    FaceLoad load = Parts.load(wrench, place);
    FaceLoad moved = Parts.load(motion.turned(wrench), motion.moved(place));
    BoltGroup here = group("8.8", spots);
    BoltGroup there = group("8.8", spots.stream().map(motion::moved).toList());
    assertSame(here.shears(load), there.shears(moved), "shears, seed " + seed);
    assertSame(here.tensions(load), there.tensions(moved), "tensions, seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void the_shares_together_are_the_load(long seed) {
    Random random = new Random(seed);
    Wrench wrench = Rigid.wrench(random);
    List<Spot> spots = Rigid.spots(random, 6);
    Pattern pattern = Pattern.ofBolts(spots);
    FaceLoad load = Parts.load(wrench, new Point(0, 0, 0));
    Wrench sum = Wrench.ZERO;
    for (Spot spot : spots) {
      double[] share =
          pattern.share(spot, load).stream().mapToDouble(step -> step.result()).toArray();
      Wrench one = Wrench.force(share[0], share[1], share[2]);
      sum = sum.plus(one.moved(new Point(spot.x(), spot.y(), 0), new Point(0, 0, 0)));
    }
    Wrench rest = sum.plus(wrench.times(-1));
    double[] parts = {rest.fx(), rest.fy(), rest.fz(), rest.mx(), rest.my(), rest.mz()};
    for (double part : parts) {
      assertEquals(0, part, 1e-8, "seed " + seed);
    }
  }

  @Test
  void utilisation_is_linear_in_the_load() {
    Wrench wrench = new Wrench(900, -400, 1200, 30, -20, 15);
    Joint group = group("8.8", SQUARE).pried(mm(25));
    List<Check> once = group.checks(Parts.load(wrench, MIDDLE));
    List<Check> thrice = group.checks(Parts.load(wrench.times(3), MIDDLE));
    for (int i = 0; i < once.size(); i++) {
      if (once.get(i).basis().limitState() != LimitState.PROPORTION) {
        double expected = 3 * once.get(i).utilisation().orElseThrow();
        assertEquals(expected, thrice.get(i).utilisation().orElseThrow(), 1e-12 * expected);
      }
    }
  }

  @Test
  void class_12_9_is_marked_outside_en_1993_1_8_and_the_number_still_shown() {
    List<Check> checks =
        group("12.9", SQUARE).checks(Parts.load(Wrench.force(5000, 0, 1000), MIDDLE));
    for (String what : List.of("bolt shear", "bolt tension", "bolt shear and tension")) {
      Verdict verdict = named(checks, what).verdict();
      assertEquals("outside EN 1993-1-8: bolt class 12.9", verdict.reason(Units.METRIC));
      assertTrue(verdict.numbers().isPresent());
    }
  }

  @Test
  void the_working_of_the_worst_bolt_can_be_followed() {
    FaceLoad load = Parts.coded(new Wrench(0, 1200, 0, 0, 0, 72), MIDDLE);
    Check shear = named(group("8.8", SQUARE).checks(load), "bolt shear");
    assertEquals(
        List.of(
            "fx = Fx/n − Mz·y/J = 0 kN / 4.000 − 0.07200 kN·m · (-30.00 mm) / 72.00 cm² = 0.3000"
                + " kN",
            "fy = Fy/n + Mz·x/J = 1.200 kN / 4.000 + 0.07200 kN·m · 30.00 mm / 72.00 cm² = 0.6000"
                + " kN",
            "fz = Fz/n + Bu·u/Iu + Bv·v/Iv = 0 kN / 4.000 + 0 kN·m · 30.00 mm / 36.00 cm² + 0 kN·m"
                + " · (-30.00 mm) / 36.00 cm² = 0 kN",
            "Fv = √(fx² + fy²) = √((0.3000 kN)² + (0.6000 kN)²) = 0.6708 kN",
            "Fv,Rd = αv·fub·A/(γM2·γ) = 0.6000 · 800.0 MPa · 0.3660 cm² / (1.250 · 1.000) = 14.05"
                + " kN"),
        shear.working().stream().map(Object::toString).toList());
    assertEquals("bolt 2", shear.where());
    assertEquals("γM2 = 1.25 and design factor 1.00 (none applied)", shear.basis().factors());
  }

  @Test
  void a_hole_near_an_edge_fails_its_proportion_and_its_bearing_is_not_checked() {
    BoltGroup near =
        new BoltGroup(
            "bracket",
            Bolt.of("M8", "8.8"),
            Bolt.Threads.IN_PLANE,
            SQUARE,
            BoltGroup.Plate.of(Parts.S235, mm(4), mm(9), mm(9)));
    List<Check> checks = near.checks(Parts.load(Wrench.force(1000, 0, 0), MIDDLE));
    assertEquals(1.2, named(checks, "edge distance").utilisation().orElseThrow(), 1e-12);
    assertEquals(
        "the edge is 9.000 mm from the hole's centre; the bearing rule needs 10.80 mm",
        named(checks, "bearing of the plate").verdict().reason(Units.METRIC));
  }

  @Test
  void holes_that_are_too_close_leave_bearing_unchecked() {
    List<Spot> close = List.of(spot(0, 0), spot(20, 0));
    List<Check> checks =
        group("8.8", close).checks(Parts.load(Wrench.force(0, 1000, 0), new Point(0.01, 0, 0)));
    assertEquals(
        "two bolts are 20.00 mm apart; the bearing rule needs 21.60 mm",
        named(checks, "bearing of the plate").verdict().reason(Units.METRIC));
  }

  @Test
  void bad_groups_are_refused_by_name() {
    Refused.with(
        "bolt group bracket has 1 bolt; it needs two at least",
        () -> group("8.8", SQUARE.subList(0, 1)));
    Refused.with(
        "two bolts of group bracket are 5.000 mm apart; their holes of 9.000 mm would meet",
        () -> group("8.8", List.of(spot(0, 0), spot(5, 0))));
    Refused.with(
        "two bolts of group bracket are 9.000 mm apart; their holes of 9.000 mm would meet",
        () -> group("8.8", List.of(spot(0, 0), spot(9, 0))));
    Refused.with(
        "edge distance 4.500 mm lets the hole of 9.000 mm break through the edge; it must stay"
            + " above 4.500 mm",
        () -> BoltGroup.Plate.of(Parts.S235, mm(4), mm(9), mm(4.5)));
    Refused.with(
        "edge distance -3.000 mm is not above zero",
        () -> BoltGroup.Plate.of(Parts.S235, mm(4), mm(9), mm(-3)));
    Refused.with(
        "edge distance 4.000 mm lets the hole of 9.000 mm break through the edge; it must stay"
            + " above 4.500 mm",
        () -> BoltGroup.Plate.of(Parts.S235, mm(4), mm(9), mm(4)));
    Refused.with(
        "hole 7.000 mm of bracket is too narrow for its bolt M8 8.8; it must be at least 8.000 mm",
        () ->
            new BoltGroup(
                "bracket",
                Bolt.of("M8", "8.8"),
                Bolt.Threads.CLEAR,
                SQUARE,
                BoltGroup.Plate.of(Parts.S235, mm(4), mm(7), mm(15))));
  }

  @Test
  void a_hole_as_wide_as_its_bolt_is_taken() {
    BoltGroup.Plate plate = BoltGroup.Plate.of(Parts.S235, mm(4), mm(8), mm(15));
    Bolt m8 = Bolt.of("M8", "8.8");
    assertEquals(plate, new BoltGroup("tight", m8, Bolt.Threads.CLEAR, SQUARE, plate).plate());
  }

  private static void assertSame(List<Double> expected, List<Double> actual, String message) {
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), actual.get(i), 1e-9 * (1 + expected.get(i)), message);
    }
  }
}
