package rungwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Stock;
import rungwork.quantity.Units;
import rungwork.study.Outcome.Standing;
import tech.tablesaw.api.Table;

class ComparisonTest {
  private static final String PART = "front crossmember";
  private static final Comparison COMPARISON =
      Comparison.of(PART, Curlew.candidates(), Curlew::assess);

  private static Outcome outcome(String candidate) {
    return COMPARISON.outcomes().stream()
        .filter(one -> one.candidate().name().equals(candidate))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_lightest_that_meets_the_checks_made_is_the_choice() {
    Comparison.Choice choice = COMPARISON.lightest().orElseThrow();
    assertEquals("light", choice.outcome().candidate().name());
    assertEquals(2, choice.eligible());
    assertEquals(5, choice.compared());
    assertEquals(Standing.ELIGIBLE, outcome("heavy").standing());
    assertTrue(choice.outcome().mass() < ((Outcome.Assessed) outcome("heavy")).mass());
  }

  @Test
  void of_equally_heavy_candidates_the_stiffest_is_the_choice_and_the_line_says_so() {
    Stock standing = new Stock(Curlew.tube(60, 40).section(), Curlew.STEEL);
    Stock lying = new Stock(standing.section().turned(), Curlew.STEEL);
    List<Candidate> two =
        List.of(new Candidate("lying", lying), new Candidate("standing", standing));
    Comparison.Choice choice = Comparison.of(PART, two, Curlew::assess).lightest().orElseThrow();
    assertEquals(2, choice.equallyHeavy());
    assertTrue(choice.toString().contains("; the stiffest of 2 equally heavy)"), choice.toString());
    assertTrue(
        Comparison.of(PART, two, Curlew::assess).assessed().stream()
            .allMatch(one -> one.torsionalStiffness() <= choice.outcome().torsionalStiffness()));
  }

  @Test
  void the_line_that_names_the_choice_lists_what_was_not_checked() {
    Comparison.Choice choice = COMPARISON.lightest().orElseThrow();
    String line = choice.toString();
    assertEquals(1, line.lines().count());
    assertTrue(line.startsWith("light: lightest meeting the checks made, with a frame of "), line);
    assertTrue(line.contains("; not checked: "), line);
    choice.outcome().frame().notMade().forEach(gap -> assertTrue(line.contains(gap), gap));
    assertEquals(line, COMPARISON.choiceLine(Units.METRIC));
    assertTrue(COMPARISON.choiceLine(Units.INCH_POUND).contains(" lb "));
  }

  @Test
  void a_channel_of_which_something_is_not_checked_is_never_eligible_however_strong() {
    assertTrue(outcome("channel").standing() != Standing.ELIGIBLE);
    assertTrue(
        outcome("channel").objections().contains("lateral-torsional buckling is not checked"),
        outcome("channel").objections().toString());
  }

  @Test
  void a_candidate_that_fails_says_where() {
    assertEquals(Standing.DOES_NOT_PASS, outcome("weak").standing());
    assertTrue(outcome("weak").objections().get(0).contains(" of " + PART + " under "));
  }

  @Test
  void a_candidate_that_cannot_be_modelled_stays_with_its_reason() {
    assertEquals(Standing.NOT_MODELLED, outcome("angle").standing());
    assertTrue(outcome("angle").objections().get(0).contains("principal axes"));
    assertEquals(5, COMPARISON.outcomes().size());
    assertEquals(4, COMPARISON.assessed().size());
    assertEquals(3, COMPARISON.objections().size());
    assertTrue(COMPARISON.objections().get(2).startsWith("angle: not modelled: "));
  }

  @Test
  void a_frame_that_cannot_be_solved_stays_with_its_reason() {
    Comparison comparison =
        Comparison.of(
            PART,
            List.of(Curlew.candidates().get(0)),
            candidate -> {
              throw new SolveException("the numbers failed");
            });
    assertEquals(List.of("the numbers failed"), comparison.outcomes().get(0).objections());
    assertTrue(comparison.lightest().isEmpty());
    assertEquals(
        "no candidate for the front crossmember meets the checks made with all of it checked",
        comparison.choiceLine(Units.METRIC));
  }

  @Test
  void without_any_number_a_candidate_is_not_eligible() {
    CheckSheet empty = CheckSheet.of("empty", List.of());
    Outcome.Assessed bare = new Outcome.Assessed(Curlew.candidates().get(0), 1, 1, empty, empty);
    assertEquals(Standing.NOT_CHECKED, bare.standing());
    assertEquals(List.of("no strength of it was checked"), bare.objections());
    assertTrue(bare.toString().endsWith("governed by nothing"));
  }

  @Test
  void the_table_has_a_row_a_candidate_and_its_units_in_the_heads() {
    Table table = COMPARISON.table();
    assertEquals(5, table.rowCount());
    double mass = ((Outcome.Assessed) outcome("heavy")).mass();
    assertEquals(mass, table.doubleColumn("frame mass [kg]").getDouble(1));
    assertEquals(
        mass / 0.45359237,
        COMPARISON.table(Units.INCH_POUND).doubleColumn("frame mass [lb]").getDouble(1),
        1e-9);
    assertTrue(table.doubleColumn("utilisation").isMissing(4));
    assertTrue(table.columnNames().contains("torsional stiffness [N·m/deg]"));
    assertEquals("not modelled", table.stringColumn("standing").get(4));
    assertEquals("", table.stringColumn("load case").get(4));
    assertFalse(table.stringColumn("governing check").get(0).isEmpty());
  }

  @Test
  void heavier_crossmembers_stiffen_the_frame() {
    double weak = ((Outcome.Assessed) outcome("weak")).torsionalStiffness();
    double heavy = ((Outcome.Assessed) outcome("heavy")).torsionalStiffness();
    assertTrue(heavy > weak);
  }

  @Test
  void in_words_it_names_every_candidate_and_the_choice_in_metric_units() {
    String words = COMPARISON.toString();
    Curlew.candidates().forEach(one -> assertTrue(words.contains("- " + one.name() + ": ")));
    assertTrue(words.endsWith(COMPARISON.choiceLine(Units.METRIC)));
    assertTrue(words.contains(" kg") && words.contains(" N·m/deg"));
  }

  @Test
  void what_cannot_be_compared_is_refused() {
    List<Candidate> none = List.of();
    assertEquals(
        "there is no candidate for the front crossmember; give one at least",
        assertThrows(ModelException.class, () -> Comparison.of(PART, none, Curlew::assess))
            .getMessage());
    Candidate one = Candidate.of(Curlew.tube(60, 60));
    List<Candidate> twins = List.of(one, one);
    assertEquals(
        "two candidates for the front crossmember are named SHS 60x60x3; rename one",
        assertThrows(ModelException.class, () -> Comparison.of(PART, twins, Curlew::assess))
            .getMessage());
    String unknown =
        assertThrows(
                ModelException.class,
                () -> Comparison.of("fifth wheel", List.of(one), Curlew::assess))
            .getMessage();
    assertTrue(unknown.startsWith("no check is about part fifth wheel; there are checks of "));
    assertEquals(
        "a candidate has no name; give it one",
        assertThrows(ModelException.class, () -> new Candidate(" ", one.stock())).getMessage());
  }

  @Test
  void a_rail_is_compared_with_all_its_bays() {
    Comparison rails =
        Comparison.of("left rail", Curlew.candidates().subList(0, 1), Curlew::assess);
    List<String> parts =
        rails.assessed().get(0).part().checks().stream().map(check -> check.part()).toList();
    assertTrue(parts.size() > 1, parts.toString());
    assertTrue(parts.stream().allMatch(part -> part.startsWith("left rail")), parts.toString());
  }

  @Test
  void an_interrupted_comparison_stops_before_the_next_candidate() {
    Thread.currentThread().interrupt();
    try {
      assertEquals(
          "the comparison was interrupted before weak",
          assertThrows(
                  SolveException.class,
                  () -> Comparison.of(PART, Curlew.candidates(), Curlew::assess))
              .getMessage());
    } finally {
      assertTrue(Thread.interrupted(), "the interruption is left for its owner");
    }
  }
}
