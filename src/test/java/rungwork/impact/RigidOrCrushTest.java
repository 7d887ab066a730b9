package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Units;

class RigidOrCrushTest {
  private static final RigidOrCrush CHOICE = Fronts.choice();

  @Test
  void a_crush_element_in_front_lowers_the_pulse_and_the_person_s_load() {
    RigidOrCrush.Outcome bare = CHOICE.outcomes().get(0);
    RigidOrCrush.Outcome crush = CHOICE.outcomes().get(1);
    assertTrue(crush.meanOverTime().high() < bare.meanOverTime().low());
    assertTrue(crush.ride().peak().low() < bare.ride().peak().low());
    assertTrue(crush.crush().low() > bare.crush().low());
    assertEquals(0, bare.elementEnergy().high());
    assertTrue(crush.elementEnergy().low() > 0);
    assertTrue(crush.design().mass() > 0);
  }

  @Test
  void all_energy_goes_somewhere_in_every_combination() {
    for (RigidOrCrush.Outcome outcome : CHOICE.outcomes()) {
      for (Crash crash : outcome.crashes()) {
        double kinetic = crash.model().mass() * Math.pow(crash.model().speed(), 2) / 2;
        double taken = crash.parts().stream().mapToDouble(Crash.Part::energy).sum();
        assertEquals(kinetic, taken, 2e-3 * kinetic);
      }
    }
  }

  @Test
  void low_and_high_of_frame_and_element_are_combined() {
    assertEquals(2, CHOICE.outcomes().get(0).crashes().size());
    assertEquals(4, CHOICE.outcomes().get(1).crashes().size());
  }

  @Test
  void the_order_of_giving_way_is_low_behind_over_high_in_front() {
    RigidOrCrush.Outcome crush = CHOICE.outcomes().get(1);
    Range peak = Fronts.tube().hitAt(kmh(50)).foldingPeak();
    assertEquals(
        Fronts.rails().firstYield().low() / (2 * peak.high()), crush.behindOverFront().low(), 1e-9);
    assertEquals(RigidOrCrush.Order.NOTHING_IN_FRONT, CHOICE.outcomes().get(0).order());
    assertEquals(
        RigidOrCrush.Order.NOT_SHOWN,
        new RigidOrCrush.Outcome(
                crush.design(), crush.crashes(), crush.ride(), Fronts.wall(), Range.ratio(0.9, 1.4))
            .order());
    assertEquals(
        RigidOrCrush.Order.DOES_NOT_HOLD,
        new RigidOrCrush.Outcome(
                crush.design(), crush.crashes(), crush.ride(), Fronts.wall(), Range.ratio(0.4, 0.8))
            .order());
  }

  @Test
  void a_post_between_the_tubes_passes_them_by() {
    Scene post = Scene.of("gatepost", kmh(50), kg(720), Obstacle.post(mm(0), mm(200)));
    RigidOrCrush.Outcome outcome =
        RigidOrCrush.of(post, Fronts.rails(), Fronts.driver(), Fronts.withTubes())
            .outcomes()
            .get(0);
    assertEquals(0, outcome.elementEnergy().high());
    assertEquals(
        "None of its elements meets a post of 200 mm at 0 mm: they do nothing in this hit.",
        outcome.remarks(Units.METRIC).get(0));
    assertEquals(RigidOrCrush.Order.NOTHING_IN_FRONT, outcome.order());
  }

  @Test
  void a_measured_element_narrows_the_range() {
    CrushCurve measured =
        CrushCurve.named("tested tube")
            .to(mm(6), kN(80))
            .to(mm(230), kN(85), "used up")
            .to(mm(240), kN(1500))
            .end();
    CrushElement tested =
        CrushElement.measured("tested tube", mm(80), kg(1.6))
            .between(measured, measured.times(1.1), "three drop tests, invented");
    RigidOrCrush.Outcome outcome =
        RigidOrCrush.of(
                Fronts.wall(),
                Fronts.rails(),
                Fronts.driver(),
                RigidOrCrush.Design.with("tested", tested, mm(350)).and(mm(-350)))
            .outcomes()
            .get(0);
    assertEquals(2 * 85e3, 2 * tested.foldingPeak().low(), 1e-6);
    assertEquals(300.0 / (2 * 93.5), outcome.behindOverFront().low(), 1e-9);
    Refused.with(
        "crush curve rails, low does not say where it is used up; label that point \"used up\" and go on to where it is solid",
        () ->
            CrushElement.measured("rail", mm(80), kg(1))
                .between(Fronts.rails().low(), Fronts.rails().high(), "nobody"));
  }

  @Test
  void curves_that_give_back_more_than_the_scene_allows_are_marked() {
    Scene dead = Fronts.wall().restitution(0, 0.01);
    List<String> remarks =
        RigidOrCrush.of(dead, Fronts.rails(), Fronts.driver(), RigidOrCrush.Design.bare("bare"))
            .outcomes()
            .get(0)
            .remarks(Units.METRIC);
    assertTrue(remarks.get(remarks.size() - 1).startsWith("It comes off at "), remarks.toString());
  }

  @Test
  void a_faster_hit_uses_up_the_stroke_and_says_so() {
    RigidOrCrush.Outcome faster = CHOICE.at(kmh(80)).outcomes().get(1);
    assertTrue(
        faster.remarks(Units.METRIC).stream()
            .anyMatch(line -> line.startsWith("Its stroke is used up in ")),
        faster.remarks(Units.METRIC).toString());
    assertTrue(faster.peak().high() > CHOICE.outcomes().get(1).peak().high());
  }

  @Test
  void the_shortest_crush_follows_from_the_mean_alone() {
    double v = 50 / 3.6;
    assertEquals(v * v / (2 * 20 * 9.80665), CHOICE.shortestCrush(g(20)).low(), 1e-12);
    assertEquals(CHOICE.shortestCrush(g(20)).low() / 0.75, CHOICE.shortestTube(g(20)).low(), 1e-12);
  }

  @Test
  void no_sentence_promises_anything() {
    String all =
        CHOICE.assumptions(Units.METRIC)
            + " "
            + CHOICE.warnings(Units.METRIC)
            + CHOICE.outcomes().get(1).remarks(Units.METRIC);
    for (RigidOrCrush.Order order : RigidOrCrush.Order.values()) {
      all += order.words();
    }
    assertFalse(all.toLowerCase(Locale.ROOT).matches(".*\\b(safe|surviv\\w*|ok)\\b.*"));
  }

  @Test
  void another_vehicle_is_hit_with_every_guess_of_it() {
    Scene meeting =
        Scene.of(
            "meeting",
            kmh(80),
            kg(720),
            Obstacle.vehicle(kg(1400), kNpmm(1)).mass(kg(1100), kg(1700)));
    RigidOrCrush.Outcome outcome =
        RigidOrCrush.of(meeting, Fronts.rails(), Fronts.driver(), RigidOrCrush.Design.bare("bare"))
            .outcomes()
            .get(0);
    assertEquals(4, outcome.crashes().size());
    assertEquals(
        80 / 3.6 * 1700 / 2420,
        outcome.ride().runs().stream().mapToDouble(Ride.Run::speed).max().orElseThrow(),
        1e-9);
    assertTrue(outcome.ride().rideDown().low() >= 0);
  }

  @Test
  void nonsense_is_refused() {
    Refused.with(
        "there is no design to compare; give at least one",
        () -> RigidOrCrush.of(Fronts.wall(), Fronts.rails(), Fronts.driver()));
  }

  @Test
  void a_comparison_prints_with_its_caution() {
    String text = CHOICE.toString();
    assertTrue(text.startsWith("lane wall: 720 kg closing at 50.0 km/h"), text);
    assertTrue(text.contains("bare rails: vehicle "), text);
    assertTrue(text.endsWith("Injury cannot be predicted from these numbers."), text);
    assertTrue(Fronts.tube().toString().contains("folding may be assumed for comparison"));
  }

  @Test
  void where_the_speed_is_a_range_each_person_rides_at_the_speed_of_their_crash() {
    Scene guessed = Fronts.wall().closing(kmh(30), kmh(50));
    RigidOrCrush.Outcome outcome =
        RigidOrCrush.of(guessed, Fronts.rails(), Fronts.driver(), RigidOrCrush.Design.bare("bare"))
            .outcomes()
            .get(0);
    assertEquals(4, outcome.crashes().size());
    assertEquals(
        30 / 3.6,
        outcome.ride().runs().stream().mapToDouble(Ride.Run::speed).min().orElseThrow(),
        1e-9);
    assertTrue(outcome.ride().rideDown().high() < 1);
  }
}
