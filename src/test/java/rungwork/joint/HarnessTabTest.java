package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.joint.Parts.named;
import static rungwork.joint.Parts.numbers;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.LimitState;
import rungwork.frame.Wrench;
import rungwork.quantity.Units;

class HarnessTabTest {
  /** A pair of 3 mm, 30 wide, hole 10.5, 18 from hole to end. */
  private static final Tab PAIR =
      new Tab(
          "lap belt",
          Parts.S355,
          Tab.Plate.single(mm(3), mm(30), mm(30)).paired(),
          Tab.Eye.of(Bolt.of("M10", "8.8"), mm(10.5), mm(18)));

  private static List<Check> checks(Wrench wrench) {
    return PAIR.asHarnessTab().checks(Parts.load(wrench, PAIR.hole()));
  }

  private static List<String> names(List<Check> checks) {
    return checks.stream().map(Check::what).toList();
  }

  @Test
  void it_needs_60_mm2_in_tension_and_in_shear_and_1_6_mm() {
    List<Check> checks = checks(Wrench.force(0, 0, 5000));
    // Tension: 2·(30 − 10.5)·3 = 117 mm². Shear: two planes a plate, 2·2·(18 − 5.25)·3 = 153 mm².
    assertEquals(117e-6, numbers(checks, "harness tab, area in tension").capacity(), 1e-12);
    assertEquals(60e-6, numbers(checks, "harness tab, area in tension").demand(), 1e-15);
    assertEquals(153e-6, numbers(checks, "harness tab, area in shear").capacity(), 1e-12);
    assertEquals(1.6e-3, numbers(checks, "harness tab, thickness").demand(), 1e-15);
    assertEquals(3e-3, numbers(checks, "harness tab, thickness").capacity(), 1e-15);
    for (Check check : checks) {
      assertEquals(LimitState.PROPORTION, check.basis().limitState());
      assertEquals("lap belt", check.part());
    }
    assertEquals("lap belt, harness rules", PAIR.asHarnessTab().name());
  }

  @Test
  void a_belt_in_line_with_it_or_slack_asks_nothing_more() {
    List<String> three =
        List.of(
            "harness tab, area in tension", "harness tab, area in shear", "harness tab, thickness");
    assertEquals(three, names(checks(Wrench.force(0, 0, 5000))));
    assertEquals(three, names(checks(Wrench.ZERO)));
  }

  @Test
  void a_belt_off_its_line_is_not_checked_and_says_by_how_much() {
    // 3 kN sideways to 4 kN along: arctan(3/4) = 36.87°.
    for (Wrench off : List.of(Wrench.force(3000, 0, 4000), Wrench.force(0, -3000, 4000))) {
      Check bending = named(checks(off), "harness tab, in line with its belt");
      assertEquals(
          "the rules allow no bending; the load is 36.87° off the tab's line: turn the tab towards"
              + " its belt",
          bending.verdict().reason(Units.METRIC));
    }
    assertEquals(
        "the rules allow no bending; the load is 180.0° off the tab's line: turn the tab towards"
            + " its belt",
        named(checks(Wrench.force(0, 0, -100)), "harness tab, in line with its belt")
            .verdict()
            .reason(Units.METRIC));
  }
}
