package rungwork.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import rungwork.solve.BandExample;

/** One band matrix of 72 unknowns and half-bandwidth 8, factorised and solved for 8 cases. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class BandBenchmark {
  private final BandExample example = new BandExample();

  /**
   * Copies, factorises and solves.
   *
   * @return the example, so that nothing can be left out
   */
  @Benchmark
  public BandExample band_solve() {
    example.solve();
    return example;
  }
}
