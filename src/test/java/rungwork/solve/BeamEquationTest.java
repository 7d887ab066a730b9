package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

/**
 * A second route along one beam: the differential equations of a beam with shear strain,
 *
 * <pre>
 *   v' = θ + V/GA,   θ' = M/EI + κ,   M' = −V,   V' = −q
 * </pre>
 *
 * <p>integrated numerically from the start, the unknown M and V there found so that the conditions
 * at the other end hold (shooting).
 */
class BeamEquationTest {
  private static final double L = 1.7;
  private static final double FROM = 0.3;
  private static final double TO = 1.1;
  private static final double FORCE_AT = 0.8;
  private static final double MOMENT_AT = 1.35;
  private static final double E = 210e9;
  private static final double G = 80e9;
  private static final double AREA = 3e-4;
  private static final double INERTIA = 7e-8;

  /** The integrator's tolerance, and the answer's over its largest value [1]. */
  private static final double FINE = 1e-13;

  private static final double ACCURACY = 1e-9;

  private final double[] q = new double[2];
  private double force;
  private double moment;
  private double curvature;
  private double sink;
  private double startSpring;
  private double endSpring;

  private void make(long seed) {
    Random random = new Random(seed);
    q[0] = 2000 * random.nextDouble() - 1000;
    q[1] = 2000 * random.nextDouble() - 1000;
    force = 1000 * random.nextDouble();
    moment = 200 * random.nextDouble();
    curvature = 2e-3 * random.nextDouble();
    sink = 1e-3 * random.nextDouble();
    startSpring = 1e3 + 1e5 * random.nextDouble();
    endSpring = 1e3 + 1e5 * random.nextDouble();
  }

  private Response response() {
    Stock stock = new Stocks(E, G).with(new Stocks.Shape(AREA, INERTIA, INERTIA, INERTIA));
    Beam beam =
        Beam.rigid("beam", "A", "B", stock)
            .bending(Beam.Bending.WITH_SHEAR_STRAIN)
            .joined(
                End.RIGID.sprung(Release.IN_PLANE_BENDING, startSpring),
                End.RIGID.sprung(Release.IN_PLANE_BENDING, endSpring));
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(L, 0, 0))
            .beam(beam)
            .support(Support.fixed("A"))
            .support(Support.fixed("B"))
            .build();
    return Solver.of(frame)
        .solve(
            LoadCase.of(
                "all",
                new Load.AlongPart(
                    "beam", FROM, TO, new Load.PerMetre(0, q[0], 0), new Load.PerMetre(0, q[1], 0)),
                new Load.OnBeam("beam", FORCE_AT, Wrench.force(0, force, 0)),
                new Load.OnBeam("beam", MOMENT_AT, Wrench.moment(0, 0, moment)),
                new Load.Warmth("beam", 12e-6, 0, -curvature / 12e-6, 0),
                new Load.Settlement("B", Freedom.UY, sink)));
  }

  /** From the start to a place: v, θ, M, V there. */
  private double[] shoot(double startMoment, double startShear, double to) {
    double[] y = {0, startMoment / startSpring, startMoment, startShear};
    double at = 0;
    for (double stop : new double[] {FROM, FORCE_AT, TO, MOMENT_AT, L}) {
      double next = Math.min(stop, to);
      if (next > at) {
        double middle = (at + next) / 2;
        boolean loaded = middle > FROM && middle < TO;
        new DormandPrince853Integrator(1e-9, 1, FINE, FINE)
            .integrate(new Equations(loaded), at, y, next, y);
        at = next;
      }
      y[3] -= stop == FORCE_AT && stop <= to ? force : 0;
      y[2] -= stop == MOMENT_AT && stop <= to ? moment : 0;
    }
    return y;
  }

  private final class Equations implements FirstOrderDifferentialEquations {
    private final boolean loaded;

    Equations(boolean loaded) {
      this.loaded = loaded;
    }

    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public void computeDerivatives(double x, double[] y, double[] slope) {
      slope[0] = y[1] + y[3] / (G * AREA);
      slope[1] = y[2] / (E * INERTIA) + curvature;
      slope[2] = -y[3];
      slope[3] = loaded ? -q[0] - (q[1] - q[0]) * (x - FROM) / (TO - FROM) : 0;
    }
  }

  /** What is missing at the end: its place, and the moment that the spring there would take. */
  private double[] missing(double startMoment, double startShear) {
    double[] y = shoot(startMoment, startShear, L);
    return new double[] {(y[0] - sink) * 1e6, y[2] + endSpring * y[1]};
  }

  private double[] startForces() {
    double[] none = missing(0, 0);
    double[] byMoment = missing(1, 0);
    double[] byShear = missing(0, 1);
    Array2DRowRealMatrix by = new Array2DRowRealMatrix(2, 2);
    for (int i = 0; i < 2; i++) {
      by.setEntry(i, 0, byMoment[i] - none[i]);
      by.setEntry(i, 1, byShear[i] - none[i]);
    }
    double[] wanted = Arrays.stream(none).map(value -> -value).toArray();
    return new LUDecomposition(by).getSolver().solve(new ArrayRealVector(wanted)).toArray();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void forces_and_motions_along_a_beam_solve_its_differential_equations(long seed) {
    make(seed);
    double[] start = startForces();
    Response response = response();
    for (double fraction : new double[] {0, 0.1, 0.3, 0.4, 0.55, 0.62, 0.7, 0.9, 1}) {
      double[] y = shoot(start[0], start[1], fraction * L);
      Displacement moved = response.deflection("beam", fraction);
      InternalForces forces = response.forces("beam").at(fraction);
      String where = "seed " + seed + " at " + fraction;
      assertEquals(y[0], moved.uy(), ACCURACY * 1e-2, where);
      assertEquals(y[1], moved.rz(), ACCURACY * 1e-1, where);
      assertEquals(y[2], forces.mz(), ACCURACY * 1e3, where);
      assertEquals(y[3], forces.vy(), ACCURACY * 1e4, where);
    }
  }
}
