package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.N;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CrushCurveTest {
  /** Slopes 150, 0, 100 N/mm, then it falls; let go at 400 N/mm. */
  private static final CrushCurve CURVE =
      CrushCurve.named("part")
          .to(mm(20), kN(3), "yields")
          .to(mm(50), kN(3))
          .to(mm(70), kN(5), "peak")
          .to(mm(100), kN(2))
          .end(Npmm(400));

  @Test
  void the_force_is_straight_between_the_points_and_the_last_one_beyond() {
    assertEquals(0, CURVE.force(-0.01));
    assertEquals(1500, CURVE.force(0.01), 1e-9);
    assertEquals(3000, CURVE.force(0.02), 1e-9);
    assertEquals(3000, CURVE.force(0.04), 1e-9);
    assertEquals(3500, CURVE.force(0.055), 1e-9);
    assertEquals(5000, CURVE.force(0.07), 1e-9);
    assertEquals(4000, CURVE.force(0.08), 1e-9);
    assertEquals(2000, CURVE.force(0.5));
    assertEquals(5000, CURVE.peak());
  }

  /** 30 + 90 + 80 + 105 J in its four pieces; beyond them 2 kN a metre. */
  @Test
  void the_energy_is_the_area_of_triangles_and_trapezia() {
    assertEquals(0, CURVE.energy(-0.01));
    assertEquals(1500 * 0.01 / 2, CURVE.energy(0.01), 1e-9);
    assertEquals(30, CURVE.energy(0.02), 1e-9);
    assertEquals(30 + 90, CURVE.energy(0.05), 1e-9);
    assertEquals(30 + 90 + 3500 * 0.01, CURVE.energy(0.06), 1e-9);
    assertEquals(30 + 90 + 80 + 105, CURVE.energy(0.1), 1e-9);
    assertEquals(30 + 90 + 80 + 105 + 40, CURVE.energy(0.12), 1e-9);
    Refused.with("crush is not a number; give a finite number", () -> CURVE.energy(Double.NaN));
  }

  /** From 5 kN at 70 mm back by 5 mm: 3 kN; 5000 − 400·13 is below nothing. */
  @Test
  void let_go_it_falls_along_its_unloading() {
    assertEquals(3000, CURVE.force(0.065, 0.07), 1e-9);
    assertEquals(0, CURVE.force(0.057, 0.07));
    assertEquals(5000, CURVE.force(0.07, 0.07), 1e-9);
    assertEquals(4000, CURVE.force(0.08, 0.07), 1e-9);
    assertEquals(200 - 0.005 * (5000 + 3000) / 2, CURVE.energy(0.065, 0.07), 1e-9);
    assertEquals(200 - 5000.0 * 5000 / 400e3 / 2, CURVE.energy(0.05, 0.07), 1e-9);
    assertEquals(200, CURVE.energy(0.07, 0.07), 1e-9);
    assertEquals(235 + 10 - 10 + 10, CURVE.energy(0.08, 0.07), 1e-9);
  }

  @Test
  void a_force_is_reached_at_one_crush_and_left_at_another() {
    CrushCurve rising =
        CrushCurve.named("rising")
            .to(mm(20), kN(3))
            .to(mm(50), kN(3))
            .to(mm(70), kN(5))
            .to(mm(90), kN(5))
            .end();
    assertEquals(0, rising.reaching(0));
    assertEquals(0.01, rising.reaching(1500), 1e-12);
    assertEquals(0.02, rising.reaching(3000), 1e-12);
    assertEquals(0.05, rising.leaving(3000), 1e-12);
    assertEquals(0.06, rising.reaching(4000), 1e-12);
    assertEquals(0.06, rising.leaving(4000), 1e-12);
    assertEquals(0.07, rising.reaching(5000), 1e-12);
    assertEquals(0.09, rising.leaving(5000), 1e-12);
    assertEquals(0.09, rising.reaching(6000), 1e-12);
    assertEquals(0.02, CURVE.reaching(2500 + 500), 1e-12);
  }

  @Test
  void a_fall_is_told_with_both_forces() {
    assertEquals(Optional.of("from 5.000 kN to 2.000 kN"), CURVE.fall());
    CrushCurve level = CrushCurve.named("level").to(mm(10), kN(3)).to(mm(50), kN(3)).end();
    assertEquals(Optional.empty(), level.fall());
  }

  @Test
  void a_curve_unloads_as_steeply_as_it_rises_at_its_steepest() {
    CrushCurve curve = CrushCurve.named("later steeper").to(mm(20), kN(3)).to(mm(30), kN(8)).end();
    assertEquals(500e3, curve.unloading(), 1e-6);
    CrushCurve linear = CrushCurve.linear("spring", Npmm(70), mm(900));
    assertEquals(70e3, linear.unloading(), 1e-6);
    assertEquals(63e3, linear.last().force(), 1e-6);
    assertEquals(0.9, linear.last().crush(), 1e-12);
  }

  @Test
  void times_a_factor_it_keeps_its_crush_and_its_words() {
    CrushCurve more = CURVE.times(1.5);
    assertEquals("part", more.name());
    assertEquals(600e3, more.unloading(), 1e-6);
    assertEquals(7500, more.points().get(3).force(), 1e-9);
    assertEquals(0.07, more.points().get(3).crush(), 1e-12);
    assertEquals(
        List.of("", "yields", "", "peak", ""),
        more.points().stream().map(CrushCurve.Point::label).toList());
    assertEquals("part: to 100 mm, at most 5.00 kN", CURVE.toString());
    Refused.with("factor on part 0 is not above zero", () -> CURVE.times(0));
  }

  @Test
  void curves_that_are_none_are_refused() {
    Refused.with(
        "crush curve late must begin at no crush and no force and have a second point",
        () -> new CrushCurve("late", List.of(at(1, 0), at(2, 3)), 9e9));
    Refused.with(
        "crush curve strained must begin at no crush and no force and have a second point",
        () -> new CrushCurve("strained", List.of(at(0, 1), at(2, 3)), 9e9));
    Refused.with(
        "crush curve stays goes from 10.00 mm to 10.00 mm; the crush of each point must lie above"
            + " the one before",
        () -> CrushCurve.named("stays").to(mm(10), kN(1)).to(mm(10), kN(2)).end());
    Refused.with(
        "force of a point -1.000 kN is below zero",
        () -> CrushCurve.named("pulls").to(mm(10), kN(-1)));
    Refused.with(
        "crush of a point -10.00 mm is below zero",
        () -> CrushCurve.named("pulls").to(mm(-10), kN(1)));
    Refused.with(
        "stiffness of spring 0 N/mm is not above zero",
        () -> CrushCurve.linear("spring", Npmm(0), mm(9)));
    Refused.with(
        "end of spring 0 mm is not above zero", () -> CrushCurve.linear("spring", Npmm(9), mm(0)));
    Refused.with(
        "a crush curve has no name; give it one",
        () -> CrushCurve.named(" ").to(mm(10), N(1)).end());
    assertEquals(
        100e3,
        CrushCurve.named("just").to(mm(10), kN(1)).end(Npmm(100)).unloading(),
        1e-6,
        "just as steep as it rises is enough");
  }

  private static CrushCurve.Point at(double crush, double force) {
    return new CrushCurve.Point(crush, force, "");
  }
}
