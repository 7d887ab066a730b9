package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.N;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.SolveException;
import rungwork.quantity.Units;

class CrashTest {
  private static final double V = 50 / 3.6;

  /** Elastic to 180 kN on 10 mm, then almost level. */
  private static final CrushCurve RAILS =
      CrushCurve.named("rails")
          .to(mm(10), kN(180), "first yield")
          .to(mm(600), kN(200), "end of what is known")
          .end();

  /** A crush element of 45 kN and 250 mm that goes solid. */
  private static final CrushCurve ELEMENT =
      CrushCurve.named("element")
          .to(mm(5), kN(45), "folds")
          .to(mm(250), kN(46), "used up")
          .to(mm(275), kN(400), "solid")
          .end();

  private static CrashModel rigid() {
    return CrashModel.of("rigid", kmh(50), kg(720), RAILS);
  }

  private static double end(double[] series) {
    return series[series.length - 1];
  }

  @Test
  void a_linear_spring_gives_a_quarter_wave_and_throws_the_vehicle_back() {
    CrushCurve spring = CrushCurve.linear("spring", kNpmm(0.5), mm(2000));
    Crash crash = CrashModel.of("spring", kmh(50), kg(720), spring).run();
    assertEquals(V * Math.sqrt(0.5e6 / 720), crash.pulse().peak(), 1e-4 * crash.pulse().peak());
    assertEquals(V * Math.sqrt(720 / 0.5e6), crash.mostCrush(), 1e-6);
    assertEquals(-V, end(crash.body("body").speeds()), 1e-6);
    assertEquals(Math.PI * Math.sqrt(720 / 0.5e6), crash.pulse().duration(), 1e-6);
    assertEquals(0, crash.residual(), 1e-8);
    assertTrue(crash.residual() >= 0, "the largest of all openings");
  }

  @Test
  void a_crash_stops_when_it_is_interrupted() {
    CrashModel model = rigid().behind(ELEMENT);
    Thread.currentThread().interrupt();
    String message = assertThrows(SolveException.class, model::run).getMessage();
    assertTrue(Thread.interrupted(), "it stays marked");
    assertEquals("the calculation of the crash was interrupted", message);
  }

  @Test
  void a_level_force_stops_over_the_way_that_the_energy_needs() {
    CrushCurve level =
        CrushCurve.named("level").to(mm(0.01), kN(140), "").to(mm(800), kN(140)).end();
    Crash crash = CrashModel.of("level", kmh(50), kg(720), level).run();
    assertEquals(720 * V * V / 2 / 140e3, crash.mostCrush(), 1e-4);
    assertEquals(140e3 / 720, crash.pulse().peak(), 1e-3);
    double mean = crash.pulse().meanOverDistance(V);
    assertEquals(
        mean, crash.pulse().meanOverTime(), 0.005 * mean, "letting go takes a little time");
  }

  @Test
  void the_area_under_the_pulse_is_the_change_of_speed() {
    Crash crash = rigid().behind(ELEMENT).run();
    double change = V - end(crash.body("body").speeds());
    assertEquals(change, crash.pulse().velocityChange(), 1e-5 * change);
  }

  @Test
  void the_weaker_part_in_front_is_used_up_before_the_rails_yield() {
    Crash crash = rigid().behind(ELEMENT).run();
    List<String> happened = crash.events().stream().map(Crash.Event::label).toList();
    assertEquals(
        List.of(
            "contact",
            "element: folds",
            "element: used up",
            "rails: first yield",
            "most crushed",
            "comes off"),
        happened);
    assertTrue(crash.mostCrush() > 0.27);
    double taken = crash.parts().stream().mapToDouble(Crash.Part::energy).sum();
    assertEquals(720 * V * V / 2, taken, 1e-4 * taken, "second route: areas under both curves");
  }

  @Test
  void a_front_mass_between_them_changes_little_when_it_is_light() {
    Crash without = rigid().behind(ELEMENT).run();
    Crash with = rigid().behind(ELEMENT, kg(4)).run();
    assertEquals(without.mostCrush(), with.mostCrush(), 0.03 * without.mostCrush());
    assertEquals(4, with.body("front mass").mass());
    assertTrue(with.residual() < 1e-3);
  }

  @Test
  void a_motor_on_rubber_meets_its_stop_and_sees_more_than_the_body() {
    CrashModel.Motor motor = CrashModel.Motor.of("motor", kg(58)).on(Npmm(600), mm(12), kNpmm(8));
    Crash crash = rigid().with(motor).run();
    assertTrue(crash.events().stream().anyMatch(e -> e.label().equals("motor meets its stop")));
    double motorPeak = 0;
    for (double a : crash.body("motor").decelerations()) {
      motorPeak = Math.max(motorPeak, a);
    }
    assertTrue(motorPeak > 1.2 * crash.pulse().peak());
    assertTrue(crash.residual() < 1e-6);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
  void two_vehicles_keep_their_momentum_and_energy(long seed) {
    Random random = new Random(seed);
    double other = 800 + 1200 * random.nextDouble();
    Crash crash =
        rigid()
            .at(kmh(30 + 40 * random.nextDouble()))
            .behind(ELEMENT.times(0.6 + random.nextDouble()))
            .into(
                kg(other),
                CrushCurve.linear("other front", kNpmm(0.5 + random.nextDouble()), mm(900)))
            .run();
    double start = 720 * crash.model().speed();
    double now =
        720 * end(crash.body("body").speeds()) + other * end(crash.body("other vehicle").speeds());
    assertEquals(start, now, 1e-9 * start);
    assertTrue(crash.residual() < 1e-5, crash.toString());
    Pulse own = crash.pulse();
    Crash.Body partner = crash.body("other vehicle");
    Pulse pushed = Pulse.through("push", partner.times(), negative(partner.decelerations()));
    assertEquals(720 * own.velocityChange(), other * pushed.velocityChange(), 1e-6 * start);
  }

  private static double[] negative(double[] values) {
    return Arrays.stream(values).map(value -> -value).toArray();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {31, 32, 33, 34, 35, 36})
  void all_forces_times_four_halve_time_and_double_speed_like_scales(long seed) {
    Random random = new Random(seed);
    CrushCurve curve =
        CrushCurve.named("some")
            .to(mm(5 + 20 * random.nextDouble()), kN(60 + 60 * random.nextDouble()))
            .to(mm(100 + 100 * random.nextDouble()), kN(70 + 80 * random.nextDouble()))
            .to(mm(700), kN(160))
            .end(kNpmm(60));
    Crash weak = CrashModel.of("weak", kmh(25), kg(720), curve).run();
    Crash strong = CrashModel.of("strong", kmh(50), kg(720), curve.times(4)).run();
    assertEquals(weak.mostCrush(), strong.mostCrush(), 1e-7);
    assertEquals(4 * weak.pulse().peak(), strong.pulse().peak(), 1e-4 * strong.pulse().peak());
    assertEquals(weak.pulse().duration() / 2, strong.pulse().duration(), 1e-7);
    assertEquals(2 * weak.pulse().velocityChange(), strong.pulse().velocityChange(), 1e-4 * 2 * V);
  }

  @Test
  void the_most_crush_is_where_the_area_under_the_curve_is_the_energy() {
    Crash crash = rigid().run();
    assertEquals(720 * V * V / 2, RAILS.energy(crash.mostCrush()), 1.0);
  }

  @Test
  void a_curve_that_ends_too_early_is_marked() {
    CrushCurve shorter =
        CrushCurve.named("short rails").to(mm(10), kN(180)).to(mm(100), kN(190)).end();
    Crash crash = CrashModel.of("short", kmh(50), kg(720), shorter).run();
    assertEquals(1, crash.marks(Units.METRIC).size());
    assertTrue(
        crash
            .marks(Units.METRIC)
            .get(0)
            .startsWith(
                "short rails is crushed by 373 mm and passes the end of its curve at 100 mm"),
        crash.marks(Units.METRIC).get(0));
    assertEquals(List.of(), rigid().run().marks(Units.METRIC));
  }

  @Test
  void a_frame_too_weak_to_stop_the_vehicle_is_refused() {
    CrushCurve paper = CrushCurve.named("paper").to(mm(10), N(500)).to(mm(400), N(600)).end();
    SolveException refused =
        assertThrows(
            SolveException.class, () -> CrashModel.of("weak", kmh(50), kg(720), paper).run());
    assertTrue(
        refused
            .getMessage()
            .startsWith("the pulse of weak does not end within 500 ms: it still closes at "),
        refused.getMessage());
  }

  @Test
  void a_falling_curve_works_alone_and_is_refused_behind_another() {
    CrushCurve kicked =
        CrushCurve.named("kick-up")
            .to(mm(8), kN(120))
            .to(mm(60), kN(60))
            .to(mm(1500), kN(50))
            .end();
    Crash alone = CrashModel.of("kick-up", kmh(40), kg(720), kicked).run();
    assertEquals(120e3 / 720, alone.pulse().peak(), 0.5);
    Refused.with(
        "the force of kick-up falls from 120.0 kN to 60.00 kN; one behind the other it would be"
            + " ambiguous which part crushes: put a front mass between them",
        () -> CrashModel.of("kick-up", kmh(40), kg(720), kicked).behind(ELEMENT).run());
    assertTrue(
        CrashModel.of("kick-up", kmh(40), kg(720), kicked).behind(ELEMENT, kg(8)).run().residual()
            < 1e-3);
  }

  @Test
  void nonsense_is_refused() {
    Refused.with(
        "front mass and motor of rigid leave -30.00 kg of 720.0 kg for its body; they are parts of"
            + " the whole mass",
        () -> rigid().behind(ELEMENT, kg(750)));
    Refused.with(
        "crush curve back goes from 10.00 mm to 5.000 mm; the crush of each point must lie above"
            + " the one before",
        () -> CrushCurve.named("back").to(mm(10), kN(1)).to(mm(5), kN(2)).end());
    Refused.with(
        "unloading stiffness 100.0 N/mm of soft is below its steepest rise 1000 N/mm; it would give"
            + " back more than it took",
        () -> CrushCurve.named("soft").to(mm(10), kN(10)).end(Npmm(100)));
    Refused.with(
        "crush curve none must begin at no crush and no force and have a second point",
        () -> CrushCurve.named("none").end());
    Refused.with("there is no mass boot; there are body", () -> rigid().run().body("boot"));
  }

  @Test
  void models_and_curves_print_with_units() {
    assertEquals("rails: to 600 mm, at most 200 kN", RAILS.toString());
    assertEquals(
        "rigid: 720.0 kg at 50.0 km/h, element before rails", rigid().behind(ELEMENT).toString());
    assertTrue(rigid().run().toString().contains("Injury cannot be predicted"));
  }
}
