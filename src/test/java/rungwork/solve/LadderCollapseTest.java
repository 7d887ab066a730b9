package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.material.Material;
import rungwork.section.Section;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Balance;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;
import rungwork.vehicle.VehicleBuilder;

/**
 * A ladder with random masses, hit in front, nothing holding it: the pushover's collapse against
 * the largest load in equilibrium with forces that no beam refuses (linear programming), and
 * against the work of its own way to collapse.
 */
class LadderCollapseTest {
  private static final Stock TUBE =
      new Stock(Section.squareTube(mm(50), mm(3)), Material.named("S235JRH"));

  /** Each force alone, so that the simplex method comes to an end. */
  private static final double[] ALONE = {127e3, 2.4e3, 5.9e3, 5.9e3};

  private static final YieldSurface BOX = box();

  private static YieldSurface box() {
    List<YieldSurface.Face> faces = new ArrayList<>();
    for (int sign = -1; sign <= 1; sign += 2) {
      faces.add(new YieldSurface.Face(sign / ALONE[0], 0, 0, 0, 1));
      faces.add(new YieldSurface.Face(0, 0, 0, sign / ALONE[1], 1));
      faces.add(new YieldSurface.Face(0, sign / ALONE[2], 0, 0, 1));
      faces.add(new YieldSurface.Face(0, 0, sign / ALONE[3], 0, 1));
    }
    return new YieldSurface(faces);
  }

  private static Ladder ladder() {
    return Ladder.named("ladder")
        .level(mm(400))
        .rails(mm(300), mm(-2200), mm(700), TUBE)
        .crossmember("front", mm(300), TUBE)
        .crossmember("middle", mm(-900), TUBE)
        .crossmember("rear", mm(-2200), TUBE)
        .build();
  }

  private static Vehicle vehicle(Random random) {
    VehicleBuilder parts =
        Vehicle.named("random")
            .wheelbase(mm(2000))
            .track(mm(1200), mm(1200))
            .frontRollShare(0.5)
            .mass(
                "middle", kg(any(random, 50, 150)), at(random, -900), "middle left", "middle right")
            .mass("rear", kg(any(random, 50, 150)), at(random, -1800), "rear left", "rear right")
            .mass("front", kg(any(random, 50, 150)), at(random, 100), "front left", "front right");
    for (Side side : Side.values()) {
      parts
          .wheel(Axle.FRONT, side, "front " + side.word())
          .wheel(Axle.REAR, side, "rear " + side.word());
    }
    return parts.build();
  }

  private static double any(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static Point at(Random random, double x) {
    return Point.at(mm(x), mm(any(random, -200, 200)), mm(any(random, 350, 700)));
  }

  @ParameterizedTest(name = "seed {0}, {1}")
  @CsvSource({"1,LEFT_TIP", "2,FULL_WIDTH", "3,CENTRE", "4,RIGHT_TIP"})
  void a_ladder_collapses_at_both_bounds_and_twice_the_strength_takes_twice(
      long seed, Event.Hit hit) {
    Ladder ladder = ladder();
    Vehicle vehicle = vehicle(new Random(seed)).on(ladder);
    Event event = Event.frontalImpact(g(1), hit);
    LoadCase load = Balance.of(event, vehicle, ladder).growing().get(0).impact();
    Frame frame = ladder.frame(Joints.RIGID);
    LoadCase nothing = LoadCase.of("nothing");

    Pushover once = Pushover.unsupported(frame, beam -> BOX, nothing, load);
    Pushover twice = Pushover.unsupported(frame, beam -> BOX.times(2), nothing, load);

    assertEquals(2, twice.collapseFactor() / once.collapseFactor(), 1e-7);
    assertEquals(1, once.collapseFactor() / statically(frame, load), 1e-5);
    double work = 0;
    List<Pushover.Stage> stages = once.stages();
    for (Pushover.Place hinge : stages.get(stages.size() - 1).hinges()) {
      Pushover.Yielding way = once.yielding(hinge);
      work +=
          ALONE[0] * Math.abs(way.stretch())
              + ALONE[1] * Math.abs(way.twist())
              + ALONE[2] * Math.abs(way.turnY())
              + ALONE[3] * Math.abs(way.turnZ());
    }
    assertEquals(once.collapseFactor(), work, 1e-5 * work, "kinematic: for a unit of travel");
    for (Beam beam : frame.beams()) {
      for (int end = 0; end < 2; end++) {
        InternalForces f = once.forces(beam.name(), end);
        assertTrue(BOX.use(f.n(), f.my(), f.mz(), f.t()) < 1 + 1e-6, beam.name());
      }
    }
  }

  private static double statically(Frame frame, LoadCase load) {
    Structure structure = new Structure(frame, new FreeMotion(frame).holds());
    double[] nodal = nodal(structure, load);
    int members = structure.members().size();
    int size = Member.DEFORMATIONS * members + 1;
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int motion = 0; motion < nodal.length; motion++) {
      if (structure.held(motion)) {
        continue;
      }
      double[] row = new double[size];
      for (int m = 0; m < members; m++) {
        int[] places = structure.places(m);
        for (int j = 0; j < places.length; j++) {
          for (int i = 0; places[j] == motion && i < Member.DEFORMATIONS; i++) {
            row[Member.DEFORMATIONS * m + i] =
                structure.members().get(m).deformationsByMotions()[i][j] * alone(i) / 1e3;
          }
        }
      }
      row[size - 1] = -nodal[motion] / 1e3;
      constraints.add(new LinearConstraint(row, Relationship.EQ, 0));
    }
    for (int i = 0; i < size - 1; i++) {
      double[] row = new double[size];
      row[i] = 1;
      constraints.add(new LinearConstraint(row, Relationship.LEQ, 1));
      constraints.add(new LinearConstraint(row, Relationship.GEQ, -1));
    }
    double[] goal = new double[size];
    goal[size - 1] = 1;
    double[] best =
        new SimplexSolver()
            .optimize(
                new MaxIter(100_000),
                new LinearObjectiveFunction(goal, 0),
                new LinearConstraintSet(constraints),
                GoalType.MAXIMIZE,
                new NonNegativeConstraint(false))
            .getPoint();
    return DoubleStream.of(best).skip(size - 1L).sum();
  }

  /** N, T, Mz at both ends, My at both ends. */
  private static double alone(int deformation) {
    return deformation == 0
        ? ALONE[0]
        : deformation == 1 ? ALONE[1] : deformation < 4 ? ALONE[3] : ALONE[2];
  }

  private static double[] nodal(Structure structure, LoadCase loads) {
    double[] nodal = new double[structure.motions()];
    for (Load load : loads.loads()) {
      if (load instanceof Load.AtNode at) {
        add(structure, nodal, at.node(), at.wrench());
      } else if (load instanceof Load.AlongPart along) {
        Beam beam = structure.frame().beam(along.beam());
        double sixth = structure.frame().length(beam) / 6;
        Load.PerMetre first = along.first();
        Load.PerMetre last = along.last();
        add(
            structure,
            nodal,
            beam.start(),
            resultant(first, 2 * sixth).plus(resultant(last, sixth)));
        add(structure, nodal, beam.end(), resultant(first, sixth).plus(resultant(last, 2 * sixth)));
      } else {
        throw new AssertionError(load);
      }
    }
    return nodal;
  }

  private static Wrench resultant(Load.PerMetre load, double length) {
    return Wrench.force(load.wx() * length, load.wy() * length, load.wz() * length);
  }

  private static void add(Structure structure, double[] nodal, String node, Wrench wrench) {
    double[] forces = structure.frame().plane().toFrame(wrench);
    for (int i = 0; i < 6; i++) {
      nodal[6 * structure.node(node) + i] += forces[i];
    }
  }
}
