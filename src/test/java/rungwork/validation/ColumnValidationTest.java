package rungwork.validation;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Column;
import rungwork.check.ColumnCurve;
import rungwork.check.Step;

class ColumnValidationTest {
  private static final double E = 210e9;

  @Test
  void buckling_curves_a_and_b_give_the_tabulated_reduction_factors() {
    String[] slenderness = {"0.2", "0.5", "0.8", "1.0", "1.2", "1.5", "2.0", "3.0"};
    String[] a = {"1.0000", "0.9243", "0.7957", "0.6656", "0.5300", "0.3724", "0.2229", "0.1036"};
    String[] b = {"1.0000", "0.8842", "0.7245", "0.5970", "0.4781", "0.3422", "0.2095", "0.0994"};
    for (int i = 0; i < slenderness.length; i++) {
      tabulated(ColumnCurve.A, slenderness[i], a[i]);
      tabulated(ColumnCurve.B, slenderness[i], b[i]);
    }
  }

  private static void tabulated(ColumnCurve curve, String slenderness, String printed) {
    double bar = Double.parseDouble(slenderness);
    Published.memory(
            "EN 1993-1-1:2005, 6.3.1.2, as tabulated in ECCS manuals",
            "curve " + curve.name().toLowerCase(java.util.Locale.ROOT) + ", λ̄ = " + slenderness)
        .value("χ", "", printed, chi(curve, bar));
  }

  @Test
  void the_imperfection_factors_are_those_of_table_6_1() {
    Published.memory("EN 1993-1-1:2005, table 6.1", "imperfection factors")
        .value("α, curve a0", "", "0.13", ColumnCurve.A0.imperfection())
        .value("α, curve a", "", "0.21", ColumnCurve.A.imperfection())
        .value("α, curve b", "", "0.34", ColumnCurve.B.imperfection())
        .value("α, curve c", "", "0.49", ColumnCurve.C.imperfection())
        .value("α, curve d", "", "0.76", ColumnCurve.D.imperfection());
  }

  @Test
  void initial_bows_are_those_of_table_5_1() {
    Published.memory("EN 1993-1-1:2005, table 5.1, elastic analysis", "initial bow of a member")
        .value("L/e₀, curve a", "", "300", 1 / ColumnCurve.A.bow())
        .value("L/e₀, curve c", "", "200", 1 / ColumnCurve.C.bow());
  }

  @Test
  void a_published_column_of_eight_metres_has_its_printed_reduction_factor() {
    String source =
        "Steel Buildings in Europe, Multi-Storey Steel Buildings, part 4, worked example A.5";
    List<Step> strong = new Column(E, 149e-4, 25170e-8, 8.00).reduction(ColumnCurve.B, 235e6);
    Published.read(source, "HE 300 B, S235, 8.00 m about y")
        .value("Ncr,y", "kN", "8151.2", strong.get(0).result() / 1e3)
        .value("λ̄y", "", "0.655", strong.get(1).result())
        .value("Φy", "", "0.792", strong.get(2).result())
        .value("χy", "", "0.808", strong.get(3).result());
    Column weak = new Column(E, 149e-4, 8560e-8, 5.60);
    Published.read(source, "HE 300 B, S235, 5.60 m about z")
        .value("Ncr,z", "kN", "5657.4", weak.critical().result() / 1e3)
        .value("λ̄z", "", "0.787", weak.slenderness(235e6).result());
  }

  @Test
  void a_pipe_column_buckles_at_the_printed_loads_for_four_end_conditions() {
    double i = Math.PI / 64 * (Math.pow(0.1, 4) - Math.pow(0.09, 4));
    double area = Math.PI / 4 * (0.01 - 0.0081);
    Published gere =
        Published.read(
            "J. M. Gere & B. J. Goodno, Mechanics of Materials, 7th ed., problem 11.4-8",
            "pipe 100/90 mm, 4.0 m, base fixed");
    gere.value("I", "10³ mm⁴", "1688", i * 1e9)
        .value("Pcr, top pinned", "kN", "447", euler(area, i, 4 / Math.sqrt(2.046)))
        .value("Pcr, top fixed", "kN", "875", euler(area, i, 2))
        .value("Pcr, top free", "kN", "54.7", euler(area, i, 8))
        .value("Pcr, top guided", "kN", "219", euler(area, i, 4));
  }

  private static double euler(double area, double i, double length) {
    return new Column(E, area, i, length).critical().result() / 1e3;
  }

  @Test
  void johnsons_parabola_is_inverted_by_the_published_formula_for_the_diameter() {
    double d = 0.020;
    double k = 0.7;
    double length = 0.3;
    double yield = 300e6;
    double young = 207e9;
    double area = Math.PI / 4 * d * d * (1 - k * k);
    double i = Math.PI / 64 * Math.pow(d, 4) * (1 - Math.pow(k, 4));
    double force = new Column(young, area, i, length).johnson(yield).result();
    double inverted =
        2
            * Math.sqrt(
                force / (Math.PI * yield * (1 - k * k))
                    + yield * length * length / (Math.PI * Math.PI * young * (1 + k * k)));
    Published.derived(
            "formula for D of Budynas & Nisbett, Shigley's Mechanical Engineering Design, 8th ed.,"
                + " problem 4-74, read in the source; numbers our own",
            "hollow round strut, bore 0.7 D, 300 mm, C = 1")
        .value("D from its force", "mm", "20.00000", inverted * 1e3);
  }

  @Test
  void a_long_strut_leaves_the_parabola_for_eulers_curve() {
    double area = Math.PI / 4 * (0.020 * 0.020 - 0.014 * 0.014);
    double i = Math.PI / 64 * (Math.pow(0.020, 4) - Math.pow(0.014, 4));
    String[] printed = {"1355", "5419", "10838", "21677"};
    double[] fixity = {0.25, 1, 2, 4};
    for (int n = 0; n < fixity.length; n++) {
      Column strut = new Column(207e9, area, i, 1.5 / Math.sqrt(fixity[n]));
      Published.derived(
              "data of Shigley's Mechanical Engineering Design, 8th ed., problem 4-74; Euler's"
                  + " formula worked by hand",
              "strut 20/14 mm, 1500 mm, C = " + fixity[n])
          .value("Pcr", "N", printed[n], strut.johnson(300e6).result());
    }
  }

  @Test
  void parabola_and_eulers_curve_meet_at_half_the_squash_load() {
    Column column = new Column(E, 1e-3, 1e-6, 1);
    double yield = 2 * column.critical().result() / 1e-3;
    Published.identity("A·fy·(1 − λ̄²/4) = A·fy/λ̄² at λ̄ = √2", "any column")
        .value("N/(A·fy)", "", "0.50000", column.johnson(yield).result() / (1e-3 * yield));
  }

  /** The reduction factor of a column whose yield strength gives it this slenderness. */
  private static double chi(ColumnCurve curve, double slenderness) {
    Column column = new Column(E, 1e-3, 1e-6, 1);
    double yield = slenderness * slenderness * column.critical().result() / 1e-3;
    List<Step> steps = column.reduction(curve, yield);
    return steps.get(steps.size() - 1).result();
  }
}
