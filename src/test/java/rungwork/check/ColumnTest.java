package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwork.fault.ModelException;

class ColumnTest {
  private static final Column COLUMN = new Column(210e9, 1e-3, 1e-6, 1);

  @ParameterizedTest
  @EnumSource(ColumnCurve.class)
  void the_reduction_factor_is_the_first_yield_of_a_crooked_column(ColumnCurve curve) {
    for (double bar = 0.2; bar < 4; bar += 0.1) {
      double chi = chi(curve, bar);
      double crookedness = curve.imperfection() * (bar - 0.2);
      double fibre = chi + chi * crookedness / (1 - chi * bar * bar);
      assertEquals(1, fibre, 1e-9, "Ayrton and Perry, slenderness " + bar);
    }
  }

  @Test
  void a_stocky_column_is_not_reduced_and_none_carries_more_than_a_perfect_one() {
    for (ColumnCurve curve : ColumnCurve.values()) {
      assertEquals(1, chi(curve, 0.05));
      for (double bar = 0.3; bar < 4; bar += 0.1) {
        assertTrue(chi(curve, bar) < Math.min(1, 1 / (bar * bar)));
      }
    }
  }

  @Test
  void a_worse_curve_reduces_more() {
    ColumnCurve[] curves = ColumnCurve.values();
    for (int i = 1; i < curves.length; i++) {
      assertTrue(chi(curves[i], 1) < chi(curves[i - 1], 1));
    }
  }

  @Test
  void the_letters_of_an_axis_carry_its_number() {
    Column weak = new Column(210e9, 1e-3, 1e-6, 1, Column.Axis.WEAK);
    assertEquals(
        "Ncr₂ = π²·E·I₂/Lcr₂² = π² · 210.0 GPa · 100.0 cm⁴ / (1000 mm)² = 2073 kN",
        weak.critical().toString());
    assertEquals(
        "Ncr = π²·E·I/Lcr² = π² · 210.0 GPa · 100.0 cm⁴ / (1000 mm)² = 2073 kN",
        COLUMN.critical().toString());
  }

  @Test
  void a_column_of_nothing_is_refused() {
    refused("Young's modulus of a column 0 GPa is not above zero", () -> new Column(0, 1, 1, 1));
    refused("area of a column 0 mm² is not above zero", () -> new Column(1, 0, 1, 1));
    refused("second moment of a column 0 mm⁴ is not above zero", () -> new Column(1, 1, 0, 1));
    refused("effective length of a column 0 mm is not above zero", () -> new Column(1, 1, 1, 0));
  }

  private static double chi(ColumnCurve curve, double slenderness) {
    double yield = slenderness * slenderness * COLUMN.critical().result() / COLUMN.area();
    List<Step> steps = COLUMN.reduction(curve, yield);
    return steps.get(steps.size() - 1).result();
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }
}
