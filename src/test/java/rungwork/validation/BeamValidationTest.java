package rungwork.validation;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;
import rungwork.solve.InertiaBalance;
import rungwork.solve.Response;
import rungwork.solve.RigidAcceleration;
import rungwork.solve.Solver;
import rungwork.solve.Stocks;

/** Single beams, and bodies that nothing holds, against closed forms. */
class BeamValidationTest {
  private static final String BEAM_TABLES = "beam tables of any strength-of-materials text";

  private static final Stock UNIT = new Stocks(1, 0.4).with(new Stocks.Shape(1, 1, 1, 1));

  private static Frame.Builder span(Set<Release> atEnd) {
    return Frame.in(Plane.SIDE)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(2, 0, 0))
        .beam(Beam.rigid("beam", "A", "B", UNIT).released(Set.of(), atEnd));
  }

  private static Response under(Frame.Builder frame, Load... loads) {
    return Solver.of(frame.build()).solve(LoadCase.of("load", loads));
  }

  private static final Load SPREAD = new Load.AlongBeam("beam", 0, 0, -1);

  @Test
  void cantilever() {
    Response tip =
        under(
            span(Set.of()).support(Support.fixed("A")),
            new Load.AtNode("B", Wrench.force(0, 0, -1)));
    Response spread = under(span(Set.of()).support(Support.fixed("A")), SPREAD);
    Published.memory(BEAM_TABLES, "cantilever, L = 2, EI = 1")
        .value("tip under P: PL³/3EI", "", "-2.66667", tip.displacement("B").uz())
        .value("slope under P: PL²/2EI", "", "2.00000", tip.displacement("B").ry())
        .value("tip under w: wL⁴/8EI", "", "-2.00000", spread.displacement("B").uz())
        .value("root moment under w: wL²/2", "", "-2.00000", spread.forces("beam").at(0).mz());
  }

  @Test
  void simple_beam() {
    Support pin = Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RZ);
    Response spread =
        under(
            span(Set.of()).support(pin).support(Support.holding("B", Freedom.UY, Freedom.UZ)),
            SPREAD);
    Published.memory(BEAM_TABLES, "simple beam, L = 2, EI = 1")
        .value("sag under w: 5wL⁴/384EI", "", "-0.208333", spread.deflection("beam", 0.5).uz())
        .value("moment: wL²/8", "", "0.500000", spread.forces("beam").at(0.5).mz())
        .value("end slope: wL³/24EI", "", "0.333333", spread.displacement("A").ry());
  }

  @Test
  void clamped_and_propped_beam() {
    Response clamped =
        under(span(Set.of()).support(Support.fixed("A")).support(Support.fixed("B")), SPREAD);
    Response propped =
        under(
            span(Set.of(Release.IN_PLANE_BENDING))
                .support(Support.fixed("A"))
                .support(Support.fixed("B")),
            SPREAD);
    Published.memory(BEAM_TABLES, "clamped beam, L = 2, EI = 1")
        .value("sag under w: wL⁴/384EI", "", "-0.0416667", clamped.deflection("beam", 0.5).uz())
        .value("end moment: wL²/12", "", "-0.333333", clamped.forces("beam").at(0).mz())
        .value("middle moment: wL²/24", "", "0.166667", clamped.forces("beam").at(0.5).mz());
    double where = propped.forces("beam").stations().get(1);
    Published.memory(BEAM_TABLES, "propped cantilever, L = 2, EI = 1")
        .value("clamped moment: wL²/8", "", "-0.500000", propped.forces("beam").at(0).mz())
        .value("prop: 3wL/8", "", "0.750000", propped.reaction("B").fz())
        .value("span moment: 9wL²/128", "", "0.281250", propped.forces("beam").at(where).mz())
        .value("its place: 5L/8", "", "0.625000", where);
  }

  @Test
  void a_free_rod_struck_at_its_end_turns_about_its_centre_of_percussion() {
    Frame rod = span(Set.of()).build();
    AppliedWrench blow =
        new AppliedWrench("blow", Wrench.force(0, 0, 6), new Point(0, 0, 0), List.of("A"));
    List<Mass> own = InertiaBalance.ownMasses(rod);
    RigidAcceleration motion = InertiaBalance.of(own, List.of(blow)).acceleration();
    double kilograms = own.get(0).kilograms();
    double still = motion.at(new Point(0, 0, 0)).az() / motion.alphaY();
    Published.memory("uniform rod, any text on rigid-body dynamics", "free rod struck at its end")
        .value("acceleration of its middle: F/m", "", "1.00000", motion.az() * kilograms / 6)
        .value(
            "acceleration of the struck end: 4F/m",
            "",
            "4.00000",
            motion.at(new Point(0, 0, 0)).az() * kilograms / 6)
        .value("point at rest from the struck end: 2L/3", "", "1.33333", still);
  }

  @Test
  void a_ladder_bay_in_pure_twist() {
    Stocks steel = new Stocks(210e9, 81e9);
    Stock rail = steel.with(new Stocks.Shape(1e-3, 1e-6, 1e-6, 2e-6));
    Stock cross = steel.with(new Stocks.Shape(1e-3, 1e-6, 1e-6, 1e-9));
    Frame bay =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(2, 0, 0))
            .node("C", new Point(2, 0.8, 0))
            .node("D", new Point(0, 0.8, 0))
            .beam(Beam.rigid("right", "A", "B", rail))
            .beam(Beam.rigid("left", "D", "C", rail))
            .beam(Beam.rigid("rear", "A", "D", cross))
            .beam(Beam.rigid("front", "B", "C", cross))
            .build();
    Response twisted =
        Solver.unsupported(bay)
            .solve(
                LoadCase.of(
                    "twist",
                    new Load.AtNode("A", Wrench.force(0, 0, 1)),
                    new Load.AtNode("B", Wrench.force(0, 0, -1)),
                    new Load.AtNode("C", Wrench.force(0, 0, 1)),
                    new Load.AtNode("D", Wrench.force(0, 0, -1))));
    double lift =
        twisted.displacement("A").uz()
            - twisted.displacement("B").uz()
            + twisted.displacement("C").uz()
            - twisted.displacement("D").uz();
    Published.derived(
            "least work over the two torques: U = 2[Tr²(L/2GJr + b/6EI) + Tc²(b/2GJc + L/6EI)]",
            "ladder bay 2.0 × 0.8 m in pure twist")
        .value("corner lift under 1 N", "m", "4.356006e-6", lift)
        .value("stiffness Fb²/w", "N·m/rad", "14692e1", 0.64 / lift);
  }
}
