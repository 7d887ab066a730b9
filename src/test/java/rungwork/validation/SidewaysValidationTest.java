package rungwork.validation;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.check.SidewaysExample;
import rungwork.material.Elasticity;

/** Lateral-torsional buckling against published figures. */
class SidewaysValidationTest {
  private static final double INCH = 0.0254;
  private static final double KSI = 6.894757e6;
  private static final double KIP_INCH = 4448.222 * INCH;

  /** AISC 360 takes E = 29 000 ksi and G = 11 200 ksi. */
  private static final Elasticity STEEL =
      new Elasticity(29000 * KSI, 29000.0 / (2 * 11200) - 1, 7850);

  private static double mcr(double feet) {
    return SidewaysExample.critical(
            STEEL,
            8.07 * Math.pow(INCH, 4),
            1.01 * Math.pow(INCH, 4),
            358 * Math.pow(INCH, 6),
            feet * 12 * INCH)
        / KIP_INCH;
  }

  /** At Lr the elastic moment is 0.7·Fy·Sx: 14.5 ft for C15x33.9 of A36. */
  @Test
  void a_channel_s_elastic_moment_meets_seven_tenths_of_yield_at_the_tabulated_length() {
    Published.memory(
            "AISC Steel Construction Manual, 14th ed., table 3-8: Lr = 14.5 ft", "C15x33.9, A36")
        .allowing(0.006, "Lr to three digits, and the specification's own rounded factors")
        .value("Mcr", "kip·in", "1058", mcr(14.5));
  }

  /** Fcr = π²E/(Lb/rts)²·√(1 + 0.078·J·c/(Sx·ho)·(Lb/rts)²), c = ho/2·√(Iy/Cw) for channels. */
  @ParameterizedTest
  @CsvSource({"5", "14.5", "25"})
  void a_channel_s_critical_moment_is_that_of_the_american_specification(double feet) {
    double ho = 14.4;
    double sx = 42.0;
    double c = ho / 2 * Math.sqrt(8.07 / 358);
    double slenderness = feet * 12 / Math.sqrt(Math.sqrt(8.07 * 358) / sx);
    double fcr =
        Math.PI
            * Math.PI
            * 29000
            / (slenderness * slenderness)
            * Math.sqrt(1 + 0.078 * 1.01 * c / (sx * ho) * slenderness * slenderness);
    Published.memory("AISC 360-16, eq. F2-4 with c of eq. F2-8b", "C15x33.9, Lb = " + feet + " ft")
        .allowing(0.004, "0.078 stands for 2·G/(π²·E) = 0.0783, rts to its formula")
        .value("Mcr", "kip·in", String.format(Locale.ROOT, "%.0f", fcr * sx), mcr(feet));
  }

  @ParameterizedTest
  @CsvSource({"0.2, 1.0000", "0.5, 0.7793", "1.0, 0.4671", "1.5, 0.2766", "2.0, 0.1766"})
  void curve_d_has_its_tabulated_values(double slenderness, String chi) {
    Published.memory(
            "EN 1993-1-1:2005, 6.3.2.2 and table 6.3, curve d, as tabulated by ECCS",
            "λ̄LT = " + slenderness)
        .value("χLT", "", chi, SidewaysExample.reduction(slenderness));
  }

  @ParameterizedTest
  @CsvSource({"1, 1.00", "0.5, 1.31", "0, 1.77", "-0.5, 2.33", "-1, 2.55"})
  void moments_that_vary_have_the_tabulated_factor(double ratio, String c1) {
    Published.memory("ECCS No. 119, Rules for Member Stability in EN 1993-1-1, C₁", "ψ = " + ratio)
        .value("C₁", "", c1, SidewaysExample.shape(ratio));
  }
}
