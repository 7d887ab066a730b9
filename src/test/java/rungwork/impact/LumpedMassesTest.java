package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.fault.SolveException;

class LumpedMassesTest {
  private static final CrushCurve SPRING = CrushCurve.linear("spring", 1000.0, 5);

  private static <T> T last(List<T> all) {
    return all.get(all.size() - 1);
  }

  /**
   * 3 kg at 2 m/s into 5 kg at rest over 1000 N/m: reduced mass 1.875 kg, common speed 0.75 m/s, ω
   * = √(1000/1.875); apart after π/ω with 0.75 − 1.25 and 0.75 + 0.75 m/s, at 0.75 π/ω.
   */
  @Test
  void two_masses_on_a_spring_part_after_half_a_wave() {
    Link link = new Link.Crush(1, 0, SPRING, 0);
    List<LumpedMasses.Sample> samples =
        new LumpedMasses(new double[] {3, 5}, List.of(link), time -> 0)
            .untilReleased(new double[] {2, 0}, 0.5);
    double omega = Math.sqrt(1000 / 1.875);
    LumpedMasses.Sample end = last(samples);
    assertEquals(Math.PI / omega, end.time(), 1e-9);
    double way = 0.75 * Math.PI / omega;
    assertArrayEquals(new double[] {way, way, -0.5, 1.5}, end.state(), 1e-8);
    for (LumpedMasses.Sample one : samples) {
      double closed = 2 / omega * Math.sin(omega * one.time());
      assertEquals(1000 * closed, one.forces()[0], 1e-6);
      assertEquals(500 * closed * closed, one.energies()[0], 1e-6);
      assertEquals(1000 * closed / 3, one.decelerations()[0], 1e-6);
      assertEquals(-1000 * closed / 5, one.decelerations()[1], 1e-6);
    }
    assertEquals(0, samples.get(0).time());
    assertArrayEquals(new double[] {0, 0, 2, 0}, samples.get(0).state());
  }

  /** It stays where it was pressed: out at the same 3 N, back along a line ten times as steep. */
  @Test
  void what_does_not_spring_back_lets_go_early() {
    CrushCurve curve =
        new CrushCurve(
            "yielding",
            List.of(new CrushCurve.Point(0, 0, ""), new CrushCurve.Point(5, 5000, "")),
            10e3);
    LumpedMasses.Sample end =
        last(
            new LumpedMasses(
                    new double[] {4}, List.of(new Link.Crush(Link.GROUND, 0, curve, 0)), t -> 0)
                .untilReleased(new double[] {3}, 1));
    double most = 3 * Math.sqrt(4 / 1000.0);
    assertEquals(most * 0.9, end.state()[0], 1e-9);
    assertEquals(-3 * Math.sqrt(0.1), end.state()[1], 1e-7);
    double time = Math.PI / 2 * (Math.sqrt(4 / 1000.0) + Math.sqrt(4 / 10e3));
    assertEquals(time, end.time(), 1e-8);
  }

  /**
   * 20 m/s² for 10 ms, then 50: 0.2 and 0.7 m/s, 1 mm and 1 + 2 + 2.5 mm. At the jump itself nobody
   * asks: it is either.
   */
  @Test
  void the_frames_deceleration_drives_and_may_jump_at_the_times_given() {
    List<Double> asked = new ArrayList<>();
    Link far = new Link.Crush(Link.GROUND, 0, SPRING, 1);
    List<LumpedMasses.Sample> samples =
        new LumpedMasses(
                new double[] {7},
                List.of(far),
                time -> {
                  asked.add(time);
                  return time < 0.01 ? 20 : 50;
                })
            .through(new double[] {0, 0.01, 0.02});
    assertArrayEquals(new double[] {0.0055, 0.7}, last(samples).state(), 1e-9);
    LumpedMasses.Sample jump =
        samples.stream().filter(one -> one.time() == 0.01).findFirst().orElseThrow();
    assertArrayEquals(new double[] {0.001, 0.2}, jump.state(), 1e-9);
    assertTrue(asked.stream().allMatch(t -> t > 0 && t < 0.02 && t != 0.01), "inside only");
    assertEquals(
        2, samples.stream().filter(one -> one.time() == 0.01).count(), "an end and a start");
  }

  /** In steps of 0.05 ms at most, 40 000 of them take two seconds. */
  @Test
  void a_run_of_more_than_forty_thousand_steps_is_stopped() {
    LumpedMasses endless =
        new LumpedMasses(
            new double[] {7}, List.of(new Link.Spring(Link.GROUND, 0, 3)), time -> 0.1);
    assertEquals(
        "the crash was stopped after 40001 time steps, at 2.000 s; softness, gaps or speed make it"
            + " too long to follow",
        assertThrows(SolveException.class, () -> endless.through(new double[] {0, 9}))
            .getMessage());
  }

  @Test
  void a_run_stops_at_the_step_in_which_it_is_interrupted() {
    LumpedMasses run =
        new LumpedMasses(
            new double[] {7},
            List.of(new Link.Spring(Link.GROUND, 0, 3)),
            time -> {
              if (time > 0.01) {
                Thread.currentThread().interrupt();
              }
              return 0.1;
            });
    String message =
        assertThrows(SolveException.class, () -> run.through(new double[] {0, 0.1})).getMessage();
    assertTrue(Thread.interrupted(), "it stays marked");
    assertTrue(message.matches("the crash was stopped after 20\\d time steps, at .*"), message);
  }

  @Test
  void a_run_that_is_interrupted_before_it_begins_does_not() {
    LumpedMasses run =
        new LumpedMasses(
            new double[] {7}, List.of(new Link.Spring(Link.GROUND, 0, 3)), time -> 0.1);
    Thread.currentThread().interrupt();
    String message =
        assertThrows(SolveException.class, () -> run.through(new double[] {0, 0.1})).getMessage();
    assertTrue(Thread.interrupted(), "it stays marked");
    assertEquals("the calculation of the crash was interrupted", message);
  }

  /** Two springs of 600 and 200 N/m at 2 kg, pulled by 8 m/s²: x = 16/800 (1 − cos 20 t). */
  @Test
  void forces_of_several_links_add_up() {
    LumpedMasses.Sample end =
        last(
            new LumpedMasses(
                    new double[] {2},
                    List.of(
                        new Link.Spring(Link.GROUND, 0, 600), new Link.Spring(Link.GROUND, 0, 200)),
                    time -> 8)
                .through(new double[] {0, 0.05}));
    assertEquals(0.02 * (1 - Math.cos(1)), end.state()[0], 1e-10);
    assertEquals(0.4 * Math.sin(1), end.state()[1], 1e-9);
    assertEquals(600 * end.state()[0], end.forces()[0], 1e-9);
    assertEquals(200 * end.state()[0], end.forces()[1], 1e-9);
    assertEquals(400 * end.state()[0], end.decelerations()[0], 1e-9);
  }

  /**
   * 1 kg at 30 m/s into 10⁶ N/m, let go at 10⁸: it turns 30 mm on at 30 kN, inside a step, comes
   * back by 0.3 mm and off at 30·√(10⁶/10⁸) m/s.
   */
  @Test
  void what_turns_inside_a_step_unloads_from_where_it_turned() {
    CrushCurve stiff =
        new CrushCurve(
            "stiff",
            List.of(new CrushCurve.Point(0, 0, ""), new CrushCurve.Point(5, 5e6, "")),
            1e8);
    LumpedMasses.Sample end =
        last(
            new LumpedMasses(
                    new double[] {1}, List.of(new Link.Crush(Link.GROUND, 0, stiff, 0)), t -> 0)
                .untilReleased(new double[] {30}, 1));
    assertEquals(0.0297, end.state()[0], 1e-9);
    assertEquals(-3, end.state()[1], 1e-6);
  }
}
