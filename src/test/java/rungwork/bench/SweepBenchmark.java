package rungwork.bench;

import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
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
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.solve.Sweep;

/**
 * A ladder of 12 stations: 24 nodes, 22 beams of rail and 6 crossmembers, on stiff springs at its
 * rear end, under 8 load cases. What is timed: other stocks given to rails and crossmembers, both
 * actions assembled, factorised and solved, the forces at both ends of every beam and the stress of
 * its edges there, in every case. The same in numpy: {@code src/bench/python/sweep.py}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SweepBenchmark {
  private static final int STATIONS = 12;
  private static final double LENGTH = 2.75;
  private static final double WIDTH = 0.62;
  private static final int[] RUNGS = {0, 2, 4, 6, 9, 11};
  private static final int CASES = 8;

  private final List<Stock> rails = tubes(80, 40);
  private final List<Stock> rungs = tubes(50, 50);
  private final Sweep.Workspace workspace;
  private final double[] ends = new double[12];
  private int next;

  /** Plans the sweep; not timed. */
  public SweepBenchmark() {
    workspace = Sweep.of(frame(), cases()).workspace();
  }

  private static List<Stock> tubes(double height, double width) {
    List<Stock> tubes = new ArrayList<>();
    for (double wall : new double[] {2, 2.5, 3, 4}) {
      tubes.add(
          new Stock(
              Section.rectangularTube(mm(height), mm(width), mm(wall)), Material.named("S355J2H")));
    }
    return tubes;
  }

  private Frame frame() {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i < STATIONS; i++) {
      double x = -LENGTH * i / (STATIONS - 1);
      frame.node("R" + i, new Point(x, -WIDTH / 2, 0)).node("L" + i, new Point(x, WIDTH / 2, 0));
    }
    for (int i = 0; i + 1 < STATIONS; i++) {
      frame.beam(Beam.rigid("right " + i, "R" + i, "R" + (i + 1), rails.get(0)));
      frame.beam(Beam.rigid("left " + i, "L" + i, "L" + (i + 1), rails.get(0)));
    }
    for (int i : RUNGS) {
      frame.beam(Beam.rigid("rung " + i, "R" + i, "L" + i, rungs.get(0)));
    }
    for (String node : List.of("R" + (STATIONS - 1), "L" + (STATIONS - 1))) {
      for (Freedom freedom : Freedom.values()) {
        frame.support(Support.spring(node, freedom, 1e8));
      }
    }
    return frame.build();
  }

  private static List<LoadCase> cases() {
    List<LoadCase> cases = new ArrayList<>();
    for (int c = 0; c < CASES; c++) {
      double part = c + 1;
      cases.add(
          LoadCase.of(
              "case " + c,
              new Load.AtNode("R0", Wrench.force(-1000 * part, 500, 300 * part)),
              new Load.AtNode("L0", Wrench.force(-200 * part, 100 * part, -700)),
              new Load.AtNode("R5", new Wrench(0, 0, -900, 40 * part, 30, 20))));
    }
    return cases;
  }

  /**
   * One frame on one thread.
   *
   * @return the highest edge stresses of every beam in every case, added [Pa]
   */
  @Benchmark
  public double one_frame() {
    return answer(next++ & 3);
  }

  /**
   * One frame on each of two threads at a time.
   *
   * @return as for one frame
   */
  @Benchmark
  @Threads(2)
  public double one_frame_on_each_of_two_threads() {
    return answer(next++ & 3);
  }

  /** The answer with the stocks of one wall thickness, 0 to 3. */
  double answer(int wall) {
    Stock rail = rails.get(wall);
    Stock rung = rungs.get(wall);
    int beams = 2 * (STATIONS - 1) + RUNGS.length;
    for (int beam = 0; beam < beams; beam++) {
      workspace.stock(beam, beam < 2 * (STATIONS - 1) ? rail : rung);
    }
    workspace.solve();
    double sum = 0;
    for (int beam = 0; beam < beams; beam++) {
      Properties p = (beam < 2 * (STATIONS - 1) ? rail : rung).section().properties();
      for (int c = 0; c < CASES; c++) {
        workspace.endForces(beam, c, ends);
        sum += Math.max(edge(p, 0), edge(p, 6));
      }
    }
    return sum;
  }

  /** |N|/A + |My|/Wy + |Mz|/Wz at one end. */
  private double edge(Properties p, int end) {
    return Math.abs(ends[end]) / p.area()
        + Math.abs(ends[end + 4]) / p.wely()
        + Math.abs(ends[end + 5]) / p.welz();
  }
}
