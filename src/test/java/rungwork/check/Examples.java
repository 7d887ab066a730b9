package rungwork.check;

import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.check.Member.BucklingLengths;
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
import rungwork.material.UnratedMaterial;
import rungwork.section.Section;
import rungwork.solve.Response;
import rungwork.solve.Solver;

/** A cantilever of 1 m along x in plan, fixed at "root" and loaded at "tip". */
final class Examples {
  static final Elasticity STEEL = new Elasticity(210e9, 0.3, 7850);
  static final RatedMaterial S355 = rated("S355", 355e6, 355e6);
  static final Section TUBE = Section.rectangularTube(mm(80), mm(40), mm(3));
  static final DesignFactor NONE = DesignFactor.NONE;
  static final BucklingLengths ONE_METRE = new BucklingLengths(1, 1, "full length");
  static final Member BAR = new Member("bar", List.of("bar"), ONE_METRE, List.of());

  private Examples() {}

  static RatedMaterial rated(String name, double yield, double welded) {
    return new RatedMaterial(
        name,
        STEEL,
        new RatedMaterial.Strength(yield, 1.4 * yield, welded, 0.2),
        new Source("a standard", Source.Tag.READ));
  }

  static RatedMaterial stated() {
    return new UnratedMaterial("ERW 1010", STEEL, new Source("a mill", Source.Tag.FROM_MEMORY))
        .stating(MPa(235), MPa(360), "mill certificate 17");
  }

  static Response cantilever(Stock stock, Wrench atTip) {
    return cantilever(stock, new Load.AtNode("tip", atTip));
  }

  static Response cantilever(Stock stock, Load... loads) {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("root", new Point(0, 0, 0))
            .node("tip", new Point(1, 0, 0))
            .beam(Beam.rigid("bar", "root", "tip", stock))
            .support(Support.fixed("root"))
            .build();
    return Solver.of(frame).solve(LoadCase.of("test load", loads));
  }

  static Check only(String what, List<Check> checks) {
    List<Check> found = checks.stream().filter(check -> check.what().equals(what)).toList();
    if (found.size() != 1) {
      throw new AssertionError(what + " found " + found.size() + " times among " + checks);
    }
    return found.get(0);
  }

  static double result(Check check, String letter) {
    return check.working().stream()
        .filter(step -> step.formula().result().letter().equals(letter))
        .mapToDouble(Step::result)
        .findFirst()
        .orElseThrow();
  }
}
