package rungwork.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.solve.BandExample;

class SweepBenchmarkTest {
  /** The sums as src/bench/python/sweep.py prints them, and one unit of their last digit. */
  @ParameterizedTest
  @CsvSource({"0, 15871640266.9", "1, 13163845978.8", "2, 11379901208.9", "3, 9202814265.48"})
  void the_sweep_in_numpy_gives_the_same_stresses(int wall, double sum) {
    assertEquals(sum, new SweepBenchmark().answer(wall), 0.1);
  }

  /** The sum as src/bench/c/band.c prints it. */
  @Test
  void LAPACK_s_band_solver_called_from_C_gives_the_same_values() {
    BandExample band = new BandExample();
    band.solve();
    assertEquals(73.1567384382364, band.sum(), 1e-12);
  }
}
