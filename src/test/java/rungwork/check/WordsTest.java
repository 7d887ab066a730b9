package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.check.Member.Ends;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.NotChecked;
import rungwork.check.Verdict.Reason;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** What a check's parts say, and when they say that it fails. */
class WordsTest {
  private static final Symbol L = new Symbol("L", Kind.LENGTH, "length");
  private static final Symbol A = new Symbol("A", Kind.AREA, "area of a square");
  private static final Formula SQUARE =
      new Formula(A, "{L}²", List.of(L), "geometry", in -> in[0] * in[0]);

  private static Check check(Verdict verdict) {
    return new Check(
        "stress",
        "rail",
        "at dash",
        "bump",
        DesignFactor.NONE.onYield(),
        verdict,
        List.of(),
        "",
        "");
  }

  @Test
  void what_uses_its_capacity_up_to_the_last_does_not_fail_and_a_little_more_does() {
    assertFalse(check(new Measured(100, 100, Kind.STRESS)).fails());
    assertTrue(check(new Measured(100.001, 100, Kind.STRESS)).fails());
    assertFalse(check(new NotChecked("nobody looked")).fails());
  }

  @Test
  void a_sheet_is_complete_while_all_its_checks_were_made() {
    Check made = check(new Measured(1, 2, Kind.STRESS));
    Check open = check(new NotChecked("nobody looked"));
    assertTrue(CheckSheet.of("rail", List.of(made)).complete());
    assertFalse(CheckSheet.of("rail", List.of(made, open)).complete());
  }

  @Test
  void the_reason_for_not_checking_is_what_was_said() {
    assertEquals("nobody looked", new NotChecked("nobody looked").reason(Units.METRIC));
  }

  @Test
  void numbers_in_a_reason_stand_in_their_places_in_the_readers_units() {
    Reason reason =
        Reason.of("a throat of {} on {} of wall", Amount.length(0.003), Amount.length(0.0254));
    assertEquals("a throat of 3.000 mm on 25.40 mm of wall", reason.toString());
    assertEquals("a throat of 0.1181 in on 1.000 in of wall", reason.text(Units.INCH_POUND));
  }

  @Test
  void a_caution_in_brief_is_its_first_sentence() {
    assertEquals("This is a screening calculation, not an approval.", Caution.SCREENING.inBrief());
    assertEquals("Injury cannot be predicted from these numbers.", Caution.IMPACT.inBrief());
  }

  @Test
  void limit_states_and_factors_say_what_they_are() {
    assertEquals("yield", LimitState.YIELD.words());
    assertEquals("limit of proportion", LimitState.PROPORTION.words());
    assertEquals("design factor 1.25 (a code)", new DesignFactor(1.25, "a code").toString());
    assertEquals(1, new DesignFactor(1, "a code").value());
  }

  @Test
  void ends_that_are_not_known_ask_for_all_the_others() {
    assertEquals(List.of(Ends.FREE, Ends.ONE_HELD, Ends.BOTH_HELD), Ends.UNKNOWN.cases());
    assertEquals(List.of(Ends.ONE_HELD), Ends.ONE_HELD.cases());
  }

  @Test
  void steps_with_the_same_numbers_are_one_and_others_are_not() {
    Step step = SQUARE.with(0.02);
    assertEquals(Set.of(step), Set.of(new Step(SQUARE, new double[] {0.02}, step.result())));
    assertNotEquals(step.hashCode(), SQUARE.with(0.03).hashCode());
    Formula side = new Formula(L, "{L}", List.of(L), "geometry", in -> in[0]);
    assertNotEquals(SQUARE.with(0.02).hashCode(), side.with(0.02).hashCode());
  }

  @Test
  void a_step_keeps_its_numbers_to_itself() {
    double[] given = {0.02};
    Step step = new Step(SQUARE, given, 0.0004);
    given[0] = 1;
    step.values()[0] = 1;
    assertEquals(0.02, step.values()[0]);
  }

  @Test
  void a_step_of_other_inputs_or_of_no_number_is_refused() {
    assertEquals(
        "formula {L}² takes 1 numbers; it was given 2",
        assertThrows(ModelException.class, () -> new Step(SQUARE, new double[] {1, 2}, 1))
            .getMessage());
    assertEquals(
        "length comes out as not a number; the numbers put in lie too far apart to be calculated"
            + " with",
        assertThrows(SolveException.class, () -> new Step(SQUARE, new double[] {Double.NaN}, 1))
            .getMessage());
    assertEquals(
        "area of a square comes out as not a number; the numbers put in lie too far apart to be"
            + " calculated with",
        assertThrows(SolveException.class, () -> new Step(SQUARE, new double[] {1}, Double.NaN))
            .getMessage());
    assertEquals(
        "formula {L}² takes 1 numbers; it was given 0",
        assertThrows(ModelException.class, SQUARE::with).getMessage());
    Step infinite = new Step(SQUARE, new double[] {1}, Double.POSITIVE_INFINITY);
    assertTrue(Double.isInfinite(infinite.result()));
  }
}
