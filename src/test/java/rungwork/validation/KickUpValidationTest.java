package rungwork.validation;

import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Member;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.MemberChecks;
import rungwork.check.MemberChecks.Growth;
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
import rungwork.material.UnratedMaterial;
import rungwork.section.Section;
import rungwork.solve.Response;
import rungwork.solve.Solver;

/** A bar that leaves the line of its force. */
class KickUpValidationTest {
  private static final double INCH = 0.0254;
  private static final double POUND_PER_SQUARE_INCH = 4.4482216152605 / (INCH * INCH);

  private static final RatedMaterial STEEL =
      new UnratedMaterial(
              "steel",
              new Elasticity(210e9, 0.3, 7850),
              new rungwork.material.Source("a text", rungwork.material.Source.Tag.FROM_MEMORY))
          .stating(MPa(235), MPa(360), "for this test");

  /** The stress of 1 lb in a rod whose middle stands off the line of the force. */
  private static double stress(double off) {
    Stock rod = new Stock(Section.flatBar(mm(12.7), mm(12.7)), STEEL);
    Frame frame =
        Frame.rising(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(0.1, 0, off))
            .node("C", new Point(0.9, 0, off))
            .node("D", new Point(1, 0, 0))
            .beam(Beam.rigid("foot", "A", "B", rod))
            .beam(Beam.rigid("rod", "B", "C", rod))
            .beam(Beam.rigid("head", "C", "D", rod))
            .support(Support.fixed("A"))
            .build();
    Solver solver = Solver.of(frame);
    Response push =
        solver.solve(
            LoadCase.of("1 lb", new Load.AtNode("D", Wrench.force(-4.4482216152605, 0, 0))));
    Growth growth = new Growth(solver.solve(LoadCase.of("nothing")), push);
    Member member =
        new Member("rod", List.of("rod"), new BucklingLengths(1, 1, "not asked"), List.of());
    double factor = MemberChecks.firstYield(member, growth, STEEL.strength()).factor();
    return STEEL.strength().yield() / factor / POUND_PER_SQUARE_INCH;
  }

  @Test
  void bent_rod() {
    Published.read(
            "MATHalino, Strength of Materials, combined axial and bending, problem 902",
            "rod 1/2 in square, bent 1/2 in off the line of 1 lb")
        .value("largest stress", "psi", "28", stress(INCH / 2))
        .value("the same, straight", "psi", "4", stress(0))
        .value("ratio", "", "7", stress(INCH / 2) / stress(0));
  }
}
