package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Step;
import rungwork.material.Elasticity;
import rungwork.material.Material;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.quantity.Units;

class CrushTubeTest {
  private static final RatedMaterial STEEL = Material.rated("S235JRH");

  private static CrushTube thin() {
    return CrushTube.square("element", mm(60), mm(1.5)).of(mm(200), STEEL).triggered();
  }

  private static CrushTube thick() {
    return CrushTube.square("rail", mm(50), mm(3)).of(mm(200), STEEL);
  }

  @Test
  void a_thin_triggered_tube_folds_between_wide_bounds() {
    CrushTube tube = thin();
    assertTrue(
        tube.noStableFolding(Units.METRIC).isEmpty(),
        tube.noStableFolding(Units.METRIC).toString());
    assertTrue(tube.meanForce().high() > 2.5 * tube.meanForce().low());
    assertTrue(tube.meanForce().high() < tube.first(CrushTube.Strength.HIGH).force().high());
  }

  @Test
  void without_a_trigger_no_folding_is_assumed_and_the_reason_given() {
    assertEquals(
        "no stable folding assumed: without a trigger nobody knows where it begins; it may begin with hinge by the offset at 98.7 kN",
        thick().noStableFolding(Units.METRIC).orElseThrow());
  }

  @Test
  void a_thick_tube_is_not_assumed_to_fold_even_with_a_trigger() {
    String why =
        thick().triggered().offset(mm(10), mm(20)).noStableFolding(Units.METRIC).orElseThrow();
    assertTrue(
        why.startsWith("no stable folding assumed: at low strength the hinge by the offset at "),
        why);
    assertTrue(why.contains("does not exceed the folding peak of"), why);
    Refused.with(
        "rail: "
            + thick().noStableFolding(Units.METRIC).orElseThrow()
            + "; so there is no curve for it",
        () -> thick().curve(CrushTube.Strength.LOW));
  }

  @Test
  void a_long_tube_buckles_as_a_column_first() {
    CrushTube longer = thin().length(mm(1800));
    assertTrue(longer.noStableFolding(Units.METRIC).orElseThrow().contains("column buckling"));
    assertEquals("column buckling", longer.first(CrushTube.Strength.LOW).what());
  }

  @Test
  void the_first_to_begin_is_the_lowest_of_four() {
    CrushTube tube = thick().offset(mm(0), mm(30));
    assertEquals(4, tube.initiations().size());
    double least =
        tube.initiations().stream().mapToDouble(one -> one.force().low()).min().orElseThrow();
    assertEquals(least, tube.first(CrushTube.Strength.LOW).force().low());
    assertEquals("hinge by the offset", tube.first(CrushTube.Strength.LOW).what());
  }

  @Test
  void an_offset_hinges_at_the_plastic_moment_over_the_offset_when_it_is_large() {
    CrushTube tube = thick().offset(mm(2000), mm(2000));
    TubeStrength low = tube.at(CrushTube.Strength.LOW);
    double modulus = CrushTube.tube(CrushTube.Shape.SQUARE, 0.05, 0.0027).properties().wply();
    assertEquals(235e6 * modulus / 2, low.hinge(), 0.01 * low.hinge());
  }

  @Test
  void the_range_spans_every_formula_and_the_scatter_about_one() {
    for (CrushTube tube :
        List.of(thin(), CrushTube.round("ring", mm(60), mm(1.5)).of(mm(200), STEEL))) {
      double[] means =
          tube.working().stream()
              .filter(step -> step.formula().result().letter().equals("Pm"))
              .mapToDouble(Step::result)
              .toArray();
      int half = means.length / 2;
      assertTrue(tube.meanForce().low() <= 0.8 * means[0] && tube.meanForce().low() <= means[1]);
      assertTrue(tube.meanForce().high() >= 1.2 * means[half]);
      assertTrue(tube.meanForce().high() >= means[means.length - 1]);
    }
  }

  @Test
  void a_faster_hit_raises_the_high_strength_alone() {
    Range still = thin().meanForce();
    Range fast = thin().hitAt(kmh(50)).meanForce();
    assertEquals(still.low(), fast.low());
    assertTrue(fast.high() > 1.4 * still.high() && fast.high() < 2 * still.high());
  }

  @Test
  void the_tests_behind_the_formulas_are_named_when_a_tube_is_outside_them() {
    assertEquals(
        List.of("c/t 15.7 is outside the drop tests behind the formulas, at 30.25 and 32.18."),
        thick().outsideTests());
    CrushTube like = CrushTube.square("tested", mm(64), mm(2)).of(mm(200), STEEL);
    assertEquals(List.of(), like.outsideTests());
    assertEquals(
        List.of("Its length is 8.3 times its width; 2 to 4 times fold without tilting."),
        CrushTube.round("long", mm(60), mm(1.5)).of(mm(500), STEEL).outsideTests());
  }

  @Test
  void the_curve_takes_the_energy_of_mean_force_and_stroke() {
    CrushCurve curve = thin().curve(CrushTube.Strength.HIGH);
    double stroke = thin().stroke().high();
    double expected = thin().meanForce().high() * (stroke - 0.01 * 0.2);
    assertEquals(expected, curve.energy(stroke), 2e-3 * expected);
    assertTrue(curve.peak() > 5 * thin().meanForce().high());
  }

  /** Doubling every strength doubles every force; slender columns apart, where E decides. */
  @ParameterizedTest
  @ValueSource(doubles = {1.5, 2, 3})
  void forces_follow_the_strength(double factor) {
    Range once = tube(235e6, 360e6).meanForce();
    Range more = tube(235e6 * factor, 360e6 * factor).meanForce();
    assertEquals(once.low() * factor, more.low(), 1e-9 * more.low());
    assertEquals(once.high() * factor, more.high(), 1e-9 * more.high());
  }

  private static CrushTube tube(double yield, double ultimate) {
    RatedMaterial steel =
        new RatedMaterial(
            "steel",
            new Elasticity(210e9, 0.3, 7850),
            new RatedMaterial.Strength(yield, ultimate, yield, 0.2),
            new Source("stated for tests", Source.Tag.STATED_BY_USER));
    return CrushTube.round("ring", mm(60), mm(1.5)).of(mm(200), steel);
  }

  @Test
  void nonsense_is_refused() {
    Refused.with(
        "length of element 0 mm is not above zero",
        () -> CrushTube.square("element", mm(60), mm(1.5)).of(mm(0), STEEL));
    Refused.with(
        "wall 30.00 mm leaves no bore in a tube of 60.00 mm by 60.00 mm; the wall must stay below 30.00 mm",
        () -> CrushTube.square("element", mm(60), mm(30)).of(mm(200), STEEL));
  }

  @Test
  void the_working_shows_flow_stress_and_mean_force() {
    List<String> lines = thin().hitAt(kmh(50)).working().stream().map(Object::toString).toList();
    assertEquals("σ₀ = (fy + fu)/2 = (235.0 MPa + 360.0 MPa) / 2 = 297.5 MPa", lines.get(0));
    assertTrue(lines.get(2).startsWith("Pm = 38.27·σ₀·t²/4·(c/t)^⅓ = "), lines.get(2));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("γ̇ = ")), lines.toString());
  }
}
