package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.ms;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class PulsePointsTest {
  private static final Pulse PULSE =
      Pulse.through(
          "points",
          new double[] {0.01, 0.02, 0.02, 0.04, 0.05},
          new double[] {0, 100, 250, 250, 12});

  @Test
  void values_lie_straight_between_points_and_after_a_jump_beyond_it() {
    assertEquals(0, PULSE.at(0.0099));
    assertEquals(0, PULSE.at(0.01), 1e-9);
    assertEquals(30, PULSE.at(0.013), 1e-9);
    assertEquals(250, PULSE.at(0.02), 1e-9);
    assertEquals(250, PULSE.at(0.03), 1e-9);
    assertEquals(250 - 0.4 * 238, PULSE.at(0.044), 1e-9);
    assertEquals(0, PULSE.at(0.05));
    assertEquals(196.133, Pulse.square(g(20), ms(80)).at(0), 1e-9);
    Refused.with("time is not a number; give a finite number", () -> PULSE.at(Double.NaN));
  }

  /** 0.5 + 5 + 1.31 m/s over 40 ms. */
  @Test
  void its_area_is_that_of_trapezia() {
    assertEquals(0.5 + 5 + 1.31, PULSE.velocityChange(), 1e-9);
    assertEquals(6.81 / 0.04, PULSE.meanOverTime(), 1e-9);
    assertEquals(0.04, PULSE.duration(), 1e-12);
    assertEquals(250, PULSE.peak());
    assertEquals(0.02, PULSE.peakTime(), "the first of equal ones");
    assertEquals("other", PULSE.named("other").name());
    assertEquals(
        "points: peak 25.5 g, mean over time 17.4 g, 40.0 ms, Δv 24.5 km/h", PULSE.toString());
  }

  @Test
  void a_last_value_above_a_twentieth_of_the_peak_is_no_end() {
    assertEquals(List.of(), PULSE.warnings());
    assertEquals(List.of(), ending(10).warnings());
    assertEquals(
        List.of(
            "Pulse cut does not end: it still is 1.03 g at its last point, 20.0 ms. What follows is"
                + " missing from every figure."),
        ending(10.1).warnings());
    assertEquals(1, ending(-10.1).warnings().size());
  }

  private static Pulse ending(double last) {
    return Pulse.through("cut", new double[] {0, 0.01, 0.02}, new double[] {0, 200, last});
  }

  @Test
  void what_is_no_pulse_is_refused() {
    Refused.with(
        "pulse p has 1 times and 1 values; give 2 to 2000000 of both",
        () -> Pulse.through("p", new double[1], new double[1]));
    Refused.with(
        "pulse p has 3 times and 2 values; give 2 to 2000000 of both",
        () -> Pulse.through("p", new double[3], new double[2]));
    Refused.with(
        "pulse p goes back from 20.00 ms to 10.00 ms; times must not fall",
        () -> Pulse.through("p", new double[] {0, 0.02, 0.01}, new double[3]));
    Refused.with(
        "pulse p lasts no time; give it a duration",
        () -> Pulse.through("p", new double[] {1, 1}, new double[] {3, 3}));
    Refused.with(
        "pulse p speeds the vehicle up by 7.200 km/h; a deceleration is positive here: change the"
            + " sign",
        () -> Pulse.through("p", new double[] {0, 0.02}, new double[] {-100, -100}));
    Refused.with(
        "pulse p speeds the vehicle up by 0 km/h; a deceleration is positive here: change the sign",
        () -> Pulse.through("p", new double[] {0, 0.02}, new double[] {0, 0}));
    Refused.with("peak of a pulse 0 g is not above zero", () -> Pulse.square(g(0), ms(10)));
    Refused.with("duration of a pulse 0 ms is not above zero", () -> Pulse.square(g(10), ms(0)));
  }

  /** At a quarter of its time a haversine has half of its peak, a half-sine 1/√2, a triangle ½. */
  @Test
  void ideal_pulses_at_a_quarter_and_at_three_quarters() {
    double peak = 20 * 9.80665;
    for (double time : new double[] {0.02, 0.06}) {
      assertEquals(peak / 2, Pulse.haversine(g(20), ms(80)).at(time), 1e-6);
      assertEquals(peak * Math.sqrt(0.5), Pulse.halfSine(g(20), ms(80)).at(time), 1e-6);
      assertEquals(peak / 2, Pulse.triangle(g(20), ms(80)).at(time), 1e-6);
      assertEquals(peak, Pulse.square(g(20), ms(80)).at(time), 1e-6);
    }
    assertEquals(peak, Pulse.haversine(g(20), ms(80)).at(0.04), 1e-6);
    double[] values = Pulse.halfSine(g(20), ms(80)).decelerations();
    assertEquals(0, values[values.length - 1]);
    assertEquals(2001, values.length);
  }

  @Test
  void two_million_points_are_the_most() {
    int most = 2_000_000;
    double[] values = new double[most];
    double[] times = new double[most];
    Arrays.fill(values, 1);
    times[most - 1] = 1;
    assertEquals(1, Pulse.through("long", times, values).duration());
    Refused.with(
        "pulse long has 2000001 times and 2000001 values; give 2 to 2000000 of both",
        () -> Pulse.through("long", new double[most + 1], new double[most + 1]));
  }

  /** 3 periods of 180·2.0775 Hz before and after, in steps of 0.1 ms. */
  @Test
  void a_filtered_pulse_has_rest_before_and_after() {
    double rest = 3 / (180 * 2.0775);
    Pulse shown = PULSE.filtered(Pulse.ChannelClass.CFC_180);
    double[] times = shown.times();
    assertEquals("points, filtered CFC 180", shown.name());
    assertEquals(0.01 - rest, times[0], 1e-12);
    assertEquals((int) Math.ceil((0.04 + 2 * rest) * 1e4) + 1, times.length);
    assertEquals(times[0] + 1e-4 * (times.length - 1), times[times.length - 1], 1e-12);
  }

  /** To and fro nothing shifts: amid a long ramp each value is the ramp's. */
  @Test
  void a_ramp_passes_the_filter_as_it_is() {
    Pulse ramp = Pulse.through("ramp", new double[] {0, 1}, new double[] {0, 1000});
    Pulse shown = ramp.filtered(Pulse.ChannelClass.CFC_60);
    for (double time : new double[] {0.3, 0.5, 0.7}) {
      assertEquals(1000 * time, shown.at(time), 1e-3);
    }
  }

  /** Half is left at the designed corner; SAE J211's a and b of wa = sin/cos of π·60·2.0775·T. */
  @Test
  void the_filter_by_its_formulas() {
    assertEquals(0.5, Pulse.ChannelClass.CFC_180.gain(180 * 2.0775), 1e-12);
    double half = Math.PI * 60 * 2.0775 * 1e-4;
    double wa = Math.sin(half) / Math.cos(half);
    double divisor = 1 + Math.sqrt(2) * wa + wa * wa;
    double a0 = wa * wa / divisor;
    assertArrayEquals(
        new double[] {
          a0, 2 * a0, a0, 2 * (1 - wa * wa) / divisor, -(1 - Math.sqrt(2) * wa + wa * wa) / divisor
        },
        Pulse.ChannelClass.CFC_60.coefficients(),
        1e-12);
    Refused.with("frequency -1.000 is below zero", () -> Pulse.ChannelClass.CFC_60.gain(-1));
  }
}
