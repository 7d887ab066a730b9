package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.solve.StabilityFunctions.Bending;

/** A single beam under a normal force, in units where EI = L = 1. */
class StabilityFunctionsTest {
  private static final Bending UNIT = new Bending(1, 0);
  private static final double EULER = Math.PI * Math.PI;

  private static StabilityFunctions at(double force) {
    return StabilityFunctions.of(UNIT, 1, force);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 4, 0.5",
    "0.5, 3.2945, 0.6659",
    "1, 2.4674, 1.0000",
    "2.0457, 0, Infinity",
    "-1, 5.1748, 0.3381"
  })
  void near_end_and_carry_over_are_those_of_the_tables(double part, double s, double c) {
    StabilityFunctions at = at(-part * EULER);
    assertEquals(s, at.near(), 2e-4);
    if (Double.isFinite(c)) {
      assertEquals(c, at.far() / at.near(), 5e-5);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-90, -30, -4.0001, -3.9999, -1, 1, 3.9999, 4.0001, 30, 400})
  void the_series_and_the_closed_forms_are_one_function(double z) {
    double root = Math.sqrt(Math.abs(z));
    double[] c = Stumpff.of(z);
    double c0 = z < 0 ? Math.cos(root) : Math.cosh(root);
    double c1 = (z < 0 ? Math.sin(root) : Math.sinh(root)) / root;
    double[] closed = {c0, c1, (c0 - 1) / z, (c1 - 1) / z, 0, 0};
    closed[4] = (closed[2] - 0.5) / z;
    closed[5] = (closed[3] - 1.0 / 6) / z;
    for (int n = 0; n <= Stumpff.HIGHEST; n++) {
      assertEquals(closed[n], c[n], 1e-14 * Math.max(c0, 1), "C" + n);
    }
  }

  @Test
  void no_force_leaves_the_powers_over_their_factorials() {
    assertArrayEquals(new double[] {1, 1, 1.0 / 2, 1.0 / 6, 1.0 / 24, 1.0 / 120}, Stumpff.of(0));
    assertEquals(new StabilityFunctions(4, 2, 0), at(0));
  }

  @ParameterizedTest
  @CsvSource({
    "39.4, 0",
    "39.5, 1",
    "80.7, 1",
    "80.8, 2",
    "157.9, 2",
    "158, 3",
    "238.7, 3",
    "238.8, 4"
  })
  void clamped_modes_are_counted_at_4_pi_squared_and_where_tan_u_is_u(double force, int modes) {
    assertEquals(modes, at(-force).clampedModes());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.3})
  void shear_strain_without_a_force_is_timoshenkos(double give) {
    double phi = 12 * give;
    StabilityFunctions at = StabilityFunctions.of(new Bending(1, give), 1, 0);
    assertEquals((4 + phi) / (1 + phi), at.near(), 1e-14);
    assertEquals((2 - phi) / (1 + phi), at.far(), 1e-14);
  }

  @Test
  void shear_strain_lowers_the_load_of_a_hinged_column_as_engesser_has_it() {
    double give = 0.02;
    double critical = EULER / (1 + EULER * give);
    Bending soft = new Bending(1, give);
    StabilityFunctions below = StabilityFunctions.of(soft, 1, -0.999 * critical);
    StabilityFunctions above = StabilityFunctions.of(soft, 1, -1.001 * critical);
    assertTrue(below.near() - below.far() > 0 && below.near() + below.far() > 0);
    assertTrue(above.near() - above.far() < 0 && above.near() + above.far() > 0);
    assertEquals(0, above.clampedModes());
  }

  @Test
  void the_count_of_clamped_modes_never_falls_as_compression_grows() {
    int[] counts =
        DoubleStream.iterate(0.37, force -> force + 3.1)
            .limit(300)
            .mapToInt(
                force -> StabilityFunctions.of(new Bending(1, 5e-4), 1, -force).clampedModes())
            .toArray();
    for (int i = 1; i < counts.length; i++) {
      assertTrue(counts[i] >= counts[i - 1], "step " + i);
    }
    assertTrue(counts[counts.length - 1] > 8);
  }
}
