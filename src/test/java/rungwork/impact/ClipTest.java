package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ClipTest {
  /** Up to 40 in 8 ms and down in 12: above a level L for 20 ms (1 − L/40); 5 ms at 30. */
  @Test
  void a_triangle_is_above_a_level_for_what_similar_triangles_say() {
    double[] times = {0, 8e-3, 20e-3};
    double[] values = {0, 40, 0};
    assertEquals(30, Clip.level(times, values, 5e-3), 1e-9);
    assertEquals(34, Clip.level(times, values, 3e-3), 1e-9);
  }

  /** Two teeth of 2 ms at 50 and at 20: 3 ms in all are above 20 only, 2 ms above 50. */
  @Test
  void times_above_a_level_add_up() {
    double[] times = {0, 1e-6, 2e-3, 2.001e-3, 6e-3, 6.001e-3, 8e-3, 8.001e-3};
    double[] values = {0, 50, 50, 0, 0, 20, 20, 0};
    assertEquals(20, Clip.level(times, values, 3e-3), 0.02);
    assertEquals(50, Clip.level(times, values, 1.5e-3), 0.02);
  }

  /** A trapezium of 7 for 3 ms just is above it for 3 ms. */
  @Test
  void a_level_that_is_held_for_just_so_long_counts() {
    double[] times = {0, 2e-3, 5e-3, 9e-3};
    assertEquals(7, Clip.level(times, new double[] {0, 7, 7, 0}, 3e-3), 1e-9);
  }

  @Test
  void what_never_pushes_has_none() {
    assertEquals(0, Clip.level(new double[] {0, 1}, new double[] {-3, -1}, 3e-3));
    assertEquals(0, Clip.level(new double[] {0, 1e-3}, new double[] {5, 5}, 3e-3), 1e-15);
  }

  /** From −10 to 30 in 4 ms: above L for (30 − L)/40 of it, 3 ms above 0. */
  @Test
  void a_rise_from_below_nothing_counts_from_where_it_crosses() {
    assertEquals(10, Clip.level(new double[] {0, 4e-3}, new double[] {-10, 30}, 2e-3), 1e-9);
    assertEquals(10, Clip.level(new double[] {0, 4e-3}, new double[] {30, -10}, 2e-3), 1e-9);
  }
}
