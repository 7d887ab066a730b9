package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.ms;
import static rungwork.quantity.Quantities.s;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.SolveException;
import rungwork.frame.Load;
import rungwork.frame.Wrench;
import rungwork.loadpath.Anchorages;
import rungwork.quantity.Units;

class OccupantTest {
  private static final double G = 9.80665;
  private static final Pulse SHORT = Pulse.haversine(g(40), ms(80));

  private static Occupant person(double slack) {
    return Occupant.of("driver", kg(60), Occupant.Belt.of(Npmm(70), mm(slack)));
  }

  private static Occupant guessed() {
    return Occupant.of(
        "driver", kg(80), Occupant.Belt.between(Npmm(40), Npmm(100)).slack(mm(10), mm(50)));
  }

  @Test
  void the_closed_form_and_the_integration_agree_while_it_holds() {
    Pulse lasting = Pulse.square(g(20), s(0.3));
    for (double slack : new double[] {0, 25, 50}) {
      Occupant.ClosedForm form = person(slack).closedForms(g(20), kmh(212)).get(0);
      assertTrue(form.holds());
      Ride.Run run = person(slack).in(kmh(212), lasting).runs().get(0);
      assertEquals(form.peak().result(), run.peak(), 1e-4 * run.peak());
    }
  }

  @Test
  void the_closed_form_says_where_it_no_longer_holds_and_is_then_too_high() {
    Occupant.ClosedForm form = person(50).closedForms(g(20), kmh(48)).get(0);
    assertFalse(form.holds());
    double stops = 48 / 3.6 / (20 * G);
    assertEquals(stops, form.stops(), 1e-12);
    Ride ride = person(50).in(kmh(48), Pulse.square(g(20), s(stops)));
    assertTrue(ride.peak().high() < form.peak().result());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41, 42, 43, 44, 45, 46})
  void no_pulse_gives_more_than_a_vehicle_that_stops_at_once(long seed) {
    Random random = new Random(seed);
    double[] times = new double[12];
    double[] values = new double[12];
    for (int i = 1; i < 12; i++) {
      times[i] = times[i - 1] + 0.002 + 0.012 * random.nextDouble();
      values[i] = i == 11 ? 0 : 500 * random.nextDouble();
    }
    Pulse pulse = Pulse.through("random", times, values);
    double bound = pulse.velocityChange() * Math.sqrt(70e3 / 60);
    for (double slack : new double[] {0, 60}) {
      double peak = person(slack).in(kmh(50), pulse).peak().high();
      assertTrue(peak <= bound * (1 + 1e-6), peak + " over " + bound);
    }
  }

  @Test
  void a_pulse_far_shorter_than_the_belt_s_swing_acts_as_a_sudden_stop() {
    Pulse sudden = Pulse.square(g(1000), ms(1));
    double change = sudden.velocityChange();
    double peak = person(0).in(kmh(50), sudden).peak().high();
    assertEquals(change * Math.sqrt(70e3 / 60), peak, 1e-3 * peak);
  }

  @Test
  void the_belt_s_work_over_the_ground_is_the_person_s_energy() {
    Ride.Run run = person(30).in(kmh(50), SHORT).runs().get(0);
    Ride.Series series = run.series();
    double speed = 50 / 3.6;
    double v = speed;
    double work = 0;
    for (int i = 1; i < series.times().length; i++) {
      double a = (series.person()[i] + series.person()[i - 1]) / 2;
      double way =
          series.ways()[i]
              + series.excursions()[i]
              - series.ways()[i - 1]
              - series.excursions()[i - 1];
      work += a * way;
      v -= a * (series.times()[i] - series.times()[i - 1]);
    }
    assertEquals((speed * speed - v * v) / 2, work, 1e-4 * speed * speed);
  }

  @Test
  void slack_costs_ride_down_and_raises_the_peak() {
    Ride tight = person(0).in(kmh(50), SHORT);
    Ride loose = person(80).in(kmh(50), SHORT);
    assertTrue(loose.peak().high() > tight.peak().high());
    assertTrue(loose.rideDown().high() < tight.rideDown().high());
    assertTrue(loose.excursion().low() > tight.excursion().high());
    assertTrue(tight.rideDown().high() < 1 && loose.rideDown().low() > 0);
  }

  @Test
  void a_load_limiter_holds_its_force_and_costs_room() {
    Occupant plain = person(20);
    Occupant limited =
        Occupant.of("driver", kg(60), Occupant.Belt.of(Npmm(70), mm(20)).limited(kN(12), kN(12)));
    Ride with = limited.in(kmh(50), SHORT);
    assertEquals(12e3, with.beltForce().high(), 1);
    assertTrue(with.excursion().high() > plain.in(kmh(50), SHORT).excursion().high());
  }

  @Test
  void a_damper_takes_part_of_the_way() {
    Occupant damped = Occupant.of("driver", kg(60), Occupant.Belt.of(Npmm(70), mm(20)).damped(400));
    Ride with = damped.in(kmh(50), SHORT);
    assertTrue(with.excursion().high() < person(20).in(kmh(50), SHORT).excursion().high());
  }

  @Test
  void guessed_belts_give_ranges_over_every_combination() {
    Ride ride = guessed().in(kmh(50), SHORT, Pulse.haversine(g(30), ms(110)));
    assertEquals(8, ride.runs().size());
    assertTrue(ride.peak().low() < ride.peak().high());
    assertTrue(ride.clip().high() <= ride.peak().high());
    assertTrue(ride.bestCase().high() < ride.peak().low());
  }

  @Test
  void a_clearance_is_reached_or_not_or_perhaps() {
    Occupant facing =
        guessed()
            .clearance("chest to wheel", mm(300), mm(900))
            .clearance("chest to panel", mm(50), mm(60))
            .clearance("chest to screen", mm(1500), mm(1600));
    Ride ride = facing.in(kmh(50), SHORT);
    assertEquals(
        List.of(Ride.Reach.MAY_BE_REACHED, Ride.Reach.REACHED, Ride.Reach.NOT_REACHED),
        facing.clearances().stream().map(ride::reach).toList());
    assertEquals("not reached in this model", Ride.Reach.NOT_REACHED.words());
  }

  @Test
  void anchorages_get_their_share_times_the_geometry() {
    Occupant fastened =
        person(0)
            .anchorage("seat left", 0.5, Range.ratio(1, 1.5), deg(45))
            .anchorage("dash left", 0.5, Range.ratio(1, 2), deg(0));
    Ride ride = fastened.in(kmh(50), SHORT);
    double belt = ride.beltForce().high();
    assertEquals(belt * 0.5, ride.pull(fastened.anchorages().get(0)).low(), 1e-9);
    List<Load> loads = ride.anchorageLoads();
    double root = Math.sqrt(0.5);
    Wrench first = ((Load.AtNode) loads.get(0)).wrench();
    assertEquals(belt * 0.75 * root, first.fx(), 1e-6);
    assertEquals(belt * 0.75 * root, first.fz(), 1e-6);
    assertEquals(new Load.AtNode("dash left", Wrench.force(belt, 0, 0)), loads.get(1));
  }

  @Test
  void nothing_says_that_anybody_is_safe() {
    Ride ride = guessed().in(kmh(50), SHORT);
    String all = ride + " " + ride.assumptions() + ride.notChecked();
    assertFalse(all.toLowerCase(Locale.ROOT).matches(".*(safe|surviv|unhurt|ok\\b).*"), all);
    assertTrue(ride.notChecked().contains("head and neck"));
  }

  @Test
  void mistyped_belts_and_endless_pulses_warn() {
    Pulse cut = Pulse.through("cut", new double[] {0, 0.05}, new double[] {0, 20 * G});
    Ride ride = Occupant.of("driver", kg(80), Occupant.Belt.of(Npmm(7), mm(200))).in(kmh(50), cut);
    assertEquals(3, ride.warnings(Units.METRIC).size());
    assertTrue(ride.warnings(Units.METRIC).get(2).startsWith("Pulse cut does not end"));
    assertEquals(List.of(), guessed().in(kmh(50), SHORT).warnings(Units.METRIC));
  }

  @Test
  void nonsense_is_refused() {
    Refused.with(
        "stiffness of a belt 0 N/mm is not above zero", () -> Occupant.Belt.of(Npmm(0), mm(0)));
    Refused.with(
        "share 1.200 of anchorage lap is outside 0 to 1",
        () -> person(0).anchorage("lap", 1.2, Range.ratio(1, 1), deg(0)));
    Refused.with(
        "geometry factor 0.500 to 1.00 of anchorage lap is outside 1 to 3: 1 is a strap along the vehicle, 2 a loop",
        () -> person(0).anchorage("lap", 1, Range.ratio(0.5, 1), deg(0)));
    Refused.with("there is no pulse for driver; give at least one", () -> person(0).in(kmh(50)));
  }

  @Test
  void what_no_belt_can_hold_is_refused_and_so_is_what_does_not_converge() {
    Pulse mistyped =
        Pulse.through("mistyped", new double[] {0, 1e-3, 2e-3}, new double[] {0, 1e6, 0});
    assertEquals(
        "driver would come forward by 92500 mm on the belt; no belt is that long: pulse mistyped changes the speed by 3600 km/h",
        assertThrows(SolveException.class, () -> eighty().in(kmh(50), mistyped)).getMessage());
    Pulse absurd = Pulse.through("absurd", new double[] {0, 1e-3, 2e-3}, new double[] {0, 1e15, 0});
    assertTrue(
        assertThrows(SolveException.class, () -> eighty().in(kmh(50), absurd))
            .getMessage()
            .startsWith("the time steps do not converge: "));
  }

  private static Occupant eighty() {
    return Occupant.of("driver", kg(80), Occupant.Belt.of(Npmm(70), mm(0)));
  }

  @Test
  void a_run_stops_when_it_is_interrupted() {
    Thread.currentThread().interrupt();
    try {
      assertEquals(
          "the calculation of the crash was interrupted",
          assertThrows(SolveException.class, () -> eighty().in(kmh(50), SHORT)).getMessage());
    } finally {
      assertTrue(Thread.interrupted());
    }
  }

  @Test
  void a_ride_becomes_a_pull_beside_the_published_test_loads() {
    Ride ride = person(20).in(kmh(50), SHORT);
    Anchorages.Pull pull = ride.pull(0.4);
    double belt = ride.beltForce().high();
    assertEquals(belt, pull.person().onLapAlone(), 1e-9);
    assertEquals(0.6 * belt, pull.person().hips(), 1e-9);
    assertEquals(0.4 * belt, pull.person().torso(), 1e-9);
    assertEquals(40, pull.chair(), 1e-9);
    Refused.with(
        "part 1.400 on the shoulder strap is outside 0 to 1; common practice is 0.4 to 0.6",
        () -> ride.pull(1.4));
  }

  @Test
  void a_person_prints_with_units() {
    assertEquals(
        "driver: 80.0 kg, belt 40.0 to 100 N/mm, slack 10.0 to 50.0 mm", guessed().toString());
  }
}
