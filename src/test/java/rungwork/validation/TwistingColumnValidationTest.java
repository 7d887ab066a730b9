package rungwork.validation;

import org.junit.jupiter.api.Test;
import rungwork.check.TwistingExample;
import rungwork.material.Elasticity;
import rungwork.section.Properties;

/** Columns that bend and twist at once, against a published tee. */
class TwistingColumnValidationTest {
  private static final double INCH = 0.0254;
  private static final double KSI = 6.894757e6;
  private static final double KIP = 4448.222;

  /** AISC 360 takes E = 29 000 ksi and G = 11 200 ksi. */
  private static final Elasticity STEEL =
      new Elasticity(29000 * KSI, 29000.0 / (2 * 11200) - 1, 7850);

  /** WT12×81 of A992, 25.5 ft about x, 20 ft about y and against twist; Iw = 0 for tees. */
  @Test
  void a_structural_tee() {
    double in4 = Math.pow(INCH, 4);
    double area = 23.9 * INCH * INCH;
    Properties tee =
        TwistingExample.section(
            area,
            23.9 * 3.50 * 3.50 * in4,
            23.9 * 3.05 * 3.05 * in4,
            9.22 * in4,
            0,
            (2.70 - 1.22 / 2) * INCH);
    double[] lengths = {25.5 * 12 * INCH, 20 * 12 * INCH, 20 * 12 * INCH};
    double far = 1e-3 * INCH;
    double bending =
        TwistingExample.critical(STEEL, tee, new double[] {lengths[0], far, far}) / area / KSI;
    double both =
        TwistingExample.critical(STEEL, tee, new double[] {far, lengths[1], lengths[2]})
            / area
            / KSI;
    Published.memory(
            "Segui, Steel Design, compressive strength of a tee (AISC 360, E3 and E4), recomputed",
            "WT12×81")
        .allowing(0.001, "the book carries rounded steps; radii of gyration as printed")
        .value("Fe, bending about x", "ksi", "37.44", bending)
        .value("Fe, bending about y and twisting", "ksi", "43.63", both)
        .value(
            "Pn, bending about x",
            "kip",
            "683.3",
            TwistingExample.american(area, 50 * KSI, bending * KSI * area) / KIP)
        .value(
            "Pn, bending about y and twisting",
            "kip",
            "739.7",
            TwistingExample.american(area, 50 * KSI, both * KSI * area) / KIP);
  }
}
