package rungwork.validation;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.check.SlenderExample;
import rungwork.section.Wall.Edge;

/** Buckling factors, effective widths and the limits of the American specification. */
class SlenderWallValidationTest {
  @ParameterizedTest
  @CsvSource({"1, 4.00", "0, 7.81", "-0.999999, 23.9", "-1, 23.9", "-2, 53.8"})
  void internal_walls_have_the_tabulated_buckling_factor(double psi, String k) {
    Published.memory("EN 1993-1-5:2006, table 4.1", "internal wall, ψ = " + psi)
        .value("kσ", "", k, SlenderExample.factor(Edge.INTERNAL, psi));
  }

  @ParameterizedTest
  @CsvSource({"1, 0.43", "0, 0.57", "-1, 0.85"})
  void outstands_have_the_tabulated_buckling_factor(double psi, String k) {
    Published.memory("EN 1993-1-5:2006, table 4.2", "outstand, free edge compressed, ψ = " + psi)
        .value("kσ", "", k, SlenderExample.factor(Edge.OUTSTAND, psi));
  }

  /** Where the rules start, nothing is lost: λ̄p = 0.673 and 0.748. */
  @Test
  void effective_widths_start_where_the_standard_says() {
    Published.memory("EN 1993-1-5:2006, 4.4(2)", "internal wall, λ̄p = 0.673, ψ = 1")
        .value("ρ", "", "1.000", SlenderExample.left(Edge.INTERNAL, 0.673, 1));
    Published.memory("EN 1993-1-5:2006, 4.4(2)", "outstand, λ̄p = 0.748")
        .value("ρ", "", "1.000", SlenderExample.left(Edge.OUTSTAND, 0.748, 1));
    Published.memory("EN 1993-1-5:2006, 4.4(2); G. Winter's formula 1 − 0.22/λ̄p", "λ̄p = 1")
        .value("ρ", "", "0.780", SlenderExample.left(Edge.INTERNAL, 1, 1));
  }

  @Test
  void tubes_have_the_american_limits_in_compression() {
    Published.read(
            "J. C. McCormac, Structural Steel Design, 5th ed., ex. 5-3: 1.40·√(E/Fy)",
            "HSS wall, Fy = 46 ksi")
        .value("λr", "", "35.15", SlenderExample.american(Edge.INTERNAL, 29000, 46));
    Published.memory("AISC 360-16, table B4.1a, case 9: 0.11·E/Fy", "round HSS, Fy = 46 ksi")
        .value("λr", "", "69.3", SlenderExample.american(Edge.ROUND, 29000, 46));
    Published.memory("AISC 360-16, table B4.1a, case 1: 0.56·√(E/Fy)", "outstand, Fy = 50 ksi")
        .value("λr", "", "13.5", SlenderExample.american(Edge.OUTSTAND, 29000, 50));
  }

  @ParameterizedTest
  @CsvSource({"1, 0.43", "0, 1.70", "-1, 23.8"})
  void outstands_compressed_at_their_held_edge_have_the_tabulated_factor(double psi, String k) {
    Published.memory("EN 1993-1-5:2006, table 4.2", "outstand, held edge compressed, ψ = " + psi)
        .value("kσ", "", k, SlenderExample.heldEdgeFactor(psi));
  }

  @Test
  void bent_walls_have_the_american_limits() {
    Published.memory(
            "AISC Design Examples, HSS with a noncompact flange: 1.40·√(E/Fy)", "Fy = 50 ksi")
        .value(
            "λr, flange of a tube",
            "",
            "33.7",
            SlenderExample.americanBending(Edge.INTERNAL, 1, 29000, 50));
    Published.memory(
            "AISC Design Examples, tee with a noncompact flange: 1.0·√(E/Fy)", "Fy = 50 ksi")
        .value(
            "λr, outstand",
            "",
            "24.1",
            SlenderExample.americanBending(Edge.OUTSTAND, 1, 29000, 50));
    Published.memory("AISC 360-16, table B4.1b: 0.31·E/Fy", "round HSS, Fy = 46 ksi")
        .value("λr", "", "195", SlenderExample.americanBending(Edge.ROUND, 1, 29000, 46));
    Published.memory("AISC 360-16, table B4.1b: 5.70·√(E/Fy)", "web, Fy = 50 ksi")
        .value("λr", "", "137", SlenderExample.americanBending(Edge.INTERNAL, -1, 29000, 50));
  }
}
