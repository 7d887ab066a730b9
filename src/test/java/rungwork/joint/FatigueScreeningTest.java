package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.MPa;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.LimitState;
import rungwork.joint.FatigueScreening.Detail;
import rungwork.joint.FatigueScreening.Swings;

class FatigueScreeningTest {
  private static FatigueScreening screened(double scale) {
    List<Swings> year =
        List.of(
            Swings.of("braking to a stop", MPa(60 * scale), 20_000),
            Swings.of("pothole", MPa(150 * scale), 400));
    return new FatigueScreening("front tab", Detail.FILLET_TOE, year, 1.35);
  }

  @Test
  void damage_grows_with_the_cube_and_utilisation_with_the_stress() {
    assertEquals(8 * screened(1).damage(), screened(2).damage(), 1e-12);
    assertEquals(
        2 * screened(1).check().utilisation().orElseThrow(),
        screened(2).check().utilisation().orElseThrow(),
        1e-12);
  }

  @Test
  void a_damage_of_one_is_a_utilisation_of_one() {
    List<Swings> use = List.of(Swings.of("all", MPa(63), 2e6));
    FatigueScreening full = new FatigueScreening("tab", Detail.FILLET_TOE, use, 1);
    assertEquals(1, full.damage(), 1e-12);
    assertEquals(1, full.check().utilisation().orElseThrow(), 1e-12);
  }

  @Test
  void it_says_that_it_is_a_screening_and_no_life() {
    Check check = screened(1).check();
    assertEquals(LimitState.FATIGUE, check.basis().limitState());
    assertEquals("γMf = 1.35, screening", check.basis().factors());
    assertEquals(
        "A screening, never a life: counts and ranges are guesses, and weld quality, misalignment,"
            + " corrosion and repairs change the class. Inspect welds; a crack ends their use.",
        check.caution());
    assertEquals("braking to a stop, pothole", check.loadCase());
  }

  @Test
  void the_sum_can_be_followed_line_by_line() {
    List<String> lines = screened(1).check().working().stream().map(Object::toString).toList();
    assertEquals(
        "D = D′ + n/(2·10⁶)·(Δσ·γMf/FAT)³ = 0 + 20000 / (2 · 10⁶) · (60.00 MPa · 1.350 / 63.00"
            + " MPa)³ = 0.02125",
        lines.get(0));
    assertEquals(4, lines.size());
  }

  @Test
  void a_use_without_a_range_and_a_negative_count_are_refused() {
    Refused.with(
        "the fatigue screening of tab has no stress range; state one at least",
        () -> new FatigueScreening("tab", Detail.FILLET_TOE, List.of(), 1.35));
    Refused.with("count of pothole -4.000 is below zero", () -> Swings.of("pothole", MPa(60), -4));
    Refused.with(
        "γMf 0.9000 is below 1; it would raise the class",
        () -> new FatigueScreening("tab", Detail.FILLET_TOE, screened(1).use(), 0.9));
  }
}
