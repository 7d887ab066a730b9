package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Node;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.frame.Support;
import rungwork.frame.Wrench;

/** What must be true of any frame. It would also hold for a wrong model: see the other tests. */
class FramePropertiesTest {
  /** Rounding of two solutions of the same frame, relative to the largest motion. */
  private static final double ROUNDING = 1e-8;

  private static final End RIGID = End.RIGID;

  /** Where beams are cut in two, as a fraction of their length. */
  private static final double CUT = 0.4;

  private static double[] array(Displacement d) {
    return new double[] {d.ux(), d.uy(), d.uz(), d.rx(), d.ry(), d.rz()};
  }

  private static double[] array(InternalForces f) {
    return new double[] {f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()};
  }

  private static double[] array(Wrench w) {
    return new double[] {w.fx(), w.fy(), w.fz(), w.mx(), w.my(), w.mz()};
  }

  private static double largest(Response response) {
    return response.frame().nodes().stream()
        .flatMapToDouble(node -> java.util.Arrays.stream(array(response.displacement(node.name()))))
        .map(Math::abs)
        .max()
        .orElseThrow();
  }

  private static void assertSame(double[] expected, double[] got, double size, String where) {
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], got[i], ROUNDING * size, where + ", component " + i);
    }
  }

  private static void assertSameMotions(Response expected, Response got, String where) {
    for (Node node : expected.frame().nodes()) {
      assertSame(
          array(expected.displacement(node.name())),
          array(got.displacement(node.name())),
          largest(expected),
          where + ", node " + node.name());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void loads_and_reactions_are_in_equilibrium(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    LoadCase loads = random.all(frame);
    Response response = Solver.of(frame).solve(loads);
    Point about = new Point(1, -2, 3);
    Wrench sum = Totals.about(about, frame, loads.loads());
    for (Node node : frame.nodes()) {
      sum = sum.plus(response.reaction(node.name()).moved(node.at(), about));
    }
    double load = loads.loads().size() * 1000;
    assertEquals(0, Totals.size(sum), 1e-9 * load, "seed " + seed);
    assertTrue(response.residual() < 1e-11, () -> "seed " + seed + " " + response.residual());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void released_ends_pass_nothing_on(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    Response response = Solver.of(frame).solve(random.all(frame));
    for (Beam beam : frame.beams()) {
      BeamForces forces = response.forces(beam.name());
      for (Release release : Release.values()) {
        String where = "seed " + seed + ", " + beam.name() + ", " + release.force();
        if (beam.startReleases().contains(release)) {
          assertEquals(0, array(forces.at(0))[release.ordinal()], 1e-5, where);
        }
        if (beam.endReleases().contains(release)) {
          assertEquals(0, array(forces.at(1))[release.ordinal()], 1e-5, where);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void moments_change_along_a_beam_by_the_shear_forces(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    Response response = Solver.of(frame).solve(random.forces(frame));
    for (Beam beam : frame.beams()) {
      BeamForces forces = response.forces(beam.name());
      for (double at = 0.03; at < 1; at += 0.09) {
        if (smooth(forces, at, at + 0.01)) {
          InternalForces a = forces.at(at);
          InternalForces b = forces.at(at + 0.005);
          InternalForces c = forces.at(at + 0.01);
          // Simpson's rule is exact for a shear force of the second degree.
          double sixth = 0.01 * forces.length() / 6;
          assertEquals(-sixth * (a.vy() + 4 * b.vy() + c.vy()), c.mz() - a.mz(), 1e-8);
          assertEquals(sixth * (a.vz() + 4 * b.vz() + c.vz()), c.my() - a.my(), 1e-8);
        }
      }
    }
  }

  private static boolean smooth(BeamForces forces, double from, double to) {
    return forces.stations().stream().noneMatch(station -> station >= from && station <= to);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void no_cut_has_more_than_the_extremes(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    Response response = Solver.of(frame).solve(random.all(frame));
    for (Beam beam : frame.beams()) {
      BeamForces forces = response.forces(beam.name());
      for (int i = 0; i < 6; i++) {
        int which = i;
        double most = forces.largest(f -> array(f)[which]).value();
        double least = forces.smallest(f -> array(f)[which]).value();
        for (int cut = 0; cut <= 200; cut++) {
          double value = array(forces.at(cut / 200.0))[i];
          assertTrue(
              value <= most + 1e-6 && value >= least - 1e-6,
              beam.name() + " at " + cut + ", force " + i);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void no_point_of_a_beam_moves_farther_than_the_farthest(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    Response response = Solver.of(frame).solve(random.all(frame));
    for (Beam beam : frame.beams()) {
      for (Freedom motion : Freedom.values()) {
        BeamForces.Extreme farthest = response.farthest(beam.name(), motion);
        double there = response.deflection(beam.name(), farthest.fraction()).along(motion);
        assertEquals(there, farthest.value(), 1e-15);
        for (int cut = 0; cut <= 100; cut++) {
          double value = response.deflection(beam.name(), cut / 100.0).along(motion);
          assertTrue(
              Math.abs(value) <= Math.abs(there) * (1 + 1e-12),
              "seed " + seed + ", " + beam.name() + " at " + cut + ", " + motion);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
  void two_load_cases_do_the_same_work_on_each_other(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    LoadCase one = random.wrenchesAnywhere(frame);
    LoadCase other = random.wrenchesAnywhere(frame);
    List<Response> both = Solver.of(frame).solve(List.of(one, other));
    double there = work(one, both.get(1));
    double back = work(other, both.get(0));
    double size = work(one, both.get(0)) + work(other, both.get(1));
    assertEquals(there, back, 1e-9 * size, "seed " + seed);
  }

  private static double work(LoadCase loads, Response response) {
    double work = 0;
    for (Load load : loads.loads()) {
      double[] force = array(wrench(load));
      double[] motion = array(motion(load, response));
      for (int i = 0; i < force.length; i++) {
        work += force[i] * motion[i];
      }
    }
    return work;
  }

  private static Wrench wrench(Load load) {
    return load instanceof Load.OnBeam on ? on.wrench() : ((Load.AtNode) load).wrench();
  }

  private static Displacement motion(Load load, Response response) {
    if (load instanceof Load.OnBeam on) {
      Frame frame = response.frame();
      return response.deflection(on.beam(), on.from() / frame.length(frame.beam(on.beam())));
    }
    return response.displacement(((Load.AtNode) load).node());
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35, 36})
  void loads_together_do_what_they_do_one_by_one(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    LoadCase one = random.all(frame);
    LoadCase other = random.all(frame);
    List<Load> together = new ArrayList<>(one.loads());
    together.addAll(other.loads());
    Solver solver = Solver.of(frame);
    Response a = solver.solve(one);
    Response b = solver.solve(other);
    Response sum = solver.solve(LoadCase.of("both", together.toArray(Load[]::new)));
    for (Beam beam : frame.beams()) {
      double[] added = array(a.forces(beam.name()).at(0.3).plus(b.forces(beam.name()).at(0.3)));
      assertSame(added, array(sum.forces(beam.name()).at(0.3)), 1e4, "seed " + seed);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44, 45, 46})
  void the_order_of_nodes_and_beams_does_not_matter(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    LoadCase loads = random.all(frame);
    List<Node> nodes = new ArrayList<>(frame.nodes());
    List<Beam> beams = new ArrayList<>(frame.beams());
    Collections.shuffle(nodes, new Random(seed));
    Collections.shuffle(beams, new Random(seed));
    Frame.Builder shuffled = Frame.in(frame.plane());
    nodes.forEach(shuffled::node);
    beams.forEach(shuffled::beam);
    frame.supports().forEach(shuffled::support);
    assertSameMotions(
        Solver.of(frame).solve(loads), Solver.of(shuffled.build()).solve(loads), "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {51, 52, 53, 54, 55, 56, 57, 58})
  void cutting_every_beam_in_two_changes_nothing(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame frame = random.jointed(random.frame());
    LoadCase loads = random.all(frame);
    Response whole = Solver.of(frame).solve(loads);
    Response cut = Solver.of(cut(frame)).solve(new CutLoads(frame, CUT).of(loads));
    assertSameMotions(whole, cut, "seed " + seed);
    for (Beam beam : frame.beams()) {
      String where = "seed " + seed + ", beam " + beam.name();
      assertSame(
          array(cut.displacement(beam.name() + " cut")),
          array(whole.deflection(beam.name(), CUT)),
          largest(whole),
          where);
      assertSame(
          array(cut.deflection(beam.name() + " 2", 0.5)),
          array(whole.deflection(beam.name(), 0.7)),
          largest(whole),
          where);
      assertSame(
          array(cut.forces(beam.name() + " 2").at(0.5)),
          array(whole.forces(beam.name()).at(0.7)),
          1e4,
          where);
    }
  }

  private static Frame cut(Frame frame) {
    Frame.Builder cut = Frame.in(frame.plane());
    frame.nodes().forEach(cut::node);
    for (Beam beam : frame.beams()) {
      Point a = frame.startOf(beam);
      Point b = frame.endOf(beam);
      String middle = beam.name() + " cut";
      cut.node(middle, a.plus(CUT * (b.x() - a.x()), CUT * (b.y() - a.y()), CUT * (b.z() - a.z())));
      cut.beam(
          beam.between(beam.name() + " 1", beam.start(), middle).joined(beam.atStart(), RIGID));
      cut.beam(beam.between(beam.name() + " 2", middle, beam.end()).joined(RIGID, beam.atEnd()));
    }
    frame.supports().forEach(cut::support);
    return cut.build();
  }

  @ParameterizedTest
  @ValueSource(longs = {61, 62, 63, 64, 65, 66})
  void turning_the_frame_in_its_plane_turns_the_answer(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame given = random.jointed(random.frame());
    Frame frame = given.on(List.of(Support.fixed("N00"), Support.pinned("N31")));
    LoadCase loads = random.all(frame);
    double angle = seed;
    Frame turned = turned(frame, angle);
    Response before = Solver.of(frame).solve(loads);
    Response after = Solver.of(turned).solve(turned(loads, frame.plane(), angle));
    Turn turn = new Turn(frame.plane(), angle);
    for (Node node : frame.nodes()) {
      Displacement d = before.displacement(node.name());
      double[] move = turn.apply(new double[] {d.ux(), d.uy(), d.uz()});
      double[] spin = turn.apply(new double[] {d.rx(), d.ry(), d.rz()});
      double[] expected = {move[0], move[1], move[2], spin[0], spin[1], spin[2]};
      assertSame(
          expected,
          array(after.displacement(node.name())),
          largest(before),
          "seed " + seed + ", node " + node.name());
    }
  }

  private record Turn(Plane plane, double angle) implements UnaryOperator<double[]> {
    @Override
    public double[] apply(double[] v) {
      double[] f = plane.toFrame(v[0], v[1], v[2]);
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      return plane.toVehicle(c * f[0] - s * f[1], s * f[0] + c * f[1], f[2]);
    }
  }

  private static Frame turned(Frame frame, double angle) {
    Turn turn = new Turn(frame.plane(), angle);
    Frame.Builder turned = Frame.in(frame.plane());
    for (Node node : frame.nodes()) {
      double[] at = turn.apply(new double[] {node.at().x(), node.at().y(), node.at().z()});
      turned.node(node.name(), new Point(at[0], at[1], at[2]));
    }
    frame.beams().stream()
        .map(beam -> beam.joined(turned(beam.atStart(), turn), turned(beam.atEnd(), turn)))
        .forEach(turned::beam);
    frame.supports().forEach(turned::support);
    return turned.build();
  }

  private static End turned(End end, Turn turn) {
    double[] arm = turn.apply(new double[] {end.arm().x(), end.arm().y(), end.arm().z()});
    return end.armed(arm[0], arm[1], arm[2]);
  }

  private static LoadCase turned(LoadCase loads, Plane plane, double angle) {
    Turn turn = new Turn(plane, angle);
    List<Load> turned = new ArrayList<>();
    for (Load load : loads.loads()) {
      if (load instanceof Load.AtNode atNode) {
        turned.add(new Load.AtNode(atNode.node(), turned(atNode.wrench(), turn)));
      } else if (load instanceof Load.OnBeam on) {
        turned.add(new Load.OnBeam(on.beam(), on.from(), turned(on.wrench(), turn)));
      } else if (load instanceof Load.AlongBeam along) {
        double[] w = turn.apply(new double[] {along.wx(), along.wy(), along.wz()});
        turned.add(new Load.AlongBeam(along.beam(), w[0], w[1], w[2]));
      } else if (load instanceof Load.AlongPart part) {
        turned.add(
            new Load.AlongPart(
                part.beam(),
                part.from(),
                part.to(),
                turned(part.first(), turn),
                turned(part.last(), turn)));
      } else if (load instanceof Load.Settlement settlement) {
        turned.addAll(turned(settlement, turn));
      } else {
        turned.add(load);
      }
    }
    return LoadCase.of("turned", turned.toArray(Load[]::new));
  }

  private static Wrench turned(Wrench wrench, Turn turn) {
    double[] f = turn.apply(new double[] {wrench.fx(), wrench.fy(), wrench.fz()});
    double[] m = turn.apply(new double[] {wrench.mx(), wrench.my(), wrench.mz()});
    return new Wrench(f[0], f[1], f[2], m[0], m[1], m[2]);
  }

  private static Load.PerMetre turned(Load.PerMetre force, Turn turn) {
    double[] w = turn.apply(new double[] {force.wx(), force.wy(), force.wz()});
    return new Load.PerMetre(w[0], w[1], w[2]);
  }

  private static List<Load> turned(Load.Settlement settlement, Turn turn) {
    int motion = settlement.motion().ordinal();
    double[] unit = new double[3];
    unit[motion % 3] = settlement.amount();
    double[] moved = turn.apply(unit);
    List<Load> parts = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      if (Math.abs(moved[i]) > 1e-18) {
        Freedom way = Freedom.values()[motion / 3 * 3 + i];
        parts.add(new Load.Settlement(settlement.node(), way, moved[i]));
      }
    }
    return parts;
  }
}
