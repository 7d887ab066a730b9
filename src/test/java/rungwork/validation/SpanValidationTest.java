package rungwork.validation;

import org.junit.jupiter.api.Test;
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
import rungwork.solve.BeamForces;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.Stocks;

/** One beam of length 4 with EI = 1 under every kind of load, against the tables. */
class SpanValidationTest {
  private static final String FIXED_END = "tables of fixed-end moments, any text on rigid frames";
  private static final String BEAMS = "beam tables of any strength-of-materials text";
  private static final double L = 4;

  private static final Stock UNIT = new Stocks(1, 0.4).with(new Stocks.Shape(1, 1, 1, 1));

  private static final Load.PerMetre DOWN = new Load.PerMetre(0, -3, 0);

  private static Beam beam() {
    return Beam.rigid("beam", "A", "B", UNIT);
  }

  private static Frame.Builder on(Support... supports) {
    return on(beam(), supports);
  }

  private static Frame.Builder on(Beam beam, Support... supports) {
    Frame.Builder frame =
        Frame.in(Plane.PLAN).node("A", new Point(0, 0, 0)).node("B", new Point(L, 0, 0)).beam(beam);
    for (Support support : supports) {
      frame.support(support);
    }
    return frame;
  }

  private static Frame.Builder clamped() {
    return on(Support.fixed("A"), Support.fixed("B"));
  }

  private static Frame.Builder simple() {
    return on(
        Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY),
        Support.holding("B", Freedom.UY, Freedom.UZ));
  }

  private static Frame.Builder cantilever() {
    return on(Support.fixed("A"));
  }

  private static Response under(Frame.Builder frame, Load... loads) {
    return Solver.of(frame.build()).solve(LoadCase.of("load", loads));
  }

  private static Load growing() {
    return new Load.AlongPart("beam", 0, L, Load.PerMetre.NONE, DOWN);
  }

  private static Load force(double from) {
    return new Load.OnBeam("beam", from, Wrench.force(0, -5, 0));
  }

  @Test
  void fixed_ends_under_a_uniform_load_on_a_part() {
    Response response = under(clamped(), Load.AlongPart.uniform("beam", 0, 1.5, DOWN));
    Published.memory(FIXED_END, "w = 3 over a = 1.5 of L = 4 from the left")
        .value(
            "left: wa²(6L² − 8aL + 3a²)/12L²", "", "-1.92480", response.forces("beam").at(0).mz())
        .value("right: wa³(4L − 3a)/12L²", "", "-0.606445", response.forces("beam").at(1).mz())
        .value(
            "left reaction: wa(2L³ − 2a²L + a³)/2L³", "", "3.98584", response.reaction("A").fy());
  }

  @Test
  void fixed_ends_under_a_load_that_grows() {
    Response response = under(clamped(), growing());
    Published.memory(FIXED_END, "triangle from 0 to w = 3, L = 4")
        .value("small end: wL²/30", "", "-1.60000", response.forces("beam").at(0).mz())
        .value("large end: wL²/20", "", "-2.40000", response.forces("beam").at(1).mz())
        .value("small end's reaction: 3wL/20", "", "1.80000", response.reaction("A").fy());
  }

  @Test
  void fixed_ends_under_a_gable_of_load() {
    Response response =
        under(
            clamped(),
            new Load.AlongPart("beam", 0, 2, Load.PerMetre.NONE, DOWN),
            new Load.AlongPart("beam", 2, 4, DOWN, Load.PerMetre.NONE));
    Published.memory(FIXED_END, "triangle with w = 3 in the middle, L = 4")
        .value("ends: 5wL²/96", "", "-2.50000", response.forces("beam").at(0).mz())
        .value("middle: wL²/32", "", "1.50000", response.forces("beam").at(0.5).mz())
        .value("sag: 7wL⁴/3840EI", "", "-1.40000", response.deflection("beam", 0.5).uy());
  }

  @Test
  void fixed_ends_under_a_force_and_under_a_moment_at_a_point() {
    Response force = under(clamped(), force(1));
    Response moment = under(clamped(), new Load.OnBeam("beam", 1, Wrench.moment(0, 0, 7)));
    Published.memory(FIXED_END, "P = 5 at a = 1 of L = 4")
        .value("near end: Pab²/L²", "", "-2.81250", force.forces("beam").at(0).mz())
        .value("far end: Pa²b/L²", "", "-0.937500", force.forces("beam").at(1).mz())
        .value("near reaction: Pb²(3a + b)/L³", "", "4.21875", force.reaction("A").fy())
        .value("sag at P: Pa³b³/3EIL³", "", "-0.703125", force.deflection("beam", 0.25).uy());
    Published.memory(FIXED_END, "M = 7 at a = 1 of L = 4")
        .value("near end: Mb(2a − b)/L²", "", "-1.31250", moment.reaction("A").mz())
        .value("far end: Ma(2b − a)/L²", "", "2.18750", moment.reaction("B").mz())
        .value("reactions: 6Mab/L³", "", "1.96875", moment.reaction("A").fy());
  }

  @Test
  void simple_beam_under_a_load_that_grows() {
    Response response = under(simple(), growing());
    BeamForces.Extreme most = response.forces("beam").largest(InternalForces::mz);
    Published.memory(BEAMS, "simple beam, triangle from 0 to w = 3, L = 4")
        .value("largest moment: wL²/9√3", "", "3.07920", most.value())
        .value("its place: L/√3", "L", "0.577350", most.fraction())
        .value(
            "largest sag: 0.00652 wL⁴/EI",
            "",
            "-5.01",
            response.farthest("beam", Freedom.UY).value())
        .value("its place: 0.519 L", "L", "0.519", response.farthest("beam", Freedom.UY).fraction())
        .value(
            "sag in the middle: 5wL⁴/768EI", "", "-5.00000", response.deflection("beam", 0.5).uy());
  }

  @Test
  void simple_beam_under_a_force_off_its_middle() {
    Response response = under(simple(), force(3));
    BeamForces.Extreme most = response.farthest("beam", Freedom.UY);
    Published.memory(BEAMS, "simple beam, P = 5 at b = 1 from its end, L = 4")
        .value("largest sag: Pb(L² − b²)^1.5/9√3LEI", "", "-4.65847", most.value())
        .value("its place: √((L² − b²)/3)", "L", "0.559017", most.fraction())
        .value("moment at P: Pab/L", "", "3.75000", response.forces("beam").at(0.75).mz());
  }

  @Test
  void propped_cantilever_and_cantilever_under_a_load_that_grows_to_the_wall() {
    Load load = new Load.AlongPart("beam", 0, L, DOWN, Load.PerMetre.NONE);
    Response propped =
        under(on(Support.fixed("A"), Support.holding("B", Freedom.UY, Freedom.UZ)), load);
    Response free = under(cantilever(), load);
    Published.memory(BEAMS, "triangle with w = 3 at the wall, L = 4")
        .value("propped, wall: wL²/15", "", "-3.20000", propped.forces("beam").at(0).mz())
        .value("propped, prop: wL/10", "", "1.20000", propped.reaction("B").fy())
        .value("free, wall: wL²/6", "", "-8.00000", free.forces("beam").at(0).mz())
        .value("free, tip: wL⁴/30EI", "", "-25.6000", free.displacement("B").uy())
        .value("free, slope of the tip: wL³/24EI", "", "-8.00000", free.displacement("B").rz());
  }

  @Test
  void beam_with_a_sliding_end() {
    Response response =
        under(
            on(
                beam().joined(End.RIGID, End.released(Release.IN_PLANE_SHEAR)),
                Support.fixed("A"),
                Support.fixed("B")),
            new Load.AlongBeam("beam", 0, -3, 0));
    Published.memory(BEAMS, "one end clamped, the other free to slide across, w = 3, L = 4")
        .value("clamped end: wL²/3", "", "-16.0000", response.forces("beam").at(0).mz())
        .value("sliding end: wL²/6", "", "8.00000", response.forces("beam").at(1).mz())
        .value("slide: wL⁴/24EI", "", "-32.0000", response.deflection("beam", 1).uy());
  }

  @Test
  void beam_in_joints_that_turn() {
    End bolted = End.RIGID.sprung(Release.IN_PLANE_BENDING, 2);
    Response response =
        under(
            on(beam().joined(bolted, bolted), Support.fixed("A"), Support.fixed("B")),
            new Load.AlongBeam("beam", 0, -3, 0));
    double turn = response.deflection("beam", 0).rz();
    Published.memory("texts on semi-rigid frames: wL²/12 · 1/(1 + 2EI/kL)", "w = 3, k = 2, L = 4")
        .value("end moment", "", "-3.20000", response.forces("beam").at(0).mz())
        .value(
            "middle moment: wL²/8 less that", "", "2.80000", response.forces("beam").at(0.5).mz());
    Published.identity("a spring turns by its moment over its stiffness", "w = 3, k = 2, L = 4")
        .value("turn of the beam's end", "rad", "-1.60000", turn);
  }

  @Test
  void propped_cantilever_on_a_spring_and_on_a_sinking_prop() {
    Response sprung =
        under(
            on(Support.fixed("A"), Support.spring("B", Freedom.UY, 0.3)),
            new Load.AlongBeam("beam", 0, -3, 0));
    Response sinking =
        under(
            on(Support.fixed("A"), Support.holding("B", Freedom.UY)),
            new Load.Settlement("B", Freedom.UY, -0.01));
    Published.memory(BEAMS + ": 3wL/8 · 1/(1 + 3EI/cL³)", "propped by a spring, c = 0.3")
        .value("force in the spring", "", "3.89189", sprung.reaction("B").fy());
    Published.memory(BEAMS + ": 3EIΔ/L²", "propped cantilever, its prop sinking by 0.01")
        .value("moment at the wall", "", "-0.00187500", sinking.forces("beam").at(0).mz());
  }

  @Test
  void clamped_beam_whose_support_sinks_or_turns() {
    Response sinks = under(clamped(), new Load.Settlement("B", Freedom.UY, -0.01));
    Response turns = under(clamped(), new Load.Settlement("B", Freedom.RZ, 0.01));
    Published.memory("slope deflection, any text on rigid frames", "clamped beam, Δ = 0.01, L = 4")
        .value("moment: 6EIΔ/L²", "", "-0.00375000", sinks.forces("beam").at(0).mz())
        .value("shear: 12EIΔ/L³", "", "0.00187500", sinks.reaction("A").fy())
        .value("near moment of a turn θ = 0.01: 4EIθ/L", "", "0.0100000", turns.reaction("B").mz())
        .value("far moment: 2EIθ/L", "", "0.00500000", turns.reaction("A").mz());
  }

  @Test
  void clamped_beam_that_becomes_warmer() {
    Response even = under(clamped(), Load.Warmth.uniform("beam", 12e-6, 50));
    Response across = under(clamped(), new Load.Warmth("beam", 12e-6, 0, 200, 0));
    Published.identity("nothing can move: N = −EAαT, M = EIα dT/dy", "clamped beam, α = 12e-6")
        .value("N, T = 50", "", "-0.000600000", even.forces("beam").at(0.3).n())
        .value("M, dT/dy = 200", "", "0.00240000", across.forces("beam").at(0.3).mz())
        .value("sag", "", "0.000000", across.deflection("beam", 0.5).uy());
  }

  @Test
  void propped_cantilever_that_becomes_warmer_on_one_side() {
    Response response =
        under(
            on(Support.fixed("A"), Support.holding("B", Freedom.UY, Freedom.UZ)),
            new Load.Warmth("beam", 12e-6, 0, 200, 0));
    Published.memory(BEAMS + ": M = 3/2 · EIα dT/dy", "propped cantilever, dT/dy = 200")
        .value("moment at the wall", "", "0.00360000", response.forces("beam").at(0).mz())
        .value("prop", "", "0.000900000", response.reaction("B").fy());
  }

  @Test
  void beam_with_rigid_ends() {
    End arm = End.RIGID.armed(0.5, 0, 0);
    End other = End.RIGID.armed(-0.5, 0, 0);
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(-0.5, 0, 0))
            .node("B", new Point(4.5, 0, 0))
            .beam(beam().joined(arm, other))
            .support(Support.fixed("A"))
            .support(Support.fixed("B"));
    Response turned = under(frame, new Load.Settlement("A", Freedom.RZ, 1));
    Published.memory(
            "beams between walls: 4EI/L · (1 + 3c + 3c²) and 2EI/L · (1 + 6c + 6c²)",
            "rigid ends of 0.5 at a beam of L = 4, c = 1/8")
        .value("near moment of a unit turn", "", "1.421875", turned.reaction("A").mz())
        .value("far moment", "", "0.921875", turned.reaction("B").mz());
  }

  @Test
  void bar_pulled_off_its_axis() {
    End seat = End.RIGID.armed(0, 0.2, 0);
    Response response =
        under(
            on(beam().joined(seat, seat), Support.fixed("A")),
            new Load.AtNode("B", Wrench.force(5, 0, 0)));
    Published.identity("pulled at e = 0.2 beside its line: M = Pe all along", "P = 5, L = 4")
        .value("moment", "", "1.00000", response.forces("beam").at(0.7).mz())
        .value("sideways: PeL²/2EI", "", "8.00000", response.displacement("B").uy());
  }
}
