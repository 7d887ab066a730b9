package rungwork.bench;

import static rungwork.quantity.Quantities.mm;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import rungwork.section.Section;

/** One tube from typed sizes: outline, all properties, stress points. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SectionBenchmark {
  /** The wall [mm]; a parameter, so that nothing is known beforehand. */
  @Param("3")
  public double wall;

  /**
   * A rectangular tube 80 × 40 mm.
   *
   * @return the section
   */
  @Benchmark
  public Section rectangular_tube() {
    return Section.rectangularTube(mm(80), mm(40), mm(wall));
  }
}
