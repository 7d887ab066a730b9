package rungwork.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LadderBenchmarkTest {
  /** The sums as src/bench/python/ladder.py prints them, and half a unit of their last digit. */
  @ParameterizedTest
  @CsvSource({"4, 54054.3489, 0.00005", "40, 359250.11, 0.005"})
  void the_ladder_in_numpy_gives_the_same_forces(int bays, double sum, double halfDigit) {
    LadderBenchmark benchmark = new LadderBenchmark();
    benchmark.bays = bays;
    benchmark.build();
    assertEquals(sum, benchmark.solve_four_cases_and_all_forces(), halfDigit);
  }
}
