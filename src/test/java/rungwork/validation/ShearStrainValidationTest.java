package rungwork.validation;

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
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.Stocks;

/** Beams whose shear strain counts, against Timoshenko's closed forms. */
class ShearStrainValidationTest {
  private static final String TIMOSHENKO = "Timoshenko, Strength of Materials: shear strain added";
  private static final double L = 4;

  /** EI = 1, GA = 1: shear counts as much as bending. */
  private static final Stock SOFT = new Stocks(1, 0.4).with(new Stocks.Shape(2.5, 1, 1, 1));

  private static Frame.Builder beam(Stock stock, double length) {
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(length, 0, 0))
        .beam(Beam.rigid("beam", "A", "B", stock).bending(Beam.Bending.WITH_SHEAR_STRAIN));
  }

  private static Response under(Frame.Builder frame, Load... loads) {
    return Solver.of(frame.build()).solve(LoadCase.of("load", loads));
  }

  private static Frame.Builder simple(Frame.Builder beam) {
    return beam.support(
            Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY))
        .support(Support.holding("B", Freedom.UY, Freedom.UZ));
  }

  private static Frame.Builder clamped() {
    return beam(SOFT, L).support(Support.fixed("A")).support(Support.fixed("B"));
  }

  @Test
  void deflections_with_shear_strain() {
    Load spread = new Load.AlongBeam("beam", 0, -3, 0);
    Response tip =
        under(
            beam(SOFT, L).support(Support.fixed("A")),
            new Load.AtNode("B", Wrench.force(0, -5, 0)));
    Response sag = under(simple(beam(SOFT, L)), spread);
    Published.memory(TIMOSHENKO, "L = 4, EI = 1, GA = 1")
        .value("cantilever: PL³/3EI + PL/GA, P = 5", "", "-126.667", tip.displacement("B").uy())
        .value(
            "simple: 5wL⁴/384EI + wL²/8GA, w = 3", "", "-16.0000", sag.deflection("beam", 0.5).uy())
        .value(
            "clamped: wL⁴/384EI + wL²/8GA, w = 3",
            "",
            "-8.00000",
            under(clamped(), spread).deflection("beam", 0.5).uy());
    Response propped =
        under(
            beam(SOFT, L).support(Support.fixed("A")).support(Support.holding("B", Freedom.UY)),
            spread);
    Published.memory(TIMOSHENKO + ": wL²/8 · 1/(1 + 3EI/GAL²)", "propped, L = 4, EI = 1, GA = 1")
        .value("moment at the wall", "", "-5.05263", propped.forces("beam").at(0).mz());
  }

  @Test
  void stiffness_with_shear_strain() {
    Response sinks = under(clamped(), new Load.Settlement("B", Freedom.UY, 1));
    Response turns = under(clamped(), new Load.Settlement("B", Freedom.RZ, 1));
    Published.memory(
            "texts on matrix analysis (Przemieniecki 1968): Φ = 12EI/GAL²", "clamped, Φ = 0.75")
        .value("12EI/(1 + Φ)L³", "", "0.107143", sinks.reaction("B").fy())
        .value("6EI/(1 + Φ)L²", "", "0.214286", sinks.forces("beam").at(0).mz())
        .value("(4 + Φ)EI/(1 + Φ)L", "", "0.678571", turns.reaction("B").mz())
        .value("(2 − Φ)EI/(1 + Φ)L", "", "0.178571", turns.reaction("A").mz());
  }

  @Test
  void out_of_the_plane_shear_strain_counts_alike() {
    Response tip =
        under(
            beam(SOFT, L).support(Support.fixed("A")),
            new Load.AtNode("B", Wrench.force(0, 0, -5)));
    Published.memory(TIMOSHENKO, "cantilever out of the plane, L = 4, EI = 1, GA = 1")
        .value("PL³/3EI + PL/GA, P = 5", "", "-126.667", tip.displacement("B").uz())
        .value("turn: PL²/2EI", "", "40.0000", tip.displacement("B").ry());
  }

  @Test
  void rolled_beam_of_the_commentary_without_axial_force() {
    Stock rolled = new Stocks(29000, 11200).with(new Stocks.Shape(4.692, 484, 484, 1));
    Load load = new Load.AlongBeam("beam", 0, -0.2 / 12, 0);
    Response sheared = under(simple(beam(rolled, 336)), load);
    Frame plain =
        simple(beam(rolled, 336))
            .build()
            .with(beam -> beam.bending(Beam.Bending.WITHOUT_SHEAR_STRAIN));
    Response flexure = Solver.of(plain).solve(LoadCase.of("w", load));
    Published book =
        Published.memory(
            "AISC 360-10, commentary C2.1, benchmark case 1 at P = 0", "28 ft, 0.200 kip/ft");
    book.value("moment", "kip·in", "235", sheared.forces("beam").at(0.5).mz())
        .value("sag by flexure alone", "in", "-0.197", flexure.deflection("beam", 0.5).uy());
    book.value("sag, shear area d·tw", "in", "-0.202", sheared.deflection("beam", 0.5).uy());
  }
}
