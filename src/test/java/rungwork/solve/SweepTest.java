package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;

class SweepTest {
  private static Stock stock(Random random) {
    double size = 0.5 + random.nextDouble();
    return new Stocks(210e9, 80.77e9)
        .with(new Stocks.Shape(300e-6 * size, 70e-9 * size, 60e-9 * size * size, 110e-9 * size));
  }

  private static Frame.Builder ladder(Random random) {
    Frame.Builder frame = Ladders.of(stock(random), stock(random));
    return frame
        .node("side", new Point(0.1, 0.7, 0.25))
        .beam(
            Beam.rigid("bracket", "L0", "side", stock(random))
                .joined(
                    End.released(Release.OUT_OF_PLANE_BENDING),
                    End.released(Release.TORSION).armed(0.02, 0.01, 0)));
  }

  private static Frame.Builder held(Frame.Builder frame) {
    return frame
        .support(Support.holding("R0", Freedom.UX, Freedom.UY, Freedom.UZ))
        .support(Support.holding("L3", Freedom.UY, Freedom.UZ))
        .support(Support.spring("R3", Freedom.UZ, 2e5))
        .support(Support.holding("side", Freedom.UZ, Freedom.RX, Freedom.RY));
  }

  private static List<LoadCase> cases(Random random, int count) {
    List<LoadCase> cases = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      cases.add(
          LoadCase.of(
              "case " + i,
              new Load.AtNode(
                  "L1",
                  new Wrench(
                      random.nextGaussian() * 1e3,
                      random.nextGaussian() * 1e3,
                      random.nextGaussian() * 1e3,
                      random.nextGaussian() * 100,
                      random.nextGaussian() * 100,
                      random.nextGaussian() * 100)),
              new Load.AlongBeam("right 1", 50, random.nextGaussian() * 200, -300),
              new Load.OnBeam("cross 2", 0.2, Wrench.force(100, 0, random.nextGaussian() * 900))));
    }
    return cases;
  }

  private static Map<String, Stock> others(Frame frame, Random random) {
    Map<String, Stock> stocks = new HashMap<>();
    frame.beams().forEach(beam -> stocks.put(beam.name(), stock(random)));
    return stocks;
  }

  private static Frame with(Frame frame, Map<String, Stock> stocks) {
    return frame.with(
        beam -> {
          Stock stock = stocks.get(beam.name());
          return Beam.rigid(beam.name(), beam.start(), beam.end(), stock)
              .joined(beam.atStart(), beam.atEnd());
        });
  }

  private static void assertSame(Sweep.Workspace workspace, List<Response> responses) {
    Frame frame = responses.get(0).frame();
    double[] ends = new double[12];
    for (int c = 0; c < responses.size(); c++) {
      double size = 0;
      for (Beam beam : frame.beams()) {
        size = Math.max(size, Math.abs(responses.get(c).forces(beam.name()).at(0).vz()));
      }
      for (int b = 0; b < frame.beams().size(); b++) {
        workspace.endForces(b, c, ends);
        BeamForces forces = responses.get(c).forces(frame.beams().get(b).name());
        InternalForces start = forces.at(0);
        InternalForces end = forces.at(1);
        double[] expected = {
          -start.n(), -start.vy(), -start.vz(), -start.t(), -start.my(), -start.mz(),
          end.n(), end.vy(), end.vz(), end.t(), end.my(), end.mz()
        };
        for (int i = 0; i < 12; i++) {
          assertEquals(expected[i], ends[i], 1e-8 * size, frame.beams().get(b).name() + " " + i);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void a_sweep_gives_the_solver_s_numbers_with_any_stocks(long seed) {
    Random random = new Random(seed);
    Frame frame = held(ladder(random)).build();
    List<LoadCase> cases = cases(random, seed % 2 == 0 ? 8 : 11);
    Sweep sweep = Sweep.of(frame, cases);
    Sweep.Workspace workspace = sweep.workspace();
    workspace.solve();
    assertSame(workspace, Solver.of(frame).solve(cases));
    for (int turn = 0; turn < 3; turn++) {
      Map<String, Stock> stocks = others(frame, random);
      for (int b = 0; b < sweep.beams(); b++) {
        workspace.stock(b, stocks.get(frame.beams().get(b).name()));
      }
      workspace.solve();
      assertSame(workspace, Solver.of(with(frame, stocks)).solve(cases));
    }
  }

  @Test
  void a_frame_that_nothing_holds_is_swept_under_loads_in_balance() {
    Random random = new Random(9);
    Frame frame = Ladders.of(stock(random), stock(random)).build();
    LoadCase twist =
        LoadCase.of(
            "twist",
            new Load.AtNode("R0", Wrench.force(0, 0, 500)),
            new Load.AtNode("L0", Wrench.force(0, 0, -500)),
            new Load.AtNode("R3", Wrench.force(0, 0, -500)),
            new Load.AtNode("L3", Wrench.force(0, 0, 500)));
    Sweep sweep = Sweep.unsupported(frame, List.of(twist));
    Sweep.Workspace workspace = sweep.workspace();
    Map<String, Stock> stocks = others(frame, random);
    for (int b = 0; b < sweep.beams(); b++) {
      workspace.stock(b, stocks.get(frame.beams().get(b).name()));
    }
    workspace.solve();
    assertSame(workspace, Solver.unsupported(with(frame, stocks)).solve(List.of(twist)));
  }

  @Test
  void a_solve_allocates_nothing() {
    Random random = new Random(1);
    Frame frame = held(ladder(random)).build();
    Sweep.Workspace workspace = Sweep.of(frame, cases(random, 8)).workspace();
    Stock thick = stock(random);
    double[] ends = new double[12];
    for (int i = 0; i < 200; i++) {
      workspace.stock(i % 3, thick);
      workspace.solve();
      workspace.endForces(i % 5, i % 8, ends);
    }
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    long none = threads.getCurrentThreadAllocatedBytes() - before;
    before = threads.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < 1000; i++) {
      workspace.solve();
      workspace.endForces(i % 5, i % 8, ends);
    }
    long allocated = threads.getCurrentThreadAllocatedBytes() - before - none;
    assertEquals(0, allocated, "bytes in 1000 solves");
  }

  @Test
  void threads_with_a_workspace_each_do_not_disturb_each_other() {
    Random random = new Random(3);
    Frame frame = held(ladder(random)).build();
    Sweep sweep = Sweep.of(frame, cases(random, 8));
    List<Stock> stocks = IntStream.range(0, 40).mapToObj(i -> stock(random)).toList();
    double[] alone = stocks.stream().mapToDouble(stock -> moment(sweep, stock)).toArray();
    double[] together =
        stocks.parallelStream().mapToDouble(stock -> moment(sweep, stock)).toArray();
    for (int i = 0; i < alone.length; i++) {
      assertEquals(alone[i], together[i]);
    }
  }

  private static double moment(Sweep sweep, Stock stock) {
    Sweep.Workspace workspace = sweep.workspace();
    for (int b = 0; b < sweep.beams(); b++) {
      workspace.stock(b, stock);
    }
    workspace.solve();
    double[] ends = new double[12];
    workspace.endForces(2, 3, ends);
    return ends[4];
  }

  @Test
  void what_a_sweep_does_not_cover_is_refused_by_name() {
    Random random = new Random(2);
    LoadCase pull = LoadCase.of("pull", new Load.AtNode("L1", Wrench.force(1, 0, 0)));
    refused(
        "there is no load case to sweep the frame under",
        () -> Sweep.of(held(ladder(random)).build(), List.of()));
    Frame shears =
        held(ladder(random)).build().with(beam -> beam.bending(Beam.Bending.WITH_SHEAR_STRAIN));
    refused(
        "beam cross 0 has shear strain, which a sweep does not cover; solve it frame by frame",
        () -> Sweep.of(shears, List.of(pull)));
    Frame sprung =
        held(ladder(random))
            .build()
            .with(beam -> beam.joined(End.RIGID.sprung(Release.TORSION, 1e3), End.RIGID));
    refused(
        "beam cross 0 has springs at its ends, which a sweep does not cover; solve it frame by"
            + " frame",
        () -> Sweep.of(sprung, List.of(pull)));
    LoadCase sinks = LoadCase.of("sinks", new Load.Settlement("L3", Freedom.UZ, 0.01));
    refused(
        "load case sinks has warmth, misfit or settlement, which a sweep does not cover; solve it"
            + " frame by frame",
        () -> Sweep.of(held(ladder(random)).build(), List.of(sinks)));
    Sweep.Workspace workspace = Sweep.of(held(ladder(random)).build(), List.of(pull)).workspace();
    Stock channel =
        new Stocks(210e9, 80e9).eccentric(new Stocks.Shape(1e-4, 1e-8, 1e-8, 1e-8), 0.02);
    refused(
        "stock by stiffness has its shear centre elsewhere than what beam cross 0 was planned with;"
            + " plan a sweep of its own for it",
        () -> workspace.stock(0, channel));
  }

  @Test
  void loads_out_of_balance_and_mechanisms_are_refused() {
    Random random = new Random(4);
    Frame frame = Ladders.of(stock(random), stock(random)).build();
    LoadCase pull = LoadCase.of("pull", new Load.AtNode("L1", Wrench.force(1, 0, 0)));
    assertThrows(SolveException.class, () -> Sweep.unsupported(frame, List.of(pull)));
    Frame bar =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(1, 0, 0))
            .beam(Beam.rigid("bar", "A", "B", Stocks.TUBE))
            .support(Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ))
            .build();
    assertThrows(SolveException.class, () -> Sweep.of(bar, List.of(pull)));
  }

  private static void refused(String message, org.junit.jupiter.api.function.Executable bad) {
    assertEquals(message, assertThrows(ModelException.class, bad).getMessage());
  }
}
