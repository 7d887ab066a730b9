package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
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

class BeltRunTest {
  private static final Occupant DRIVER =
      Occupant.of("driver", kg(80), Occupant.Belt.of(Npmm(50), mm(20)));

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
}
