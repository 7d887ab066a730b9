package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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
import rungwork.frame.Support;
import rungwork.frame.Wrench;

/** Loads between the ends of a beam, supports that settle, joints that let go. */
class BeamLoadTest {
  private static final double L = 1.6;

  private static Frame.Builder beam(End start, End end) {
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(L, 0, 0))
        .beam(Beam.rigid("beam", "A", "B", Stocks.TUBE).joined(start, end));
  }

  private static Frame clamped(End start, End end) {
    return beam(start, end).support(Support.fixed("A")).support(Support.fixed("B")).build();
  }

  private static Response under(Frame frame, Load... loads) {
    return Solver.of(frame).solve(LoadCase.of("load", loads));
  }

  private static void assertRefused(String message, Frame frame, Load load) {
    assertEquals(
        message, assertThrows(ModelException.class, () -> under(frame, load)).getMessage());
  }

  @Test
  void a_load_beyond_the_beam_is_refused() {
    Frame frame = clamped(End.RIGID, End.RIGID);
    assertRefused(
        "a load on beam beam acts 1700 mm from its start; the beam is 1600 mm long",
        frame,
        new Load.OnBeam("beam", 1.7, Wrench.force(1, 0, 0)));
    Load.PerMetre down = new Load.PerMetre(0, 0, -100);
    assertRefused(
        "a load on beam beam acts 1601 mm from its start; the beam is 1600 mm long",
        frame,
        Load.AlongPart.uniform("beam", 1, 1.601, down));
    assertRefused(
        "there is no beam named rail; there are beam", frame, Load.Warmth.uniform("rail", 1, 1));
  }

  @Test
  void only_what_is_held_or_sprung_can_settle() {
    Frame frame =
        beam(End.RIGID, End.RIGID)
            .support(Support.fixed("A"))
            .support(Support.spring("B", Freedom.UZ, 1e4))
            .build();
    assertRefused(
        "node B cannot settle by moving along y: no support holds it against that; hold it, or give"
            + " it a spring",
        frame,
        new Load.Settlement("B", Freedom.UY, 0.01));
    assertEquals(
        0.01,
        under(
                beam(End.RIGID, End.released(Release.OUT_OF_PLANE_SHEAR))
                    .support(Support.fixed("A"))
                    .support(Support.spring("B", Freedom.UZ, 1e4))
                    .build(),
                new Load.Settlement("B", Freedom.UZ, 0.01))
            .displacement("B")
            .uz(),
        1e-14,
        "the foot of a spring that carries nothing takes its node along");
    ModelException refusal =
        assertThrows(
            ModelException.class,
            () ->
                Solver.unsupported(frame)
                    .solve(LoadCase.of("sink", new Load.Settlement("A", Freedom.UZ, 0.01))));
    assertEquals(
        "node A cannot settle by moving along z: no support holds it against that; hold it, or give"
            + " it a spring",
        refusal.getMessage());
  }

  @ParameterizedTest
  @EnumSource(Plane.class)
  void a_determinate_frame_follows_its_support_without_force(Plane plane) {
    double[] far = plane.toVehicle(1, 0.5, 0);
    Frame frame =
        Frame.in(plane)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(far[0], far[1], far[2]))
            .beam(Beam.rigid("beam", "A", "B", Stocks.TUBE))
            .support(Support.fixed("A"))
            .build();
    Load[] turns = {
      new Load.Settlement("A", Freedom.RX, 0.001),
      new Load.Settlement("A", Freedom.RY, -0.002),
      new Load.Settlement("A", Freedom.RZ, 0.003),
      new Load.Settlement("A", Freedom.UX, 0.004),
      new Load.Settlement("A", Freedom.UY, 0.005),
      new Load.Settlement("A", Freedom.UZ, 0.006)
    };
    Response response = under(frame, turns);
    Displacement b = response.displacement("B");
    assertEquals(0.004 - 0.002 * far[2] - 0.003 * far[1], b.ux(), 1e-12);
    assertEquals(0.005 + 0.003 * far[0] - 0.001 * far[2], b.uy(), 1e-12);
    assertEquals(0.006 + 0.001 * far[1] + 0.002 * far[0], b.uz(), 1e-12);
    assertEquals(-0.002, b.ry(), 1e-12);
    assertEquals(0, response.forces("beam").largest(InternalForces::my).value(), 1e-6);
  }

  @Test
  void a_point_load_has_two_sides() {
    Response response =
        under(
            beam(End.RIGID, End.RIGID).support(Support.fixed("A")).build(),
            new Load.OnBeam("beam", 0.4, new Wrench(30, 20, -10, 1, 2, 3)));
    BeamForces forces = response.forces("beam");
    List<Double> stations = forces.stations();
    assertEquals(List.of(0.0, Math.nextDown(0.25), 0.25, 1.0), stations);
    InternalForces before = forces.at(stations.get(1));
    InternalForces beyond = forces.at(stations.get(2));
    assertEquals(30, before.n(), 1e-9);
    assertEquals(20, before.vy(), 1e-9);
    assertEquals(-10, before.vz(), 1e-9);
    assertEquals(1, before.t(), 1e-9);
    assertEquals(2, before.my(), 1e-9);
    assertEquals(3, before.mz(), 1e-9);
    assertEquals(0, beyond.n() + beyond.vy() + beyond.vz(), 1e-9);
    assertEquals(0, beyond.t() + beyond.my() + beyond.mz(), 1e-9);
  }

  @Test
  void a_load_at_a_beams_end_goes_to_its_node() {
    Frame frame = beam(End.RIGID, End.RIGID).support(Support.fixed("A")).build();
    Wrench wrench = new Wrench(30, 20, -10, 1, 2, 3);
    Displacement onBeam = under(frame, new Load.OnBeam("beam", L, wrench)).displacement("B");
    Displacement atNode = under(frame, new Load.AtNode("B", wrench)).displacement("B");
    assertEquals(atNode.ux(), onBeam.ux(), 1e-15);
    assertEquals(atNode.uy(), onBeam.uy(), 1e-15);
    assertEquals(atNode.uz(), onBeam.uz(), 1e-15);
    assertEquals(atNode.rx(), onBeam.rx(), 1e-15);
    assertEquals(atNode.ry(), onBeam.ry(), 1e-15);
    assertEquals(atNode.rz(), onBeam.rz(), 1e-15);
  }

  @Test
  void two_beams_let_go_alike_are_a_mechanism_and_it_is_named() {
    for (Release release : Release.values()) {
      End loose = End.released(release);
      Frame frame =
          Frame.in(Plane.PLAN)
              .node("A", new Point(0, 0, 0))
              .node("M", new Point(0.7, 0.2, 0))
              .node("B", new Point(1.4, 0.4, 0))
              .beam(Beam.rigid("left", "A", "M", Stocks.TUBE).joined(End.RIGID, loose))
              .beam(Beam.rigid("right", "M", "B", Stocks.TUBE).joined(loose, End.RIGID))
              .support(Support.fixed("A"))
              .support(Support.fixed("B"))
              .build();
      SolveException refusal = assertThrows(SolveException.class, () -> Solver.of(frame));
      assertEquals("nothing resists node M ", refusal.getMessage().substring(0, 23));
    }
  }

  @Test
  void every_release_lets_go_of_its_own_force_alone() {
    Wrench push = new Wrench(300, 200, -100, 10, 20, 30);
    for (Release release : Release.values()) {
      for (double side : new double[] {0, 1}) {
        End loose = End.released(release);
        Frame frame = side == 0 ? clamped(loose, End.RIGID) : clamped(End.RIGID, loose);
        InternalForces f = under(frame, new Load.OnBeam("beam", 0.6, push)).forces("beam").at(side);
        double[] all = {f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()};
        for (int i = 0; i < all.length; i++) {
          assertEquals(i == release.ordinal(), Math.abs(all[i]) < 1e-9, release + " force " + i);
        }
      }
    }
  }

  @Test
  void a_very_stiff_spring_is_rigid_and_a_very_soft_one_a_release() {
    Wrench push = new Wrench(300, 200, -100, 10, 20, 30);
    Load load = new Load.OnBeam("beam", 0.6, push);
    for (Release force : Release.values()) {
      assertSame(
          under(clamped(End.RIGID, End.RIGID), load),
          under(clamped(End.RIGID.sprung(force, 1e15), End.RIGID), load));
      assertSame(
          under(clamped(End.released(force), End.RIGID), load),
          under(clamped(End.RIGID.sprung(force, 1e-5), End.RIGID), load));
    }
  }

  private static void assertSame(Response one, Response other) {
    InternalForces a = one.forces("beam").at(1);
    InternalForces b = other.forces("beam").at(1);
    assertEquals(a.n(), b.n(), 1e-4);
    assertEquals(a.vy(), b.vy(), 1e-4);
    assertEquals(a.vz(), b.vz(), 1e-4);
    assertEquals(a.t(), b.t(), 1e-4);
    assertEquals(a.my(), b.my(), 1e-4);
    assertEquals(a.mz(), b.mz(), 1e-4);
  }

  @Test
  void a_free_beam_warms_twists_and_bows_without_force() {
    Response response =
        under(
            beam(End.RIGID, End.RIGID).support(Support.fixed("A")).build(),
            new Load.Warmth("beam", 12e-6, 50, 200, -300),
            new Load.Misfit("beam", 0.002, 0.03, 0, 0));
    Displacement tip = response.displacement("B");
    assertEquals(12e-6 * 50 * L + 0.002, tip.ux(), 1e-15);
    assertEquals(0.03, tip.rx(), 1e-15);
    // The warmer side is the outer one of the bow: +y warm bends to −y.
    assertEquals(-12e-6 * 200 * L * L / 2, tip.uy(), 1e-15);
    assertEquals(12e-6 * 300 * L * L / 2, tip.uz(), 1e-15);
    assertEquals(0, response.forces("beam").at(0.5).n(), 1e-7);
    assertEquals(0, response.residual(), 1e-12);
  }

  @Test
  void a_bowed_beam_stands_off_its_chord_in_the_middle() {
    Frame simple =
        beam(End.RIGID, End.RIGID)
            .support(Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX))
            .support(Support.holding("B", Freedom.UY, Freedom.UZ))
            .build();
    Response response = under(simple, new Load.Misfit("beam", 0, 0, 0.004, -0.003));
    assertEquals(0.004, response.deflection("beam", 0.5).uy(), 1e-15);
    assertEquals(-0.003, response.deflection("beam", 0.5).uz(), 1e-15);
    assertEquals(0.75 * 0.004, response.deflection("beam", 0.25).uy(), 1e-15);
  }

  @Test
  void a_frame_that_nothing_holds_warms_without_force() {
    Frame ladder = Ladders.of(Stocks.TUBE, Stocks.TUBE).build();
    Load[] loads =
        ladder.beams().stream()
            .map(beam -> Load.Warmth.uniform(beam.name(), 12e-6, 40))
            .toArray(Load[]::new);
    Response response = Solver.unsupported(ladder).solve(LoadCase.of("sun", loads));
    for (Beam beam : ladder.beams()) {
      BeamForces forces = response.forces(beam.name());
      assertEquals(0, forces.largest(InternalForces::n).value(), 1e-6);
      assertEquals(0, forces.largest(InternalForces::mz).value(), 1e-6);
    }
    Displacement a = response.displacement("R0");
    Displacement b = response.displacement("R3");
    double length = ladder.node("R0").at().distance(ladder.node("R3").at());
    assertEquals(12e-6 * 40 * length, Math.abs(a.ux() - b.ux()), 1e-12);
  }

  @Test
  void only_the_beam_that_does_not_fit_strains_a_ladder_and_it_pushes_the_other_apart() {
    Frame ladder = Ladders.of(Stocks.TUBE, Stocks.TUBE).build();
    Response response =
        Solver.unsupported(ladder)
            .solve(LoadCase.of("misfit", new Load.Misfit("right 1", 0.001, 0, 0, 0)));
    assertEquals(0, response.residual(), 1e-12);
    double pushed = response.forces("right 1").at(0.5).n();
    assertEquals(-pushed, response.forces("left 1").at(0.5).n(), 1e-6, "no force leaves the bay");
    assertEquals(-1, Math.signum(pushed));
  }
}
