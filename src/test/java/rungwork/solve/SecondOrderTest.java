package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Node;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;

class SecondOrderTest {
  private static final Stock UNIT = new Stocks(1, 0.4).with(new Stocks.Shape(1e6, 1, 1, 1));
  private static final Support PIN =
      Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RZ);

  /** What is left of sixteen digits near a critical load, and beside a stiff axis [1]. */
  private static final double ROUNDING = 1e-8;

  private static Frame.Builder span(Plane plane) {
    return Frame.in(plane)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(2, 0, 0))
        .beam(Beam.rigid("beam", "A", "B", UNIT));
  }

  private static Response simple(Plane plane, double force, Load load) {
    Frame frame =
        span(plane).support(PIN).support(Support.holding("B", Freedom.UY, Freedom.UZ)).build();
    return Solver.secondOrder(frame)
        .solve(LoadCase.of("load", new Load.AtNode("B", Wrench.force(force, 0, 0)), load));
  }

  private static double sagging(Plane plane, InternalForces forces) {
    return plane == Plane.SIDE ? forces.mz() : -forces.my();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 0.5, 0.9, 0.95, 0.99})
  void a_compressed_simple_beam_bends_by_the_secant(double part) {
    double p = part * Math.PI * Math.PI / 4;
    double u = Math.sqrt(p);
    double moment = 0.5 * 2 * (1 / Math.cos(u) - 1) / (u * u);
    double sag = 0.5 * (2 / Math.cos(u) - u * u - 2) / Math.pow(u, 4);
    for (Plane plane : new Plane[] {Plane.SIDE, Plane.PLAN}) {
      Response r = simple(plane, -p, new Load.AlongBeam("beam", 0, 0, -1));
      assertEquals(moment, sagging(plane, r.forces("beam").at(0.5)), ROUNDING * moment);
      assertEquals(-sag, r.deflection("beam", 0.5).uz(), ROUNDING * sag);
      assertTrue(r.forces("beam").stations().stream().anyMatch(f -> Math.abs(f - 0.5) < 1e-9));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 0.5, 0.9, 0.95})
  void a_compressed_cantilever_bends_by_the_tangent(double part) {
    double p = part * Math.PI * Math.PI / 16;
    double u = 2 * Math.sqrt(p);
    for (Plane plane : new Plane[] {Plane.SIDE, Plane.PLAN}) {
      Frame frame = span(plane).support(Support.fixed("A")).build();
      Response r =
          Solver.secondOrder(frame)
              .solve(LoadCase.of("load", new Load.AtNode("B", Wrench.force(-p, 0, 1))));
      double tip = 8 * (Math.tan(u) - u) / (u * u * u);
      double moment = 2 * Math.tan(u) / u;
      assertEquals(tip, r.displacement("B").uz(), ROUNDING * tip);
      assertEquals(moment, sagging(plane, r.forces("beam").at(0)), ROUNDING * moment);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1, 10})
  void a_pulled_simple_beam_bends_less(double pull) {
    double u = Math.sqrt(pull);
    double moment = (1 - 1 / Math.cosh(u)) / (u * u);
    for (Plane plane : new Plane[] {Plane.SIDE, Plane.PLAN}) {
      Response r = simple(plane, pull, new Load.AlongBeam("beam", 0, 0, -1));
      assertEquals(moment, sagging(plane, r.forces("beam").at(0.5)), ROUNDING * moment);
    }
  }

  @ParameterizedTest
  @EnumSource(Plane.class)
  void a_bow_made_into_a_beam_grows_as_one_over_one_less_the_share(Plane plane) {
    double[] axis = plane.toVehicle(1, 0, 0);
    Frame frame =
        Frame.in(plane)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(2 * axis[0], 2 * axis[1], 2 * axis[2]))
            .beam(Beam.rigid("beam", "A", "B", UNIT))
            .support(
                new Support(
                    "A",
                    java.util.Set.of(Freedom.UX, Freedom.UY, Freedom.UZ, plane.motions().get(3)),
                    java.util.Map.of()))
            .support(Support.holding("B", plane.motions().get(1), plane.motions().get(2)))
            .build();
    double p = 0.5 * Math.PI * Math.PI / 4;
    Response r =
        Solver.secondOrder(frame)
            .solve(
                LoadCase.of(
                    "bowed",
                    new Load.AtNode("B", Wrench.force(-p * axis[0], -p * axis[1], -p * axis[2])),
                    new Load.Misfit("beam", 0, 0, 0.01, 0.02)));
    // A parabola of rise e: M = 8EIe/L²·(sec u − 1), u² = PL²/4EI.
    double grown = 8.0 / 4 * (1 / Math.cos(Math.sqrt(p)) - 1);
    InternalForces middle = r.forces("beam").at(0.5);
    assertEquals(0.01 * grown, Math.abs(middle.mz()), ROUNDING);
    assertEquals(0.02 * grown, Math.abs(middle.my()), ROUNDING);
  }

  /** The beam-column's equation as a boundary value problem: shots from the start, superposed. */
  @ParameterizedTest
  @ValueSource(doubles = {-1.9, -0.4, 0.7, 6})
  void a_propped_beam_under_a_part_load_follows_its_differential_equation(double normalForce) {
    double[] load = {0.3, 1.1, -2, 5};
    Frame frame =
        span(Plane.SIDE)
            .support(Support.fixed("A"))
            .support(Support.holding("B", Freedom.UY, Freedom.UZ))
            .build();
    Response r =
        Solver.secondOrder(frame)
            .solve(
                LoadCase.of(
                    "load",
                    new Load.AtNode("B", Wrench.force(normalForce, 0, 0)),
                    new Load.AlongPart(
                        "beam",
                        load[0],
                        load[1],
                        new Load.PerMetre(0, 0, load[2]),
                        new Load.PerMetre(0, 0, load[3]))));
    double[] zero = shot(0, 0, 2, normalForce, load);
    double[] moment = shot(1, 0, 2, normalForce, load);
    double[] shear = shot(0, 1, 2, normalForce, load);
    double a = moment[0] - zero[0];
    double b = shear[0] - zero[0];
    double c = moment[2] - zero[2];
    double d = shear[2] - zero[2];
    double m0 = (-zero[0] * d + zero[2] * b) / (a * d - b * c);
    double v0 = (-zero[2] * a + zero[0] * c) / (a * d - b * c);
    for (double x : new double[] {0.2, 0.6, 1.0, 1.3, 1.9}) {
      double[] there = shot(m0, v0, x, normalForce, load);
      InternalForces forces = r.forces("beam").at(x / 2);
      assertEquals(there[0], r.deflection("beam", x / 2).uz(), 1e-9, "deflection at " + x);
      assertEquals(there[2], forces.mz(), 1e-9, "moment at " + x);
      assertEquals(-there[3], forces.vy(), 1e-9, "shear force at " + x);
    }
  }

  /** w, w′, w″, w‴ at x from rest at the start, EI = 1: w⁗ = N·w″ + q. */
  private static double[] shot(double m, double v, double x, double n, double[] load) {
    FirstOrderDifferentialEquations beam =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return 4;
          }

          @Override
          public void computeDerivatives(double at, double[] y, double[] dy) {
            double part = (at - load[0]) / (load[1] - load[0]);
            double q = part >= 0 && part <= 1 ? load[2] + part * (load[3] - load[2]) : 0;
            System.arraycopy(y, 1, dy, 0, 3);
            dy[3] = n * y[2] + q;
          }
        };
    double[] y = {0, 0, m, v};
    double from = 0;
    for (double to : new double[] {load[0], load[1], 2}) {
      double end = Math.min(to, x);
      if (end > from) {
        // Steps stop at the load's ends, where the equation is not smooth.
        new DormandPrince853Integrator(1e-8, 0.1, 1e-14, 1e-13)
            .integrate(beam, from + 1e-15, y, end - 1e-15, y);
        from = end;
      }
    }
    return y;
  }

  private static double[] motions(Response response, String node) {
    Displacement d = response.displacement(node);
    return new double[] {d.ux(), d.uy(), d.uz(), d.rx() / 5, d.ry() / 5, d.rz() / 5};
  }

  private static double largest(Response response) {
    return response.frame().nodes().stream()
        .flatMapToDouble(node -> Arrays.stream(motions(response, node.name())))
        .map(Math::abs)
        .max()
        .orElseThrow();
  }

  private static double difference(Response one, Response other, double factor) {
    double largest = 0;
    for (Node node : one.frame().nodes()) {
      double[] a = motions(one, node.name());
      double[] b = motions(other, node.name());
      for (int i = 0; i < a.length; i++) {
        largest = Math.max(largest, Math.abs(a[i] - factor * b[i]));
      }
    }
    return largest;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void second_order_becomes_first_order_as_the_load_goes(long seed) {
    Frame frame = new CompressedFrames(seed).frame();
    double last = 1;
    for (double factor : new double[] {0.1, 0.01, 0.001}) {
      LoadCase loads = new CompressedFrames(seed).loaded(frame, factor);
      Response linear = Solver.of(frame).solve(loads);
      Response second = Solver.secondOrder(frame).solve(loads);
      double relative = difference(linear, second, 1) / largest(linear);
      assertTrue(relative < 0.15 * last, "seed " + seed + ": " + relative + " after " + last);
      last = relative;
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void cutting_beams_changes_nothing_where_their_normal_force_does_not_vary(long seed) {
    CompressedFrames random = new CompressedFrames(seed);
    Frame frame = random.frame();
    LoadCase loads = random.pushed(0.5);
    Response whole = Solver.secondOrder(frame).solve(loads);
    Cutting cutting = new Cutting(frame, 3);
    Response cut = Solver.secondOrder(cutting.frame()).solve(loads);
    assertTrue(difference(whole, cut, 1) < 1e-7 * largest(whole), "seed " + seed);
    for (Beam beam : frame.beams()) {
      InternalForces one = whole.forces(beam.name()).at(0.5);
      InternalForces other = cut.forces(beam.name() + ", piece 2").at(0.5);
      assertEquals(one.mz(), other.mz(), 1e-4, "seed " + seed + ", " + beam.name());
      assertEquals(one.my(), other.my(), 1e-4, "seed " + seed + ", " + beam.name());
      assertEquals(one.vy(), other.vy(), 1e-4, "seed " + seed + ", " + beam.name());
      assertEquals(one.vz(), other.vz(), 1e-4, "seed " + seed + ", " + beam.name());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void moments_change_along_a_beam_by_its_shear_force_and_equilibrium_is_kept(long seed) {
    Frame frame = new CompressedFrames(seed).frame();
    Response r = Solver.secondOrder(frame).solve(new CompressedFrames(seed).loaded(frame, 0.5));
    assertTrue(r.residual() < 1e-9);
    assertEquals(Response.Theory.SECOND_ORDER, r.theory());
    for (Beam beam : frame.beams()) {
      BeamForces forces = r.forces(beam.name());
      double step = 1e-4;
      for (double x : new double[] {0.1, 0.3, 0.5, 0.9}) {
        InternalForces a = forces.at(x - step);
        InternalForces b = forces.at(x);
        InternalForces c = forces.at(x + step);
        double run = 2 * step * forces.length();
        assertEquals(-b.vy(), (c.mz() - a.mz()) / run, 1e-3, "seed " + seed);
        assertEquals(b.vz(), (c.my() - a.my()) / run, 1e-3, "seed " + seed);
      }
      // The same curvature from the deflected shape: w″ = M/EI.
      double far = 0.01;
      double[] w = {
        across(frame, r, beam, 0.85 - far),
        across(frame, r, beam, 0.85),
        across(frame, r, beam, 0.85 + far)
      };
      double run = far * forces.length();
      double curvature = (w[0] - 2 * w[1] + w[2]) / (run * run);
      double rigidity =
          beam.material().elasticity().youngsModulus() * beam.section().properties().iy();
      double size = Math.abs(forces.at(0.85).my()) + 1;
      assertEquals(forces.at(0.85).my(), -curvature * rigidity, 1e-3 * size, "seed " + seed);
    }
  }

  private static double across(Frame frame, Response r, Beam beam, double fraction) {
    Displacement d = r.deflection(beam.name(), fraction);
    return frame.plane().toFrame(d.ux(), d.uy(), d.uz())[2];
  }

  @Test
  void beyond_the_critical_load_there_is_no_answer_and_the_motion_is_named() {
    Frame frame = span(Plane.SIDE).support(Support.fixed("A")).build();
    double p = 1.3 * Math.PI * Math.PI / 16;
    LoadCase crash = LoadCase.of("crash", new Load.AtNode("B", Wrench.force(-p, 0, 0.1)));
    assertEquals(
        "load case crash is beyond the critical load, where second order has no answer; the load"
            + " is 1.30 times the critical one, at which the frame buckles in the frame's plane,"
            + " node B moving along z most",
        assertThrows(SolveException.class, () -> Solver.secondOrder(frame).solve(crash))
            .getMessage());
  }

  @Test
  void a_rail_that_buckles_out_of_the_plane_is_found_without_any_load_out_of_it() {
    Stock flat = new Stocks(1, 0.4).with(new Stocks.Shape(1e6, 0.1, 10, 1));
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(2, 0, 0))
            .beam(Beam.rigid("rail", "A", "B", flat))
            .support(Support.fixed("A"))
            .build();
    LoadCase crash = LoadCase.of("crash", new Load.AtNode("B", Wrench.force(-0.1, 0, 0)));
    assertEquals(
        "load case crash is beyond the critical load, where second order has no answer; the load"
            + " is 1.62 times the critical one, at which the frame buckles out of the frame's"
            + " plane, node B moving along z most",
        assertThrows(SolveException.class, () -> Solver.secondOrder(frame).solve(crash))
            .getMessage());
  }

  @Test
  void a_rope_is_refused() {
    assertEquals(
        "beam beam is so slender that a pull of 0.1000 kN makes a rope of it, above 0.03750 kN; cut"
            + " it into shorter beams",
        assertThrows(
                ModelException.class,
                () -> simple(Plane.SIDE, 100, new Load.AlongBeam("beam", 0, 0, -1)))
            .getMessage());
  }

  @Test
  void a_frame_that_nothing_holds_bends_between_its_far_nodes() {
    Frame rod = span(Plane.SIDE).build();
    double p = 0.5 * Math.PI * Math.PI / 4;
    Response r =
        Solver.secondOrderUnsupported(rod)
            .solve(
                LoadCase.of(
                    "pushed",
                    new Load.AtNode("A", Wrench.force(p, 0, 1)),
                    new Load.AtNode("B", Wrench.force(-p, 0, 1)),
                    new Load.AlongBeam("beam", 0, 0, -1)));
    double u = Math.sqrt(p);
    assertEquals((1 / Math.cos(u) - 1) / (u * u), r.forces("beam").at(0.5).mz(), 1e-7);
  }

  /** The same bent frame, level and tilted: only its place in space differs. */
  @Test
  void a_frame_tilted_in_space_gives_the_answer_of_the_level_one() {
    Displacement level = tilted(0);
    Displacement steep = tilted(0.7);
    assertEquals(level.uy(), steep.uy(), 1e-9 * Math.abs(level.uy()));
    double up = -Math.sin(0.7) * steep.ux() + Math.cos(0.7) * steep.uz();
    assertEquals(level.uz(), up, 1e-9 * Math.abs(level.uz()));
  }

  private static Displacement tilted(double tilt) {
    double c = Math.cos(tilt);
    double s = Math.sin(tilt);
    Stock bar = new Stocks(200e9, 80e9).with(new Stocks.Shape(4e-4, 3e-8, 3e-8, 5e-8));
    Frame.Builder frame = Frame.rising(Plane.PLAN);
    double[][] places = {{0, 0}, {1, 0.2}, {1.8, -0.1}};
    for (int i = 0; i < places.length; i++) {
      frame.node("n" + i, new Point(c * places[i][0], places[i][1], s * places[i][0]));
      if (i > 0) {
        frame.beam(Beam.rigid("b" + i, "n" + (i - 1), "n" + i, bar));
      }
    }
    Wrench push = Wrench.force(-2000 * c - 30 * s, 40, -2000 * s + 30 * c);
    LoadCase load = LoadCase.of("push", new Load.AtNode("n2", push));
    return Solver.secondOrder(frame.support(Support.fixed("n0")).build())
        .solve(load)
        .displacement("n2");
  }
}
