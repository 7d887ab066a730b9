package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwork.check.CheckSheet.Outcome;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.NotChecked;
import rungwork.check.Verdict.OutsideRange;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;

class CheckSheetTest {
  private static final Basis YIELD = DesignFactor.ROAD.onYield();
  private static final Basis PROPORTION = new Basis(LimitState.PROPORTION, "none");
  private static final Check LIGHT = check("combined stress", "left rail", measured(0.4));
  private static final Check HEAVY = check("combined stress", "front crossmember", measured(0.8));
  private static final Check OVER = check("combined stress", "rear crossmember", measured(1.25));
  private static final Check OPEN =
      check("torsion", "front crossmember", new NotChecked("an open section twists"));
  private static final Check OUTSIDE =
      check("column", "left rail", new OutsideRange(measured(0.9), "outside its range"));
  private static final Check SLENDER =
      new Check("wall", "left rail", "", "bump", PROPORTION, measured(0.99), List.of(), "", "");

  @Test
  void checks_stand_worst_first_and_met_proportions_last() {
    CheckSheet sheet = CheckSheet.of("Curlew", List.of(SLENDER, OPEN, LIGHT, OUTSIDE, OVER, HEAVY));
    assertEquals(List.of(OVER, HEAVY, LIGHT, OUTSIDE, OPEN, SLENDER), sheet.checks());
  }

  @Test
  void no_sheet_loses_the_screening_caution() {
    CheckSheet bare = CheckSheet.of("Curlew", List.of());
    assertEquals(Set.of(Caution.SCREENING), bare.cautions());
    CheckSheet impact =
        new CheckSheet("Impact", List.of(), List.of(), List.of(), Set.of(Caution.IMPACT));
    assertEquals(Set.of(Caution.SCREENING, Caution.IMPACT), impact.cautions());
    assertEquals(impact.cautions(), bare.merged(impact).cautions());
    assertEquals(impact.cautions(), impact.about("left rail").cautions());
  }

  @Test
  void a_sheet_in_print_is_its_verdict_with_what_was_not_checked() {
    assertEquals(
        "Curlew: meets the checks made, the nearest to its limit 0.800: combined stress of front"
            + " crossmember under bump; not checked: torsion of front crossmember",
        CheckSheet.of("Curlew", List.of(HEAVY, OPEN)).toString());
  }

  @Test
  void the_governing_check_of_each_part_is_its_worst() {
    CheckSheet sheet = CheckSheet.of("Curlew", List.of(LIGHT, SLENDER, HEAVY, OUTSIDE, OPEN));
    assertEquals(Optional.of(HEAVY), sheet.governing());
    assertEquals(List.of(HEAVY, LIGHT), sheet.governingByPart());
  }

  @Test
  void a_met_proportion_never_governs() {
    assertEquals(Optional.empty(), CheckSheet.of("Curlew", List.of(SLENDER)).governing());
  }

  @Test
  void a_sheet_that_passes_what_was_checked_names_what_was_not() {
    CheckSheet sheet =
        new CheckSheet(
            "Curlew",
            List.of(LIGHT, HEAVY, OPEN, OUTSIDE),
            List.of("welds of rail-to-crossmember joints", "fatigue"),
            List.of(),
            Set.of());
    assertEquals(Outcome.MEETS_THE_CHECKS_MADE, sheet.outcome());
    assertEquals(
        "meets the checks made, the nearest to its limit 0.800: combined stress of front"
            + " crossmember under bump; not checked: torsion of front crossmember; column of left"
            + " rail; welds of rail-to-crossmember joints; fatigue",
        sheet.verdictLine());
    assertFalse(sheet.complete());
  }

  @Test
  void a_sheet_with_a_demand_above_capacity_does_not_pass() {
    CheckSheet sheet = CheckSheet.of("Curlew", List.of(LIGHT, OVER, HEAVY));
    assertEquals(Outcome.DOES_NOT_PASS, sheet.outcome());
    assertEquals(
        "does not pass: 1.25: combined stress of rear crossmember under bump; not checked: nothing"
            + " known",
        sheet.verdictLine());
  }

  @Test
  void further_failures_are_counted() {
    Check worse = check("column", "left rail", measured(2));
    assertEquals(
        "does not pass: 2.00: column of left rail under bump and 1 more; not checked: nothing"
            + " known",
        CheckSheet.of("Curlew", List.of(OVER, worse)).verdictLine());
  }

  @Test
  void a_number_over_one_outside_its_range_supports_no_pass() {
    Check outside = check("column", "left rail", new OutsideRange(measured(1.1), "too slender"));
    assertEquals(Outcome.DOES_NOT_PASS, CheckSheet.of("Curlew", List.of(LIGHT, outside)).outcome());
  }

  @Test
  void a_sheet_without_any_check_made_could_not_be_judged() {
    CheckSheet sheet = CheckSheet.of("Curlew", List.of(OPEN, SLENDER));
    assertEquals(Outcome.NOT_JUDGED, sheet.outcome());
    assertEquals(
        "could not be judged; not checked: torsion of front crossmember", sheet.verdictLine());
    assertEquals(Outcome.NOT_JUDGED, CheckSheet.of("Curlew", List.of(OUTSIDE)).outcome());
  }

  @Test
  void what_was_not_checked_stands_once_however_many_cases_met_it() {
    Check again =
        new Check(
            OPEN.what(), OPEN.part(), "", "braking", YIELD, OPEN.verdict(), List.of(), "", "");
    CheckSheet sheet = CheckSheet.of("Curlew", List.of(OPEN, again, OUTSIDE));
    assertEquals(1, sheet.notChecked().size());
    assertEquals(List.of(OUTSIDE), sheet.outsideRange());
    assertEquals(3, sheet.checks().size());
  }

  @Test
  void merging_keeps_everything_once() {
    CheckSheet first =
        new CheckSheet("One", List.of(LIGHT), List.of("welds"), List.of("linear"), Set.of());
    CheckSheet second =
        new CheckSheet(
            "Two", List.of(HEAVY), List.of("welds", "bolts"), List.of("linear", "rigid"), Set.of());
    CheckSheet both = first.merged(second);
    assertEquals("One", both.title());
    assertEquals(List.of(HEAVY, LIGHT), both.checks());
    assertEquals(List.of("welds", "bolts"), both.notMade());
    assertEquals(List.of("linear", "rigid"), both.assumptions());
  }

  @Test
  void the_sheet_of_one_part_holds_its_checks_only() {
    CheckSheet rail = CheckSheet.of("Curlew", List.of(LIGHT, HEAVY, OUTSIDE)).about("left rail");
    assertEquals("Curlew: left rail", rail.title());
    assertEquals(List.of(LIGHT, OUTSIDE), rail.checks());
  }

  @Test
  void no_wording_of_the_project_says_that_all_is_well() {
    Stream.of(Caution.values())
        .map(Caution::text)
        .forEach(text -> assertFalse(text.matches("(?i).*\\b(ok|safe|approved)\\b.*"), text));
    assertTrue(Caution.SCREENING.text().contains("Never test on the road"));
    assertTrue(Caution.IMPACT.text().contains("Injury cannot be predicted"));
  }

  @Test
  void a_verdict_knows_its_utilisation_and_reserve() {
    assertEquals(1.25, measured(0.8).reserve());
    assertEquals(OptionalDouble.of(0.9), OUTSIDE.utilisation());
    assertEquals(OptionalDouble.empty(), OPEN.utilisation());
  }

  @Test
  void a_negative_demand_or_a_capacity_of_nothing_is_refused() {
    refused("demand -1.000 is below zero", () -> new Measured(-1, 1, Kind.FORCE));
    refused("capacity 0 is not above zero", () -> new Measured(1, 0, Kind.FORCE));
    refused(
        "demand is not a number; give a finite number",
        () -> new Measured(Double.NaN, 1, Kind.FORCE));
  }

  @Test
  void a_verdict_without_its_reason_is_refused() {
    refused("a reason for not checking has no name; give it one", () -> new NotChecked(" "));
    refused(
        "a range that was left has no name; give it one", () -> new OutsideRange(measured(1), ""));
  }

  @Test
  void a_design_factor_says_where_it_comes_from_and_never_raises_a_capacity() {
    assertEquals(
        "design factor 1.50 (two thirds of yield: Brown, Robertson & Serpento, Motor Vehicle"
            + " Structures, 2002; from memory) on yield; γM0 = γM1 = 1.0",
        YIELD.factors());
    refused(
        "design factor 0.5000 is below 1; it would raise the capacity",
        () -> new DesignFactor(0.5, "guessed"));
    refused("a source of a design factor has no name; give it one", () -> new DesignFactor(2, ""));
  }

  private static Measured measured(double utilisation) {
    return new Measured(utilisation, 1, Kind.RATIO);
  }

  private static Check check(String what, String part, Verdict verdict) {
    return new Check(what, part, "", "bump", YIELD, verdict, List.of(), "", "");
  }

  private static void refused(String message, org.junit.jupiter.api.function.Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }
}
