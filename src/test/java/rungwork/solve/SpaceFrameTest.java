package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
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

/** The two flat actions against one coupled three-dimensional frame. */
class SpaceFrameTest {
  /** Both routes round; their matrices have condition numbers of about 1e7. */
  private static final double ROUNDING = 1e-8;

  private static final Stock CHANNEL =
      new Stocks(210e9, 80.77e9)
          .eccentric(new Stocks.Shape(447e-6, 4.5e-7, 7.2e-8, 1.34e-9), 0.0242);

  private static final List<Support> WHEELS =
      List.of(
          Support.fixed("R0"),
          Support.holding("L0", Freedom.UY, Freedom.UZ),
          Support.spring("R3", Freedom.UZ, 3e4),
          Support.spring("L3", Freedom.RX, 2e3));

  private static List<Load.AtNode> hits(Frame frame) {
    Random random = new Random(5);
    List<Load.AtNode> loads = new ArrayList<>();
    for (Node node : frame.nodes()) {
      double[] w = random.doubles(6, -500, 500).toArray();
      Wrench offPlane = new Wrench(w[0], w[1], w[2], w[3] / 5, w[4] / 5, w[5] / 5);
      Point offset = node.at().plus(0.05, -0.04, 0.12);
      loads.add(new Load.AtNode(node.name(), offPlane.moved(offset, node.at())));
    }
    return loads;
  }

  private static void assertAgree(Frame frame) {
    assertAgree(frame, hits(frame));
  }

  private static void assertAgree(Frame frame, List<? extends Load> loads) {
    Response flat = Solver.of(frame).solve(LoadCase.of("hits", loads.toArray(Load[]::new)));
    SpaceFrame space = new SpaceFrame(frame, loads);
    for (Node node : frame.nodes()) {
      Displacement d = flat.displacement(node.name());
      double[] got = {d.ux(), d.uy(), d.uz(), d.rx(), d.ry(), d.rz()};
      assertAgree(space.motion(node.name()), got, node.name());
    }
    for (Beam beam : frame.beams()) {
      InternalForces f = flat.forces(beam.name()).at(1);
      double[] got = {f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()};
      assertAgree(space.forcesAtEnd(beam), got, beam.name());
    }
  }

  private static void assertAgree(double[] expected, double[] got, String where) {
    double size = 0;
    for (double value : expected) {
      size = Math.max(size, Math.abs(value));
    }
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], got[i], ROUNDING * size, where + " component " + i);
    }
  }

  @Test
  void a_tube_ladder_agrees_with_the_coupled_space_frame() {
    Frame.Builder ladder = Ladders.of(Stocks.TUBE, Stocks.TUBE);
    WHEELS.forEach(ladder::support);
    assertAgree(ladder.build());
  }

  @Test
  void an_upright_channel_ladder_agrees_with_the_coupled_space_frame() {
    Frame.Builder ladder = Ladders.of(CHANNEL, Stocks.TUBE);
    WHEELS.forEach(ladder::support);
    assertAgree(ladder.build());
    Frame.Builder allChannels = Ladders.of(CHANNEL, CHANNEL);
    WHEELS.forEach(allChannels::support);
    assertAgree(allChannels.build());
  }

  @ParameterizedTest
  @EnumSource(Plane.class)
  void a_crooked_frame_agrees_in_every_plane(Plane plane) {
    Frame.Builder frame = Frame.in(plane);
    double[][] places = {{0, 0}, {1.1, 0.2}, {0.9, 1.3}, {-0.3, 0.8}};
    for (int i = 0; i < places.length; i++) {
      double[] at = plane.toVehicle(places[i][0], places[i][1], 0.4);
      frame.node("N" + i, new Point(at[0], at[1], at[2]));
    }
    frame.beam(Beam.rigid("a", "N0", "N1", CHANNEL));
    frame.beam(Beam.rigid("b", "N2", "N1", CHANNEL));
    frame.beam(Beam.rigid("c", "N2", "N3", Stocks.TUBE));
    frame.beam(Beam.rigid("d", "N3", "N0", CHANNEL));
    frame.beam(Beam.rigid("e", "N0", "N2", Stocks.TUBE));
    frame.support(Support.fixed("N0")).support(Support.spring("N2", Freedom.UY, 4e5));
    frame.support(Support.spring("N1", Freedom.RY, 3e3));
    assertAgree(frame.build());
  }

  @ParameterizedTest
  @ValueSource(longs = {71, 72, 73, 74, 75, 76})
  void a_random_frame_without_hinges_agrees(long seed) {
    Frame made = new RandomFrames(seed).frame();
    assertAgree(made.with(beam -> beam.released(Set.of(), Set.of())));
  }

  @ParameterizedTest
  @ValueSource(longs = {81, 82, 83, 84, 85, 86, 87, 88, 89, 90})
  void springs_in_joints_rigid_arms_shear_strain_and_every_load_agree(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame stiff = random.frame().with(beam -> beam.released(Set.of(), Set.of()));
    Frame frame = random.jointed(stiff);
    assertAgree(frame, random.all(frame).loads());
  }

  @ParameterizedTest
  @ValueSource(longs = {91, 92, 93, 94, 95, 96, 97, 98, 99, 100})
  void a_frame_that_leaves_its_plane_agrees_with_all_of_that(long seed) {
    RandomFrames random = new RandomFrames(seed);
    Frame stiff = random.frame().with(beam -> beam.released(Set.of(), Set.of()));
    Frame risen = Lifted.armed(new Lifted(seed, random.jointed(stiff)).by(0.25), 0.06);
    assertFalse(risen.isFlat());
    assertAgree(risen, random.all(risen).loads());
  }

  @Test
  void a_frame_that_may_rise_and_does_not_is_flat() {
    Frame flat = new RandomFrames(7).frame();
    Frame level = new Lifted(7, flat).by(0);
    assertTrue(level.isFlat());
    assertTrue(flat.isFlat());
    assertFalse(Lifted.armed(level, 0.06).isFlat());
  }
}
