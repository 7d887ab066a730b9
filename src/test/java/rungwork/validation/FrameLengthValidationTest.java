package rungwork.validation;

import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.check.Column;
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
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.section.Section;
import rungwork.solve.Buckling;
import rungwork.solve.CriticalLoad;
import rungwork.solve.Solver;

/** A column whose effective length comes from the critical load of its frame, as a rail's does. */
class FrameLengthValidationTest {
  private static final double LOAD = 100e3;
  private static final Section PIPE = Section.roundTube(mm(100), mm(5));
  private static final RatedMaterial STEEL =
      new RatedMaterial(
          "steel of the problem",
          new Elasticity(210e9, 0.3, 7850),
          new RatedMaterial.Strength(235e6, 360e6, 235e6, 0.24),
          new Source("stated for tests", Source.Tag.STATED_BY_USER));

  /** The column lies along x with its base at x = 0 and may bend in plan. */
  @ParameterizedTest
  @CsvSource({"pinned, UY, 447", "fixed, UY RZ, 875", "free, '', 54.7", "guided, RZ, 219"})
  void a_pipe_column_has_its_printed_load_by_the_length_that_its_frame_gives_it(
      String top, String held, String printed) {
    List<Freedom> holds = new ArrayList<>();
    for (String one : held.isEmpty() ? new String[0] : held.split(" ")) {
      holds.add(Freedom.valueOf(one));
    }
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("base", new Point(0, 0, 0))
            .node("top", new Point(4, 0, 0))
            .beam(Beam.rigid("pipe", "base", "top", new Stock(PIPE, STEEL)))
            .support(Support.fixed("base"))
            .support(Support.holding("top", Freedom.UZ, holds.toArray(Freedom[]::new)))
            .build();
    LoadCase push = LoadCase.of("push", new Load.AtNode("top", new Wrench(-LOAD, 0, 0, 0, 0, 0)));
    CriticalLoad critical =
        Buckling.of(Solver.of(frame).solve(push)).inPlaneBelow(25).orElseThrow();
    double length = critical.effectiveLength("pipe").orElseThrow();
    Column column = new Column(210e9, PIPE.properties().area(), PIPE.properties().iz(), length);
    Published.read(
            "J. M. Gere & B. J. Goodno, Mechanics of Materials, 7th ed., problem 11.4-8",
            "pipe 100/90 mm, 4.0 m, base fixed, top " + top + ": length from the frame")
        .value("Pcr", "kN", printed, column.critical().result() / 1e3);
  }
}
