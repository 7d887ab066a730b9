package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
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

class SolverTest {
  private static final double E = 200e9;
  private static final double G = 80e9;
  private static final Stocks.Shape SHAPE = new Stocks.Shape(2e-4, 4e-8, 3e-8, 6e-8);
  private static final double L = 1.5;
  private static final double EXACT = 1e-10;

  private static Frame.Builder beamOf(double length) {
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0.3))
        .node("B", new Point(length, 0, 0.3))
        .beam(Beam.rigid("beam", "A", "B", new Stocks(E, G).with(SHAPE)));
  }

  private static Response cantilever(Load... loads) {
    Frame frame = beamOf(L).support(Support.fixed("A")).build();
    return Solver.of(frame).solve(LoadCase.of("tip", loads));
  }

  private static void assertClose(double expected, double actual) {
    assertEquals(expected, actual, EXACT * Math.abs(expected) + 1e-15);
  }

  @Test
  void a_cantilever_tip_deflects_by_PL3_over_3EI_both_ways() {
    Displacement tip =
        cantilever(new Load.AtNode("B", Wrench.force(0, 100, -70))).displacement("B");
    assertClose(100 * L * L * L / (3 * E * SHAPE.iz()), tip.uy());
    assertClose(100 * L * L / (2 * E * SHAPE.iz()), tip.rz());
    assertClose(-70 * L * L * L / (3 * E * SHAPE.iy()), tip.uz());
    assertClose(70 * L * L / (2 * E * SHAPE.iy()), tip.ry());
  }

  @Test
  void a_cantilever_stretches_and_twists() {
    Displacement tip =
        cantilever(new Load.AtNode("B", new Wrench(5e3, 0, 0, 40, 0, 0))).displacement("B");
    assertClose(5e3 * L / (E * SHAPE.area()), tip.ux());
    assertClose(40 * L / (G * SHAPE.it()), tip.rx());
  }

  @Test
  void internal_forces_have_the_signs_of_the_frame_room() {
    BeamForces forces =
        cantilever(new Load.AtNode("B", new Wrench(10, 20, 30, 40, 50, 60))).forces("beam");
    InternalForces end = forces.at(1);
    assertClose(10, end.n());
    assertClose(20, end.vy());
    assertClose(30, end.vz());
    assertClose(40, end.t());
    assertClose(50, end.my());
    assertClose(60, end.mz());
    InternalForces start = forces.at(0);
    assertClose(50 - 30 * L, start.my());
    assertClose(60 + 20 * L, start.mz());
  }

  @Test
  void a_support_takes_the_load_and_its_moment() {
    Wrench reaction = cantilever(new Load.AtNode("B", Wrench.force(0, 20, 30))).reaction("A");
    assertClose(-20, reaction.fy());
    assertClose(-30, reaction.fz());
    assertClose(30 * L, reaction.my());
    assertClose(-20 * L, reaction.mz());
  }

  @Test
  void a_simple_beam_under_a_uniform_load_sags_by_5wL4_over_384EI() {
    Frame frame =
        beamOf(L)
            .support(
                Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RZ))
            .support(Support.holding("B", Freedom.UY, Freedom.UZ))
            .build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("own", new Load.AlongBeam("beam", 0, 0, -800)));
    double sag = 5 * 800 * Math.pow(L, 4) / (384 * E * SHAPE.iy());
    assertClose(-sag, response.deflection("beam", 0.5).uz());
    assertClose(-800 * L * L / 8, response.forces("beam").at(0.5).my());
    assertEquals(List.of(0.0, 0.5, 1.0), response.forces("beam").stations());
  }

  @Test
  void a_clamped_beam_carries_wL2_over_12_at_its_ends() {
    Frame frame = beamOf(L).support(Support.fixed("A")).support(Support.fixed("B")).build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("own", new Load.AlongBeam("beam", 0, 700, -800)));
    assertClose(800 * L * L / 12, response.forces("beam").at(0).my());
    assertClose(-800 * L * L / 24, response.forces("beam").at(0.5).my());
    assertClose(700 * L * L / 12, response.forces("beam").at(1).mz());
    assertClose(
        -800 * Math.pow(L, 4) / (384 * E * SHAPE.iy()), response.deflection("beam", 0.5).uz());
  }

  @Test
  void a_released_end_passes_no_moment_on() {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(L, 0, 0))
            .beam(
                Beam.rigid("beam", "A", "B", new Stocks(E, G).with(SHAPE))
                    .released(
                        Set.of(), Set.of(Release.IN_PLANE_BENDING, Release.OUT_OF_PLANE_BENDING)))
            .support(Support.fixed("A"))
            .support(Support.fixed("B"))
            .build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("own", new Load.AlongBeam("beam", 0, -300, -800)));
    InternalForces start = response.forces("beam").at(0);
    assertClose(800 * L * L / 8, start.my());
    assertClose(300 * L * L / 8, -start.mz());
    assertEquals(0, response.forces("beam").at(1).my(), 1e-9);
    Displacement end = response.deflection("beam", 1);
    assertClose(-800 * Math.pow(L, 3) / (48 * E * SHAPE.iy()), end.ry());
    assertEquals(0, response.displacement("B").ry());
  }

  @Test
  void a_spring_gives_way_by_its_stiffness() {
    Frame frame =
        beamOf(L).support(Support.fixed("A")).support(Support.spring("B", Freedom.UZ, 5e3)).build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("tip", new Load.AtNode("B", Wrench.force(0, 0, -70))));
    double stiffness = 5e3 + 3 * E * SHAPE.iy() / Math.pow(L, 3);
    assertClose(-70 / stiffness, response.displacement("B").uz());
    assertClose(5e3 * 70 / stiffness, response.reaction("B").fz());
  }

  @Test
  void a_frame_without_supports_is_refused() {
    ModelException refusal = assertThrows(ModelException.class, () -> Solver.of(beamOf(L).build()));
    assertEquals(
        "nothing holds the frame: give it supports, or balance the loads by inertia",
        refusal.getMessage());
  }

  @Test
  void a_node_that_nothing_stops_from_turning_is_named() {
    Beam left = Beam.rigid("left", "A", "B", Stocks.TUBE);
    Beam right = Beam.rigid("right", "B", "C", Stocks.TUBE);
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(1, 0, 0))
            .node("C", new Point(2, 0, 0))
            .beam(left.released(Set.of(), Set.of(Release.IN_PLANE_BENDING)))
            .beam(right.released(Set.of(Release.IN_PLANE_BENDING), Set.of()))
            .support(Support.fixed("A"))
            .support(Support.fixed("C"))
            .build();
    SolveException refusal = assertThrows(SolveException.class, () -> Solver.of(frame));
    assertEquals(
        "nothing resists node B turning about z (in the frame's plane): hold it by a support, or"
            + " join a beam to it there",
        refusal.getMessage());
  }

  @Test
  void a_frame_free_to_swing_about_one_support_is_named_by_its_turn() {
    Frame frame =
        beamOf(L)
            .support(
                Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY))
            .build();
    SolveException refusal = assertThrows(SolveException.class, () -> Solver.of(frame));
    assertEquals(
        "nothing resists node A turning about z (in the frame's plane): hold it by a support, or"
            + " join a beam to it there",
        refusal.getMessage());
  }

  @Test
  void a_loaded_spring_of_torsion_end_lets_its_node_stand_still() {
    Beam shaft = Beam.rigid("shaft", "A", "B", CHANNEL);
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(L, 0, 0))
            .beam(shaft.released(Set.of(), Set.of(Release.TORSION)))
            .support(Support.fixed("A"))
            .support(Support.fixed("B"))
            .build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("own", new Load.AlongBeam("shaft", 0, 0, -800)));
    // The load on the line of centroids twists the beam by its distance from the shear centre.
    double perMetre = 0.02 * 800;
    assertClose(perMetre * L, response.forces("shaft").at(0).t());
    assertEquals(0, response.forces("shaft").at(1).t(), 1e-12);
    assertClose(perMetre * L * L / (2 * G * SHAPE.it()), response.deflection("shaft", 1).rx());
    assertEquals(0, response.displacement("B").rx());
    Frame turned = frameOf(shaft.released(Set.of(Release.TORSION), Set.of()));
    Response other =
        Solver.of(turned).solve(LoadCase.of("own", new Load.AlongBeam("shaft", 0, 0, -800)));
    assertClose(-perMetre * L, other.forces("shaft").at(1).t());
    assertClose(perMetre * L * L / (2 * G * SHAPE.it()), other.deflection("shaft", 0).rx());
  }

  private static final Stock CHANNEL = new Stocks(E, G).eccentric(SHAPE, 0.02);

  private static Frame frameOf(Beam beam) {
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(L, 0, 0))
        .beam(beam)
        .support(Support.fixed("A"))
        .support(Support.fixed("B"))
        .build();
  }

  @Test
  void a_channel_loaded_through_its_shear_centre_does_not_twist() {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(L, 0, 0))
            .beam(Beam.rigid("arm", "A", "B", CHANNEL))
            .support(Support.fixed("A"))
            .build();
    Wrench through = Wrench.force(0, 0, -70).moved(new Point(L, 0.02, 0), new Point(L, 0, 0));
    Response response = Solver.of(frame).solve(LoadCase.of("P", new Load.AtNode("B", through)));
    assertEquals(0, response.displacement("B").rx(), 1e-15);
    assertEquals(0, response.forces("arm").at(0.5).t(), 1e-12);
    assertClose(-70 * L * L * L / (3 * E * SHAPE.iy()), response.displacement("B").uz());
    Response beside =
        Solver.of(frame).solve(LoadCase.of("P", new Load.AtNode("B", Wrench.force(0, 0, -70))));
    assertClose(70 * 0.02 * L / (G * SHAPE.it()), beside.displacement("B").rx());
  }

  @Test
  void a_channel_beam_turned_end_for_end_is_its_mirror_image() {
    Stock mirrored = new Stocks(E, G).eccentric(SHAPE, -0.02);
    Load load = new Load.AlongBeam("arm", 100, -200, -300);
    Load hit = new Load.AtNode("B", new Wrench(1, 2, 3, 4, 5, 6));
    Frame.Builder one = Frame.in(Plane.PLAN).support(Support.fixed("A"));
    Frame.Builder other = Frame.in(Plane.PLAN).support(Support.fixed("A"));
    for (Frame.Builder frame : List.of(one, other)) {
      frame.node("A", new Point(0, 0, 0)).node("B", new Point(1, 0.4, 0));
    }
    one.beam(Beam.rigid("arm", "A", "B", CHANNEL));
    other.beam(Beam.rigid("arm", "B", "A", mirrored));
    LoadCase loads = LoadCase.of("both", load, hit);
    Displacement a = Solver.of(one.build()).solve(loads).deflection("arm", 0.3);
    Displacement b = Solver.of(other.build()).solve(loads).deflection("arm", 0.7);
    assertEquals(a.ux(), b.ux(), 1e-12);
    assertEquals(a.uy(), b.uy(), 1e-12);
    assertEquals(a.uz(), b.uz(), 1e-12);
    assertEquals(a.rx(), b.rx(), 1e-12);
    assertEquals(a.ry(), b.ry(), 1e-12);
    assertEquals(a.rz(), b.rz(), 1e-12);
  }

  @Test
  void a_cantilever_of_a_thousand_pieces_keeps_its_digits() {
    Response response =
        Solver.of(cantileverOf(1000))
            .solve(LoadCase.of("P", new Load.AtNode("1000", Wrench.force(0, 10, -70))));
    assertClose(-70 * L * L * L / (3 * E * SHAPE.iy()), response.displacement("1000").uz());
    assertClose(10 * L * L * L / (3 * E * SHAPE.iz()), response.displacement("1000").uy());
    assertEquals(0, response.residual(), 1e-11);
  }

  private static Frame cantileverOf(int pieces) {
    Frame.Builder chain = Frame.in(Plane.PLAN).node("0", new Point(0, 0, 0));
    for (int i = 1; i <= pieces; i++) {
      chain.node(String.valueOf(i), new Point(L * i / pieces, 0, 0));
      chain.beam(
          Beam.rigid(
              "b" + i, String.valueOf(i - 1), String.valueOf(i), new Stocks(E, G).with(SHAPE)));
    }
    return chain.support(Support.fixed("0")).build();
  }

  /** k = EI/L (12/L², 6/L; 6/L, 4) scaled to (1, √3/2; √3/2, 1): norms 1 + √3/2 and 4 + 2√3. */
  @Test
  void the_condition_of_a_cantilever_is_that_of_its_two_by_two_stiffness() {
    double root = Math.sqrt(3) / 2;
    assertEquals((1 + root) * (4 + 8 * root / 2), Solver.of(cantileverOf(1)).condition(), 1e-9);
  }

  @Test
  void the_condition_of_a_chain_grows_with_the_fourth_power_of_its_pieces() {
    double hundred = Solver.of(cantileverOf(100)).condition();
    double twoHundred = Solver.of(cantileverOf(200)).condition();
    assertEquals(16, twoHundred / hundred, 0.5);
  }

  @Test
  void a_load_on_an_unknown_node_is_refused() {
    ModelException refusal =
        assertThrows(
            ModelException.class, () -> cantilever(new Load.AtNode("C", Wrench.force(1, 0, 0))));
    assertEquals("there is no node named C; there are A, B", refusal.getMessage());
  }

  @Test
  void no_load_moves_nothing() {
    Response response = cantilever();
    assertEquals(0, response.displacement("B").uz());
    assertEquals(0, response.residual());
    assertEquals("Response to tip: residual 0.0e+00 of the load", response.toString());
    assertEquals(
        "moves (0 mm, 0 mm, 0 mm), turns (0 mrad, 0 mrad, 0 mrad)",
        response.displacement("B").toString());
    assertEquals("tip", response.loadCase().name());
    assertEquals("beam", response.forces("beam").beam());
    assertEquals(L, response.forces("beam").length());
  }

  @Test
  void a_nearly_loose_chain_is_not_mistaken_for_a_mechanism_nor_a_mechanism_for_a_frame() {
    Frame soft =
        beamOf(L)
            .support(
                Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY))
            .support(Support.spring("B", Freedom.UY, 0.01))
            .build();
    Response response =
        Solver.of(soft).solve(LoadCase.of("P", new Load.AtNode("B", Wrench.force(0, 0.002, 0))));
    assertClose(0.2, response.displacement("B").uy());
  }
}
