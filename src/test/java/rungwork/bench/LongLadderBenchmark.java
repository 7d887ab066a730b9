package rungwork.bench;

import static rungwork.quantity.Quantities.mm;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Material;
import rungwork.section.Section;
import rungwork.solve.Solver;

/** A long ladder on many supports, one load case, both actions: how time grows with the nodes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LongLadderBenchmark {
  private static final int BAYS_BETWEEN_SUPPORTS = 20;

  /** Nodes, two at each station. */
  @Param({"1000", "10000", "100000"})
  public int nodes;

  private Frame frame;
  private LoadCase loads;

  /** Builds the frame; not timed. */
  @Setup
  public void build() {
    Stock tube = new Stock(Section.squareTube(mm(50), mm(3)), Material.named("S355J2H"));
    Frame.Builder ladder = Frame.in(Plane.PLAN);
    int stations = nodes / 2;
    for (int i = 0; i < stations; i++) {
      ladder.node("R" + i, new Point(-0.5 * i, -0.3, 0)).node("L" + i, new Point(-0.5 * i, 0.3, 0));
      ladder.beam(Beam.rigid("cross " + i, "R" + i, "L" + i, tube));
      if (i > 0) {
        ladder.beam(Beam.rigid("right " + i, "R" + (i - 1), "R" + i, tube));
        ladder.beam(Beam.rigid("left " + i, "L" + (i - 1), "L" + i, tube));
      }
      if (i % BAYS_BETWEEN_SUPPORTS == 0) {
        ladder.support(Support.holding("R" + i, Freedom.UX, Freedom.UY, Freedom.UZ));
        ladder.support(Support.holding("L" + i, Freedom.UZ));
      }
    }
    frame = ladder.build();
    loads = LoadCase.of("middle", new Load.AtNode("L" + stations / 2, Wrench.force(100, 50, -900)));
  }

  /**
   * Solves.
   *
   * @return what is left out of balance
   */
  @Benchmark
  public double chain_of_bays() {
    return Solver.of(frame).solve(loads).residual();
  }
}
