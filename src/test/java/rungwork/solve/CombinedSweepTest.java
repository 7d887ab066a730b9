package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;

/** Load cases put together from basic ones, against the same loads solved at once. */
class CombinedSweepTest {
  private static final Frame FRAME = Ladders.of(Stocks.TUBE, Stocks.TUBE).build();
  private static final Point MIDDLE = new Point(0, 0, 0);

  private static List<LoadCase> basics() {
    List<LoadCase> basics = new ArrayList<>();
    for (String node : List.of("L0", "R3")) {
      for (Wrench wrench :
          List.of(Wrench.force(1, 0, 0), Wrench.force(0, 1, 0), Wrench.force(0, 0, 1))) {
        basics.add(LoadCase.of("push", new Load.AtNode(node, wrench)));
      }
    }
    for (int i = 0; i < 6; i++) {
      double[] a = new double[6];
      a[i] = 1;
      basics.add(new LoadCase("inertia", "", List.of(), acceleration(a).alongBeams(FRAME)));
    }
    return basics;
  }

  private static RigidAcceleration acceleration(double... a) {
    return new RigidAcceleration(MIDDLE, a[0], a[1], a[2], a[3], a[4], a[5]);
  }

  /** Two pushes and the inertia that answers them: 12 factors. */
  private static double[] balanced(Random random) {
    Wrench[] pushes = new Wrench[2];
    List<AppliedWrench> applied = new ArrayList<>();
    double[] factors = new double[12];
    List<String> nodes = List.of("L0", "R3");
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 3; j++) {
        factors[3 * i + j] = 2000 * random.nextGaussian();
      }
      pushes[i] = Wrench.force(factors[3 * i], factors[3 * i + 1], factors[3 * i + 2]);
      String node = nodes.get(i);
      applied.add(new AppliedWrench(node, pushes[i], FRAME.node(node).at(), List.of(node)));
    }
    List<Mass> masses = InertiaBalance.ownMasses(FRAME);
    RigidAcceleration a = InertiaBalance.of(masses, applied).acceleration().at(MIDDLE);
    double[] all = {a.ax(), a.ay(), a.az(), a.alphaX(), a.alphaY(), a.alphaZ()};
    System.arraycopy(all, 0, factors, 6, 6);
    return factors;
  }

  private static double[][] factors(int cases) {
    Random random = new Random(cases);
    double[][] factors = new double[cases][];
    for (int c = 0; c < cases; c++) {
      factors[c] = balanced(random);
    }
    return factors;
  }

  private static LoadCase atOnce(double[] f) {
    List<Load> loads = new ArrayList<>();
    loads.add(new Load.AtNode("L0", Wrench.force(f[0], f[1], f[2])));
    loads.add(new Load.AtNode("R3", Wrench.force(f[3], f[4], f[5])));
    loads.addAll(acceleration(f[6], f[7], f[8], f[9], f[10], f[11]).alongBeams(FRAME));
    return new LoadCase("all at once", "", List.of(), loads);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 8, 11})
  void a_combination_is_its_loads_at_once_at_every_cut(int cases) {
    double[][] factors = factors(cases);
    Sweep.Workspace workspace = Sweep.combined(FRAME, basics(), cases).workspace();
    workspace.combine(factors);
    workspace.combine(factors);
    workspace.solve();
    for (int c = 0; c < cases; c++) {
      Response response = Solver.unsupported(FRAME).solve(atOnce(factors[c]));
      for (int beam = 0; beam < FRAME.beams().size(); beam++) {
        assertSame(workspace, beam, c, response.forces(FRAME.beams().get(beam).name()));
      }
    }
  }

  /** Beams that differ by twelve digits in stiffness leave no digits for the balance. */
  @Test
  void stocks_that_leave_a_combination_out_of_balance_are_refused_by_its_number() {
    Sweep.Workspace workspace = Sweep.combined(FRAME, basics(), 1).workspace();
    Stock soft =
        new Stocks(210e9, 80.77e9).with(new Stocks.Shape(294e-18, 69.5e-21, 69.5e-21, 112.8e-21));
    IntStream.of(0, 2, 4, 6).forEach(beam -> workspace.stock(beam, soft));
    workspace.combine(factors(1));
    SolveException refusal = assertThrows(SolveException.class, workspace::solve);
    assertEquals(
        "load case 1 leaves more than 1e-09 of its load out of balance with these stocks",
        refusal.getMessage());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 8, 11})
  void no_cut_shows_more_than_the_bounds(int cases) {
    double[][] factors = factors(cases);
    Sweep.Workspace workspace = Sweep.combined(FRAME, basics(), cases).workspace();
    workspace.combine(factors);
    workspace.solve();
    double[] bounds = new double[workspace.bounds()];
    for (int beam = 0; beam + 1 < FRAME.beams().size(); beam++) {
      workspace.bounds(new int[] {beam, beam + 1}, bounds);
      for (int c = 0; c < cases; c++) {
        assertBounded(workspace, beam, c, bounds);
        assertBounded(workspace, beam + 1, c, bounds);
      }
    }
  }

  private static void assertBounded(
      Sweep.Workspace workspace, int beam, int loadCase, double[] bounds) {
    double[] asked = IntStream.rangeClosed(0, 20).mapToDouble(i -> i / 20.0).toArray();
    double[] cuts = new double[7 * (asked.length + 7)];
    int stride = workspace.stride();
    for (int i = 0; i < workspace.cuts(beam, loadCase, asked, cuts); i++) {
      assertTrue(-cuts[7 * i + 1] <= bounds[loadCase] + 1e-6);
      for (int force = 1; force < 7; force++) {
        double most = bounds[force * stride + loadCase];
        assertTrue(Math.abs(cuts[7 * i + force]) <= most * (1 + 1e-12) + 1e-6);
      }
    }
  }

  /** 2 m long, ends without forces: 1.5·2²/8 and 3·2³/(9·√3) in bending, 3·2²/8 in shear. */
  @Test
  void between_ends_without_forces_a_line_load_bends_as_in_closed_form() {
    SweepLoads loads = new SweepLoads(2, 1, new int[] {1, 1});
    double[] held = new double[6];
    double[] ends = new double[12];
    loads.member(0, 0, held, ends, new double[] {0, 0, -1.5, 0, 0, 0, 0, 0});
    loads.member(0, 1, held, ends, new double[] {0, 0, 0, 0, 4, -3, 0, 5});
    double[] most = new double[7 * loads.width];
    ForceBounds bounds = new ForceBounds(loads, new double[6 * loads.width]);
    bounds.clear(most);
    bounds.raise(0, 2, most);
    double[] steady = {0, 0, 0, 0, 0, 0.75, 0};
    double[] growing = {2, 2, 1.5, 0, 2.5, 0, 24 / (9 * Math.sqrt(3))};
    for (int i = 0; i < 7; i++) {
      assertEquals(steady[i], most[i * loads.width], 1e-12);
      assertEquals(growing[i], most[i * loads.width + 1], 1e-12);
    }
  }

  @Test
  void bounds_have_their_room() {
    Sweep.Workspace workspace = Sweep.combined(FRAME, basics(), 3).workspace();
    assertEquals(56, workspace.bounds());
    assertEquals(8, workspace.stride());
    assertEquals(
        "the bounds of the forces are 56 numbers; there is room for 55",
        assertThrows(ModelException.class, () -> workspace.bounds(new int[] {0}, new double[55]))
            .getMessage());
  }

  private static void assertSame(
      Sweep.Workspace workspace, int beam, int loadCase, BeamForces forces) {
    double[] asked = {0, 0.3, 1};
    double[] cuts = new double[7 * (asked.length + 7)];
    int count = workspace.cuts(beam, loadCase, asked, cuts);
    TreeSet<Double> places = new TreeSet<>();
    for (int i = 0; i < count; i++) {
      int at = 7 * i;
      InternalForces there = forces.at(cuts[at]);
      double[] expected = {there.n(), there.vy(), there.vz(), there.t(), there.my(), there.mz()};
      for (int force = 0; force < 6; force++) {
        assertEquals(expected[force], cuts[at + 1 + force], 1e-6, "force " + force);
      }
      places.add(Math.rint(1e6 * cuts[at]));
    }
    for (double station : forces.stations()) {
      assertTrue(places.contains(Math.rint(1e6 * station)), station + " is not in " + places);
    }
  }

  @Test
  void the_work_is_the_sum_of_forces_times_motions() {
    Frame held =
        FRAME.on(
            List.of(
                Support.holding(
                    "R3", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY, Freedom.RZ),
                Support.holding("L3", Freedom.UZ)));
    LoadCase push = LoadCase.of("push", new Load.AtNode("L0", Wrench.force(100, 200, 300)));
    Sweep.Workspace workspace = Sweep.of(held, List.of(push)).workspace();
    workspace.solve();
    Displacement moved = Solver.of(held).solve(push).displacement("L0");
    double work = 100 * moved.ux() + 200 * moved.uy() + 300 * moved.uz();
    assertEquals(work, workspace.work(0), 1e-9 * work);
    Sweep.Workspace nine = Sweep.of(held, Collections.nCopies(9, push)).workspace();
    nine.solve();
    refused(
        "the work of a load case is known of 8 load cases at most; there are 9",
        () -> nine.work(0));
  }

  @Test
  void combinations_that_cannot_be_are_refused() {
    Sweep.Workspace workspace = Sweep.combined(FRAME, basics(), 1).workspace();
    refused(
        "1 load cases are put together from 12 basic ones; factors for 1 from 2 were given",
        () -> workspace.combine(new double[1][2]));
    double[][] falls = new double[1][12];
    falls[0][2] = 1;
    assertEquals(
        "load case 1 does not balance itself: 1.0e+00 of its load is left over; at most 1e-09 is"
            + " accepted",
        assertThrows(SolveException.class, () -> workspace.combine(falls)).getMessage());
    Beam beam = FRAME.beams().get(0);
    LoadCase between =
        LoadCase.of("between", new Load.OnBeam(beam.name(), 0.1, Wrench.force(0, 0, 1)));
    refused(
        "beam "
            + beam.name()
            + " has a load between its ends that is no line load all along, which load cases put"
            + " together from basic ones do not cover",
        () -> Sweep.combined(FRAME, List.of(between), 1));
  }

  @Test
  void counts_and_rooms_that_do_not_fit_are_refused() {
    refused(
        "a sweep of 0 load cases is asked for; 1 to 10000 can be put together",
        () -> Sweep.combined(FRAME, basics(), 0));
    Sweep.Workspace workspace = Sweep.combined(FRAME, basics(), 1).workspace();
    refused(
        "1 load cases are put together from 12 basic ones; factors for 0 from 0 were given",
        () -> workspace.combine(new double[0][]));
    refused("there is no load case -1; they are counted from 0 to 0", () -> workspace.work(-1));
    refused(
        "the end forces of a beam are 12 numbers; there is room for 6",
        () -> workspace.endForces(0, 0, new double[6]));
    refused(
        "the forces at the cuts of a beam may be 56 numbers; there is room for 7",
        () -> workspace.cuts(0, 0, new double[1], new double[7]));
  }

  private static void refused(String message, Executable bad) {
    assertEquals(message, assertThrows(ModelException.class, bad).getMessage());
  }
}
