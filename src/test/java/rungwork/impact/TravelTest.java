package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TravelTest {
  private static Travel on(double speed, double[] times, double... values) {
    return new Travel(Pulse.through("pulse", times, values), speed);
  }

  private static final double[] TENTH = {0, 0.1};

  /** 50 m/s² from 10 m/s for 0.1 s: 5 m/s left, 0.75 m; from 4 m/s it stands after 0.16 m. */
  @Test
  void a_level_pulse_slows_evenly() {
    assertEquals(0.75, on(10, TENTH, 50, 50).distance(), 1e-12);
    assertEquals(5, on(10, TENTH, 50, 50).speedLeft(), 1e-12);
    assertEquals(0.16, on(4, TENTH, 50, 50).distance(), 1e-12);
    assertEquals(0, on(4, TENTH, 50, 50).speedLeft(), 1e-12);
    assertEquals(0.25, on(5, TENTH, 50, 50).distance(), 1e-12);
  }

  /** Rising by 1000 m/s³: v t − 1000 t³/6; from 2 m/s it stands at t = √0.004 after 2/3·v·t. */
  @Test
  void a_rising_pulse_slows_with_the_cube() {
    assertEquals(1 - 1.0 / 6, on(10, TENTH, 0, 100).distance(), 1e-12);
    assertEquals(5, on(10, TENTH, 0, 100).speedLeft(), 1e-12);
    assertEquals(4.0 / 3 * Math.sqrt(0.004), on(2, TENTH, 0, 100).distance(), 1e-12);
  }

  /** Falling by 1000 m/s³ from 100: 3 = 100 t − 500 t² at t = 0.1 − √0.004. */
  @Test
  void a_falling_pulse_may_just_not_stop_it() {
    double t = 0.1 - Math.sqrt(0.004);
    double way = 3 * t - 50 * t * t + 1000 * t * t * t / 6;
    assertEquals(way, on(3, TENTH, 100, 0).distance(), 1e-12);
    assertEquals(6 * 0.1 - 50 * 0.01 + 1.0 / 6, on(6, TENTH, 100, 0).distance(), 1e-12);
    assertEquals(1, on(6, TENTH, 100, 0).speedLeft(), 1e-12);
  }

  /** Two steps, 100 then 300 m/s²: 15 − 2 − 9 m/s; 0.28 + 0.39 − 0.135 m. */
  @Test
  void a_jump_takes_no_way() {
    Travel two = on(15, new double[] {0, 0.02, 0.02, 0.05}, 100, 100, 300, 300);
    assertEquals(0.535, two.distance(), 1e-12);
    assertEquals(4, two.speedLeft(), 1e-12);
    Travel one = on(2, new double[] {0, 0.02, 0.02, 0.05}, 100, 100, 300, 300);
    assertEquals(0.02, one.distance(), 1e-12, "it stands at the jump");
  }

  /** First pushed on by 20 m/s² for 0.1 s from 1 m/s: 3 m/s and 0.2 m; then 60 for 0.05 s. */
  @Test
  void a_vehicle_that_is_pushed_on_goes_faster_first() {
    Travel travel = on(1, new double[] {0, 0.1, 0.1, 0.2}, -20, -20, 60, 60);
    assertEquals(0.2 + 0.075, travel.distance(), 1e-12);
    Refused.with(
        "speed at the beginning of a pulse 0 km/h is not above zero", () -> on(0, TENTH, 50, 50));
  }

  /** To the mean over the distance belongs v² − v₁² = 2 a d: (100 − 25)/1.5. */
  @Test
  void the_mean_over_the_distance_leaves_out_what_is_left_of_the_speed() {
    Pulse level = Pulse.through("level", TENTH, new double[] {50, 50});
    assertEquals(50, level.meanOverDistance(10), 1e-9);
    assertEquals(0.75, level.stopDistance(10), 1e-12);
    Pulse rising = Pulse.through("rising", TENTH, new double[] {0, 100});
    assertEquals(75 / (2 * 5.0 / 6), rising.meanOverDistance(10), 1e-9);
  }
}
