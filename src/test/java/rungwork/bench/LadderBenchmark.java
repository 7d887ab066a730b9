package rungwork.bench;

import static rungwork.quantity.Quantities.mm;

import java.util.List;
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
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Material;
import rungwork.section.Section;
import rungwork.solve.Response;
import rungwork.solve.Solver;

/**
 * A ladder 2.8 m long and 0.62 m wide of tube 80 × 40 × 3, held at its rear end, with four load
 * cases at its front end. What is timed: both actions assembled, factorised and solved, and the six
 * internal forces at both ends of every beam in every case.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LadderBenchmark {
  private static final double LENGTH = 2.8;
  private static final double WIDTH = 0.62;

  /** Bays between crossmembers; a builder's frame has about 4, a finely cut one 40. */
  @Param({"4", "40"})
  public int bays;

  private Frame frame;
  private List<LoadCase> cases;

  /** Builds the frame and its load cases; not timed. */
  @Setup
  public void build() {
    frame = ladder();
    cases =
        List.of(
            atFront("bump", Wrench.force(0, 0, 3000), Wrench.force(0, 0, 3000)),
            atFront("twist", Wrench.force(0, 0, 1000), Wrench.force(0, 0, -1000)),
            atFront("cornering", Wrench.force(0, 2000, 0), Wrench.force(0, 2000, 0)),
            atFront("one rail tip", Wrench.force(-20_000, 0, 0), Wrench.ZERO));
  }

  /**
   * The whole answer.
   *
   * @return a sum over all forces, so that none can be left out [N, N·m]
   */
  @Benchmark
  public double solve_four_cases_and_all_forces() {
    double sum = 0;
    for (Response response : Solver.of(frame).solve(cases)) {
      for (Beam beam : frame.beams()) {
        var forces = response.forces(beam.name());
        sum += Math.abs(forces.at(0).mz()) + Math.abs(forces.at(1).my());
      }
    }
    return sum;
  }

  private Frame ladder() {
    Stock tube =
        new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Material.named("S355J2H"));
    Frame.Builder builder = Frame.in(Plane.PLAN);
    for (int i = 0; i <= bays; i++) {
      double x = -LENGTH * i / bays;
      builder.node("R" + i, new Point(x, -WIDTH / 2, 0));
      builder.node("L" + i, new Point(x, WIDTH / 2, 0));
      builder.beam(Beam.rigid("cross " + i, "R" + i, "L" + i, tube));
    }
    for (int i = 0; i < bays; i++) {
      builder.beam(Beam.rigid("right " + i, "R" + i, "R" + (i + 1), tube));
      builder.beam(Beam.rigid("left " + i, "L" + i, "L" + (i + 1), tube));
    }
    builder.support(Support.fixed("R" + bays));
    return builder.support(Support.fixed("L" + bays)).build();
  }

  private static LoadCase atFront(String name, Wrench right, Wrench left) {
    return LoadCase.of(name, new Load.AtNode("R0", right), new Load.AtNode("L0", left));
  }
}
