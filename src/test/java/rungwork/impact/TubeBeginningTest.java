package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.impact.ThinTubes.SQUARE;
import static rungwork.impact.ThinTubes.STEEL;
import static rungwork.impact.ThinTubes.high;
import static rungwork.impact.ThinTubes.low;
import static rungwork.impact.ThinTubes.near;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** The same tubes: how they begin, where tests cover them, and the curves that come of them. */
class TubeBeginningTest {

  @Test
  void ways_to_begin_stand_in_order_and_the_lowest_is_named() {
    TubeBeginning beginning = new TubeBeginning(low(SQUARE), high(SQUARE));
    assertEquals(
        List.of("squash", "local buckling", "column buckling", "hinge by the offset"),
        beginning.ways().stream().map(CrushTube.Initiation::what).toList());
    assertEquals(
        new Range(Kind.FORCE, low(SQUARE).hinge(), high(SQUARE).hinge()),
        beginning.ways().get(3).force());
    assertEquals("hinge by the offset", beginning.first(CrushTube.Strength.LOW).what());
    CrushTube straight =
        CrushTube.square("thick", mm(60), mm(6)).of(mm(40), STEEL).offset(mm(0), mm(7));
    assertEquals("squash", straight.first(CrushTube.Strength.HIGH).what(), "of equal ones");
  }

  @Test
  void a_trigger_helps_only_where_the_rest_bears_more_than_the_folding_peak() {
    CrushTube stable = SQUARE.offset(mm(0), mm(1)).triggered();
    assertTrue(low(stable).hinge() > low(stable).foldingPeak());
    assertEquals(Optional.empty(), stable.noStableFolding(Units.METRIC));
    CrushTube leaning = SQUARE.offset(mm(0), mm(60)).triggered();
    String why = leaning.noStableFolding(Units.METRIC).orElseThrow();
    assertEquals(
        "no stable folding assumed: at low strength the hinge by the offset at "
            + Range.brief(Kind.FORCE, low(leaning).hinge(), Units.METRIC)
            + " does not exceed the folding peak of "
            + Range.brief(Kind.FORCE, low(leaning).foldingPeak(), Units.METRIC),
        why);
    CrushTube longer = stable.length(mm(3000));
    assertTrue(
        longer
            .noStableFolding(Units.METRIC)
            .orElseThrow()
            .startsWith("no stable folding assumed: at low strength column buckling at "));
  }

  /** Strain rate raises the folding peak of the high strength, not where a column buckles. */
  @Test
  void the_high_strength_may_fail_where_the_low_one_holds() {
    CrushTube fast =
        CrushTube.square("t", mm(60), mm(1.5))
            .of(mm(600), STEEL)
            .triggered()
            .offset(mm(0.1), mm(0.1))
            .hitAt(kmh(120));
    assertTrue(low(fast).column() > low(fast).foldingPeak());
    assertEquals(
        Optional.of(
            "no stable folding assumed: at high strength column buckling at "
                + Range.brief(Kind.FORCE, high(fast).column(), Units.METRIC)
                + " does not exceed the folding peak of "
                + Range.brief(Kind.FORCE, high(fast).foldingPeak(), Units.METRIC)),
        fast.noStableFolding(Units.METRIC));
  }

  private static CrushTube metres(CrushTube.Shape shape, double ratio, double length) {
    return new CrushTube(
        "t",
        shape,
        ratio + 1,
        1,
        length,
        STEEL,
        CrushTube.Trigger.NONE,
        Range.exactly(Kind.LENGTH, 0),
        0);
  }

  /** Walls of a metre, so that the ratios are the numbers themselves. */
  @Test
  void tests_behind_the_formulas_cover_the_ends_of_their_ranges() {
    assertEquals(List.of(), metres(CrushTube.Shape.SQUARE, 30, 93).outsideTests());
    assertEquals(List.of(), metres(CrushTube.Shape.SQUARE, 32.5, 93).outsideTests());
    assertEquals(
        List.of("c/t 29.9 is outside the drop tests behind the formulas, at 30.25 and 32.18."),
        metres(CrushTube.Shape.SQUARE, 29.9, 93).outsideTests());
    assertEquals(1, metres(CrushTube.Shape.SQUARE, 32.6, 93).outsideTests().size());
    assertEquals(List.of(), metres(CrushTube.Shape.ROUND, 10, 33).outsideTests());
    assertEquals(List.of(), metres(CrushTube.Shape.ROUND, 450, 1300).outsideTests());
    assertEquals(
        List.of("D/t 9.90 is outside the tests behind the formulas, 10 to 450."),
        metres(CrushTube.Shape.ROUND, 9.9, 33).outsideTests());
    assertEquals(1, metres(CrushTube.Shape.ROUND, 451, 1300).outsideTests().size());
    assertEquals(List.of(), metres(CrushTube.Shape.ROUND, 15, 32).outsideTests());
    assertEquals(List.of(), metres(CrushTube.Shape.ROUND, 15, 64).outsideTests());
    assertEquals(
        List.of("Its length is 1.9 times its width; 2 to 4 times fold without tilting."),
        metres(CrushTube.Shape.ROUND, 15, 30.4).outsideTests());
    assertEquals(1, metres(CrushTube.Shape.ROUND, 15, 65).outsideTests().size());
  }

  @Test
  void what_was_assumed_of_a_tube() {
    List<String> still = SQUARE.assumptions(Units.METRIC);
    assertEquals(
        List.of(
            "Low strength: minimum yield beside welds and minimum ultimate strength, wall 10 %"
                + " thin, the lowest of the published formulas (that with the effective length"
                + " less 20 %).",
            "High strength: 1.4 times minimum yield and 1.3 times minimum ultimate strength (AISC"
                + " 341-16, second-hand), wall 10 % thick, the highest of them (that with the"
                + " effective length and 20 % more).",
            "Strain rate is left out; state the speed of the hit.",
            "The foot is held, the front end free to move aside (effective length 2 L).",
            "With a trigger the folding peak is taken as twice the highest mean; only a test shows"
                + " it.",
            "Straight axis, no weld or bend within the stroke, force along the axis within the"
                + " stated offset."),
        still);
    assertEquals(
        "Strain rate by Cowper and Symonds at 50.0 km/h, in the high strength only.",
        SQUARE.hitAt(kmh(50)).assumptions(Units.METRIC).get(2));
  }

  /** 0.70 and 0.75 of its length; folds from 2 % on, solid 3 % after; 10 A fu there. */
  @Test
  void its_curve_goes_over_its_stroke_and_then_solid() {
    CrushTube tube = SQUARE.offset(mm(0), mm(1)).triggered();
    double solid = 10 * tube.section().properties().area() * 360e6;
    CrushCurve low = tube.curve(CrushTube.Strength.LOW);
    double mean = low(tube).leastMean();
    assertEquals("box", low.name());
    points(low, new double[] {0, 0.004, 0.14, 0.146}, new double[] {0, mean, 1.001 * mean, solid});
    near(solid / 0.004, low.unloading());
    CrushCurve high = tube.curve(CrushTube.Strength.HIGH);
    double most = high(tube).mostMean();
    points(high, new double[] {0, 0.004, 0.15, 0.156}, new double[] {0, most, 1.001 * most, solid});
    assertEquals(
        List.of("", "folds", "used up", "solid"),
        high.points().stream().map(CrushCurve.Point::label).toList());
    near(mean * 0.14, tube.energy().low());
    near(most * 0.15, tube.energy().high());
    near(tube.section().properties().area() * 0.2 * 7850, tube.mass());
    near(low(tube).foldingPeak(), tube.foldingPeak().low());
    near(high(tube).foldingPeak(), tube.foldingPeak().high());
  }

  private static void points(CrushCurve curve, double[] crush, double[] force) {
    for (int i = 0; i < crush.length; i++) {
      assertEquals(crush[i], curve.points().get(i).crush(), 1e-12);
      assertEquals(force[i], curve.points().get(i).force(), 1e-9 * force[i]);
    }
  }

  @Test
  void tubes_of_nothing_are_refused() {
    Refused.with("size of box 0 mm is not above zero", () -> CrushTube.square("box", mm(0), mm(1)));
    Refused.with(
        "wall of box 0 mm is not above zero", () -> CrushTube.square("box", mm(60), mm(0)));
    Refused.with(
        "offset of the force on box -1.000 mm is below zero", () -> SQUARE.offset(mm(-1), mm(2)));
    Refused.with("speed of the hit -1.000 km/h is below zero", () -> SQUARE.hitAt(kmh(-1)));
    assertEquals(
        new Range(Kind.LENGTH, 0, 0.0015),
        CrushTube.round("ring", mm(60), mm(1.5)).of(mm(200), STEEL).offset());
  }
}
