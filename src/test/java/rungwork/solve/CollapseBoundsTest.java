package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

/**
 * The collapse load against both bounds, each by linear programming: the largest load in
 * equilibrium with forces that no beam refuses, which the pushover meets; and a load that does the
 * work of a way to collapse. The second programme has many equal ways, and the simplex method stops
 * short of the least on some: what it finds is still a bound from above. That the pushover's own
 * way to collapse meets its load, the pushover itself makes sure of.
 */
class CollapseBoundsTest {
  /** The pushover keeps to its surfaces within 1e-9 a step, the simplex method to 1e-6. */
  private static final double AGREEMENT = 1e-5;

  /** A force of the frame's own size [N]: the simplex method wants numbers near one. */
  private static final double FORCE = 100;

  private static final Stock TUBE =
      new Stock(Section.squareTube(mm(50), mm(3)), Material.named("S235JRH"));
  private static final YieldSurface SURFACE =
      YieldSurface.around(TUBE.section(), 235e6, plainWays());

  /** Few ways to yield, so that the simplex method comes to an end; no shares of twist. */
  private static List<double[]> plainWays() {
    return YieldSurface.ways(1).stream()
        .filter(way -> way[3] == 0 || Math.abs(way[3]) == 1)
        .toList();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void a_random_bent_frame_collapses_between_the_bounds(long seed) {
    Random random = new Random(seed);
    Frame frame = bent(random);
    Wrench push = new Wrench(value(random), value(random), value(random), 0, 0, value(random) / 3);
    LoadCase load = LoadCase.of("push", new Load.AtNode("b", push), new Load.AtNode("c", push));

    Pushover pushover = Pushover.of(frame, beam -> SURFACE, LoadCase.of("nothing"), load);

    Structure structure = new Structure(frame, frame.supports());
    double[] nodal = new double[structure.motions()];
    for (String node : List.of("b", "c")) {
      double[] wrench = frame.plane().toFrame(push);
      for (int i = 0; i < 6; i++) {
        nodal[6 * structure.node(node) + i] = wrench[i] / FORCE;
      }
    }
    assertEquals(1, pushover.collapseFactor() / statically(structure, nodal), AGREEMENT);
    double above = kinematically(structure, nodal);
    assertTrue(
        pushover.collapseFactor() <= above * (1 + AGREEMENT),
        pushover.collapseFactor() + " lies above " + above);
    for (Beam beam : frame.beams()) {
      for (int end = 0; end < 2; end++) {
        InternalForces forces = pushover.forces(beam.name(), end);
        assertTrue(
            SURFACE.use(forces.n(), forces.my(), forces.mz(), forces.t()) < 1 + 1e-6,
            beam.name() + " is beyond its surface");
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void twice_the_strength_carries_twice_the_load(long seed) {
    Random random = new Random(seed);
    Frame frame = bent(random);
    LoadCase load =
        LoadCase.of("push", new Load.AtNode("c", Wrench.force(value(random), value(random), 700)));
    double once =
        Pushover.of(frame, beam -> SURFACE, LoadCase.of("nothing"), load).collapseFactor();
    double twice =
        Pushover.of(frame, beam -> SURFACE.times(2), LoadCase.of("nothing"), load).collapseFactor();
    assertEquals(2, twice / once, 1e-7);
  }

  private static double value(Random random) {
    return 1000 * (random.nextDouble() - 0.5);
  }

  private static Frame bent(Random random) {
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(0.7 + random.nextDouble(), 0.2 * random.nextDouble(), 0))
            .node("c", new Point(0.7 + random.nextDouble(), 0.7 + 0.3 * random.nextDouble(), 0))
            .node("d", new Point(0, 0.9, 0));
    frame.beam(Beam.rigid("ab", "a", "b", TUBE));
    frame.beam(Beam.rigid("bc", "b", "c", TUBE));
    frame.beam(Beam.rigid("cd", "c", "d", TUBE));
    return frame.support(Support.fixed("a")).support(Support.fixed("d")).build();
  }

  private static double statically(Structure structure, double[] load) {
    int forces = Member.DEFORMATIONS * structure.members().size();
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int motion = 0; motion < load.length; motion++) {
      if (!structure.held(motion)) {
        double[] row = new double[forces + 1];
        for (int m = 0; m < structure.members().size(); m++) {
          for (int i = 0; i < Member.DEFORMATIONS; i++) {
            row[Member.DEFORMATIONS * m + i] = byMotion(structure, m, i, motion);
          }
        }
        row[forces] = -load[motion];
        constraints.add(new LinearConstraint(row, Relationship.EQ, 0));
      }
    }
    for (int m = 0; m < structure.members().size(); m++) {
      for (double[] normal : normals()) {
        double[] row = new double[forces + 1];
        System.arraycopy(normal, 0, row, Member.DEFORMATIONS * m, Member.DEFORMATIONS);
        constraints.add(new LinearConstraint(row, Relationship.LEQ, normal[6]));
      }
    }
    double[] goal = new double[forces + 1];
    goal[forces] = 1;
    return optimum(goal, constraints, GoalType.MAXIMIZE);
  }

  private static double kinematically(Structure structure, double[] load) {
    List<double[]> normals = normals();
    int members = structure.members().size();
    int flows = normals.size() * members;
    int size = flows + 2 * load.length;
    List<LinearConstraint> constraints = new ArrayList<>();
    double[] power = new double[size];
    for (int m = 0; m < members; m++) {
      for (int i = 0; i < Member.DEFORMATIONS; i++) {
        double[] row = new double[size];
        for (int f = 0; f < normals.size(); f++) {
          row[normals.size() * m + f] = -normals.get(f)[i];
        }
        for (int motion = 0; motion < load.length; motion++) {
          if (!structure.held(motion)) {
            row[flows + 2 * motion] = byMotion(structure, m, i, motion);
            row[flows + 2 * motion + 1] = -row[flows + 2 * motion];
          }
        }
        constraints.add(new LinearConstraint(row, Relationship.EQ, 0));
      }
    }
    for (int motion = 0; motion < load.length; motion++) {
      power[flows + 2 * motion] = load[motion];
      power[flows + 2 * motion + 1] = -load[motion];
    }
    constraints.add(new LinearConstraint(power, Relationship.EQ, 1));
    double[] work = new double[size];
    for (int i = 0; i < flows; i++) {
      work[i] = normals.get(i % normals.size())[6];
    }
    return new SimplexSolver()
        .optimize(
            new MaxIter(100_000),
            new LinearObjectiveFunction(work, 0),
            new LinearConstraintSet(constraints),
            GoalType.MINIMIZE,
            new NonNegativeConstraint(true))
        .getValue();
  }

  private static double byMotion(Structure structure, int member, int deformation, int motion) {
    int[] places = structure.places(member);
    for (int j = 0; j < places.length; j++) {
      if (places[j] == motion) {
        return structure.members().get(member).deformationsByMotions()[deformation][j];
      }
    }
    return 0;
  }

  /** Faces at both ends in the forces of a member's deformations, the reach last. */
  private static List<double[]> normals() {
    List<double[]> normals = new ArrayList<>();
    for (YieldSurface.Face f : SURFACE.faces()) {
      double n = FORCE * f.n();
      double t = FORCE * f.t();
      double y = FORCE * f.y();
      double z = FORCE * f.z();
      normals.add(new double[] {n, t, -z, 0, -y, 0, f.reach()});
      normals.add(new double[] {n, t, 0, z, 0, y, f.reach()});
    }
    return normals;
  }

  private static double optimum(
      double[] goal, List<LinearConstraint> constraints, GoalType goalType) {
    double[] point =
        new SimplexSolver()
            .optimize(
                new MaxIter(100_000),
                new LinearObjectiveFunction(goal, 0),
                new LinearConstraintSet(constraints),
                goalType,
                new NonNegativeConstraint(false))
            .getPoint();
    return Arrays.stream(point).skip(point.length - 1L).sum();
  }
}
