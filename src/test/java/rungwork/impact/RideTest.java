package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.ms;

import java.util.List;
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
