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

  private static final String KARNOVSKY =
      "Karnovsky & Lebed, Advanced Methods of Structural Analysis, 2010, ";

  /** Spans of 6, 4 and 4 with EI of 1, 2 and 2; clamped at A, pinned at D. */
  private static Frame.Builder threeSpans() {
    Stock twice = MATERIAL.planar(1, 2);
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(6, 0, 0))
        .node("C", new Point(10, 0, 0))
        .node("D", new Point(14, 0, 0))
        .beam(Beam.rigid("AB", "A", "B", MATERIAL.planar(1, 1)))
        .beam(Beam.rigid("BC", "B", "C", twice))
        .beam(Beam.rigid("CD", "C", "D", twice))
        .support(Support.fixed("A"))
        .support(Support.holding("D", Freedom.UY));
  }

  private static Response settled(Frame.Builder frame) {
    return under(
        frame,
        new Load.Settlement("A", Freedom.RZ, -0.01),
        new Load.Settlement("C", Freedom.UY, -0.04));
  }

  @Test
  void karnovsky_example_11_4_with_its_joints_held() {
    Response held =
        settled(
            threeSpans()
                .support(Support.holding("B", Freedom.UY, Freedom.RZ))
                .support(Support.holding("C", Freedom.UY, Freedom.RZ)));
    Published.read(KARNOVSKY + "ex. 11.4", "a clamp turns by 0.01, a support sinks by 0.04: held")
        .value("MAB", "EI", "-0.00667", -held.forces("AB").at(0).mz())
        .value("MBA", "EI", "-0.00333", held.forces("AB").at(1).mz())
        .value("MBC", "EI", "0.03", -held.forces("BC").at(0).mz())
        .value("MCD", "EI", "-0.015", -held.forces("CD").at(0).mz())
        .value("MBC − MBA", "EI", "0.02667", held.reaction("B").mz())
        .value("MCB − MCD", "EI", "0.015", held.reaction("C").mz());
  }

  @Test
  void karnovsky_example_11_4_with_its_joints_free() {
    Response free =
        settled(
            threeSpans()
                .support(Support.holding("B", Freedom.UY))
                .support(Support.holding("C", Freedom.UY)));
    Published.read(KARNOVSKY + "ex. 11.4", "a clamp turns by 0.01, a support sinks by 0.04")
        .value("moment at A", "1e-4 EI", "98", 1e4 * free.forces("AB").at(0).mz())
        .value("moment at B", "1e-4 EI", "-96", 1e4 * free.forces("AB").at(1).mz())
        .value("moment at C", "1e-4 EI", "174", 1e4 * free.forces("CD").at(0).mz());
  }

  @Test
  void karnovsky_example_11_3_two_loaded_spans() {
    Stock unit = MATERIAL.planar(1, 1);
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("0", new Point(0, 0, 0))
            .node("1", new Point(8, 0, 0))
            .node("2", new Point(18, 0, 0))
            .beam(Beam.rigid("left", "0", "1", unit))
            .beam(Beam.rigid("right", "1", "2", unit))
            .support(
                Support.holding("0", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY))
            .support(Support.holding("1", Freedom.UY))
            .support(Support.holding("2", Freedom.UY));
    // The loads are those that give the printed moments of the held joint: ql²/8 = 16 and
    // Pab(l + b)/2l² = 20.16.
    Load[] loads = {
      new Load.AlongBeam("left", 0, -2, 0), new Load.OnBeam("right", 6, Wrench.force(0, -12, 0))
    };
    Response response = under(frame, loads);
    Response held = under(frame.support(Support.holding("1", Freedom.RZ)), loads);
    Published.read(KARNOVSKY + "ex. 11.3, its loads deduced", "two spans of 8 and 10, pinned ends")
        .value("held moment of the left span", "kN·m", "16", -held.forces("left").at(1).mz())
        .value("held moment of the right span", "kN·m", "20.16", -held.forces("right").at(0).mz())
        .value("turn of the joint", "1/EI", "-6.163", response.displacement("1").rz())
        .value("moment over the support", "kN·m", "-18.31", response.forces("left").at(1).mz());
  }

  /**
   * A column of 3 + 5 clamped at its foot A, a crossbar of 10 from its side to a roller B; twice as
   * stiff; 0.6 deep. Sizes deduced from the printed unit displacements.
   */
  private static Frame.Builder columnWithCrossbar() {
    Stock column = MATERIAL.planar(1e8, 1);
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0))
        .node("joint", new Point(0, 5, 0))
        .node("C", new Point(0, 8, 0))
        .node("B", new Point(10, 5, 0))
        .beam(Beam.rigid("lower", "A", "joint", column))
        .beam(Beam.rigid("upper", "joint", "C", column))
        .beam(Beam.rigid("crossbar", "joint", "B", MATERIAL.planar(1e8, 2)))
        .support(Support.fixed("A"));
  }

  private static final String KARNOVSKY_7 = KARNOVSKY + "sec. 7.6, fig. 7.20";

  @Test
  void karnovsky_frame_of_section_7_6_gives_way_as_printed() {
    Response atB = under(columnWithCrossbar(), new Load.AtNode("B", Wrench.force(0, 1, 0)));
    Response atC = under(columnWithCrossbar(), new Load.AtNode("C", Wrench.force(1, 0, 0)));
    Published.read(KARNOVSKY_7, "unit forces on the frame without its rollers")
        .value("δ11", "1/EI", "666.67", atB.displacement("B").uy())
        .value("δ12", "1/EI", "275", Math.abs(atB.displacement("C").ux()))
        .value("δ22", "1/EI", "170.67", atC.displacement("C").ux());
  }

  @Test
  void karnovsky_frame_of_section_7_6_warmed_unevenly() {
    // Outside −10, above the crossbar 0, below it 20 degrees; faces 0.6 apart.
    double alpha = 1e-5;
    Response response =
        under(
            columnWithCrossbar()
                .support(Support.holding("B", Freedom.UY))
                .support(Support.holding("C", Freedom.UX)),
            new Load.Warmth("lower", alpha, 5, -30 / 0.6, 0),
            new Load.Warmth("upper", alpha, -5, -10 / 0.6, 0),
            new Load.Warmth("crossbar", alpha, 10, -20 / 0.6, 0));
    Published book = Published.read(KARNOVSKY_7, "frame between −10, 0 and 20 degrees, 0.6 deep");
    book.value("crossbar at the joint", "αEI", "82.99", moment(response, "crossbar", 0) / alpha);
    book.allowing(5e-5, "the book multiplies its rounded 4.876 by 3")
        .value("column over the joint", "αEI", "14.628", moment(response, "upper", 0) / alpha);
    book.allowing(
            3e-4, "the book's figures disagree in their fourth digit: 82.99 − 14.628 is not 68.37")
        .value("column under the joint", "αEI", "68.37", moment(response, "lower", 1) / alpha)
        .value("foot of the column", "αEI", "43.99", moment(response, "lower", 0) / alpha);
  }

  private static double moment(Response response, String beam, double at) {
    return Math.abs(response.forces(beam).at(at).mz());
  }
}
