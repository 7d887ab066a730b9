package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Iy = 4, Iz = 2, Iyz = 1 under My = Mz = 7: σ = [(My·Iz + Mz·Iyz) z − (Mz·Iy + My·Iyz) y] / (Iy·Iz
 * − Iyz²) = (21 z − 35 y)/7 (unsymmetric bending, any textbook; from memory).
 */
class TiltedAxesTest {
  private static final TiltedAxes AXES = new TiltedAxes(4, 2, 1);

  @Test
  void moments_about_tilted_axes_stress_both_ways() {
    assertEquals(-1, AXES.stress(7, 7, new Spot(2, 3)), 1e-12);
    assertEquals(3, AXES.stress(7, 7, new Spot(0, 1)), 1e-12);
    assertEquals(-5, AXES.stress(7, 7, new Spot(1, 0)), 1e-12);
  }

  /** σ = M·z/4 − M·y/2 with 12 and 10. */
  @Test
  void the_same_stress_by_moments_about_each_axis_alone() {
    assertArrayEquals(new double[] {12, 10}, AXES.about(7, 7), 1e-12);
  }

  @Test
  void without_a_product_each_moment_stands_alone() {
    TiltedAxes straight = new TiltedAxes(4, 2, 0);
    assertArrayEquals(new double[] {7, 5}, straight.about(7, 5), 0);
    assertEquals(7 * 3.0 / 4 - 5 * 2.0 / 2, straight.stress(7, 5, new Spot(2, 3)), 1e-12);
  }
}
