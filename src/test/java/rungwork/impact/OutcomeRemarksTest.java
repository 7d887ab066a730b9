package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Units;

/** Crashes made up: what is said of them, and what is not. */
class OutcomeRemarksTest {
  private static final CrushCurve FRAME =
      CrushCurve.named("frame").to(mm(10), kN(180)).to(mm(600), kN(200)).end();
  private static final CrushCurve TUBE =
      CrushCurve.named("tube").to(mm(5), kN(40)).to(mm(200), kN(41), "used up").end();
  private static final CrushElement ELEMENT =
      CrushElement.measured("tube", mm(80), kg(3)).between(TUBE, TUBE.times(1.5), "x");
  private static final CrashModel CAR = CrashModel.of("car", kmh(36), kg(700), FRAME);

  private static Crash crash(double back, String... labels) {
    Crash.Body body =
        new Crash.Body(
            "body",
            700,
            new double[] {0, 0.05, 0.1},
            new double[] {0, 200, 0},
            new double[] {10, 5, -back},
            new double[3]);
    List<Crash.Event> events =
        List.of(labels).stream().map(label -> new Crash.Event(0, label)).toList();
    Crash.Part tube = new Crash.Part(TUBE, new double[] {0, 0.1}, new double[] {0, 41e3});
    Crash.Part frame = new Crash.Part(FRAME, new double[] {0, 0.02}, new double[] {0, 181e3});
    return new Crash(CAR.behind(TUBE), List.of(body), List.of(tube, frame), events, 0);
  }

  private static RigidOrCrush.Outcome outcome(Obstacle obstacle, Crash... crashes) {
    RigidOrCrush.Design design = RigidOrCrush.Design.with("one", ELEMENT, mm(350));
    Scene scene = Scene.of("scene", kmh(36), kg(700), obstacle);
    double[] line = {0, 1, 2};
    Ride.Run run =
        new Ride.Run("pulse", 10, 5e4, 0, false, new Ride.Series(line, line, line, line, line));
    Ride ride = new Ride(Fronts.driver(), List.of(crashes[0].pulse()), List.of(run));
    return new RigidOrCrush.Outcome(design, List.of(crashes), ride, scene, Range.ratio(0, 0));
  }

  @Test
  void nothing_is_said_where_all_is_as_assumed() {
    Crash quiet = crash(2, "contact", "tube: folds");
    assertEquals(
        List.of(), outcome(Obstacle.rigidWall(), quiet).remarks(Units.METRIC), "0.2 is allowed");
  }

  @Test
  void a_stroke_that_is_used_up_is_counted() {
    Crash used = crash(1, "tube: used up", "comes off");
    assertEquals(
        List.of(
            "Its stroke is used up in 2 of 3 combinations; the rest of the speed meets the frame."),
        outcome(Obstacle.rigidWall(), used, crash(1, "contact"), used).remarks(Units.METRIC));
  }

  @Test
  void what_passes_the_elements_by_and_comes_off_too_fast_is_said() {
    assertEquals(
        List.of(
            "None of its elements meets a post of 200 mm at 0 mm: they do nothing in this hit.",
            "It comes off at 0.100 to 0.210 of the closing speed, more than the scene's 0 to 0.200:"
                + " its curves give back too much; let them unload more steeply."),
        outcome(Obstacle.post(mm(0), mm(200)), crash(1), crash(2.1)).remarks(Units.METRIC));
  }

  /** ½·40·5 + ½·(40 + 41)·… kN·mm to 100 mm; the frame ½·180·10 and on to 20 mm. */
  @Test
  void energies_are_those_of_the_parts() {
    RigidOrCrush.Outcome outcome = outcome(Obstacle.rigidWall(), crash(1));
    double atHundred = 40e3 + 1e3 * 95 / 195;
    assertEquals(100 + 0.095 * (40e3 + atHundred) / 2, outcome.elementEnergy().low(), 1e-6);
    double atTwenty = 180e3 + 20e3 * 10 / 590;
    assertEquals(900 + 0.01 * (180e3 + atTwenty) / 2, outcome.frameEnergy().high(), 1e-6);
    assertEquals(0.12, outcome.crush().low(), 1e-12);
    assertEquals(0.1, outcome.duration().low(), 1e-12);
    assertEquals(200, outcome.peak().high(), 1e-9);
    assertEquals(100, outcome.meanOverTime().high(), 1e-9);
    assertEquals(RigidOrCrush.Order.NOTHING_IN_FRONT, outcome.order());
  }

  /** Two of 80 mm at 350 mm either side; a wall that ends at 310 mm just passes one by. */
  @Test
  void a_design_counts_what_is_met_and_weighs_all() {
    RigidOrCrush.Design two = RigidOrCrush.Design.with("two", ELEMENT, mm(350)).and(mm(-350));
    assertEquals(0.35, two.places().get(0), 1e-12);
    assertEquals(-0.35, two.places().get(1), 1e-12);
    assertEquals(6, two.mass());
    assertEquals(2, two.met(Obstacle.rigidWall()));
    assertEquals(1, two.met(Obstacle.partOfWall(mm(-310), mm(900))));
    assertEquals(2, two.met(Obstacle.partOfWall(mm(-311), mm(900))));
    assertEquals(0, RigidOrCrush.Design.bare("bare").mass());
    assertEquals(0, RigidOrCrush.Design.bare("bare").met(Obstacle.rigidWall()));
    Refused.with("a design has no name; give it one", () -> RigidOrCrush.Design.bare(""));
  }

  @Test
  void rails_first_yield_at_their_second_points() {
    RigidOrCrush.Rails rails = new RigidOrCrush.Rails(FRAME, FRAME.times(1.5));
    assertEquals(180e3, rails.firstYield().low(), 1e-6);
    assertEquals(270e3, rails.firstYield().high(), 1e-6);
  }

  @Test
  void a_measured_element_says_what_it_rests_on() {
    assertEquals(TUBE, ELEMENT.curve(CrushTube.Strength.LOW));
    assertEquals(TUBE.times(1.5), ELEMENT.curve(CrushTube.Strength.HIGH));
    assertEquals(41e3, ELEMENT.foldingPeak().low(), 1e-6);
    assertEquals(61.5e3, ELEMENT.foldingPeak().high(), 1e-6);
    assertEquals(ELEMENT, ELEMENT.hitAt(kmh(90)));
    assertEquals(List.of(), ELEMENT.outsideTests());
    assertEquals(
        List.of("Force of tube: x; at the speed of its test, not at that of the hit."),
        ELEMENT.assumptions(Units.METRIC));
    CrushCurve peaked =
        CrushCurve.named("peaked")
            .to(mm(5), kN(90))
            .to(mm(9), kN(30))
            .to(mm(200), kN(31), "used up")
            .to(mm(210), kN(900))
            .end();
    assertEquals(
        90e3,
        CrushElement.measured("p", mm(80), kg(3)).between(peaked, peaked, "x").foldingPeak().low());
    Refused.with(
        "width of p 0 mm is not above zero", () -> CrushElement.measured("p", mm(0), kg(3)));
    Refused.with(
        "mass of p -1.000 kg is below zero", () -> CrushElement.measured("p", mm(80), kg(-1)));
    Refused.with(
        "mass of p 0 kg is not above zero",
        () -> CrushElement.measured("p", mm(80), kg(0)).between(TUBE, TUBE, "x"));
  }
}
