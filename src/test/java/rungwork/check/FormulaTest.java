package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

class FormulaTest {
  private static final Symbol SIGMA = new Symbol("σ", Kind.STRESS, "normal stress");
  private static final Symbol N = new Symbol("N", Kind.FORCE, "normal force");
  private static final Symbol A = new Symbol("A", Kind.AREA, "area");
  private static final Symbol M = new Symbol("M", Kind.MOMENT, "moment");
  private static final Symbol W = new Symbol("W", Kind.SECTION_MODULUS, "modulus");
  private static final Symbol L = new Symbol("L", Kind.LENGTH, "length");
  private static final Formula STRESS =
      new Formula(
          SIGMA,
          "{N}/{A} + {M}/{W}",
          List.of(N, A, M, W),
          "strength of materials",
          in -> in[0] / in[1] + in[2] / in[3]);

  @Test
  void a_step_reads_as_letters_then_numbers_with_units_then_the_result() {
    Step step = STRESS.with(12.4e3, 6.74e-4, 0.86e3, 15.9e-6);
    assertEquals(
        "σ = N/A + M/W = 12.40 kN / 6.740 cm² + 0.8600 kN·m / 15.90 cm³ = 72.49 MPa",
        step.text(Units.METRIC));
    assertEquals(step.text(Units.METRIC), step.toString());
  }

  @Test
  void the_same_step_reads_in_inches_and_pounds() {
    Step step = STRESS.with(4448.2216, 6.4516e-4, 0, 16.387064e-6);
    assertEquals(
        "σ = N/A + M/W = 1000 lbf / 1.000 in² + 0 lbf·ft / 1.000 in³ = 1.000 ksi",
        step.text(Units.INCH_POUND));
  }

  @Test
  void a_negative_number_stands_in_parentheses() {
    Step step = STRESS.with(-12.4e3, 6.74e-4, 0.86e3, 15.9e-6);
    assertEquals(
        "σ = N/A + M/W = (-12.40 kN) / 6.740 cm² + 0.8600 kN·m / 15.90 cm³ = 35.69 MPa",
        step.toString());
  }

  @Test
  void a_number_with_a_unit_that_is_raised_to_a_power_stands_in_parentheses() {
    Formula square = new Formula(A, "{L}²", List.of(L), "geometry", in -> in[0] * in[0]);
    assertEquals("A = L² = (20.00 mm)² = 4.000 cm²", square.with(0.02).toString());
  }

  @Test
  void a_result_that_is_named_by_its_formula_is_not_written_twice() {
    Symbol ratio = new Symbol("L/L", Kind.RATIO, "itself");
    Formula itself = new Formula(ratio, "{L}/{L}", List.of(L), "arithmetic", in -> 1);
    assertEquals("L/L = 20.00 mm / 20.00 mm = 1.000", itself.with(0.02).toString());
  }

  @Test
  void steps_are_equal_when_their_numbers_are() {
    Step step = STRESS.with(1, 2, 3, 4);
    assertEquals(step, STRESS.with(1, 2, 3, 4));
    assertEquals(step.hashCode(), STRESS.with(1, 2, 3, 4).hashCode());
    assertNotEquals(step, STRESS.with(1, 2, 3, 5));
  }

  @Test
  void a_letter_that_is_no_input_is_refused() {
    refused("formula {N}/{A} uses A, which is no input", "{N}/{A}", N);
  }

  @Test
  void an_input_that_is_not_used_is_refused() {
    refused("formula {N} does not use its input A", "{N}", N, A);
  }

  @Test
  void two_inputs_of_one_letter_are_refused() {
    refused("formula {N} + {N} has two inputs of the same letter", "{N} + {N}", N, N);
  }

  @Test
  void a_lone_brace_is_refused() {
    refused("formula {N}/{A has a brace without its partner", "{N}/{A", N);
  }

  @Test
  void a_wrong_count_of_numbers_is_refused() {
    ModelException refusal =
        assertThrows(ModelException.class, () -> new Step(STRESS, new double[] {1, 2}, 3));
    assertEquals("formula {N}/{A} + {M}/{W} takes 4 numbers; it was given 2", refusal.getMessage());
  }

  private static void refused(String message, String text, Symbol... inputs) {
    ModelException refusal =
        assertThrows(
            ModelException.class,
            () -> new Formula(SIGMA, text, List.of(inputs), "none", in -> in[0]));
    assertEquals(message, refusal.getMessage());
  }
}
