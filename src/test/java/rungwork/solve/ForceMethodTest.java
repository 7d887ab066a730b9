package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
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

/**
 * A second route for a redundant frame: the force method. A portal with an inclined leg is cut
 * loose at one base, which leaves a bent cantilever; the three forces there are those that bring
 * the base to its settled place, by virtual work over the whole length, integrated numerically.
 */
class ForceMethodTest {
  private static final double[][] CORNERS = {{0, 0}, {0.5, 3}, {4, 3.2}, {4, 0}};
  private static final String[] NAMES = {"left", "beam", "right"};

  /** EA, GA and EI of the three members. */
  private static final double[][] RIGIDITY = {{60, 24, 1}, {80, 32, 2}, {60, 24, 1}};

  private static final double[] SETTLED = {0.02, -0.05, 0.01};

  /** A force F at a place, or a moment: along x, along y, about z. */
  private record Push(int member, double from, double fx, double fy, double mz) {}

  private static final List<Push> PUSHES =
      List.of(new Push(0, 1.2, 0.7, 0, 0), new Push(1, 2.1, 0, -1.3, 0), new Push(2, 0.9, 0, 0, 2));

  /** Down on the beam, from nothing at 0.5 to 0.9 at 3. */
  private static final double FROM = 0.5;

  private static final double TO = 3;
  private static final double MOST = 0.9;

  /** Strain of the warmed left leg, and curvature of the beam that is warmer above. */
  private static final double STRETCH = 0.003;

  private static final double CURVATURE = -0.004;

  private static double length(int member) {
    return Math.hypot(
        CORNERS[member + 1][0] - CORNERS[member][0], CORNERS[member + 1][1] - CORNERS[member][1]);
  }

  private static double[] way(int member) {
    return new double[] {
      (CORNERS[member + 1][0] - CORNERS[member][0]) / length(member),
      (CORNERS[member + 1][1] - CORNERS[member][1]) / length(member)
    };
  }

  private static double[] place(int member, double from) {
    double[] way = way(member);
    return new double[] {CORNERS[member][0] + from * way[0], CORNERS[member][1] + from * way[1]};
  }

  /** N, V, M at a cut by forces at a place beyond it. */
  private static double[] cut(int member, double x, double[] place, double[] push) {
    double[] here = place(member, x);
    double[] way = way(member);
    double moment = push[2] + (place[0] - here[0]) * push[1] - (place[1] - here[1]) * push[0];
    return new double[] {
      push[0] * way[0] + push[1] * way[1], push[1] * way[0] - push[0] * way[1], moment
    };
  }

  private static double[] byBase(int member, double x, int which) {
    double[] unit = new double[3];
    unit[which] = 1;
    return cut(member, x, CORNERS[3], unit);
  }

  private static double[] byLoads(int member, double x) {
    double[] sum = new double[3];
    for (Push push : PUSHES) {
      if (push.member > member || push.member == member && push.from > x) {
        double[] by = {push.fx, push.fy, push.mz};
        add(sum, cut(member, x, place(push.member, push.from), by));
      }
    }
    if (member <= 1) {
      add(sum, byTriangle(member, x));
    }
    return sum;
  }

  /** What of the triangle lies beyond a cut: a triangle and a rectangle. */
  private static double[] byTriangle(int member, double x) {
    double from = member == 1 ? Math.min(Math.max(x, FROM), TO) : FROM;
    double low = MOST * (from - FROM) / (TO - FROM);
    double run = TO - from;
    double[] sum = cut(member, x, place(1, from + run / 2), new double[] {0, -low * run, 0});
    double[] top = {0, -(MOST - low) * run / 2, 0};
    add(sum, cut(member, x, place(1, from + run * 2 / 3), top));
    return sum;
  }

  private static void add(double[] sum, double[] part) {
    Arrays.setAll(sum, i -> sum[i] + part[i]);
  }

  /** Motion of the base along or about one way by the internal forces of another state. */
  private static double work(int which, State state) {
    double sum = 0;
    for (int member = 0; member < 3; member++) {
      double[] stops = {0, 0.5, 0.9, 1.2, 2.1, 3, length(member)};
      for (int i = 1; i < stops.length; i++) {
        int m = member;
        double from = stops[i - 1];
        double to = Math.min(stops[i], length(m));
        if (to > from) {
          sum +=
              new IterativeLegendreGaussIntegrator(4, 1e-12, 1e-12)
                  .integrate(1000, x -> density(m, x, which, state), from, to);
        }
      }
    }
    return sum;
  }

  private static double density(int member, double x, int which, State state) {
    double[] virtual = byBase(member, x, which);
    double[] strain = state.strains(member, x);
    return virtual[0] * strain[0] + virtual[1] * strain[1] + virtual[2] * strain[2];
  }

  /** Strains along the frame: stretch, shear, curvature. */
  private interface State {
    double[] strains(int member, double x);
  }

  private static double[] strains(int member, double[] forces) {
    double[] strains = new double[3];
    Arrays.setAll(strains, i -> forces[i] / RIGIDITY[member][i]);
    return strains;
  }

  private static double[] strainsByLoads(int member, double x) {
    double[] strains = strains(member, byLoads(member, x));
    strains[0] += member == 0 ? STRETCH : 0;
    strains[2] += member == 1 ? CURVATURE : 0;
    return strains;
  }

  /** Fx, Fy, M on the base that was cut loose. */
  private static double[] redundants() {
    Array2DRowRealMatrix flexibility = new Array2DRowRealMatrix(3, 3);
    double[] missing = new double[3];
    for (int i = 0; i < 3; i++) {
      missing[i] = SETTLED[i] - work(i, ForceMethodTest::strainsByLoads);
      for (int j = 0; j < 3; j++) {
        int which = j;
        flexibility.setEntry(i, j, work(i, (m, x) -> strains(m, byBase(m, x, which))));
      }
    }
    return new LUDecomposition(flexibility)
        .getSolver()
        .solve(new ArrayRealVector(missing))
        .toArray();
  }

  private static Response solved() {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i < CORNERS.length; i++) {
      frame.node("" + i, new Point(CORNERS[i][0], CORNERS[i][1], 0));
    }
    for (int i = 0; i < 3; i++) {
      // E = 1 and G = 0.4: the area serves both EA and GA.
      double[] r = RIGIDITY[i];
      Stock stock = new Stocks(1, 0.4).with(new Stocks.Shape(r[0], r[2], r[2], 1));
      frame.beam(
          Beam.rigid(NAMES[i], "" + i, "" + (i + 1), stock)
              .bending(Beam.Bending.WITH_SHEAR_STRAIN));
    }
    frame.support(Support.fixed("0")).support(Support.fixed("3"));
    return Solver.of(frame.build())
        .solve(
            LoadCase.of(
                "all",
                new Load.OnBeam("left", 1.2, Wrench.force(0.7, 0, 0)),
                new Load.OnBeam("beam", 2.1, Wrench.force(0, -1.3, 0)),
                new Load.OnBeam("right", 0.9, Wrench.moment(0, 0, 2)),
                new Load.AlongPart(
                    "beam", FROM, TO, Load.PerMetre.NONE, new Load.PerMetre(0, -MOST, 0)),
                Load.Warmth.uniform("left", 1e-5, STRETCH / 1e-5),
                new Load.Warmth("beam", 1e-5, 0, -CURVATURE / 1e-5, 0),
                new Load.Settlement("3", Freedom.UX, SETTLED[0]),
                new Load.Settlement("3", Freedom.UY, SETTLED[1]),
                new Load.Settlement("3", Freedom.RZ, SETTLED[2])));
  }

  @Test
  void a_redundant_portal_agrees_with_the_force_method() {
    double[] base = redundants();
    Response response = solved();
    Wrench reaction = response.reaction("3");
    assertEquals(base[0], reaction.fx(), 1e-9);
    assertEquals(base[1], reaction.fy(), 1e-9);
    assertEquals(base[2], reaction.mz(), 1e-9);
    for (int member = 0; member < 3; member++) {
      for (double fraction : new double[] {0, 0.17, 0.45, 0.77, 1}) {
        double x = fraction * length(member);
        double[] expected = byLoads(member, x);
        for (int i = 0; i < 3; i++) {
          double[] part = byBase(member, x, i);
          int which = i;
          Arrays.setAll(part, j -> part[j] * base[which]);
          add(expected, part);
        }
        InternalForces f = response.forces(NAMES[member]).at(fraction);
        assertEquals(expected[0], f.n(), 1e-9, NAMES[member] + " N at " + fraction);
        assertEquals(expected[1], f.vy(), 1e-9, NAMES[member] + " V at " + fraction);
        assertEquals(expected[2], f.mz(), 1e-9, NAMES[member] + " M at " + fraction);
      }
    }
  }
}
