package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
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

  /** Energy of v, w and φ as sine waves: K − N·G is singular. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void an_unsymmetric_section_buckles_where_its_energy_says(long seed) {
    Random random = new Random(seed);
    double y0 = 0.06 * (random.nextDouble() - 0.5);
    double z0 = 0.06 * (random.nextDouble() - 0.5);
    Properties section = section(y0, z0);
    double length = 0.3 + random.nextDouble();
    double square = 490e-9 / 500e-6 + y0 * y0 + z0 * z0;
    double twist = STEEL.shearModulus() * 1.5e-9 + euler(60e-12, length);
    double[] stiff = {euler(90e-9, length), euler(400e-9, length), twist};
    double[][] load = {{1, 0, z0}, {0, 1, -y0}, {z0, -y0, square}};
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        load[i][j] /= Math.sqrt(stiff[i] * stiff[j]);
      }
    }
    double most =
        Arrays.stream(new EigenDecomposition(new Array2DRowRealMatrix(load)).getRealEigenvalues())
            .max()
            .orElseThrow();
    assertEquals(1, critical(section, length, length, length) * most, 1e-8, "seed " + seed);
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
