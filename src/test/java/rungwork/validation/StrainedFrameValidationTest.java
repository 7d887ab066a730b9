package rungwork.validation;

import java.util.Set;
import org.junit.jupiter.api.Test;
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
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.Stocks;

/** Redundant frames that are strained by warmth, misfit and settlement. Any consistent units. */
class StrainedFrameValidationTest {
  private static final Stocks MATERIAL = new Stocks(1, 0.4);

  /** A portal of height 3 and span 4, beam twice as stiff as the columns: k = 1.5. */
  private static Frame.Builder portal() {
    Stock column = MATERIAL.planar(1e7, 1);
    return Frame.in(Plane.PLAN)
        .node("1", new Point(0, 0, 0))
        .node("2", new Point(0, 3, 0))
        .node("3", new Point(4, 3, 0))
        .node("4", new Point(4, 0, 0))
        .beam(Beam.rigid("left", "1", "2", column))
        .beam(Beam.rigid("beam", "2", "3", MATERIAL.planar(1e7, 2)))
        .beam(Beam.rigid("right", "3", "4", column));
  }

  private static Response under(Frame.Builder frame, Load... loads) {
    return Solver.of(frame.build()).solve(LoadCase.of("strain", loads));
  }

  @Test
  void portal_whose_beam_becomes_warmer() {
    Load warmth = Load.Warmth.uniform("beam", 1e-4, 100);
    Response fixed =
        under(portal().support(Support.fixed("1")).support(Support.fixed("4")), warmth);
    Response pinned =
        under(
            portal()
                .support(
                    Support.holding(
                        "1", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY))
                .support(Support.pinned("4")),
            warmth);
    Published.memory(
            "Kleinlogel, Rigid Frame Formulas: 3EIαTL(2k + 1)/h³(k + 2) and 3EIαTLk/h³(2k + 3)",
            "portal 3 × 4, k = 1.5, αT = 0.01")
        .value("H, fixed bases", "", "0.0050794", fixed.reaction("1").fx())
        .value("H, pinned bases", "", "0.00111111", pinned.reaction("1").fx());
    Published.derived(
            "slope deflection by symmetry: θ = 3δ/h(k + 2), M = 2EIθ/L", "portal, fixed bases")
        .value("corner moment", "", "0.00571429", Math.abs(fixed.forces("beam").at(0).mz()));
  }

  /** A bar upright and two at 30° to it, all hinged, meeting at the bottom. */
  private static Frame.Builder threeBars() {
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("bottom", new Point(0, 0, 0))
            .support(Support.holding("bottom", Freedom.UZ, Freedom.RX, Freedom.RY, Freedom.RZ));
    double side = Math.tan(Math.PI / 6);
    String[] names = {"left", "middle", "right"};
    for (int i = 0; i < 3; i++) {
      String top = "top of " + names[i];
      frame
          .node(top, new Point((i - 1) * side, 1, 0))
          .support(Support.fixed(top))
          .beam(
              Beam.rigid(names[i], "bottom", top, MATERIAL.planar(1, 1e-9))
                  .released(Set.of(Release.IN_PLANE_BENDING), Set.of()));
    }
    return frame;
  }

  @Test
  void three_bars_of_which_one_is_too_short_or_warmer() {
    Response misfit = under(threeBars(), new Load.Misfit("middle", -0.01, 0, 0, 0));
    Response loaded = under(threeBars(), new Load.AtNode("bottom", Wrench.force(0, -1, 0)));
    Published.memory(
            "Timoshenko, Strength of Materials, part I: EAΔ/L · 1/(1 + 1/2cos³α)",
            "three hinged bars, α = 30°, EA = 1, L = 1, the middle one 0.01 too short")
        .value("pull in the middle bar", "", "0.00565035", misfit.forces("middle").at(0.5).n())
        .value("push in an outer bar", "", "-0.00326223", misfit.forces("left").at(0.5).n());
    Published.memory(
            "Timoshenko, Strength of Materials, part I: P/(1 + 2cos³α)",
            "three hinged bars, α = 30°, P = 1")
        .value("pull in the middle bar", "", "0.434965", loaded.forces("middle").at(0.5).n());
  }

  @Test
  void continuous_beam_whose_middle_support_sinks() {
    Stock unit = MATERIAL.planar(1, 1);
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(4, 0, 0))
            .node("C", new Point(10, 0, 0))
            .beam(Beam.rigid("AB", "A", "B", unit))
            .beam(Beam.rigid("BC", "B", "C", unit))
            .support(
                Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY))
            .support(Support.holding("B", Freedom.UY))
            .support(Support.holding("C", Freedom.UY, Freedom.UZ));
    Response sinks = under(frame, new Load.Settlement("B", Freedom.UY, -0.01));
    Response loaded = under(frame, new Load.OnBeam("BC", 2, Wrench.force(0, -5, 0)));
    Published.memory(
            "Clapeyron's theorem of three moments, any text", "spans 4 and 6, EI = 1, pinned ends")
        .value("B sinks by 0.01: M = 3EIΔ/L₁L₂", "", "0.00125000", sinks.forces("AB").at(1).mz())
        .value(
            "P = 5 at 2 in the span of 6: M = Pab(l + b)/2l(L₁ + L₂)",
            "",
            "-3.33333",
            loaded.forces("AB").at(1).mz());
  }
}
