package rungwork.validation;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import rungwork.frame.Arc;
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
import rungwork.solve.Displacement;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.Stocks;

/** Grillage action against textbooks. Places in plan; the books' units throughout. */
class GrillageValidationTest {
  private static final String GRID =
      "course sheet Grid Example (three-member grid after Kassimali)";

  private static final Stock GRID_STOCK =
      new Stocks(200e6, 76e6).with(new Stocks.Shape(0.01, 3.47e-4, 3.47e-4, 1.15e-4));

  private static Frame grid() {
    return Frame.in(Plane.PLAN)
        .node("A", new Point(0, 0, 0))
        .node("B", new Point(8, 0, 0))
        .node("C", new Point(8, 6, 0))
        .node("D", new Point(0, 6, 0))
        .beam(Beam.rigid("AC", "A", "C", GRID_STOCK))
        .beam(Beam.rigid("BC", "B", "C", GRID_STOCK))
        .beam(Beam.rigid("DC", "D", "C", GRID_STOCK))
        .support(Support.fixed("A"))
        .support(Support.fixed("B"))
        .support(Support.fixed("D"))
        .build();
  }

  @Test
  void stiffness_terms_of_the_grids_members() {
    GuidedBeam ac = new GuidedBeam(10, GRID_STOCK);
    GuidedBeam bc = new GuidedBeam(6, GRID_STOCK);
    GuidedBeam dc = new GuidedBeam(8, GRID_STOCK);
    Published.read(GRID, "member A–C, 10 m")
        .value("12EI/L³", "kN/m", "832.8", ac.swayOutOfPlane())
        .value("6EI/L²", "kN", "4164", ac.swayMomentOutOfPlane())
        .value("4EI/L", "kN·m", "27760", ac.turnOutOfPlane())
        .value("GJ/L", "kN·m", "874", ac.twisting());
    Published.read(GRID, "member B–C, 6 m")
        .value("12EI/L³", "kN/m", "3855.6", bc.swayOutOfPlane())
        .value("6EI/L²", "kN", "11567", bc.swayMomentOutOfPlane())
        .value("4EI/L", "kN·m", "46267", bc.turnOutOfPlane())
        .value("2EI/L", "kN·m", "23133", bc.farTurnOutOfPlane())
        .value("GJ/L", "kN·m", "1456.7", bc.twisting());
    Published.read(GRID, "member D–C, 8 m")
        .value("12EI/L³", "kN/m", "1626.6", dc.swayOutOfPlane())
        .value("4EI/L", "kN·m", "34700", dc.turnOutOfPlane())
        .value("2EI/L", "kN·m", "17350", dc.farTurnOutOfPlane())
        .value("GJ/L", "kN·m", "1092.5", dc.twisting())
        .allowing(1e-5, "exactly 6506.25: half a unit off by definition")
        .value("6EI/L²", "kN", "6506.3", dc.swayMomentOutOfPlane());
  }

  /** Stiffness of node C from the motions under unit loads; the sheet turns the other way. */
  private static RealMatrix stiffnessAtC() {
    Solver solver = Solver.of(grid());
    Wrench[] units = {Wrench.force(0, 0, 1), Wrench.moment(-1, 0, 0), Wrench.moment(0, -1, 0)};
    RealMatrix flexibility = new Array2DRowRealMatrix(3, 3);
    for (int i = 0; i < units.length; i++) {
      Displacement c =
          solver.solve(LoadCase.of("unit", new Load.AtNode("C", units[i]))).displacement("C");
      flexibility.setColumn(i, new double[] {c.uz(), -c.rx(), -c.ry()});
    }
    return MatrixUtils.inverse(flexibility);
  }

  @Test
  void structure_matrix_of_the_grid() {
    RealMatrix k = stiffnessAtC();
    Published.read(GRID, "structure matrix at C")
        .value("K11", "kN/m", "6315", k.getEntry(0, 0))
        .value("K12", "kN", "14065", k.getEntry(0, 1))
        .value("K22", "kN·m", "57912", k.getEntry(1, 1))
        .value("K23", "kN·m", "-12905", k.getEntry(1, 2))
        .value("K33", "kN·m", "54238", k.getEntry(2, 2))
        .allowing(1e-5, "the sheet adds terms that are rounded to five figures")
        .value("K13", "kN", "-9837.5", k.getEntry(0, 2));
  }

  @Test
  void clamped_forces_of_the_grid() {
    Frame held =
        grid().on(grid().nodes().stream().map(node -> Support.fixed(node.name())).toList());
    Wrench atC = Solver.of(held).solve(gridLoads()).reaction("C");
    Published.read(GRID, "20 kN/m on B–C and D–C, C clamped")
        .value("force at C", "kN", "140", atC.fz())
        .value("moment about X at C", "kN·m", "60", -atC.mx())
        .value("moment about Z at C", "kN·m", "-106.67", -atC.my());
  }

  private static LoadCase gridLoads() {
    return LoadCase.of(
        "20 kN/m", new Load.AlongBeam("BC", 0, 0, -20), new Load.AlongBeam("DC", 0, 0, -20));
  }

  @Test
  void motions_and_reactions_of_the_grid() {
    Response response = Solver.of(grid()).solve(gridLoads());
    Displacement c = response.displacement("C");
    Published.derived("the sheet's equations solved by general linear algebra", "three-member grid")
        .value("w", "m", "-0.055951", c.uz())
        .value("θX", "rad", "0.01133", -c.rx())
        .value("θZ", "rad", "-0.005486", -c.ry())
        .value("moment at B", "kN·m", "445.06", Math.abs(response.reaction("B").mx()))
        .value("moment at D", "kN·m", "375.52", Math.abs(response.reaction("D").my()))
        .value("vertical at B", "kN", "144.67", response.reaction("B").fz())
        .value("vertical at D", "kN", "135.32", response.reaction("D").fz())
        .value("vertical at A", "kN", "0.01", response.reaction("A").fz());
  }

  @Test
  void right_angle_bent_of_two_arms() {
    double e = 210e6;
    double g = 84e6;
    double i = 16.6e-5;
    double j = 4.6e-5;
    Stock stock = new Stocks(e, g).with(new Stocks.Shape(0.01, i, i, j));
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(3, 0, 0))
            .node("C", new Point(0, 0, 0))
            .node("B", new Point(0, 3, 0))
            .beam(Beam.rigid("AC", "A", "C", stock))
            .beam(Beam.rigid("CB", "C", "B", stock))
            .support(Support.fixed("A"))
            .support(Support.fixed("B"))
            .build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("P", new Load.AtNode("C", Wrench.force(0, 0, -22))));
    InternalForces fixed = response.forces("AC").at(0);
    Published.memory("Logan, A First Course in the Finite Element Method, ex. 5.6", "bent")
        .allowing(0.015, "the book rounds its element terms to three figures")
        .value("w", "m", "-0.00259", response.displacement("C").uz())
        .value("θ", "rad", "0.00126", Math.abs(response.displacement("C").ry()))
        .value("shear", "kN", "11.0", Math.abs(fixed.vz()))
        .value("fixed moment", "kN·m", "31.0", Math.abs(fixed.my()));
    Published.memory("closed form by symmetry: m = (P/2)L²/(2EI) / (L/EI + L/GJ)", "bent")
        .value("w", "m", "-0.0026274", response.displacement("C").uz())
        .value("torque", "kN·m", "1.64642", Math.abs(fixed.t()))
        .value("fixed moment", "kN·m", "31.3536", Math.abs(fixed.my()));
  }

  private static final Stock UNIT = new Stocks(1, 0.4).with(new Stocks.Shape(1, 1, 1, 1.5));

  @Test
  void l_shaped_balcony_cantilever() {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("wall", new Point(0, 0, 0))
            .node("corner", new Point(2, 0, 0))
            .node("tip", new Point(2, 1.5, 0))
            .beam(Beam.rigid("arm", "wall", "corner", UNIT))
            .beam(Beam.rigid("outer", "corner", "tip", UNIT))
            .support(Support.fixed("wall"))
            .build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("P", new Load.AtNode("tip", Wrench.force(0, 0, -1))));
    Published.memory(
            "Timoshenko, Strength of Materials: P[a³/3EI + b³/3EI + ab²/GJ]", "L-shaped cantilever")
        .value("w", "", "-11.2917", response.displacement("tip").uz())
        .value("root moment", "", "2", response.forces("arm").at(0).my())
        .value("root torque", "", "1.5", Math.abs(response.forces("arm").at(0).t()));
  }

  @Test
  void two_crossing_beams_share_by_stiffness() {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("W", new Point(-2, 0, 0))
            .node("E", new Point(2, 0, 0))
            .node("S", new Point(0, -3, 0))
            .node("N", new Point(0, 3, 0))
            .node("X", new Point(0, 0, 0))
            .beam(Beam.rigid("WX", "W", "X", UNIT))
            .beam(Beam.rigid("XE", "X", "E", UNIT))
            .beam(Beam.rigid("SX", "S", "X", UNIT))
            .beam(Beam.rigid("XN", "X", "N", UNIT))
            .support(Support.pinned("W"))
            .support(Support.pinned("E"))
            .support(Support.holding("S", Freedom.UZ))
            .support(Support.holding("N", Freedom.UZ))
            .build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("P", new Load.AtNode("X", Wrench.force(0, 0, -10))));
    Published.memory("load shares as 48EI/L³", "crossing beams, spans 4 and 6")
        .value(
            "share of the short one",
            "",
            "7.7143",
            response.reaction("W").fz() + response.reaction("E").fz())
        .value(
            "share of the long one",
            "",
            "2.2857",
            response.reaction("S").fz() + response.reaction("N").fz());
  }

  @Test
  void quarter_circle_cantilever_cut_into_straight_pieces() {
    // Chords miss the arc by h²: two meshes give the limit (Richardson).
    double coarse = quarterCircle(40, 1.5).displacement("tip").uz();
    Response fine = quarterCircle(80, 1.5);
    double limit = (4 * fine.displacement("tip").uz() - coarse) / 3;
    Published book =
        Published.memory(
            "Timoshenko, Strength of Materials: PR³[π/4EI + (3π − 8)/4GJ]", "quarter circle");
    book.value("w", "", "-11.0324", limit).value("root moment", "", "2.000", rootMoment(fine));
    for (int pieces : new int[] {5, 20}) {
      double turn = Math.PI / 2 / pieces;
      book.allowing(0.7 * turn * turn, "the error that is stated for straight pieces: 0.7 β²")
          .value(
              "w in " + pieces + " pieces",
              "",
              "-11.0324",
              quarterCircle(pieces, 1.5).displacement("tip").uz());
    }
  }

  @Test
  void quarter_circle_whose_twist_or_whose_bending_governs() {
    double turn = Math.PI / 40;
    String formula = "Timoshenko, Strength of Materials: PR³[π/4EI + (3π − 8)/4GJ]";
    Published.memory(formula, "quarter circle in 20 pieces, GJ = 0.004 EI")
        .allowing(0.7 * turn * turn, "the error that is stated for straight pieces: 0.7 β²")
        .value("w", "", "-718.673", quarterCircle(20, 0.01).displacement("tip").uz());
    Published.memory(formula, "quarter circle in 20 pieces, GJ = 400 EI")
        .allowing(0.7 * turn * turn, "the error that is stated for straight pieces: 0.7 β²")
        .value("w", "", "-6.29031", quarterCircle(20, 1000).displacement("tip").uz());
  }

  private static double rootMoment(Response response) {
    return response.reaction("root").mx();
  }

  private static Response quarterCircle(int pieces, double torsionConstant) {
    Stock stock = new Stocks(1, 0.4).with(new Stocks.Shape(1, 1, 1, torsionConstant));
    double half = Math.sqrt(2);
    Frame frame =
        Frame.in(Plane.PLAN)
            .support(Support.fixed("root"))
            .node("root", new Point(2, 0, 0))
            .node("tip", new Point(0, 2, 0))
            .arc(new Arc("curve", "root", "tip", new Point(half, half, 0), pieces), stock)
            .build();
    return Solver.of(frame).solve(LoadCase.of("P", new Load.AtNode("tip", Wrench.force(0, 0, -1))));
  }
}
