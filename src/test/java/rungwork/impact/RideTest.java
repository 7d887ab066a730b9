package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.ms;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.frame.Load;
import rungwork.loadpath.Anchorages;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** Two rides written by hand: up to 200 and to 300 m/s² and down again. */
class RideTest {
  private static final double G = 9.80665;
  private static final double[] TIMES = {0, 0.01, 0.02, 0.03, 0.04};
  private static final Occupant DRIVER =
      Occupant.of("driver", kg(80), Occupant.Belt.of(Npmm(50), mm(20)))
          .anchorage("seat left", 0.6, Range.ratio(1.1, 1.5), deg(30));

  private static Ride.Run run(double peak, boolean limited) {
    double[] person = {0, peak / 2, peak, peak / 2, 0};
    double[] way = {0, 0.1, 0.18, 0.2, 0.19};
    double[] excursion = {0, 0.01, 0.05, peak * 3e-4, 0.04};
    return new Ride.Run(
        "pulse",
        10,
        50e3,
        0.02,
        limited,
        new Ride.Series(TIMES, new double[] {1, 2, 3, 4, 5}, person, excursion, way));
  }

  private static Ride ride() {
    return new Ride(
        DRIVER,
        List.of(Pulse.square(g(20), ms(70)), Pulse.square(g(26), ms(70))),
        List.of(run(300, false), run(200, true)));
  }

  /** Triangles 40 ms wide: 3 ms above 1 − 3/40 of the peak. */
  @Test
  void peaks_clips_and_excursions_span_all_runs() {
    assertEquals(new Range(Kind.ACCELERATION, 200, 300), ride().peak());
    assertEquals(185, ride().clip().low(), 1e-9);
    assertEquals(277.5, ride().clip().high(), 1e-9);
    assertEquals(0.06, ride().excursion().low(), 1e-12);
    assertEquals(0.09, ride().excursion().high(), 1e-12);
    assertEquals(new Range(Kind.FORCE, 16e3, 24e3), ride().beltForce());
  }

  /** 0.1·50 + 0.08·150 + 0.02·150 = 20 of 50 J/kg, what comes back left out; 30 of 50. */
  @Test
  void ride_down_is_the_belts_work_until_the_vehicle_is_farthest() {
    assertEquals(0.4, ride().rideDown().low(), 1e-12);
    assertEquals(0.6, ride().rideDown().high(), 1e-12);
  }

  /** 100/(2·(0.2 + 0.09)) and 100/(2·(0.2 + 0.06)). */
  @Test
  void the_best_case_takes_both_ways() {
    assertEquals(100 / 0.58, ride().bestCase().low(), 1e-9);
    assertEquals(100 / 0.52, ride().bestCase().high(), 1e-9);
  }

  private static Ride.Reach reach(double low, double high) {
    Ride ride = new Ride(DRIVER, ride().pulses(), List.of(run(250, false)));
    double out = ride.excursion().low();
    return ride.reach(
        new Occupant.Clearance("wheel", new Range(Kind.LENGTH, low * out, high * out)));
  }

  @Test
  void a_clearance_that_is_just_met_is_reached() {
    assertEquals(Ride.Reach.REACHED, reach(0.5, 1));
    assertEquals(Ride.Reach.MAY_BE_REACHED, reach(1, 1.1));
    assertEquals(Ride.Reach.MAY_BE_REACHED, reach(0.9, 1.1));
    assertEquals(Ride.Reach.NOT_REACHED, reach(1.001, 1.1));
    assertEquals("reached", Ride.Reach.REACHED.words());
    assertEquals("may be reached", Ride.Reach.MAY_BE_REACHED.words());
    assertEquals("not reached in this model", Ride.Reach.NOT_REACHED.words());
  }

  /** 16·0.6·1.1 and 24·0.6·1.5 kN, the latter at 30° upwards. */
  @Test
  void an_anchorage_is_pulled_by_its_share_times_its_geometry() {
    Range pull = ride().pull(DRIVER.anchorages().get(0));
    assertEquals(10_560, pull.low(), 1e-9);
    assertEquals(21_600, pull.high(), 1e-9);
    Load.AtNode load = (Load.AtNode) ride().anchorageLoads().get(0);
    assertEquals("seat left", load.node());
    assertEquals(21_600 * Math.cos(Math.PI / 6), load.wrench().fx(), 1e-6);
    assertEquals(0, load.wrench().fy());
    assertEquals(10_800, load.wrench().fz(), 1e-6);
  }

  @Test
  void as_tested_the_high_end_is_parted_between_lap_and_shoulder() {
    Anchorages.Pull pull = ride().pull(0.4);
    assertEquals("driver in this scene, high end", pull.name());
    assertEquals("highest of 2 combinations of pulse and belt, computed", pull.source());
    assertEquals(24e3, pull.person().onLapAlone(), 1e-9);
    assertEquals(14_400, pull.person().hips(), 1e-9);
    assertEquals(9_600, pull.person().torso(), 1e-9);
    assertEquals(26, pull.chair(), 1e-9);
    assertEquals(0, ride().pull(0).person().torso());
    assertEquals(0, ride().pull(1).person().hips());
    Refused.with(
        "part 1.100 on the shoulder strap is outside 0 to 1; common practice is 0.4 to 0.6",
        () -> ride().pull(1.1));
    Refused.with(
        "part -0.1000 on the shoulder strap is outside 0 to 1; common practice is 0.4 to 0.6",
        () -> ride().pull(-0.1));
  }

  @Test
  void an_elastic_belt_is_said_to_be_one_unless_a_run_is_limited() {
    assertEquals(3, ride().assumptions().size());
    Ride elastic = new Ride(DRIVER, ride().pulses(), List.of(run(200, false)));
    assertEquals(
        List.of(
            "The person is one mass on one spring, held from the beginning; head, neck, arms and"
                + " legs are not modelled.",
            "All straps act together along the vehicle; seat friction, wheel, dash and airbag take"
                + " nothing.",
            "The person does not act back on the vehicle.",
            "The belt is elastic; real webbing gives back less and stretches for good."),
        elastic.assumptions());
    assertEquals(7, elastic.notChecked().size());
    assertEquals("head and neck", elastic.notChecked().get(0));
  }

  @Test
  void a_ride_prints_its_ranges() {
    String words = ride().toString();
    assertTrue(
        words.startsWith(
            "driver: peak 20.4 to 30.6 g, 3 ms 18.9 to 28.3 g, forward 60.0 to 90.0 mm, belt 16.0"
                + " to 24.0 kN. "),
        words);
    Refused.with(
        "nothing happened to driver: a ride needs a pulse and a run at least",
        () -> new Ride(DRIVER, List.of(), ride().runs()));
    Refused.with(
        "nothing happened to driver: a ride needs a pulse and a run at least",
        () -> new Ride(DRIVER, ride().pulses(), List.of()));
  }

  @Test
  void warnings_of_person_belt_and_pulses_stand_together() {
    Pulse endless = Pulse.through("cut", new double[] {0, 0.01, 0.1}, new double[] {0, 200, 100});
    Occupant heavy = Occupant.of("heavy", kg(161), Occupant.Belt.of(Npmm(50), mm(20)));
    List<String> lines =
        new Ride(heavy, List.of(endless), List.of(run(200, false))).warnings(Units.METRIC);
    assertEquals(2, lines.size());
    assertTrue(lines.get(0).startsWith("mass of a person 161 kg is outside 20.0 to 160 kg"));
    assertEquals(
        "Pulse cut does not end: it still is 10.2 g at its last point, 100 ms. What follows is"
            + " missing from every figure.",
        lines.get(1));
  }

  @Test
  void a_belt_is_a_spring_until_its_limiter_pays_out() {
    CrushCurve elastic = new BeltRun.Ends(50e3, 0.02, Double.MAX_VALUE).curve();
    assertEquals(2, elastic.points().size());
    assertEquals(150e3, elastic.last().force(), 1e-6);
    assertEquals(3, elastic.last().crush());
    CrushCurve limited = new BeltRun.Ends(50e3, 0.02, 5e3).curve();
    assertEquals(
        List.of(
            new CrushCurve.Point(0, 0, ""),
            new CrushCurve.Point(0.1, 5e3, "limiter pays out"),
            new CrushCurve.Point(3.1, 5e3, "")),
        limited.points());
    assertEquals(50e3, limited.unloading());
    assertEquals(2, new BeltRun.Ends(1000, 0, 3000).curve().points().size(), "just never");
    assertFalse(new BeltRun.Ends(1, 0, Double.MAX_VALUE).limited());
    assertTrue(new BeltRun.Ends(1, 0, 5).limited());
  }

  /**
   * Two steps of 100 and 300 m/s² for 20 and 30 ms: Δv 11 m/s; from 15 m/s after 20 ms 13 m/s and
   * 280 mm, after 50 ms 4 m/s and 280 + 390 − 135 mm. Then the slack of 22 mm at 11 m/s, half a
   * swing and, with a limit, 80·11/9000 s.
   */
  @Test
  void a_run_covers_the_pulse_its_jumps_and_the_belts_swing() {
    Pulse steps =
        Pulse.through(
            "steps", new double[] {0, 0.02, 0.02, 0.05}, new double[] {100, 100, 300, 300});
    Occupant person = Occupant.of("driver", kg(80), Occupant.Belt.of(Npmm(50), mm(22)));
    Ride.Run run =
        new BeltRun(person, new BeltRun.Ends(50e3, 0.022, Double.MAX_VALUE), steps).run(15);
    double[] times = run.series().times();
    double swing = 0.002 + Math.PI * Math.sqrt(80 / 50e3);
    assertEquals(0.05 + swing, times[times.length - 1], 1e-12);
    assertArrayEquals(
        new double[] {0.02, 0.02}, Arrays.stream(times).filter(time -> time == 0.02).toArray());
    double[] ways = run.series().ways();
    for (int i = 0; i < times.length; i++) {
      double t = times[i];
      double late = t - 0.02;
      double way =
          t <= 0.02
              ? 15 * t - 50 * t * t
              : t <= 0.05 ? 0.28 + 13 * late - 150 * late * late : 0.535 + 4 * (t - 0.05);
      assertEquals(way, ways[i], 1e-9);
    }
    assertEquals("steps", run.pulse());
    assertEquals(15, run.speed());
    assertEquals(50e3, run.stiffness());
    assertEquals(0.022, run.slack());
    assertFalse(run.limited());
    Ride.Run paid = new BeltRun(person, new BeltRun.Ends(50e3, 0.022, 9e3), steps).run(15);
    double[] longer = paid.series().times();
    assertEquals(0.05 + swing + 80 * 11 / 9e3, longer[longer.length - 1], 1e-12);
    assertTrue(paid.limited());
    assertEquals(9e3 / 80, paid.peak(), 1e-6);
  }

  @Test
  void combinations_of_pulses_and_belts_stand_in_order() {
    Occupant guessed =
        Occupant.of(
            "driver",
            kg(80),
            Occupant.Belt.between(Npmm(50), Npmm(90)).slack(mm(0), mm(40)).limited(kN(8), kN(9)));
    Ride ride = guessed.in(kmh(36), Pulse.square(g(20), ms(50)));
    assertEquals(
        List.of("50 0", "50 0", "50 40", "50 40", "90 0", "90 0", "90 40", "90 40"),
        ride.runs().stream()
            .map(r -> Math.round(r.stiffness() / 1e3) + " " + Math.round(r.slack() * 1e3))
            .toList());
    assertEquals(8e3 / 80, ride.runs().get(0).peak(), 1e-6);
    assertEquals(9e3 / 80, ride.runs().get(1).peak(), 1e-6);
    assertEquals(
        1,
        Occupant.of("x", kg(80), Occupant.Belt.of(Npmm(50), mm(2)))
            .in(kmh(36), Pulse.square(g(20), ms(50)))
            .runs()
            .size(),
        "alike ones once");
  }

  /** a 200, v 15, k 50 000, m 80, s 0.02: 2 s k/(m a) = 0.125. */
  @Test
  void closed_forms_by_hand() {
    Occupant.ClosedForm form = Occupant.ClosedForm.of(200, 15, 80, 50e3, 0.02);
    assertEquals(200 * (1 + Math.sqrt(1.125)), form.peak().result(), 1e-9);
    double swing = Math.sqrt(80 / 50e3) * (Math.PI - Math.atan(Math.sqrt(0.125)));
    assertEquals(Math.sqrt(2e-4) + swing, form.timeToPeak().result(), 1e-12);
    assertEquals(0.075, form.stops(), 1e-12);
    assertEquals(15 * Math.sqrt(625), form.most().result(), 1e-9);
    assertFalse(form.holds());
    assertTrue(Occupant.ClosedForm.of(200, 30, 80, 50e3, 0.02).holds());
    assertEquals(
        12 * Math.sqrt(80 / 50e3),
        BeltFormulas.RIGID_STOP_EXCURSION.with(12, 80, 50e3).result(),
        1e-12);
  }

  @Test
  void nobody_weighs_nothing_and_no_strap_carries_nothing() {
    Range one = Range.ratio(1, 1);
    assertEquals(Optional.empty(), DRIVER.belt().limit());
    assertEquals(1, new Occupant.Anchorage("a", 1, Range.ratio(1, 3), 0).share());
    Refused.with(
        "share 0 of anchorage a is outside 0 to 1", () -> new Occupant.Anchorage("a", 0, one, 0));
    Refused.with(
        "share 1.100 of anchorage a is outside 0 to 1",
        () -> new Occupant.Anchorage("a", 1.1, one, 0));
    Refused.with(
        "geometry factor 0.900 to 2.00 of anchorage a is outside 1 to 3: 1 is a strap along the"
            + " vehicle, 2 a loop",
        () -> new Occupant.Anchorage("a", 1, Range.ratio(0.9, 2), 0));
    Refused.with(
        "geometry factor 1.00 to 3.10 of anchorage a is outside 1 to 3: 1 is a strap along the"
            + " vehicle, 2 a loop",
        () -> new Occupant.Anchorage("a", 1, Range.ratio(1, 3.1), 0));
    Refused.with(
        "load limit of a belt 0 kN is not above zero", () -> DRIVER.belt().limited(kN(0), kN(1)));
    Refused.with("damping of a belt -1.000 N·s/m is below zero", () -> DRIVER.belt().damped(-1));
    Refused.with("wheel 0 mm is not above zero", () -> DRIVER.clearance("wheel", mm(0), mm(100)));
    Refused.with("mass of x 0 kg is not above zero", () -> Occupant.of("x", kg(0), DRIVER.belt()));
    Refused.with(
        "slack of a belt -1.000 mm is below zero", () -> DRIVER.belt().slack(mm(-1), mm(1)));
    Refused.with(
        "stiffness of a belt 0 N/mm is not above zero", () -> Occupant.Belt.of(Npmm(0), mm(1)));
  }

  /** 49 CFR 571.208 and .210, UN R137 and R14, 14 CFR 25.561 and 25.562. */
  @Test
  void published_figures_in_si() {
    assertArrayEquals(
        new double[] {60 * G, 0.063, 0.042, 10_000, 16 * G, 0.09, 13.4112},
        Ride.publishedLimits().stream().mapToDouble(Ride.Published::value).toArray(),
        1e-9);
    assertArrayEquals(
        new double[] {22_241.1, 13_344.7, 13_344.7, 13_500},
        Ride.publishedTestLoads().stream().mapToDouble(Ride.Published::value).toArray(),
        0.05);
    assertArrayEquals(
        new double[] {9 * G, 3 * G, 6 * G, 3 * G},
        Ride.publishedItemLoads().stream().mapToDouble(Ride.Published::value).toArray(),
        1e-9);
  }
}
