package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.material.Elasticity;
import rungwork.section.Properties;

class TwistingColumnTest {
  private static final Elasticity STEEL = new Elasticity(210e9, 0.3, 7850);

  private static double critical(Properties section, double y, double z, double twist) {
    return TwistingExample.critical(STEEL, section, new double[] {y, z, twist});
  }

  private static Properties section(double y0, double z0) {
    return new Properties(
        500e-6, 400e-9, 90e-9, 0, 1.5e-9, 60e-12, 0, 1, 1, 1, 1, 1, 5e-4, 5e-4, y0, z0);
  }

  private static double euler(double inertia, double length) {
    return Math.PI * Math.PI * 210e9 * inertia / (length * length);
  }

  @Test
  void with_its_shear_centre_at_the_centroid_the_least_of_three_forces_counts() {
    Properties cross = section(0, 0);
    double polar = (400e-9 + 90e-9) / 500e-6;
    double twist = (STEEL.shearModulus() * 1.5e-9 + euler(60e-12, 0.6)) / polar;
    double least = Math.min(twist, Math.min(euler(400e-9, 0.6), euler(90e-9, 0.6)));
    assertEquals(1, critical(cross, 0.6, 0.6, 0.6) / least, 1e-9);
    assertEquals(1, critical(cross, 0.6, 4, 0.6) / euler(90e-9, 4), 1e-9);
  }

  /** EN 1993-1-3, eq. 6.35: one axis of symmetry. */
  @Test
  void a_channel_has_the_closed_form_of_one_axis_of_symmetry() {
    double y0 = 0.03;
    Properties channel = section(y0, 0);
    double square = (400e-9 + 90e-9) / 500e-6 + y0 * y0;
    double twist = (STEEL.shearModulus() * 1.5e-9 + euler(60e-12, 0.8)) / square;
    double bend = euler(400e-9, 0.8);
    double beta = 1 - y0 * y0 / square;
    double ratio = twist / bend;
    double expected =
        bend
            / (2 * beta)
            * (1 + ratio - Math.sqrt((1 - ratio) * (1 - ratio) + 4 * y0 * y0 / square * ratio));
    assertEquals(1, critical(channel, 0.8, 0.1, 0.8) / expected, 1e-9);
  }

  /** Between nothing and the least root the cubic (N − N₁)(N − N₂)(N − NT) − … keeps its sign. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void an_unsymmetric_section_buckles_at_the_least_root_of_its_cubic(long seed) {
    Random random = new Random(seed);
    double y0 = 0.06 * (random.nextDouble() - 0.5);
    double z0 = 0.06 * (random.nextDouble() - 0.5);
    double length = 0.3 + random.nextDouble();
    double critical = critical(section(y0, z0), length, length, length);
    for (int i = 0; i < 2000; i++) {
      assertTrue(cubic(critical * (1 - 1e-9) * i / 2000, y0, z0, length) < 0, "seed " + seed);
    }
    assertTrue(cubic(critical * (1 - 1e-9), y0, z0, length) < 0, "seed " + seed);
    assertTrue(cubic(critical * (1 + 1e-9), y0, z0, length) > 0, "seed " + seed);
  }

  private static double cubic(double n, double y0, double z0, double length) {
    double square = 490e-9 / 500e-6 + y0 * y0 + z0 * z0;
    double n1 = euler(400e-9, length);
    double n2 = euler(90e-9, length);
    double nt = (STEEL.shearModulus() * 1.5e-9 + euler(60e-12, length)) / square;
    return (n - n1) * (n - n2) * (n - nt)
        - n * n * ((n - n2) * y0 * y0 + (n - n1) * z0 * z0) / square;
  }

  /** Bending across the axis of symmetry at the very force at which the rest bends and twists. */
  @Test
  void two_ways_to_buckle_at_the_same_force_are_that_force() {
    Properties channel = section(0.03, 0);
    double together = critical(channel, 0.8, 0.1, 0.8);
    double length = Math.PI * Math.sqrt(210e9 * 90e-9 / together);
    for (double nearly : new double[] {1 - 1e-12, 1, 1 + 1e-12}) {
      assertEquals(1, critical(channel, 0.8, nearly * length, 0.8) / together, 1e-9);
    }
  }

  @Test
  void a_longer_column_never_buckles_later() {
    double before = Double.POSITIVE_INFINITY;
    for (double length = 0.1; length < 3; length *= 1.2) {
      double now = critical(section(0.02, -0.01), length, length, length);
      assertTrue(now < before);
      before = now;
    }
  }
}
