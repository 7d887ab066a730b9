package rungwork.validation;

import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.check.Member;
import rungwork.check.MemberChecks;
import rungwork.check.WallLimits;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.section.Section;
import rungwork.section.Wall.Edge;
import rungwork.solve.Solver;

class MemberValidationTest {
  private static final String TABLE = "EN 1993-1-1:2005, table 5.2";

  @Test
  void a_bar_pressed_at_its_edge_has_the_printed_largest_stress() {
    Wrench atEdge = new Wrench(-15e3, 0, 0, 0, 750, 0);
    Published.memory(
            "R. C. Hibbeler, Mechanics of Materials, example 8.2",
            "bar 100×40 mm, 15 kN at the middle of its short edge")
        .value("σ", "MPa", "15.00", stress(Section.flatBar(mm(100), mm(40)), atEdge) / 1e6);
  }

  @Test
  void normal_and_shear_stress_combine_to_the_printed_von_mises_stress() {
    Section tube = Section.roundTube(mm(60), mm(4));
    double kpsi = 6.894757e6;
    double force = 40 * kpsi * tube.properties().area();
    double torque = 45 * kpsi * tube.properties().it() / 0.030;
    Published.memory(
            "Budynas & Nisbett, Shigley's Mechanical Engineering Design, example 5-1 (c)",
            "σ = 40 kpsi, τ = 45 kpsi")
        .value("σ'", "kpsi", "87.6", stress(tube, new Wrench(force, 0, 0, torque, 0, 0)) / kpsi);
  }

  @Test
  void a_road_case_of_three_g_leaves_two_ninths_of_yield_to_one_g() {
    Published.identity("two thirds of yield, shared by three", "bump of 3 g")
        .value("1 g stress / fy", "", "0.222", 1 / DesignFactor.ROAD.value() / 3);
  }

  @Test
  void walls_in_uniform_compression_have_the_tabulated_limits() {
    WallLimits internal = WallLimits.of(Edge.INTERNAL);
    WallLimits outstand = WallLimits.of(Edge.OUTSTAND);
    WallLimits round = WallLimits.of(Edge.ROUND);
    Published.read(TABLE, "internal part, compression")
        .value("class 1", "ε", "33", internal.first())
        .value("class 2", "ε", "38", internal.second())
        .value("class 3", "ε", "42", third(Edge.INTERNAL, 1));
    Published.read(TABLE, "outstand, compression")
        .value("class 1", "ε", "9", outstand.first())
        .value("class 2", "ε", "10", outstand.second())
        .value("class 3", "ε", "14", third(Edge.OUTSTAND, 1));
    Published.memory(TABLE, "round tube")
        .value("class 1", "ε²", "50", round.first())
        .value("class 2", "ε²", "70", round.second())
        .value("class 3", "ε²", "90", third(Edge.ROUND, 1));
  }

  @Test
  void a_web_in_pure_bending_has_the_tabulated_limit() {
    Published.read(TABLE, "internal part, bending")
        .value("class 3", "ε", "124", third(Edge.INTERNAL, -1));
  }

  @Test
  void the_factor_for_the_yield_strength_is_the_tabulated_one() {
    String[] printed = {"1.00", "0.92", "0.81", "0.75", "0.71"};
    double[] yield = {235, 275, 355, 420, 460};
    for (int i = 0; i < yield.length; i++) {
      Published.read(TABLE, "fy = " + Math.round(yield[i]) + " MPa")
          .value("ε", "", printed[i], WallLimits.yieldFactor(yield[i] * 1e6).result());
    }
  }

  private static double third(Edge edge, double ratio) {
    return WallLimits.third(edge, 1, ratio).result();
  }

  /** The largest equivalent stress of a cantilever of 1 m with this wrench at its tip [Pa]. */
  private static double stress(Section section, Wrench atTip) {
    RatedMaterial steel =
        new RatedMaterial(
            "steel",
            new Elasticity(210e9, 0.3, 7850),
            new RatedMaterial.Strength(1e9, 1e9, 1e9, 0),
            new Source("an example", Source.Tag.READ));
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("root", new Point(0, 0, 0))
            .node("tip", new Point(1, 0, 0))
            .beam(Beam.rigid("bar", "root", "tip", new Stock(section, steel)))
            .support(Support.fixed("root"))
            .build();
    LoadCase load = LoadCase.of("tip", new Load.AtNode("tip", atTip));
    Member bar =
        new Member("bar", List.of("bar"), new Member.BucklingLengths(1, 1, "example"), List.of());
    return MemberChecks.of(bar, Solver.of(frame).solve(load), DesignFactor.NONE).stream()
        .filter(check -> check.what().equals("combined stress"))
        .map(Check::verdict)
        .mapToDouble(verdict -> verdict.numbers().orElseThrow().demand())
        .findFirst()
        .orElseThrow();
  }
}
