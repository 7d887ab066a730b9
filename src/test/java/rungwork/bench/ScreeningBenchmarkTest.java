package rungwork.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungwork.vehicle.Assessment.Screened;

class ScreeningBenchmarkTest {
  @Test
  void some_variants_pass_and_some_do_not_whatever_came_before() {
    ScreeningBenchmark benchmark = new ScreeningBenchmark();
    List<Screened> numbers = IntStream.range(0, 40).mapToObj(benchmark::screened).toList();
    assertTrue(numbers.stream().anyMatch(one -> one.utilisation() > 1));
    assertTrue(numbers.stream().anyMatch(one -> one.utilisation() < 1));
    assertEquals(numbers.get(0), benchmark.screened(0));
    assertEquals(numbers.get(7), new ScreeningBenchmark().screened(7));
  }
}
