package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.LimitState;
import rungwork.check.Verdict;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.NotChecked;
import rungwork.quantity.Kind;

class WorstChecksTest {
  private static final Event BUMP = Event.bumpBothWheels(Axle.FRONT);
  private static final Basis YIELD = new Basis(LimitState.YIELD, "no factor");

  private static Check check(String where, Verdict verdict) {
    return new Check("stress", "left rail", where, "bump", YIELD, verdict, List.of(), "", "");
  }

  private static Check used(String where, double utilisation) {
    return check(where, new Measured(utilisation, 1, Kind.RATIO));
  }

  private static List<String> kept(Check... checks) {
    WorstChecks worst = new WorstChecks();
    worst.add(BUMP, List.of(checks));
    return worst.all().stream().map(Check::where).toList();
  }

  @Test
  void the_worst_answer_to_a_question_is_kept() {
    assertEquals(List.of("b"), kept(used("a", 0.5), used("b", 0.6), used("c", 0.55)));
    assertEquals(List.of("b"), kept(used("a", 0.5), used("b", 0.5001)));
  }

  @Test
  void of_answers_that_differ_by_rounding_the_first_is_named() {
    assertEquals(List.of("left"), kept(used("left", 0.5), used("right", 0.5 * (1 + 1e-13))));
    assertEquals(List.of("left"), kept(used("left", 0.5), used("right", 0.5)));
  }

  @Test
  void what_was_not_checked_stays_beside_the_numbers() {
    Check open = check("whole", new NotChecked("no rule"));
    assertEquals(List.of("whole", "b"), kept(open, used("a", 0.5), used("b", 0.6), open));
  }
}
